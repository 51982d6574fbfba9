//! The one integration binary.

mod cluster;
mod darkroom;
mod reference;
