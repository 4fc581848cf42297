//! Void fraction along a coil, and a bounded search for a root.

/// Mean void fraction of a stretch whose quality goes straight from `x1` to `x2`.
///
/// ```text
/// α(x) = x / (ψ + (1 - ψ) x)      ψ = (ρ_g/ρ_l)^(2/3)
/// ```
///
/// Source: Zivi 1964, J. Heat Transfer 86, integrated.
pub(super) fn mean_void(x1: f64, x2: f64, slip: f64) -> f64 {
    let a = 1.0 - slip;
    if (x2 - x1).abs() < 1e-4 {
        let x = 0.5 * (x1 + x2);
        return x / (slip + a * x);
    }
    let logarithm = libm::log((slip + a * x2) / (slip + a * x1));
    ((x2 - x1) / a - slip / (a * a) * logarithm) / (x2 - x1)
}

/// The root of a rising function between 0 and 1, by regula falsi in the Illinois form; the
/// nearer end if it does not change its sign.
pub(super) fn rising_root(f: impl Fn(f64) -> f64) -> f64 {
    let (mut a, mut b) = (0.0, 1.0);
    let (mut fa, mut fb) = (f(a), f(b));
    if fa >= 0.0 {
        return 0.0;
    }
    if fb <= 0.0 {
        return 1.0;
    }
    let mut low_last = None;
    for _ in 0..30 {
        let c = (fa * b - fb * a) / (fa - fb);
        let fc = f(c);
        if fc.abs() < 1e-12 || b - a < 1e-10 {
            return c;
        }
        if fc < 0.0 {
            (a, fa) = (c, fc);
            if low_last == Some(true) {
                fb *= 0.5;
            }
            low_last = Some(true);
        } else {
            (b, fb) = (c, fc);
            if low_last == Some(false) {
                fa *= 0.5;
            }
            low_last = Some(false);
        }
    }
    0.5 * (a + b)
}
