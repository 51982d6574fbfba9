//! The one integration binary.

mod cluster;
