//! The room's book.
