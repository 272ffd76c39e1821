### English. One line a sentence; a name in braces is filled in by the program.

## lists

words-one-of = { $before } or { $last }

## words of an event

error-words-at = templates/words.ftl, line { $line }: { $read }: { $what }
error-words-too-large = templates/words.ftl is larger than { $most } MB. Keep only the sentences you change
error-words-unknown = there’s no sentence with that name. To add a note of your own, start the line with #
error-words-unknown-near = there’s no sentence with that name. Do you mean { $near }?
error-words-renamed = this sentence is now called { $now }. Change the name in front of the =
error-words-twice = this sentence is here twice. Keep one of them
error-words-variable-near = { $word } has nothing with this name to fill in. Do you mean { $near }?
error-words-variable-known = { $word } has nothing with this name to fill in. It has { $known }
error-words-variable-none = { $word } has nothing to fill in. Leave out the braces
error-words-syntax = we can’t read this line. Write it like “print-squares = Squares”. If a sentence goes on, start its next line with spaces
error-words-braces = a brace is missing. Every { "{" } needs its { "}" }
error-words-default = mark exactly one of the choices with *, such as *[other]
error-words-quotes = a quotation mark is missing. Every " needs a second one on its line
error-words-empty = the sentence is missing. It goes after the =
error-words-placeable = between { "{" } and { "}" } use only what the program fills in, such as { "{ $name }" }
error-words-term = remove the - at the start. Use the sentence’s name exactly as the program has it
error-words-attribute = put just one sentence after the =, with no lines that start with a period
error-words-reference = in braces, use only what the program fills in, such as { "{ $name }" }. Other sentences, functions and \u don’t work here
error-words-control = there’s a control character in this line. Delete the line and type it again
error-words-depth = there are too many braces inside each other here

## lengths

length-both = { $first } ({ $second })
length-mm = { $length } mm
length-m = { $length } m
length-in = { $length } in
length-ft = { $feet } ft
length-ft-in = { $feet } ft { $inches } in
length-about = about { $length }
area-m2 = { $area } m²
area-ft2 = { $area } sq ft
part-percent = { $percent }%
part-less = < { $percent }%

## states of a cell

state-right = right spot
state-wrong = wrong spot
state-turned = turned
state-empty = empty
state-unread = can’t read
state-unseen = not in the photo

## program

help = Plan an event where everyone draws one piece of a big picture: print the kit, then check the wall with a phone photo

## new

help-new = Start an event: make its folder from a picture and suggest a grid
help-new-folder = The folder to create. It also names the event, unless you use --name
help-new-picture = The picture to draw: PNG, JPEG, WebP, TIFF or SVG. Your file isn’t changed
help-new-columns = How many squares across
help-new-rows = How many squares down
help-new-squares = About how many squares in all, instead of --columns and --rows
help-new-name = The name of the event
help-new-tag = Three characters that go into every code of this event, from 23456789ABCDEFGHJKLMNPQRSTUVWXYZ (default: picked at random)
help-new-colours = How many pencil colors to use
help-new-pencils = A file that lists your own pencils: [[pencils]] with name and srgb. The event.toml of an earlier event works too
help-new-black-and-white = Use grays only, as many as --colors says
help-new-fit = If the picture’s shape doesn’t match the grid: crop trims it, pad adds margins
help-new-square-mm = Side of each paper square, in mm (127 mm = 5 in)
help-new-piece-mm = Side of each piece, the small part of the picture a visitor gets, in mm (25.4 mm = 1 in)
help-new-paper = The paper in your printer: letter, tabloid, a4 or a3
help-new-flip = How your printer flips the page when it prints two-sided: long-edge, short-edge, or none for one-sided
help-new-units = Units that people read: inch or mm (default: inch for letter and tabloid, mm for a4 and a3)

new-usual-name = Library night
new-working = Finding the pencil colors
new-made = Created { $folder } for “{ $name }” (tag { $tag }): event.toml, { $file }, and picture-preview.png, which shows the grid.
new-squares = { $count ->
    [one] 1 square
   *[other] { $count } squares
}
new-grid-given = The grid is { $columns } × { $rows }, { $squares }, as you asked.
new-grid-rows-follow = The grid is { $columns } × { $rows }, { $squares }. Of all grids that wide, it cuts off the least of the picture.
new-grid-columns-follow = The grid is { $columns } × { $rows }, { $squares }. Of all grids that tall, it cuts off the least of the picture.
new-grid-near-count = The grid is { $columns } × { $rows }, { $squares }. That’s close to the { $wished } you asked for, with little of the picture cut off.
new-grid-fits-best = The grid is { $columns } × { $rows }, { $squares }. That’s a good number for one event (60 to 120), and it fits the picture’s shape. Use --columns, --rows or --squares to choose another.
new-nothing-lost = Nothing is cut off. The whole picture gets drawn.
new-lost-sides = { $percent }% of the picture is cut off, half on the left and half on the right.
new-lost-top-and-bottom = { $percent }% of the picture is cut off, half at the top and half at the bottom.
new-wall = The finished mural will be { $width } wide and { $height } high. Leave { $cards } more on every side for the edge cards.
new-added-sides = The whole picture gets drawn. To fit the grid, blank strips were added on the left and right ({ $percent }% of the mural).
new-added-top-and-bottom = The whole picture gets drawn. To fit the grid, blank strips were added at the top and bottom ({ $percent }% of the mural).
new-pencils = It uses { $count } pencils: { $names }. You can rename them in event.toml.
new-text = Words in the drawing appear in this program’s own font. Check them in picture-preview.png, or convert the text to outlines in your drawing program.
new-coarse = Each piece was only { $pixels } pixels wide, so the picture was enlarged. A larger picture file will look sharper.
new-warn-alike = Heads up: { $one } and { $other } look almost the same and will get mixed up. Try fewer colors (--colors) or your own pencils (--pencils).
new-warn-rare = Heads up: { $pieces ->
    [0] no piece needs { $pencil }
    [one] only 1 piece needs { $pencil }
   *[other] only { $pieces } pieces need { $pencil }
}, so you can leave that pencil out.
new-warn-plain = Heads up: { $plain } pieces are one color all over, and only { $drawn } have something to draw. A busier picture, or fewer squares, is more fun.
new-next = Next: look at picture-preview.png in { $folder }. Change event.toml there if you like. Then type: everysquare print { $folder }

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
colour-grey = gray
colour-black = black
colour-very-light = very light { $colour }
colour-light = light { $colour }
colour-dark = dark { $colour }
colour-very-dark = very dark { $colour }
colour-numbered = { $colour } { $number }

## plan

help-plan = See whether the grid fits your visitors, time and wall, and list what you need
help-plan-folder = The event folder
help-plan-visitors = How many visitors you expect
help-plan-minutes = How long people will draw, in minutes
help-plan-seats = How many people can sit and draw at once
help-plan-wall = The wall space you have, such as 8x6ft or 2.4x1.8m
help-plan-hang = Height of the bottom edge above the floor, in mm (default: we suggest one)
help-plan-save = Save these numbers in event.toml

plan-title = Plan for “{ $name }”
plan-levels = Pieces by level: how many there are, and how many will get done
plan-head-level = level
plan-head-mark = mark
plan-head-pieces = pieces
plan-head-minutes = minutes each
plan-head-finished = done
plan-decided = { $count ->
    [one] 1 piece has the level that event.toml gives it.
   *[other] { $count } pieces have the level that event.toml gives them.
}
plan-balanced = Levels are balanced, as set in event.toml. The pieces with something to draw are split into three equal groups.
plan-crowd = Visitors and time
plan-finish = { $visitors ->
    [one] 1 visitor
   *[other] { $visitors } visitors
}, { $seats ->
    [one] 1 seat
   *[other] { $seats } seats
}, { $minutes } minutes. Each seat starts a new piece about every { $pace } minutes, counting the time to hand it out. So about { $finish ->
    [one] 1 piece
   *[other] { $finish } pieces
} will get done.
plan-assumed = You didn’t give { $numbers }, so we guessed. Add --visitors, --minutes and --seats with your own numbers.
plan-seats-free = { $free ->
    [one] 1 seat stays empty.
   *[other] { $free } seats stay empty.
}
plan-fits = { $pieces } pieces are a good fit: { $each } per visitor, all done after about { $left } minutes.
plan-too-big-for-time = { $pieces } pieces are too many for the time: { $by } won’t get finished. All of them would take about { $needed } minutes.
plan-more-seats = With { $seats } seats they would all get done.
plan-too-big-for-crowd = { $pieces } pieces are too many for this many visitors. Even at { $most } each, { $by } would be left over.
plan-too-small = { $pieces } pieces are too few: { $by ->
    [one] 1 visitor wouldn’t get one.
   *[other] { $by } visitors wouldn’t get one.
}
plan-without = { $without ->
    [one] 1 visitor won’t
   *[other] { $without } visitors won’t
} have time to finish a piece, with any grid. These seats and minutes are enough for { $finish }. Add seats or minutes, or pick an easier picture.
plan-others = Grids that fit better:
plan-others-as-well = Other grids that would work:
plan-head-grid = grid
plan-head-each = per visitor
plan-head-size = mural
plan-head-lost = picture cut off
plan-others-why = { $least } to { $most } pieces would work. To use one of these grids, change columns and rows in event.toml before you print.
plan-no-others = No other grid with squares this size fits your visitors, wall and picture.
plan-wall = The wall
plan-wall-size = The squares are { $width } wide and { $height } high. With the edge cards around them it’s { $around_width } wide and { $around_height } high.
plan-room-fits = That fits your { $width } × { $height } space.
plan-room-without-cards = In your { $width } × { $height } space the squares fit, but not all the edge cards. You can leave the cards out. With { $square } squares everything would fit.
plan-room-too-small = That’s too big for your { $width } × { $height } space. Squares up to { $square } would fit. Change square_mm in event.toml, or choose another grid.
plan-hang = The bottom edge is { $hang } above the floor.
plan-hang-proposed = We suggest hanging the bottom edge { $hang } above the floor, so adults can reach as much as possible. Use --hang to change it.
plan-head-row = row
plan-head-upper = top edge
plan-head-from-5 = age 5+
plan-head-from-9 = age 9+
plan-head-seated = seated
plan-head-adults = adults
plan-means-floor = floor
plan-means-stool = stool
plan-means-ladder = ladder
plan-means-helper = adult
plan-reach = Who can hang each row. Almost all children age 5 and up reach { $five }, age 9 and up { $nine }, a seated adult { $seated }, a standing adult { $adults }. Step stools ({ $stool }) and ladders are for adults only. “adult” means an adult hangs it for them.
plan-pencils = Pencils
plan-head-pencil = pencil
plan-head-drawing = share of drawing
plan-head-pencils = pencils
plan-pencils-why = { $count } pencils in all. With { $seats ->
    [one] 1 seat
   *[other] { $seats } seats
} in use, no one has to wait for a color { $sure }% of the time.
plan-supplies = What else you need
plan-sheets = { $count } sheets of { $paper } paper: { $documents }.
plan-no-sheets = We can’t count the sheets of paper: { $why }.
plan-things = You need { $tape } of tape for the squares and { $cards } cards; pencil sharpeners: { $sharpeners }; erasers: { $erasers }.
plan-fire = About { $area } of paper will be on the wall. Fire codes limit this, some to as little as a tenth of a wall. Ask your principal, building manager or fire marshal before you print.
plan-fire-part = About { $area } of paper will be on the wall, { $percent } of the space you gave. Fire codes limit this, some to as little as a tenth of a wall. Ask your principal, building manager or fire marshal before you print.
plan-written = All the numbers, and each piece’s level and colors, are in { $file }.
plan-saved = These numbers are now in { $file }.
plan-not-saved = These numbers were used just this once. Add --save to keep them.

## report

report-language = en
report-title = Wall check: { $name }
report-kind = Wall check
report-made = This is a practice picture made by the program, not a real photo.
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
report-all-right = { $cells ->
    [one] The square is in the right spot!
   *[other] All { $cells } squares are in the right spot!
}
report-to-do = { $steps ->
    [one] 1 thing to fix.
   *[other] { $steps } things to fix.
}
report-cannot-tell = No mistakes found, but { $unknown ->
    [one] 1 of { $cells } spots couldn’t be checked.
   *[other] { $unknown } of { $cells } spots couldn’t be checked.
}
report-count-right = { $count } of { $cells } in the right spot
report-count-wrong = { $count } in the wrong spot
report-count-turned = { $count } turned
report-count-empty = { $count ->
    [one] 1 empty spot
   *[other] { $count } empty spots
}
report-count-unread = { $count } we can’t read
report-count-unseen = { $count } not in the photo
report-heading-to-do = To fix, in this order
report-heading-wall = The wall
report-heading-marked = Your photo, marked
report-heading-straight = The wall, straightened
report-heading-advice = For the next photo
report-heading-facts = Measurements
report-missing = Not seen anywhere: { $squares }
report-missing-untold = { $count ->
    [one] 1 more square wasn’t seen, but its spot couldn’t be checked either.
   *[other] { $count } more squares weren’t seen, but their spots couldn’t be checked either.
}
report-twice = Seen more than once: { $squares }
report-stranger = From another event: “{ $text }” in { $cell }
report-rows = Row
report-scale = Scale factor { $factor }: every length on a square is { $factor } times the length on its piece.
report-size = The mural is { $width } wide and { $height } high.
report-shift = The square that is farthest out of place is off by { $by }.
report-modules = Sharpness: { $px } photo pixels for the smallest block of a code.
report-picture-marked = Your photo with everything to fix outlined and labeled. Everything outside the wall and its edge cards is blanked out.
report-picture-straight = The wall, straightened as if you stood right in front of it.
report-private = The photo itself is not kept. This page holds the wall and its cards only and loads nothing from elsewhere.
report-turned-top-right = its top points right
report-turned-top-down = upside down
report-turned-top-left = its top points left
report-more = { $squares } and { $count } more
legend-right = right spot
legend-wrong = another square is here; this is its label
legend-wrong-short = another square is here; see the list
legend-turned = the right square, turned; the arrow shows where its top points
legend-wrong-turned = another square, and it’s turned; the arrow shows where its top points
legend-stranger = a square from another event
legend-empty = nothing is here
legend-unread = something is here, but we can’t read its code
legend-unseen = not in the photo
cell-right = { $cell }: in the right spot
cell-wrong = { $cell }: wrong spot for { $square }, which is here
cell-wrong-turned = { $cell }: wrong spot for { $square }, which is here and turned ({ $how })
cell-stranger = { $cell }: a square from another event is here
cell-turned = { $cell }: turned, { $how }
cell-empty = { $cell }: empty
cell-unread = { $cell }: we can’t read its code
cell-unseen = { $cell }: not in the photo
mark-empty = empty
mark-turned = { $degrees ->
    [90] ↻ 90°
    [180] ↻ 180°
   *[270] ↺ 90°
}
mark-wrong = → { $square }
mark-wrong-turned = → { $square } ↻
mark-stranger = ✕ other event
mark-spare = ✕ extra
mark-unread = ?

## fixes

fix-turn = { $by ->
    [quarter] Turn the square in { $cell } a quarter turn to the right (clockwise).
    [half] Turn the square in { $cell } right side up. It’s upside down.
   *[three-quarters] Turn the square in { $cell } a quarter turn to the left (counterclockwise).
}
fix-swap = Swap the squares in { $a } and { $b }.
fix-swap-upright-one = Swap the squares in { $a } and { $b }. Hang the one that goes in { $cell } right side up.
fix-swap-upright-both = Swap the squares in { $a } and { $b }. Hang both right side up.
fix-move = Move the square in { $from } to { $to }.
fix-move-upright = Move the square in { $from } to { $to }. Hang it right side up.
fix-remove-copy = Take down the square in { $cell }. It’s an extra copy of { $square }.
fix-remove-stranger = Take down the square in { $cell }. It’s from another event.
fix-look = { $count ->
    [one] Check { $cells } yourself. We can’t read its code.
   *[other] Check { $cells } yourself. We can’t read their codes.
}
fix-look-guess = { $count ->
    [one] Check { $cells } yourself. We can’t read its code. Not seen yet: { $squares }.
   *[other] Check { $cells } yourself. We can’t read their codes. Not seen yet: { $squares }.
}
fix-look-moved = Check { $cells } yourself. The photos don’t agree, so something was moved between them.
fix-look-beyond = Check { $cell }, which isn’t in any photo. The square now in { $from } belongs there.
fix-fetch = Find square { $square } and hang it in its spot.
fix-fetch-perhaps = Find square { $square } and hang it in its spot. It may already be up, where no code could be read.
fix-fetch-listed = Find the { $count } squares listed below and hang each one in its spot.
fix-fetch-many = Find these squares and hang each one in its spot: { $squares }.

## advice

advice-step-back = { $part ->
    [edge] Step back or take one more photo. The { $side ->
        [left] left edge
        [right] right edge
        [upper] top edge
       *[lower] bottom edge
    } of the wall is cut off.
    [most] Step back or take more photos. Most of the wall is cut off, { $side ->
        [left] on the left
        [right] on the right
        [upper] at the top
       *[lower] at the bottom
    }.
   *[other] Step back or take one more photo. The { $side ->
        [left] left
        [right] right
        [upper] top
       *[lower] bottom
    } { $part ->
        [quarter] quarter
        [third] third
        [half] half
       *[two-thirds] two thirds
    } of the wall { $part ->
        [two-thirds] are
       *[other] is
    } cut off.
}
advice-hidden = { $count ->
    [one] Take one more photo. { $cells } is hidden or outside the photo.
   *[other] Take one more photo. { $cells } are hidden or outside the photo.
}
advice-go-closer = Move closer, or take two photos, one of each half. In photo { $photo } the codes are too small ({ $px } pixels for the smallest block), and { $unread ->
    [one] 1 spot
   *[other] { $unread } spots
} couldn’t be read.
advice-uncover = { $unread ->
    [one] The photo is sharp, but 1 code couldn’t be read. Look for tape, glare, a fold or drawing on top of it.
   *[other] The photo is sharp, but { $unread } codes couldn’t be read. Look for tape, glare, folds or drawing on top of them.
}
advice-mirrored = Photo { $photo } is mirrored, the way selfie cameras save it. It was read anyway.
advice-contradiction = { $count ->
    [one] The photos disagree about { $cells }: something was moved in between. Take all the photos again in one go.
   *[other] The photos disagree about { $cells }: something was moved in between. Take all the photos again in one go.
}
advice-shifted = Every square we could read is off by the same amount ({ $across }{ $down }). Maybe you started in the wrong spot. If so, leave the squares and move the edge cards.
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
advice-all-turned = Every square we could read is turned the same way ({ $how }). Is the photo sideways?
advice-all-wrong = Not one square is in its own spot. Is this the right event folder? Is row 1 at the correct end, top or bottom?
advice-may-hang-unseen = { $missing ->
    [one] 1 square wasn’t seen anywhere. It may be in { $unknown ->
        [one] the spot
       *[other] one of the { $unknown } spots
    } that couldn’t be checked.
   *[other] { $missing } squares weren’t seen anywhere. { $unknown ->
        [one] One of them may be in the spot
       *[other] Up to { $unknown } of them may be in spots
    } that couldn’t be checked.
}

## rehearse

help-rehearse = Make a practice photo of your wall, with mistakes to find, before the event
help-rehearse-folder = The event folder, with its kit printed
help-rehearse-seed = A number that fixes the random choices: the same number, the same photo (default: random)
help-rehearse-swaps = How many pairs of squares are swapped
help-rehearse-cycles = How many groups of three squares trade places in a circle
help-rehearse-turns = How many squares are turned
help-rehearse-missing = How many spots are empty
help-rehearse-scribbled = How many codes are drawn over
help-rehearse-covered = How many codes are half under tape
help-rehearse-torn = How many squares have a corner torn off
help-rehearse-duplicates = How many spots hold an extra copy of another square
help-rehearse-strangers = Places where a square of another event hangs
help-rehearse-misdrawn = How many squares are in the right spot but show another piece’s drawing
help-rehearse-drawn-turned = How many drawings are turned on their paper
help-rehearse-permute-all = Hang every square in the wrong spot
help-rehearse-cards = Which edge cards are up: all, corners or none
help-rehearse-width = Width of the photo, in pixels
help-rehearse-height = Height of the photo, in pixels
help-rehearse-min-px-per-module = Make the photo large enough for this many pixels per module (the smallest block of a code)
help-rehearse-fill = How much of the photo the wall fills, 0.05 to 4; above 1, part of the wall is cut off
help-rehearse-yaw = How many degrees right of center the camera is
help-rehearse-pitch = How many degrees above center the camera is
help-rehearse-roll = How many degrees the camera is tilted clockwise
help-rehearse-orientation = How the phone was held: the EXIF orientation, 1 to 8
help-rehearse-mirrored = Save the photo mirrored, as a selfie camera does
help-rehearse-people = How many people are in front of the wall, 0 to 4
help-rehearse-ladder = Put a ladder in front of the wall

rehearse-working = Making the practice photo
rehearse-made = Created { $photo }: a practice photo of a wall with { $cells ->
        [one] 1 spot.
       *[other] { $cells } spots.
    } It was made by the program; it isn’t a real photo.
rehearse-states = Answer key: { $right } in the right spot, { $wrong } in the wrong spot, { $turned } turned, { $empty } empty, { $unread } we can’t read, { $unseen } not in the photo.
rehearse-truth = The full answer key is in { $truth }.
rehearse-next = Next: look at the picture and decide what you would fix. Then type: everysquare check { $folder } { $photo }

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

help-check = Read photos of the wall and say what to swap, turn and find
help-check-folder = The event folder
help-check-photos = Photos of the wall: one, or several that show it in parts
check-working = Reading the wall
check-written = Saved in { $folder }: report.html to look at, marked.jpg to take to the wall, wall.jpg straightened, report.json for other programs.
check-open = Open this page in a browser:
    { $page }

## display

help-display = Make the keepsakes: the mural next to the picture, its measurements, and prints to hang up
help-display-folder = The event folder
help-display-photos = Photos of the wall: one, or several that show it in parts
help-display-view = How to show the mural: as-hung, straight (straightened, with gaps), closed (straightened, no gaps) or in-order (every square in its own spot)
help-display-codes = What to do with the codes: keep them, or fill them in with the colors around them
help-display-missing = What to show in empty spots: ghost (a faint copy of the picture) or open (nothing)
help-display-only = Only this print, such as side-by-side; can be given more than once
help-display-pair = The label of a square to show beside its piece; can be given more than once
help-display-poster-width = Width of the poster, in mm (default: three pages side by side)
help-display-poster-original = Make a poster of the picture too
display-working = Looking at the wall
display-squares = { $squares ->
    [one] 1 of { $cells } squares was read.
   *[other] { $squares } of { $cells } squares were read.
}
display-scale = Scale factor as measured: { $factor } ± { $within } (planned: { $planned }).
display-size = The mural is { $width } wide and { $height } high.
display-straight = Rows and columns are straight: nothing is off by { $length } or more.
display-likeness = Likeness of the whole wall to the original: { $likeness } of 1. It belongs to all together.
display-written = Saved in { $folder }: the prints, wall.jpg with the mural, and display.json with the measurements.
display-suggestions = { $squares ->
    [one] Worth a look: 1 drawing may be on the wrong paper. (It’s only a hint.)
   *[other] Worth a look: { $squares } drawings may be on the wrong paper. (It’s only a hint.)
}
display-print = { $name }: { $pages ->
    [one] 1 page
   *[other] { $pages } pages
}
display-mixed = { $squares ->
    [one] 1 square is in another spot or turned
   *[other] { $squares } squares are in another spot or turned
}. Add “--view in-order” to show every square where it belongs.
retape-row-sinks-right = Row { $line } slopes down { $length } to the right.
retape-row-sinks-left = Row { $line } slopes down { $length } to the left.
retape-column-leans-right = Column { $line } leans right { $length } from top to bottom.
retape-column-leans-left = Column { $line } leans left { $length } from top to bottom.
retape-gap = There’s a gap of { $length } between { $one } and { $other }.
retape-overlap = { $one } and { $other } overlap by { $length }.
error-display-no-squares = no square of this event was read in the photos, only edge cards. Move closer, fill the frame with the wall, and take the photo again
error-display-pair = { $read } isn’t a square that was read on this wall

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
serve-photo-heic = This kind of HEIC photo can’t be read. Take it with the button on this page, or choose Settings > Camera > Formats > Most Compatible on the iPhone.
serve-photo-video = This is a video. Take a photo instead.
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

serve-room-title = Our mural
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
serve-room-secret = Hide the picture
serve-room-code = Code for helpers
serve-room-code-alt = Code with the link for helpers' phones
serve-room-picture = The wall as it looks now
serve-room-covered = The wall, covered: each square that hangs is marked
serve-room-lost = No connection to the laptop.
serve-room-of = of { $cells } squares are up
serve-room-reveal = Show the picture
serve-room-ask = Show the picture to everyone?
serve-room-ask-why = The secret is out then. You can hide it again, but no one will forget it.
serve-room-ask-yes = Show it
serve-room-ask-no = Not yet
serve-room-mural = Our mural
serve-room-original = The picture
serve-room-original-alt = The picture that everyone drew a piece of
serve-room-beside = Picture beside it
serve-room-full = Full screen
serve-room-full-end = Leave full screen
serve-room-since = This is from
serve-room-code-who = Show this to helpers only. Anyone with this code can send photos.
serve-room-next-show = Ready? Show the picture!
serve-room-next-keep = Step back and look. Then take one last photo in good light, for the keepsakes.
serve-error-unknown = the system does not tell its addresses ({ $said }): give the laptop’s own with --address
serve-error-no-network = this laptop is in no network that a phone could reach: join the room’s Wi-Fi, or switch on a phone’s hotspot and join that, and try again
serve-error-several = this laptop has several addresses: say which with --address: { $own }
serve-error-open = { $asked } is no address of a room’s own network (10.…, 172.16.… to 172.31.…, 192.168.…): photos of the wall are served to no one else
serve-error-foreign = { $asked } is not this laptop’s address: it has { $own }
serve-error-port-taken = port { $port } is taken: is the page being served already? Look for its window, or choose another port with --port
serve-error-refused = nothing can be served at { $at }: { $said }

## tour

help-tour = See a whole event on a sample picture, in a few seconds
help-tour-folder = Where to put the sample event
tour-event-name = Harbor Library Open Night
tour-begins = A whole event in five steps, in the folder { $folder }. Lines that start with $ show commands you can type yourself (without the $).
tour-sample =
    1. The event: your settings are in event.toml, and picture.png is what will be on the wall.
       For an event of your own: everysquare new FOLDER --picture FILE
tour-print =

    2. The kit: pieces to hand out, blank squares to draw on, edge cards for the wall.
tour-rehearse =

    3. The wall: a practice photo, because no one has drawn yet. Some squares are in the wrong spot; the answer key is saved next to it.
tour-check =

    4. The check: the photo is read and compared with the plan. This is what to fix.
tour-display =

    5. Keepsakes: the mural next to the picture, its measurements, and prints to hang up.
tour-compared =

    The report matches the answer key in { $right } of { $cells } spots.
tour-ends =

    Where things are in { $folder }:
      event.toml   your settings; open it in any text editor
      print/       pieces.pdf, squares.pdf, cards.pdf to print at 100%; manifest.json for the check
      rehearsals/  the practice photo and its answer key
      checks/      one folder for each check; open its report.html
      display/     one folder with keepsakes; open its side-by-side.pdf

    What to try next:
      everysquare rehearse { $folder } --seed 6 --permute-all     a wall with every square in the wrong spot
      everysquare check { $folder } PHOTO.jpg                     a photo of your own, once the squares are printed
      everysquare new library-night --picture my-picture.png      an event of your own

## errors: the event's folder

error-folder-first = { $path } is a file. The event folder comes first, then the photos: everysquare { $command } FOLDER PHOTO
error-folder-file = { $path } is a file, not an event folder
error-folder-no-event = there’s no event in { $path } yet. Create one with: everysquare new { $typed } --picture FILE
error-folder-not-printed = the kit for { $path } hasn’t been printed yet. First run: everysquare print { $typed }
error-folder-no-picture = there’s no picture { $path }. Check the name and the folder
error-folder-changed = event.toml now says { $own }, but the printed kit is { $kit }. Change event.toml back, or print the kit again
error-folder-described = { $tag }, { $columns } × { $rows } squares of { $side } mm
error-folder-not-text = { $path } isn’t plain text. Save it again as plain text (UTF-8)
error-folder-too-large = { $path } is larger than { $most } MB, too large for { $file }
error-folder-an-event = an event.toml
error-folder-a-manifest = the record of what was printed
error-folder-a-template = a page design
error-folder-a-words-file = a file of sentences
error-folder-a-picture = a picture
error-folder-many-templates = there are more than { $most } templates in { $path }. Keep only the ones that replace one of the program’s
error-folder-other-words = { $path } isn’t used. Put your own wording in templates/words.ftl, in the event’s language
error-folder-read = we can’t read { $path }: { $why }
error-folder-full = we can’t save { $path } because the disk is full. Free up some space and run the command again
error-folder-read-only = we can’t save { $path } because its folder is read-only. Copy the event folder to a place of your own
error-folder-write = we can’t save { $path }: { $why }
error-folder-no-right = you don’t have permission; ask whoever created it
error-folder-is-folder = it’s a folder
error-folder-file-in-the-way = there’s a file where a folder should be
error-folder-no-name = that can’t be used as a folder name

## errors: manifest and codes

error-manifest-format = print/manifest.json has format { $read }, but this program reads format { $known }. Print the kit again, or use the program that made it
error-manifest-json = we can’t read print/manifest.json: { $said }
error-manifest-wall = print/manifest.json doesn’t describe a mural: { $what }
error-manifest-code = print/manifest.json, code { $name }: { $what }
error-manifest-code-outside = a code of { $side } mm at { $x }, { $y } mm isn’t inside its square
error-manifest-module = the smallest block of a code is { $module } mm; it must be { $low } to { $high } mm
error-manifest-cells = { $columns } columns and { $rows } rows are too many; use at most { $most } squares
error-manifest-sizes = squares of { $square } mm and pieces of { $piece } mm; both must be { $low } to { $high } mm
error-manifest-listed = there are { $cells } spots, but { $listed ->
    [one] 1 square is listed
   *[other] { $listed } squares are listed
}
error-manifest-twice = square { $square } is listed twice
error-manifest-same-code = squares { $first } and { $second } have the same code
error-manifest-outside = square { $square } is in column { $column }, row { $row }, outside the grid
error-manifest-label = square { $square } is where event.toml has { $expected }. Change rows_from back to what it was when you printed the kit, or print the kit again
error-manifest-kind = the card “{ $name }” is of kind “{ $kind }”; it must be column, row or corner
error-manifest-card = the { $kind } card { $name } has no position or no size
error-code-text = “{ $text }” doesn’t fit in a code. Use at most { $most } characters: 0-9, A-Z, space and $%*+-./:
error-code-hex = “{ $text }” isn’t the pattern of a code, which has 111 hexadecimal digits

## errors: event.toml

error-settings-at = event.toml, line { $line }: { $read }: { $what }
error-settings-at-empty = event.toml, line { $line }, which is empty: { $what }
error-settings-unknown = event.toml, line { $line }: { $read } isn’t a setting. { $hint }
error-settings-unknown-in = event.toml, line { $line }: { $read } isn’t a setting of [{ $section }]. { $hint }
error-settings-missing = { $name } is missing from event.toml. Add { $example }
error-settings-no-such = { $name } isn’t a setting of event.toml
error-settings-twice = this name is here twice. Keep one of them
error-settings-quotes = put words in quotes, such as "a4"
error-settings-no-toml = we can’t read this line ({ $said }). Numbers go without quotes, words with quotes

## errors: the organiser's own templates

error-template-unknown = templates/{ $name }.typ doesn’t replace any of the program’s templates. Those are { $known }
error-template-unknown-near = templates/{ $name }.typ doesn’t replace any of the program’s templates. Do you mean { $near }.typ?
error-template-line = templates/{ $name }.typ, line { $line }: { $said }. Fix it, or remove the file to print with the program’s own
error-template = templates/{ $name }.typ: { $said }. Fix it, or remove the file to print with the program’s own

## errors: the program

error-line = everysquare: { $what }
error-about = { $path }: { $what }
error-output = we can’t write the output: { $why }
error-json = one of the program’s own files is damaged: { $said }
error-system = the computer says: { $said }
error-fault = something went wrong inside the program and it stopped. No file was left half-written. Please report this, with what you typed: { $said }
error-tour-taken = { $folder } already holds an event of its own, so nothing was changed. Give the tour another folder: everysquare tour FOLDER
error-tour-no-check = no check was saved

## what was mistyped

typed-wrong = everysquare: { $what } (type “everysquare --help” to see what you can type)
typed-unknown = there’s no option { $arg }
typed-unknown-near = there’s no option { $arg }. Do you mean { $near }?
typed-one-too-many = we didn’t expect “{ $arg }”. If a folder name has spaces, put it in quotes
typed-no-command = there’s no command “{ $command }”
typed-no-command-near = there’s no command “{ $command }”. Do you mean { $near }?
typed-no-value = { $arg } needs a value after it
typed-value = “{ $value }” doesn’t work for { $arg }: { $why }
typed-too-many = “{ $value }” is one value too many for { $arg }
typed-twice = { $arg } is there twice
typed-conflict = use { $arg } or { $other }, not both
typed-missing = add { $args }
typed-not-text = what you typed isn’t plain text (UTF-8)
typed-choice = use { $choices }
typed-whole = it must be a whole number
typed-number = it must be a number

## help

help-heading-usage = Usage
help-heading-commands = Commands
help-heading-arguments = Arguments
help-heading-options = Options
help-default = { $help } [default: { $values }]
help-possible = { $help } [possible values: { $values }]
help-help = Show this help
help-version = Show the version
help-language = Language for messages, en or es, until there’s an event; then event.toml decides
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

error-photo-no-file = there’s no such file. Check its name and folder
error-photo-no-right = you don’t have permission to open this file
error-photo-is-folder = this is a folder. Name the photos in it
error-photo-unreadable = we can’t read this file ({ $why }). Copy it to this computer and try again
error-photo-file-too-large = the file is larger than any photo. Is it the right one?
error-photo-empty = the file is empty. Copy the photo again
error-photo-heic = this kind of HEIC photo can’t be read ({ $said }). Share it as a JPEG, or choose Settings > Camera > Formats > Most Compatible on the iPhone and take it again
error-photo-avif = this is an AVIF picture, which can’t be read. Share it as a JPEG
error-photo-video = this is a video. Take a photo instead
error-photo-unknown = this is not a photo that can be read: JPEG, PNG, WebP and TIFF files are
error-photo-truncated = the end of this photo is missing. Copy or send it again
error-photo-damaged = this photo is damaged or of a rare kind ({ $why }). Copy it again, or save it as JPEG with another program
error-photo-gave-up = it couldn’t be opened
error-photo-no-size = no size
error-photo-wrong-pixels = wrong number of pixels
error-photo-too-large = the photo has { $width } × { $height } pixels, more than { $most } million. Make it smaller and try again
error-photo-too-small = the photo has only { $width } × { $height } pixels. Send the original, not a thumbnail

## errors: reading the wall

error-read-no-codes = we couldn’t find any of this event’s codes. Is this the right wall? Move closer, hold the phone still, and try again
error-read-foreign = the codes in this photo are from another event (tag { $tags }). Check the folder, or take a photo of this event’s wall
error-read-other = we found only other kinds of codes ({ $texts }). Is this the right wall? Take a photo of the squares
error-read-too-dark = the photo is too dark to read. Turn on more lights and try again
error-read-cannot-place = we can see squares, but not which part of the wall they’re on. Step back until the whole wall is in the photo, or hang up the corner cards
error-jpeg-size = a picture of { $width } × { $height } pixels can’t be a JPEG file. Each side must be 1 to 65535 pixels

## errors: a made photo

error-rehearse-many-faults = these mistakes take { $asked } spots, but the wall has { $cells }. Ask for fewer (a swap takes 2 spots, a cycle 3, each of the others 1)
error-rehearse-nothing-twice = there’s no square left that could be up twice. Ask for fewer missing squares or squares from other events
error-rehearse-permuted-and-swapped = every square is already in a wrong spot, so leave swaps and cycles at 0
error-rehearse-too-few = only { $squares ->
    [one] 1 square is left
   *[other] { $squares } squares are left
} to put in a wrong spot. At least 2 are needed
error-rehearse-option = { $name } is { $value }; it must be { $allowed }
error-rehearse-lens = a lens with k1 = { $k1 }, k2 = { $k2 } folds the picture over itself. Use smaller values
error-rehearse-view = from there the wall can’t fill { $percent }% of the photo. Turn the camera less, or fill less
error-rehearse-many-pixels = { $px } px per module would need a photo of { $width } x { $height } px; the most is 8000 x 6000. Ask for fewer, or fill more of the photo
error-rehearse-printed = print/manifest.json has { $squares } squares for a wall with { $cells } spots. Print the kit again
error-rehearse-jpeg = we can’t save the practice photo as JPEG: { $said }
error-rehearse-range = { $low } to { $high }
error-rehearse-range-px = { $low } to { $high } px
error-rehearse-range-mm = { $low } to { $high } mm
error-rehearse-range-degrees = { $low } to { $high } degrees
error-rehearse-option-width = the photo’s width
error-rehearse-option-height = the photo’s height
error-rehearse-option-px-per-module = the smallest number of px per module
error-rehearse-option-misplacement = the distance of squares from their spots
error-rehearse-option-askew = the tilt of the squares
error-rehearse-option-cut = how uneven the squares are cut
error-rehearse-option-bend = the bend of the paper
error-rehearse-option-drawn-into = how far codes are drawn over
error-rehearse-option-fill = how much of the photo the wall fills
error-rehearse-option-yaw = the camera’s turn to the right (yaw)
error-rehearse-option-pitch = the camera’s turn up (pitch)
error-rehearse-option-roll = the camera’s tilt (roll)
error-rehearse-option-view = the camera’s angle of view
error-rehearse-option-shift-right = the shift to the right
error-rehearse-option-shift-down = the shift down
error-rehearse-option-k1 = k1
error-rehearse-option-k2 = k2
error-rehearse-option-gradient = the change of light across the wall
error-rehearse-option-shadow = the shadow
error-rehearse-option-vignetting = the darkening of the photo’s corners
error-rehearse-option-red = the light’s red
error-rehearse-option-green = the light’s green
error-rehearse-option-blue = the light’s blue
error-rehearse-option-exposure = the exposure
error-rehearse-option-blur = the blur
error-rehearse-option-noise = the noise
error-rehearse-option-sharpening = the sharpening
error-rehearse-option-quality = the JPEG quality
error-rehearse-option-orientation = the orientation
error-rehearse-option-people = the number of people
error-rehearse-option-unsteady = how shaky the drawings are

## errors: printing

error-print-changed = event.toml has changed since you printed this kit, so new pages wouldn’t match the old ones. Print the whole kit again: everysquare print { $folder }

## questions

print-questions = Questions
print-answers = Answers
questions-about = Cards to cut out, each with a question: { $questions }
questions-about-key = The whole picture, cut into pieces by lines, with letters for the columns and numbers for the rows. { $piece } is in column { $column } and row { $row }. { $first ->
    [top] Row 1 is at the top.
   *[bottom] Row 1 is at the bottom.
}
questions-key = Picture key
questions-key-intro = Keep this page face down until the picture is out. Piece { $piece } is in column { $column }, row { $row }. { $first ->
    [top] Row 1 is at the top.
   *[bottom] Row 1 is at the bottom.
}
questions-answers = Answers to the questions
questions-rung-see = See
questions-rung-count = Count
questions-rung-compare = Compare
questions-rung-explain = Explain
questions-ages-see = grades K–1
questions-ages-count = grades 2–3
questions-ages-compare = grades 4–6
questions-ages-explain = anyone
questions-about-answers = Keep these answers away from the cards. Most numbers come from this picture and this mural. The grades are a rough guide. “Has a color in it” means that the color is listed on the back of the piece. Some cards send children to the picture key, the first page of the question cards.
questions-heading = { $rung }: { $ages }
questions-aloud = Read me aloud
questions-number = No.
questions-question = Question
questions-answer = Answer
questions-guess = My guess
questions-request = Tell or draw how you know.
questions-working = How to find it
questions-inch = { $count ->
    [one] 1 inch
   *[other] { $count } inches
}
questions-mm = { $count } mm
questions-inch2 = { $count ->
    [one] 1 square inch
   *[other] { $count } square inches
}
questions-mm2 = { $count } mm²
questions-percent = { $count }%
questions-one-part = 1/{ $count }
questions-turned-back = { $letter }, a quarter turn to the { $way ->
    [right] right
   *[left] left
}
questions-and = { $first } and { $last }
questions-sum = { $by ->
    [rows] Row by row from the top: { $sum }
   *[columns] Column by column from the left: { $sum }
}
questions-none = none
questions-sum-total = { $terms } = { $total }

questions-ask-colours-of-piece = Look at this piece. How many colors can you see?
questions-working-colours-of-piece = Piece { $piece }: { $colours }
questions-ask-next-piece = Which piece goes in the box?
questions-working-next-piece = The lines meet only with { $answer }.
questions-ask-in-row-with = Look at the pieces from { $first } to { $last }. How many have { $colour } in them?
questions-working-in-row-with = { $cells }
questions-ask-turned-piece = One piece is upside down. Which one is it?
questions-working-turned-piece = The lines do not meet at { $answer }.
questions-ask-in-one-row = Look at the mural. Count one whole row. How many squares are in it?
questions-working-in-one-row = One in each column: { $columns }
questions-ask-pieces-with = Look at the picture key. How many pieces have { $colour } in them?
questions-working-pieces-with = { $counted }
questions-ask-left-in-row = A row has { $columns } spots. { $hanging ->
    [one] 1 is full.
   *[other] { $hanging } are full.
} How many are empty?
questions-working-left-in-row = { $columns } − { $hanging } = { $answer }
questions-ask-in-one-column = Look at the mural. Count from the bottom to the top. How many squares are in one column?
questions-working-in-one-column = One in each row: { $rows }
questions-ask-one-colour = Look at the picture key. How many pieces have just one color?
questions-working-one-colour = { $counted }
questions-ask-colours = Look at the pencil chart. How many colors are on it?
questions-working-colours = { $pencils }
questions-ask-one-more = The picture has { $squares ->
    [one] 1 piece
   *[other] { $squares } pieces
}. You add one more. How many are there now?
questions-working-one-more = { $squares } + 1 = { $answer }
questions-ask-corners = A square has 4 corners. { $squares } squares do not touch. How many corners do they have?
questions-working-corners = 4 + 4 = { $answer }
questions-ask-boxes-across = Draw 3 lines down a square, from mark to mark. How many strips do you get?
questions-working-boxes-across = 3 lines make { $answer } strips.
questions-ask-sides = A square has 4 sides. { $squares } squares do not touch. How many sides do they have?
questions-working-sides = 4 + 4 + 4 = { $answer }
questions-ask-tape = Each square needs { $strips } strips of tape. You hang { $squares } squares. How many strips do you need?
questions-working-tape = { $strips } + { $strips } = { $answer }

questions-ask-guess = Look at the picture key. Guess how many pieces have { $colour } in them. Then count. How many are there?
questions-working-guess = { $counted }
questions-ask-all-squares = The mural has { $columns } columns and { $rows } rows. How many squares are there in all?
questions-working-all-squares = { $columns } × { $rows } = { $answer }
questions-ask-left = The mural needs { $count } squares. { $hanging } are up. How many more does it need?
questions-working-left = { $count } − { $hanging } = { $answer }
questions-ask-half-up = The mural has { $count } squares. Half of them are up. How many squares are up?
questions-working-half-up = { $count } ÷ 2 = { $answer }
questions-ask-next-rows = 1 row has { $columns } squares. 2 rows have { $two } squares. How many squares do 3 rows have?
questions-working-next-rows = { $two } + { $columns } = { $answer }
questions-ask-not-with = { $having } of the { $count } pieces have { $colour } in them. How many do not?
questions-working-not-with = { $count } − { $having } = { $answer }
questions-ask-quarter-boxes = A square has 3 marks on each side. Draw a line from each mark to the one across from it. How many small boxes do you get?
questions-working-quarter-boxes = 4 across and 4 down: 4 × 4 = { $answer }
questions-ask-quarter-up = One fourth of the { $count } squares are up. How many squares are up?
questions-working-quarter-up = { $count } ÷ 4 = { $answer }
questions-ask-half-row = A row has { $columns } squares. Half of them are up. How many squares is that?
questions-working-half-row = { $columns } ÷ 2 = { $answer }
questions-ask-visitors = The mural has { $count } squares. You and your friends draw { $each } squares each. How many friends does it take, with you?
questions-working-visitors = { $count } ÷ { $each } = { $answer }
questions-ask-full-rows = { $rows } rows are full. Each row has { $columns } squares. How many squares is that?
questions-working-full-rows = { $rows } × { $columns } = { $answer }
questions-ask-half-of-boxes = A square has 16 small boxes. You color half of them. How many boxes do you color?
questions-working-half-of-boxes = 16 ÷ 2 = { $answer }
questions-ask-sides-of-squares = A square has 4 sides. How many sides do { $squares } squares have, if they do not touch?
questions-working-sides-of-squares = { $squares } × 4 = { $answer }
questions-ask-tables = { $tables } tables have { $pencils } pencils each. How many pencils is that?
questions-working-tables = { $tables } × { $pencils } = { $answer }
questions-ask-folded = Fold a sheet of paper in half { $times } times. Keep it folded each time. Then open it. How many parts do the folds make?
questions-working-folded = Each fold makes twice as many: 2 × 2 × 2 = { $answer }
questions-ask-boxes-of-two = A square has 16 small boxes. How many small boxes do 2 squares have?
questions-working-boxes-of-two = 16 + 16 = { $answer }
questions-ask-minutes = It takes { $each } minutes to draw one square. How many squares can you draw in { $minutes } minutes?
questions-working-minutes = { $minutes } ÷ { $each } = { $answer }

questions-ask-scale = A piece is { $piece } wide. A square is { $square } wide. The square is how many times as wide as the piece?
questions-working-scale = { $square } ÷ { $piece } = { $answer }. This is the scale factor.
questions-ask-pieces-on-square = A square is { $scale } times as wide and { $scale } times as tall as a piece. How many pieces would cover one square?
questions-working-pieces-on-square = { $scale } × { $scale } = { $answer }
questions-ask-mural-width = { $squares } squares hang side by side. Each one is { $square } wide. { $unit ->
    [inch] How many inches
   *[mm] How many millimeters
} wide is the mural?
questions-working-mural-width = { $squares } × { $square } = { $answer }
questions-ask-mural-height = { $squares } squares hang one above the other. Each one is { $square } tall. { $unit ->
    [inch] How many inches
   *[mm] How many millimeters
} tall is the mural?
questions-working-mural-height = { $squares } × { $square } = { $answer }
questions-ask-fraction-with = { $part }/{ $of } of the { $count } pieces have { $colour } in them. How many pieces is that?
questions-working-fraction-with = { $count } ÷ { $of } = { $one }, then { $one } × { $part } = { $answer }
questions-ask-larger = On the piece, a line is { $length } mm long. The square is { $scale } times as wide as the piece. How many millimeters long is the line on the square?
questions-working-larger = { $length } mm × { $scale } = { $answer }
questions-ask-around = A ribbon goes once around the edge of the mural. The mural is { $columns } squares wide and { $rows } squares tall. Each square is { $square } wide. { $unit ->
    [inch] How many inches
   *[mm] How many millimeters
} long is the ribbon?
questions-working-around = Perimeter: 2 × ({ $columns } + { $rows }) × { $square } = { $answer }
questions-ask-fraction-up = { $part }/{ $of } of the { $count } squares are up. How many squares is that?
questions-working-fraction-up = { $count } ÷ { $of } = { $one }, then { $one } × { $part } = { $answer }
questions-ask-which-part = { $having } of the { $count } pieces have { $colour } in them. Which number goes in the box? 1/☐ of the pieces have it.
questions-working-which-part = { $count } ÷ { $having } gives { $answer }
questions-ask-smaller = On the square, a line is { $length } mm long. The square is { $scale } times as wide as the piece. How many millimeters long was the line on the piece?
questions-working-smaller = { $length } mm ÷ { $scale } = { $answer }
questions-ask-inches-to-mm = One inch is 25.4 mm. How many millimeters are in { $inches } inches?
questions-working-inches-to-mm = { $inches } × 25.4 mm = { $answer }
questions-ask-boxes-of-squares = Lines between the tick marks split a square into 16 small boxes. How many small boxes do { $squares } squares have?
questions-working-boxes-of-squares = { $squares } × 16 = { $answer }
questions-ask-part-of-boxes = A square has 16 small boxes. { $part }/{ $of } of them are colored. How many boxes is that?
questions-working-part-of-boxes = 16 ÷ { $of } × { $part } = { $answer }
questions-ask-millimetres = A string is { $metres } meters long. How many millimeters is that?
questions-working-millimetres = { $metres } × 1000 mm = { $answer }

questions-ask-next-square = A block of { $a } × { $a } has { $aa } squares. A block of { $b } × { $b } has { $bb }. A block of { $c } × { $c } has { $cc }. How many squares does the next block have?
questions-working-next-square = { $side } × { $side } = { $answer }
questions-ask-turn-back = Which piece is turned, and which way must you turn it to fix it?
questions-working-turn-back = The lines meet again on both sides.
questions-ask-edge = The mural has { $columns } columns and { $rows } rows. How many squares are on its outside edge?
questions-working-edge = 2 × { $columns } + 2 × { $rows } − 4 = { $answer }. The four corners were counted twice.
questions-ask-both = Look at the picture key. How many pieces have both { $first } and { $second } in them?
questions-working-both = { $counted }
questions-ask-larger-patch = On the piece, a patch of color covers { $length } mm². Every length on the square is { $scale } times as long. How many mm² does the patch cover there?
questions-working-larger-patch = { $length } mm² × { $scale } × { $scale } = { $answer }
questions-ask-blocks = The mural has { $columns } columns and { $rows } rows. In how many places can you find a block of 2 × 2 squares? The blocks may overlap.
questions-working-blocks = ({ $columns } − 1) × ({ $rows } − 1) = { $answer }
questions-ask-columns-to-rows = The mural has { $columns } columns and { $rows } rows. Which number goes in the box? { $columns } : { $rows } = { $first } : ☐
questions-working-columns-to-rows = Divide both by { $divisor }: { $rows } ÷ { $divisor } = { $answer }
questions-ask-percent-with = { $having } of the { $count } pieces have { $colour } in them. What percent is that?
questions-working-percent-with = { $having } ÷ { $count } = { $answer }
questions-ask-chessboard = Color the { $count } squares like a checkerboard. Start with black in the top left corner. How many squares are black?
questions-working-chessboard = { $odd ->
    [yes] Half of { $count }, rounded up: { $answer }
   *[no] Half of { $count }: { $answer }
}
questions-ask-most-colours = Look at the picture key. No piece has more than { $colours } colors. How many pieces have { $colours }?
questions-working-most-colours = { $counted }
questions-ask-seams = The mural has { $columns } columns and { $rows } rows. A strip of tape joins each square to each neighbor beside, above and below it. How many strips is that?
questions-working-seams = { $rows } × ({ $columns } − 1) + { $columns } × ({ $rows } − 1) = { $answer }
questions-ask-square-step = A block of squares is { $to } × { $to }. Another is { $from } × { $from }. How many more squares are in the big block?
questions-working-square-step = { $to } × { $to } − { $from } × { $from } = { $answer }
questions-ask-all-blocks = The mural has { $columns } columns and { $rows } rows. How many square blocks are there in all? Count every size: 1 × 1, 2 × 2, 3 × 3, and so on.
questions-working-all-blocks = Size by size: { $sum }
questions-ask-area-step = A piece is { $piece } wide. A square is { $square } wide. How many square inches larger is the square?
questions-working-area-step = { $to } × { $to } − { $from } × { $from } = { $answer }
questions-ask-piece-to-square = A piece is { $piece } wide. A square is { $square } wide. Which number goes in the box? Piece : square = { $first } : ☐
questions-working-piece-to-square = Divide both by { $divisor }: { $square } ÷ { $divisor } gives { $answer }
questions-ask-percent-up = { $percent }% of the { $count } squares are up. How many squares is that?
questions-working-percent-up = { $count } × { $percent } ÷ 100 = { $answer }
questions-ask-odd-numbers = 1 + 3 = 4 and 1 + 3 + 5 = 9. What is the sum of the odd numbers from 1 to { $last }?
questions-working-odd-numbers = { $terms } numbers: { $terms } × { $terms } = { $answer }
questions-ask-hellos = { $people } visitors all say hello to each other, each pair once. How many hellos is that?
questions-working-hellos = { $sum }
questions-ask-longer-sides = You make a square with sides { $times } times as long. How many times as much paper do you need?
questions-working-longer-sides = { $times } × { $times } = { $answer }
questions-ask-box-edge = Lines between the tick marks make 4 × 4 small boxes. How many of them touch the edge of the square?
questions-working-box-edge = 16 boxes − 4 in the middle = { $answer }
questions-ask-box-blocks = Lines between the tick marks make 4 × 4 small boxes. How many squares of all sizes can you find? Count the big one, too.
questions-working-box-blocks = 16 + 9 + 4 + 1 = { $answer }
questions-ask-percent-of-boxes = A square has 16 small boxes. { $percent }% of them are colored. How many boxes is that?
questions-working-percent-of-boxes = 16 × { $percent } ÷ 100 = { $answer }
questions-ask-boxes-ratio = Of 16 small boxes, 4 are colored and 12 are white. Which number goes in the box? Colored : white = 1 : ☐
questions-working-boxes-ratio = 12 ÷ 4 = { $answer }

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
helpers-wait-2 = can take a question card, once the picture is out. One small square is for seeing, two are for counting, three for comparing, and a star is for anyone who likes to explain. Read the cards with an ear aloud. Keep the picture key with the cards.

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

error-picture-empty = the file is empty. Choose a PNG, JPEG, WebP, TIFF or SVG file
error-picture-format = this is no picture in a format that is read here: save it as PNG, JPEG, WebP, TIFF or SVG
error-picture-heic = this kind of file can’t be read. Export the picture as JPEG or PNG first
error-picture-large = the picture has { $width } × { $height } pixels. Make it smaller, at most { $most } on each side and 100 million in all
error-picture-short = the end of the picture’s file is missing. Copy or download it again
error-picture-damaged = the picture’s file is damaged ({ $why }). Copy it again, or open it in another program and save it as PNG
error-picture-no-pixels = it has no pixels
error-picture-svg = we can’t use this SVG drawing ({ $why }). Save it again as plain SVG, or as PNG
error-picture-outside = the SVG drawing shows something from outside its own file, { $named }, and we never load that. Embed it, or save the drawing as PNG
error-picture-letter = the SVG drawing has text with the letter “{ $letter }”, which isn’t in any font here. Convert its text to outlines, or save it as PNG
error-picture-kind = this kind of picture isn’t supported ({ $said }). Open it in another program and save it as PNG
error-picture-save = we can’t save the picture as PNG: { $said }
error-svg-gave-up = it couldn’t be opened
error-svg-text = it has more than { $most } MB of text
error-svg-no-text = it isn’t plain text (UTF-8)
error-svg-no-size = it has no size we can draw
error-svg-costly = { $what }, which would take too long to draw
error-svg-deep = its elements are nested more than { $most } deep
error-svg-filter = one of its filters has { $name } = { $value }
error-svg-filters = it has { $count } filter steps
error-reduce-one-colour = the picture is one color all over, so there’s nothing to draw. Choose another one
error-reduce-one-pencil = with these pencils the whole picture turns into one color ({ $pencil }). Choose more pencils, or ones that differ more
error-grid-columns = { $read } columns won’t work. Use { $least } to { $most }
error-grid-rows = { $read } rows won’t work. Use { $least } to { $most }
error-grid-squares = { $read } squares won’t work. Use { $least } to { $most }
error-grid-cells = { $columns } columns and { $rows } rows make { $squares } squares. Use at most { $most }

## errors: a new event

error-new-file = { $path } is a file. Give the name of a folder
error-new-taken = { $path } already holds an event, so nothing was changed. Edit its event.toml, or choose another folder
error-new-piece = a piece { $piece } wide is larger than its square of { $square }. Choose a smaller --piece-mm or a larger --square-mm
new-less-than-one = less than 1
typed-name = use 1 to { $most } characters on one line
typed-tag = use 3 characters from { $letters }
typed-whole-from = it must be a whole number from { $least } to { $most }
typed-number-from = it must be a number from { $least } to { $most }
typed-millimetres-from = it must be a number of millimeters from { $least } to { $most }
error-plan-save = --save needs numbers to keep. Add --visitors, --minutes, --seats, --wall or --hang

error-settings-table = this must be a table: [{ $name }], with its settings on their own lines below
error-settings-list = this must be a list, with one [[{ $name }]] for each
error-settings-whole = must be a whole number from { $least } to { $most }
error-settings-millimetres = must be a number from { $least } to { $most }, in millimeters
error-settings-minutes = must be a number from { $least } to { $most }, in minutes
error-settings-yes-or-no = use true or false, without quotes
error-settings-choice = use { $choices }, in quotes
error-settings-belongs-top = It belongs at the top of the file, above the first [table]
error-settings-belongs = It belongs under [{ $section }]
error-settings-near = Do you mean { $near }?
error-settings-known = You can use { $known }
error-settings-name = must be text in quotes, on one line, 1 to { $most } characters long
error-settings-tag = use 3 characters from { $letters }, in quotes
error-settings-file = use the name of a file in the event folder, in quotes, such as "picture.png"
error-settings-colours = there are { $count } [[pencils]] in the list, so use { $count }, or leave out { $name }
error-settings-pencils = there are { $count } in the list; use { $least } to { $most }
error-settings-colour = write a color like "#3a8f4d": two hexadecimal digits each for red, green and blue
error-settings-of-pencil = { $name } for number { $number } of the [[pencils]]
error-settings-pencil-example = name = "leaf green" and srgb = "#3a8f4d" under every [[pencils]]
error-settings-pencils-example = name = "leaf green" and srgb = "#3a8f4d" under one for each
error-settings-top-example = a line such as { $line } at the top
error-settings-wall-example = { $line } under [wall]
error-settings-piece = must be at most square_mm, which is { $square }
error-settings-module = the code and the white margin around it would be 29 blocks wide, too wide for square_mm = { $square }. Use a smaller number
error-settings-room = write it like "8x6ft" or "2.4x1.8m" (m, cm, mm, ft or in), each side 0.2 to 50 m
error-settings-minutes-a-piece = use four numbers from { $least } to { $most }, in minutes, for a one-color, an easy, a medium and a hard piece, none smaller than the one before
error-settings-level-names = use four different names in quotes, the easiest first, each 1 to { $most } characters long (plain, easy, medium and hard only for their own level)
error-settings-bounds = use three rising numbers from { $least } to { $most }: the scores where easy, medium and hard begin
error-settings-piece-twice = this piece is in the list twice. Keep one of them
error-settings-of-piece = { $name } for number { $number } of the [[pieces]]
error-settings-piece-example = label = "D7" and level = "hard" under every [[pieces]]
error-settings-label = use the label of a piece, columns A to { $column } and rows 1 to { $row }, such as "A1"
error-settings-rows = with { $columns ->
    [one] 1 column
   *[other] { $columns } columns
} use at most { $most } rows, which makes { $squares } squares in all

## event.toml: what its comments say

event-head = The settings of your event. Change what you like, then run the command again. Anything after a # is just a note.
event-tag = in every code of this event; don’t change it once the squares are printed
event-language = of everything printed and shown: { $choices }
event-file = in this folder
event-colours = how many pencil colors to use
event-pencils = To use your own pencils, leave out colors and list each pencil at the end of this file, like this:
event-pencils-name = leaf green
event-columns = squares across, lettered from the left
event-rows = squares down
event-piece-mm = side of each piece, the small part of the picture a visitor gets
event-square-mm = side of each paper square
event-rows-from = where row 1 is: { $choices }
event-module-mm-usual = if you leave this out, codes are as small as a phone can still read on a wall this size
event-module-mm = if you leave this out, codes are as small as a phone can still read on a wall this size
event-inset-mm = distance from the cut edge to the code; tape and neighboring squares tend to cover the edges
event-flip = how your printer flips the page: { $choices } (one-sided)
event-units = what people read: { $choices }; this file is always in mm
event-visitors = how many you expect
event-minutes = how long people will draw
event-seats = how many people can draw at once
event-room = the space for squares and edge cards, such as "8x6ft" or "2.4x1.8m"
event-hang-mm = height of the bottom edge above the floor; if left out, we suggest one from what people can reach
event-minutes-a-piece = minutes for a one-color, an easy, a medium and a hard piece
event-level-names = the easiest first
event-own-level-names = your own names for the levels, the easiest first
event-bounds = the scores where easy, medium and hard begin; “everysquare plan” shows each piece’s level
event-balanced = true: as many easy as medium as hard pieces, whatever their scores
event-pieces = If you disagree with a level, list that piece at the end of this file, like this:
event-pieces-level = plain (one color), easy, medium or hard, or your own name for it

## likeness

likeness-elsewhere = The drawing on square { $square } looks like piece { $other }. Take a look.
likeness-elsewhere-turned = The drawing on square { $square } looks like piece { $other }, turned { $degrees }° clockwise. Take a look.
likeness-turned = The drawing on square { $square } looks turned { $degrees }° clockwise on its paper. Take a look.
likeness-unread = We can’t read the square in { $cell }. Its drawing looks like piece { $other }. Take a look.
