//! The one integration binary.

mod access;
mod api;
mod book;
mod cluster;
mod darkroom;
mod golden;
mod identity;
mod look;
mod reference;
mod verifier;
