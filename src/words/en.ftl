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
new-coarse = A tile is only { $pixels } pixels wide, so visitors will see steps: a larger picture shows more.
new-next = Next: look at { $folder }/event.toml, change what you like, then type “everysquare print { $folder }”.

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

## check

help-check = Reads photos of the wall, and says what to swap, turn and find
help-check-folder = The event folder
help-check-photos = Photos of the wall: one, or several that show it in parts
check-working = Reading the wall
check-written = Written to { $folder }: report.html to look at, marked.jpg to take to the wall, wall.jpg straightened, report.json for other programs.
check-open = Open { $page } in a browser.

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
serve-next-how = Tap a tile when you have handed it out.
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

## tour

help-tour = Shows a whole evening on a sample event, in a few seconds
help-tour-folder = Where the sample event is put
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
