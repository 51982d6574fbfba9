//! Everything that touches PostgreSQL, except the SQL of the nouns.

pub mod cluster;
