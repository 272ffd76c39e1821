//! The plan as text for a terminal: sentences, small tables, a map.

use crate::picture::PictureFacts;
use crate::picture::order::Band;
use crate::plan::cell::column_letters;
use crate::plan::crowd::{
    Assumed, COMFORTABLE_MINUTES, Evening, Means, NOBODY_WAITS, OtherGrid, People, RowHeight, STOOL_MM,
    Verdict, boards_told, part_hang_mm, part_rows, percent,
};
use crate::plan::lengths::{about, area, both, one};
use crate::plan::settings::{Choice, Join, WallPart};
use crate::plan::{Level, Settings};
use crate::print::{Document, STACK, Sources, effort, minutes};
use crate::report::lines::{centred, line, one_line, paragraph};
use crate::words::{FluentValue, Words};

/// What stands in the map for each level, the easiest first: the more ink, the harder.
const MARKS: [&str; 4] = [".", "-", "+", "#"];
/// What stands in the map for a piece of the border in reserve.
const RESERVE: &str = "o";
/// Mark of a spot that is kept free.
const KEPT_FREE: &str = "/";

/// The whole text, in lines of `width` characters. `documents` are the kit's, or why there are none.
pub(super) fn plan(sources: &Sources, documents: Result<&[Document], String>, width: usize) -> String {
    let Sources { settings, facts, words, evening, .. } = *sources;
    let mut text = Text { text: String::new(), settings, facts, evening, words, width };
    text.say("plan-title", &[("name", one_line(&settings.name).into())]);
    text.levels();
    text.crowd();
    text.helpers();
    text.others();
    text.wall();
    text.pencils();
    text.supplies(documents);
    text.text
}

/// The text as far as it is written, and what it is about.
struct Text<'a> {
    text: String,
    settings: &'a Settings,
    facts: &'a PictureFacts,
    evening: &'a Evening,
    words: &'a Words,
    /// Characters in a line.
    width: usize,
}

impl Text<'_> {
    fn say(&mut self, id: &str, arguments: &[(&str, FluentValue<'_>)]) {
        let said = self.words.say(id, arguments);
        paragraph(&mut self.text, "", &said, self.width);
    }

    fn heading(&mut self, id: &str) {
        self.text.push('\n');
        self.say(id, &[]);
    }

    fn word(&self, id: &str) -> String {
        self.words.say(id, &[])
    }

    fn long(&self, mm: f64) -> String {
        both(mm, self.settings.print.units, self.words)
    }

    /// A table: its first column on the left, all others on the right.
    fn table(&mut self, rows: &[Vec<String>]) {
        let columns = rows.iter().map(Vec::len).max().unwrap_or(0);
        let width = |column: usize| {
            rows.iter().filter_map(|row| row.get(column)).map(|cell| cell.chars().count()).max()
        };
        let widths: Vec<usize> = (0..columns).map(|column| width(column).unwrap_or(0)).collect();
        for row in rows {
            let mut said = String::from("  ");
            for (column, (cell, width)) in row.iter().zip(&widths).enumerate() {
                said += &if column == 0 { format!("{cell:<width$}") } else { format!("  {cell:>width$}") };
            }
            line(&mut self.text, &said);
        }
    }

    fn levels(&mut self) {
        self.heading("plan-levels");
        let heads =
            ["plan-head-level", "plan-head-mark", "plan-head-pieces", "plan-head-minutes", "plan-head-last"];
        let mut rows = vec![heads.map(|id| self.word(id)).to_vec()];
        for level in Level::ALL {
            let at = level.index();
            rows.push(vec![
                one_line(&self.settings.levels.word(level, self.words)),
                MARKS[at].to_owned(),
                self.evening.pieces[at].to_string(),
                plain(self.evening.given.minutes_a_piece[at], 1),
                self.evening.given.moment(self.evening.last_call(level), self.words),
            ]);
        }
        if let Some(reserve) = &self.evening.reserve {
            let (border, nothing) = (self.word("plan-border"), String::new());
            rows.push(vec![border, RESERVE.to_owned(), reserve.pieces.to_string(), nothing.clone(), nothing]);
        }
        self.table(&rows);
        self.text.push('\n');
        self.map();
        let grid = &self.settings.grid;
        if let Some(free) = grid.kept_free.told(grid, "plan-keep-free", self.words) {
            paragraph(&mut self.text, "", &free, self.width);
        }
        let decided = self.facts.pieces.iter().filter(|piece| piece.decided).count();
        if decided > 0 {
            self.say("plan-decided", &[("count", decided.into())]);
        }
        if self.settings.levels.balanced {
            self.say("plan-balanced", &[]);
        }
    }

    /// The levels of all pieces, as they hang; in blocks where the wall is wider than the terminal.
    fn map(&mut self) {
        let grid = &self.settings.grid;
        let numbers = (1..=grid.rows).map(|row| row.to_string().len()).max().unwrap_or(1) + 2;
        let room = column_letters(grid.columns - 1).len() + 1;
        let side_by_side = (self.width.saturating_sub(numbers) / room).max(1);
        for from in (0..grid.columns).step_by(side_by_side) {
            let block = from..(from + side_by_side).min(grid.columns);
            let letters: String =
                block.clone().map(|column| centred(&column_letters(column), room)).collect();
            line(&mut self.text, &format!("{:numbers$}{letters}", ""));
            for row in 0..grid.rows {
                let mark = |column: usize| match &self.facts.pieces[row * grid.columns + column] {
                    piece if piece.band == Band::Reserve => RESERVE,
                    piece if piece.band == Band::Never => KEPT_FREE,
                    piece => MARKS[piece.level.index()],
                };
                let marks: String = block.clone().map(|column| centred(mark(column), room)).collect();
                line(&mut self.text, &format!("{:>numbers$}{marks}", grid.row_number(row)));
            }
            if block.end < grid.columns {
                self.text.push('\n');
            }
        }
    }

    fn crowd(&mut self) {
        self.heading("plan-crowd");
        let given = &self.evening.given;
        let numbers = [
            ("visitors", given.visitors.shown().into()),
            ("arrivals", given.arrivals.word().into()),
            ("each", given.pieces_each.into()),
            ("seats", given.seats.into()),
            ("minutes", plain(given.minutes, 1).into()),
        ];
        self.say("plan-evening", &numbers);
        if let Some(start) = given.start {
            let end = start.after(given.minutes).say(self.words);
            self.say("plan-clock", &[("start", start.say(self.words).into()), ("end", end.into())]);
        }
        let assumed = [Assumed::Visitors, Assumed::Minutes, Assumed::Seats]
            .into_iter()
            .filter(|what| given.assumes(*what))
            .map(Assumed::word);
        let assumed: Vec<&str> = assumed.collect();
        if !assumed.is_empty() {
            let options: Vec<String> = assumed.iter().map(|word| format!("--{word}")).collect();
            let said = [("numbers", assumed.join(", ").into()), ("options", options.join(", ").into())];
            self.say("plan-assumed", &said);
        }
        if given.visitors.most() < given.seats {
            self.say("plan-seats-free", &[("free", (given.seats - given.visitors.most()).into())]);
        }
        self.text.push('\n');
        let told = self.evening.told(self.words);
        let (verdict, rest) = told.split_at(1);
        for said in [verdict.join(" "), rest.join(" ")] {
            paragraph(&mut self.text, "", &said, self.width);
        }
    }

    fn helpers(&mut self) {
        self.heading("plan-helpers");
        let (scene, given) = (&self.evening.scene, &self.evening.given);
        let minutes = ("minutes", plain(COMFORTABLE_MINUTES, 0).into());
        if given.assumes(Assumed::GivingOut) && given.assumes(Assumed::Hanging) {
            self.say("plan-helpers-needed", &[minutes]);
        } else {
            let (giving_out, hanging) = (scene.giving_out.most(), scene.hanging.most());
            let numbers = [("giving-out", giving_out.into()), ("hanging", hanging.into()), minutes];
            self.say("plan-helpers-given", &numbers);
        }
        let mut rows =
            vec![["crowd-from", "crowd-giving-out", "crowd-hanging"].map(|id| self.word(id)).to_vec()];
        let shifts = self.evening.shifts_told(self.words);
        rows.extend(
            shifts
                .into_iter()
                .map(|shift| vec![shift.from, shift.giving_out.to_string(), shift.hanging.to_string()]),
        );
        self.table(&rows);
        for said in self.evening.one_fewer_told(self.words) {
            paragraph(&mut self.text, "", &said, self.width);
        }
        let assumptions = self.evening.assumptions_told(self.settings, self.words);
        paragraph(&mut self.text, "", &assumptions, self.width);
    }

    fn others(&mut self) {
        let others = &self.evening.others;
        if others.is_empty() {
            self.heading("plan-no-others");
            return;
        }
        self.heading(if self.evening.verdict == Verdict::Fits {
            "plan-others-as-well"
        } else {
            "plan-others"
        });
        let heads = [
            "plan-head-grid",
            "plan-head-pieces",
            "plan-head-whole",
            "plan-head-without",
            "plan-head-size",
            "plan-head-lost",
        ];
        let mut rows = vec![heads.map(|id| self.word(id)).to_vec()];
        rows.extend(others.iter().map(|other| self.other(other)));
        self.table(&rows);
        let range = self.evening.range;
        self.say("plan-others-why", &[("least", range.least.into()), ("most", range.most.into())]);
    }

    fn other(&self, other: &OtherGrid) -> Vec<String> {
        let units = self.settings.print.units;
        let side = |mm: f64| one(mm, units, self.words);
        vec![
            format!("{} × {}", other.columns, other.rows),
            other.count().to_string(),
            percent(other.whole, self.words),
            other.without.to_string(),
            format!("{} × {}", side(other.width_mm), side(other.height_mm)),
            percent(other.lost, self.words),
        ]
    }

    fn wall(&mut self) {
        self.heading("plan-wall");
        let wall = &self.evening.wall;
        let sizes = [
            ("width", self.long(wall.width_mm).into()),
            ("height", self.long(wall.height_mm).into()),
            ("around_width", self.long(wall.width_with_cards_mm).into()),
            ("around_height", self.long(wall.height_with_cards_mm).into()),
        ];
        self.say("plan-wall-size", &sizes);
        self.parts();
        if let Some(fit) = wall.fit {
            let id = match (fit.with_cards, fit.squares) {
                (true, _) => "plan-room-fits",
                (false, true) => "plan-room-without-cards",
                (false, false) => "plan-room-too-small",
            };
            let size = [
                ("width", self.long(fit.room.width_mm).into()),
                ("height", self.long(fit.room.height_mm).into()),
                ("square", self.long(fit.largest_square_mm).into()),
            ];
            self.say(id, &size);
        }
        if self.settings.parts.is_empty() {
            let assumed = self.evening.given.assumes(Assumed::Hang);
            let hang = if assumed { "plan-hang-proposed" } else { "plan-hang" };
            self.say(hang, &[("hang", self.long(wall.hang_mm).into())]);
        }
        self.heights();
    }

    /// The parts that the wall hangs in, with their spots and sizes, and how many outlines cross from one to the next.
    fn parts(&mut self) {
        let Settings { parts, grid, .. } = self.settings;
        if parts.is_empty() {
            return;
        }
        let is_cut = |column: usize| parts.iter().any(|part| part.last.column == column);
        let crossing: usize =
            (0..).zip(&self.facts.crossings).filter(|(column, _)| is_cut(*column)).map(|(_, own)| own).sum();
        self.say("plan-parts", &[("count", parts.len().into()), ("crossing", crossing.into())]);
        for (part, number) in parts.iter().zip(1_usize..) {
            let (from, to) = part.ends(grid);
            let size = part.size(grid);
            let named = [
                ("number", number.to_string().into()),
                ("from", from.into()),
                ("to", to.into()),
                ("width", self.long(size.x).into()),
                ("height", self.long(size.y).into()),
                ("hang", self.long(self.hang_mm(part)).into()),
            ];
            self.say("plan-part", &named);
        }
    }

    /// Height of a part's lower edge over the floor.
    fn hang_mm(&self, part: &WallPart) -> f64 {
        part_hang_mm(part, &self.settings.grid, self.settings.evening.hang_mm)
    }

    /// Who hangs which row; of each part by itself where their rows do not hang level.
    fn heights(&mut self) {
        let Settings { parts, grid, .. } = self.settings;
        let each: Vec<Vec<RowHeight>> =
            parts.iter().map(|part| part_rows(part, grid, self.hang_mm(part))).collect();
        if each.windows(2).any(|pair| pair[0] != pair[1]) {
            for (rows, number) in each.iter().zip(1_usize..) {
                self.say("plan-part-heights", &[("number", number.to_string().into())]);
                self.rows(rows);
            }
        } else {
            self.rows(&self.evening.wall.rows);
        }
        let reach = |people: People| one(people.reach_mm(), self.settings.print.units, self.words);
        let numbers = [
            ("five", reach(People::Children5).into()),
            ("nine", reach(People::Children9).into()),
            ("seated", reach(People::Seated).into()),
            ("adults", reach(People::Adults).into()),
            ("stool", one(STOOL_MM, self.settings.print.units, self.words).into()),
        ];
        self.say("plan-reach", &numbers);
    }

    /// Rows with their heights, and what everybody needs to hang a square in them.
    fn rows(&mut self, heights: &[RowHeight]) {
        self.text.push('\n');
        let heads = [
            "plan-head-row",
            "plan-head-upper",
            "plan-head-from-5",
            "plan-head-from-9",
            "plan-head-seated",
            "plan-head-adults",
        ];
        let mut rows = vec![heads.map(|id| self.word(id)).to_vec()];
        for row in heights {
            let mut cells = vec![row.number.to_string(), self.long(row.upper_mm)];
            cells.extend(row.means().map(|means| self.word(means_id(means))));
            rows.push(cells);
        }
        self.table(&rows);
    }

    fn pencils(&mut self) {
        self.heading("plan-pencils");
        let heads = ["plan-head-pencil", "plan-head-pieces", "plan-head-drawing", "plan-head-pencils"];
        let mut rows = vec![heads.map(|id| self.word(id)).to_vec()];
        for (number, (pencil, need)) in
            self.facts.pencils.iter().zip(&self.evening.supplies.pencils).enumerate()
        {
            rows.push(vec![
                one_line(&pencil.name),
                self.facts.pieces_with(number).to_string(),
                percent(need.chance, self.words),
                pencil.counted(need.count, self.words),
            ]);
        }
        self.table(&rows);
        let numbers = [
            ("count", self.evening.supplies.pencils_in_all().into()),
            ("seats", self.evening.expected.seats_taken.into()),
            ("sure", plain(NOBODY_WAITS * 100.0, 0).into()),
        ];
        self.say("plan-pencils-why", &numbers);
    }

    fn supplies(&mut self, documents: Result<&[Document], String>) {
        self.heading("plan-supplies");
        let supplies = &self.evening.supplies;
        match documents {
            Ok(documents) => {
                let sheets: Vec<String> = documents
                    .iter()
                    .map(|document| format!("{} {}", document.name.trim_end_matches(".pdf"), document.sheets))
                    .collect();
                let all: usize = documents.iter().map(|document| document.sheets).sum();
                let paper = self.words.say(&format!("print-paper-{}", self.settings.print.paper.word()), &[]);
                self.say(
                    "plan-sheets",
                    &[
                        ("count", all.into()),
                        ("paper", paper.into()),
                        ("documents", sheets.join(", ").into()),
                    ],
                );
                let cuts: usize = documents.iter().map(|document| document.cuts).sum();
                let cutting =
                    [("cuts", cuts.into()), ("stack", STACK.into()), ("minutes", minutes(cuts).into())];
                self.say("plan-cutting", &cutting);
            }
            Err(why) => self.say("plan-no-sheets", &[("why", why.into())]),
        }
        if let Some(said) = join_told(self.settings, self.words) {
            paragraph(&mut self.text, "", &said, self.width);
        }
        let numbers = [
            ("tape", about(supplies.tape_mm, self.settings.print.units, self.words).into()),
            ("sharpeners", supplies.sharpeners.into()),
            ("erasers", supplies.erasers.into()),
            ("cards", supplies.cards.into()),
        ];
        self.say("plan-things", &numbers);
        let room = self.evening.given.room;
        let area = area(supplies.paper_m2, self.settings.print.units, self.words);
        match (boards_told(self.settings, self.words), room) {
            (Some(boards), _) => {
                self.say("plan-fire-boards", &[("area", area.into()), ("boards", boards.into())]);
            }
            (None, Some(room)) => {
                let part = supplies.paper_m2 / (room.width_mm * room.height_mm / 1e6);
                let percent = percent(part, self.words);
                self.say("plan-fire-part", &[("area", area.into()), ("percent", percent.into())]);
            }
            (None, None) => self.say("plan-fire", &[("area", area.into())]),
        }
    }
}

/// How pieces and squares are joined, what that costs, and what the other way would; `None` where one of the two does not fit the paper.
pub(in crate::cli) fn join_told(settings: &Settings, words: &Words) -> Option<String> {
    let printed = settings.printed().ok()?;
    let join = settings.print.join;
    let (id, other) = match join {
        Join::Apart => ("plan-join-apart", Join::Beside),
        Join::Beside => ("plan-join-beside", Join::Apart),
    };
    let [own, other] = [join, other].map(|join| effort(settings, &printed, join).ok());
    let (own, other) = (own?, other?);
    let numbers = [
        ("sheets", own.sheets.into()),
        ("color", own.in_colour.into()),
        ("cuts", own.cuts.into()),
        ("minutes", own.minutes.into()),
        ("other-sheets", other.sheets.into()),
        ("other-color", other.in_colour.into()),
        ("other-minutes", other.minutes.into()),
        ("stack", STACK.into()),
    ];
    Some(words.say(id, &numbers))
}

fn means_id(means: Means) -> &'static str {
    match means {
        Means::Floor => "plan-means-floor",
        Means::Stool => "plan-means-stool",
        Means::Ladder => "plan-means-ladder",
        Means::Helper => "plan-means-helper",
    }
}

/// A number with so many digits behind the point, without zeros at its end.
fn plain(value: f64, digits: usize) -> String {
    let said = format!("{value:.digits$}");
    if said.contains('.') { said.trim_end_matches('0').trim_end_matches('.').to_owned() } else { said }
}
