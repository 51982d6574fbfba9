-- Workshops and their guests. A guest's name lies beside the entry that signs them in.

create table workshop (
    room_id uuid not null references head (room_id),
    id uuid not null,
    title text not null,
    leader_id uuid not null references person (id),
    -- None: the room itself.
    space_id uuid,
    begins_at timestamptz not null,
    ends_at timestamptz not null,
    most_guests integer not null constraint workshop_most_check check (most_guests > 0),
    line_ids uuid[] not null,
    -- Nobody: the room pays.
    paid_by_id uuid references person (id),
    planned_seq bigint not null,
    called_off_seq bigint,
    called_off_reason text,
    opened_at timestamptz,
    opened_seq bigint,
    -- When it is over by itself: when its leader is taken for gone.
    over_at timestamptz,
    ended_at timestamptz,
    ended_seq bigint,
    -- Whether whoever led it said that it is over.
    is_confirmed boolean not null,
    primary key (room_id, id),
    constraint workshop_space_fkey foreign key (room_id, space_id) references space (room_id, id),
    constraint workshop_ends_check check (ends_at > begins_at),
    constraint workshop_called_off_check check (
        (called_off_seq is null) = (called_off_reason is null)
        and (called_off_seq is null or opened_seq is null)
    ),
    constraint workshop_opened_check check (
        (opened_at is null) = (opened_seq is null) and (opened_at is null) = (over_at is null)
    ),
    constraint workshop_ended_check check (
        (ended_at is null) = (ended_seq is null)
        and (ended_seq is null or opened_seq is not null)
        and (ended_seq is not null or not is_confirmed)
    )
);
create index workshop_begins_idx on workshop (room_id, begins_at);

-- Somebody at a workshop. The name is the one at this place of the list that lies beside
-- the entry by which they were signed in.
create table guest (
    room_id uuid not null,
    id uuid not null,
    workshop_id uuid not null,
    place integer not null,
    signed_in_at timestamptz not null,
    signed_in_seq bigint not null,
    left_at timestamptz,
    left_seq bigint,
    -- Whether they were signed out.
    is_confirmed boolean not null,
    -- The entry that says the names were erased.
    erased_seq bigint,
    primary key (room_id, id),
    constraint guest_place_key unique (room_id, signed_in_seq, place),
    constraint guest_workshop_fkey
        foreign key (room_id, workshop_id) references workshop (room_id, id),
    constraint guest_left_check check (
        (left_at is null) = (left_seq is null) and (left_seq is not null or not is_confirmed)
    )
);
create index guest_workshop_idx on guest (room_id, workshop_id);
create index guest_named_idx on guest (room_id, signed_in_at) where erased_seq is null;

-- For which workshop sheets were printed.
alter table pass add column workshop_id uuid;
alter table pass add constraint pass_workshop_fkey
    foreign key (room_id, workshop_id) references workshop (room_id, id);
create index pass_workshop_idx on pass (room_id, workshop_id) where workshop_id is not null;

-- For so many days the names of guests are kept.
alter table room_setting add column guest_days integer not null default 30;

do $$
declare
    walled text;
begin
    foreach walled in array array['workshop', 'guest'] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;
