### English. One line a sentence; a name in braces is filled in by the program.

## states of a cell

state-right = right
state-wrong = wrong
state-turned = turned
state-empty = empty
state-unread = unread
state-unseen = unseen

## print

print-squares = Squares
print-cards = Cards
print-tiles = Tiles
print-title = { $document } – { $event }
print-actual-size = Print at 100 %, actual size – never “fit to page”
print-page-single = { $document } · page { $page } of { $pages } · one-sided
print-page-front-long = { $document } · page { $page } of { $pages } · two-sided, flip on long edge
print-page-front-short = { $document } · page { $page } of { $pages } · two-sided, flip on short edge
print-page-back = { $document } · page { $page } of { $pages } · back of page { $front }
print-event = { $event } · { $tag }
print-ruler-mm = { $length } mm
print-ruler-inch = { $length } in
print-this-way-up = this way up
print-card-column = column { $name } · hangs below its column
print-card-row = row { $name } · hangs left of its row
print-card-corner-1 = corner 1 of 4 · beyond the top left
print-card-corner-2 = corner 2 of 4 · beyond the top right
print-card-corner-3 = corner 3 of 4 · beyond the bottom right
print-card-corner-4 = corner 4 of 4 · beyond the bottom left
