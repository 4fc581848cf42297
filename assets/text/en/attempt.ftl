# Attempts: for what they are begun, which were never ended, and the moments to go back to.

attempt-practise = Practise: with help, and one can go back to a moment and try again
attempt-be-assessed = Be assessed: no help and no going back; the attempt says so
attempt-assessment = Assessment
attempt-was-practice = This was practice.
attempt-was-assessment = This was an assessment.
attempt-went-on-from = A second try: it went on from { $attempt }, line { $line }.
attempt-never-ended = Never ended
attempt-go-on = Go on with: { $attempt }
attempt-offer = { $title }, { $who }, at { $time }
attempt-offer-assessed = { $title }, { $who }, at { $time }, assessed
attempt-no-name = no name
attempt-blocked = { $count ->
    [one] 1 that cannot be gone on with
   *[other] { $count } that cannot be gone on with
}
attempt-cannot-go-on = { $attempt }: it cannot be gone on with: { $why }
attempt-again = The job is done again up to where it goes on
attempt-progress = { $now } of { $end }
attempt-stop = Stop this
attempt-put-aside = Put the job aside
attempt-put-aside-hint = It can be gone on with from the list of scenarios.
attempt-moments = Moments
attempt-nothing-done = Nothing was done yet.
attempt-no-going-back = This is an assessment: there is no going back.
attempt-choose-moment = Choose one to go back to and try again from there.
attempt-refused = { $action }, refused
attempt-before = Go back to before: { $moment }
attempt-before-means = The job then stands as it stood just before this. What was done from there on stays in its own attempt, which is ended as left; a new one is begun.
attempt-go-back = Go back and try again
attempt-stay = Stay here
