//! The one integration binary.

mod cluster;
mod darkroom;
mod golden;
mod look;
mod reference;
mod verifier;
