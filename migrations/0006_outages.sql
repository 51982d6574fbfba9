-- Power and fan while they are off, and rooms that one steward hands to another.
--
-- A thing that is off shows on every page of the room until somebody says that
-- it is over; what stands in the trays ages on meanwhile. The space is the part
-- of the room it is about; none is the whole room.

create table outage (
    room_id uuid not null references head (room_id),
    id uuid not null,
    what text not null constraint outage_what_check check (what in ('power', 'fan')),
    space_id uuid,
    began_at timestamptz not null,
    began_by uuid references person (id),
    began_seq bigint not null,
    ended_at timestamptz,
    ended_by uuid references person (id),
    ended_seq bigint,
    primary key (room_id, id),
    constraint outage_ended_check
        check ((ended_at is null) = (ended_seq is null) and (ended_at is null or ended_at >= began_at))
);
-- The same thing is off once at a time.
create unique index outage_open_key on outage (room_id, what, space_id) nulls not distinct
    where ended_seq is null;
create index outage_began_idx on outage (room_id, began_seq);

-- The sheet is the list as the successor was shown it: the same JSON text as in
-- the entry that opened the handover.
create table handover (
    room_id uuid not null references head (room_id),
    id uuid not null,
    from_person_id uuid not null references person (id),
    to_person_id uuid not null references person (id),
    sheet text not null,
    opened_at timestamptz not null,
    opened_seq bigint not null,
    confirmed_at timestamptz,
    confirmed_seq bigint,
    withdrawn_at timestamptz,
    withdrawn_seq bigint,
    primary key (room_id, id),
    constraint handover_two_people_check check (from_person_id <> to_person_id),
    constraint handover_one_end_check check (confirmed_seq is null or withdrawn_seq is null)
);
-- Nobody hands the same room over twice at once.
create unique index handover_open_key on handover (room_id, from_person_id)
    where confirmed_seq is null and withdrawn_seq is null;
create index handover_opened_idx on handover (room_id, opened_seq);

alter table outage enable row level security;
create policy outage_room on outage
    using (room_id = (select current_room()))
    with check (room_id = (select current_room()));

alter table handover enable row level security;
create policy handover_room on handover
    using (room_id = (select current_room()))
    with check (room_id = (select current_room()));
