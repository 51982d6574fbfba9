-- Personal text beside entries, incidents, and what people want to avoid.
--
-- An entry is never changed, so no entry holds what happened to somebody: it holds a
-- salted hash of the text that lies here, and the text can be erased. Without the salt
-- the hash says nothing of short words either.

create table beside (
    room_id uuid not null,
    seq bigint not null,
    salt bytea,
    words text,
    -- The entry that says it was erased.
    erased_seq bigint,
    primary key (room_id, seq),
    constraint beside_entry_fkey foreign key (room_id, seq) references entry (room_id, seq),
    constraint beside_erased_check check (
        (salt is null) = (words is null) and (words is null) = (erased_seq is not null)
    )
);

-- Of an incident the book knows whose it is and its number, nothing else.
create table incident (
    room_id uuid not null references head (room_id),
    id uuid not null,
    number bigint not null,
    person_id uuid not null references person (id),
    reported_by uuid references person (id),
    reported_at timestamptz not null,
    reported_seq bigint not null,
    finished_seq bigint,
    erased_seq bigint,
    primary key (room_id, id),
    constraint incident_number_key unique (room_id, number)
);
create index incident_person_idx on incident (room_id, person_id);

-- Who looked at somebody's incident.
create table incident_look (
    room_id uuid not null,
    seq bigint not null,
    incident_id uuid not null,
    person_id uuid references person (id),
    looked_at timestamptz not null,
    primary key (room_id, seq),
    constraint incident_look_incident_fkey
        foreign key (room_id, incident_id) references incident (room_id, id)
);

-- What somebody wants to be warned of. Nobody else ever sees it, so it is in no book.
create table avoid_note (
    room_id uuid not null references head (room_id),
    id uuid not null,
    person_id uuid not null references person (id),
    product_id uuid,
    words text not null,
    made_at timestamptz not null,
    primary key (room_id, id),
    constraint avoid_note_product_fkey
        foreign key (room_id, product_id) references product (room_id, id)
);
create index avoid_note_person_idx on avoid_note (room_id, person_id);

do $$
declare
    walled text;
begin
    foreach walled in array array['beside', 'incident', 'incident_look'] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;

alter table avoid_note enable row level security;
create policy avoid_note_own on avoid_note
    using (room_id = (select current_room()) and person_id = (select current_person()))
    with check (room_id = (select current_room()) and person_id = (select current_person()));
