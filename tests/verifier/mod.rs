//! Our own walk and the script for outsiders, over sound books and spoilt ones.
//!
//! Every spoilt book goes through both: the program's [`Walk`] and [`Seals`], and
//! `deploy/verify-book` over an export of the same rows. Both must name exactly
//! the entries that were touched.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

mod books;
mod exports;
mod files;
mod spoilt;
