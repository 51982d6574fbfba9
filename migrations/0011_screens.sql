-- Paired screens, and the PINs that people type at a door.
--
-- What a screen is stands in the book; what lets its browser in is a secret and
-- does not. A pairing is found by that secret before any room is known, so it
-- stands outside the rooms' walls: it holds hashes, two ids and a moment. It begins
-- as a code that waits to be typed by a steward.

create table screen (
    room_id uuid not null references head (room_id),
    id uuid not null,
    kind text not null constraint screen_kind_check check (kind in ('board', 'door')),
    name text not null,
    display text not null constraint screen_display_check
        check (display in ('day', 'dim', 'safelight')),
    paired_at timestamptz not null,
    paired_by uuid references person (id),
    paired_seq bigint not null,
    ended_at timestamptz,
    ended_seq bigint,
    primary key (room_id, id),
    constraint screen_ended_check check ((ended_at is null) = (ended_seq is null))
);
-- Two screens in use have two names.
create unique index screen_name_key on screen (room_id, lower(name)) where ended_seq is null;

create table pairing (
    secret_hash bytea primary key,
    code_hash bytea constraint pairing_code_hash_key unique,
    shown_at timestamptz not null,
    room_id uuid references room_name (room_id),
    screen_id uuid,
    last_seen_at timestamptz not null,
    -- It waits by its code, or it is a screen's.
    constraint pairing_state_check check (
        (room_id is null) = (screen_id is null) and (code_hash is null) = (screen_id is not null)
    )
);
create unique index pairing_screen_key on pairing (room_id, screen_id) where screen_id is not null;

-- Six digits are soon tried out, so they are kept like a password.
create table pin (
    room_id uuid not null,
    person_id uuid not null,
    hash text not null,
    set_at timestamptz not null,
    primary key (room_id, person_id),
    constraint pin_membership_fkey
        foreign key (room_id, person_id) references membership (room_id, person_id)
);

do $$
declare
    walled text;
begin
    foreach walled in array array['screen', 'pin'] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;
