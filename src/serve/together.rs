//! What helpers share: which step is done, who is on one, which pieces are out. One list for all phones, kept in the event's folder.
//!
//! ```text
//!   step    open ─▶ mine ─▶ done        mine: a phone is on it, for CLAIM_S at most; done: until a photo taken later shows otherwise
//!   piece   here ─▶ out ─▶ back         until its square is seen on the wall
//! ```
//!
//! Promised:
//! - Two phones never get the same step or piece: who asks second is refused and told so.
//! - A tick says nothing of the wall; only photos do. It falls when a newer photo still shows the fault.
//! - Who a phone is, nobody knows: it draws a token by lot, which is told to no other phone.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::list::Step;

/// Longest time in seconds for which a phone keeps a step to itself: the way to the wall, a stool, a swap, and the way back. Common
/// sense, no source. Much shorter, and a second helper sets out meanwhile; much longer, and a step waits for a helper who went home.
pub const CLAIM_S: u64 = 600;
/// Age in seconds after which a kept list is of another day.
const HOLDS_S: u64 = 12 * 3_600;
/// Length of a phone's token.
const WHO: usize = 12;

/// A phone, by the token that it drew.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Who(String);

impl TryFrom<String> for Who {
    type Error = &'static str;

    fn try_from(text: String) -> Result<Self, Self::Error> {
        let fits =
            text.len() == WHO && text.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit());
        if fits { Ok(Self(text)) } else { Err("this is no phone's token") }
    }
}

impl From<Who> for String {
    fn from(who: Who) -> Self {
        who.0
    }
}

/// What a phone wants a step to be.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum StepState {
    /// Nobody is on it.
    Open,
    /// The phone is on it.
    Mine,
    /// Done.
    Done,
}

/// What a phone wants a piece to be.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum PieceState {
    /// To be handed out.
    Here,
    /// Handed out.
    Out,
    /// Drawn and brought back, not on the wall yet.
    Back,
}

/// A step that somebody is on, or did.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Mark {
    /// Whether it is done.
    pub done: bool,
    /// By which phone.
    pub who: Who,
    /// When, in seconds since 1970.
    pub at: u64,
}

/// A piece that was handed out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Piece {
    /// By which phone.
    pub who: Who,
    /// When, in seconds since 1970.
    pub out: u64,
    /// When it came back; `None` while somebody draws.
    pub back: Option<u64>,
}

/// Why something was not marked.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Conflict {
    /// Another phone is on this step.
    Taken,
    /// This step is on the list no more, or a newer photo shows that it is still to do.
    Gone,
    /// Another phone handed this piece out.
    PieceTaken,
    /// This piece's square is on the wall.
    PieceUp,
}

/// The list.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Together {
    /// Always 1.
    format: u64,
    /// Of which event.
    tag: String,
    /// When it was kept, in seconds since 1970.
    kept: u64,
    steps: BTreeMap<String, Mark>,
    pieces: BTreeMap<usize, Piece>,
}

impl Together {
    /// An empty list.
    #[must_use]
    pub fn new(tag: &str) -> Self {
        Self { format: 1, tag: tag.to_owned(), ..Self::default() }
    }

    /// A kept list. An empty one where it is of another event or another day; `None` where it is damaged.
    #[must_use]
    pub fn from_kept(bytes: &[u8], tag: &str, cells: usize, now: u64) -> Option<Self> {
        let kept: Self = serde_json::from_slice(bytes).ok()?;
        let sound = kept.format == 1 && kept.pieces.keys().all(|place| *place < cells || kept.tag != tag);
        let holds = kept.tag == tag && now < kept.kept.saturating_add(HOLDS_S);
        sound.then(|| if holds { kept } else { Self::new(tag) })
    }

    /// The file's bytes.
    #[must_use]
    pub fn to_json(&mut self, now: u64) -> Vec<u8> {
        self.kept = now;
        serde_json::to_vec(self).unwrap_or_default() // maps with text keys always serialize
    }

    /// What holds of a step: done, or claimed and not expired.
    #[must_use]
    pub fn step(&self, step: &Step, now: u64) -> Option<&Mark> {
        self.steps.get(&step.key).filter(|mark| holds(mark, step, now))
    }

    /// The pieces that are out or back, by the place where each belongs.
    pub fn pieces(&self) -> impl Iterator<Item = (usize, &Piece)> {
        self.pieces.iter().map(|(place, piece)| (*place, piece))
    }

    /// Marks a step. `seen` is when, as the phone knows, the step's cells were seen last.
    ///
    /// # Errors
    /// [`Conflict`], and nothing has changed.
    pub fn mark(
        &mut self,
        steps: &[Step],
        (key, seen): (&str, u64),
        to: StepState,
        who: &Who,
        now: u64,
    ) -> Result<(), Conflict> {
        let step = steps.iter().find(|step| step.key == key).ok_or(Conflict::Gone)?;
        let mark = self.step(step, now);
        let of_another = mark.is_some_and(|mark| mark.who != *who);
        let done = mark.is_some_and(|mark| mark.done);
        match to {
            StepState::Done if done => return Ok(()), // both did it, or the answer was lost
            StepState::Done if seen != step.seen => return Err(Conflict::Gone),
            StepState::Mine if done || of_another => return Err(Conflict::Taken),
            StepState::Open if of_another && !done => return Err(Conflict::Taken),
            StepState::Open => {
                self.steps.remove(key);
            }
            StepState::Mine | StepState::Done => {
                let mark = Mark { done: to == StepState::Done, who: who.clone(), at: now };
                self.steps.insert(key.to_owned(), mark);
            }
        }
        Ok(())
    }

    /// Marks a piece. `missing` are the pieces whose squares hang nowhere.
    ///
    /// # Errors
    /// [`Conflict`], and nothing has changed.
    pub fn hand(
        &mut self,
        missing: &[usize],
        place: usize,
        to: PieceState,
        who: &Who,
        now: u64,
    ) -> Result<(), Conflict> {
        if !missing.contains(&place) {
            return Err(Conflict::PieceUp);
        }
        match (to, self.pieces.get_mut(&place)) {
            (PieceState::Here, _) => {
                self.pieces.remove(&place);
            }
            (PieceState::Out, Some(piece)) if piece.back.is_some() => piece.back = None,
            (PieceState::Out, Some(piece)) if piece.who != *who => return Err(Conflict::PieceTaken),
            (PieceState::Out, Some(_)) => {}
            (PieceState::Back, Some(piece)) => piece.back = piece.back.or(Some(now)),
            (PieceState::Out, None) => {
                self.pieces.insert(place, Piece { who: who.clone(), out: now, back: None });
            }
            (PieceState::Back, None) => {
                self.pieces.insert(place, Piece { who: who.clone(), out: now, back: Some(now) });
            }
        }
        Ok(())
    }

    /// Drops what no longer holds, and says whether there was anything.
    pub fn tidy(&mut self, steps: &[Step], missing: &[usize], now: u64) -> bool {
        let before = (self.steps.len(), self.pieces.len());
        let by_key: BTreeMap<&str, &Step> = steps.iter().map(|step| (step.key.as_str(), step)).collect();
        self.steps.retain(|key, mark| by_key.get(key.as_str()).is_some_and(|step| holds(mark, step, now)));
        let mut is_missing: Vec<usize> = missing.to_vec();
        is_missing.sort_unstable();
        self.pieces.retain(|place, _| is_missing.binary_search(place).is_ok());
        before != (self.steps.len(), self.pieces.len())
    }
}

fn holds(mark: &Mark, step: &Step, now: u64) -> bool {
    if mark.done { step.seen < mark.at } else { now < mark.at.saturating_add(CLAIM_S) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const NOON: u64 = 1_800_000_000;

    fn who(letter: char) -> Who {
        Who::try_from(letter.to_string().repeat(WHO)).unwrap()
    }

    fn step(key: &str, seen: u64) -> Step {
        Step {
            key: key.to_owned(),
            act: "swap",
            say: String::new(),
            cells: vec![0, 1],
            shows: vec![0, 1],
            square: None,
            degrees: None,
            after: None,
            seen,
        }
    }

    #[test]
    fn two_phones_do_not_get_the_same_step() {
        let mut list = Together::new("K7M");
        let steps = [step("swap:A1,B1", NOON)];
        let asked = ("swap:A1,B1", NOON);
        let (one, other) = (who('a'), who('b'));
        assert_eq!(list.mark(&steps, asked, StepState::Mine, &one, NOON + 5), Ok(()));
        assert_eq!(list.mark(&steps, asked, StepState::Mine, &other, NOON + 5), Err(Conflict::Taken));
        assert_eq!(list.mark(&steps, asked, StepState::Open, &other, NOON + 5), Err(Conflict::Taken));
        assert_eq!(
            list.mark(&steps, asked, StepState::Mine, &one, NOON + 6),
            Ok(()),
            "asking twice changes nothing"
        );
        let late = NOON + 6 + CLAIM_S;
        assert_eq!(list.mark(&steps, asked, StepState::Mine, &other, late), Ok(()), "a claim expires");
        assert_eq!(
            list.mark(&steps, asked, StepState::Mine, &one, late + 1),
            Err(Conflict::Taken),
            "back after an hour"
        );
    }

    #[test]
    fn a_tick_holds_until_a_newer_photo_shows_otherwise() {
        let mut list = Together::new("K7M");
        let before = [step("swap:A1,B1", NOON)];
        let asked = ("swap:A1,B1", NOON);
        assert_eq!(list.mark(&before, asked, StepState::Done, &who('a'), NOON + 60), Ok(()));
        assert_eq!(
            list.mark(&before, asked, StepState::Done, &who('b'), NOON + 60),
            Ok(()),
            "two tick at once"
        );
        assert_eq!(list.step(&before[0], NOON + 99).map(|mark| &mark.who), Some(&who('a')));
        assert_eq!(list.mark(&before, asked, StepState::Mine, &who('b'), NOON + 61), Err(Conflict::Taken));
        assert!(
            !list.tidy(&[step("swap:A1,B1", NOON + 30)], &[], NOON + 99),
            "a photo from before it was done"
        );
        assert!(list.tidy(&[step("swap:A1,B1", NOON + 60)], &[], NOON + 99));
        let after = [step("swap:A1,B1", NOON + 60)];
        assert_eq!(
            list.mark(&after, asked, StepState::Done, &who('a'), NOON + 70),
            Err(Conflict::Gone),
            "of an old list"
        );
        assert_eq!(list.mark(&[], asked, StepState::Done, &who('a'), NOON + 70), Err(Conflict::Gone));
        assert!(list.step(&after[0], NOON + 99).is_none());
    }

    #[test]
    fn a_piece_goes_out_once_and_comes_back() {
        let mut list = Together::new("K7M");
        let (one, other) = (who('a'), who('b'));
        let missing = [3, 7];
        assert_eq!(list.hand(&missing, 3, PieceState::Out, &one, NOON), Ok(()));
        assert_eq!(list.hand(&missing, 3, PieceState::Out, &one, NOON + 1), Ok(()));
        assert_eq!(list.hand(&missing, 3, PieceState::Out, &other, NOON), Err(Conflict::PieceTaken));
        assert_eq!(list.hand(&missing, 4, PieceState::Out, &other, NOON), Err(Conflict::PieceUp));
        assert_eq!(list.hand(&missing, usize::MAX, PieceState::Back, &other, NOON), Err(Conflict::PieceUp));
        assert_eq!(list.hand(&missing, 3, PieceState::Back, &other, NOON + 900), Ok(()));
        assert_eq!(
            list.pieces().next().map(|(place, piece)| (place, piece.out, piece.back)),
            Some((3, NOON, Some(NOON + 900)))
        );
        assert_eq!(list.hand(&missing, 3, PieceState::Out, &other, NOON + 901), Ok(()), "back was a slip");
        assert_eq!(list.hand(&missing, 3, PieceState::Here, &other, NOON + 902), Ok(()));
        assert_eq!(list.hand(&missing, 3, PieceState::Out, &other, NOON + 903), Ok(()));
        assert!(list.tidy(&[], &[7], NOON + 904) && list.pieces().next().is_none(), "its square hangs");
    }

    #[test]
    fn a_kept_list_comes_back_and_a_damaged_one_does_not() {
        let mut list = Together::new("K7M");
        list.hand(&[3], 3, PieceState::Out, &who('a'), NOON).unwrap();
        list.mark(&[step("turn:A1", NOON)], ("turn:A1", NOON), StepState::Done, &who('b'), NOON + 1).unwrap();
        let bytes = list.to_json(NOON + 2);
        assert_eq!(Together::from_kept(&bytes, "K7M", 20, NOON + 3), Some(list));
        assert_eq!(Together::from_kept(&bytes, "ABC", 20, NOON + 3), Some(Together::new("ABC")));
        assert_eq!(Together::from_kept(&bytes, "K7M", 20, NOON + 2 + HOLDS_S), Some(Together::new("K7M")));
        assert_eq!(Together::from_kept(&bytes, "K7M", 3, NOON + 3), None, "a place beyond the wall");
        for cut in 0..bytes.len() {
            assert_eq!(Together::from_kept(&bytes[..cut], "K7M", 20, NOON), None);
        }
        let strange = br#"{"format":1,"tag":"K7M","kept":0,"steps":{"x":{"done":true,"who":"<script>","at":1}},"pieces":{}}"#;
        assert_eq!(Together::from_kept(strange, "K7M", 20, 0), None);
    }

    proptest! {
        #[test]
        fn whatever_phones_ask_a_claim_has_one_owner(
            asked in proptest::collection::vec((0_usize..3, 0_usize..2, 0_usize..3, 0_u64..400), 1..40),
        ) {
            let steps = [step("swap:A1,B1", NOON), step("turn:C1", NOON)];
            let states = [StepState::Open, StepState::Mine, StepState::Done];
            let mut list = Together::new("K7M");
            let mut now = NOON + 1;
            for (phone, at, state, after) in asked {
                now += after;
                let phone = who(char::from(b"abc"[phone]));
                let before = list.step(&steps[at], now).cloned();
                let told = list.mark(&steps, (&steps[at].key, NOON), states[state], &phone, now);
                let mark = list.step(&steps[at], now);
                if told.is_err() {
                    prop_assert_eq!(mark, before.as_ref());
                }
                if told.is_ok() && states[state] == StepState::Mine {
                    prop_assert!(mark.is_some_and(|mark| mark.who == phone && !mark.done));
                    prop_assert!(before.is_none_or(|mark| mark.who == phone));
                }
            }
        }
    }
}
