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
print-cards = Cards
print-pieces = Pieces
print-working = setting the pages
print-about-squares = The fronts of squares { $labels }: blank paper with cut lines, tick marks, the label and the code.
print-about-pieces = The pieces { $labels } of the picture, with cut lines, tick marks and their labels.
print-about-backs = The backs of { $labels }: what each is called and which way is up.
print-about-piece-backs = The backs of the pieces { $labels }: what each is called, which way is up, its level and its pencils.
print-about-cards = The cards { $names }, each with its name and its code.
print-levels = Levels
print-pencils = Pencils
print-checklist = Checklist
print-wall-map = Wall map
print-about-levels = Labels for the bags of the levels { $levels }: the level’s name and marks, how many pieces, and which.
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
help-print-documents = Only these documents, such as squares or pieces; left out, all of them
help-print-templates = Write the program's own templates and words as well, to start your own from

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
print-made-templates = The program’s templates and words lie in { $made }. Copy the one you want to change into { $own } and change it there; of words.ftl keep only the lines you change.
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
error-print-piece = piece
error-print-card = card
error-print-unknown = there is no document “{ $read }”: the documents are { $known }
error-print-unknown-near = there is no document “{ $read }”, do you mean { $near }? The documents are { $known }
error-print-typeset = a page could not be set ({ $said }): this is a fault of the program, please report it

## checklist

checklist-intro = Tick a box when a piece is handed out, when its square comes back, and when that square hangs on the wall: { $pieces ->
    [one] 1 piece.
   *[other] { $pieces } pieces in all.
}
checklist-piece = Piece
checklist-out = out
checklist-back = back
checklist-hung = hung

## pencils

pencils-intro = With { $seats ->
    [one] 1 seat in use
   *[other] { $seats } seats in use
}, these pencils let nobody wait for a colour in { $percent } of 100 moments.
pencils-number = No.
pencils-name = Pencil
pencils-pieces = Pieces that need it
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
pencils-pieces-title = Which piece needs which pencils
pencils-pieces-intro = The numbers are those of the list above; in bold the pencil that covers most of the piece.

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

## comparison prints

print-side-by-side = Side by side
print-true-scale = In true size
print-pairs = Piece and square
print-making-of = How the wall filled up
print-maths-page = The maths of our wall
print-poster = Poster
comparison-cm2 = { $area } cm²
comparison-m2 = { $area } m²
comparison-in2 = { $area } sq in
comparison-ft2 = { $area } sq ft
comparison-original = The original
comparison-wall = Our wall
comparison-both-alt = The original picture and the wall that visitors drew after it, at the same size, each with a bar that says how long something is in truth.
comparison-all-right = { $squares ->
        [one] One square, and it is
       *[other] { $squares } squares in { $columns ->
            [one] 1 column
           *[other] { $columns } columns
        } and { $rows ->
            [one] 1 row
           *[other] { $rows } rows
        }, and all of them are
    } in place.
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
        [0] In this photo none was seen in its place yet.
        [one] In this photo one was seen in its place.
       *[other] In this photo { $right } were seen in their place.
    }
comparison-planned = Planned: every length on the wall is { $scale } times as long as on the original ({ $square } for { $piece }).
comparison-measured = Measured in the photo, from { $squares ->
        [one] 1 square
       *[other] { $squares } squares
    }: { $scale } times as long.
comparison-not-measured = Too few squares could be read in the photo to measure how many times as long the wall really is.
comparison-original-size = The original is { $width } wide and { $height } high; its area is { $area }.
comparison-wall-size = The wall is planned { $width } wide and { $height } high; its area is { $area }.
comparison-thanks = Thank you to everybody who drew a square!
comparison-true-intro = Put your hand or a ruler on this page: pieces and squares are as large here as they really are. What is framed in the original is what you see of the wall, enlarged.
comparison-true-pieces-all = The original, all of it, at 1 : 1
comparison-true-pieces = The original at 1 : 1: { $count ->
        [one] piece
       *[other] { $count } pieces,
    } { $labels }; the whole does not fit this page
comparison-true-piece-part = A part of the piece { $labels } at 1 : 1; the whole piece, { $side } a side, does not fit this page
comparison-true-squares = Our wall at 1 : 1: { $count ->
        [one] square
       *[other] { $count } squares,
    } { $labels }
comparison-true-square-part = A part of the square { $labels } at 1 : 1; the whole square, { $side } a side, does not fit this page
comparison-from-to = { $first } to { $last }
comparison-true-nested-alt = The outline of the wall with the original in its lower left corner, both at one scale: the wall is { $scale } times as long and { $scale } times as high.
comparison-true-copies = { $scale } originals side by side are as long as the wall, { $scale } one above the other as high: { $scale } × { $scale } = { $copies } copies cover it.
comparison-true-about-copies = The wall is { $scale } times as long and { $scale } times as high, so its area is { $scale } × { $scale }, about { $copies } times as large.
comparison-true-drawing = This drawing is at 1 : { $drawing }, the original in it as well.
comparison-pairs-intro = On the left the piece that somebody was given, on the right the square that came of it. Both are shown at the same size.
comparison-pair-alt = The piece { $label } of the original, and beside it the square { $label } as it was drawn.
comparison-making-intro = { $checks ->
        [one] One photo of the wall was checked this evening.
       *[other] { $checks } photos of the wall were checked this evening. Here they are in order.
    }
comparison-making-some = { $shown } of { $checks } checks of the evening, evenly chosen, the first and the last among them.
comparison-making-counts = { $right } of { $cells } in place, { $empty } empty
comparison-making-alt = The wall at { $when }: { $counts }.
comparison-curve = Squares in place, as time went by
comparison-curve-alt = A curve of the squares in place from { $first } to { $last }; the numbers stand below the pictures.
comparison-counting-1 = Count along the lowest row: { $columns ->
        [one] 1 square.
       *[other] { $columns } squares.
    } Count from the floor up: { $rows ->
        [one] 1 row.
       *[other] { $rows } rows.
    }
comparison-counting-2 = Every square was drawn from one piece, so there are as many squares as pieces: { $squares }.
comparison-multiplying-1 = { $columns } columns × { $rows } rows = { $squares } squares.
comparison-multiplying-row = One line of { $squares ->
        [one] 1 square
       *[other] { $squares } squares
    }: 1 × { $squares } = { $squares }.
comparison-multiplying-2 = A side of a piece is { $piece }, a side of a square { $square }: { $scale } times as long.
comparison-multiplying-3 = A square has room for { $scale } × { $scale } = { $copies } pieces.
comparison-ratio-1 = Lengths, picture to wall: 1 to { $scale }. The picture is { $width } by { $height }, the wall { $wall-width } by { $wall-height }.
comparison-ratio-2 = Once around the picture: { $around }. Once around the wall: { $wall-around }, again { $scale } times as long.
comparison-ratio-3 = Areas, picture to wall: 1 to { $scale } × { $scale } = { $copies }. The picture has { $area }, the wall { $wall-area }.
comparison-ratio-4 = All angles stay as they are: that is why it still looks the same.
comparison-pattern = A pattern: lengths × { $scale }, areas × { $copies }
comparison-pattern-intro = Take blocks of pieces, 1 × 1, 2 × 2 and so on. However large the block, its side grows { $scale } times and its area { $copies } times.
comparison-block = Block
comparison-side-picture = Side, picture
comparison-side-wall = Side, wall
comparison-area-picture = Area, picture
comparison-area-wall = Area, wall
comparison-measuring = Planned and measured
comparison-measuring-intro = Measured in the photo, from { $count ->
        [one] 1 square
       *[other] { $count } squares
    }. What stands behind ± says how far off a number may be: in 95 of 100 cases not more.
comparison-what = What
comparison-plan = Planned
comparison-found = Measured
comparison-scale-factor = Scale factor
comparison-pitch = From one square to the next
comparison-width = Width of the wall
comparison-height = Height of the wall
comparison-straight = How it hangs
comparison-column = Column { $column }
comparison-lower = { $name } hangs { $by } lower than planned.
comparison-higher = { $name } hangs { $by } higher than planned.
comparison-right-of = { $name } hangs { $by } further right than planned.
comparison-left-of = { $name } hangs { $by } further left than planned.
comparison-sinks = { $name } sinks by { $by } from its left end to its right end.
comparison-rises = { $name } rises by { $by } from its left end to its right end.
comparison-leans-right = { $name } leans to the right by { $by } on its way down.
comparison-leans-left = { $name } leans to the left by { $by } on its way down.
comparison-all-straight = Rows and columns hang as straight as this photo can tell.
comparison-gap = The widest gap is { $by }, between { $first } and { $second }.
comparison-overlap = The largest overlap is { $by }, of { $first } and { $second }.
comparison-straight-kind = Paper, tape and many hands: a few millimetres belong to it, and nobody sees them from a step away.
comparison-alike = For adults: how alike are the two?
comparison-alike-how = The structural similarity index (SSIM; Wang, Bovik, Sheikh and Simoncelli 2004) goes over both pictures patch by patch and compares how bright they are, how strong their contrasts are and how their lines run; 1 would be the very same picture.
comparison-alike-number = For the whole wall its mean is { $likeness }: a number for the wall, and no mark for anybody, since every hand draws in its own way.
comparison-alike-unknown = For this wall it was not worked out; it would be a number for the wall, and no mark for anybody, since every hand draws in its own way.
comparison-edges = Below, the edges of the original lie over the wall. Where a drawn line follows an edge, the ruler and the eye agreed.
comparison-edges-alt = The wall with the edges of the original drawn over it.
comparison-poster-page = { $what }: row { $row }, column { $column } of { $rows } × { $columns } · page { $page } of { $pages }
comparison-poster-size = { $width } wide and { $height } high, on { $pages ->
        [one] 1 page.
       *[other] { $pages } pages: { $rows ->
            [one] 1 row
           *[other] { $rows } rows
        } of { $columns }.
    }
comparison-poster-about = How the poster goes together. { $size } { $steps } { $caution }
comparison-poster-1 = Print all pages at 100 %. Each says at its ruler which row and column it is.
comparison-poster-2 = Cut each page along the lines at its corners.
comparison-poster-3 = Neighbours share { $shared }. Dotted lines show where the next page’s edge comes: glue it over that strip, so that the picture runs on.
comparison-poster-4 = Begin at the top left: first each row from left to right, then the rows one below the other.
comparison-poster-fire-m2 = The poster is { $area } m² ({ $feet } sq ft) of paper, besides the squares. Many fire rules limit paper on walls, most strictly in corridors and near exits: ask the site manager or the fire authority before it goes up.
comparison-poster-fire-ft2 = The poster is { $feet } sq ft ({ $area } m²) of paper, besides the squares. Many fire rules limit paper on walls, most strictly in corridors and near exits: ask the site manager or the fire authority before it goes up.
filling-label = { $when } · { $right } / { $cells }
error-print-no-wall = the straightened wall has no pixels: photograph the whole wall once more, from further back
error-print-no-pairs = there is no square to show beside its piece: none was read well enough; photograph the wall from closer by
error-print-no-checks = there is no check of this evening yet: photograph the wall and check it first
error-print-poster = a poster { $read } mm wide cannot be printed: it can be { $least } to { $most } mm wide on this paper
error-filling-nothing = there is no picture of the wall to move: photograph the wall and check it first
error-filling-large = the moving picture cannot be made small enough to mail
error-filling-gif = the moving picture cannot be written: { $said }

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

help-serve = Run the helper page: helpers take a photo of the wall with a phone and see what to swap, turn and find
help-serve-folder = The event folder
help-serve-lan = Let phones on the same Wi-Fi connect (default: this computer only)
help-serve-address = The address for phones, if this computer has several; lets phones connect, like --lan
help-serve-port = The port
help-serve-keep-photos = Keep every photo, without the camera’s data such as time and place (default: no photo is kept)
help-serve-fresh = Start with an empty wall instead of the last check
help-serve-new-link = Make a new link; phones with the old one can’t connect anymore
help-serve-no-browser = Don’t open the room page in this computer’s browser

serve-cli-several = This computer has several addresses. Which one is on the same network as the phones?
serve-cli-which = Type a number from 1 to { $count } (Enter for 1):
serve-cli-continues = Picking up from the check { $check }. To start with an empty wall, add --fresh.
serve-cli-set-aside = The list of what helpers had checked off was damaged. We put it aside and started a new one. Nothing else is lost.
serve-cli-link = Helpers: scan the QR code with your phone’s camera, or type { $link }
serve-cli-network = The phone must be on the same Wi-Fi as this computer ({ $network }).
serve-cli-secret = Anyone with this link can see the wall and send photos, so show the QR code only to helpers.
serve-cli-here = The helper page, on this computer only: { $link }
serve-cli-lan = Phones can’t connect this way. Add --lan to the end of the command.
serve-cli-room = The room page, for the projector: { $link }
serve-cli-end = Keep this window open and the laptop lid up. Press Ctrl+C to stop.
serve-cli-quiet =
    No phone has connected yet. If one is stuck:
      1. Is it on the same Wi-Fi, with cellular data and VPN off?
      2. Did this computer ask about its firewall? Choose Allow, for private networks.
      3. Many school networks keep devices apart. Turn on a phone’s hotspot, connect this computer to it, and start again.
serve-cli-photo = Photo { $photo }: { $right } of { $cells } in the right spot, { $wrong } to fix.
serve-cli-ended = Stopped. Every check is saved. Run the same command to pick up where you left off.

serve-title = Wall helper
serve-nowhere = This link doesn’t work. Scan the QR code on the laptop again.
serve-tabs = Two jobs
serve-tab-wall = Wall
serve-tab-pieces = Pieces
serve-take = Take a photo of the wall
serve-again = Take another photo
serve-check-again = All done? Check again
serve-choose = Choose photos
serve-headline-start = No photo yet
serve-start-advice = Stand back until the whole wall is in the picture. Hold still and take the photo. You can also take it in parts.
serve-headline-fix = { $count ->
    [one] 1 thing to fix
   *[other] { $count } things to fix
}
serve-headline-to-come = { $count ->
    [one] Nothing to fix. 1 square isn’t up yet
   *[other] Nothing to fix. { $count } squares aren’t up yet
}
serve-headline-unknown = { $count ->
    [one] No mistakes, but 1 spot couldn’t be checked
   *[other] No mistakes, but { $count } spots couldn’t be checked
}
serve-photo-alt = The last photo. Each spot to fix has a mark.
serve-photo-how = Pinch the photo to see more.
serve-sending = Sending your photo…
serve-sending-of = Sending photo { $at } of { $of }…
serve-reading = Reading the wall…
serve-reading-of = Reading photo { $at } of { $of }…
serve-queue = Waiting for other photos to finish…
serve-cancel = Cancel
serve-dismiss = OK
serve-last-photo = Last photo: { $time }
serve-new-photo = New photo, { $time }: { $done } done, { $left } left
serve-done = Done
serve-mine = I’m on it
serve-mine-on = You’re on it
serve-theirs = Another phone is on it
serve-after = Do number { $at } first.
serve-show-spot = Show it on the map
serve-show-step = Show it in the list
serve-round = { $count } squares move around: { $way }.
serve-round-upright = { $count } squares move around: { $way }. Put them all upright.
serve-fallen = { $count ->
    [one] Find square { $squares }. It was up before. Look on the floor.
   *[other] Find { $count } squares: { $squares }. They were up before. Look on the floor.
}
serve-where-row = { $edge ->
    [top] { $at ->
        [1] top row
       *[other] { $nth } row from the top
    }
   *[bottom] { $at ->
        [1] bottom row
       *[other] { $nth } row from the bottom
    }
}
serve-where-column = { $edge ->
    [left] { $at ->
        [1] far left
       *[other] { $nth } from the left
    }
   *[right] { $at ->
        [1] far right
       *[other] { $nth } from the right
    }
}
serve-nth = { $at ->
    [1] first
    [2] second
    [3] third
    [4] fourth
    [5] fifth
    [6] sixth
    [7] seventh
    [8] eighth
    [9] ninth
    [10] tenth
    [21] 21st
    [22] 22nd
    [23] 23rd
   *[other] { $at }th
}
serve-step-taken = Another phone is on this one. Pick the next one.
serve-step-gone = The list is new now. Please look again.
serve-piece-taken = Another phone just gave out this piece. Take the next one.
serve-piece-up = This square is on the wall now.
serve-not-sent = That didn’t reach the laptop. Please try again.
serve-step-all-ticked = All done? Take another photo to make sure.
serve-heading-steps = To fix, in this order
serve-heading-wall = The map
serve-heading-next = Hand out next
serve-heading-advice = For the next photo
serve-shaded = We couldn’t read the shaded spots.
serve-heading-help = If something doesn’t work
serve-missing-count = { $count ->
    [0] All the squares are up.
    [one] 1 square isn’t up yet.
   *[other] { $count } squares aren’t up yet.
}
serve-all-missing = All of them
serve-next-how = Tap a piece when you give it out.
serve-next-none = Every piece is out. Nice!
serve-give-out = to give out
serve-given = given out
serve-piece-out = { $label } is out.
serve-piece-back = { $label } is back.
serve-undo = Undo
serve-heading-out = Being drawn
serve-out-since = since { $time }, { $minutes } min
serve-back = It’s back
serve-heading-back = Back, ready for the wall
serve-back-since = back at { $time }
serve-not-back = Not back
serve-heading-fallen = Was up, now gone
serve-fallen-how = These squares were on the wall before. Look on the floor.
serve-undo-photo = Undo the last photo
serve-undo-ask = Undo the photo from { $time }? Every phone goes back to the list before it.
serve-undo-yes = Yes, undo it
serve-undo-no = No, keep it
serve-undo-changed = The list is new now, so nothing was undone. Please look again.
serve-undo-nothing = There’s no photo to undo.
serve-undo-unkept = We couldn’t undo this photo. Look at the laptop’s screen.
serve-add-helper = Add a helper
serve-add-helper-how = The next helper scans this code with a phone.
serve-map-how = Tap a spot to see what’s there and what should be. Pinch or use the buttons to zoom.
serve-larger = Larger
serve-smaller = Smaller
serve-close = Close
serve-retry = Try again
serve-cell-hangs = There now
serve-cell-belongs = Should be there
serve-cell-nothing-seen = Not in a photo yet
serve-legend-wrong = wrong spot
serve-legend-turned = turned
serve-legend-empty = empty
serve-legend-unread = can’t read
serve-legend-unseen = not in the photo
serve-help-laptop = Nothing happens? Check that the laptop is awake and its window with the QR code is still open.
serve-help-wifi = The page is slow or stops? The phone and the laptop must be on the same Wi-Fi. Turn VPN off on the phone.
serve-help-isolation = Many school networks keep devices apart. Turn on the phone’s hotspot and connect the laptop to it. Start the program again and scan the new code.
serve-help-private = Photos go to the laptop only and are not kept. Who listens in the same Wi-Fi can see them on their way.
serve-connection-lost = The laptop isn’t answering. Is it awake, and are you on the same Wi-Fi? You’re seeing the last update.
serve-link-old = This link has expired. Scan the QR code on the laptop again.
serve-no-answer = The photo didn’t get through. Is the laptop awake, and are you on the same Wi-Fi? Your photo is still here.
serve-no-script = This page needs JavaScript. Turn it on in the browser’s settings, or use another browser.

serve-busy = Lots of photos right now. Yours goes again in a few seconds.
serve-photo-broke-off = The photo was cut off while sending. Please send it again.
serve-photo-slow = The photo took too long. Move closer to the Wi-Fi router and send it again.
serve-photo-too-heavy = The file is larger than { $most } MB, so we couldn’t take it. Choose a photo in the camera’s usual size.
serve-photo-too-heavy-here = The file is too large for a photo, so it wasn’t sent. Choose a photo in the camera’s usual size.
serve-photo-too-large = The photo has { $width } × { $height } pixels. We can read up to { $most } million. Set the camera to its usual size (12 megapixels is plenty) and take another photo.
serve-photo-too-small = The photo has only { $width } × { $height } pixels. Send the original, not a small copy of it.
serve-photo-copy = This is a small copy of a photo ({ $width } × { $height } pixels), so we can’t read its codes. Send the original, or use the button on this page.
serve-photo-empty = The file is empty. Please take another photo.
serve-photo-heic = We can’t read HEIC photos. On an iPhone, open Settings > Camera > Formats and choose “Most Compatible”. Or use the button on this page.
serve-photo-unknown = We can’t read this file as a photo. Use JPEG, PNG, WebP or TIFF.
serve-photo-truncated = The photo is cut off, and its end is missing. Please send it again.
serve-photo-damaged = We can’t open this photo. Please take another one.
serve-photo-no-codes = We couldn’t find any of this event’s codes. Is this the right wall? Move closer, hold still, and take another photo.
serve-photo-foreign = The codes in this photo are from another event (tag { $tags }). Take a photo of this event’s wall. Is it the right wall? Then ask the person at the laptop.
serve-photo-other = We found only other kinds of codes ({ $texts }). Is this the right wall? Take a photo of the squares.
serve-photo-too-dark = The photo is too dark. Turn on more lights and try again.
serve-photo-cannot-place = We see squares, but can’t tell which part of the wall this is. Step back until the whole wall is in the photo, or put up the corner cards.
serve-photo-stumble = We couldn’t process this photo. Please take another one.
serve-photo-older = This photo is older than others of the same spots, so nothing changed.
serve-unkept = This result is correct, but it couldn’t be saved. Look at the laptop’s screen.
serve-unkept-full = This result is correct, but it couldn’t be saved. The laptop’s disk is full, so make room there.

serve-room-title = Our mural
serve-room-hang = { $count ->
    [one] 1 of { $cells } squares is up
   *[other] { $count } of { $cells } squares are up
}
serve-room-to-come = { $count ->
    [0] All the squares are here!
    [one] 1 is still to come
   *[other] { $count } are still to come
}
serve-room-complete = The picture is complete!
serve-room-secret = Hide the picture
serve-room-code = Code for helpers
serve-room-code-alt = QR code with the link for helpers’ phones
serve-room-picture = The wall as it looks now
serve-room-covered = The hidden mural: every square that’s up has a mark
serve-room-lost = The laptop isn’t answering
serve-error-unknown = we couldn’t find this computer’s network address ({ $said }): give it with --address
serve-error-no-network = this laptop isn’t on a network phones can reach: connect it to the room’s Wi-Fi, or turn on a phone’s hotspot and connect to that, and try again
serve-error-several = this laptop has several addresses: choose one with --address: { $own }
serve-error-open = { $asked } isn’t an address on the room’s own network (10.…, 172.16.… to 172.31.…, 192.168.…): photos of the wall go to no one else
serve-error-foreign = { $asked } is not this laptop’s address: it has { $own }
serve-error-port-taken = port { $port } is taken: is the page already running? Look for its window, or choose another port with --port
serve-error-refused = the page can’t start at { $at }: { $said }

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

error-print-changed = event.toml has changed since this kit was printed, and its parts would not fit each other: print all of it again with “everysquare print { $folder }”

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

print-steps = Steps
steps-title = Draw one square of our big picture
steps-about = A card to fold and stand on the table, with the same six pictured steps on both sides. { $steps }
steps-1 = Take a piece and its square.
steps-2 = Turn both so that you can read the name.
steps-3 = Find what crosses the tick marks.
steps-4 = Draw it there, but large.
steps-5 = Colour it. Leave the code's box white.
steps-6 = Take it to the wall.
steps-fold = fold back
steps-ridge = fold back: this is the ridge
steps-overlap = the other foot reaches to this line: tape it here

## who reaches what

about-feet = { $feet } ft ({ $metres } m)
about-metres = { $metres } m ({ $feet } ft)
reach-inches = { $inches } in ({ $metres } m)
reach-metres = { $metres } m ({ $inches } in)
people-children-from-5 = Children from 5 years: { $reach }
people-children-from-9 = Children from 9 years: { $reach }
people-seated = Somebody seated: { $reach }
people-adults = Adults: { $reach }
span = rows { $first } to { $last }
span-one = row { $row }
span-none = –

## helpers

print-helpers = Helpers
helpers-level = Level
helpers-pieces = Pieces
helpers-minutes = Minutes for one
helpers-last = Hand out until minute

helpers-hand-out = Station 1: handing out
helpers-hand-out-intro = You give every visitor a piece (a small piece of the picture) and the square of paper that bears the same name. Have ready: the bags, the squares in order of their names, the checklist, a pen.
helpers-sort = Sort
helpers-sort-1 = Put the pieces into one bag for each level; the level stands on a piece's back. Lay the squares out row by row, so that you find a name at once.
helpers-sort-2 = From the minute in the last column on, counted from the start, no piece of that level would be finished in time.
helpers-say = Say
helpers-say-words = “Here is a small piece of a big picture. Draw it on this square, { $scale } times as wide. What the picture is, nobody knows until it hangs.”
helpers-each = For every visitor
helpers-each-1 = Ask: “Something quick, or something to puzzle over?” Then let them draw a piece from that bag. The level is the piece's, never the child's.
helpers-each-2 = Find the square of the same name. Read both names aloud together.
helpers-each-3 = Tick “out” in the checklist, by the piece's name. Nobody's own name is written down.
helpers-each-4 = Show the card on the table: the six pictures say what to do.
helpers-each-5 = When a square comes back: tick “back”, see that its code's box is white, and send it to the wall.
helpers-secret = Keep the secret
helpers-secret-1 = The picture, the wall map and the question cards stay face down until the wall tells by itself.
helpers-secret-2 = To “What is it?” say: “Your square knows a part of it.”
helpers-if = If …
helpers-if-1 = somebody has to leave: piece and square go into the box “to be finished”. Whoever likes may go on with them.
helpers-if-2 = somebody is done early: offer another piece, or a question card when the picture is out.
helpers-if-3 = a square is spoilt: give a blank spare one and write the piece's name on it, large, in the same corner.

helpers-tables = Station 2: drawing tables
helpers-tables-intro = You see that { $seats } seats have what they need, and that nobody is afraid of a blank square.
helpers-set = Set the tables
helpers-set-1 = { $step-cards ->
    [one] 1 card with the steps: fold it, tape its feet together, stand it up.
   *[other] { $step-cards } cards with the steps, one for about four seats: fold each, tape its feet together, stand it up.
}
helpers-set-2 = Colour pencils in the middle of each table: { $pencils-in-all } in all, every colour shared out evenly.
helpers-set-3 = { $sharpeners ->
    [one] 1 sharpener
   *[other] { $sharpeners } sharpeners
} and { $erasers ->
    [one] 1 eraser
   *[other] { $erasers } erasers
}, shared out; a bin for shavings.
helpers-set-4 = Pencils only. Felt pens bleed and paint curls the paper; both hide the code.
helpers-help = Help
helpers-help-rule = Point and ask; never draw for somebody. A square that is all their own is the right one.
helpers-help-1 = “Which lines reach the edge? At which tick?”
helpers-help-2 = “Mark that place on the square first. Then join the marks.”
helpers-help-3 = “What is the largest shape? Draw that one first, lightly.”
helpers-help-4 = “The square is { $scale } times as wide. So how long is this line there?”
helpers-help-5 = “Colour up to the edges: your neighbours' squares go on there.”
helpers-look = Look out for
helpers-look-1 = The name must be readable on piece and square: then both are the right way up.
helpers-look-2 = The box with the code stays white. If it is drawn over already, leave it: do not rub, do not cut. The wall's helper knows what to do.
helpers-look-3 = Pencils go back to the middle after each colour.
helpers-look-4 = One piece, one square: nobody waits for “their” colour longer than a minute. Send them for another colour first.
helpers-wait = Whoever waits
helpers-wait-1 = may sharpen pencils, or draw on scrap paper.
helpers-wait-2 = may take a question card, once the picture is out. One sign is counting, two are multiplying, three are ratio, a star is for anyone.

helpers-wall = Station 3: wall and phone
helpers-wall-intro = You hang { $squares ->
    [one] 1 square
   *[other] { $squares } squares
} in { $columns ->
    [one] 1 column
   *[other] { $columns } columns
} and { $rows ->
    [one] 1 row
   *[other] { $rows } rows
}: { $width } wide, { $height } high, the lower edge { $hang } above the floor.
helpers-hang = Hang
helpers-hang-1 = Before the start: stretch a level string or draw a fine line for the lower edge and for every second row; the wall map has the measures.
helpers-hang-2 = Put up the { $cards } cards: corners first, then columns, then rows.
helpers-hang-3 = Hang a square where its column and row meet, its name upright. Edge to edge, no gaps, no overlaps.
helpers-hang-4 = A small piece of tape at each corner, away from the code.
helpers-hang-5 = Tick “hung” in the checklist.
helpers-who = Who, and how high they reach
helpers-floor = From the floor
helpers-stool = On a stool
helpers-help-needed = With help
helpers-photo = Take the photo
helpers-photo-1 = Stand about { $distance } from the wall, opposite { $photos ->
    [one] its middle
   *[other] the part that you photograph
}, the phone about { $phone-height } above the floor. People and stools out of the way, lights on, no flash.
helpers-photo-2 = Hold the phone { $held ->
    [sideways] sideways
   *[upright] upright
}, level, main camera, no zoom. Wipe the lens. Tap on the wall, wait until it is sharp.
helpers-photo-3 = { $photos ->
    [one] The whole wall with a little room around it in one photo.
   *[other] This wall is large: take { $photos } photos along it, each with two columns or rows of the one before.
} Take everything twice.
helpers-photo-4 = Bright spots on the paper? Take one step to the side and take it again.
helpers-photo-5 = Only the wall: nobody's face, nobody's name.
helpers-photo-6 = Bring the photo to the laptop: “everysquare check” with the event's folder and the photo.
helpers-check = What the check says, and what to do
helpers-check-intro = Go through its list from the top, one line at a time; then take a new photo.
helpers-check-says = It says
helpers-check-do = Do this
helpers-check-right = Nothing. Leave it as it is.
helpers-check-wrong = Another square hangs here. Follow the list: it names the fewest swaps.
helpers-check-turned = Turn it as the list says: the name must be upright.
helpers-check-empty = Look for the square: on tables, on the floor, in the box “to be finished”. The checklist knows whether it is out.
helpers-check-unread = Look yourself: is its own name on it? Then all is well. Else lift the tape, wipe off the glare, take a closer photo.
helpers-check-unseen = It is outside the photo or hidden. Step back, or take one more.

helpers-cautions = For all helpers: take care
helpers-cautions-intro = The rules of your house, your school and your town come first. Where this page says less, follow them.
helpers-stools = Stools and ladders
helpers-stools-1 = A stool with a wide step, on firm ground, next to the wall. Never a chair, a table or a stack of anything.
helpers-stools-2 = Adults only go up; one more adult stands beside. Children hang what they reach from the floor.
helpers-stools-3 = Get down to move it. Nobody leans out sideways.
helpers-stools-4 = A row that needs more than a stool is hung with a step ladder, before or after the evening.
helpers-cutters = Cutting
helpers-cutters-1 = Squares and pieces are cut before the evening, by adults, with a paper trimmer or a steel ruler and a knife that is closed when put down.
helpers-cutters-2 = On the tables there are only scissors with round tips. Count them afterwards.
helpers-cutters-3 = Sharpeners stay on the table, with their blades screwed tight.
helpers-tape = Tape and walls
helpers-tape-1 = Try the tape on a hidden spot a day before. Painter's tape comes off most walls; old paint and wallpaper may come off with any.
helpers-tape-2 = Take tape off slowly, flat along the wall.
helpers-fire = Paper on walls, ways out
helpers-fire-1 = About { $area } m² ({ $area-feet } sq ft) of paper will hang. Many rules limit how much of a wall may be covered, most strictly in corridors and near exits: ask the site manager or the fire authority.
helpers-fire-2 = Nothing on or beside doors, fire alarms, extinguishers, signs, heaters and lamps.
helpers-fire-3 = Ways out stay free to their full width: no bags, no tables, no queue. Know where you would lead everybody.
helpers-pictures = Children in photos
helpers-pictures-1 = Photograph the wall only. Ask everybody to step aside first.
helpers-pictures-2 = The school's or library's rules on photos and phones count, also for helpers and parents. Use the house's own phone where private ones are not allowed.
helpers-pictures-3 = The check keeps the wall and its cards only, and nothing about where and with what a photo was taken. Delete the photo from the phone afterwards.
helpers-pictures-4 = No names on squares, in the checklist or on the wall, unless their families want it.
helpers-room = In the room
helpers-room-1 = Cables taped down, bags under the tables, spills wiped at once.
helpers-room-2 = One way between the tables is wide enough for a wheelchair; one seat at a table's end has no chair.
helpers-room-3 = Know who gives first aid and where the box is.

## guide

print-guide = Guide
guide-title = Your evening
guide-intro = { $event }: everybody draws one small piece of a picture, large; together the pieces become the picture on the wall. These pages are for you who holds the threads. All numbers are worked out from your picture and your settings.
guide-numbers = In numbers
guide-what = What
guide-how-much = How much
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
    [one] 1 colour
   *[other] { $colours } colours
}
guide-square = Piece and square
guide-square-value = { $piece } becomes { $square }: { $scale } times as wide
guide-wall = On the wall
guide-wall-value = { $width } wide, { $height } high; with its cards { $width-with-cards } by { $height-with-cards }
guide-hang = Height
guide-hang-value = from { $hang } to { $top } above the floor
guide-finish = Time for
guide-finish-value = about { $finish ->
    [one] 1 square
   *[other] { $finish } squares
}; all { $squares } take { $minutes-for-all } minutes
guide-verdict-fits = The grid suits your crowd: everybody gets a piece, and all are finished.
guide-verdict-too-big-for-time = The grid is large for the time: about { $difference ->
    [one] 1 square
   *[other] { $difference } squares
} will be blank at the end. Add minutes or seats, take a smaller grid, or let helpers draw before and after.
guide-verdict-too-big-for-crowd = The grid is large for the crowd: when everybody has drawn two, about { $difference ->
    [one] 1 piece is
   *[other] { $difference } pieces are
} left. Invite more visitors, take a smaller grid, or let helpers draw before and after.
guide-verdict-too-small = The grid is small for the crowd: about { $difference ->
    [one] 1 visitor goes
   *[other] { $difference } visitors go
} without a piece. Let two share one, print some pieces twice, or take a larger grid.
guide-assumed-note = What is “assumed” nobody has said yet. Say it with “everysquare plan FOLDER --visitors { $visitors } --minutes { $minutes } --seats { $seats } --save” and your own numbers, then print again.
guide-heights = How high it hangs
guide-row = Row
guide-lower = Lower edge
guide-upper = Upper edge
guide-reach-source = Reach: seated, 48 inches (2010 ADA Standards for Accessible Design, 308.2.1); children, from the shorter ones of that age (CDC Growth Charts 2000) with an arm raised; adults, a shorter adult's grip; a stool adds 230 mm. The arm's share, the adults and the stool are rules of thumb.

guide-timeline = What to do when
guide-week = A week before
guide-week-1 = Ask about the wall: paper, tape, height, ways out. The site manager's or fire authority's word counts.
guide-week-2 = Print one sheet of squares. Its ruler must measure exactly, and each back must lie behind its front.
guide-week-3 = Print all, and look at the pencil sheet: do your real pencils have these colours?
guide-week-4 = Cut squares and pieces, sort pieces by level into bags. Two people take an evening.
guide-week-5 = Draw one piece of each level yourself, with a clock: then you know your own minutes.
guide-week-6 = Find helpers: one to hand out, one for about three tables, two for the wall.
guide-week-7 = Practise the check: “everysquare rehearse FOLDER” makes a photo with faults to find.
guide-day = The day before
guide-day-1 = Give every helper their page and ten minutes of talk.
guide-day-2 = Try the tape on the wall, in a hidden place.
guide-day-3 = Mark the lower edge and the rows with string or fine lines.
guide-day-4 = Sharpen all pencils and put the sets together.
guide-day-5 = Fold the table cards.
guide-day-6 = Take a photo of the wall as it is, to see whether light and distance are right.
guide-hours = Two hours before
guide-hours-1 = Put tables as in the plan of the room; keep ways and exits free.
guide-hours-2 = Put up the cards around the wall.
guide-hours-3 = Lay out bags, squares in order, checklist.
guide-hours-4 = Charge the phone; open the laptop; try one check.
guide-hours-5 = Hide every copy of the picture.
guide-running = While it runs
guide-running-1 = Begin with the corners and the edges of the picture, so that the wall finds its frame.
guide-running-2 = Check the wall every half hour, while there is little to fix.
guide-running-3 = Look at the checklist: out, and not back for long? Ask kindly.
guide-running-4 = Halfway: are the hard pieces out? They take longest.
guide-running-5 = Drink something.
guide-end = The last twenty minutes
guide-end-1 = Hand out easy pieces only; helpers take what is left.
guide-end-2 = Hang everything, check, fix, check again.
guide-end-3 = Fill an empty place with its piece, or with a blank square: it may be drawn tomorrow.
guide-end-4 = Step back together and look. This is the moment it was for.
guide-clearing = Clearing up
guide-clearing-1 = Count scissors and knives; put stools away.
guide-clearing-2 = Take the string down, leave the wall up.
guide-clearing-3 = Delete photos from phones.
guide-clearing-4 = Write your own minutes for each level into event.toml: next time the plan knows them.

guide-materials = What you need
guide-thing = Thing
guide-amount = Amount
guide-paper = Paper
guide-paper-amount = { $paper }: { $sheets ->
    [one] 1 sheet
   *[other] { $sheets } sheets
} for the squares alone, best of 120 to 160 g/m² (32 to 42 lb), and a spare tenth; “everysquare print” says how many the other documents take
guide-printer = Printer
guide-printer-amount = any; colour for pieces and pencil sheet, black and white does for all else
guide-pencils = Colour pencils
guide-pencils-amount = { $pencils-in-all } in all, as listed below
guide-sharpeners = Small things
guide-sharpeners-amount = { $sharpeners ->
    [one] 1 sharpener
   *[other] { $sharpeners } sharpeners
}, { $erasers ->
    [one] 1 eraser
   *[other] { $erasers } erasers
}, scrap paper, pens for the checklist
guide-tape = Painter's tape
guide-tape-amount = { $tape }: { $rolls ->
    [one] 1 roll
   *[other] { $rolls } rolls
} of 25 m (82 ft)
guide-string = For the lines
guide-string-amount = string, spirit level, tape measure, soft pencil
guide-bags = Bags and boxes
guide-bags-amount = one bag for each level, one box “to be finished”
guide-stool = Stool
guide-stool-amount = 1 with a wide step, 230 mm (9 in) high, for rows that nobody reaches from the floor
guide-cutting = Cutting
guide-cutting-amount = paper trimmer, or knife, steel ruler and mat, before the evening; scissors with round tips for the cards
guide-phone = Phone and laptop
guide-phone-amount = 1 phone with a main camera of 12 megapixels or more, charged; 1 laptop with this program and the event's folder; no network needed
guide-signs = Table cards
guide-signs-amount = { $step-cards }: one for about four seats
guide-bin = To clear up
guide-bin-amount = bin for shavings and cut-offs, cloth, box for the finished squares
guide-pencil-list = Pencils by colour
guide-pencil-list-intro = So many that nobody waits in 95 of 100 moments with all seats taken (binomial: each visitor holds one pencil at a time, each for as long as its colour takes).
guide-colour = Colour
guide-pencil-count = Pencils

guide-room = The room
guide-room-intro = A room to scale that holds your evening: { $seats } seats, the wall, the phone. Your room is another one: keep the distances.
guide-room-about = Plan of a room: the wall on one side, the phone before its middle, then tables with seats on both sides, then the table for handing out; an exit and an entrance on the right, with ways that stay free.
guide-plan-wall = wall and its cards, { $length }
guide-plan-phone = phone, about { $length } away
guide-plan-hand-out = handing out
guide-plan-exit = exit: keep the way free
guide-plan-entrance = entrance: keep it free
guide-plan-bar = { $length }
guide-plan-size = the room is about { $length } wide
guide-room-1 = Handing out lies at the entrance, the wall at the far end: whoever comes in sees people draw before seeing the picture.
guide-room-2 = Between the tables { $seats ->
    [one] and the walls
   *[other] there
} are 1.2 m (4 ft): two people pass, a wheelchair turns.
guide-room-3 = Between wall and tables nobody sits: there the phone stands, and at the end everybody.
guide-room-4 = Light from the ceiling or the side. A window opposite the wall shines in the photo; draw its curtain.
guide-cautions = Cautions
guide-fire = { $area } m² ({ $area-feet } sq ft) of paper will hang on the wall. Many fire codes limit the part of a wall that paper may cover, most strictly in corridors and near exits, and editions differ. Ask your site manager or fire authority before you print.
guide-cautions-1 = Stools: adults only, one more beside; never chairs or tables.
guide-cautions-2 = Knives: before the evening, adults only, counted afterwards.
guide-cautions-3 = Tape: tried on a hidden spot first.
guide-cautions-4 = Photos: of the wall, not of children; the school's rules count.
guide-cautions-5 = Everything else is on the helpers' last page. Where the rules of the house say more, they count.

guide-wrong = When things go wrong
guide-wrong-what = What happens
guide-wrong-do = What to do
guide-wrong-short = Too few pieces
guide-wrong-short-do = Two draw one square together. Or print the sheet again and hand a piece out twice: the nicer one hangs in the middle, the other one beside the wall, without its code.
guide-wrong-many = Too many visitors at once
guide-wrong-many-do = Hand out pieces with a clipboard to draw standing, send some to the question cards, invite others for the second half.
guide-wrong-few = Too few visitors
guide-wrong-few-do = Offer a second and a third piece, hard ones to those who like it. Helpers and you draw. Blank places may be filled during the week.
guide-wrong-scale = The ruler on the sheet is too short or too long
guide-wrong-scale-do = The printer has scaled. Choose “actual size” or 100 %, never “fit”, and print that sheet again. Do not mix sizes: squares would not meet.
guide-wrong-backs = Backs do not lie behind their fronts
guide-wrong-backs-do = Up to 2 mm does no harm. More: the paper was turned over the other edge; change flip in event.toml, or print one-sided with flip = "none".
guide-wrong-painted = A code is drawn over
guide-wrong-painted-do = Hang the square all the same, by its name. The check says that it cannot be read; look yourself. Do not rub or cut.
guide-wrong-lost = A square is lost
guide-wrong-lost-do = Print its sheet again: the same name, the same code. Hang the piece in its place meanwhile.
guide-wrong-turned = Many squares hang turned
guide-wrong-turned-do = Show the wall's helpers the name beside the code: it must be upright. The check lists the turns.
guide-wrong-unread = The check reads little
guide-wrong-unread-do = Nearer, brighter, sharper; no flash, no sun on the wall; two photos of half the wall each. Last of all: go by the names, they are on every square.
guide-wrong-pencils = A colour runs out
guide-wrong-pencils-do = Swap pencils between tables. A near colour is better than waiting; then take it for the whole patch.
guide-wrong-late = Time is up, squares are missing
guide-wrong-late-do = Hang the pieces in the gaps, small as they are. Leave the table standing: tomorrow's visitors finish the picture.
guide-after = Afterwards
guide-after-1 = Leave the wall up, and hang a print of the picture beside it. Say that it was drawn by everybody who came.
guide-after-2 = Lay the question cards and the pencil sheet out below the wall; keep the answers with you.
guide-after-3 = Thank everybody, by a photo of the wall without people.
guide-after-4 = Take it down row by row and keep the order: then it can hang again, in another room.
guide-after-5 = Squares belong to those who drew them. Say when they can be fetched.

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
