//! The one integration binary.

mod cluster;
mod look;
