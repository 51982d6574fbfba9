//! No right without a way to use it, in either skin.

mod rights;
mod words;
