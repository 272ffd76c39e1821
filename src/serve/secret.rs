//! The secret in a link: who knows it may come in.
//!
//! Two links lead in. The helpers' lets photos be sent; the room's, which a projector may show in the browser's address bar for
//! all to see, only lets the wall be looked at.

use std::fmt;

use rand::Rng;
use serde::{Deserialize, Serialize};
use subtle::ConstantTimeEq;

/// Base 32 as in RFC 4648, in small letters; easy to type where no camera helps.
const LETTERS: &[u8; 32] = b"abcdefghijklmnopqrstuvwxyz234567";
/// Letters of a secret: 26 × 5 = 130 bits, all of them drawn by lot. NIST SP 800-63B asks for 112 bits where a secret has to withstand
/// guessing without a limit.
const LENGTH: usize = 26;

/// A secret. It shows itself only where a link is made of it, never in messages.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Secret(String);

impl Secret {
    /// A new one, from the generator that the system seeds.
    #[must_use]
    pub fn new() -> Self {
        let mut bytes = [0; LENGTH];
        rand::rng().fill_bytes(&mut bytes);
        Self(bytes.iter().map(|byte| char::from(LETTERS[usize::from(byte % 32)])).collect())
    }

    /// Whether `text` is this secret. The time that takes does not tell how much of it is right.
    #[must_use]
    pub fn is(&self, text: &str) -> bool {
        self.0.as_bytes().ct_eq(text.as_bytes()).into()
    }

    /// The secret in the open, to make a link of.
    #[must_use]
    pub fn shown(&self) -> &str {
        &self.0
    }
}

impl Default for Secret {
    fn default() -> Self {
        Self::new()
    }
}

impl fmt::Debug for Secret {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Secret")
    }
}

impl TryFrom<String> for Secret {
    type Error = &'static str;

    fn try_from(text: String) -> Result<Self, Self::Error> {
        let fits = text.len() == LENGTH && text.bytes().all(|byte| LETTERS.contains(&byte));
        if fits { Ok(Self(text)) } else { Err("this is no secret of a link") }
    }
}

impl From<Secret> for String {
    fn from(secret: Secret) -> Self {
        secret.0
    }
}

/// Both links' secrets, as they are kept in the event's folder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Secrets {
    /// Always 1.
    format: u64,
    /// For helpers, who send photos.
    pub helpers: Secret,
    /// For the room, which looks.
    pub room: Secret,
    /// Until when they hold, in seconds since 1970.
    until: u64,
}

/// How long links hold: an evening, its preparation and its clearing up.
const HOLDS_S: u64 = 12 * 3_600;

impl Secrets {
    /// New ones, which hold from `now` on.
    #[must_use]
    pub fn new(now: u64) -> Self {
        Self { format: 1, helpers: Secret::new(), room: Secret::new(), until: now + HOLDS_S }
    }

    /// Those in a kept file that still hold.
    #[must_use]
    pub fn kept(bytes: &[u8], now: u64) -> Option<Self> {
        let kept: Self = serde_json::from_slice(bytes).ok()?;
        (kept.format == 1 && now < kept.until && kept.until <= now + HOLDS_S).then_some(kept)
    }

    /// The file's bytes.
    #[must_use]
    pub fn to_json(&self) -> Vec<u8> {
        serde_json::to_vec(self).unwrap_or_default() // a struct with text keys always serializes
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn secrets_differ_are_long_and_hide() {
        let (one, other) = (Secret::new(), Secret::new());
        assert!(one != other && one.shown().len() == LENGTH);
        assert!(one.is(one.shown()) && !one.is(other.shown()) && !one.is("") && !one.is(&one.shown()[1..]));
        assert_eq!(format!("{one:?}"), "Secret");
        let letters: std::collections::BTreeSet<char> =
            (0..50).flat_map(|_| Secret::new().shown().chars().collect::<Vec<_>>()).collect();
        assert_eq!(letters.len(), 32, "every letter is drawn");
    }

    #[test]
    fn kept_secrets_hold_for_an_evening_only() {
        let made = Secrets::new(1_000);
        let bytes = made.to_json();
        assert_eq!(Secrets::kept(&bytes, 1_000 + HOLDS_S - 1).as_ref(), Some(&made));
        assert_eq!(Secrets::kept(&bytes, 1_000 + HOLDS_S), None);
        assert_eq!(Secrets::kept(&bytes, 5), None, "from the future");
        for odd in ["", "{}", "{\"format\":1,\"helpers\":\"../../etc\",\"room\":\"x\",\"until\":5}"] {
            assert_eq!(Secrets::kept(odd.as_bytes(), 0), None);
        }
    }
}
