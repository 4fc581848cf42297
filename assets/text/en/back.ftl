# Before a job is handed back.

back-hand-back = Hand back
back-before = Before you hand back
back-what-eyes-see = What eyes can see on a walk round the unit. A loose nut or a leak they cannot see.
back-still-on = Still on
back-still-off = Still off
back-open-or-not-set = Open or not set
back-nothing = nothing
back-line = { $part }: { $state }
back-blanks = Job sheet: { $empty } of { $all } blanks are empty.
back-diagnosis-is-there = A diagnosis is written.
back-no-diagnosis = No diagnosis is written.
back-hold = Hold to hand back
back-hold-key = hold H
