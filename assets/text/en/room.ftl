# The rooms: start, work, end.

room-tagline = A split air conditioner under repair, to practise on.
room-before-you-begin = Before you begin
room-have-read = I have read this
room-your-name = Your name
room-practice-in = Practice in { $exercises }.
room-level = level { $level } of 5
room-go-to-work = Go to work: { $title }

room-time-on-job = time on the job
room-times-as-fast = run { $times } times as fast
room-not-done = Not done: { $why }
room-at-hand = At hand
room-job-sheet = Job sheet
room-strip-chart = Strip chart

room-back-to-list = Back to the list
room-passed = Passed: { $points } of { $of } points, { $percent } %
room-not-passed = Not passed: { $points } of { $of } points, { $percent } %
room-kept-in = Kept in { $place }
room-fingerprint = Fingerprint { $fingerprint }
room-not-kept = The attempt could not be kept: { $trouble }
room-work-on-next = To work on next
room-points-of = { $points } of { $of }
room-points-open = open, { $of }
room-missed = missed: { $criterion }
room-missed-critical = missed, critical: { $criterion }
room-for-the-assessor = For the assessor: { $question }
room-noted = What was noted

room-start = Start
room-stop = Stop
room-complaint = Complaint
room-reference = Reference
room-log = Log
room-menu = Menu
room-clock-stopped = Clock stopped: hands work, nothing flows until it is started
