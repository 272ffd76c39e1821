### English. One line a sentence; a name in braces is filled in by the program.

## lists

words-one-of = { $before } or { $last }

## words of an event

error-words-at = templates/words.ftl, line { $line }: { $read }: { $what }
error-words-too-large = templates/words.ftl is larger than { $most } MB: a file of words holds single sentences only
error-words-unknown = there is no such word; a comment that begins with # may stand anywhere
error-words-unknown-near = there is no such word; do you mean { $near }?
error-words-twice = this word stands here twice: keep one of them
error-words-variable-near = { $word } has nothing of this name to fill in; do you mean { $near }?
error-words-variable-known = { $word } has nothing of this name to fill in; it has { $known }
error-words-variable-none = { $word } has nothing to fill in: leave the braces out
error-words-syntax = this cannot be read: a line such as “print-squares = Squares” is expected, and more lines of the same sentence begin with spaces
error-words-braces = a brace is missing: every { "{" } needs its { "}" }
error-words-default = of several choices exactly one must have a * before it, such as *[other]
error-words-quotes = a quotation mark is missing: every " needs a second one on its line
error-words-empty = the sentence is missing: it stands behind the =
error-words-placeable = between { "{" } and { "}" } only what the program fills in may stand, such as { "{ $name }" }
error-words-term = this begins with a -, which has no meaning here: name the word as the program does
error-words-attribute = only a sentence behind the = may stand here, without lines that begin with a point
error-words-reference = only what the program fills in may stand in braces, such as { "{ $name }" }: no other word, no function, no \u
error-words-control = this line holds a control character: delete it and type it again
error-words-depth = too many braces stand in each other here

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
help-new-picture = The picture to redraw: PNG, JPEG, WebP, TIFF or SVG. The file itself is left alone
help-new-columns = Squares side by side
help-new-rows = Squares one above the other
help-new-squares = About how many squares there should be, instead of columns and rows
help-new-name = What the evening is called
help-new-tag = Three characters in every code of this event, of 23456789ABCDEFGHJKLMNPQRSTUVWXYZ; left out, they are drawn by lot
help-new-colours = How many pencil colours the picture is drawn with
help-new-pencils = A file with your own pencils: [[pencils]] with name and srgb, as in an event.toml, whose pencils can be taken over so too
help-new-black-and-white = Draw in greys only, as many as --colours says
help-new-fit = What happens to a picture of another shape than the wall's: crop cuts it, pad adds to it
help-new-language = The language of all that is printed: en or es
help-new-square-mm = Side of the paper squares
help-new-tile-mm = Side of the tiles, the pieces of the picture that visitors are given
help-new-paper = The paper in the printer: letter, tabloid, a4 or a3
help-new-flip = How the printer turns the paper over: long-edge, short-edge or none
help-new-units = What people read, inch or mm; left out, inch for letter and tabloid, mm for a4 and a3

new-made = Made { $folder } for “{ $name }”, tag { $tag }: event.toml, { $file }, and picture-preview.png to look at.
new-squares = { $count ->
    [one] 1 square
   *[other] { $count } squares
}
new-grid-given = The wall is { $columns } × { $rows }, { $squares }, as you asked.
new-grid-rows-follow = The wall is { $columns } × { $rows }, { $squares }: of all grids as wide as you asked, this one loses least of the picture.
new-grid-columns-follow = The wall is { $columns } × { $rows }, { $squares }: of all grids as high as you asked, this one loses least of the picture.
new-grid-near-count = The wall is { $columns } × { $rows }, { $squares }: near the { $wished } you asked for, and little of the picture is lost.
new-grid-fits-best = The wall is { $columns } × { $rows }, { $squares }: enough for an evening (60 to 120), and the shape is the picture's own or close to it. Give --columns, --rows or --squares for another.
new-nothing-lost = The whole picture is drawn.
new-lost-sides = { $percent } % of the picture is cut away, half at the left and half at the right.
new-lost-top-and-bottom = { $percent } % of the picture is cut away, half at the top and half at the bottom.
new-wall = It will be { $width } wide and { $height } high, and 60 mm (2.4 in) more on every side for the cards.
new-added-sides = The whole picture is drawn; to have the wall's shape, { $percent } % of the wall was added at the left and right.
new-added-top-and-bottom = The whole picture is drawn; to have the wall's shape, { $percent } % of the wall was added at the top and bottom.
new-pencils = It is drawn with { $count } pencils: { $names }. Change their names in event.toml as you like.
new-coarse = A tile was only { $pixels } pixels wide and has been enlarged: a larger picture shows more.
new-warn-alike = Take care: { $one } and { $other } look so much alike that they will be mixed up. Fewer colours (--colours) or pencils of your own (--pencils) help.
new-warn-rare = Take care: { $tiles ->
    [0] no tile needs { $pencil }
    [one] only 1 tile needs { $pencil }
   *[other] only { $tiles } tiles need { $pencil }
}, so you can do without it.
new-warn-plain = Take care: { $plain } tiles are one colour all over and only { $drawn } have something to draw. A picture with more in it, or fewer squares, is more fun.
new-next = Next: look at { $folder }/picture-preview.png and event.toml, change what you like, then type “everysquare print { $folder }”.

## colours of pencils, in words that a child knows

colour-red = red
colour-orange = orange
colour-yellow = yellow
colour-olive = olive green
colour-green = green
colour-turquoise = turquoise
colour-blue = blue
colour-purple = purple
colour-pink = pink
colour-brown = brown
colour-cream = cream
colour-white = white
colour-grey = grey
colour-black = black
colour-very-light = very light { $colour }
colour-light = light { $colour }
colour-dark = dark { $colour }
colour-very-dark = very dark { $colour }
colour-numbered = { $colour } { $number }

## report

report-language = en
report-title = Wall check: { $name }
report-kind = Wall check
report-made = This is a made picture of a wall, not a photo.
report-taken = { $photos ->
    [one] From 1 photo, taken { $taken }.
   *[other] From { $photos } photos, the first taken { $taken }.
}
report-photos = { $photos ->
    [one] From 1 photo.
   *[other] From { $photos } photos.
}
report-photo = Photo { $number }: { $width } × { $height } pixels, { $codes ->
    [one] 1 code read
   *[other] { $codes } codes read
}
report-all-right = All { $cells } squares hang where they belong.
report-to-do = { $steps ->
    [one] 1 thing to do.
   *[other] { $steps } things to do.
}
report-cannot-tell = Nothing wrong was found, but { $unknown ->
    [one] 1 of { $cells } cells could not be told.
   *[other] { $unknown } of { $cells } cells could not be told.
}
report-count-right = { $count } of { $cells } right
report-count-wrong = { $count } wrong
report-count-turned = { $count } turned
report-count-empty = { $count } empty
report-count-unread = { $count } unread
report-count-unseen = { $count } not in the photo
report-heading-to-do = To do, in this order
report-heading-wall = The wall
report-heading-marked = The photo, marked
report-heading-straight = The wall, straightened
report-heading-advice = For the next photo
report-heading-facts = Figures
report-missing = Seen nowhere: { $squares }
report-missing-untold = { $count ->
    [one] 1 square more was not seen, but its own cell could not be told either.
   *[other] { $count } squares more were not seen, but their own cells could not be told either.
}
report-twice = Seen more than once: { $squares }
report-stranger = Not of this event: “{ $text }” at { $cell }
report-rows = Row
report-columns = Column
report-scale = Scale factor { $factor }: each square shows its tile { $factor } times as wide and as high.
report-size = The wall is { $width } × { $height } mm.
report-shift = The square farthest from the middle of its cell is off by { $mm } mm.
report-modules = Photo pixels to a module of a square’s code: { $px }.
report-picture-marked = The photo with every faulty cell outlined and named; all outside the wall and its cards is blank.
report-picture-straight = The wall as seen straight from the front.
report-private = The photo itself is not kept. This page holds the wall and its cards only and loads nothing from elsewhere.
report-turned-top-right = top points right
report-turned-top-down = upside down
report-turned-top-left = top points left
report-more = { $squares } and { $count } more
legend-right = right
legend-wrong = another square, the one of that name
legend-wrong-short = wrong square, see the list
legend-turned = own square, turned; its top points that way
legend-wrong-turned = another square, turned as well; its top points that way
legend-stranger = a square of another event
legend-empty = empty
legend-unread = something hangs there, its code cannot be read
legend-unseen = not in the photo
cell-right = { $cell }: right
cell-wrong = { $cell }: wrong, { $square } hangs here
cell-wrong-turned = { $cell }: wrong, { $square } hangs here and is turned ({ $how })
cell-stranger = { $cell }: wrong, a square of another event hangs here
cell-turned = { $cell }: turned, { $how }
cell-empty = { $cell }: empty
cell-unread = { $cell }: could not be read
cell-unseen = { $cell }: not in the photo
mark-empty = empty
mark-turned = { $degrees ->
    [90] ↻ 90°
    [180] ↻ 180°
   *[270] ↺ 90°
}
mark-wrong = → { $square }
mark-wrong-turned = → { $square } ↻
mark-stranger = ✕ foreign
mark-spare = ✕ spare
mark-unread = ?

## fixes

fix-turn = { $by ->
    [quarter] Turn { $cell } a quarter turn to the right (clockwise).
    [half] Turn { $cell } half round: it hangs upside down.
   *[three-quarters] Turn { $cell } a quarter turn to the left (anticlockwise).
}
fix-swap = Swap { $a } and { $b }.
fix-swap-upright-one = Swap { $a } and { $b }; hang the one that comes to { $cell } upright.
fix-swap-upright-both = Swap { $a } and { $b }; hang both upright.
fix-move = Move the square at { $from } to { $to }.
fix-move-upright = Move the square at { $from } to { $to } and hang it upright.
fix-remove-copy = Take down the square at { $cell }: it is a spare copy of { $square }.
fix-remove-stranger = Take down the square at { $cell }: it is not of this event.
fix-look = { $count ->
    [one] Look at { $cells }: its code cannot be read.
   *[other] Look at { $cells }: their codes cannot be read.
}
fix-look-guess = { $count ->
    [one] Look at { $cells }: its code cannot be read. Seen nowhere yet: { $squares }.
   *[other] Look at { $cells }: their codes cannot be read. Seen nowhere yet: { $squares }.
}
fix-look-moved = Look at { $cells }: the photos show different squares there, so something was moved in between.
fix-look-beyond = Look at { $cell }, which no photo shows: the square at { $from } belongs there.
fix-fetch = Find square { $square } and hang it in its place.
fix-fetch-perhaps = Find square { $square } (perhaps on the wall, where nothing could be read) and hang it in its place.
fix-fetch-listed = Find the { $count } squares that were seen nowhere (listed below) and hang each in its place.
fix-fetch-many = Find these squares and hang each in its place: { $squares }.

## advice

advice-step-back = { $part ->
    [edge] Step back or take one more photo: the { $side ->
        [left] left edge
        [right] right edge
        [upper] upper edge
       *[lower] lower edge
    } of the wall is outside the photo.
    [most] Step back or take more photos: most of the wall, on the { $side ->
        [left] left
        [right] right
        [upper] upper side
       *[lower] lower side
    }, is outside the photo.
   *[other] Step back or take one more photo: the { $side ->
        [left] left
        [right] right
        [upper] upper
       *[lower] lower
    } { $part ->
        [quarter] quarter
        [third] third
        [half] half
       *[two-thirds] two thirds
    } of the wall { $part ->
        [two-thirds] are
       *[other] is
    } outside the photo.
}
advice-hidden = { $count ->
    [one] Take one more photo: { $cells } is hidden or outside.
   *[other] Take one more photo: { $cells } are hidden or outside.
}
advice-go-closer = Go closer, or take two photos of half the wall each: in photo { $photo } a module of the codes has only { $px } pixels, and { $unread ->
    [one] 1 cell
   *[other] { $unread } cells
} could not be read.
advice-uncover = { $unread ->
    [one] 1 code could not be read though the photo is sharp enough: look for tape, glare, folds or paint over it.
   *[other] { $unread } codes could not be read though the photo is sharp enough: look for tape, glare, folds or paint over them.
}
advice-mirrored = Photo { $photo } is a mirror image, as front cameras store it. It was read all the same.
advice-contradiction = { $count ->
    [one] At { $cells } the photos show different squares: something was moved in between. Take all photos again in one go.
   *[other] At { $cells } the photos show different squares: something was moved in between. Take all photos again in one go.
}
advice-shifted = Every square that was read hangs in the wrong place by the same step ({ $across }{ $down }). Perhaps the wall was begun in the wrong place: then leave the squares and move the cards instead.
advice-shift-right = { $cells ->
    [one] 1 column too far right
   *[other] { $cells } columns too far right
}
advice-shift-left = { $cells ->
    [one] 1 column too far left
   *[other] { $cells } columns too far left
}
advice-shift-down = { $cells ->
    [one] 1 row too low
   *[other] { $cells } rows too low
}
advice-shift-up = { $cells ->
    [one] 1 row too high
   *[other] { $cells } rows too high
}
advice-all-turned = Every square that was read is turned the same way ({ $how }). Was the photo turned?
advice-all-wrong = Not one square hangs in its own place. Is this the right event folder, and are the rows counted from the right end?
advice-may-hang-unseen = { $missing ->
    [one] 1 square was seen nowhere; it
   *[other] { $missing } squares were seen nowhere; they
} may hang in the { $unknown ->
    [one] cell
   *[other] { $unknown } cells
} that could not be told.

## rehearse

help-rehearse = Makes a photo of a wall that never was, with faults to find: for practice before the evening
help-rehearse-folder = The event folder, with its kit printed
help-rehearse-seed = The number that everything left to chance depends on; left out, it is drawn by lot
help-rehearse-swaps = Pairs of squares in each other's place
help-rehearse-cycles = Threes of squares, each in the next one's place
help-rehearse-turns = Squares hung turned
help-rehearse-missing = Places where nothing hangs
help-rehearse-scribbled = Squares whose code was painted over
help-rehearse-covered = Squares with tape over half of their code
help-rehearse-torn = Squares with a corner torn off
help-rehearse-duplicates = Places where a second copy of another square hangs
help-rehearse-strangers = Places where a square of another event hangs
help-rehearse-permute-all = Hang every square in a wrong place
help-rehearse-cards = Which cards hang around the wall: all, corners or none
help-rehearse-width = Width of the photo in pixels
help-rehearse-height = Height of the photo in pixels
help-rehearse-min-px-per-module = Make the photo large enough for so many pixels a module
help-rehearse-fill = How much of the photo the wall fills, 0.05 to 4; above 1 a part of it is outside
help-rehearse-yaw = How far to the right of the wall's middle the camera stands, in degrees
help-rehearse-pitch = How far above the wall's middle the camera stands, in degrees
help-rehearse-roll = How far the camera is tilted clockwise, in degrees
help-rehearse-orientation = How the phone was held: the EXIF orientation, 1 to 8
help-rehearse-mirrored = Store a mirror image, as a front camera does
help-rehearse-people = People in front of the wall, 0 to 4
help-rehearse-ladder = Put a ladder in front of the wall

rehearse-working = making the photo
rehearse-made = Made { $photo }: a made picture, not a photo, of { $cells ->
        [one] 1 place
       *[other] { $cells } places
    } on a wall that never was.
rehearse-states = In truth { $right } right, { $wrong } wrong, { $turned } turned, { $empty } empty, { $unread } that cannot be read, { $unseen } out of sight.
rehearse-truth = What is where is written in { $truth }.
rehearse-next = Next: look at it, decide what you would change, then type “everysquare check { $folder } { $photo }”.

## print

print-squares = Squares
print-cards = Cards
print-tiles = Tiles
print-working = setting the pages
print-about-squares = The fronts of squares { $labels }: blank paper with cut lines, tick marks, the label and the code.
print-about-tiles = The tiles { $labels } of the picture, with cut lines, tick marks and their labels.
print-about-backs = The backs of { $labels }: what each is called and which way is up.
print-about-tile-backs = The backs of the tiles { $labels }: what each is called, which way is up, its level and its pencils.
print-about-cards = The cards { $names }, each with its name and its code.
print-levels = Levels
print-pencils = Pencils
print-ledger = Ledger
print-wall-map = Wall map
print-about-levels = Labels for the bags of the levels { $levels }: the level’s name and marks, how many tiles, and which.
print-level-count = { $tiles ->
    [one] 1 tile
   *[other] { $tiles } tiles
}
print-level-more = and { $count } more
length-both = { $first } ({ $second })
length-mm = { $length } mm
length-m = { $length } m
length-in = { $length } in
length-ft = { $feet } ft { $inches } in
unit-mm = mm
unit-inch = in
# which word of a pencil’s name says most: last as in “light green”, or first as in “verde claro”
print-main-word = last
print-pencils-more = + { $count }
level-plain = plain
level-easy = easy
level-medium = medium
level-hard = hard
print-row = Row { $row }
print-title = { $document } – { $event }
print-actual-size = Print at 100 %, actual size – never “fit to page”
print-page-single = { $document } · page { $page } of { $pages } · one-sided
print-page-front-long = { $document } · page { $page } of { $pages } · two-sided, flip on long edge
print-page-front-short = { $document } · page { $page } of { $pages } · two-sided, flip on short edge
print-part = part { $part } of { $parts }
print-page-folded = { $document } · page { $page } of { $pages } · cut out, fold at the dots, glue
print-page-glued = { $document } · page { $page } of { $pages } · cut out, glue behind page { $front }
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

help-print = Writes the kit as PDF, and the manifest of what was printed
help-print-folder = The event folder
help-print-documents = Only these documents, such as squares or tiles; left out, all of them

print-made = Wrote { $folder }:
print-made-two-sided = { $name }: { $pages } pages on { $sheets ->
        [one] 1 sheet
       *[other] { $sheets } sheets
    }, two-sided
print-made-one-sided = { $name }: { $pages ->
        [one] 1 page on 1 sheet
       *[other] { $pages } pages on { $sheets } sheets
    }, one-sided
print-made-cuts = cuts: { $sheets ->
        [one] 1 sheet’s
       *[other] { $sheets } sheets’
    } lines in mm as SVG, for a cutting machine
print-made-manifest = manifest.json: what was printed where; “check” needs it
print-paper-letter = letter
print-paper-tabloid = tabloid (11 × 17 in)
print-paper-a4 = A4
print-paper-a3 = A3
print-choose-one-sided = In the printer's dialogue choose { $paper } paper, “actual size” or 100 %, one-sided.
print-choose-long-edge = In the printer's dialogue choose { $paper } paper, “actual size” or 100 %, and for { $documents } two-sided, flip on long edge.
print-choose-short-edge = In the printer's dialogue choose { $paper } paper, “actual size” or 100 %, and for { $documents } two-sided, flip on short edge.
print-ruler-check = Print one sheet first: its ruler must measure { $length } exactly, and each back must lie behind its front.
print-ruler-check-one-sided = Print one sheet first: its ruler must measure { $length } exactly.
print-codes-changed = Codes or sizes have changed since this kit was printed last: squares of that print will not be recognised, so use none of them.
print-next = Next: cut along the lines, and try the evening out with “everysquare rehearse { $folder }”. When squares hang: “everysquare check { $folder } PHOTO”.

error-print-too-large = a { $what } of { $side } mm does not fit { $paper } paper beside the ruler: the largest that fits is { $largest } mm ({ $inches } in); make it smaller in event.toml, or print on larger paper ({ $papers })
error-print-square = square
error-print-tile = tile
error-print-card = card
error-print-unknown = there is no document “{ $read }”: the documents are { $known }
error-print-unknown-near = there is no document “{ $read }”, do you mean { $near }? The documents are { $known }
error-print-typeset = a page could not be set ({ $said }): this is a fault of the program, please report it

## ledger

ledger-intro = Tick a box when a tile is handed out, when its square comes back, and when that square hangs on the wall: { $tiles ->
    [one] 1 tile.
   *[other] { $tiles } tiles in all.
}
ledger-tile = Tile
ledger-out = out
ledger-back = back
ledger-hung = hung

## pencils

pencils-intro = With { $seats ->
    [one] 1 seat in use
   *[other] { $seats } seats in use
}, these pencils let nobody wait for a colour in { $percent } of 100 moments.
pencils-number = No.
pencils-name = Pencil
pencils-tiles = Tiles that need it
pencils-shared = To have, shared by all
pencils-a-table = On each table
pencils-all-tables = To have, if each table has its own
pencils-sets = Either all share one store of pencils in the middle of the room, or each table keeps its own: here { $tables ->
    [one] one table
   *[other] { $tables } tables
} with { $seats ->
    [one] 1 seat
   *[other] { $seats } seats
}. Its own needs more pencils and less walking.
pencils-tiles-title = Which tile needs which pencils
pencils-tiles-intro = The numbers are those of the list above; in bold the pencil that covers most of the tile.

## wall-map

wall-map-squares = All squares together are { $width } wide and { $height } high.
wall-map-with-cards = With the cards around them: { $width } wide and { $height } high.
wall-map-hang = The lower edge of the squares hangs { $height } over the floor.
wall-map-hang-proposed = The lower edge of the squares hangs { $height } over the floor. This is proposed; hang_mm in event.toml says another height.
wall-map-fits = The place of { $width } by { $height } is large enough for squares and cards.
wall-map-fits-without-cards = The place of { $width } by { $height } is large enough for the squares, but not for the cards.
wall-map-does-not-fit = The place of { $width } by { $height } is too small for these squares.
wall-map-alt = The wall to scale: { $columns } columns and { $rows } rows of squares with their labels, the cards around them, the floor below. The tables that follow hold all of its measures.
wall-map-floor = floor
wall-map-in-inches = Heights over the floor and distances from the left in inches.
wall-map-in-mm = Heights over the floor and distances from the left in mm.
wall-map-columns-title = Upright lines
wall-map-columns-intro = Hang a string with a weight, or draw a faint pencil line, at these distances from the left edge of the squares.
wall-map-column = Line
wall-map-from-left = From the left, { $unit }
wall-map-left-of = left of { $column }
wall-map-right-of = right of { $column }
wall-map-rows-title = Level lines
wall-map-rows-intro = Stretch a string, or draw a faint pencil line, at these heights over the floor. Use a spirit level: floors slope.
wall-map-row = Row
wall-map-lower = Lower edge, { $unit }
wall-map-upper = Upper edge, { $unit }
wall-map-column-cards = Column cards, { $side } wide, hang below their columns; their upper edge touches the squares.
wall-map-row-cards = Row cards, { $side } high, hang left of their rows; their right edge touches the squares.
wall-map-corner-cards = Corner cards, { $ring } wide and high without their strip of words, hang beyond the four corners of the squares and touch them with one corner; the strip points away from the squares.

## check

help-check = Reads photos of the wall, and says what to swap, turn and find
help-check-folder = The event folder
help-check-photos = Photos of the wall: one, or several that show it in parts
check-working = Reading the wall
check-written = Written to { $folder }: report.html to look at, marked.jpg to take to the wall, wall.jpg straightened, report.json for other programs.
check-open = Open { $page } in a browser.

## tour

help-tour = Shows a whole evening on a sample event, in a few seconds
help-tour-folder = Where the sample event is put
tour-event-name = Harbour library open evening
tour-begins = A whole evening in four steps, in the folder { $folder }. Each line with a $ is a command that you can type yourself.
tour-sample =
    1. The event: event.toml says what the organiser decided, picture.png is what will hang on the wall.
       For an event of your own: everysquare new FOLDER --picture FILE
tour-print =

    2. The kit: tiles to hand out, blank squares to draw on, cards for the wall.
tour-rehearse =

    3. The wall: a made photo, since nobody has drawn yet. Some squares hang wrong; the truth is written beside it.
tour-check =

    4. The check: the photo is read, compared with the plan, and this is what to do.
tour-compared =

    The truth file and the report agree in { $right } of { $cells } cells.
tour-ends =

    What lies where in { $folder }:
      event.toml   the settings, made to be changed by hand
      print/       tiles.pdf, squares.pdf, cards.pdf to print at 100 %, manifest.json for the check
      rehearsals/  the made photo and the truth about it
      checks/      one folder a check; open its report.html

    What to try next:
      everysquare rehearse { $folder } --seed 6 --permute-all     a wall with every square in a wrong cell
      everysquare check { $folder } PHOTO.jpg                     a photo of your own, once the squares are printed
      everysquare new my-evening --picture my-picture.png         an evening of your own

## errors: the event's folder

error-folder-no-event = { $path } holds no event.toml: make an event there with “everysquare new { $path } --picture FILE”
error-folder-not-printed = { $path } holds no print/manifest.json: print the kit first with “everysquare print { $path }”
error-folder-no-picture = there is no picture { $path }: give the name of a PNG, JPEG, WebP or TIFF file
error-folder-changed = event.toml says { $own }, but the kit was printed for { $kit }: change event.toml back, or print the kit again
error-folder-described = { $tag }, { $columns } × { $rows } squares of { $side } mm
error-folder-not-text = { $path } is no text in UTF-8: save it again as plain text
error-folder-too-large = { $path } is larger than { $most } MB: such a file is no { $file }
error-folder-an-event = event.toml
error-folder-a-manifest = manifest
error-folder-a-template = template
error-folder-a-words-file = file of words
error-folder-a-picture = picture
error-folder-many-templates = { $path } holds more than { $most } templates: leave only those that replace one of the program's
error-folder-other-words = { $path } is not read: own words stand in templates/words.ftl, in the language of event.toml
error-folder-read = { $path } cannot be read: { $why }
error-folder-full = { $path } cannot be written, the disk is full: make room and run the command again
error-folder-read-only = { $path } cannot be written, its folder is read-only: copy the event folder to a place of your own
error-folder-write = { $path } cannot be written: { $why }
error-folder-no-right = you have no right to; ask whoever made it
error-folder-is-folder = it is a folder
error-folder-file-in-the-way = there is a file where a folder must be
error-folder-no-name = this is no name for a folder

## errors: manifest and codes

error-manifest-format = the manifest has format { $read }, this program reads format { $known }: print the kit again or use the program that wrote it
error-manifest-json = the manifest cannot be read: { $said }
error-manifest-wall = the manifest describes no wall: { $what }
error-manifest-code = the manifest's code { $name }: { $what }
error-manifest-code-outside = a code of { $side } mm at { $x }, { $y } mm does not lie within its square
error-manifest-cells = { $columns } columns and { $rows } rows, at most { $most } squares are possible
error-manifest-sizes = squares of { $square } mm and tiles of { $tile } mm
error-manifest-listed = { $cells } cells, but { $listed ->
    [one] 1 square is listed
   *[other] { $listed } squares are listed
}
error-manifest-twice = square { $square } is listed twice
error-manifest-same-code = squares { $first } and { $second } bear the same code
error-manifest-outside = square { $square } stands in column { $column }, row { $row }, outside the grid
error-manifest-label = square { $square } stands where event.toml has { $expected }: put rows_from back to what it was when the kit was printed, or print the kit again
error-manifest-kind = a card “{ $name }” of kind “{ $kind }”: column, row or corner was expected
error-manifest-card = the { $kind } card { $name } has no place or no size
error-code-text = “{ $text }” does not fit a code: at most { $most } characters of 0-9, A-Z, space and $%*+-./: are possible
error-code-hex = “{ $text }” are not the modules of a code: 111 hexadecimal digits were expected

## errors: event.toml

error-settings-at = event.toml, line { $line }: { $read }: { $what }
error-settings-at-empty = event.toml, line { $line }: an empty line: { $what }
error-settings-unknown = event.toml, line { $line }: { $read } is not a setting: { $hint }
error-settings-unknown-in = event.toml, line { $line }: { $read } is not a setting of [{ $section }]: { $hint }
error-settings-missing = event.toml has no { $name }: add { $example }
error-settings-no-such = { $name } is not a setting of event.toml
error-settings-twice = this name stands here twice: keep one of them
error-settings-quotes = a text must stand in quotes, such as "a4"
error-settings-no-toml = this is not TOML: { $said }

## errors: the organiser's own templates

error-template-unknown = templates/{ $name }.typ replaces no template of the program: those are { $known }
error-template-unknown-near = templates/{ $name }.typ replaces no template of the program: do you mean { $near }.typ?
error-template-line = templates/{ $name }.typ, line { $line }: { $said }: mend it, or take the file away to print with the program's own
error-template = templates/{ $name }.typ: { $said }: mend it, or take the file away to print with the program's own

## errors: the program

error-line = everysquare: { $what }
error-about = { $path }: { $what }
error-output = the output cannot be written: { $why }
error-fault = the program met a fault of its own and stopped; no file is half-written. Please report it with what you typed: { $said }
error-tour-taken = { $folder } holds an event of its own and is left as it is: give the tour another folder, “everysquare tour FOLDER”
error-tour-no-check = no check was written

## what was mistyped

typed-wrong = everysquare: { $what } (everysquare --help shows what can be typed)
typed-unknown = there is no option { $arg }
typed-unknown-near = there is no option { $arg }; do you mean { $near }?
typed-one-too-many = “{ $arg }” is one word too many
typed-no-command = there is no command “{ $command }”
typed-no-command-near = there is no command “{ $command }”; do you mean { $near }?
typed-no-value = a value must follow { $arg }
typed-value = “{ $value }” does not suit { $arg }: { $why }
typed-too-many = “{ $value }” is one value too many for { $arg }
typed-twice = { $arg } stands there twice
typed-conflict = { $arg } and { $other } cannot stand together
typed-missing = { $args } must be typed as well
typed-not-text = what was typed is no text in UTF-8
typed-choice = { $choices } is allowed
typed-whole = a whole number is expected
typed-number = a number is expected

## help

help-heading-usage = Usage
help-heading-commands = Commands
help-heading-arguments = Arguments
help-heading-options = Options
help-default = { $help } [default: { $values }]
help-possible = { $help } [possible values: { $values }]
help-help = Print help
help-version = Print version
help-language = The language before there is an event, en or es; afterwards event.toml rules
help-value-command = COMMAND
help-value-options = OPTIONS
help-value-language = LANGUAGE
help-value-folder = FOLDER
help-value-file = FILE
help-value-photo = PHOTO
help-value-document = DOCUMENT
help-value-n = N
help-value-name = NAME
help-value-tag = TAG
help-value-mm = MM
help-value-paper = PAPER
help-value-how = HOW
help-value-unit = UNIT
help-value-which = WHICH
help-value-px = PX
help-value-part = PART
help-value-degrees = DEGREES
