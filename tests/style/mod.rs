//! Rules of the tree.
