-- Somebody alone in the room, until when they are expected to stay, and who was asked or
-- told once that had passed.

-- Only entries of the person set it; it never outlasts the presence.
alter table presence add column expected_at timestamptz;
alter table presence add constraint presence_expected_check check (
    expected_at > arrived_at and expected_at <= over_at
);
create index presence_expected_idx on presence (room_id, expected_at)
    where expected_at is not null;

-- Who was asked or told of which expected time: each once.
create table expected_told (
    room_id uuid not null,
    presence_id uuid not null,
    expected_at timestamptz not null,
    person_id uuid not null references person (id),
    told_at timestamptz not null,
    primary key (room_id, presence_id, expected_at, person_id),
    constraint expected_told_presence_fkey
        foreign key (room_id, presence_id) references presence (room_id, id)
);

alter table expected_told enable row level security;
create policy expected_told_room on expected_told
    using (room_id = (select current_room()))
    with check (room_id = (select current_room()));

-- Whether nobody may mix concentrate while nobody else is in the room.
alter table room_setting add column forbids_mixing_alone boolean not null default false;
