//! Where the laptop can be reached: its addresses in the room's network.

use std::net::{IpAddr, Ipv4Addr};

use if_addrs::IfAddr;
use thiserror::Error;

use crate::words::{Sentence, Tell, told_in_english};

/// Beginnings of names that systems give to networks inside the computer or through a tunnel: no phone gets in there.
const INNER: [&str; 9] = ["docker", "br-", "veth", "virbr", "vbox", "vmnet", "tun", "tap", "utun"];

/// An address in the room's network.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Lan {
    /// The address.
    pub ip: Ipv4Addr,
    /// What the system calls the network it belongs to.
    pub network: String,
}

/// An address that cannot be served on.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum AddressError {
    /// The system does not say.
    Unknown(String),
    /// No network.
    NoNetwork,
    /// Several networks, and nobody to ask.
    Several(Vec<Lan>),
    /// All addresses at once, or one that the whole internet reaches.
    Open(IpAddr),
    /// Not the laptop's.
    Foreign {
        /// What was asked for.
        asked: IpAddr,
        /// What there is.
        own: Vec<Lan>,
    },
}

told_in_english!(AddressError);

impl Tell for AddressError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Unknown(said) => Sentence::new("serve-error-unknown").with("said", said.as_str()),
            Self::NoNetwork => Sentence::new("serve-error-no-network"),
            Self::Several(own) => Sentence::new("serve-error-several").with("own", listed(own)),
            Self::Open(asked) => Sentence::new("serve-error-open").with("asked", asked.to_string()),
            Self::Foreign { asked, own } => {
                Sentence::new("serve-error-foreign").with("asked", asked.to_string()).with("own", listed(own))
            }
        }
    }
}

/// Addresses with the networks they belong to.
fn listed(lans: &[Lan]) -> String {
    let named = lans.iter().map(|lan| format!("{} ({})", lan.ip, lan.network));
    named.collect::<Vec<_>>().join(", ")
}

/// The laptop's addresses in networks of rooms, the likeliest first.
///
/// # Errors
/// [`AddressError::Unknown`] where the system does not tell.
pub fn lans() -> Result<Vec<Lan>, AddressError> {
    let all = if_addrs::get_if_addrs().map_err(|error| AddressError::Unknown(error.to_string()))?;
    let found = all.into_iter().filter_map(|one| match one.addr {
        IfAddr::V4(ref address) if of_a_room(address.ip) => Some(Lan { ip: address.ip, network: one.name }),
        _ => None,
    });
    Ok(sorted(found.collect()))
}

fn sorted(mut lans: Vec<Lan>) -> Vec<Lan> {
    let inner = |lan: &Lan| INNER.iter().any(|beginning| lan.network.starts_with(beginning));
    lans.sort_by_key(|lan| (inner(lan), lan.ip.is_link_local(), lan.network.clone(), lan.ip));
    lans.dedup();
    lans
}

/// Whether an address belongs to a network that the internet does not reach (RFC 1918, RFC 3927, RFC 6598).
#[must_use]
pub fn of_a_room(ip: Ipv4Addr) -> bool {
    let [first, second, ..] = ip.octets();
    ip.is_private() || ip.is_link_local() || (first == 100 && (64..128).contains(&second))
}

/// The address to serve on: the one asked for, or the only one there is outside the computer.
///
/// # Errors
/// [`AddressError`] where there is none or no single one; [`AddressError::Several`] lets the caller ask.
pub fn chosen(asked: Option<IpAddr>, lans: &[Lan]) -> Result<Lan, AddressError> {
    if let Some(asked) = asked {
        let own = lans.iter().find(|lan| IpAddr::V4(lan.ip) == asked);
        return match asked {
            IpAddr::V4(ip) if of_a_room(ip) => {
                own.cloned().ok_or(AddressError::Foreign { asked, own: lans.to_vec() })
            }
            _ => Err(AddressError::Open(asked)),
        };
    }
    match lans {
        [] => Err(AddressError::NoNetwork),
        [only] => Ok(only.clone()),
        several => Err(AddressError::Several(several.to_vec())),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lan(ip: [u8; 4], network: &str) -> Lan {
        Lan { ip: ip.into(), network: network.to_owned() }
    }

    #[test]
    fn the_room_s_network_comes_before_those_inside_the_computer() {
        let lans = sorted(vec![
            lan([172, 17, 0, 1], "docker0"),
            lan([169, 254, 7, 7], "eth1"),
            lan([192, 168, 1, 20], "wlan0"),
            lan([192, 168, 1, 20], "wlan0"),
        ]);
        assert_eq!(
            lans.iter().map(|lan| lan.network.as_str()).collect::<Vec<_>>(),
            ["wlan0", "eth1", "docker0"]
        );
    }

    #[test]
    fn an_address_is_chosen_asked_about_or_refused() {
        let (home, other) = (lan([192, 168, 1, 20], "wlan0"), lan([10, 0, 0, 5], "eth0"));
        let both = [home.clone(), other.clone()];
        assert_eq!(chosen(None, &both[..1]), Ok(home.clone()));
        assert_eq!(chosen(None, &both), Err(AddressError::Several(both.to_vec())));
        assert_eq!(chosen(None, &[]), Err(AddressError::NoNetwork));
        assert_eq!(chosen(Some(other.ip.into()), &both), Ok(other));
        for open in ["0.0.0.0", "8.8.8.8", "127.0.0.1", "::", "2001:db8::1"] {
            assert!(
                matches!(chosen(Some(open.parse().unwrap()), &both), Err(AddressError::Open(_))),
                "{open}"
            );
        }
        assert!(matches!(
            chosen(Some("192.168.1.21".parse().unwrap()), &both),
            Err(AddressError::Foreign { .. })
        ));
    }

    #[test]
    fn only_addresses_that_the_internet_does_not_reach_are_of_a_room() {
        for (ip, wanted) in
            [("172.20.10.2", true), ("172.32.0.1", false), ("100.64.0.9", true), ("100.128.0.1", false)]
        {
            assert_eq!(of_a_room(ip.parse().unwrap()), wanted, "{ip}");
        }
    }
}
