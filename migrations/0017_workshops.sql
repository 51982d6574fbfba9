-- Personal text beside entries, workshops, and their guests.
--
-- An entry is never changed, so no entry holds a guest's name: it holds a salted hash of
-- the text that lies here, and the text can be erased. Without the salt the hash says
-- nothing of short words either.

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

do $$
declare
    walled text;
begin
    foreach walled in array array['beside'] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;
