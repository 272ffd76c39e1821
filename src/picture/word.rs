//! The words of a box of pencils.

/// What a child calls a colour.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[allow(missing_docs, reason = "the words themselves")]
pub enum Word {
    Red,
    Orange,
    Yellow,
    LimeGreen,
    Olive,
    Green,
    Teal,
    Turquoise,
    Blue,
    Purple,
    Pink,
    Brown,
    Cream,
    White,
    Grey,
    Black,
}

impl Word {
    /// Its sentence in the words file.
    #[must_use]
    pub fn id(self) -> &'static str {
        match self {
            Self::Red => "colour-red",
            Self::Orange => "colour-orange",
            Self::Yellow => "colour-yellow",
            Self::LimeGreen => "colour-lime-green",
            Self::Olive => "colour-olive",
            Self::Green => "colour-green",
            Self::Teal => "colour-teal",
            Self::Turquoise => "colour-turquoise",
            Self::Blue => "colour-blue",
            Self::Purple => "colour-purple",
            Self::Pink => "colour-pink",
            Self::Brown => "colour-brown",
            Self::Cream => "colour-cream",
            Self::White => "colour-white",
            Self::Grey => "colour-grey",
            Self::Black => "colour-black",
        }
    }
}

/// How light a colour is among those of its word, the lightest first.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[allow(missing_docs, reason = "the words themselves")]
pub enum Shade {
    VeryLight,
    Light,
    Plain,
    Dark,
    VeryDark,
}
