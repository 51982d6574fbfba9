-- Lamps and screens that shine while paper is out, and the fog tests that say how
-- long paper may lie in their light.
--
-- A test keeps how the lamp hung then: what it found holds while the lamp hangs just
-- so, and until the day it is to be made again.

create table lamp (
    room_id uuid not null references head (room_id),
    id uuid not null,
    name text not null,
    kind text not null constraint lamp_kind_check check (kind in ('safelight', 'screen')),
    -- Bulb and filter, or how bright a screen is.
    light text not null,
    distance_tenths_mm integer not null
        constraint lamp_distance_check check (distance_tenths_mm > 0),
    space_id uuid,
    test_months integer not null constraint lamp_months_check check (test_months > 0),
    retired_at timestamptz,
    primary key (room_id, id),
    constraint lamp_space_fkey foreign key (room_id, space_id) references space (room_id, id)
);

create table fog_test (
    room_id uuid not null,
    seq bigint not null,
    id uuid not null,
    lamp_id uuid not null,
    paper_class_id uuid not null,
    person_id uuid references person (id),
    kind text not null,
    light text not null,
    distance_tenths_mm integer not null,
    space_id uuid,
    -- The longest step without fog and the shortest with it; one of them may not have
    -- been found.
    clean_s bigint,
    fogged_s bigint,
    safe_s bigint,
    -- A day, not an instant: when it ends follows from the room's zone.
    again_by date not null,
    happened_at timestamptz not null,
    undone_by bigint,
    primary key (room_id, seq),
    constraint fog_test_id_key unique (room_id, id),
    constraint fog_test_lamp_fkey foreign key (room_id, lamp_id) references lamp (room_id, id),
    constraint fog_test_paper_class_fkey foreign key (room_id, paper_class_id)
        references paper_class (room_id, id),
    constraint fog_test_steps_check check (
        (clean_s is not null or fogged_s is not null) and (clean_s < fogged_s) is not false
    ),
    -- What fogged at once has no time.
    constraint fog_test_safe_check check (
        (clean_s is null) = (safe_s is null) and (safe_s * 2 <= fogged_s) is not false
    )
);
create index fog_test_lamp_idx on fog_test (room_id, lamp_id, paper_class_id, happened_at, seq);

-- Which overdue tests stewards were told of: each once.
create table fog_test_told (
    room_id uuid not null,
    lamp_id uuid not null,
    again_by date not null,
    told_at timestamptz not null,
    primary key (room_id, lamp_id, again_by),
    constraint fog_test_told_lamp_fkey
        foreign key (room_id, lamp_id) references lamp (room_id, id)
);

do $$
declare
    walled text;
begin
    foreach walled in array array['lamp', 'fog_test', 'fog_test_told'] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;
