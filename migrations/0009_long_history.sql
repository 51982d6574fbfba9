-- What stood in a line at a moment is asked for by every note, nearly always of
-- just now: sought by when a stay ends, the years before cost nothing.
create index stay_ends_idx on stay (room_id, line_id, (coalesce(until_at, 'infinity')));
drop index stay_line_idx;

-- A time is held against the last fresh one of its kind.
create index reading_fresh_idx on reading (room_id, kind, seq)
    where is_fresh and undone_by is null;
