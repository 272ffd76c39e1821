### English. One line a sentence; a name in braces is filled in by the program.

## states of a cell

state-right = right
state-wrong = wrong
state-turned = turned
state-empty = empty
state-unread = unread
state-unseen = unseen
