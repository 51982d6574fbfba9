//! Chooses a command and nothing else.

fn main() {}
