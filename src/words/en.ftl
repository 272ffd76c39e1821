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

clock-hours = 12
clock-of-12 = { $hour }:{ $minute } { $half ->
    [morning] AM
   *[afternoon] PM
}
clock-of-24 = { $hour }:{ $minute }
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
state-reserve = in reserve
state-free = stays free

## program

help = Plan an event where everyone draws one piece of a big picture: print the kit, then check the wall with a phone photo

## new

help-new = Start an event: make its folder from a picture and suggest a grid
help-new-folder = The folder to create. It also names the event, unless you use --name
help-new-pictures = The picture to draw: PNG, JPEG, WebP, TIFF, HEIC or SVG. Your file isn’t changed. Use it several times to compare pictures: then nothing is made but a page that shows them side by side
help-new-area = Draw only a part of the picture: its left edge, top edge, width and height in percent, such as 10,20,60,60
help-new-from-paper = The picture is a photo of a drawing on paper: find the sheet, straighten it and even out the light
help-new-corners = Where the sheet’s four corners are in that photo, in pixels: x,y x,y x,y x,y in quotes (default: they are found)
help-new-columns = How many squares across
help-new-rows = How many squares down
help-new-squares = About how many squares in all, instead of --columns and --rows
help-new-border = Add a border in reserve: a ring of pattern squares around the picture, hung only if more people come than you have pieces for
help-new-name = The name of the event
help-new-credit = Whose picture it is, such as “Drawn by Ana, grade 3, used with her permission”. Prints that show the picture say so
help-new-tag = Three characters that go into every code of this event, from 23456789ABCDEFGHJKLMNPQRSTUVWXYZ (default: picked at random)
help-new-colours = How many pencil colors to use (default: as few as show all of the picture, 4 to 9)
help-new-pencils = A file that lists your own pencils: [[pencils]] with name and srgb. The event.toml of an earlier event works too
help-new-black-and-white = Use grays only: 4, or as many as --colors says
help-new-fit = If the picture’s shape doesn’t match the grid: crop trims it, pad adds margins
help-new-square-mm = Side of each paper square, in mm (default: 127, which is 5 in; 125 where people read mm)
help-new-piece-mm = Side of each piece, the small part of the picture a visitor gets, in mm (default: 25.4, which is 1 in; 25 where people read mm)
help-new-paper = The paper in your printer: letter, tabloid, a4 or a3 (default: letter)
help-new-flip = How your printer flips the page when it prints two-sided: long-edge, short-edge, or none for one-sided
help-new-units = Units that people read: inch or mm (default: inch for letter and tabloid, mm for a4 and a3)
help-new-join = apart: pieces and squares on sheets of their own; beside: each piece beside its square in one strip, so nobody has to match them

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
new-grid-fits-best = The grid is { $columns } × { $rows }, { $squares }. It fits the picture’s shape, and it’s for about { $visitors } visitors who draw one piece each. Use --visitors to say how many you expect, or --columns, --rows or --squares to choose another.
new-grid-suits-crowd = The grid is { $columns } × { $rows }, { $squares }. That suits your visitors and the picture’s shape.
new-border = Around it goes a border in reserve: { $squares } with a pattern. Hang them only if more people come than you have pieces for. The whole wall is then { $columns } × { $rows }.
new-ask = A few questions, so that the grid fits. Press Enter to skip one.
new-ask-visitors = How many visitors do you expect? (such as 80 or 60-120)
new-ask-each = How many pieces will each draw? (1, or less if families share)
new-ask-minutes = For how many minutes will they draw?
new-ask-seats = How many can sit and draw at once?
new-ask-credit = Whose picture is it? (such as “Drawn by Ana, grade 3, used with her permission”; prints that show the picture say so)
new-nothing-lost = Nothing is cut off. The whole picture gets drawn.
new-lost-sides = To fit the grid, { $percent }% of the picture is cut off, half on the left and half on the right.
new-lost-top-and-bottom = To fit the grid, { $percent }% of the picture is cut off, half at the top and half at the bottom.
new-wall = The finished mural will be { $width } wide and { $height } high. Leave { $cards } more on every side for the edge cards.
new-added-sides = The whole picture gets drawn. To fit the grid, blank strips were added on the left and right ({ $percent }% of the mural).
new-added-top-and-bottom = The whole picture gets drawn. To fit the grid, blank strips were added at the top and bottom ({ $percent }% of the mural).
new-pencils = It uses { $count } pencils: { $names }. You can rename them in event.toml.
new-paper = For { $name }, nobody needs a pencil: it stays the white of the paper.
new-pencils-fitting = That’s as few as show the colors of its larger areas. If something small lost its color, ask for more with --colors.
new-lost-colour = Heads up: { $from } turns into { $to }. It covers { $percent }% of the picture.
new-lost-keeps = { $count } pencils would keep every color: --colors { $count }
new-text = Words in the drawing appear in this program’s own font. Check them in picture-preview.png, or convert the text to outlines in your drawing program.
new-credit = Whose picture is it? If it isn’t yours, ask before you print it. Then say so in event.toml with credit = "…" in the line below file, and the prints that show the picture name its maker.
new-coarse = Each piece was only { $pixels } pixels wide, so the picture was enlarged. A larger picture file will look sharper.
new-from-paper = The drawing was taken from its sheet. Look at { $file }: all of the drawing should be there, on white. If it isn’t, give the sheet’s corners with --corners.
new-closer = A closer crop suits more people: of { $pieces } pieces, { $then-plain } would be one color all over and { $then-hard } hard, where now it’s { $plain } and { $hard }. To try it, start again in a new folder with --area { $area }
new-warn-alike = Heads up: { $one } and { $other } look almost the same and will get mixed up. Try fewer colors (--colors) or your own pencils (--pencils).
new-warn-rare = Heads up: { $pieces ->
    [0] no piece needs { $pencil }
    [one] only 1 piece needs { $pencil }
   *[other] only { $pieces } pieces need { $pencil }
}, so you can leave that pencil out.
new-warn-white = Heads up: { $count ->
    [one] 1 piece is white all over, with nothing to draw
   *[other] { $count } pieces are white all over, with nothing to draw
}. Hang their squares white yourself, or crop the picture closer.
new-warn-plain = Heads up: { $plain } pieces are one color all over, and only { $drawn } have something to draw. A busier picture, or fewer squares, is more fun.
new-next = Next: look at picture-preview.png in { $folder }. Change event.toml there if you like. Then type: everysquare print { $folder }
## several pictures to choose from

print-pictures = Pictures to choose from
pictures-intro = The same event with each picture. There’s no best one: choose what people will love to draw.
pictures-head-name = Picture
pictures-head-squares = Squares
pictures-head-plain = One color
pictures-head-easy = Easy
pictures-head-medium = Medium
pictures-head-hard = Hard
pictures-head-pencils = Pencils
pictures-head-narrowest = Narrowest shape
pictures-head-half = Half known after
pictures-hung = When { $percent }% hang
pictures-alt = { $name } in its pencil colors with its grid, and the wall when a quarter, half and three quarters of the squares hang.
pictures-grid = The grid is { $columns } × { $rows }, { $squares }: { $width } wide and { $height } high.
pictures-levels = Of the pieces, { $plain } are one color all over, { $easy } easy, { $medium } medium and { $hard } hard.
pictures-pencils = { $count ->
    [one] It uses 1 pencil: { $names }.
   *[other] It uses { $count } pencils: { $names }.
}
pictures-narrow = { $pieces ->
    [one] On 1 piece a shape is hard to fill in: on the square it’s only { $width } wide, less than two strokes of a child’s pencil.
   *[other] On { $pieces } pieces a shape is hard to fill in: on the square the narrowest is only { $width } wide, less than two strokes of a child’s pencil.
}
pictures-known = Handed out in order, half of what shows the picture hangs after about { $squares } of { $cells } squares.
pictures-made = Made { $file }, which shows the pictures side by side. Nothing else was made.
pictures-next = Next: look at it with your team. Then start with the picture you choose, such as: everysquare new { $folder } --picture { $picture }

## colours of pencils, in words that a child knows

colour-red = red
colour-orange = orange
colour-yellow = yellow
colour-lime-green = lime green
colour-olive = olive green
colour-green = green
colour-teal = teal
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
help-crowd-visitors = How many visitors you expect, such as 80 or 60-120
help-crowd-arrivals = How they come: drifting, at-once or in-classes
help-crowd-each = How many pieces each visitor draws; below 1 if families share one
help-crowd-start = When they begin, such as 18:30 or 6:30pm
help-crowd-end = When they stop, instead of --minutes
help-crowd-minutes = How long people will draw, in minutes
help-crowd-seats = How many people can sit and draw at once
help-crowd-giving-out = How many helpers hand out pieces
help-crowd-hanging = How many helpers hang squares
help-plan-wall = The wall space you have, such as 8x6ft or 2.4x1.8m; for several boards, side by side, "4x6ft, door, 5x6ft"
help-plan-hang = Height of the bottom edge above the floor, in mm (default: we suggest one)
help-plan-save = Save these numbers in event.toml

plan-title = Plan for “{ $name }”
plan-levels = Pieces by level
plan-head-level = level
plan-head-mark = mark
plan-border = border in reserve
plan-head-pieces = pieces
plan-head-minutes = minutes each
plan-head-last = last handed out
plan-decided = { $count ->
    [one] 1 piece has the level that event.toml gives it.
   *[other] { $count } pieces have the level that event.toml gives them.
}
plan-balanced = Levels are balanced, as set in event.toml. The pieces with something to draw are split into three equal groups.
plan-keep-free = / stays free: { $spots }. { $count ->
    [one] Nobody draws that piece, and its square isn’t printed.
   *[other] Nobody draws those pieces, and their squares aren’t printed.
}
plan-crowd = Visitors and time
plan-evening = { $visitors } visitors { $arrivals ->
    [at-once] come all at once
    [in-classes] come class by class
   *[drifting] drift in
} and draw { $each ->
    [1] one piece each
   *[other] { $each } pieces each
}. { $seats ->
    [one] 1 person
   *[other] { $seats } people
} can draw at once, for { $minutes } minutes.
plan-clock = From { $start } to { $end }.
plan-assumed = You didn’t give { $numbers }, so we guessed. Add { $options } with your own numbers.
plan-seats-free = { $free ->
    [one] 1 seat stays empty.
   *[other] { $free } seats stay empty.
}
plan-helpers = Helpers
plan-helpers-needed = This many keep most waits under { $minutes } minutes:
plan-helpers-given = You planned { $giving-out } to hand out and { $hanging } to hang. This many would keep most waits under { $minutes } minutes:
plan-others = Grids that fit better:
plan-others-as-well = Other grids that would work:
plan-head-grid = grid
plan-head-whole = whole
plan-head-without = no piece
plan-head-size = mural
plan-head-lost = picture cut off
plan-others-why = “whole” is the chance of a whole mural, “no piece” is how many visitors go without. { $least } to { $most } pieces would work. To use one of these grids, change columns and rows in event.toml before you print.
plan-no-others = No other grid with squares this size fits your visitors, wall and picture.
plan-wall = The wall
plan-wall-size = The squares are { $width } wide and { $height } high. With the edge cards around them it’s { $around_width } wide and { $around_height } high.
plan-parts = The wall hangs in { $count ->
    [one] 1 part
   *[other] { $count } parts
}. { $crossing ->
    [0] No outline runs from one part to the next.
    [one] 1 outline runs from one part to the next.
   *[other] { $crossing } outlines run from one part to the next.
}
plan-part = Part { $number }: spots { $from } to { $to }, { $width } wide and { $height } high, with its bottom edge { $hang } above the floor.
place-one-board = Everything fits on board { $number } ({ $size }), so the mural hangs there in one piece.
plan-part-heights = Part { $number }:
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
plan-cutting = Cutting it all takes about { $minutes } minutes: { $cuts } cuts, { $stack } sheets at a time.
plan-no-sheets = We can’t count the sheets of paper: { $why }.
plan-join-apart = Pieces and squares are printed apart: { $sheets } sheets, { $color } of them in color, and about { $minutes } minutes to cut ({ $cuts } cuts, { $stack } sheets at a time). In strips, each piece beside its square, it’s { $other-sheets } sheets, { $other-color } of them in color, and about { $other-minutes } minutes; then nobody has to match pieces and squares. For that, set join = "beside" in event.toml.
plan-join-beside = Pieces and squares are printed in strips: { $sheets } sheets, { $color } of them in color, and about { $minutes } minutes to cut ({ $cuts } cuts, { $stack } sheets at a time). Apart, it’s { $other-sheets } sheets, { $other-color } of them in color, and about { $other-minutes } minutes; then someone has to find the square for each piece. For that, set join = "apart" in event.toml.
plan-things = You need { $tape } of tape for the squares and { $cards } cards; pencil sharpeners: { $sharpeners }; erasers: { $erasers }.
plan-fire = About { $area } of paper will be on the wall. Fire codes limit this, some to as little as a tenth of a wall. Ask your principal, building manager or fire marshal before you print.
plan-fire-part = About { $area } of paper will be on the wall, { $percent } of the space you gave. Fire codes limit this, some to as little as a tenth of a wall. Ask your principal, building manager or fire marshal before you print.
plan-fire-boards = About { $area } of paper will be on the wall. It covers { $boards }. Fire codes limit this, some to as little as a tenth of a wall. Ask your principal, building manager or fire marshal before you print.
plan-fire-board = { $percent } of the board for { $from } to { $to }
plan-written = All the numbers, and each piece’s level and colors, are in { $file }.
plan-saved = These numbers are now in { $file }.
plan-not-saved = These numbers were used just this once. Add --save to keep them.

## crowd: what an event comes to, in the plan and in the guide

crowd-up = At the end, about { $up ->
    [one] 1 square is
   *[other] { $up } squares are
} up, out of { $pieces }.
crowd-up-range = Nine times out of ten it’s { $low } to { $high }.
crowd-fits = This grid fits. The mural is whole { $chance } of the time, usually by { $when }.
crowd-too-large-for-visitors = This grid is too large for your visitors. Invite more people, choose a smaller grid, or ask many to draw two.
crowd-too-large-for-helpers = This grid is too large for so few helpers. Find more helpers, or choose a smaller grid.
crowd-too-large-for-suggested = With the helpers we suggest, most squares go up, but maybe not all. More helpers would help.
crowd-too-large-for-seats = This grid is too large for so few seats. Add seats, or choose a smaller grid.
crowd-too-large-for-time = This grid is too large for the time. Add minutes, choose a smaller grid, or let helpers draw before and after.
crowd-too-small = This grid is too small for your visitors. About { $without } won’t get a piece. Have people share one, or choose a larger grid.
crowd-too-small-always = This grid is too small for your visitors. Even if only { $least } come, about { $without } won’t get a piece. Have people share one, or choose a larger grid.
crowd-chance = Chance of a whole mural: { $chance }.
crowd-without = About { $without ->
    [one] 1 visitor leaves
   *[other] { $without } visitors leave
} without a piece.
crowd-border = The border in reserve has { $pieces } more pieces, in case more visitors come.
crowd-border-helps = When most visitors come, { $without } go without a piece. With the { $pieces } pieces of the border in reserve it’s { $with }.
crowd-if-many = If { $most } come, about { $without } won’t get a piece. Have people share one.
crowd-wait = The longest wait for a piece is about { $wait ->
    [one] 1 minute
   *[other] { $wait } minutes
}.
crowd-from = from
crowd-giving-out = handing out
crowd-hanging = hanging
crowd-minute = minute { $minute }
crowd-one-fewer-giving-out = With one fewer to hand out, people wait up to { $wait ->
    [one] 1 minute
   *[other] { $wait } minutes
}, and { $fewer ->
    [0] as many squares are up at the end
    [one] 1 square fewer is up at the end
   *[other] about { $fewer } fewer squares are up at the end
}.
crowd-one-fewer-hanging = With one fewer to hang, squares wait up to { $wait ->
    [one] 1 minute
   *[other] { $wait } minutes
}, and { $fewer ->
    [0] as many are up at the end
    [one] 1 fewer is up at the end
   *[other] about { $fewer } fewer are up at the end
}.
crowd-assumptions = The computer played this event { $evenings } times. We assumed that handing out a piece takes { $giving-out } seconds, that hanging a square takes { $hanging }, and that visitors leave after waiting about { $patience } minutes. Time yours, and change event.toml.
forecast-pace = At this pace { $usual } of { $all } squares are up at { $end } ({ $low } to { $high }).
forecast-whole = At this pace the mural is whole by { $end }.
forecast-second = Give everyone at the tables a second one, and stop handing out at { $last }.
forecast-late = It’s too late to hand out more. Fill the empty spots with their small pieces.

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
report-white = { $count ->
    [one] 1 is still white: { $squares }.
   *[other] { $count } are still white: { $squares }.
}
report-begun = { $count ->
    [one] 1 may be only begun: { $squares }.
   *[other] { $count } may be only begun: { $squares }.
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
report-border = Border in reserve: { $up } of { $squares } squares are up.
report-stranger = From another event: “{ $text }” in { $cell }
report-rows = Row
report-scale = Scale factor { $factor }: every length on a square is { $factor } times the length on its piece.
report-size = The mural is { $width } wide and { $height } high.
report-shift = The square that is farthest out of place is off by { $by }.
report-modules = Sharpness: { $px } photo pixels for the smallest block of a code.
report-picture-marked = Your photo with everything to fix outlined and labeled. Everything outside the wall and its edge cards is blanked out.
report-picture-straight = The wall, straightened as if you stood right in front of it.
report-private = Your photo isn’t kept. This page shows only the wall and its cards. Spots that couldn’t be read are covered, and so is anyone we found in front of the wall. Someone can be missed, in part or altogether: look before you share. It loads nothing from the internet.
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
legend-reserve = border in reserve: nothing has to hang here
legend-free = stays free: nothing goes here
cell-right = { $cell }: in the right spot
cell-wrong = { $cell }: wrong spot for { $square }, which is here
cell-wrong-turned = { $cell }: wrong spot for { $square }, which is here and turned ({ $how })
cell-not-free = { $cell }: a square is here, but this spot stays free
cell-stranger = { $cell }: a square from another event is here
cell-turned = { $cell }: turned, { $how }
cell-empty = { $cell }: empty
cell-unread = { $cell }: we can’t read its code
cell-unseen = { $cell }: not in the photo
cell-reserve = { $cell }: border in reserve, nothing has to hang here
cell-free = { $cell }: stays free
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
fix-remove-free = Take down { $square }, which is in { $cell }. Its spot on the wall stays free.
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
advice-step-aside = Someone seems to be in front of the wall. Ask everyone to step aside and take another photo.
advice-apart = Part of the wall hangs apart: { $squares }. Take one photo of each part, and check all the photos together.
advice-other-part = Not seen yet: { $squares }. Take a photo of that part of the wall too.
advice-apart-few = { $count ->
    [one] { $squares } is in the photo, but not on the wall with the others.
   *[other] { $squares } are in the photo, but not on the wall with the others.
}
advice-apart-columns = columns { $first } to { $last }
advice-apart-columns-one = column { $first }
advice-apart-rows = rows { $first } to { $last }
advice-apart-rows-one = row { $first }
advice-hidden = { $count ->
    [one] Take one more photo. { $cells } is hidden or outside the photo.
   *[other] Take one more photo. { $cells } are hidden or outside the photo.
}
advice-go-closer = Move closer, or take two photos, one of each half. In photo { $photo } the codes are too small ({ $px } pixels for the smallest block), and { $unread ->
    [one] 1 spot
   *[other] { $unread } spots
} couldn’t be read.
advice-too-small = The photo is too small: we couldn’t read { $unread } of { $cells } spots. Move closer, or take one photo of each half. If it came through a chat app, use the original.
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
advice-on-spare = { $count ->
    [one] { $cells } was drawn on a spare square, which we can’t read. Look there yourself.
   *[other] { $cells } were drawn on spare squares, which we can’t read. Look there yourself.
}
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
help-rehearse-undrawn = How many squares are still white
help-rehearse-begun = How many squares are only begun
help-rehearse-stubs = Leave this many stubs on (for strips); they hang out over the square next to them
help-rehearse-permute-all = Hang every square in the wrong spot
help-rehearse-border = Hang the border in reserve too
help-rehearse-cards = Which edge cards are up: all, corners or none
help-rehearse-printer = How the codes were printed: good, pale (little toner), streaks, draft (ink-saving) or runny (ink that spreads)
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
help-rehearse-board-angle = Turn each board of a wall in parts by up to this angle (default: 0)

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
print-edge-cards = Edge cards
print-pieces = Pieces
print-strips = Strips
print-working = laying out the pages
print-about-squares = The fronts of squares { $labels }: blank paper with cut lines, tick marks, the label and the code.
print-about-pieces = The pieces { $labels } of the picture, with cut lines, tick marks and their labels.
print-about-strips = The strips { $labels }: each square with its tick marks, label and code, and beside it a stub with its piece, its spot on a small wall, its level and its pencils.
print-about-backs = The backs of { $labels }: the label of each, and which way is up.
print-about-piece-backs = The backs of the pieces { $labels }: the label of each, which way is up, its level and its pencils.
print-fill = Fillers
print-helped = Helped squares
print-large = Large pieces
print-spare = Spare squares
print-home = Pages to draw at home
print-from-home = Squares from home
print-test-page = Test page
print-about-fill = Fillers for { $labels }: each piece, enlarged, with its label and its code.
print-about-fill-papers = Which papers to cut, and the codes to glue on { $labels }.
print-about-helped = Squares { $labels } with some of the piece on them to help: faint lines, dotted outlines, or outlines with the names of colors.
print-about-large = The pieces { $labels }, larger: dark outlines, a letter in each area, and the pencil of each letter.
print-about-spare = { $count ->
    [one] 1 blank square
   *[other] { $count } blank squares
} with tick marks and a box for the label.
print-about-home = A page to draw { $label } at home: the piece, its pencils, its square, and how to send it back.
print-about-from-home = The squares { $labels } as they were drawn at home, each with its label and its code.
print-about-test-page = The page to print first: four black marks, a code, bars near the edges and patches of color.
fill-kept = kept for whoever draws { $label }
spare-label = Label
home-title = Draw this at home
home-1 = This is one piece of a big picture. Draw it, large, in the square below.
home-2 = Where does a line touch the edge of the piece? The small marks show you the same place on the square.
home-3 = Leave the box with the little code white, and the four black marks as they are.
home-4 = All done? Cut out the square along the line and bring it to us. Or lay this page flat in good light, take a photo with all four black marks in it, and send us the photo.
test-page-title = Print this page first
test-page-1 = Print it the way you will print the rest: at 100% (actual size), on the same printer and paper.
test-page-2 = Lay it flat on something dark. Take a photo from straight above with all four edges of the paper in it.
test-page-3 = Type: everysquare test-page FOLDER PHOTO. It tells you what to change before you print the rest.
test-page-4 = There is a back too. Turn the page over like the page of a book, take a second photo the same way, and give both photos.
test-page-back-title = The back of the test page
test-page-back = You turned the page like the page of a book. Does the arrow point up? Then your printer turns the paper the right way.
fill-papers = Cut these papers, { $side } on each side. Then cut out each code below and glue it on, { $gap } from the two edges in the { $corner ->
    [top-left] top left
    [top-right] top right
    [bottom-left] bottom left
   *[bottom-right] bottom right
} corner, so that you can read its label.
fill-paper-row = { $count } { $colour }: { $labels }
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
print-border = border
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
print-credit = The picture: { $credit }
print-page = { $document } · page { $page } of { $pages }
print-page-single = { $document } · page { $page } of { $pages } · one-sided
print-page-front-long = { $document } · page { $page } of { $pages } · two-sided, flip on long edge
print-page-front-short = { $document } · page { $page } of { $pages } · two-sided, flip on short edge
print-part = part { $part } of { $parts }
print-page-folded = { $document } · page { $page } of { $pages } · cut out, fold on the dotted line, glue
print-page-glued = { $document } · page { $page } of { $pages } · cut out, glue behind page { $front }
print-page-back = { $document } · page { $page } of { $pages } · back of page { $front }
print-event = { $tag } · { $event }
print-event-labels = { $labels } · { $tag } · { $event }
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
help-print-documents = Only these documents, such as squares or pieces (default: the whole kit). Only on request: fill (squares for the gaps in the newest check), helped (squares with outlines to help), large (pieces for low vision), home (pages to draw at home), from-home (squares that came back), test-page (the page to print first), signs (for the door, the tables and the wall), spare (blank squares), lesson (a lesson with this picture) and groups (what goes with the command “groups”)
help-print-soft = With fill: in soft colors, to hang as they are (default: outlines to color)
help-print-help-with = With helped: names (outlines with the names of colors), dots (dotted outlines) or lines (faint lines between the tick marks; default: names)
help-print-only = Only these spots, such as D7,E4: their squares and pieces again or, with fill, helped, large or home, those
help-print-in-language = These documents in another language too, beside the others: en, en-GB or es
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
print-made-in-all = That’s { $sheets } sheets in all, and about { $minutes } minutes to cut: { $cuts } cuts, { $stack } sheets at a time.
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
print-again = { $count ->
    [one] 1 spot is printed again. Its square has
   *[other] { $count } spots are printed again. Their squares have
} the same code as before, so only one of the two goes up.
print-fill-lacks = In your newest check ({ $when }), { $count ->
    [one] 1 square is
   *[other] { $count } squares are
} missing.
print-fill-whole = In your newest check ({ $when }), no square is missing, so there’s nothing to fill.
print-fill-white = { $white ->
    [one] 1 square is up but still white. Take it
   *[other] { $white } squares are up but still white. Take them
} down when you hang the filler.
print-fill-unknown = { $unknown ->
    [one] 1 spot couldn’t be seen or read. It isn’t
   *[other] { $unknown } spots couldn’t be seen or read. They aren’t
} filled, because a square may hang there.
print-fill-colour = { $count ->
    [one] 1 square has
   *[other] { $count } squares have
} outlines and the names of the colors. Cut along the lines. Anyone can color one in two minutes.
print-fill-hang = { $count ->
    [one] 1 square is in soft colors: cut it out and hang it.
   *[other] { $count } squares are in soft colors: cut them out and hang them.
}
print-fill-papers = { $count ->
    [one] 1 square is all one color. Cut it from paper of that color and glue on its code, which is on the last page:
   *[other] { $count } squares are all one color. Cut them from paper of that color and glue on their codes, which are on the last pages:
}
print-fill-kept = The check counts a filler as its square. Each spot stays open: when someone brings the square they drew, hang that one instead.
print-helped-next = A helped square has the code of its own square: hang just one of the two.
print-spare-next = Copy the label, large, into the box. The check can’t read a spare square, so look at that spot yourself.
print-spare-known = { $count ->
    [one] The check knows that { $labels } has no code now. It will ask you to look at that spot yourself.
   *[other] The check knows that { $labels } have no codes now. It will ask you to look at those spots yourself.
}
print-home-next = A square cut out of its page hangs like any other. When a photo or a scan comes back, type: everysquare receive { $folder } PHOTO
print-test-page-next = Print it, take a photo of each side, and type: everysquare test-page { $folder } PHOTO
print-test-first = Is the printer new to you? Try it first, on one page: everysquare print { $folder } test-page
print-next = Next: cut along the lines and practice with “everysquare rehearse { $folder }”. Once squares are up: “everysquare check { $folder } PHOTO”.

error-print-too-large = a { $what } { $side } mm wide doesn’t fit on { $paper } paper next to the ruler. The largest that fits is { $largest } mm ({ $inches } in). Make it smaller in event.toml, or print on larger paper ({ $papers })
error-print-fill-no-check = there’s no check of this wall yet, and practice checks don’t count, so we don’t know what’s missing. Photograph the wall and type: everysquare check { $folder } PHOTO. Or name the spots: --only D7,E4
error-print-only-label = this event has no spot “{ $read }”. Its spots are { $first } to { $last }
error-print-soft = --soft goes with the document fill
error-print-in = --in goes with documents to read, such as table-card, helpers or questions, without --only
error-print-with = --with goes with the document helped
error-print-none-from-home = no square has come back from home yet. When a photo of one arrives, type: everysquare receive { $folder } PHOTO
error-print-needs-only = helped, large and home need --only and the spots, such as --only D7,E4
error-print-only = --only goes with squares, pieces, strips, fill, helped, large, home, from-home and spare
error-print-square = square
error-print-piece = piece
error-print-card = card
error-print-strip = square with its piece beside it
error-print-unknown = we don’t know a document “{ $read }”. The documents are { $known }. If a folder name has spaces, put it in quotes
error-print-unknown-near = we don’t know a document “{ $read }”. Do you mean { $near }? The documents are { $known }
error-print-typeset = a page couldn’t be laid out ({ $said }). This is a bug in the program; please report it

## groups

help-groups = Share the wall out among classes or other groups, and see how far each one is
help-groups-folder = The event folder
help-groups-groups = The groups and how many people draw in each, such as "3A 26, 3B 24, club 12" (default: tell how far they are)
help-groups-spread = How the pieces of a group lie: scattered (all over the wall, so the secret lasts) or blocks (side by side, so each group sees its own part grow) (default: scattered)
help-value-groups = GROUPS
groups-number = No.
groups-name = Group
groups-people = people
groups-pieces = pieces
groups-minutes = minutes each
groups-next = Next: fill an envelope for each group. Later, “everysquare groups { $folder }” tells how far each one is.
groups-no-check = There’s no check of this wall yet, and practice checks don’t count, so we can’t tell how far the groups are. Photograph the wall and type: everysquare check { $folder } PHOTO
groups-as-of = As of your newest check ({ $when }):
groups-all-up = { $name }: { $up } of { $pieces } up.
groups-to-come = { $name }: { $up } of { $pieces } up. Still to come: { $labels }

print-groups = Groups
groups-envelope = { $name }
groups-share = { $pieces ->
    [one] 1 piece
   *[other] { $pieces } pieces
} for { $people ->
    [one] 1 person.
   *[other] { $people } people.
} { $share ->
    [shared] Up to { $each } people draw one square together.
    [same] { $each ->
        [one] Everyone draws one.
       *[other] Everyone draws { $each }.
    }
   *[more] { $each ->
        [one] Everyone draws one, and { $more } of them draw a second one.
       *[other] Everyone draws { $each }, and { $more } of them draw one more.
    }
}
groups-level = Level
groups-count = How many
groups-labels = Pieces and squares, in the order to hand them out
groups-pencils = Pencils: { $pencils }
groups-where = Where they hang
groups-where-about = A small picture of the wall. The spots of { $name } are dark.
groups-do = What to do
groups-do-1 = Put these pieces and the squares with the same labels into the envelope, with this page on the front.
groups-do-2 = Each visitor gets a piece and the square with the same label, and draws the piece larger.
groups-do-3 = Check that every square comes back, drawn. Write on the list who has which one.
groups-do-4 = Bring the squares to the wall. Each label tells the spot.
groups-absent = Someone is away today?
groups-absent-1 = Keep their piece and square in the envelope. They can draw it later, here or at home.
groups-absent-2 = Is there no later? Let someone who is quick draw a second one.
groups-absent-3 = Tell the organizer which labels are still to come.
groups-list = { $name }: who draws which
groups-list-intro = This list stays in your room. Write names here and nowhere else: not on the squares, not on the wall.
groups-label = Label
groups-who = Who
groups-up = up

error-groups-nobody = name at least one group, such as "3A 26, 3B 24"
error-groups-unreadable = we can’t read “{ $read }” as a group. Write its name (up to { $letters } characters) and then how many people draw, from 1 to { $most }: "3A 26, 3B 24"
error-groups-twice = two groups are called “{ $name }”. Give each its own name
error-groups-many = { $groups } groups are too many. This wall can be shared out among { $most } at most
error-groups-file = groups.json doesn’t match this wall. Share it out again: everysquare groups FOLDER "3A 26, 3B 24"
error-groups-none = the wall isn’t shared out yet. Type the groups and how many people draw in each: everysquare groups { $folder } "3A 26, 3B 24"

## rehang

help-rehang = Take the mural to another place: print how it comes down in piles and goes up again
help-rehang-folder = The event folder
help-rehang-wall = The new place, such as 8x6ft or 2.4x1.8m; for several boards, side by side, "4x6ft, door, 5x6ft"
help-rehang-hang = Height of the bottom edge above the floor there, in mm (default: as in event.toml; if that has none, we suggest one)
help-rehang-save = Put the new place in event.toml, so that checks and prints follow it
print-rehang = Moving the mural
rehang-intro = { $squares ->
    [one] 1 square moves
   *[other] { $squares } squares move
} in { $piles ->
    [one] 1 pile
   *[other] { $piles } piles
}. Each pile lies in hanging order: the square on top goes up first. So nobody has to sort.
rehang-about = The wall as it hangs today, and below it the wall as it will hang. The piles are outlined and numbered in both.
rehang-today = Today
rehang-there = In the new place
rehang-before = Before you begin
rehang-before-1 = Take a photo of the wall and check it, so you know how it hung.
rehang-before-2 = Ask whoever runs the new place what tape you may use, and how much paper may hang. Keep exits, alarms and extinguishers clear. House rules and fire rules come first.
rehang-before-3 = Mark the new place. The map at the end has the lines and heights.
rehang-before-4 = Have ready: a sheet of paper for each pile, a pen, flat boxes, tape.
rehang-down = Taking it down
rehang-caution = Only adults use the step stool, with another adult next to them. Do it when no visitors are near.
rehang-down-1 = Go from pile to pile as the table says. The top rows come down first.
rehang-down-2 = In each pile, start at the square named “first”. Go from right to left, then to the row below.
rehang-down-3 = Peel the tape off the wall slowly. Fold what sticks to the back of the square.
rehang-down-4 = Lay each square face up on the one before. Keep every square the same way up.
rehang-down-5 = Write the pile’s number on a sheet of paper and lay it on top.
rehang-up = Putting it up
rehang-up-1 = Start with pile 1. Its top square is { $first }; it goes to the bottom left of its part.
rehang-up-2 = Hang the bottom row from left to right, then the row above.
rehang-up-3 = If the next square isn’t the next label, stop and look. Two may stick together.
rehang-up-4 = The label is at the right way up on every square. No gaps, no overlaps.
rehang-up-5 = When all is up, take a photo and check it.
rehang-pile = Pile
rehang-squares = Squares
rehang-from = From
rehang-to = To
rehang-first = First
rehang-last = Last
rehang-whole = the whole wall
rehang-map = The new place
rehang-saved = event.toml now has the new place. Once the mural hangs there, photograph it and type: everysquare check { $folder } PHOTO
rehang-not-saved = event.toml still has the old place. When the mural has moved, type the same again with --save, so that checks follow.

## lesson

print-lesson = Lesson
lesson-title = A lesson with this picture
lesson-intro = { $event }. The picture is cut into { $squares } pieces, { $piece } on each side. Every student redraws one on a square { $square } on each side. The scale factor is { $scale }.
lesson-aims = Aims
lesson-aims-1 = Students use a grid to redraw part of a picture, larger.
lesson-aims-2 = They say what a scale factor is, and use it both ways: times { $scale } and divided by { $scale }.
lesson-aims-3 = They find out that lengths become { $scale } times as long, and areas { $area-scale } times as large.
lesson-aims-4 = They find a spot by its column and its row.
lesson-standard = Standard
lesson-standard-write = (yours to fill in)
lesson-minutes = Minutes
lesson-what = What happens
lesson-one = One lesson of 40 minutes
lesson-one-1 = Look at one piece together. What might it be part of? (Don’t show the picture.)
lesson-one-2 = Show the grid method on the board: tick marks, then lines between them, then color.
lesson-one-3 = Draw. Everyone has a piece and the square with the same label.
lesson-one-4 = Hang the squares by their labels.
lesson-one-5 = Step back and look. Then the exit question.
lesson-in-time = { $in-time ->
    [0] All pieces of this picture take longer than { $drawing } minutes. Plan two lessons.
    [one] In { $drawing } minutes, students finish a piece of these levels: { $levels }. There’s 1 of them.
   *[other] In { $drawing } minutes, students finish a piece of these levels: { $levels }. There are { $in-time } of them.
}
lesson-two = Two lessons of 40 minutes
lesson-two-first = First lesson:
lesson-two-first-1 = Look at one piece together. What might it be part of?
lesson-two-first-2 = Show the grid method. Everyone marks on the square where lines cross the edge of the piece.
lesson-two-first-3 = Draw the lines.
lesson-two-first-4 = Put piece and square back into the envelope. Talk: what was hard?
lesson-two-second = Second lesson:
lesson-two-second-1 = Say the scale factor again. How do we know it?
lesson-two-second-2 = Color. Whoever is done draws a second piece.
lesson-two-second-3 = Hang the squares, check with the phone, and fix.
lesson-two-second-4 = Step back and look. Then the exit question.
lesson-words = Words and talk
lesson-word = Word
lesson-means = What it means
lesson-here = In this picture
lesson-word-grid = grid method
lesson-word-grid-means = cut a picture into squares and redraw it square by square
lesson-word-grid-here = { $columns } columns and { $rows } rows: { $squares } pieces
lesson-word-label = label
lesson-word-label-means = the column’s letter and the row’s number
lesson-word-label-here = on every piece and every square
lesson-word-scale = scale factor
lesson-word-scale-means = how many times as long every length becomes
lesson-word-scale-here = { $scale }: { $piece } becomes { $square }
lesson-word-similar = similar
lesson-word-similar-means = same shape, other size: all angles stay, all lengths have one scale factor
lesson-word-similar-here = the mural and the picture
lesson-word-perimeter = perimeter
lesson-word-perimeter-means = once around the edge
lesson-word-perimeter-here = piece { $piece-around }, square { $square-around }: { $scale } times as long
lesson-word-area = area
lesson-word-area-means = how much paper there is inside the edge
lesson-word-area-here = a square has { $area-scale } times the area of its piece
lesson-word-fraction = fraction
lesson-word-fraction-means = one part of equal parts
lesson-word-fraction-here = one square is 1/{ $squares } of the mural
lesson-before = Before you draw
lesson-before-1 = “What do you see on your piece? What could it be?”
lesson-before-2 = “Where do lines touch the edge? Count the tick marks.”
lesson-before-3 = “How many of your pieces would fit side by side along your square?” ({ $scale })
lesson-while = While you draw
lesson-while-1 = “Which mark on the square belongs to this one on the piece?”
lesson-while-2 = “This line is as long as your thumb is wide. How long will it be on the square?”
lesson-while-3 = “Which color fills most of your piece? Does it fill most of your square?”
lesson-after = After it hangs
lesson-after-1 = “Whose lines meet across the edges? Why do they?”
lesson-after-2 = “Could we have made it twice as wide? What would the scale factor be?”
lesson-after-3 = “What did all of you do that no one could have done alone?”
lesson-everyone = A way in for everyone
lesson-everyone-intro = The level belongs to the piece, never to the child. Let students choose: “Something quick, or something to puzzle over?”
lesson-way = Way in
lesson-pieces = Pieces
lesson-do = What helps
lesson-support = Support
lesson-support-pieces = one color and easy: { $support }
lesson-support-do = Fold the square in half twice: the folds make four parts. Fold a paper copy of the piece the same way. Redraw part by part. “everysquare print FOLDER fill --only { $label }” prints a square with outlines to color.
lesson-core = As planned
lesson-core-pieces = medium: { $core }
lesson-core-do = Marks on the edge first, then the lines between them. Compare with a neighbor’s square: do the lines meet?
lesson-more = More
lesson-more-pieces = hard: { $more }
lesson-more-do = Before drawing, say for three points how far they are from the left and from the top, on the piece and on the square. Or draw the same piece once more with the scale factor { $other-scale }.
lesson-own = Questions about your own piece
lesson-own-intro = Copy this for your students. Everyone has a different piece, so the answers to 1 and 5 differ. The others are the same for all.
lesson-number = No.
lesson-question = Question
lesson-answer = Your answer
lesson-own-1 = Find a line on your piece. How long is it? How long is it on your square?
lesson-own-2 = How many of your pieces fit on your square?
lesson-own-3 = How far is it once around your piece? And once around your square?
lesson-own-4 = Which fraction of the whole mural is your square?
lesson-own-5 = What is your label? Which labels are left, right, above and below?
lesson-own-6 = How wide and how tall is the whole mural?
lesson-exit = Exit question and answers
lesson-exit-question = A line on a piece is { $line } long. How long is it on the square? Another line is { $line-on-square } long on the square. How long is it on the piece? How do you know?
lesson-exit-answer = Answer: { $line-larger } on the square, because { $line } × { $scale }. { $line-smaller } on the piece, because { $line-on-square } ÷ { $scale }.
lesson-seen = How to see that it was understood
lesson-seen-1 = The student multiplies one way and divides the other way, and says which way is which.
lesson-seen-2 = The student talks of “{ $scale } times as long”, not of “{ $scale } longer”.
lesson-seen-3 = On the square, lines leave the edge at the same marks as on the piece. How nicely it is drawn doesn’t matter.
lesson-answers = Answers to the questions about one’s own piece
lesson-answers-1 = Every length on the square is { $scale } times the length on the piece.
lesson-answers-2 = { $area-scale }, because { $scale } × { $scale } = { $area-scale }.
lesson-answers-3 = { $piece-around } and { $square-around }.
lesson-answers-4 = 1/{ $squares }, because there are { $squares } squares.
lesson-answers-5 = The letters change to the left and right, the numbers above and below. On the edge of the mural, some are missing.
lesson-answers-6 = { $mural-width } wide and { $mural-height } tall.
lesson-follow = What may follow
lesson-follow-1 = Another scale factor: draw a piece with the factor { $other-scale }. Its side becomes { $other-side }, its area { $other-area } times as large.
lesson-follow-2 = Perimeter and area: both grow, but not alike. Why?
lesson-follow-3 = Draw a piece as a mirror shows it. What stays the same, and what changes?

## checklist

checklist-intro = Each spot of the wall has three boxes: the piece is out, the square is up, the square went home. { $pieces ->
    [one] 1 piece.
   *[other] { $pieces } pieces in all.
} Print this list twice: one copy for the piece table, one for the wall.
checklist-border = “+” means the border in reserve. It goes out last, and it may stay in its bag.
checklist-free = Gray spots stay free: nothing hangs there.
checklist-out = out
checklist-hung = up
checklist-back = back home

## pencils

pencils-intro = With { $seats ->
    [one] 1 seat in use
   *[other] { $seats } seats in use
} and these pencils, no one has to wait for a color { $percent }% of the time.
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
pencils-pieces-title = Where each pencil is needed
pencils-pieces-intro = Each small wall shows one pencil. A full spot is a piece that is mostly this color; a small square is a piece that needs some of it.
pencils-wall-alt = Pieces that need { $name }: { $labels }.

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
wall-map-border = The shaded spots are the border in reserve. Keep them free, and put the edge cards around them.
wall-map-free = { $count ->
    [one] The crossed-out spot stays free: { $spots }.
   *[other] The crossed-out spots stay free: { $spots }.
}
wall-map-boards = Paper covers { $boards }. Fire codes limit that, so ask before you hang it.
wall-map-fits-without-cards = Your { $width } by { $height } space has room for the squares, but not for the edge cards.
wall-map-does-not-fit = Your { $width } by { $height } space is too small for these squares.
wall-map-parts = The wall hangs in { $count ->
    [one] 1 part. It has its own page.
   *[other] { $count } parts. Each has its own page, with distances from its own left edge.
}
wall-map-part = Part { $number }: spots { $from } to { $to }
wall-map-part-at = Part { $number }, { $place }: spots { $from } to { $to }
wall-map-alt = The wall, to scale: { $columns } columns and { $rows } rows of squares with their labels, the edge cards around them, the floor below. Heights above the floor are at the right, distances from the left below.
wall-map-floor = floor
wall-map-in-inches = Heights above the floor and distances from the left, in inches. c1 to c4 are the corner cards.
wall-map-in-mm = Heights above the floor and distances from the left, in mm. c1 to c4 are the corner cards.
wall-map-how-title = How to mark the wall
wall-map-columns-title = Vertical lines
wall-map-columns-intro = Hang a plumb line (a string with a weight), or draw a faint pencil line, at the distances below the columns. They count from the left edge of the squares. Take strings down before visitors come.
wall-map-column = Line
wall-map-from-left = From the left, { $unit }
wall-map-left-of = left of { $column }
wall-map-right-of = right of { $column }
wall-map-rows-title = Horizontal lines
wall-map-rows-intro = Stretch a string tight against the wall, or draw a faint pencil line, at the heights beside the rows. They count from the floor. Use a level; floors aren’t always even.
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
print-take-home = To take home
print-about-take-home = Slips to take home for { $labels }: the mural with one spot lit, the square, the piece it was drawn from.
take-home-one = Square { $label }, 1 of { $count }: column { $column }, row { $row }
take-home-thanks = Thank you for drawing with us!
print-giving-back = To give back
print-about-giving-back = Squares to give back, { $labels }: each small, with its label and a box to check when it’s been picked up.
giving-back-words = Which one is yours? Point to it. Check its box when you’ve picked it up.
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

help-check = Read photos of the wall and say what to swap, turn and find
help-check-folder = The event folder
help-check-uncovered = Leave the pictures as the photo shows them: spots that can’t be read, and people in front of the wall, aren’t covered
help-check-begun = Say too which squares look only begun
help-check-photos = Photos of the wall: one, or several that show it in parts
check-working = Reading the wall
check-written = Saved in { $folder }: report.html to look at, marked.jpg to take to the wall, wall.jpg straightened, report.json for other programs.
check-open = Open this page in a browser:
    { $page }
check-uncovered = You used --uncovered: anyone in front of the wall can be seen in these pictures. Look at them before you share them.

## test page

help-test-page = See from photos of the test page whether the rest will print right
help-test-page-folder = The event folder
help-test-page-photos = Photos of the test page: its front, and its back if it has one
test-page-size = The size is right ({ $percent }%).
test-page-scale = It printed at { $percent }%. In the print window, choose “actual size” or 100%, not “fit to page”.
test-page-uneven = It printed at { $across }% across but { $down }% down. Hold a real ruler against the printed one. If they differ, try another printer.
test-page-other-paper = This is { $paper } paper, but your kit is for { $meant }. Put in the right paper, or change the paper in event.toml.
test-page-shift = The print is { $length } off the middle of the paper. Push the guides in the paper tray right up to the paper.
test-page-askew = The print is crooked, by { $degrees }°. Push the guides in the paper tray right up to the paper.
test-page-cut = Your printer leaves out what is closest to the edge ({ $edges }). Look for a setting such as “smallest margins”, or use another printer.
test-page-inks = Ink is missing or running out: { $inks }.
test-page-black = It printed in black only. In the print window, choose color.
test-page-alike = These colors look the same on this print: { $pairs }. Tell helpers to go by the names on the pieces.
test-page-back-right = The back is the right way up and in its place.
test-page-slip = The back is { $length } off its front. Push the guides in the paper tray right up to the paper.
test-page-upside-down = The back is upside down. In the print window, choose “flip on { $flip ->
    [short-edge] short edge
   *[long-edge] long edge
}”. If that is what you chose, change flip in event.toml to the other one.
test-page-sideways = We can’t tell which way up the back is. Turn the page over like the page of a book, hold the phone the way you did before, and take that photo again.
test-page-front-too = Give us a photo of the front too: it tells about the colors, and whether the back is the right way up.
test-page-back-too = Now turn the page over like the page of a book, take a second photo the same way, and give both photos.
test-page-print-again = Change that, print the test page again, and check it before you print the rest.
test-page-right = You can print the rest.
test-page-cyan = cyan (light blue)
test-page-magenta = magenta (pink)
test-page-yellow = yellow
test-page-black-ink = black
test-page-top = top
test-page-right-edge = right
test-page-bottom = bottom
test-page-left = left
error-test-page-code = we can’t find the code of a test page in this photo. Get the whole page in, flat and in good light, and try again
error-test-page-foreign = this is another event’s test page (its codes begin with { $tag }). Print the one of this event
error-test-page-marks = we can’t see all four black marks. Get the whole page in, with nothing on it, and try again
error-test-page-edges = we can’t see the edge of the paper all around. Lay the page flat on something dark, leave some of that in the photo on every side, and try again

## find

help-find = See from photos which squares lie on a table or the floor, any way up
help-find-folder = The event folder
help-find-photos = Photos of squares: one, or several of different parts of the table
find-all = All { $all } squares are here.
find-here = { $count } of { $all } squares are here.
find-list = Here: { $labels }.
find-lacking = { $count ->
    [one] Not here, or not readable: { $labels }.
   *[other] Not here, or not readable ({ $count }): { $labels }.
}
find-twice = More than one of these is here: { $labels }.
find-waiting = { $count ->
    [one] Waiting to be hung, going by the check of { $when }: { $labels }.
   *[other] Waiting to be hung, going by the check of { $when } ({ $count }): { $labels }.
}
find-none-waiting = Going by the check of { $when }, all of these hung on the wall.
find-group = { $name } ({ $count }): { $labels }
find-closer = The squares are small in the photo, so some may be missed. Go closer, or take several photos and give them all.
find-written = The squares, each with its label, are in { $folder }.

## receive

help-receive = Take in squares that were drawn at home, from photos or scans of their pages
help-receive-folder = The event folder
help-receive-photos = Photos or scans of pages that were drawn at home
receive-came = { $label } is back.
receive-again = { $label } is back again. The new picture takes the place of the one before.
receive-coarse = { $label } is small in its photo, so it will look coarse. If you can, ask for the photo in full size.
receive-next = Cut them out and hang them like any other square. Until they hang, the keepsakes show them in their places.
error-receive-code = we can’t read the code of a square in this photo. Is a finger on it, or a shadow? Get the whole page in, flat and in good light, and try again
error-receive-marks = we can’t see all four black marks around { $labels }. Get the whole page in, flat, with nothing on the marks, and try again

## display

help-display = Make the keepsakes: the mural next to the picture, its measurements, and prints to hang up
help-display-folder = The event folder
help-display-uncovered = Leave the pictures as the photo shows them: spots that can’t be read, and people in front of the wall, aren’t covered
help-display-photos = Photos of the wall: one, or several that show it in parts
help-display-view = How to show the mural: as-hung, straight (straightened, with gaps), closed (straightened, no gaps) or in-order (every square in its own spot)
help-display-codes = What to do with the codes: keep them, or fill them in with the colors around them
help-display-missing = What to show in empty spots: ghost (a faint copy of the picture) or open (nothing)
help-display-only = Only this print, such as side-by-side; can be given more than once. Only on request: take-home (a slip for each square, with the mural and its spot) and giving-back (all squares by label, to point at)
help-display-pair = The label of a square to show beside its piece, or to take home; can be given more than once
help-display-poster-width = Width of the poster, in mm (default: three pages side by side)
help-display-poster-original = Make a poster of the picture too
display-working = Looking at the wall
display-squares = { $squares ->
    [one] 1 of { $cells } squares was read.
   *[other] { $squares } of { $cells } squares were read.
}
display-scale = Scale factor as measured: { $factor } ± { $within } (planned: { $planned }).
display-someone = Someone seems to be in front of the wall, and that part is covered. A photo without people makes better keepsakes.
display-from-home = Drawn at home, and shown in their places: { $labels }.
display-size = The mural is { $width } wide and { $height } high.
display-straight = Rows and columns are straight: nothing is off by { $length } or more.
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

serve-take = Take a photo of the wall
serve-again = Take another photo
serve-check-again = All done? Check again
serve-choose = Choose photos
serve-bar = Photos
serve-title = Wall helper
serve-nowhere = This link doesn’t work. Scan the QR code on the laptop again.
serve-tabs = Three jobs
serve-tab-wall = Wall
serve-tab-pieces = Pieces
serve-tab-find = Find
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
serve-show-where = Show where it goes
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
serve-border = border in reserve
serve-all-missing = All of them
serve-next-how = Tap a piece when you give it out.
serve-next-none = Every piece is out. Nice!
serve-give-out = to give out
serve-given = given out
serve-piece-out = { $label } is out.
serve-piece-back = { $label } is back.
serve-undo = Undo
serve-print = Print …
serve-print-square = the square again
serve-print-piece = the piece again
serve-print-strip = the strip again
serve-print-helped = a square with outlines to help
serve-print-large = the piece, much larger
serve-print-home = a page to draw it at home
serve-print-busy = The laptop is making another page. Wait a moment and try again.
serve-heading-out = Being drawn
serve-out-since = since { $time }, { $minutes } min
serve-back = It’s back
serve-heading-back = Back, ready for the wall
serve-back-since = back at { $time }
serve-not-back = Not back
serve-heading-fallen = Was up, now gone
serve-fallen-how = These squares were on the wall before. Look on the floor.
serve-find-start = Squares on a table or the floor
serve-find-how = Take a photo of them, any way up. You’ll see the label of each one, what isn’t there, and what still has to be hung. Several photos count together.
serve-find-take = Take a photo of squares
serve-find-reading = Looking for squares…
serve-find-photo-alt = The squares in the last photo, each with its label
serve-find-photos = { $count ->
    [one] Seen in one photo
   *[other] Seen in { $count } photos together
}
serve-find-waiting = Waiting to be hung
serve-find-waiting-how = Tap a piece to see where its square goes.
serve-find-closer = The squares are small in the photo, so some may be missed. Go closer, and take several photos.
serve-find-none-waiting = The last photo of the wall shows all of these on it.
serve-find-anew = Start over
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
serve-help-private = Photos go only to the laptop and are not kept there. Its pictures of the wall cover anyone we find in front of it, and can miss someone. Anyone snooping on the same Wi-Fi could see a photo on the way.
serve-help-private-kept = Photos go only to the laptop and are kept there, with anyone who is in them. Anyone snooping on the same Wi-Fi could see a photo on the way.
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
serve-photo-heic = This kind of HEIC photo can’t be read. Take it with the button on this page, or choose Settings > Camera > Formats > Most Compatible on the iPhone.
serve-photo-video = This is a video. Take a photo instead.
serve-photo-practice = This is a practice photo. The real wall is up already, so nothing changed.
serve-photo-unknown = We can’t read this file as a photo. Use JPEG, PNG, WebP or TIFF.
serve-photo-truncated = The photo is cut off, and its end is missing. Please send it again.
serve-photo-damaged = We can’t open this photo. Please take another one.
serve-photo-no-codes = We couldn’t find any of this event’s codes. Is this the right wall? Move closer, hold still, and take another photo.
serve-photo-foreign = The codes in this photo are from another event (tag { $tags }). Take a photo of this event’s wall. Is it the right wall? Then ask the person at the laptop.
serve-find-none = We couldn’t find any of this event’s squares. Move closer, hold still, and take another photo.
serve-find-foreign = The squares in this photo are from another event (tag { $tags }). Is it the right table? Then ask the person at the laptop.
serve-photo-other = We can’t read any of this event’s squares, only other codes ({ $texts }). Move closer, hold still, and take another photo. Is this the right wall?
serve-photo-too-dark = The photo is too dark. Turn on more lights and try again.
serve-photo-cannot-place = We see squares, but can’t tell which part of the wall this is. Step back until the whole wall is in the photo, or put up the corner cards. Are they on a table? Use the tab Find.
serve-photo-codes-small = We can see the squares, but their codes are too small or too blurred to read. Move closer, or take one photo of each half, and hold the phone still.
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
serve-error-unknown = we couldn’t find this computer’s network address ({ $said }): give it with --address
serve-error-no-network = this laptop isn’t on a network phones can reach: connect it to the room’s Wi-Fi, or turn on a phone’s hotspot and connect to that, and try again
serve-error-several = this laptop has several addresses: choose one with --address: { $own }
serve-error-open = { $asked } isn’t an address on the room’s own network (10.…, 172.16.… to 172.31.…, 192.168.…): photos of the wall go to no one else
serve-error-foreign = { $asked } is not this laptop’s address: it has { $own }
serve-error-port-taken = port { $port } is taken: is the page already running? Look for its window, or choose another port with --port
serve-error-refused = the page can’t start at { $at }: { $said }

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
      print/       pieces.pdf, squares.pdf, edge-cards.pdf to print at 100%; manifest.json for the check
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
error-folder-near = there’s no event in { $path }. Do you mean { $near }?
error-folder-not-printed = the kit for { $path } hasn’t been printed yet. First run: everysquare print { $typed }
error-folder-no-picture = there’s no picture { $path }. Check the name and the folder
error-folder-changed = event.toml now says { $own }, but the printed kit is { $kit }. Change event.toml back, or print the kit again
error-folder-not-all-printed = event.toml asks for { $squares }, but that wasn’t printed, since it was to stay free. Put it back into keep_free, or print the kit again: everysquare print { $typed }
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

error-template-unknown = templates/{ $name }.typ replaces none of the program’s templates: { $known }
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
help-language = Language for messages, en, en-GB or es, until there’s an event; then event.toml decides
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
help-value-time = TIME
help-value-size = SIZE
help-value-paper = PAPER
help-value-how = HOW
help-value-unit = UNIT
help-value-which = WHICH
help-value-px = PX
help-value-part = PART
help-value-points = POINTS
help-value-text = TEXT
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
error-photo-unknown = this is not a photo that can be read. Save it as JPEG, PNG, WebP, TIFF or HEIC. Is it a PDF? Save its page as a picture, or take a photo of it
error-photo-truncated = the end of this photo is missing. Copy or send it again
error-photo-damaged = this photo is damaged or of a rare kind ({ $why }). Copy it again, or save it as JPEG with another program
error-photo-gave-up = it couldn’t be opened
error-photo-no-size = no size
error-photo-wrong-pixels = wrong number of pixels
error-photo-too-large = the photo has { $width } × { $height } pixels, more than { $most } million. Make it smaller and try again
error-photo-too-small = the photo has only { $width } × { $height } pixels. Send the original, not a thumbnail

## errors: reading the wall

error-read-no-codes = we couldn’t find any of this event’s codes. Are these this event’s squares? Move closer, hold the phone still, and try again. A small copy of a photo won’t do: use the original
error-read-foreign = the codes in this photo are from another event (tag { $tags }). Check the folder, or take a photo of this event’s wall
error-read-other = we can’t read any of this event’s squares, only other codes ({ $texts }). Move closer, hold the phone still, and try again. Is this the right wall?
error-read-too-dark = the photo is too dark to read. Turn on more lights and try again
error-read-cannot-place = we can see squares, but not which part of the wall they’re on. Step back until the whole wall is in the photo, or hang up the corner cards. If they lie on a table, use find instead of check
error-read-too-small = the squares are in the photo, but their codes are too small or too blurred to read. Move closer, or take one photo of each half. Hold the phone still, and use the original photo, not a copy from a chat
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
error-rehearse-option-gap = the space between boards
error-rehearse-option-board-angle = the angle of boards
error-rehearse-option-ink-runs = how far ink spreads
error-rehearse-option-density = how dark the ink is
error-rehearse-option-streaks = how much toner is missing in streaks
error-rehearse-option-draft = how much ink is left out between rows of dots
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
questions-about-answers = Keep these answers away from the cards. Most numbers come from this picture and this mural. The grades are a rough guide. A piece “has” a color if that color is listed on its back.
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
strips-fold = fold back here
strips-slip = Your square hangs in column { $column }, row { $row }. Bring this slip when you come to get it.
steps-1-strip = Get a strip: your piece and your square.
steps-6-strip = Take the whole strip to the wall.

## signs

print-signs = Signs
sign-times = { $start } to { $end }
sign-photos = We take photos of the wall. If you don’t want to be in them, just tell us.
sign-door = Come in and draw!
sign-door-more = Everyone draws one square. Together they make one big picture.
sign-pieces = Get your piece here
sign-pieces-more = Something quick, or something to puzzle over? You choose.
sign-tables = Draw here
sign-tables-more = Sit anywhere. Share the pencils, and take your time.
sign-wall = Bring your square here
sign-wall-more = We’ll hang it with you. Please keep both feet on the floor.
sign-mural = We drew this together
sign-mural-more = { $count } squares, each drawn from one small piece of the picture.

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
helpers-last-clock = Stop handing out after
helpers-label = A label such as { $label } means column { $label-column }, row { $label-row }. Columns go left to right. Row 1 is at the { $rows-from ->
    [top] top
   *[bottom] bottom
}.

helpers-hand-out = Station 1: Handing out
helpers-hand-out-intro = You give each visitor a piece (a small part of the picture) and the paper square with the same label. Everyone draws, grown-ups too. Have ready: the bags, the squares in order, the checklist, a pen.
helpers-hand-out-intro-strip = You give each visitor a strip: a small part of the picture, the piece, and beside it the square to draw it on. Everyone draws, grown-ups too. Have ready: the strips, one pile per level, face down.
helpers-sort = Sort
helpers-sort-1 = Sort the pieces into one bag per level. On the back, in the top right corner, is a small number from 1 to 3. In each bag, put 1 on top, then 2, then 3. Lay out the squares row by row so you can find a label fast.
helpers-sort-1-strip = Make one pile of strips per level. They’re printed in the right order, the first to hand out on top. The level and a number are on the stub.
helpers-sort-2 = The last column tells you when to stop. A piece handed out later than that won’t get done.
helpers-say = Say
helpers-say-words = “This is a small piece of a big picture. Draw it on this square, { $scale } times as wide. What’s the picture? It’s a secret until it’s up on the wall!”
helpers-each = For each visitor
helpers-each-1 = Ask: “Something quick, or something to puzzle over?” Give them the top piece from that bag. The level belongs to the piece, never to the child.
helpers-each-1-strip = Ask: “Something quick, or something to puzzle over?” Give them the top strip from that pile. The level belongs to the piece, never to the child.
helpers-each-2 = Find the square with the same label. Read both labels out loud together.
helpers-each-2-strip = Read the label out loud together. It’s on the stub and on the square.
helpers-each-3 = Check “out” next to that label on the checklist. Don’t write down anyone’s name.
helpers-each-3-strip = There’s nothing to write down. The strips that are left are the ones that aren’t out.
helpers-each-4 = Point out the table card. Six pictures show what to do.
helpers-each-5 = Say: “When you’re done, take your square to the wall. Keep the piece. It shows which square is yours.”
helpers-each-5-strip = Say: “When you’re done, take the whole strip to the wall. You keep the stub. It shows which square is yours.”
helpers-order = Which piece next?
helpers-order-1 = The number on the back says when: 1 first, 2 in the middle, 3 last. Let visitors choose the level, and take the lowest number.
helpers-order-1-strip = The number on the stub says when: 1 first, 2 in the middle, 3 last. Let visitors choose the level, and take the top strip.
helpers-order-2 = The 1s carry much of the picture, so the wall looks like something early. The 2s include what would give it away too soon. The 3s are missed least if spots stay empty.
helpers-order-3 = The phone page lists what’s left in the same way, level by level.
helpers-order-border = A + on the back is the border in reserve: { $border } pieces. Hand them out only when all the others are out and people still wait. Hang them from the bottom row up.
helpers-order-border-strip = A + on the stub is the border in reserve: { $border } strips. Hand them out only when all the others are out and people still wait. Hang them from the bottom row up.
helpers-secret = Keep the secret
helpers-secret-1 = Keep the picture and the question cards face down until the reveal.
helpers-secret-2 = If someone asks “What is it?”, say: “Your square is one of the clues!”
helpers-if = If …
helpers-if-1 = Someone has to leave early? Put the piece and the square in the “to finish” box. Anyone can finish them.
helpers-if-1-strip = Someone has to leave early? Put the strip in the “to finish” box. Anyone can finish it.
helpers-if-2 = Someone finishes early? Offer another piece. After the reveal, offer a question card.
helpers-if-3 = Someone wants a fresh start? That’s fine! Ask the organizer to print that sheet again. If there’s no time, use a plain square of the same size. Copy the label, large, into the same corner. The phone can’t read a plain square, so check that spot by eye.
helpers-if-4 = A square is circled twice on the checklist, or its visitor has left? Ask the organizer to print both sheets again, and give that piece to someone else. Both come back? The first one goes up. Hang the other right beside the mural, with a sticky note over its code.
helpers-if-4-strip = A square is circled twice on the checklist, or its visitor has left? Ask the organizer to print its strip again, and give it to someone else. Both come back? The first one goes up. Hang the other right beside the mural, with a sticky note over its code.
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
helpers-help-3 = “Which big shape do these marks belong to? Draw it lightly, then the small ones.”
helpers-help-4 = “Color all the way to the edge. The next square picks up right there.”
helpers-help-5 = “Does it look white? Check the colors on the back of the piece. If none of them fits, leave it blank.”
helpers-help-scale = “The square is { $scale } times as wide. So how long will this line be?”
helpers-look = Look out for
helpers-look-1 = Can you read the label on both the piece and the square? Then both are right side up.
helpers-look-2 = Keep the code box white. If someone has drawn on it, leave it. Don’t erase or cut. The wall helper knows what to do.
helpers-look-3 = Pencils go back to where everyone can reach them after each color.
helpers-look-4 = No one should wait more than a minute for a color. Suggest starting with another color.
helpers-wait = While they wait
helpers-wait-1 = They can sharpen pencils or draw on scrap paper.
helpers-wait-2 = After the reveal, they can try a question card. One small square is for seeing, two are for counting, three for comparing, and a star is for anyone who likes to explain. Read the cards with an ear aloud. Keep the picture key with the cards.

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
helpers-wall-free = Hang nothing in { $spots }. What’s on the wall there has to stay in reach and in sight.
helpers-hang = Hang
helpers-hang-1 = Before you start, check the marks for the bottom edge and for every other row. No marks yet? The wall map has the measurements; use a level and a faint pencil line.
helpers-hang-2 = Are the { $cards } edge cards up? If not: corners first, then columns, then rows.
helpers-hang-3 = Visitors bring you their squares. Hang each one where its column and row meet, label right side up, edge to edge: no gaps, no overlaps.
helpers-hang-3-strip = Visitors bring you their strips. Fold the stub back, cut it off (scissors are for helpers), and give it to them. Hang the square where its column and row meet, label right side up, edge to edge: no gaps, no overlaps.
helpers-hang-4 = Roll a small piece of tape behind each corner. Or tape only the three corners without a code.
helpers-hang-5 = Check “up” on your copy of the checklist. Show visitors how to find their spot. If the squares have backs, a small wall there shows it.
helpers-hang-5-strip = No time to cut? Fold the stub behind the square and hang it like that. Show visitors how to find their spot.
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
helpers-check-empty-strip = Look for the square: on tables, on the floor, in the “to finish” box. Is its strip still in a pile? Then it isn’t out yet.
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
helpers-pictures-3 = The check keeps only the wall and its cards, and covers anyone it finds in front of them. It can miss someone: look before you share. Delete the photo from the phone afterward.
helpers-pictures-4 = Never put names on the checklist or the wall, and children’s names on squares only if their family agrees. (The labels stay, of course.)
helpers-room = In the room
helpers-room-1 = Tape down cables. Keep bags under the tables. Wipe up spills right away.
helpers-room-2 = Keep one aisle wide enough for a wheelchair, and take away one chair at a table so that a wheelchair fits.
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
guide-time-clock = { $start } to { $end } ({ $minutes } minutes)
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
guide-border = Border in reserve
guide-border-value = { $border } squares around the picture. Keep their spots free.
guide-free = Spots that stay free
guide-free-value = { $spots }
guide-square = Piece and square
guide-square-value = { $piece } becomes { $square }: scale factor { $scale }
guide-wall = Mural
guide-wall-value = { $width } wide and { $height } tall; with the edge cards { $width-with-cards } by { $height-with-cards }
guide-hang = Height
guide-hang-value = from { $hang } to { $top } above the floor
guide-helpers = Helpers
guide-helpers-value = { $giving-out } to hand out, { $hanging } to hang, and a few at the tables
guide-up = Up at the end
guide-up-value = { $up } of { $squares ->
    [one] 1 square
   *[other] { $squares } squares
}
guide-assumed-note = “Assumed” means you haven’t told us yet. Type “everysquare plan FOLDER --visitors { $visitors } --minutes { $minutes } --seats { $seats } --save” with your own numbers, then print again. For helpers and the height, set giving_out, hanging and hang_mm in event.toml.
guide-shifts = Helpers by time
guide-levels = Levels, and when to stop handing out
guide-heights = How high it hangs
guide-reach-source = Step stools and stepladders are for adults only. Seated adults reach 48 in (2010 ADA Standards, 308.2.1). Seated children reach less: 40 in at ages 5 to 8, 44 in at 9 to 12 (the same standards, advisory table at 308.1). Standing children: the shorter ones of that age (CDC Growth Charts 2000) with an arm raised. Arm length, adult reach and the stool’s height ({ $stool }) are rules of thumb.

guide-timeline = Before the event
guide-week = A week before
guide-week-1 = Use a picture that you may use: your own, public domain or licensed. Get permission before you post the mural online.
guide-week-2 = Ask about the wall: paper, tape, height, exits, and how many people may be in the room. What the building manager or fire marshal says goes.
guide-week-3 = Print one sheet of squares. Measure its ruler: it must be exactly right. Each back must line up with its front.
guide-week-3-strip = Print one sheet of strips. Measure its ruler: it must be exactly right.
guide-week-4 = Print a few pieces too, draw one of each level yourself, and time it. Does it take longer than page 1 says? Set minutes_a_piece in event.toml.
guide-week-5 = Print everything, and the checklist twice. Check the pencil sheet: do your pencils match these colors? If not, change them under [[pencils]] in event.toml and print again.
guide-week-5-strip = Print everything; the strips in color. Check the pencil sheet: do your pencils match these colors? If not, change them under [[pencils]] in event.toml and print again.
guide-week-6 = Cut out squares, pieces, edge cards, question cards and the labels for bags; put a label on each bag. When you cut sheets as a stack, put the piles on each other, left to right and top to bottom, and everything is in order. Sort the pieces into their bags. Cut a few plain squares of the same size for fresh starts. Plan on one evening for two people.
guide-week-6-strip = Cut the strips apart; leave each stub on its square. When you cut sheets as a stack, put the piles on each other, left to right and top to bottom, and everything is in the order of handing out. Make one pile per level. Cut a few plain squares of the same size for fresh starts.
guide-week-7 = Find helpers: { $giving-out } to hand out, { $hanging } for the wall, one for every three tables or so. The table on page 1 says when.
guide-week-8 = Practice: “everysquare rehearse FOLDER” makes a practice photo with mistakes to find.
guide-day = The day before
guide-day-1 = Give each helper their page and a ten-minute walk-through.
guide-day-2 = Test the tape on the wall, in a hidden spot.
guide-day-3 = With the wall map, mark the bottom edge and every other row with faint pencil lines, or with string that comes down before visitors come.
guide-day-4 = Sharpen the pencils and sort them into sets, if each table gets one.
guide-day-5 = Fold the table cards.
guide-day-6 = Take a test photo of the empty wall to check light and distance. On an iPhone, first set Settings > Camera > Formats > Most Compatible.
guide-day-7 = Copy the whole event folder to the laptop you’ll bring, and to a USB drive. Without print/manifest.json, no photo can be read.
guide-day-8 = Try the helper page on the room’s Wi-Fi: “everysquare serve FOLDER --lan”. Keep the laptop plugged in and awake.
guide-hours = Two hours before
guide-hours-1 = Set up tables as in the room plan. Keep aisles and exits clear.
guide-hours-2 = Put up the edge cards around the mural’s space.
guide-hours-3 = Piece table: the bags, the squares in order, and one checklist. Wall: the other checklist.
guide-hours-3-strip = Lay out the piles of strips at the piece table, face down.
guide-hours-4 = Charge the phone, plug in the laptop and a printer with spare paper, open the helper page, and try one photo. An adult cuts reprints in another room.
guide-hours-5 = Hide every copy of the picture.
guide-event = The event itself
guide-running = While it runs
guide-running-1 = Hand out by the number on the back: the 1s, then the 2s, then the 3s. Visitors choose the level. Near the end, hand out quick ones only.
guide-running-1-strip = Hand out from the top of each pile. Visitors choose the level. Near the end, hand out quick ones only.
guide-running-2 = Check the wall every half hour, while there’s little to fix.
guide-running-3 = Every half hour, compare the two checklists and circle what’s out but not up. Was it circled last time too? Ask kindly at the tables how it’s going.
guide-running-3-strip = Every half hour, look at the checklist of the wall and circle what’s neither in a pile nor up. Was it circled last time too? Ask kindly at the tables how it’s going.
guide-running-4 = Has its visitor left? Print that square and piece again (“everysquare print FOLDER --only { $label }”) and give them to someone else.
guide-running-4-strip = Has its visitor left? Print that strip again (“everysquare print FOLDER --only { $label }”) and give it to someone else.
guide-running-5 = Have some water yourself.
guide-end = The last twenty minutes
guide-end-1 = Hand out quick pieces only. Helpers take what’s left.
guide-end-2 = Hang what can be reached, check, fix, check again. If a row needs a stool, an adult hangs it once the room is calm.
guide-end-3 = Fill the gaps: check the wall, then type “everysquare print FOLDER fill” and color what it prints, or add --soft to hang it as it is. Each spot stays open for its own square.
guide-end-4 = The reveal: gather everyone, count down from ten, and show the picture next to the mural. If a projector is hiding the mural on its screen, show it now.
guide-end-5 = Step back together and look. This is what it was all for.
guide-clearing = Cleaning up
guide-clearing-1 = Count the kid scissors; put stools away.
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
guide-paper-amount-strip = { $paper }: { $sheets ->
    [one] 1 sheet
   *[other] { $sheets } sheets
} for the strips alone, plus 10% extra. Heavier paper is best: 32 lb printer paper or light cardstock (120 to 160 g/m²). “everysquare print” lists the sheets for everything else.
guide-printer = Printer
guide-printer-amount = Any printer. Pieces, the pencil sheet and the question cards need color; black and white is fine for the rest.
guide-printer-amount-strip = Any printer that prints in color. The strips, the pencil sheet and the question cards need it; black and white is fine for the rest.
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
guide-print = What to print on what
guide-print-files = Files
guide-print-paper = Paper
guide-print-ink = Ink
guide-print-thick = heavier paper, good for pencils
guide-print-white = white paper
guide-print-card = cardstock, or paper glued on card
guide-print-any = any paper
guide-print-in-color = color is needed
guide-print-black = black is enough
guide-colour = Color
guide-pencil-count = Shared
pencils-paper = paper
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
guide-pieces-1-strip = Visitors keep their stub. It shows which square is theirs, because no names are kept, and they bring it when they come to get it.
guide-pieces-2 = Pieces no one took: helpers draw them, a class draws them tomorrow, or the blank square goes up.
guide-pieces-2-strip = Strips no one took: helpers draw them, a class draws them tomorrow, or the blank square goes up.
guide-pieces-3 = Circled twice, or its visitor has left: print that square and piece again and give them to someone else. If both come back, hang the second one beside the mural.
guide-pieces-3-strip = Circled twice, or its visitor has left: print that strip again and give it to someone else. If both come back, hang the second one beside the mural.
guide-pieces-4 = Starting over is fine: print that square’s sheet again. On a plain square, copy the label into the same corner. The check can’t read it, so look for yourself.
guide-pieces-4-strip = Starting over is fine: print that strip again. On a plain square, copy the label into the same corner. The check can’t read it, so look for yourself.
guide-pieces-5 = The kit has one language. Visitors read another one? Print a page in it too: “everysquare print FOLDER table-card --in es”.

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
guide-wrong-lost-do = Print it again (“everysquare print FOLDER squares --only { $label }”): same label, same code. Offer it to its visitor first, with the piece.
guide-wrong-turned = Many squares are turned
guide-wrong-turned-do = Show the wall helpers the label next to the code: it must be right side up. The check lists which squares to turn.
guide-wrong-unread = The check can read only a little
guide-wrong-unread-do = Move closer, add light, hold still. No flash, no sun on the wall. Take one photo of each half. If all else fails, or the laptop dies, go by the labels: every square has one.
guide-wrong-pencils = A color runs out
guide-wrong-pencils-do = Trade pencils between tables. A similar color is better than waiting; just use it for the whole area.
guide-wrong-late = Time is up, and squares are missing
guide-wrong-late-do = Print fillers for the gaps (“everysquare print FOLDER fill --soft”), or hang the blank squares. Leave a table set up: tomorrow’s visitors can finish the picture.
guide-after = Afterwards
guide-after-1 = Leave the mural up with the original next to it. “everysquare display FOLDER PHOTO” makes the keepsakes: prints, a poster, a math page. Add a sign: “Drawn by everyone who came.”
guide-after-2 = Put the question cards and the pencil sheet out below the mural; keep the answers with you.
guide-after-3 = Thank everyone with a photo of the mural, with no people in it. Cover any name a child wrote before you share it.
guide-after-4 = Take it down row by row and keep the order, so it can go up again somewhere else.
guide-after-5 = The squares belong to the people who drew them. Say when they can pick them up: the piece they kept shows which one is theirs.
guide-after-6 = The photos in the event folder show children’s work. Keep one backup of the folder, and decide when to delete both.

## errors: the picture

error-picture-empty = the file is empty. Choose a PNG, JPEG, WebP, TIFF or SVG file
error-picture-format = this is no picture in a format that is read here: save it as PNG, JPEG, HEIC, WebP, TIFF or SVG
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
error-new-border = with a border the wall is { $columns } × { $rows }. Use at most 702 columns or rows, and { $squares } squares in all
error-new-one-picture = --area and --corners go with one picture. Compare the pictures first, then use them with the one you choose
error-paper-not-found = there’s no sheet of paper whose four edges are clear. Lay the drawing flat on something darker, with all four edges in the photo, or give the corners yourself with --corners
error-paper-corners = those aren’t the corners of a sheet. Give four points inside the photo in pixels, such as --corners "120,80 1900,95 1880,1420 140,1400"
new-less-than-one = less than 1
typed-name = use 1 to { $most } characters on one line
typed-tag = use 3 characters from { $letters }
typed-whole-from = it must be a whole number from { $least } to { $most }
typed-number-from = it must be a number from { $least } to { $most }
typed-millimetres-from = it must be a number of millimeters from { $least } to { $most }
typed-area = give four numbers in percent: left edge, top edge, width and height, such as 10,20,60,60. Width and height are { $least } or more, and all of it lies in the picture
typed-corners = give the sheet’s four corners in pixels, in quotes: "x,y x,y x,y x,y"
error-plan-save = --save needs numbers to keep. Add --visitors, --minutes, --seats, --wall or another of these
error-plan-end-alone = --end needs a start. Add --start
error-plan-end = --end must be at least 5 minutes after the start
error-plan-end-long = the end is more than 16 hours after the start: are the two swapped?

error-settings-table = this must be a table: [{ $name }], with its settings on their own lines below
error-settings-list = this must be a list, with one [[{ $name }]] for each
error-settings-whole = must be a whole number from { $least } to { $most }
error-settings-millimetres = must be a number from { $least } to { $most }, in millimeters
error-settings-minutes = must be a number from { $least } to { $most }, in minutes
error-settings-number = must be a number from { $least } to { $most }
error-settings-visitors = use a whole number such as 80, or a range such as "60-120" with the smaller number first, from { $least } to { $most }
error-settings-clock = use a time such as "18:30" or "6:30 pm"
error-settings-end = must be at least 5 minutes after start
error-settings-end-long = That’s more than 16 hours after start. Are the two swapped?
error-settings-end-alone = Give start as well, or give minutes instead
error-settings-end-and-minutes = Give either end or minutes, not both
error-settings-yes-or-no = use true or false, without quotes
error-settings-choice = use { $choices }, in quotes
error-settings-second-language = use another language than the first one
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
error-settings-border = needs at least { $least } columns and { $least } rows, so that something is inside the border
error-settings-keep-free = use a list of up to { $most } labels, such as ["A1", "{ $last }"]
error-settings-module = the code and the white margin around it would be 29 blocks wide, too wide for square_mm = { $square }. Use a smaller number
error-settings-room = write it like "8x6ft" or "2.4x1.8m" (m, cm, mm, ft or in), each side 0.2 to 50 m
error-settings-minutes-a-piece = use four numbers from { $least } to { $most }, in minutes, for a one-color, an easy, a medium and a hard piece, none smaller than the one before
error-settings-level-names = use four different names in quotes, the easiest first, each 1 to { $most } characters long (plain, easy, medium and hard only for their own level)
error-settings-bounds = use three rising numbers from { $least } to { $most }: the scores where easy, medium and hard begin
error-settings-piece-twice = this piece is in the list twice. Keep one of them
error-settings-of-piece = { $name } for number { $number } of the [[pieces]]
error-settings-piece-example = label = "D7" and level = "hard" under every [[pieces]]
error-settings-label = use the label of a piece, columns A to { $column } and rows 1 to { $row }, such as "A1"
error-typed-wall = write the size as "8x6ft" or "2.4x1.8m" (m, cm, mm, ft or in), and several boards with commas, such as "4x6ft, door, 5x6ft"
error-rehang-wall = Say what the new place is like with --wall, such as --wall "4x6ft, door, 5x6ft"
error-plan-boards = The wall has { $columns } columns and { $rows } rows. From left to right, these boards take this many columns: { $taken } (0 where a board is too low). Use more or larger boards, or choose a smaller grid or smaller squares.
error-settings-spot = use the label of a spot, such as "A1" or "{ $last }"
error-settings-of-part = { $name } for number { $number } of the [[parts]]
error-settings-part-example = from = "A1" and to = "D8", two opposite corners, under every [[parts]]
error-settings-place = use 1 to { $most } characters
error-settings-board = the squares of this part are { $needs }: make its board at least that large
error-settings-parts-share = another part already has { $label }. Each spot belongs to one part
error-settings-parts-lack = no part has { $label }. Together, the parts need every spot
error-settings-rows = with { $columns ->
    [one] 1 column
   *[other] { $columns } columns
} use at most { $most } rows, which makes { $squares } squares in all

## event.toml: what its comments say

event-head = The settings of your event. Change what you like, then run the command again. Anything after a # is just a note.
event-tag = in every code of this event; don’t change it once the squares are printed
event-language = of everything printed and shown: { $choices }
event-second-language = below it on what visitors read and take home
event-file = in this folder
event-colours = how many pencil colors to use
event-credit = whose picture it is; prints that show it say so
event-pencils = To use your own pencils, leave out colors and list each pencil at the end of this file, like this:
event-pencils-name = leaf green
event-columns = squares across, lettered from the left
event-rows = squares down
event-piece-mm = side of each piece, the small part of the picture a visitor gets
event-square-mm = side of each paper square
event-rows-from = where row 1 is: { $choices }
event-border = the outer ring is a border in reserve, hung only if more people come; the picture has it on it
event-keep-free = spots where nothing may hang, such as over a switch or an alarm; nobody draws their pieces
event-module-mm-usual = if you leave this out, codes are as small as a phone can still read on a wall this size
event-module-mm = if you leave this out, codes are as small as a phone can still read on a wall this size
event-inset-mm = distance from the cut edge to the code; tape and neighboring squares tend to cover the edges
event-flip = how your printer flips the page: { $choices } (one-sided)
event-units = what people read: { $choices }; this file is always in mm
event-join = whether pieces and squares are printed apart or each piece beside its square in one strip: { $choices }
event-visitors = how many you expect: 80, or a range
event-arrivals = how they come: { $choices }
event-pieces-each = pieces each visitor draws; below 1 if families share one
event-start = when they begin
event-minutes = how long people will draw; or give end = "20:00"
event-seats = how many people can draw at once
event-giving-out = helpers who hand out pieces
event-hanging = helpers who hang squares
event-giving-out-seconds = how long handing out one piece takes
event-hanging-seconds = how long hanging one square takes
event-room = the space for squares and edge cards, such as "8x6ft" or "2.4x1.8m"
event-hang-mm = height of the bottom edge above the floor; if left out, we suggest one from what people can reach
event-minutes-a-piece = minutes for a one-color, an easy, a medium and a hard piece
event-level-names = the easiest first
event-own-level-names = your own names for the levels, the easiest first
event-bounds = the scores where easy, medium and hard begin; “everysquare plan” shows each piece’s level
event-balanced = true: as many easy as medium as hard pieces, whatever their scores
event-parts = If the wall is in parts (several boards, a door in the middle), list each part, like this:
event-part-to = from and to are two opposite corners; together, the parts have every spot
event-part-place = what people call the place where it hangs
event-part-bottom = height of its bottom edge above the floor
event-part-board = size of the board it hangs on, such as "4x6ft"
event-pieces = If you disagree with a level, list that piece at the end of this file, like this:
event-pieces-level = plain (one color), easy, medium or hard, or your own name for it

## likeness

likeness-elsewhere = The drawing on square { $square } looks like piece { $other }. Take a look.
likeness-elsewhere-turned = The drawing on square { $square } looks like piece { $other }, turned { $degrees }° clockwise. Take a look.
likeness-turned = The drawing on square { $square } looks turned { $degrees }° clockwise on its paper. Take a look.
likeness-unread = We can’t read the square in { $cell }. Its drawing looks like piece { $other }. Take a look.
