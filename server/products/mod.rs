//! Products, their dilutions, lives, capacities and safety data.

/// Its pages.
pub mod views;
