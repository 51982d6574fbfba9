//! What the suite's tests of the cluster know about processes.

#[expect(dead_code, reason = "the suite uses all of it")]
#[path = "../cluster/helpers.rs"]
pub(crate) mod helpers;
