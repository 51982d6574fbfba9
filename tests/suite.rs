//! The one integration binary.

mod cluster;
mod golden;
mod verifier;
