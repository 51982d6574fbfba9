//! What the invented history is drawn from: whole numbers only, the same on every
//! machine. Each matter has a stream of its own, so that one more draw in one
//! leaves every other as it was.

use sha2::{Digest, Sha256};
use time::OffsetDateTime;
use uuid::Uuid;

use crate::clock::micros;

/// A stream of numbers: the generator of Steele, Lea and Flood, "Fast splittable
/// pseudorandom number generators" (2014), with its published constants.
#[derive(Clone, Debug)]
pub(super) struct Draw(u64);

impl Draw {
    /// The stream of a matter, numbered where there are many.
    pub(super) fn of(seed: i64, matter: &str, number: i64) -> Self {
        let drawn = Sha256::new()
            .chain_update(b"wetside.demo")
            .chain_update(seed.to_be_bytes())
            .chain_update(number.to_be_bytes())
            .chain_update(matter)
            .finalize();
        let mut first = [0; 8];
        first.copy_from_slice(&drawn[..8]);
        Self(u64::from_be_bytes(first))
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// A number from nothing up to one less than `many`.
    fn below(&mut self, many: u64) -> u64 {
        let scaled = u128::from(self.next()) * u128::from(many);
        u64::try_from(scaled >> 64).unwrap_or(0)
    }

    /// A number between these two, either among them.
    pub(super) fn between(&mut self, least: i64, most: i64) -> i64 {
        let many = u64::try_from(most - least + 1).unwrap_or(1);
        least + i64::try_from(self.below(many)).unwrap_or(0)
    }

    /// Whether something comes about that does so many times in a hundred.
    pub(super) fn happens(&mut self, in_hundred: u64) -> bool {
        self.below(100) < in_hundred
    }

    /// One of some; nothing of none.
    pub(super) fn one_of<T: Copy>(&mut self, some: &[T]) -> Option<T> {
        let place = self.below(u64::try_from(some.len()).unwrap_or(0));
        some.get(usize::try_from(place).unwrap_or(0)).copied()
    }

    /// The id of something that came about at an instant: of the usual time-ordered
    /// shape, its random part drawn.
    pub(super) fn id(&mut self, at: OffsetDateTime) -> Uuid {
        let millis = u64::try_from(micros(at) / 1_000).unwrap_or(0);
        let drawn = [self.next().to_be_bytes(), self.next().to_be_bytes()].concat();
        let mut random = [0; 10];
        random.copy_from_slice(&drawn[..10]);
        uuid::Builder::from_unix_timestamp_millis(millis, &random).into_uuid()
    }

    /// So many of some, each as likely as its weight, none twice.
    pub(super) fn some_of<T: Copy>(&mut self, mut from: Vec<(T, u64)>, many: usize) -> Vec<T> {
        let mut drawn = Vec::new();
        while drawn.len() < many && from.iter().any(|(_, weight)| *weight > 0) {
            let mut left = self.below(from.iter().map(|(_, weight)| weight).sum());
            let mut place = 0;
            while let Some((_, weight)) = from.get(place)
                && left >= *weight
            {
                left -= weight;
                place += 1;
            }
            drawn.push(from.remove(place).0);
        }
        drawn
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_generator_is_the_published_one() {
        // The first numbers from the state 1234567 by splitmix64.c of
        // prng.di.unimi.it.
        let mut draw = Draw(1_234_567);
        let first: Vec<u64> = (0..3).map(|_| draw.next()).collect();
        assert_eq!(
            first,
            [
                6_457_827_717_110_365_317,
                3_203_168_211_198_807_973,
                9_817_491_932_198_370_423
            ]
        );
    }

    #[test]
    fn a_stream_is_its_own_and_comes_about_twice() {
        let drawn = |seed, matter, number| -> Vec<i64> {
            let mut draw = Draw::of(seed, matter, number);
            (0..20).map(|_| draw.between(-3, 3)).collect()
        };
        assert_eq!(drawn(1, "days", 7), drawn(1, "days", 7));
        assert_ne!(drawn(1, "days", 7), drawn(1, "days", 8));
        assert_ne!(drawn(1, "days", 7), drawn(1, "people", 7));
        assert_ne!(drawn(1, "days", 7), drawn(2, "days", 7));
        let many = drawn(1, "days", 7);
        assert!(many.iter().all(|each| (-3..=3).contains(each)));
    }

    #[test]
    fn who_is_drawn_is_drawn_once_and_the_weightless_never() {
        let mut draw = Draw::of(1, "some", 0);
        let from = vec![('a', 1), ('b', 0), ('c', 5), ('d', 1)];
        for _ in 0..50 {
            let mut drawn = draw.some_of(from.clone(), 9);
            drawn.sort_unstable();
            assert_eq!(drawn, ['a', 'c', 'd']);
        }
        assert_eq!(draw.one_of::<u8>(&[]), None);
    }
}
