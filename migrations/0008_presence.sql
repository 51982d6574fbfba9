-- Who is in the room.
--
-- Somebody arrives and says so again when they leave. Who forgets to is taken
-- for gone from over_at on, which their arrival fixed by the room's own clock:
-- nobody then counts on it, and a job writes that it was not confirmed.
create table presence (
    room_id uuid not null references head (room_id),
    id uuid not null,
    person_id uuid not null references person (id),
    arrived_at timestamptz not null,
    arrived_seq bigint not null,
    over_at timestamptz not null,
    ended_at timestamptz,
    ended_seq bigint,
    -- Whether whoever left said so themself.
    is_confirmed boolean not null,
    primary key (room_id, id),
    constraint presence_over_check check (over_at > arrived_at),
    constraint presence_ended_check check (
        (ended_at is null) = (ended_seq is null)
        and (ended_at is null or ended_at >= arrived_at)
        and (ended_at is not null or not is_confirmed)
    )
);
-- Nobody is in the same room twice.
create unique index presence_open_key on presence (room_id, person_id) where ended_seq is null;
create index presence_ended_idx on presence (room_id, ended_at) where ended_at is not null;

alter table presence enable row level security;
create policy presence_room on presence
    using (room_id = (select current_room()))
    with check (room_id = (select current_room()));
