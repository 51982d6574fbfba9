//! The one integration binary.

mod book;
mod cluster;
mod darkroom;
mod reference;
