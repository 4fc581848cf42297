# The keys.

keys-space = Space
keys-escape = Esc
keys-tab = Tab
keys-enter = Enter, Esc
keys-arrows = arrows
keys-all = All keys
keys-go-to = Go to a part: some letters of its words
keys-foot = 1–9 action   G go to   F6 at hand   ? all keys
keys-does-space = start or stop the clock
keys-does-drawers = complaint, job sheet, reference, strip chart, log
keys-does-wait = wait for what an instrument shows
keys-does-slots = the action in that place at hand
keys-does-go-to = go to a part
keys-does-thought = ask for a thought
keys-does-hand-back = open the hand-back; hold it there for one second to hand back
keys-does-areas = to what is at hand
keys-does-tab = to the next control
keys-does-enter = to what can be done to a part, and back to the part
keys-does-arrows = turn what turns by a quarter turn; with Shift by a tenth of that
keys-does-list = this list
