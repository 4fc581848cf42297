# The job sheet: blanks, diagnosis, hand-back.

sheet-number-please = a number, please
sheet-diagnosis = Diagnosis
sheet-what-is-wrong = what is wrong
sheet-where = where
sheet-write-diagnosis = Write the diagnosis
sheet-on-the-sheet = On the sheet: { $diagnosis }
sheet-hand-back-warning = The job is then over and is marked as it stands.
sheet-hand-back-now = Hand back now
sheet-work-on = Work on
