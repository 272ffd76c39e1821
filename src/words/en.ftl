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

## lengths

length-both = { $first } ({ $second })
length-mm = { $length } mm
length-m = { $length } m
length-in = { $length } in
length-ft = { $feet } ft { $inches } in

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
help-new-square-mm = Side of the paper squares
help-new-piece-mm = Side of the pieces, the pieces of the picture that visitors are given
help-new-paper = The paper in the printer: letter, tabloid, a4 or a3
help-new-flip = How the printer turns the paper over: long-edge, short-edge or none
help-new-units = What people read, inch or mm; left out, inch for letter and tabloid, mm for a4 and a3

new-usual-name = Open evening
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
new-text = The drawing's text is set in the program's own font: look at it in picture-preview.png, or turn text into paths in your drawing program.
new-coarse = A piece was only { $pixels } pixels wide and has been enlarged: a larger picture shows more.
new-warn-alike = Take care: { $one } and { $other } look so much alike that they will be mixed up. Fewer colours (--colours) or pencils of your own (--pencils) help.
new-warn-rare = Take care: { $pieces ->
    [0] no piece needs { $pencil }
    [one] only 1 piece needs { $pencil }
   *[other] only { $pieces } pieces need { $pencil }
}, so you can do without it.
new-warn-plain = Take care: { $plain } pieces are one colour all over and only { $drawn } have something to draw. A picture with more in it, or fewer squares, is more fun.
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

## plan

help-plan = Says what crowd, time and room mean for the picture, and what has to be there
help-plan-folder = The event folder
help-plan-visitors = How many visitors are expected
help-plan-minutes = How many minutes they draw
help-plan-seats = How many can sit and draw at once
help-plan-wall = The place there is for the wall, such as 2.4x1.8m or 8x6ft
help-plan-hang = Height of the wall’s lower edge over the floor, in mm; left out, it is proposed
help-plan-save = Also writes the numbers that are typed here into event.toml

plan-title = Plan for “{ $name }”
plan-levels = Pieces by level: how many there are, and how many are finished in the time.
plan-head-level = level
plan-head-mark = mark
plan-head-pieces = pieces
plan-head-minutes = minutes each
plan-head-finished = finished
plan-decided = { $count ->
    [one] 1 piece has the level that event.toml gives it.
   *[other] { $count } pieces have the level that event.toml gives them.
}
plan-balanced = Levels are balanced, as event.toml asks: drawn pieces are divided into three parts of the same size.
plan-crowd = The crowd
plan-finish = { $visitors ->
    [one] 1 visitor
   *[other] { $visitors } visitors
}, { $seats ->
    [one] 1 seat
   *[other] { $seats } seats
}, { $minutes } minutes. A seat begins a new piece every { $pace } minutes, handing out included, so that about { $finish ->
    [one] 1 piece is
   *[other] { $finish } pieces are
} finished in time.
plan-assumed = Assumed, since nobody said it: { $numbers }. Type --visitors, --minutes and --seats with your own numbers.
plan-seats-free = { $free ->
    [one] 1 seat stays free.
   *[other] { $free } seats stay free.
}
plan-fits = The picture’s { $pieces } pieces suit this crowd: { $each } for each visitor, all finished after about { $left } minutes.
plan-too-big-for-time = The picture’s { $pieces } pieces are too many: { $by ->
    [one] 1 of them stays
   *[other] { $by } of them stay
} unfinished. All of them take about { $needed } minutes.
plan-more-seats = With { $seats } seats all of them are finished in time.
plan-too-big-for-crowd = The picture’s { $pieces } pieces are too many: at { $most } for each visitor, { $by ->
    [one] 1 is
   *[other] { $by } are
} left over.
plan-too-small = The picture’s { $pieces } pieces are too few: { $by ->
    [one] 1 visitor goes
   *[other] { $by } visitors go
} without.
plan-without = { $without ->
    [one] 1 visitor finishes
   *[other] { $without } visitors finish
} no piece, whatever the grid: these seats and minutes are enough for { $finish }. More seats or more time help, and so do easier pieces.
plan-others = Grids that suit this crowd, the place and the picture’s shape:
plan-others-as-well = Other grids that suit this crowd, the place and the picture’s shape as well:
plan-head-grid = grid
plan-head-each = for each visitor
plan-head-size = wall
plan-head-lost = picture cut away
plan-others-why = { $least } to { $most } pieces suit this crowd. To take one, change columns and rows in event.toml before printing.
plan-no-others = No other grid of such squares suits this crowd, the place and the picture’s shape.
plan-wall = The wall
plan-wall-size = The squares are { $width } wide and { $height } high; with the cards around them { $around_width } wide and { $around_height } high.
plan-room-fits = That fits the place of { $width } × { $height }.
plan-room-without-cards = In the place of { $width } × { $height } the squares fit, but not all cards around them. Cards help, nothing needs them; with squares of { $square } all would fit.
plan-room-too-small = That does not fit the place of { $width } × { $height }. Squares of at most { $square } would: change square_mm in event.toml, or take another grid.
plan-hang = The lower edge hangs { $hang } over the floor.
plan-hang-proposed = Proposed: hang the lower edge { $hang } over the floor, so that adults reach as much as can be. Type --hang for another height.
plan-head-row = row
plan-head-upper = upper edge
plan-head-from-5 = from 5
plan-head-from-9 = from 9
plan-head-seated = seated
plan-head-adults = adults
plan-means-floor = floor
plan-means-stool = stool
plan-means-ladder = ladder
plan-means-helper = helper
plan-reach = Who hangs a square from where. Nearly all children from 5 years on reach { $five }, from 9 on { $nine }, somebody seated { $seated }, adults { $adults }. A stool has one step of { $stool }; children stand on it only with an adult beside them, and only adults on a ladder. “helper”: somebody else hangs it.
plan-pencils = Pencils
plan-head-pencil = pencil
plan-head-drawing = of drawing time
plan-head-pencils = pencils
plan-pencils-why = { $count } pencils in all: with { $seats ->
    [one] 1 seat
   *[other] { $seats } seats
} in use, nobody waits for any colour in { $sure } % of all moments.
plan-supplies = What else has to be there
plan-sheets = { $count } sheets of { $paper } paper: { $documents }.
plan-no-sheets = Sheets of paper cannot be counted: { $why }.
plan-things = { $tape } of tape, for the squares and { $cards } cards; pencil sharpeners: { $sharpeners }; erasers: { $erasers }.
plan-fire = { $area } m² ({ $feet } sq ft) of paper hang on the wall. Many fire rules limit that, some to a fifth of a wall: ask your site manager or fire authority.
plan-fire-part = { $area } m² ({ $feet } sq ft) of paper hang on the wall, { $percent } of the place given for it. Many fire rules limit that, some to a fifth of a wall: ask your site manager or fire authority.
plan-written = All numbers, and the level and colours of each piece, are in { $file }.
plan-saved = The numbers typed here are now in { $file }.
plan-not-saved = The numbers typed here count only this once; --save keeps them.

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
report-scale = Scale factor { $factor }: each square shows its piece { $factor } times as wide and as high.
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
help-rehearse-misdrawn = Squares with the drawing of another piece, on a paper that hangs right
help-rehearse-drawn-turned = Squares whose drawing is turned against the paper
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
print-edge-cards = Edge cards
print-pieces = Pieces
print-working = laying out the pages
print-about-squares = The fronts of squares { $labels }: blank paper with cut lines, tick marks, the label and the code.
print-about-pieces = The pieces { $labels } of the picture, with cut lines, tick marks and their labels.
print-about-backs = The backs of { $labels }: the label of each, and which way is up.
print-about-piece-backs = The backs of the pieces { $labels }: the label of each, which way is up, its level and its pencils.
print-about-cards = The edge cards { $names }, each with its name and its code.
print-levels = Level bags
print-pencils = Pencils
print-checklist = Checklist
print-wall-map = Wall map
print-about-levels = Labels for the bags of the levels { $levels }: the level’s name and marks, how many pieces, and which ones.
print-level-count = { $pieces ->
    [one] 1 piece
   *[other] { $pieces } pieces
}
print-level-more = and { $count } more
unit-mm = mm
unit-inch = in
# which word of a pencil’s name says most: last as in “light green”, or first as in “verde claro”
print-main-word = last
print-pencils-more = + { $count }
level-plain = one color
level-easy = easy
level-medium = medium
level-hard = hard
print-row = Row { $row }
print-title = { $document } – { $event }
print-actual-size = Print at 100% (“Actual size”). Never use “Fit to page”.
print-page-single = { $document } · page { $page } of { $pages } · one-sided
print-page-front-long = { $document } · page { $page } of { $pages } · two-sided, flip on long edge
print-page-front-short = { $document } · page { $page } of { $pages } · two-sided, flip on short edge
print-part = part { $part } of { $parts }
print-page-folded = { $document } · page { $page } of { $pages } · cut out, fold on the dotted line, glue
print-page-glued = { $document } · page { $page } of { $pages } · cut out, glue behind page { $front }
print-page-back = { $document } · page { $page } of { $pages } · back of page { $front }
print-event = { $tag } · { $event }
print-ruler-mm = { $length } mm
print-ruler-inch = { $length } in
print-this-way-up = this way up
print-card-column = column { $name } · goes below this column
print-card-row = row { $name } · goes left of this row
print-card-corner-1 = corner 1 of 4 · outside the top left corner
print-card-corner-2 = corner 2 of 4 · outside the top right corner
print-card-corner-3 = corner 3 of 4 · outside the bottom right corner
print-card-corner-4 = corner 4 of 4 · outside the bottom left corner

help-print = Make the kit (PDF files) and the record of what was printed
help-print-folder = The event folder
help-print-documents = Only these documents, such as squares or pieces (default: all of them)
help-print-templates = Also save the program’s page designs and wording, so you can change copies of them

print-made = Made { $folder }:
print-made-two-sided = { $name }: { $pages } pages on { $sheets ->
        [one] 1 sheet
       *[other] { $sheets } sheets
    }, two-sided
print-made-one-sided = { $name }: { $pages ->
        [one] 1 page on 1 sheet
       *[other] { $pages } pages on { $sheets } sheets
    }, one-sided
print-made-cuts = cuts: { $sheets ->
        [one] the lines of 1 sheet
       *[other] the lines of { $sheets } sheets
    } in mm as SVG, for a cutting machine
print-made-manifest = manifest.json: a record of what was printed. Keep it: “check” needs it
print-made-templates = The page designs and wording are in { $made }. Copy what you want to change into { $own } and edit it there. In words.ftl, keep only the lines you change.
print-paper-letter = letter
print-paper-tabloid = tabloid (11 × 17 in)
print-paper-a4 = A4
print-paper-a3 = A3
print-choose-one-sided = In the print dialog, choose { $paper } paper, “Actual size” or 100%, one-sided.
print-choose-long-edge = In the print dialog, choose { $paper } paper and “Actual size” or 100%. For { $documents }, choose two-sided, flip on long edge.
print-choose-short-edge = In the print dialog, choose { $paper } paper and “Actual size” or 100%. For { $documents }, choose two-sided, flip on short edge.
print-ruler-check = Print one sheet first. Its ruler must be exactly { $length } long, and each back must line up with its front.
print-ruler-check-one-sided = Print one sheet first. Its ruler must be exactly { $length } long.
print-codes-changed = The codes or sizes have changed since you last printed this kit. Squares from that print won’t be recognized, so don’t use them.
print-next = Next: cut along the lines and practice with “everysquare rehearse { $folder }”. Once squares are up: “everysquare check { $folder } PHOTO”.

error-print-too-large = a { $what } { $side } mm wide doesn’t fit on { $paper } paper next to the ruler. The largest that fits is { $largest } mm ({ $inches } in). Make it smaller in event.toml, or print on larger paper ({ $papers })
error-print-square = square
error-print-piece = piece
error-print-card = card
error-print-unknown = we don’t know a document “{ $read }”. The documents are { $known }. If a folder name has spaces, put it in quotes
error-print-unknown-near = we don’t know a document “{ $read }”. Do you mean { $near }? The documents are { $known }
error-print-typeset = a page couldn’t be laid out ({ $said }). This is a bug in the program; please report it

## checklist

checklist-intro = Check a box when a piece goes out, and when its square is up on the wall: { $pieces ->
    [one] 1 piece.
   *[other] { $pieces } pieces in all.
} Print this list twice: one copy for the piece table, one for the wall.
checklist-piece = Piece
checklist-out = out
checklist-hung = up

## pencils

pencils-intro = With { $seats ->
    [one] 1 seat in use
   *[other] { $seats } seats in use
} and these pencils, no one has to wait for a color { $percent }% of the time.
pencils-number = No.
pencils-name = Pencil
pencils-pieces = Pieces that use it
pencils-shared = Total, if everyone shares
pencils-a-table = On each table
pencils-all-tables = Total, if each table has a set
pencils-sets = Share all the pencils from one spot in the middle of the room: { $shared-in-all } in all. Or give each table its own set: { $sets-in-all } in all, here for { $tables ->
    [one] 1 table
   *[other] { $tables } tables
} with { $seats ->
    [one] 1 seat
   *[other] { $seats } seats
} each. Table sets take more pencils but less walking.
pencils-pieces-title = Which piece needs which pencils
pencils-pieces-intro = The numbers match the list above. Bold is the color that fills most of the piece.

## wall-map

wall-map-squares = All the squares together are { $width } wide and { $height } tall.
wall-map-label = A label such as { $label } is a column letter and a row number: column { $column }, row { $row }. Row 1 is at the { $from ->
    [top] top
   *[bottom] bottom
}.
wall-map-with-cards = With the edge cards around them: { $width } wide and { $height } tall.
wall-map-hang = The bottom edge of the squares is { $height } above the floor.
wall-map-hang-proposed = The bottom edge of the squares is { $height } above the floor. That’s a suggestion; to change it, set hang_mm in event.toml.
wall-map-fits = Your { $width } by { $height } space has room for the squares and the edge cards.
wall-map-fits-without-cards = Your { $width } by { $height } space has room for the squares, but not for the edge cards.
wall-map-does-not-fit = Your { $width } by { $height } space is too small for these squares.
wall-map-alt = The wall, to scale: { $columns } columns and { $rows } rows of squares with their labels, the edge cards around them, the floor below. The tables that follow give every measurement.
wall-map-floor = floor
wall-map-in-inches = Heights above the floor and distances from the left, in inches. c1 to c4 are the corner cards.
wall-map-in-mm = Heights above the floor and distances from the left, in mm. c1 to c4 are the corner cards.
wall-map-columns-title = Vertical lines
wall-map-columns-intro = Hang a plumb line (a string with a weight), or draw a faint pencil line, at these distances from the left edge of the squares. Take strings down before visitors come.
wall-map-column = Line
wall-map-from-left = From the left, { $unit }
wall-map-left-of = left of { $column }
wall-map-right-of = right of { $column }
wall-map-rows-title = Horizontal lines
wall-map-rows-intro = Stretch a string tight against the wall, or draw a faint pencil line, at these heights above the floor. Use a level; floors aren’t always even.
wall-map-row = Row
wall-map-lower = Bottom edge, { $unit }
wall-map-upper = Top edge, { $unit }
wall-map-column-cards = Column cards ({ $side } wide) go below their columns, with their top edge touching the squares.
wall-map-row-cards = Row cards ({ $side } tall) go to the left of their rows, with their right edge touching the squares.
wall-map-corner-cards = Corner cards ({ $ring } square, not counting the strip with words) go just outside the four corners and touch the squares at one point. The strip points away from the squares.

## comparison prints

print-side-by-side = Side by side
print-true-scale = Actual size
print-pairs = Piece and square
print-making-of = How the mural filled up
print-math-page = The math of our mural
print-poster = Poster
comparison-cm2 = { $area } cm²
comparison-m2 = { $area } m²
comparison-in2 = { $area } sq in
comparison-ft2 = { $area } sq ft
comparison-original = The picture
comparison-wall = Our mural
comparison-both-alt = The original picture and the mural that visitors drew from it, at the same size, each with a scale bar.
comparison-all-right = { $squares ->
        [one] One square, and it is
       *[other] { $squares } squares in { $columns ->
            [one] 1 column
           *[other] { $columns } columns
        } and { $rows ->
            [one] 1 row
           *[other] { $rows } rows
        }, and all of them are
    } in the right spot.
comparison-right = { $squares ->
        [one] One square.
       *[other] { $squares } squares in { $columns ->
            [one] 1 column
           *[other] { $columns } columns
        } and { $rows ->
            [one] 1 row
           *[other] { $rows } rows
        }.
    } { $right ->
        [0] In this photo, none was in the right spot yet.
        [one] In this photo, 1 was in the right spot.
       *[other] In this photo, { $right } were in the right spot.
    }
comparison-planned = Planned: every length in the mural is { $scale } times the length in the picture ({ $piece } becomes { $square }).
comparison-measured = Measured in the photo, from { $squares ->
        [one] 1 square
       *[other] { $squares } squares
    }: { $scale } times the length.
comparison-not-measured = Too few squares could be read in the photo to measure the scale factor.
comparison-original-size = The picture is { $width } wide and { $height } tall. Its area is { $area }.
comparison-wall-size = The mural is planned { $width } wide and { $height } tall. Its area is { $area }.
comparison-thanks = Thank you to everyone who drew a square!
comparison-true-intro = Lay your hand or a ruler on this page: pieces and squares are shown at their real size. The frame in the picture shows the part you see enlarged.
comparison-true-pieces-all = The whole picture at 1:1
comparison-true-pieces = The picture at 1:1: { $count ->
        [one] piece
       *[other] { $count } pieces,
    } { $labels }; the rest doesn’t fit on this page
comparison-true-piece-part = Part of the piece { $labels } at 1:1; the whole piece, { $side } on each side, doesn’t fit on this page
comparison-true-squares = Our mural at 1:1: { $count ->
        [one] square
       *[other] { $count } squares,
    } { $labels }
comparison-true-square-part = Part of the square { $labels } at 1:1; the whole square, { $side } on each side, doesn’t fit on this page
comparison-from-to = { $first } to { $last }
comparison-true-nested-alt = The outline of the mural with the picture in its bottom left corner, both at one scale: the mural is { $scale } times as wide and { $scale } times as tall.
comparison-true-copies = { $scale } pictures side by side are as wide as the mural, and { $scale } in a stack are as tall. { $scale } × { $scale } = { $copies } copies cover it.
comparison-true-about-copies = The mural is { $scale } times as wide and { $scale } times as tall. So its area is { $scale } × { $scale }, or about { $copies }, times as large.
comparison-true-drawing = This diagram is drawn at 1:{ $drawing }, and so is the picture inside it.
comparison-pairs-intro = On the left is the piece someone got. On the right is the square they made from it. Both are shown at the same size.
comparison-pair-alt = The piece { $label } of the picture, and next to it the square { $label } as it was drawn.
comparison-making-intro = { $checks ->
        [one] One photo of the wall was checked at this event.
       *[other] { $checks } photos of the wall were checked at this event. Here they are in order.
    }
comparison-making-some = { $shown } of the event’s { $checks } photos, spread evenly from first to last.
comparison-making-counts = { $right } of { $cells } in the right spot, empty spots: { $empty }
comparison-making-alt = The mural at { $when }: { $counts }.
comparison-curve = Squares in the right spot, over time
comparison-curve-alt = A curve of the squares in the right spot from { $first } to { $last }; the numbers are below the pictures.
comparison-counting-1 = Count the squares in the bottom row: { $columns ->
        [one] 1 square.
       *[other] { $columns } squares.
    } Count the rows from the floor up: { $rows ->
        [one] 1 row.
       *[other] { $rows } rows.
    }
comparison-counting-2 = Each square was drawn from one piece, so there are just as many squares as pieces: { $squares }.
comparison-multiplying-1 = { $columns } columns × { $rows } rows = { $squares } squares.
comparison-multiplying-row = One line of { $squares ->
        [one] 1 square
       *[other] { $squares } squares
    }: 1 × { $squares } = { $squares }.
comparison-multiplying-2 = One side of a piece is { $piece }. One side of a square is { $square }: { $scale } times as long.
comparison-multiplying-3 = { $scale } × { $scale } = { $copies } pieces fit on one square.
comparison-ratio-1 = Scale factor: { $scale }. The picture is { $width } by { $height }; the mural is { $wall-width } by { $wall-height }.
comparison-ratio-2 = Perimeter of the picture: { $around }. Perimeter of the mural: { $wall-around }, also { $scale } times as long.
comparison-ratio-3 = Area: { $scale } × { $scale } = { $copies } times as large. The picture has { $area }; the mural has { $wall-area }.
comparison-ratio-4 = Every angle stays the same, and every length grows by the same scale factor. Shapes like that are called similar. Making one is an enlargement (a dilation).
comparison-pattern = A pattern: lengths × { $scale }, areas × { $copies }
comparison-pattern-intro = Take blocks of pieces: 1 × 1, 2 × 2 and so on. However big the block, its sides become { $scale } times as long and its area { $copies } times as large.
comparison-block = Block
comparison-side-picture = Side, picture
comparison-side-wall = Side, mural
comparison-area-picture = Area, picture
comparison-area-wall = Area, mural
comparison-measuring = Planned and measured
comparison-measuring-intro = Measured in the photo, from { $count ->
        [one] 1 square
       *[other] { $count } squares
    }. The number after ± is the margin of error: 95 times out of 100 the true value is within it.
comparison-what = What
comparison-plan = Planned
comparison-found = Measured
comparison-scale-factor = Scale factor
comparison-pitch = Center of one square to the next
comparison-width = Width of the mural
comparison-height = Height of the mural
comparison-straight = How straight it is
comparison-column = Column { $column }
comparison-lower = { $name } is { $by } lower than planned.
comparison-higher = { $name } is { $by } higher than planned.
comparison-right-of = { $name } is { $by } farther right than planned.
comparison-left-of = { $name } is { $by } farther left than planned.
comparison-sinks = { $name } slopes down { $by } from left to right.
comparison-rises = { $name } slopes up { $by } from left to right.
comparison-leans-right = { $name } leans right { $by } from top to bottom.
comparison-leans-left = { $name } leans left { $by } from top to bottom.
comparison-all-straight = As far as this photo shows, rows and columns are straight.
comparison-gap = The widest gap is { $by }, between { $first } and { $second }.
comparison-overlap = The largest overlap is { $by }, where { $first } and { $second } meet.
comparison-straight-kind = With paper, tape and many hands, a little wobble is part of it. From a step back, no one can tell.
comparison-outlines = Line by line
comparison-edges = Below, the outlines of the picture are laid over the mural. Where a drawn line follows one, eye and ruler agreed.
comparison-edges-alt = The mural with the outlines of the picture drawn over it.
comparison-poster-page = { $what }: row { $row }, column { $column } of { $rows } × { $columns } · page { $page } of { $pages }
comparison-poster-size = { $width } wide and { $height } tall, on { $pages ->
        [one] 1 page.
       *[other] { $pages } pages: { $rows ->
            [one] 1 row
           *[other] { $rows } rows
        } of { $columns }.
    }
comparison-poster-about = How the poster goes together. { $size } { $steps } { $caution }
comparison-poster-1 = Print all the pages at 100%. The words next to the ruler give each page’s row and column.
comparison-poster-2 = Trim each page along its corner marks.
comparison-poster-3 = Neighboring pages overlap by { $shared }. A dotted line shows where the next page’s edge goes: glue it over that strip so the picture continues.
comparison-poster-4 = Start at the top left. Join each row from left to right, then join the rows from top to bottom.
comparison-poster-fire-m2 = The poster is { $area } m² ({ $feet } sq ft) of paper, on top of the squares. Fire codes limit paper on walls, most strictly in hallways and near exits. Ask the building manager or fire marshal before it goes up.
comparison-poster-fire-ft2 = The poster is { $feet } sq ft ({ $area } m²) of paper, on top of the squares. Fire codes limit paper on walls, most strictly in hallways and near exits. Ask the building manager or fire marshal before it goes up.
filling-label = { $when } · { $right } / { $cells }
error-print-no-wall = the straightened picture of the wall is empty: take another photo of the whole wall, from farther back
error-print-no-pairs = there’s no square to show next to its piece, because none was read well enough: take another photo, closer to the wall
error-print-no-checks = this event has no check yet: take a photo of the wall and check it first
error-print-poster = a poster { $read } mm wide can’t be printed: on this paper it can be { $least } to { $most } mm wide
error-filling-nothing = there’s nothing to animate yet: take a photo of the wall and check it first
error-filling-large = the animation can’t be made small enough to email
error-filling-gif = the animation can’t be written: { $said }

## check

help-check = Reads photos of the wall, and says what to swap, turn and find
help-check-folder = The event folder
help-check-photos = Photos of the wall: one, or several that show it in parts
check-working = Reading the wall
check-written = Written to { $folder }: report.html to look at, marked.jpg to take to the wall, wall.jpg straightened, report.json for other programs.
check-open = Open { $page } in a browser.

## display

help-display = Makes what stays: the wall's straight picture beside the original, its measures, prints to keep
help-display-folder = The event folder
help-display-photos = Photos of the wall: one, or several that show it in parts
help-display-view = How the wall is shown: as-hung, straight (nothing askew, gaps kept), closed (gaps closed too) or in-order (every square in its own cell)
help-display-codes = Whether codes stay: keep, or fill them from their surroundings
help-display-missing = What stands where no square hangs: ghost (the original in soft pencil) or open
help-display-only = Only this print, such as side-by-side; can be given several times
help-display-pair = The label of a square to show beside its piece; can be given several times
help-display-poster-width = Width of the poster in mm; left out, three pages side by side
help-display-poster-original = The original as a poster too
display-working = Looking at the wall
display-squares = { $squares ->
    [one] 1 square was read of { $cells }.
   *[other] { $squares } squares were read of { $cells }.
}
display-scale = Scale factor, measured: { $factor } ± { $within } (planned: { $planned }).
display-size = The squares cover { $width } × { $height }.
display-straight = Rows and columns hang straight: nothing is off by { $length } or more.
display-likeness = Likeness of the whole wall to the original: { $likeness } of 1. It belongs to all together.
display-written = Written to { $folder }: display.json has the figures, wall.jpg the wall.
display-suggestions = { $squares ->
    [one] A drawing may be on another square's paper. It is a hint to look, nothing more:
   *[other] { $squares } drawings may be on other squares' paper. It is a hint to look, nothing more:
}
display-print = { $name }: { $pages ->
    [one] 1 page
   *[other] { $pages } pages
}
display-mixed = { $squares ->
    [one] 1 square hangs in another cell or turned
   *[other] { $squares } squares hang in another cell or turned
}: “--view in-order” shows every square where it belongs.
retape-row-sinks-right = Row { $line } sinks { $length } to the right.
retape-row-sinks-left = Row { $line } sinks { $length } to the left.
retape-column-leans-right = Column { $line } leans { $length } to the right on its way down.
retape-column-leans-left = Column { $line } leans { $length } to the left on its way down.
retape-gap = Between { $one } and { $other } there is a gap of { $length }.
retape-overlap = { $one } and { $other } overlap by { $length }.
error-display-no-squares = no square of this event was read in the photos, only cards: step nearer, fill the frame with the wall, and take the photo again
error-display-pair = { $read } is no square of this wall that was read

## serve

help-serve = Serves the helper's page: a phone photographs the wall and reads what to swap, turn and find
help-serve-folder = The event folder
help-serve-lan = Let phones in the room's network in; left out, only this computer
help-serve-address = The address for phones, where this computer has several; lets phones in as --lan does
help-serve-port = The port
help-serve-keep-photos = Keep each photo with its check, without what the camera wrote beside the picture; left out, no photo is kept
help-serve-fresh = Begin with an empty wall instead of the last check of this evening
help-serve-new-link = Make a new link; phones that have the old one are shut out
help-serve-no-browser = Do not open the room's page in this computer's browser

serve-cli-several = This computer has several addresses. Which one is in the same network as the phones?
serve-cli-which = Type a number from 1 to { $count } (Enter for 1):
serve-cli-continues = Goes on from the check { $check }; --fresh begins with an empty wall.
serve-cli-link = Helpers: photograph the code with the phone's camera, or type { $link }
serve-cli-network = The phone must be in the same Wi-Fi as this computer ({ $network }).
serve-cli-secret = Who has this link can look and send photos, so show the code to helpers only.
serve-cli-here = The helper's page, on this computer only: { $link }
serve-cli-lan = Phones cannot reach it like this: type “--lan” behind the command to let them in.
serve-cli-room = The room's page, for the projector: { $link }
serve-cli-end = Keep this window open and the lid up. Ctrl+C ends it.
serve-cli-quiet =
    No phone has come through yet. If one tries and waits:
      1. Is it in the same Wi-Fi, with mobile data off and no VPN?
      2. Did this computer ask whether to let everysquare through its firewall? Say yes for private networks.
      3. Many schools' Wi-Fi keeps devices apart. Then switch on the phone's hotspot, join it with this computer, and start again.
serve-cli-photo = Photo { $photo }: { $right } of { $cells } right, { $wrong } wrong or turned.
serve-cli-ended = Ended. The checks are in the folder; the same command goes on from the last one.

serve-take = Photograph the wall
serve-again = Photograph again
serve-choose = Choose photos
serve-title = Wall helper
serve-headline-start = No photo yet
serve-start-advice = Stand so that the whole wall is in the picture, hold still, and take it. Parts of the wall one after the other work too.
serve-headline-fix = { $count ->
    [one] 1 thing to fix
   *[other] { $count } things to fix
}
serve-headline-to-come = { $count ->
    [one] Nothing to fix, 1 square to come
   *[other] Nothing to fix, { $count } squares to come
}
serve-headline-unknown = { $count ->
    [one] Nothing wrong, but 1 cell could not be told
   *[other] Nothing wrong, but { $count } cells could not be told
}
serve-sending = Sending the photo …
serve-sending-of = Sending several photos, one after the other …
serve-reading = Reading the wall …
serve-queue = Other photos come first. Yours waits here …
serve-last-photo = Last photo:
serve-done = Done
serve-step-all-ticked = All ticked: photograph again to make sure.
serve-heading-steps = To fix, in this order
serve-heading-wall = The wall
serve-heading-missing = Still to come
serve-heading-next = Hand out next
serve-heading-advice = For the next photo
serve-heading-help = If it does not work
serve-missing-count = { $count ->
    [0] Every square has been seen.
    [one] 1 square has not been seen yet.
   *[other] { $count } squares have not been seen yet.
}
serve-all-missing = All of them
serve-next-how = Tap a piece when you have handed it out.
serve-give-out = to hand out
serve-given = handed out
serve-map-how = Tap a cell to see what hangs there and what belongs there. Two fingers or the buttons make the map larger.
serve-larger = Larger
serve-smaller = Smaller
serve-close = Close
serve-retry = Try again
serve-cell-hangs = Hangs there now
serve-cell-belongs = Belongs there
serve-cell-nothing-seen = Not photographed yet
serve-legend-right = right
serve-legend-wrong = another square
serve-legend-turned = turned
serve-legend-empty = empty
serve-legend-unread = not readable
serve-legend-unseen = not seen yet
serve-help-laptop = Nothing happens: is the laptop awake, and its window with the code still open?
serve-help-wifi = The page does not load or stops: phone and laptop must be in the same Wi-Fi, the phone without VPN.
serve-help-isolation = Many schools' Wi-Fi keeps devices apart. Then switch on the phone's hotspot and let the laptop join it; start the program again and photograph the new code.
serve-help-private = Photos go to the laptop only and are not kept. Who listens in the same Wi-Fi can see them on their way.
serve-connection-lost = The laptop does not answer. Is it awake, and is the phone in the same Wi-Fi? What you see is the last state.
serve-link-old = This link no longer holds. Photograph the code on the laptop again.
serve-no-answer = The photo did not get through. Is the laptop awake, and the phone in the same Wi-Fi? The photo is still here: try again.
serve-no-script = This page needs JavaScript. Switch it on in the browser's settings, or use another browser.

serve-busy = Too many photos at once. Yours is sent again in a few seconds.
serve-photo-broke-off = The photo broke off on its way. Send it again.
serve-photo-slow = The photo took too long. Go nearer to the Wi-Fi's antenna and send it again.
serve-photo-too-heavy = The file is larger than { $most } MB, so it was not taken. Choose a photo in the camera's usual size.
serve-photo-too-heavy-here = The file is larger than a photo may be, so it was not sent. Choose a photo in the camera's usual size.
serve-photo-too-large = The photo has { $width } × { $height } pixels; at most { $most } million are read. Set the camera to its usual size (12 megapixels are plenty) and photograph again.
serve-photo-too-small = The photo has only { $width } × { $height } pixels. Send the original, not a small copy of it.
serve-photo-empty = The file is empty. Photograph again.
serve-photo-heic = This is a HEIC photo, which cannot be read here. On an iPhone: Settings, Camera, Formats, “Most Compatible”; or photograph with the button on this page.
serve-photo-unknown = This is no photo that can be read. JPEG, PNG, WebP and TIFF files are.
serve-photo-truncated = The photo is cut off, its end is missing. Send it again.
serve-photo-damaged = The photo is damaged or of a rare kind. Photograph again.
serve-photo-no-codes = No code of this event is to be seen. Is this the wall? Go closer, hold still, and photograph again.
serve-photo-foreign = The codes in this photo belong to another event (tag { $tags }). Photograph this event's wall, or start the program with the other folder.
serve-photo-other = Only codes of other kinds are to be seen ({ $texts }). Is this the wall? Photograph the squares.
serve-photo-too-dark = The photo is too dark. Switch on more light, or use the flash from a little to the side.
serve-photo-cannot-place = Squares are to be seen, but not which part of the wall they hang on. Step back until the whole wall is in the photo, or hang up the corner cards.
serve-photo-stumble = Something in this photo made the program stumble. Photograph again.
serve-photo-older = This photo is older than others of the same cells, so it changed nothing. Photograph again.
serve-unkept = This answer holds, but it could not be saved on the laptop: look at its window.
serve-unkept-full = This answer holds, but it could not be saved: the laptop's disk is full. Make room there.

serve-room-title = Our wall
serve-room-hang = { $count ->
    [one] 1 of { $cells } squares hangs
   *[other] { $count } of { $cells } squares hang
}
serve-room-to-come = { $count ->
    [0] All have come.
    [one] 1 is still to come
   *[other] { $count } are still to come
}
serve-room-complete = The picture is complete!
serve-room-secret = Keep the secret
serve-room-code = Code for helpers
serve-room-code-alt = Code with the link for helpers' phones
serve-room-picture = The wall as it looks now
serve-room-covered = The wall, covered: each square that hangs is marked
serve-room-lost = No connection to the laptop
serve-error-unknown = the system does not tell its addresses ({ $said }): give the laptop’s own with --address
serve-error-no-network = this laptop is in no network that a phone could reach: join the room’s Wi-Fi, or switch on a phone’s hotspot and join that, and try again
serve-error-several = this laptop has several addresses: say which with --address: { $own }
serve-error-open = { $asked } is no address of a room’s own network (10.…, 172.16.… to 172.31.…, 192.168.…): photos of the wall are served to no one else
serve-error-foreign = { $asked } is not this laptop’s address: it has { $own }
serve-error-port-taken = port { $port } is taken: is the page being served already? Look for its window, or choose another port with --port
serve-error-refused = nothing can be served at { $at }: { $said }

## tour

help-tour = Shows a whole evening on a sample event, in a few seconds
help-tour-folder = Where the sample event is put
tour-event-name = Harbour library open evening
tour-begins = A whole evening in five steps, in the folder { $folder }. Each line with a $ is a command that you can type yourself.
tour-sample =
    1. The event: event.toml says what the organiser decided, picture.png is what will hang on the wall.
       For an event of your own: everysquare new FOLDER --picture FILE
tour-print =

    2. The kit: pieces to hand out, blank squares to draw on, cards for the wall.
tour-rehearse =

    3. The wall: a made photo, since nobody has drawn yet. Some squares hang wrong; the truth is written beside it.
tour-check =

    4. The check: the photo is read, compared with the plan, and this is what to do.
tour-display =

    5. What stays: the wall straight from the front beside the original, its measures, prints to keep.
tour-compared =

    The truth file and the report agree in { $right } of { $cells } cells.
tour-ends =

    What lies where in { $folder }:
      event.toml   the settings, made to be changed by hand
      print/       pieces.pdf, squares.pdf, cards.pdf to print at 100 %, manifest.json for the check
      rehearsals/  the made photo and the truth about it
      checks/      one folder a check; open its report.html
      display/     one folder with what stays; open its side-by-side.pdf

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
error-manifest-module = modules of { $module } mm, { $low } to { $high } mm are possible
error-manifest-cells = { $columns } columns and { $rows } rows, at most { $most } squares are possible
error-manifest-sizes = squares of { $square } mm and pieces of { $piece } mm, { $low } to { $high } mm are possible
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
error-json = a file of the program’s own is not as it should be: { $said }
error-system = the system says: { $said }
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
help-value-label = LABEL
help-value-tag = TAG
help-value-mm = MM
help-value-address = ADDRESS
help-value-port = PORT
help-value-minutes = MINUTES
help-value-size = SIZE
help-value-paper = PAPER
help-value-how = HOW
help-value-unit = UNIT
help-value-which = WHICH
help-value-px = PX
help-value-part = PART
help-value-degrees = DEGREES

## errors: a photo

error-photo-no-file = there is no such file: check its name and folder
error-photo-no-right = this file may not be read: check its permissions
error-photo-is-folder = this is a folder: name the photos in it
error-photo-unreadable = the file cannot be read ({ $why }): copy it to this computer and try again
error-photo-file-too-large = the file is larger than any photo: is it the right one?
error-photo-empty = the file is empty: copy the photo again
error-photo-heic = this is a HEIC photo, which only some programs read: on the phone choose Settings, Camera, Formats, “Most Compatible”, or share the photo as JPEG, then try again
error-photo-unknown = this is not a photo that can be read: JPEG, PNG, WebP and TIFF files are
error-photo-truncated = the photo is cut off, its end is missing: copy or send it again, whole
error-photo-damaged = the photo is damaged or of a rare kind ({ $why }): copy it again, or save it as JPEG with another program
error-photo-gave-up = the decoder gave up
error-photo-no-size = no size
error-photo-wrong-pixels = wrong number of pixels
error-photo-too-large = the photo has { $width } × { $height } pixels, more than { $most } million: make it smaller and try again
error-photo-too-small = the photo has only { $width } × { $height } pixels: send the original, not a thumbnail

## errors: reading the wall

error-read-no-codes = no code of this event is to be seen: is this the wall? Go closer, hold the phone still, and try again
error-read-foreign = the codes in this photo belong to another event (tag { $tags }): check the folder, or photograph this event’s wall
error-read-other = only codes of other kinds are to be seen ({ $texts }): is this the wall? Photograph the squares
error-read-too-dark = the photo is too dark to read: switch on more light, or use the flash from a little to the side
error-read-cannot-place = squares are to be seen, but not which part of the wall they hang on: step back until the whole wall is in the photo, or hang up the corner cards
error-jpeg-size = a picture of { $width } × { $height } pixels cannot be a JPEG file: 1 to 65535 a side are possible

## errors: a made photo

error-rehearse-many-faults = the faults asked for take { $asked } cells, the wall has { $cells }: ask for fewer (a swap takes 2 cells, a cycle 3, each of the others 1)
error-rehearse-nothing-twice = no square is left that could hang twice: ask for fewer missing squares or strangers
error-rehearse-permuted-and-swapped = with every square in a wrong cell, swaps and cycles cannot be asked for as well: leave them at 0
error-rehearse-too-few = only { $squares ->
    [one] 1 square is left
   *[other] { $squares } squares are left
} to put in a wrong cell: at least 2 are needed
error-rehearse-option = { $name } is { $value }, allowed are { $allowed }
error-rehearse-lens = a lens with k1 = { $k1 }, k2 = { $k2 } folds the picture back within the frame: use smaller values
error-rehearse-view = from there the wall cannot fill { $percent } % of the photo: turn the camera less or fill less
error-rehearse-many-pixels = { $px } px a module need a photo of { $width } x { $height } px, at most 8000 x 6000 are possible: ask for fewer, or fill the frame more
error-rehearse-printed = the manifest has { $squares } squares for a wall of { $cells } cells: print the kit again
error-rehearse-jpeg = the made photo cannot be written as JPEG: { $said }
error-rehearse-range = { $low } to { $high }
error-rehearse-range-px = { $low } to { $high } px
error-rehearse-range-mm = { $low } to { $high } mm
error-rehearse-range-degrees = { $low } to { $high } degrees
error-rehearse-option-width = the photo's width
error-rehearse-option-height = the photo's height
error-rehearse-option-px-per-module = the least px a module
error-rehearse-option-misplacement = the misplacement
error-rehearse-option-askew = the tilt of the squares
error-rehearse-option-cut = the spread of the cut side
error-rehearse-option-bend = the bend of the paper
error-rehearse-option-drawn-into = the part of codes drawn up to
error-rehearse-option-fill = the fill
error-rehearse-option-yaw = the yaw
error-rehearse-option-pitch = the pitch
error-rehearse-option-roll = the roll
error-rehearse-option-view = the view
error-rehearse-option-shift-right = the shift to the right
error-rehearse-option-shift-down = the shift down
error-rehearse-option-k1 = k1
error-rehearse-option-k2 = k2
error-rehearse-option-gradient = the light's gradient
error-rehearse-option-shadow = the shadow
error-rehearse-option-vignetting = the vignetting
error-rehearse-option-red = the light's red
error-rehearse-option-green = the light's green
error-rehearse-option-blue = the light's blue
error-rehearse-option-exposure = the exposure
error-rehearse-option-blur = the blur
error-rehearse-option-noise = the noise
error-rehearse-option-sharpening = the sharpening
error-rehearse-option-quality = the JPEG's quality
error-rehearse-option-orientation = the orientation
error-rehearse-option-people = the number of people
error-rehearse-option-unsteady = factor for how untrue the drawings are

## errors: printing

error-print-changed = event.toml has changed since you printed this kit, so new pages wouldn’t match the old ones. Print the whole kit again with “everysquare print { $folder }”

## questions

print-questions = Questions
print-answers = Answers
questions-about = Cards to cut out, each with a question: { $questions }
questions-answers = Answers to the questions
questions-learners-counting = Counting
questions-learners-multiplying = Multiplying and fractions
questions-learners-ratio = Ratio and area
questions-learners-challenge = Challenge
questions-ages-counting = about 5 to 7 years
questions-ages-multiplying = about 8 to 10 years
questions-ages-ratio = about 11 to 13 years
questions-ages-challenge = for anyone
questions-about-answers = Keep this part away from the cards. All numbers come from this picture and this wall. The ages are a rule of thumb. “Needs a colour” is what the back of a piece says.
questions-heading = { $learners }: { $ages }
questions-number = No.
questions-question = Question
questions-answer = Answer
questions-working = How to find it
questions-inch = { $count } in
questions-mm = { $count } mm
questions-and = { $first } and { $last }
questions-sum = { $by ->
    [rows] Row by row from the top: { $sum }
   *[columns] Column by column from the left: { $sum }
}
questions-none = none
questions-sum-total = { $terms } = { $total }

questions-ask-pieces-needing = How many pieces need { $colour }?
questions-working-pieces-needing = { $counted }
questions-ask-colours-of-piece = How many colours does piece { $piece } need?
questions-working-colours-of-piece = { $colours }
questions-ask-in-one-row = How many squares hang in one full row?
questions-working-in-one-row = One in each column: { $columns }
questions-ask-in-one-column = How many squares hang in one full column?
questions-working-in-one-column = One in each row: { $rows }
questions-ask-in-row-needing = Look at row { $row } of the picture. How many of its pieces need { $colour }?
questions-working-in-row-needing = { $cells }
questions-ask-left-in-row = A row has { $columns } places. { $hanging } of them { $hanging ->
        [one] is
       *[other] are
    } full. How many are empty?
questions-working-left-in-row = { $columns } − { $hanging } = { $answer }
questions-ask-colours = How many colours does the whole picture need?
questions-working-colours = Count the pencils on the pencil sheet: { $pencils }
questions-ask-one-colour = How many pieces need one colour only?
questions-working-one-colour = { $counted }
questions-ask-corners = One square of paper has 4 corners. How many corners do { $squares } squares have?
questions-working-corners = 4 + 4 = { $answer }
questions-ask-sides = One square of paper has 4 sides. How many sides do { $squares } squares have?
questions-working-sides = 4 + 4 + 4 = { $answer }
questions-ask-one-more = The picture has { $squares ->
    [one] 1 piece
   *[other] { $squares } pieces
}. If it had one more, how many would it have?
questions-working-one-more = { $squares } + 1 = { $answer }
questions-ask-hands = { $helpers } helpers hang a square together. How many hands do they have?
questions-working-hands = { $hands } + { $hands } = { $answer }
questions-ask-boxes-across = Join the tick marks of a square from top to bottom. How many strips do you get?
questions-working-boxes-across = 3 lines make { $answer } strips

questions-ask-all-squares = The wall has { $columns } columns and { $rows } rows. How many squares is that?
questions-working-all-squares = { $columns } × { $rows } = { $answer }
questions-ask-fraction-needing = Exactly { $part }/{ $of } of the { $count } pieces need { $colour }. How many pieces is that?
questions-working-fraction-needing = { $count } ÷ { $of } = { $one }, then { $one } × { $part } = { $answer }
questions-ask-left = { $count } squares belong on the wall. { $hanging } are up already. How many are still missing?
questions-working-left = { $count } − { $hanging } = { $answer }
questions-ask-which-part = { $needing } of the { $count } pieces need { $colour }. That is 1/? of them. Which number does the question mark stand for?
questions-working-which-part = { $count } ÷ { $needing } = { $answer }
questions-ask-fraction-hanging = { $part }/{ $of } of the { $count } squares hang. How many squares is that?
questions-working-fraction-hanging = { $count } ÷ { $of } = { $one }, then { $one } × { $part } = { $answer }
questions-ask-not-needing = { $needing } of the { $count } pieces need { $colour }. How many do not?
questions-working-not-needing = { $count } − { $needing } = { $answer }
questions-ask-full-rows = { $rows } rows of { $columns } squares are full. How many squares hang there?
questions-working-full-rows = { $rows } × { $columns } = { $answer }
questions-ask-visitors = Every visitor draws { $each } of the { $count } squares. How many visitors does it take?
questions-working-visitors = { $count } ÷ { $each } = { $answer }
questions-ask-quarter-boxes = Join all facing tick marks of a square with straight lines. How many small boxes do you get?
questions-working-quarter-boxes = 4 across and 4 down: 4 × 4 = { $answer }
questions-ask-sides-of-squares = A square has 4 sides. How many sides do { $squares } squares have?
questions-working-sides-of-squares = { $squares } × 4 = { $answer }
questions-ask-half-of-boxes = The tick marks cut a square into 16 small boxes. Half of them are coloured. How many boxes is that?
questions-working-half-of-boxes = 16 ÷ 2 = { $answer }
questions-ask-folded = Fold a sheet in half { $times } times and open it. Into how many parts do the folds divide it?
questions-working-folded = Each fold doubles them: 2 × 2 × 2 = { $answer }
questions-ask-tables = { $tables } tables have { $pencils } pencils each. How many pencils is that?
questions-working-tables = { $tables } × { $pencils } = { $answer }
questions-ask-boxes-of-squares = The tick marks cut a square into 16 small boxes. How many boxes do { $squares } squares have?
questions-working-boxes-of-squares = { $squares } × 16 = { $answer }
questions-ask-minutes = One square takes { $each } minutes. How many can you draw in { $minutes } minutes?
questions-working-minutes = { $minutes } ÷ { $each } = { $answer }
questions-ask-sheets = { $each } squares fit on a sheet of paper. How many sheets do { $squares } squares take?
questions-working-sheets = { $squares } ÷ { $each } = { $answer }

questions-ask-scale = A piece is { $piece } wide, a square { $square }. How many times as wide is the square?
questions-working-scale = { $square } ÷ { $piece } = { $answer }
questions-ask-pieces-on-square = A square is { $scale } times as wide and as high as a piece. How many pieces cover one square?
questions-working-pieces-on-square = { $scale } × { $scale } = { $answer }
questions-ask-larger = A line on the piece is { $length } mm long. How many millimetres long is it on the square, which is { $scale } times as wide?
questions-working-larger = { $length } mm × { $scale } = { $answer } mm
questions-ask-smaller = A line on the square is { $length } mm long. How many millimetres long was it on the piece, if the square is { $scale } times as wide?
questions-working-smaller = { $length } mm ÷ { $scale } = { $answer } mm
questions-ask-larger-patch = A patch of colour on the piece covers { $length } mm². How many mm² does it cover on the square, which is { $scale } times as wide?
questions-working-larger-patch = { $length } mm² × { $scale } × { $scale } = { $answer } mm²
questions-ask-wall-width = { $squares } squares of { $square } hang side by side. How wide is the wall, in { $unit ->
    [inch] inches
   *[mm] millimetres
}?
questions-working-wall-width = { $squares } × { $square } = { $whole }
questions-ask-wall-height = { $squares } squares of { $square } hang one above the other. How high is the wall, in { $unit ->
    [inch] inches
   *[mm] millimetres
}?
questions-working-wall-height = { $squares } × { $square } = { $whole }
questions-ask-percent-needing = { $needing } of the { $count } pieces need { $colour }. What per cent is that?
questions-working-percent-needing = { $needing } ÷ { $count } × 100 = { $answer }
questions-ask-columns-to-rows = Columns to rows: { $columns } : { $rows } = { $first } : ?. Which number does the question mark stand for?
questions-working-columns-to-rows = Divide both by { $divisor }: { $rows } ÷ { $divisor } = { $answer }
questions-ask-piece-to-square = Piece to square: { $piece } : { $square } = { $first } : ?. Which number does the question mark stand for?
questions-working-piece-to-square = Divide both by { $divisor }: { $square } ÷ { $divisor } gives { $answer }
questions-ask-around = A paper ribbon goes once around the wall, which is { $columns } squares wide and { $rows } high. A square is { $square } wide. How long is the ribbon, in { $unit ->
    [inch] inches
   *[mm] millimetres
}?
questions-working-around = 2 × ({ $columns } + { $rows }) × { $square } = { $whole }
questions-ask-percent-hanging = { $percent } % of the { $count } squares hang. How many squares is that?
questions-working-percent-hanging = { $count } × { $percent } ÷ 100 = { $answer }
questions-ask-inches-to-mm = An inch is 25.4 mm. How many millimetres are { $inches } inches?
questions-working-inches-to-mm = { $inches } × 25.4 = { $answer }
questions-ask-longer-sides = The sides of a square become { $times } times as long. How many times as much paper does it take?
questions-working-longer-sides = { $times } × { $times } = { $answer }
questions-ask-percent-of-boxes = The tick marks cut a square into 16 small boxes. { $percent } % of them are coloured. How many boxes is that?
questions-working-percent-of-boxes = 16 × { $percent } ÷ 100 = { $answer }
questions-ask-boxes-ratio = In a square of 16 small boxes, 4 are coloured and 12 are white. Coloured to white is 1 : ?. Which number does the question mark stand for?
questions-working-boxes-ratio = 12 ÷ 4 = { $answer }
questions-ask-millimetres = A string is { $metres } m long. How many millimetres is that?
questions-working-millimetres = { $metres } × 1000 = { $answer }

questions-ask-next-square = Walls of 2 × 2, 3 × 3, 4 × 4 and 5 × 5 squares have 4, 9, 16 and 25 squares. Which number comes next?
questions-working-next-square = { $side } × { $side } = { $answer }
questions-ask-square-step = 4, 9, 16, 25 … How many more squares has a wall of { $to } × { $to } than one of { $from } × { $from }?
questions-working-square-step = { $to } × { $to } − { $from } × { $from } = { $answer }
questions-ask-edge = The wall has { $columns } columns and { $rows } rows. How many squares touch its outer edge?
questions-working-edge = 2 × { $columns } + 2 × { $rows } − 4, as the corners were counted twice: { $answer }
questions-ask-blocks = The wall has { $columns } columns and { $rows } rows. In how many places can you find a block of 2 × 2 squares? Blocks may overlap.
questions-working-blocks = ({ $columns } − 1) × ({ $rows } − 1) = { $answer }
questions-ask-all-blocks = The wall has { $columns } columns and { $rows } rows. How many square blocks of every size can you find: 1 × 1, 2 × 2, and so on?
questions-working-all-blocks = Size by size: { $sum }
questions-ask-seams = The wall has { $columns } columns and { $rows } rows. One strip of tape joins each pair of neighbours, side by side or one above the other. How many strips?
questions-working-seams = { $rows } × ({ $columns } − 1) + { $columns } × ({ $rows } − 1) = { $answer }
questions-ask-chessboard = The { $count } squares are coloured black and white like a chessboard, the first one black. How many are black?
questions-working-chessboard = { $odd ->
    [yes] Half of { $count }, and the one that is over: { $answer }
   *[no] Half of { $count }: { $answer }
}
questions-ask-both = How many pieces need { $first } and also { $second }?
questions-working-both = { $counted }
questions-ask-most-colours = No piece needs more than { $colours } colours. How many pieces need so many?
questions-working-most-colours = { $counted }
questions-ask-odd-numbers = 1 + 3 = 4 and 1 + 3 + 5 = 9. What do the odd numbers from 1 to { $last } add up to?
questions-working-odd-numbers = { $terms } numbers: { $terms } × { $terms } = { $answer }
questions-ask-box-edge = The tick marks cut a square into 4 × 4 small boxes. How many of these touch the edge of the square?
questions-working-box-edge = 16 − 2 × 2 in the middle = { $answer }
questions-ask-box-blocks = The tick marks cut a square into 4 × 4 small boxes. How many squares of every size can you find in it?
questions-working-box-blocks = 16 + 9 + 4 + 1 = { $answer }
questions-ask-handshakes = { $people } visitors shake hands, each once with every other. How many handshakes?
questions-working-handshakes = 5 + 4 + 3 + 2 + 1 = { $answer }
questions-ask-area-step = The sides of a piece grow from { $from } cm to { $to } cm. By how many cm² does it grow?
questions-working-area-step = { $to } × { $to } − { $from } × { $from } = { $answer }
questions-ask-folded-lines = Fold a strip of paper in half { $times } times, always the same way, and open it. How many creases does it have?
questions-working-folded-lines = { $times } times in half makes 16 parts: 16 − 1 = { $answer }

## steps

print-table-card = Table card
steps-title = Draw one square of our big picture
steps-about = A card to fold and stand on the table, with the same six pictured steps on both sides. { $steps }
steps-1 = Get a piece and the square with the same label.
steps-2 = Turn both so you can read the label.
steps-3 = Where do lines touch the edge? Use the tick marks.
steps-4 = Draw the same lines on your square, bigger.
steps-5 = Color it in. Keep the little code box white.
steps-6 = Take it to the wall. Keep your piece.
steps-fold = fold back
steps-ridge = fold back: this is the top
steps-overlap = Tape the other end here, up to this line

## who reaches what

about-feet = { $feet } ft ({ $metres } m)
about-metres = { $metres } m ({ $feet } ft)
paper-feet = { $feet } sq ft ({ $metres } m²)
paper-metres = { $metres } m² ({ $feet } sq ft)
reach-inches = { $inches } in ({ $metres } m)
reach-metres = { $metres } m ({ $inches } in)
people-children-from-5 = Children age 5 and up: { $reach }
people-children-from-9 = Children age 9 and up: { $reach }
people-seated = Seated adults: { $reach }
people-adults = Adults: { $reach }
reach-adult-hangs = An adult hangs { $rows }
reach-other-hangs = Someone else hangs { $rows }
reach-step-stool = Step stool: { $rows }
reach-stepladder = Stepladder: { $rows }
span = rows { $first } to { $last }
span-one = row { $row }
span-none = –

## helpers

print-helpers = Helpers
helpers-level = Level
helpers-pieces = Pieces
helpers-minutes = Minutes per piece
helpers-last = Stop handing out after (minutes from the start)
helpers-label = A label such as { $label } means column { $label-column }, row { $label-row }. Columns go left to right. Row 1 is at the { $rows-from ->
    [top] top
   *[bottom] bottom
}.

helpers-hand-out = Station 1: Handing out
helpers-hand-out-intro = You give each visitor a piece (a small part of the picture) and the paper square with the same label. Everyone draws, grown-ups too. Have ready: the bags, the squares in order, the checklist, a pen.
helpers-sort = Sort
helpers-sort-1 = Sort the pieces into one bag per level. The level is on the back. Lay out the squares row by row so you can find a label fast.
helpers-sort-2 = The last column tells you when to stop. A piece handed out later than that won’t get done.
helpers-say = Say
helpers-say-words = “This is a small piece of a big picture. Draw it on this square, { $scale } times as wide. What’s the picture? It’s a secret until it’s up on the wall!”
helpers-each = For each visitor
helpers-each-1 = Ask: “Something quick, or something to puzzle over?” Let them pick a piece from that bag. The level belongs to the piece, never to the child.
helpers-each-2 = Find the square with the same label. Read both labels out loud together.
helpers-each-3 = Check “out” next to that label on the checklist. Don’t write down anyone’s name.
helpers-each-4 = Point out the table card. Six pictures show what to do.
helpers-each-5 = Say: “When you’re done, take your square to the wall. Keep the piece. It shows which square is yours.”
helpers-order = Which piece next?
helpers-order-1 = Any spot on the wall is fine. Let visitors choose the level.
helpers-order-2 = In the first half, offer the hard pieces first. They take longest. Near the end, hand out quick ones only.
helpers-order-3 = The phone page lists what’s left in the same way, level by level.
helpers-secret = Keep the secret
helpers-secret-1 = Keep the picture and the question cards face down until everyone can see what the mural is.
helpers-secret-2 = If someone asks “What is it?”, say: “Your square is one of the clues!”
helpers-if = If …
helpers-if-1 = Someone has to leave early? Put the piece and the square in the “to finish” box. Anyone can finish them.
helpers-if-2 = Someone finishes early? Offer another piece. After the picture is shown, offer a question card.
helpers-if-3 = Someone wants a fresh start? That’s fine! Ask the organizer to print that sheet again. If there’s no time, use a plain square of the same size. Copy the label, large, into the same corner. The phone can’t read a plain square, so check that spot by eye.
helpers-if-4 = A square is out for 45 minutes, or its visitor has left? Ask the organizer to print both sheets again, and give that piece to someone else. If both squares come back, the check finds the extra copy.
helpers-if-5 = A child under 5? Share a piece with a grown-up, or pick one with one color.
helpers-if-6 = Pieces left over? Helpers draw them, or a class draws them tomorrow.

helpers-tables = Station 2: Drawing tables
helpers-tables-intro = You make sure all { $seats } seats have what they need, and that a blank square scares no one.
helpers-set = Set the tables
helpers-set-1 = { $step-cards ->
    [one] 1 table card. Fold it, tape its ends together, and stand it up.
   *[other] { $step-cards } table cards, about one for every four seats. Fold each one, tape its ends together, and stand it up.
}
helpers-set-2 = { $sets ->
    [one] Put the { $pencils-in-all } colored pencils where everyone can reach them.
   *[other] Share { $pencils-in-all } colored pencils from one spot in the middle of the room. Or give each table a set: { $pencils-in-sets } in all. The pencil sheet says which ones. Ask the organizer which way it is.
}
helpers-set-3 = { $sharpeners ->
    [one] 1 sharpener
   *[other] { $sharpeners } sharpeners
} and { $erasers ->
    [one] 1 eraser
   *[other] { $erasers } erasers
}, shared out, and a trash can for shavings. Keep small things away from children under 3.
helpers-set-4 = Colored pencils only. Markers bleed through and paint curls the paper. Both hide the code.
helpers-help = Help
helpers-help-rule = Point and ask; never draw it for them. Every square should be all their own.
helpers-help-1 = “Which lines reach the edge? Near which tick mark?”
helpers-help-2 = “Mark that spot on the square first. Then join the marks.”
helpers-help-3 = “What’s the biggest shape? Draw that one first, lightly.”
helpers-help-4 = “Color all the way to the edge. The next square picks up right there.”
helpers-help-5 = “Is it white on the piece? Leave it blank.”
helpers-help-scale = “The square is { $scale } times as wide. So how long will this line be?”
helpers-look = Look out for
helpers-look-1 = Can you read the label on both the piece and the square? Then both are right side up.
helpers-look-2 = Keep the code box white. If someone has drawn on it, leave it. Don’t erase or cut. The wall helper knows what to do.
helpers-look-3 = Pencils go back to the middle after each color.
helpers-look-4 = No one should wait more than a minute for a color. Suggest starting with another color.
helpers-wait = While they wait
helpers-wait-1 = They can sharpen pencils or draw on scrap paper.
helpers-wait-2 = After the picture is shown, they can try a question card. One sign is counting, two are multiplying, three are ratio, a star is for anyone. Read the cards with one sign aloud.

helpers-wall = Station 3: Wall and phone
helpers-wall-intro = You hang { $squares ->
    [one] 1 square
   *[other] { $squares } squares
} in { $columns ->
    [one] 1 column
   *[other] { $columns } columns
} and { $rows ->
    [one] 1 row
   *[other] { $rows } rows
}: { $width } wide and { $height } tall. The bottom edge is { $hang } above the floor.
helpers-hang = Hang
helpers-hang-1 = Before you start, mark the bottom edge and every other row. Use a level and a faint pencil line. The wall map has the measurements.
helpers-hang-2 = Put up the { $cards } edge cards: corners first, then columns, then rows.
helpers-hang-3 = Visitors bring you their squares. Hang each one where its column and row meet, label right side up, edge to edge: no gaps, no overlaps.
helpers-hang-4 = Roll a small piece of tape behind each corner. Or tape only the three corners without a code.
helpers-hang-5 = Check “up” on your copy of the checklist. Show visitors how to find their spot.
helpers-who = Who, and how high they reach
helpers-floor = From the floor
helpers-help-needed = Higher rows
helpers-photo = Take the photo
helpers-photo-1 = Stand about { $distance } back, facing { $photos ->
    [one] the middle of the wall
   *[other] the part you’re taking
}, with the phone about { $phone-height } above the floor. Move people and stools out of the way. Lights on, flash off.
helpers-photo-2 = Hold the phone { $held ->
    [sideways] sideways
   *[upright] upright
} and level. Use the main camera, with no zoom. Wipe the lens. Tap on the wall and wait until it’s sharp.
helpers-photo-3 = { $photos ->
    [one] Get the whole wall in one photo, with a little room around it. Take it twice.
   *[other] This wall is large. Take { $photos } photos along it, each overlapping the last by two columns or rows. Take each photo twice.
}
helpers-photo-4 = Bright spots on the paper? Take one step to the side and take it again.
helpers-photo-5 = Only the wall in the picture: no faces, no names.
helpers-photo-6 = With the helper page open (scan the QR code on the laptop), tap the photo button. No helper page? Copy the photo to the laptop and run “everysquare check”.
helpers-check = What the check says, and what to do
helpers-check-intro = Go through its list from the top, one line at a time; then take a new photo.
helpers-check-says = It says
helpers-check-do = Do this
helpers-check-right = Nothing. Leave it as it is.
helpers-check-wrong = Another square is here. Follow the list: it uses the fewest swaps.
helpers-check-turned = Turn it as the list says. The label must be right side up.
helpers-check-empty = Look for the square: on tables, on the floor, in the “to finish” box. The checklist shows whether it’s been handed out.
helpers-check-unread = Look for yourself. Right label? Then all is well. If not, move the tape, avoid the glare, and take a closer photo.
helpers-check-unseen = It’s outside the photo or hidden. Step back, or take one more.

helpers-cautions = Safety, for all helpers
helpers-cautions-intro = Your building’s, school’s and town’s rules come first. If they’re stricter than this page, follow them.
helpers-stools = Stools and ladders
helpers-stools-1 = Use a step stool with a wide step, on firm ground, next to the wall. Never use a chair, a table or a stack of anything.
helpers-stools-2 = Only adults use the step stool, with another adult next to them. Children hang what they can reach from the floor.
helpers-stools-3 = Step down before you move it. Don’t lean out to the side.
helpers-stools-4 = Rows too high for a step stool: an adult hangs them from a stepladder, when no visitors are near. Don’t climb while the room is full and pushing.
helpers-cutters = Cutting
helpers-cutters-1 = Adults cut the squares and pieces before the event. Use a paper trimmer, or a metal ruler and a utility knife. Close or lock the blade whenever you put it down.
helpers-cutters-2 = At the tables, use only kid scissors with round tips. Count them afterward. Keep trimmers and knives out of the room.
helpers-cutters-3 = Sharpeners stay on the table, with their blades screwed tight.
helpers-tape = Tape and walls
helpers-tape-1 = Test the tape in a hidden spot the day before. Painter’s tape comes off most walls, but any tape can pull off old paint or wallpaper. On painted block it may not stick: hang the squares on butcher paper.
helpers-tape-2 = Take tape off slowly, flat along the wall.
helpers-fire = Fire safety and crowds
helpers-fire-1 = About { $paper-area } of paper will hang here. Fire codes limit that. Don’t add more without asking the organizer.
helpers-fire-2 = Put nothing on or near doors, fire alarms, extinguishers, signs, heaters and lamps.
helpers-fire-3 = Keep exits clear to their full width: no bags, no tables, no lines of people. Know how you would lead everyone out.
helpers-fire-4 = Don’t let in more people than the sign by the door allows. Is it too full? Ask visitors to wait outside.
helpers-pictures = Children in photos
helpers-pictures-1 = Take photos of the wall only. Ask everyone to step aside first.
helpers-pictures-2 = School or library rules about photos and phones apply to helpers and parents too. If personal phones aren’t allowed, use one that belongs to the school or library.
helpers-pictures-3 = The check keeps the wall and its cards only, and nothing about where and with what a photo was taken. Delete the photo from the phone afterwards.
helpers-pictures-4 = Don’t put children’s names on squares, on the checklist or on the wall unless their family agrees. (The labels stay, of course.)
helpers-room = In the room
helpers-room-1 = Tape down cables. Keep bags under the tables. Wipe up spills right away.
helpers-room-2 = Keep one aisle wide enough for a wheelchair, and leave one seat at the end of a table without a chair.
helpers-room-3 = Know who gives first aid and where the kit is.

## guide

print-guide = Guide
guide-title = Your event
guide-intro = { $event }: everyone draws one small piece of a picture, bigger. Together the pieces make the whole picture on the wall. This guide is for you, the organizer. All numbers come from your picture and your settings.
guide-numbers = In numbers
guide-what = Item
guide-how-much = Number
guide-assumed = { $value } (assumed)
guide-crowd = Visitors
guide-crowd-value = { $visitors }
guide-time = Drawing time
guide-time-value = { $minutes } minutes
guide-seats = Seats
guide-seats-value = { $seats ->
    [one] 1 seat at 1 table
   *[other] { $seats } seats at { $tables ->
        [one] 1 table
       *[other] { $tables } tables
    } of six
}
guide-picture = Picture
guide-picture-value = { $columns ->
    [one] 1 column
   *[other] { $columns } columns
}, { $rows ->
    [one] 1 row
   *[other] { $rows } rows
}: { $squares ->
    [one] 1 square
   *[other] { $squares } squares
} in { $colours ->
    [one] 1 color
   *[other] { $colours } colors
}
guide-square = Piece and square
guide-square-value = { $piece } becomes { $square }: scale factor { $scale }
guide-wall = Mural
guide-wall-value = { $width } wide and { $height } tall; with the edge cards { $width-with-cards } by { $height-with-cards }
guide-hang = Height
guide-hang-value = from { $hang } to { $top } above the floor
guide-finish = Enough time for
guide-finish-value = about { $finish ->
    [one] 1 square
   *[other] { $finish } squares
}; all { $squares } take about { $minutes-for-all } minutes
guide-verdict-fits = This grid fits: everyone gets a piece, and all of them get done.
guide-verdict-too-big-for-time = This grid is big for the time: about { $difference ->
    [one] 1 square
   *[other] { $difference } squares
} will still be blank at the end. Add minutes or seats, choose a smaller grid, or let helpers draw before and after.
guide-verdict-too-big-for-crowd = This grid is big for your crowd: when everyone has drawn two, about { $difference ->
    [one] 1 piece is
   *[other] { $difference } pieces are
} left. Invite more visitors, choose a smaller grid, or let helpers draw before and after.
guide-verdict-too-small = This grid is small for your crowd: about { $difference ->
    [one] 1 visitor won’t
   *[other] { $difference } visitors won’t
} get a piece. Let two people share one, or choose a bigger grid.
guide-assumed-note = “Assumed” means you haven’t told us yet. Type “everysquare plan FOLDER --visitors { $visitors } --minutes { $minutes } --seats { $seats } --save” with your own numbers, then print again.
guide-heights = How high it hangs
guide-row = Row
guide-lower = Bottom edge
guide-upper = Top edge
guide-reach-source = Step stools and stepladders are for adults only. Seated adults reach 48 in (2010 ADA Standards, 308.2.1). Seated children reach less: 40 in at ages 5 to 8, 44 in at 9 to 12 (the same standards, advisory table at 308.1). Standing children: the shorter ones of that age (CDC Growth Charts 2000) with an arm raised. Arm length, adult reach and the stool’s height ({ $stool }) are rules of thumb.

guide-timeline = Before the event
guide-week = A week before
guide-week-1 = Ask about the wall: paper, tape, height, exits, and how many people may be in the room. What the building manager or fire marshal says goes.
guide-week-2 = Print one sheet of squares. Measure its ruler: it must be exactly right. Each back must line up with its front.
guide-week-3 = Print everything, and the checklist twice. Check the pencil sheet: do your pencils match these colors? If not, change them under [[pencils]] in event.toml and print again.
guide-week-4 = Cut out squares and pieces, and sort the pieces into level bags. Cut a few plain squares of the same size for fresh starts. Plan on one evening for two people.
guide-week-5 = Draw one piece of each level yourself and time it.
guide-week-6 = Find helpers: one to hand out, one for every three tables or so, two for the wall.
guide-week-7 = Practice: “everysquare rehearse FOLDER” makes a practice photo with mistakes to find.
guide-week-8 = Use a picture that you may use: your own, public domain or licensed. Get permission before you post the mural online.
guide-day = The day before
guide-day-1 = Give each helper their page and a ten-minute walk-through.
guide-day-2 = Test the tape on the wall, in a hidden spot.
guide-day-3 = Mark the bottom edge and the rows with faint pencil lines, or with string that comes down before visitors come.
guide-day-4 = Sharpen the pencils and sort them into sets, if each table gets one.
guide-day-5 = Fold the table cards.
guide-day-6 = Take a test photo of the empty wall to check light and distance. On an iPhone, first set Settings > Camera > Formats > Most Compatible.
guide-day-7 = Copy the whole event folder to the laptop you’ll bring, and to a USB drive. Without print/manifest.json, no photo can be read.
guide-day-8 = Try the helper page on the room’s Wi-Fi: “everysquare serve FOLDER --lan”. Keep the laptop plugged in and awake.
guide-hours = Two hours before
guide-hours-1 = Set up tables as in the room plan. Keep aisles and exits clear.
guide-hours-2 = Put up the edge cards around the mural’s space.
guide-hours-3 = Lay out bags, squares in order, and a checklist at the piece table and at the wall.
guide-hours-4 = Charge the phone, plug in the laptop, open the helper page, and try one photo.
guide-hours-5 = Hide every copy of the picture.
guide-event = The event itself
guide-running = While it runs
guide-running-1 = Hand out by level, not by spot: visitors choose, and the hard pieces go out in the first half. They take longest.
guide-running-2 = Check the wall every half hour, while there’s little to fix.
guide-running-3 = Compare the two checklists. Is a square out a long time? Ask kindly how it’s going.
guide-running-4 = Has its visitor left? Print that square and piece again and give them to someone else.
guide-running-5 = Have some water yourself.
guide-end = The last twenty minutes
guide-end-1 = Hand out quick pieces only. Helpers take what’s left.
guide-end-2 = Hang what can be reached, check, fix, check again. An adult hangs the top rows once the room is calm.
guide-end-3 = Fill an empty spot with its piece or its blank square; someone can draw it tomorrow. A blank square with its code counts as right.
guide-end-4 = The reveal: gather everyone, count down from ten, and show the picture next to the mural. If a projector shows the mural, take off its cover.
guide-end-5 = Step back together and look. This is what it was all for.
guide-clearing = Cleaning up
guide-clearing-1 = Count scissors and knives; put stools away.
guide-clearing-2 = Leave the mural up, if the building allows it. Ask how long it may stay.
guide-clearing-3 = Delete photos from phones, from “Recently Deleted” and from cloud backups.
guide-clearing-4 = Write your real minutes per level into event.toml, so the next plan fits you.

guide-materials = What you need
guide-thing = Item
guide-amount = Amount
guide-paper = Paper
guide-paper-amount = { $paper }: { $sheets ->
    [one] 1 sheet
   *[other] { $sheets } sheets
} for the squares alone, plus 10% extra. Heavier paper is best: 32 lb printer paper or light cardstock (120 to 160 g/m²). “everysquare print” lists the sheets for everything else.
guide-printer = Printer
guide-printer-amount = Any printer. Pieces and the pencil sheet need color; black and white is fine for the rest.
guide-pencils = Colored pencils
guide-pencils-amount = { $sets ->
    [one] { $pencils-in-all } in all.
   *[other] { $pencils-in-all } if everyone shares, { $pencils-in-sets } if each table has a set.
} They’re listed below. Look for “non-toxic” on the box.
guide-sharpeners = Small supplies
guide-sharpeners-amount = { $sharpeners ->
    [one] 1 sharpener
   *[other] { $sharpeners } sharpeners
}, { $erasers ->
    [one] 1 eraser
   *[other] { $erasers } erasers
}, scrap paper, pens for the checklists
guide-tape = Painter’s tape
guide-tape-amount = about { $tape }: { $rolls ->
    [one] 1 roll
   *[other] { $rolls } rolls
} of { $roll } or more
guide-string = For the lines
guide-string-amount = level, tape measure, soft pencil, or string with a weight
guide-bags = Bags and boxes
guide-bags-amount = one bag for each level, one box marked “to finish”
guide-stool = Step stool
guide-stool-amount = 1 with a wide step, about { $stool } high, for adults only
guide-cutting = Cutting
guide-cutting-amount = paper trimmer, or utility knife, metal ruler and mat, before the event, adults only; kid scissors for the question cards
guide-phone = Phone and laptop
guide-phone-amount = 1 phone with a 12-megapixel camera or better, charged, and 1 laptop with this program and the event folder. For the helper page they share a Wi-Fi or a hotspot; no internet needed.
guide-signs = Table cards
guide-signs-amount = { $step-cards }: about one for every four seats
guide-bin = Cleanup
guide-bin-amount = trash can for shavings and scraps, cloth, box for finished squares
guide-pencil-list = Pencils by color
guide-pencil-list-intro = Enough that, with every seat taken, no one waits for a color 95% of the time. Choose one way: share all the pencils, or give each table a set.
guide-colour = Color
guide-pencil-count = Shared
guide-pencil-sets = Table sets

guide-room = The room
guide-room-intro = A sample room, to scale, that fits your event: { $seats } seats, the wall, the phone. Your room will look different; keep the distances.
guide-room-about = Plan of a room: the wall on one side, the phone in front of its middle, then tables with seats on both sides, then the piece table; an exit and an entrance on the right, with clear ways to both.
guide-plan-wall = mural and edge cards, { $length }
guide-plan-phone = phone, about { $length } back
guide-plan-hand-out = piece table
guide-plan-exit = exit: keep clear
guide-plan-entrance = entrance: keep clear
guide-plan-bar = { $length }
guide-plan-size = the room is about { $length } wide
guide-room-1 = Put the piece table by the entrance and the mural at the far end, so people coming in see others drawing before they see the picture.
guide-room-2 = Leave 4 ft (1.2 m) between { $seats ->
    [one] the table and the walls
   *[other] tables
} for people to pass. Leave one open spot 5 ft (1.5 m) across where a wheelchair can turn, such as in front of the mural.
guide-room-3 = Keep the space between the mural and the tables free: it’s for the phone and, at the end, for everyone.
guide-room-4 = Light should come from above or the side. A window across from the wall causes glare; close the blinds.
guide-cautions = Safety
guide-fire = { $paper-area } of paper will hang on the wall. Fire codes limit how much of a wall paper may cover, some to as little as a tenth. They’re strictest in hallways and near exits. Ask the building manager or fire marshal before you print.
guide-cautions-1 = Step stools and ladders: adults only, with another adult next to them. Never chairs or tables.
guide-cautions-2 = Trimmers and knives: before the event, adults only, counted afterward and out of the room.
guide-cautions-3 = Crowd: no more people than the sign by the door allows, and every exit clear.
guide-cautions-4 = Tape: test it in a hidden spot first.
guide-cautions-5 = Photos: the wall, not children. Someone in front of the wall may stay in pictures: look before you share. School rules come first.
guide-cautions-6 = The rest is on the helpers’ last page. Stricter local rules come first.
guide-pieces = Pieces, squares and labels
guide-pieces-1 = Visitors keep their piece. It shows which square is theirs, because no names are kept.
guide-pieces-2 = Pieces no one took: helpers draw them, a class draws them tomorrow, or the blank square goes up.
guide-pieces-3 = Out, and not back after 45 minutes: print that square and piece again and give them to someone else. If both come back, the check names the extra copy.
guide-pieces-4 = Starting over is fine: print that square’s sheet again. On a plain square, copy the label into the same corner. The check can’t read it, so look for yourself.
guide-pieces-5 = The kit has one language. For another one, change language in event.toml, print that page, for example “everysquare print FOLDER table-card”, and change it back.

guide-wrong = When things go wrong
guide-wrong-what = What happens
guide-wrong-do = What to do
guide-wrong-short = Too few pieces
guide-wrong-short-do = Let two people share one square, or print the sheets again and give that piece to two people. The first square back goes on the mural. Hang the other one right beside the mural, with a sticky note over its code.
guide-wrong-many = Too many visitors at once
guide-wrong-many-do = Hand out clipboards so people can draw standing, and invite some to come back for the second half. Never pass the number on the sign by the door.
guide-wrong-few = Too few visitors
guide-wrong-few-do = Offer a second and a third piece, the challenging ones to anyone who’d like one. You and the helpers draw too. Empty spots can be filled during the week.
guide-wrong-scale = The ruler on the sheet is too short or too long
guide-wrong-scale-do = The printer resized the page. Choose “Actual size” or 100%, never “Fit”, and print that sheet again. Don’t mix sizes: the squares wouldn’t line up.
guide-wrong-backs = Backs don’t line up with their fronts
guide-wrong-backs-do = Up to 1/16 in (2 mm) is fine. If it’s more, the page flipped on the other edge: change flip in event.toml, or print one-sided with flip = "none".
guide-wrong-painted = Someone drew on a code
guide-wrong-painted-do = Hang it anyway, by its label. The check will say it can’t read it; look for yourself. Don’t erase or cut.
guide-wrong-lost = A square is lost
guide-wrong-lost-do = Print its sheet again: same label, same code. Hang the piece in its spot until then.
guide-wrong-turned = Many squares are turned
guide-wrong-turned-do = Show the wall helpers the label next to the code: it must be right side up. The check lists which squares to turn.
guide-wrong-unread = The check can read only a little
guide-wrong-unread-do = Move closer, add light, hold still. No flash, no sun on the wall. Take one photo of each half. If all else fails, or the laptop dies, go by the labels: every square has one.
guide-wrong-pencils = A color runs out
guide-wrong-pencils-do = Trade pencils between tables. A similar color is better than waiting; just use it for the whole area.
guide-wrong-late = Time is up, and squares are missing
guide-wrong-late-do = Hang the blank squares, or the pieces, in the gaps. Leave a table set up: tomorrow’s visitors can finish the picture.
guide-after = Afterwards
guide-after-1 = Leave the mural up with the original next to it. “everysquare display FOLDER PHOTO” makes the keepsakes: prints, a poster, a math page. Add a sign: “Drawn by everyone who came.”
guide-after-2 = Put the question cards and the pencil sheet out below the mural; keep the answers with you.
guide-after-3 = Thank everyone with a photo of the mural, with no people in it. Cover any name a child wrote before you share it.
guide-after-4 = Take it down row by row and keep the order, so it can go up again somewhere else.
guide-after-5 = The squares belong to the people who drew them. Say when they can pick them up: the piece they kept shows which one is theirs.
guide-after-6 = The photos in the event folder show children’s work. Keep one backup of the folder, and decide when to delete both.

## errors: the picture

error-picture-empty = the file is empty: choose a PNG, JPEG, WebP, TIFF or SVG file
error-picture-format = this is no picture in a format that is read here: save it as PNG, JPEG, WebP, TIFF or SVG
error-picture-heic = this is a HEIC picture, which is not read here: export it as JPEG or PNG first
error-picture-large = the picture has { $width } × { $height } pixels: make it smaller, at most { $most } a side and 100 million in all
error-picture-short = the picture's file is cut short: copy or download it again
error-picture-damaged = the picture's file is damaged ({ $why }): copy it again, or open it in another program and save it as PNG
error-picture-no-pixels = it has no pixels
error-picture-svg = the SVG drawing cannot be used ({ $why }): save it again as plain SVG, or as PNG
error-picture-outside = the SVG drawing shows something outside its own file, { $named }, which is never loaded: embed it, or save the drawing as PNG
error-picture-letter = the SVG drawing has text with the letter “{ $letter }”, which no font here has: turn its text into paths, or save it as PNG
error-picture-kind = the picture is of a kind that is not read here ({ $said }): open it in another program and save it as PNG
error-picture-save = the picture cannot be saved as PNG: { $said }
error-svg-gave-up = its reader gave up
error-svg-text = it has more than { $most } MB of text
error-svg-no-text = it is no text in UTF-8
error-svg-no-size = it has no size that can be drawn
error-svg-costly = { $what }, which would take too long to draw
error-svg-deep = it has elements within elements more than { $most } deep
error-svg-filter = a filter in it has { $name } = { $value }
error-svg-filters = it has { $count } steps of filters
error-reduce-one-colour = the picture is one colour all over, so there is nothing to draw: choose another one
error-reduce-one-pencil = in these pencils the picture is one colour all over ({ $pencil }): choose more pencils, or others that are less alike
error-grid-columns = { $read } columns: { $least } to { $most } are possible
error-grid-rows = { $read } rows: { $least } to { $most } are possible
error-grid-squares = { $read } squares: { $least } to { $most } are possible
error-grid-cells = { $columns } columns and { $rows } rows make { $squares } squares: at most { $most } are possible

## errors: a new event

error-new-file = { $path } is a file: give the name of a folder
error-new-taken = { $path } holds an event already and is left as it is: change its event.toml, or choose another folder
error-new-piece = a piece of { $piece } mm is larger than its square of { $square } mm: choose a smaller --piece-mm or a larger --square-mm
new-less-than-one = less than 1
typed-name = 1 to { $most } characters on one line are allowed
typed-tag = 3 characters of { $letters } are allowed
typed-whole-from = a whole number from { $least } to { $most } is allowed
typed-number-from = a number from { $least } to { $most } is allowed
typed-millimetres-from = a number of millimetres from { $least } to { $most } is allowed
error-plan-save = --save keeps the numbers that are typed with it: add --visitors, --minutes, --seats, --wall or --hang

error-settings-table = a table is expected here, [{ $name }] and its settings on lines of their own
error-settings-list = a list is expected here, one [[{ $name }]] for each
error-settings-whole = a whole number from { $least } to { $most } is allowed
error-settings-millimetres = a number from { $least } to { $most } is allowed, in millimetres
error-settings-minutes = a number from { $least } to { $most } is allowed, in minutes
error-settings-yes-or-no = true or false is allowed, without quotes
error-settings-choice = { $choices } is allowed, in quotes
error-settings-belongs-top = it belongs to the top of the file, above the first [table]
error-settings-belongs = it belongs to [{ $section }]
error-settings-near = do you mean { $near }?
error-settings-known = known are { $known }
error-settings-name = a text in quotes is allowed, on one line, 1 to { $most } characters long
error-settings-tag = 3 characters of { $letters } are allowed, in quotes
error-settings-file = the name of a file within the event folder is allowed, such as "picture.png"
error-settings-colours = { $count } [[pencils]] are listed: { $count } is allowed, or leave colours out
error-settings-pencils = { $count } are listed, { $least } to { $most } are allowed
error-settings-colour = a colour such as "#3a8f4d" is allowed, two hexadecimal digits each for red, green and blue
error-settings-of-pencil = { $name } for number { $number } of the [[pencils]]
error-settings-pencil-example = name = "leaf green" and srgb = "#3a8f4d" under every [[pencils]]
error-settings-pencils-example = name = "leaf green" and srgb = "#3a8f4d" under one for each
error-settings-top-example = a line such as { $line } at the top
error-settings-wall-example = { $line } under [wall]
error-settings-piece = at most square_mm is allowed, which is { $square }
error-settings-module = the code and 4 modules of white around it are 29 modules wide, more than square_mm = { $square } holds: a smaller number is allowed
error-settings-room = a width, an x, a height and a unit are allowed, such as "2.4x1.8m" or "8x6ft" (m, cm, mm, ft or in), each from 0.2 to 50 m
error-settings-minutes-a-piece = four numbers from { $least } to { $most } are allowed, in minutes, for a plain, an easy, a medium and a hard piece, none smaller than the one before
error-settings-level-names = four different names in quotes are allowed, the easiest first, each 1 to { $most } characters long (plain, easy, medium and hard only for their own level)
error-settings-bounds = three ascending numbers from { $least } to { $most } are allowed: the scores at which easy, medium and hard begin
error-settings-piece-twice = this piece is listed twice: keep one of them
error-settings-of-piece = { $name } for number { $number } of the [[pieces]]
error-settings-piece-example = label = "D7" and level = "hard" under every [[pieces]]
error-settings-label = a piece of this wall is allowed, columns A to { $column } and rows 1 to { $row }, such as "A1"
error-settings-rows = with { $columns ->
    [one] 1 column
   *[other] { $columns } columns
} at most { $most } rows are allowed, { $squares } squares in all

## event.toml: what its comments say

event-head = What the evening is. Change what you like, then run the command again; whatever follows a # is for people.
event-tag = in every code of this event; once the squares are printed, leave it
event-language = of all that is printed and shown: { $choices }
event-file = in this folder
event-colours = how many pencils each table needs
event-pencils = Your own pencils instead: leave colours out and list each one at the end of this file, like this:
event-pencils-name = leaf green
event-columns = side by side, lettered from the left
event-rows = one above the other
event-piece-mm = side of the piece of the picture that a visitor is given
event-square-mm = side of the paper it is redrawn on
event-rows-from = where row 1 is: { $choices }
event-module-mm-usual = left out: as small as a phone can read on a wall of this size
event-module-mm = leave it out for as small as a phone can read on a wall of this size
event-inset-mm = from the cut edges to the code; neighbours and tape cover the edges first
event-flip = how the printer turns the paper over: { $choices } (single-sided)
event-units = what people read: { $choices }; this file is always in mm
event-visitors = how many you expect
event-minutes = how long they draw
event-seats = how many can draw at once
event-room = the place there is for squares and cards; or "8x6ft"
event-hang-mm = the wall's lower edge over the floor; left out: proposed from what people reach
event-minutes-a-piece = for a plain, an easy, a medium and a hard piece
event-level-names = the easiest first
event-own-level-names = your own words for the levels, the easiest first
event-bounds = the scores at which easy, medium and hard begin; “everysquare plan” shows each piece's level
event-balanced = true: as many easy as medium as hard pieces, whatever their scores
event-pieces = Where you know better, list the piece at the end of this file, like this:
event-pieces-level = plain, easy, medium or hard, or your own word for it

## likeness

likeness-elsewhere = { $square } looks like { $other } drawn on { $square }'s paper; look
likeness-elsewhere-turned = { $square } looks like { $other }, turned { $degrees }° clockwise, drawn on { $square }'s paper; look
likeness-turned = the drawing on { $square } looks turned { $degrees }° clockwise against its paper; look
likeness-unread = the square in { $cell } cannot be read; its drawing looks like { $other }: look
