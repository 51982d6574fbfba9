-- What the nightly look at each book found: one row a night, for the page of
-- checkpoints. It is no part of the book.
create table verification (
    room_id uuid not null references head (room_id),
    at timestamptz not null,
    entries bigint not null,
    sealed_seq bigint,
    findings bigint not null,
    primary key (room_id, at)
);

alter table verification enable row level security;
create policy verification_room on verification
    using (room_id = (select current_room()))
    with check (room_id = (select current_room()));
