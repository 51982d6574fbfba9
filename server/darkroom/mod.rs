//! The trade's arithmetic. It knows nobody: no clock, no SQL, no HTTP.
