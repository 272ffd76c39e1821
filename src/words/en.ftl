### English. One line a sentence; a name in braces is filled in by the program.

## states of a cell

state-right = right
state-wrong = wrong
state-turned = turned
state-empty = empty
state-unread = unread
state-unseen = unseen

## program

help = Plans an evening where many visitors draw one picture together, prints its kit, and reads a photo of the wall

## new

help-new = Makes an event folder out of a picture, and proposes a grid
help-new-folder = The folder to make; its name becomes the evening's name unless --name says another
help-new-picture = The picture to redraw: PNG, JPEG, WebP or TIFF. It is copied; the file itself is left alone
help-new-columns = Squares side by side
help-new-rows = Squares one above the other
help-new-squares = About how many squares there should be, instead of columns and rows
help-new-name = What the evening is called
help-new-tag = Three characters in every code of this event, of 23456789ABCDEFGHJKLMNPQRSTUVWXYZ; left out, they are drawn by lot
help-new-colours = How many pencil colours the picture is drawn with
help-new-square-mm = Side of the paper squares
help-new-tile-mm = Side of the tiles, the pieces of the picture that visitors are given
help-new-paper = The paper in the printer: letter, tabloid, a4 or a3
help-new-flip = How the printer turns the paper over: long-edge, short-edge or none
help-new-units = What people read, inch or mm; left out, inch for letter and tabloid, mm for a4 and a3

new-made = Made { $folder } for “{ $name }”, tag { $tag }: event.toml and { $file }.
new-grid-given = The wall is { $columns } × { $rows }, { $squares ->
        [one] 1 square
       *[other] { $squares } squares
    }, as you asked.
new-grid-rows-follow = { $rows ->
        [one] The wall is { $columns } × 1, { $squares } squares: with your { $columns } columns, 1 row loses least of the picture.
       *[other] The wall is { $columns } × { $rows }, { $squares } squares: with your { $columns } columns, { $rows } rows lose least of the picture.
    }
new-grid-columns-follow = { $columns ->
        [one] The wall is 1 × { $rows }, { $squares } squares: with your { $rows } rows, 1 column loses least of the picture.
       *[other] The wall is { $columns } × { $rows }, { $squares } squares: with your { $rows } rows, { $columns } columns lose least of the picture.
    }
new-grid-near-count = The wall is { $columns } × { $rows }, { $squares } squares: near the { $wished } you asked for, and little of the picture is lost.
new-grid-fits-best = The wall is { $columns } × { $rows }, { $squares } squares: enough for an evening (60 to 120), and the shape is the picture's own or close to it. Give --columns, --rows or --squares for another.
new-nothing-lost = The whole picture is drawn.
new-lost-sides = { $percent } % of the picture is cut away, half at the left and half at the right.
new-lost-top-and-bottom = { $percent } % of the picture is cut away, half at the top and half at the bottom.
new-wall = It will be { $width } wide and { $height } high, and 60 mm (2.4 in) more on every side for the cards.
new-coarse = A tile is only { $pixels } pixels wide, so visitors will see steps: a larger picture shows more.
new-next = Next: look at { $folder }/event.toml, change what you like, then type “everysquare print { $folder }”.

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
print-event = { $tag } · { $event }
print-ruler-mm = { $length } mm
print-ruler-inch = { $length } in
print-this-way-up = this way up
print-card-column = column { $name } · hangs below its column
print-card-row = row { $name } · hangs left of its row
print-card-corner-1 = corner 1 of 4 · beyond the top left
print-card-corner-2 = corner 2 of 4 · beyond the top right
print-card-corner-3 = corner 3 of 4 · beyond the bottom right
print-card-corner-4 = corner 4 of 4 · beyond the bottom left

help-print = Writes the kit as PDF: squares, cards and tiles, and the manifest of what was printed
help-print-folder = The event folder
help-print-documents = Only these documents: squares, cards, tiles; left out, all of them

print-made = Wrote { $folder }:
print-made-two-sided = { $name }: { $pages } pages on { $sheets ->
        [one] 1 sheet
       *[other] { $sheets } sheets
    }, two-sided
print-made-one-sided = { $name }: { $pages ->
        [one] 1 page on 1 sheet
       *[other] { $pages } pages on { $sheets } sheets
    }, one-sided
print-made-manifest = manifest.json: what was printed where; “check” needs it
print-paper-letter = letter
print-paper-tabloid = tabloid (11 × 17 in)
print-paper-a4 = A4
print-paper-a3 = A3
print-choose-one-sided = In the printer's dialogue choose { $paper } paper, “actual size” or 100 %, one-sided.
print-choose-long-edge = In the printer's dialogue choose { $paper } paper, “actual size” or 100 %, and for squares and tiles two-sided, flip on long edge.
print-choose-short-edge = In the printer's dialogue choose { $paper } paper, “actual size” or 100 %, and for squares and tiles two-sided, flip on short edge.
print-ruler-check = Print one sheet first: its ruler must measure { $length } exactly, and each back must lie behind its front.
print-ruler-check-one-sided = Print one sheet first: its ruler must measure { $length } exactly.
print-codes-changed = Codes or sizes have changed since this kit was printed last: squares of that print will not be recognised, so use none of them.
print-next = Next: cut along the lines, and try the evening out with “everysquare rehearse { $folder }”. When squares hang: “everysquare check { $folder } PHOTO”.
