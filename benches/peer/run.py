"""Times `coldbench settle` beside TESPy's steady cycle in one run, by turns, and prints the ratio.

    python3 benches/peer/run.py [PROGRAM]

Without PROGRAM it builds the release program. TESPy comes from the package index into a virtual
environment in the folder for passing files, once. The two do not do the same: TESPy solves a cycle
whose pressures are given, `settle` runs the whole unit from a standstill until nothing moves. Each
settling is the first one of a new process; TESPy's cycle is solved again and again while warm.
"""

import json
import os
import pathlib
import statistics
import subprocess
import sys
import tempfile
import venv

TESPY = "tespy==0.11.0"
GOAL = 0.3
ROUNDS = 5
HERE = pathlib.Path(__file__).parent


def build():
    """The release program of this tree, without its window."""
    cargo = os.environ.get("CARGO", "cargo")
    command = [cargo, "build", "--release", "--locked", "--no-default-features"]
    command += ["--bin", "coldbench", "--message-format", "json-render-diagnostics"]
    told = subprocess.check_output(command, cwd=HERE, text=True)
    built = [json.loads(line).get("executable") for line in told.splitlines()]
    return next(path for path in reversed(built) if path)


def python_with_tespy():
    """The interpreter of the environment that has TESPy."""
    folder = pathlib.Path(tempfile.gettempdir()) / "coldbench-peer"
    python = folder / ("Scripts" if os.name == "nt" else "bin") / "python"
    if not python.exists():
        venv.create(folder, with_pip=True)
    subprocess.check_call([python, "-m", "pip", "install", "--quiet", TESPY])
    return python


def main():
    """Prints both medians, ms, and their ratio; the exit code is 1 when it misses the goal."""
    program = sys.argv[1] if len(sys.argv) > 1 else build()
    python = python_with_tespy()
    ours, theirs = [], []
    for _ in range(ROUNDS):
        settle = [program, "settle", "r22_3ton_orifice", "--json"]
        for _ in range(ROUNDS):
            ours.append(json.loads(subprocess.check_output(settle))["wall_ms"])
        cycle = [python, HERE / "tespy_cycle.py"]
        theirs.append(float(subprocess.check_output(cycle, text=True)))
    a, b = statistics.median(ours), statistics.median(theirs)
    print(f"settle {a:.2f} ms, {TESPY} warm {b:.2f} ms, ratio {a / b:.3f}, goal {GOAL} at most")
    return 0 if a / b <= GOAL else 1


if __name__ == "__main__":
    sys.exit(main())
