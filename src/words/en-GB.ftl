# British English: the sentences that differ from US English (en.ftl). All others are said as there.

error-words-attribute = put just one sentence after the =, with no lines that start with a full stop
clock-hours = 24
help-new-area = Draw only a part of the picture: its left edge, top edge, width and height in per cent, such as 10,20,60,60
help-new-colours = How many pencil colours to use (default: as few as show all of the picture, 4 to 9)
help-new-black-and-white = Use greys only: 4, or as many as --colors says
help-print-help-with = With helped: names (outlines with the names of colours), dots (dotted outlines) or lines (faint lines between the tick marks; default: names)
help-new-paper = The paper in your printer: letter, tabloid, a4 or a3 (default: a4)
new-working = Finding the pencil colours
new-pencils-fitting = That’s as few as show the colours of its larger areas. If something small lost its colour, ask for more with --colors.
new-lost-keeps = { $count } pencils would keep every colour: --colors { $count }
new-warn-alike = Heads up: { $one } and { $other } look almost the same and will get mixed up. Try fewer colours (--colors) or your own pencils (--pencils).
new-closer = A closer crop suits more people: of { $pieces } pieces, { $then-plain } would be one colour all over and { $then-hard } hard, where now it’s { $plain } and { $hard }. To try it, start again in a new folder with --area { $area }
pictures-head-plain = One colour
pictures-alt = { $name } in its pencil colours with its grid, and the wall when a quarter, half and three quarters of the squares hang.
pictures-levels = Of the pieces, { $plain } are one colour all over, { $easy } easy, { $medium } medium and { $hard } hard.
new-warn-plain = Heads up: { $plain } pieces are one colour all over, and only { $drawn } have something to draw. A busier picture, or fewer squares, is more fun.
colour-grey = grey
plan-reach = Who can hang each row. Almost all children aged 5 and over reach { $five }, aged 9 and over { $nine }, a seated adult { $seated }, a standing adult { $adults }. Step stools ({ $stool }) and ladders are for adults only. “adult” means an adult hangs it for them.
plan-pencils-why = { $count } pencils in all. With { $seats ->
    [one] 1 seat
   *[other] { $seats } seats
} in use, no one has to wait for a colour { $sure }% of the time.
plan-join-apart = Pieces and squares are printed apart: { $sheets } sheets, { $color } of them in colour, and about { $minutes } minutes to cut ({ $cuts } cuts, { $stack } sheets at a time). In strips, each piece beside its square, it’s { $other-sheets } sheets, { $other-color } of them in colour, and about { $other-minutes } minutes; then nobody has to match pieces and squares. For that, set join = "beside" in event.toml.
plan-join-beside = Pieces and squares are printed in strips: { $sheets } sheets, { $color } of them in colour, and about { $minutes } minutes to cut ({ $cuts } cuts, { $stack } sheets at a time). Apart, it’s { $other-sheets } sheets, { $other-color } of them in colour, and about { $other-minutes } minutes; then someone has to find the square for each piece. For that, set join = "apart" in event.toml.
plan-things = You need { $tape } of tape for the squares and { $cards } cards; pencil sharpeners: { $sharpeners }; rubbers: { $erasers }.
plan-fire = About { $area } of paper will be on the wall. Fire rules limit this, some to as little as a tenth of a wall. Ask your head teacher, building manager or fire authority before you print.
plan-fire-part = About { $area } of paper will be on the wall, { $percent } of the space you gave. Fire rules limit this, some to as little as a tenth of a wall. Ask your head teacher, building manager or fire authority before you print.
plan-fire-boards = About { $area } of paper will be on the wall. It covers { $boards }. Fire rules limit this, some to as little as a tenth of a wall. Ask your head teacher, building manager or fire authority before you print.
plan-written = All the numbers, and each piece’s level and colours, are in { $file }.
report-language = en-GB
report-picture-marked = Your photo with everything to fix outlined and labelled. Everything outside the wall and its edge cards is blanked out.
fix-turn = { $by ->
    [quarter] Turn the square in { $cell } a quarter turn to the right (clockwise).
    [half] Turn the square in { $cell } the right way up. It’s upside down.
   *[three-quarters] Turn the square in { $cell } a quarter turn to the left (anticlockwise).
}
fix-swap-upright-one = Swap the squares in { $a } and { $b }. Hang the one that goes in { $cell } the right way up.
fix-swap-upright-both = Swap the squares in { $a } and { $b }. Hang both the right way up.
fix-move-upright = Move the square in { $from } to { $to }. Hang it the right way up.
help-rehearse-cycles = How many groups of three squares swap places in a circle
help-rehearse-yaw = How many degrees right of centre the camera is
help-rehearse-pitch = How many degrees above centre the camera is
level-plain = one colour
help-print-soft = With fill: in soft colours, to hang as they are (default: outlines to colour)
print-fill-colour = { $count ->
    [one] 1 square has
   *[other] { $count } squares have
} outlines and the names of the colours. Cut along the lines. Anyone can colour one in two minutes.
print-about-helped = Squares { $labels } with some of the piece on them to help: faint lines, dotted outlines, or outlines with the names of colours.
print-about-test-page = The page to print first: four black marks, a code, bars near the edges and patches of colour.
print-fill-hang = { $count ->
    [one] 1 square is in soft colours: cut it out and hang it.
   *[other] { $count } squares are in soft colours: cut them out and hang them.
}
print-fill-papers = { $count ->
    [one] 1 square is all one colour. Cut it from paper of that colour and glue on its code, which is on the last page:
   *[other] { $count } squares are all one colour. Cut them from paper of that colour and glue on their codes, which are on the last pages:
}
print-paper-letter = US letter
print-paper-tabloid = US tabloid (11 × 17 in)
print-choose-one-sided = In the print dialogue, choose { $paper } paper, “Actual size” or 100%, one-sided.
print-choose-long-edge = In the print dialogue, choose { $paper } paper and “Actual size” or 100%. For { $documents }, choose two-sided, flip on long edge.
print-choose-short-edge = In the print dialogue, choose { $paper } paper and “Actual size” or 100%. For { $documents }, choose two-sided, flip on short edge.
print-codes-changed = The codes or sizes have changed since you last printed this kit. Squares from that print won’t be recognised, so don’t use them.
print-next = Next: cut along the lines and practise with “everysquare rehearse { $folder }”. Once squares are up: “everysquare check { $folder } PHOTO”.
groups-absent-3 = Tell the organiser which labels are still to come.
lesson-one-2 = Show the grid method on the board: tick marks, then lines between them, then colour.
lesson-two-second-2 = Colour. Whoever is done draws a second piece.
lesson-while-3 = “Which colour fills most of your piece? Does it fill most of your square?”
lesson-support-pieces = one colour and easy: { $support }
lesson-support-do = Fold the square in half twice: the folds make four parts. Fold a paper copy of the piece the same way. Redraw part by part. “everysquare print FOLDER fill --only { $label }” prints a square with outlines to colour.
lesson-core-do = Marks on the edge first, then the lines between them. Compare with a neighbour’s square: do the lines meet?
pencils-intro = With { $seats ->
    [one] 1 seat in use
   *[other] { $seats } seats in use
} and these pencils, no one has to wait for a colour { $percent }% of the time.
pencils-pieces-intro = Each small wall shows one pencil. A full spot is a piece that is mostly this colour; a small square is a piece that needs some of it.
checklist-free = Grey spots stay free: nothing hangs there.
wall-map-rows-intro = Stretch a string tight against the wall, or draw a faint pencil line, at the heights beside the rows. They count from the floor. Use a spirit level; floors aren’t always even.
wall-map-boards = Paper covers { $boards }. Fire rules limit that, so ask before you hang it.
print-math-page = The maths of our mural
comparison-ratio-4 = Every angle stays the same, and every length grows by the same scale factor. Shapes like that are called similar. Making one is an enlargement.
comparison-pitch = Centre of one square to the next
comparison-right-of = { $name } is { $by } further right than planned.
comparison-left-of = { $name } is { $by } further left than planned.
comparison-poster-3 = Neighbouring pages overlap by { $shared }. A dotted line shows where the next page’s edge goes: glue it over that strip so the picture continues.
comparison-poster-fire-m2 = The poster is { $area } m² ({ $feet } sq ft) of paper, on top of the squares. Fire rules limit paper on walls, most strictly in corridors and near exits. Ask the building manager or fire authority before it goes up.
comparison-poster-fire-ft2 = The poster is { $feet } sq ft ({ $area } m²) of paper, on top of the squares. Fire rules limit paper on walls, most strictly in corridors and near exits. Ask the building manager or fire authority before it goes up.
error-print-no-wall = the straightened picture of the wall is empty: take another photo of the whole wall, from further back
test-page-black = It printed in black only. In the print window, choose colour.
test-page-alike = These colours look the same on this print: { $pairs }. Tell helpers to go by the names on the pieces.
test-page-front-too = Give us a photo of the front too: it tells about the colours, and whether the back is the right way up.
help-display-codes = What to do with the codes: keep them, or fill them in with the colours around them
help-serve-new-link = Make a new link; phones with the old one can’t connect any more
serve-cli-set-aside = The list of what helpers had ticked off was damaged. We put it aside and started a new one. Nothing else is lost.
serve-cli-quiet =
    No phone has connected yet. If one is stuck:
      1. Is it on the same Wi-Fi, with mobile data and VPN off?
      2. Did this computer ask about its firewall? Choose Allow, for private networks.
      3. Many school networks keep devices apart. Turn on a phone’s hotspot, connect this computer to it, and start again.
tour-event-name = Harbour Library Open Night
questions-ages-see = Years 1–2
questions-ages-count = Years 3–4
questions-ages-compare = Years 5–7
questions-about-answers = Keep these answers away from the cards. Most numbers come from this picture and this mural. The years are a rough guide. A piece “has” a colour if that colour is listed on its back.
questions-ask-colours-of-piece = Look at this piece. How many colours can you see?
questions-ask-one-colour = Look at the picture key. How many pieces have just one colour?
questions-ask-colours = Look at the pencil chart. How many colours are on it?
questions-ask-quarter-boxes = A square has 3 marks on each side. Draw a line from each mark to the one opposite. How many small boxes do you get?
questions-ask-quarter-up = A quarter of the { $count } squares are up. How many squares are up?
questions-ask-half-of-boxes = A square has 16 small boxes. You colour half of them. How many boxes do you colour?
questions-ask-mural-width = { $squares } squares hang side by side. Each one is { $square } wide. { $unit ->
    [inch] How many inches
   *[mm] How many millimetres
} wide is the mural?
questions-ask-mural-height = { $squares } squares hang one above the other. Each one is { $square } tall. { $unit ->
    [inch] How many inches
   *[mm] How many millimetres
} tall is the mural?
questions-ask-larger = On the piece, a line is { $length } mm long. The square is { $scale } times as wide as the piece. How many millimetres long is the line on the square?
questions-ask-around = A ribbon goes once around the edge of the mural. The mural is { $columns } squares wide and { $rows } squares tall. Each square is { $square } wide. { $unit ->
    [inch] How many inches
   *[mm] How many millimetres
} long is the ribbon?
questions-ask-smaller = On the square, a line is { $length } mm long. The square is { $scale } times as wide as the piece. How many millimetres long was the line on the piece?
questions-ask-inches-to-mm = One inch is 25.4 mm. How many millimetres are in { $inches } inches?
questions-ask-part-of-boxes = A square has 16 small boxes. { $part }/{ $of } of them are coloured. How many boxes is that?
questions-ask-millimetres = A string is { $metres } metres long. How many millimetres is that?
questions-ask-larger-patch = On the piece, a patch of colour covers { $length } mm². Every length on the square is { $scale } times as long. How many mm² does the patch cover there?
questions-ask-percent-with = { $having } of the { $count } pieces have { $colour } in them. What percentage is that?
questions-ask-chessboard = Colour the { $count } squares like a chessboard. Start with black in the top left corner. How many squares are black?
questions-ask-most-colours = Look at the picture key. No piece has more than { $colours } colours. How many pieces have { $colours }?
questions-ask-seams = The mural has { $columns } columns and { $rows } rows. A strip of tape joins each square to each neighbour beside, above and below it. How many strips is that?
questions-ask-percent-of-boxes = A square has 16 small boxes. { $percent }% of them are coloured. How many boxes is that?
questions-ask-boxes-ratio = Of 16 small boxes, 4 are coloured and 12 are white. Which number goes in the box? Coloured : white = 1 : ☐
steps-5 = Colour it in. Keep the little code box white.
people-children-from-5 = Children aged 5 and over: { $reach }
people-children-from-9 = Children aged 9 and over: { $reach }
helpers-each-3 = Tick “out” next to that label on the checklist. Don’t write down anyone’s name.
helpers-help-5 = “Does it look white? Check the colours on the back of the piece. If none of them fits, leave it blank.”
helpers-if-3 = Someone wants a fresh start? That’s fine! Ask the organiser to print that sheet again. If there’s no time, use a plain square of the same size. Copy the label, large, into the same corner. The phone can’t read a plain square, so check that spot by eye.
helpers-if-4 = A square is circled twice on the checklist, or its visitor has left? Ask the organiser to print both sheets again, and give that piece to someone else. Both come back? The first one goes up. Hang the other right beside the mural, with a sticky note over its code.
helpers-if-4-strip = A square is circled twice on the checklist, or its visitor has left? Ask the organiser to print its strip again, and give it to someone else. Both come back? The first one goes up. Hang the other right beside the mural, with a sticky note over its code.
helpers-if-5 = A child under 5? Share a piece with a grown-up, or pick one with one colour.
helpers-set-2 = { $sets ->
    [one] Put the { $pencils-in-all } coloured pencils where everyone can reach them.
   *[other] Share { $pencils-in-all } coloured pencils from one spot in the middle of the room. Or give each table a set: { $pencils-in-sets } in all. The pencil sheet says which ones. Ask the organiser which way it is.
}
helpers-set-3 = { $sharpeners ->
    [one] 1 sharpener
   *[other] { $sharpeners } sharpeners
} and { $erasers ->
    [one] 1 rubber
   *[other] { $erasers } rubbers
}, shared out, and a bin for shavings. Keep small things away from children under 3.
helpers-set-4 = Coloured pencils only. Felt pens bleed through and paint curls the paper. Both hide the code.
helpers-help-4 = “Colour all the way to the edge. The next square picks up right there.”
helpers-look-1 = Can you read the label on both the piece and the square? Then both are the right way up.
helpers-look-3 = Pencils go back to where everyone can reach them after each colour.
helpers-look-4 = No one should wait more than a minute for a colour. Suggest starting with another colour.
helpers-hang-1 = Before you start, check the marks for the bottom edge and for every other row. No marks yet? The wall map has the measurements; use a spirit level and a faint pencil line.
helpers-hang-3 = Visitors bring you their squares. Hang each one where its column and row meet, label the right way up, edge to edge: no gaps, no overlaps.
helpers-hang-3-strip = Visitors bring you their strips. Fold the stub back, cut it off (scissors are for helpers), and give it to them. Hang the square where its column and row meet, label the right way up, edge to edge: no gaps, no overlaps.
helpers-hang-5 = Tick “up” on your copy of the checklist. Show visitors how to find their spot.
helpers-check-turned = Turn it as the list says. The label must be the right way up.
helpers-cutters-1 = Adults cut the squares and pieces before the event. Use a paper trimmer, or a metal ruler and a craft knife. Close or lock the blade whenever you put it down.
helpers-cutters-2 = At the tables, use only children’s scissors with round tips. Count them afterwards. Keep trimmers and knives out of the room.
helpers-tape-1 = Test the tape in a hidden spot the day before. Masking tape comes off most walls, but any tape can pull off old paint or wallpaper. On painted blockwork it may not stick: hang the squares on lining paper.
helpers-fire-1 = About { $paper-area } of paper will hang here. Fire rules limit that. Don’t add more without asking the organiser.
helpers-fire-3 = Keep exits clear to their full width: no bags, no tables, no queues. Know how you would lead everyone out.
helpers-pictures-3 = The check keeps only the wall and its cards, and covers anyone it finds in front of them. It can miss someone: look before you share. Delete the photo from the phone afterwards.
helpers-room-1 = Tape down cables. Keep bags under the tables. Wipe up spills straight away.
guide-intro = { $event }: everyone draws one small piece of a picture, bigger. Together the pieces make the whole picture on the wall. This guide is for you, the organiser. All numbers come from your picture and your settings.
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
guide-week-2 = Ask about the wall: paper, tape, height, exits, and how many people may be in the room. What the building manager or fire authority says goes.
guide-week-5 = Print everything, and the checklist twice. Check the pencil sheet: do your pencils match these colours? If not, change them under [[pencils]] in event.toml and print again.
guide-week-5-strip = Print everything; the strips in colour. Check the pencil sheet: do your pencils match these colours? If not, change them under [[pencils]] in event.toml and print again.
guide-week-6 = Cut out squares, pieces, edge cards, question cards and the labels for bags; put a label on each bag. When you cut sheets as a stack, put the piles on each other, left to right and top to bottom, and everything is in order. Sort the pieces into their bags. Cut a few plain squares of the same size for fresh starts. Allow one evening for two people.
guide-week-8 = Practise: “everysquare rehearse FOLDER” makes a practice photo with mistakes to find.
guide-clearing-1 = Count the children’s scissors; put stools away.
guide-day-7 = Copy the whole event folder to the laptop you’ll bring, and to a USB stick. Without print/manifest.json, no photo can be read.
guide-end-3 = Fill the gaps: check the wall, then type “everysquare print FOLDER fill” and colour what it prints, or add --soft to hang it as it is. Each spot stays open for its own square.
guide-clearing = Clearing up
guide-paper-amount = { $paper }: { $sheets ->
    [one] 1 sheet
   *[other] { $sheets } sheets
} for the squares alone, plus 10% extra. Heavier paper is best: thick printer paper or thin card (120 to 160 g/m²). “everysquare print” lists the sheets for everything else.
guide-paper-amount-strip = { $paper }: { $sheets ->
    [one] 1 sheet
   *[other] { $sheets } sheets
} for the strips alone, plus 10% extra. Heavier paper is best: thick printer paper or thin card (120 to 160 g/m²). “everysquare print” lists the sheets for everything else.
guide-printer-amount = Any printer. Pieces, the pencil sheet and the question cards need colour; black and white is fine for the rest.
guide-printer-amount-strip = Any printer that prints in colour. The strips, the pencil sheet and the question cards need it; black and white is fine for the rest.
guide-pencils = Coloured pencils
guide-sharpeners-amount = { $sharpeners ->
    [one] 1 sharpener
   *[other] { $sharpeners } sharpeners
}, { $erasers ->
    [one] 1 rubber
   *[other] { $erasers } rubbers
}, scrap paper, pens for the checklists
guide-tape = Masking tape
guide-string-amount = spirit level, tape measure, soft pencil, or string with a weight
guide-cutting-amount = paper trimmer, or craft knife, metal ruler and mat, before the event, adults only; children’s scissors for the question cards
guide-bin = Clearing up
guide-bin-amount = bin for shavings and scraps, cloth, box for finished squares
guide-pencil-list = Pencils by colour
guide-pencil-list-intro = Enough that, with every seat taken, no one waits for a colour 95% of the time. Choose one way: share all the pencils, or give each table a set.
guide-colour = Colour
guide-room-4 = Light should come from above or the side. A window opposite the wall causes glare; close the blinds.
guide-fire = { $paper-area } of paper will hang on the wall. Fire rules limit how much of a wall paper may cover, some to as little as a tenth. They’re strictest in corridors and near exits. Ask the building manager or fire authority before you print.
guide-cautions-2 = Trimmers and knives: before the event, adults only, counted afterwards and out of the room.
guide-pieces-4 = Starting again is fine: print that square’s sheet again. On a plain square, copy the label into the same corner. The check can’t read it, so look for yourself.
guide-wrong-turned-do = Show the wall helpers the label next to the code: it must be the right way up. The check lists which squares to turn.
guide-wrong-pencils = A colour runs out
guide-wrong-pencils-do = Swap pencils between tables. A similar colour is better than waiting; just use it for the whole area.
guide-after-1 = Leave the mural up with the original next to it. “everysquare display FOLDER PHOTO” makes the keepsakes: prints, a poster, a maths page. Add a sign: “Drawn by everyone who came.”
error-reduce-one-colour = the picture is one colour all over, so there’s nothing to draw. Choose another one
error-reduce-one-pencil = with these pencils the whole picture turns into one colour ({ $pencil }). Choose more pencils, or ones that differ more
typed-area = give four numbers in per cent: left edge, top edge, width and height, such as 10,20,60,60. Width and height are { $least } or more, and all of it lies in the picture
typed-millimetres-from = it must be a number of millimetres from { $least } to { $most }
error-settings-millimetres = must be a number from { $least } to { $most }, in millimetres
error-settings-colour = write a colour like "#3a8f4d": two hexadecimal digits each for red, green and blue
error-settings-minutes-a-piece = use four numbers from { $least } to { $most }, in minutes, for a one-colour, an easy, a medium and a hard piece, none smaller than the one before
event-colours = how many pencil colours to use
event-pencils = To use your own pencils, leave out colours and list each pencil at the end of this file, like this:
event-inset-mm = distance from the cut edge to the code; tape and neighbouring squares tend to cover the edges
event-minutes-a-piece = minutes for a one-colour, an easy, a medium and a hard piece
event-pieces-level = plain (one colour), easy, medium or hard, or your own name for it
guide-print-in-color = colour is needed
guide-print-card = thin card, or paper glued on card
