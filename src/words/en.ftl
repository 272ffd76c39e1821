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
