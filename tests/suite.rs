//! The one integration binary.

mod cluster;
mod darkroom;
mod golden;
mod reference;
mod verifier;
