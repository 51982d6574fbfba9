//! Who follows a board here, so that nobody follows more than a few and the instance not
//! more than it can serve.
//!
//! A page that lost its connection comes back under its own name and takes its old seat,
//! for the server may not have heard yet that the old connection is gone.

use std::collections::HashMap;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use tokio_util::sync::CancellationToken;
use uuid::Uuid;

use crate::error::{Error, Result};

/// Boards that one log-in follows at the same time.
pub(super) const OF_ONE: usize = 6;
/// Boards that are followed at one instance.
pub(super) const OF_ALL: usize = 2_000;

/// The seats of an instance.
#[derive(Clone, Debug, Default)]
pub(super) struct Seats {
    taken: Arc<Mutex<Taken>>,
}

#[derive(Debug, Default)]
struct Taken {
    next: u64,
    all: usize,
    by_holder: HashMap<Uuid, Vec<Place>>,
}

#[derive(Debug)]
struct Place {
    number: u64,
    tab: Option<String>,
    end: CancellationToken,
}

/// A seat, as long as it is kept.
#[derive(Debug)]
pub(super) struct Seat {
    seats: Seats,
    holder: Uuid,
    number: u64,
    end: CancellationToken,
}

impl Seats {
    /// A seat for one more board of this log-in or device; the one that the same page
    /// had is ended.
    ///
    /// # Errors
    /// [`Error::Unavailable`] where there is none left.
    pub(super) fn take(&self, holder: Uuid, tab: Option<String>) -> Result<Seat> {
        let mut taken = self.open();
        taken.leave(holder, |place| tab.is_some() && place.tab == tab);
        let of_one = taken.by_holder.get(&holder).map_or(0, Vec::len);
        if of_one >= OF_ONE || taken.all >= OF_ALL {
            return Err(Error::Unavailable("as many boards as may be are followed"));
        }
        let end = CancellationToken::new();
        let number = taken.next;
        taken.next += 1;
        taken.all += 1;
        let place = Place {
            number,
            tab,
            end: end.clone(),
        };
        taken.by_holder.entry(holder).or_default().push(place);
        Ok(Seat {
            seats: self.clone(),
            holder,
            number,
            end,
        })
    }

    fn open(&self) -> MutexGuard<'_, Taken> {
        self.taken.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Taken {
    fn leave(&mut self, holder: Uuid, is_left: impl Fn(&Place) -> bool) {
        let Some(places) = self.by_holder.get_mut(&holder) else {
            return;
        };
        let before = places.len();
        places.retain(|place| {
            let is_left = is_left(place);
            if is_left {
                place.end.cancel();
            }
            !is_left
        });
        self.all -= before - places.len();
        if places.is_empty() {
            self.by_holder.remove(&holder);
        }
    }
}

impl Seat {
    /// Waits until the page it was taken for has taken another.
    pub(super) async fn taken_over(&self) {
        self.end.cancelled().await;
    }
}

impl Drop for Seat {
    fn drop(&mut self) {
        let number = self.number;
        let mut taken = self.seats.open();
        taken.leave(self.holder, |place| place.number == number);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn is_full(seats: &Seats, holder: Uuid) -> bool {
        seats.take(holder, None).is_err()
    }

    #[test]
    fn one_log_in_has_six_and_gives_them_back() {
        let (seats, one) = (Seats::default(), Uuid::from_u128(1));
        let mut held: Vec<Seat> = (0..OF_ONE)
            .map(|_| seats.take(one, None).unwrap())
            .collect();
        assert!(is_full(&seats, one));
        assert!(!is_full(&seats, Uuid::from_u128(2)));
        held.pop();
        assert!(!is_full(&seats, one));
    }

    #[test]
    fn a_page_that_comes_back_takes_its_own_seat() {
        let (seats, one) = (Seats::default(), Uuid::from_u128(1));
        let tab = |number: usize| Some(number.to_string());
        let held: Vec<Seat> = (0..OF_ONE)
            .map(|number| seats.take(one, tab(number)).unwrap())
            .collect();
        let again = seats.take(one, tab(3)).unwrap();
        assert!(held[3].end.is_cancelled());
        assert!(!held[2].end.is_cancelled());
        assert!(is_full(&seats, one));
        drop(held);
        assert_eq!(seats.open().all, 1);
        drop(again);
        assert_eq!(seats.open().all, 0);
    }

    #[test]
    fn an_instance_has_so_many_and_no_more() {
        let seats = Seats::default();
        let held: Vec<Seat> = (0..OF_ALL)
            .map(|number| seats.take(Uuid::from_u128(number as u128), None).unwrap())
            .collect();
        assert!(is_full(&seats, Uuid::from_u128(9_999_999)));
        drop(held);
        assert!(!is_full(&seats, Uuid::from_u128(9_999_999)));
    }
}
