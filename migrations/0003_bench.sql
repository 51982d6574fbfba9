-- The whole bench: the rooms behind the room, what prints do in each tray,
-- bottles, and how prints are finished. A tray that was set before says nothing
-- of its step, and a line nothing of its space: the defaults mean just that.

create table space (
    room_id uuid not null references head (room_id),
    id uuid not null,
    name text not null,
    position integer not null,
    retired_at timestamptz,
    primary key (room_id, id)
);

alter table line add column space_id uuid;
alter table line add constraint line_space_fkey
    foreign key (room_id, space_id) references space (room_id, id);

alter table tray add column step text not null default 'any';
alter table tray add constraint tray_step_check check (step in (
    'any', 'developer', 'stop_bath', 'fixer', 'first_fixer', 'second_fixer', 'holding_water',
    'wash_aid', 'toner', 'wash'
));

create table bottle (
    room_id uuid not null references head (room_id),
    id uuid not null,
    name text not null,
    holds_ul bigint not null constraint bottle_holds_check check (holds_ul > 0),
    retired_at timestamptz,
    primary key (room_id, id)
);

-- How long a paper class takes in each bath of a line, and where that was read.
create table finishing (
    room_id uuid not null,
    line_id uuid not null,
    paper_class_id uuid not null,
    fix_s bigint not null,
    longest_fix_s bigint not null,
    rinse_s bigint not null,
    wash_aid_s bigint,
    wash_with_aid_s bigint,
    wash_without_aid_s bigint not null,
    basis text not null,
    primary key (room_id, line_id, paper_class_id),
    constraint finishing_fix_check check (fix_s <= longest_fix_s),
    constraint finishing_line_fkey foreign key (room_id, line_id) references line (room_id, id),
    constraint finishing_paper_class_fkey foreign key (room_id, paper_class_id)
        references paper_class (room_id, id)
);

-- What lies in a line's wash: the last print that joined restarts it for all, and
-- the longest time any of them needs counts for all.
create table wash (
    room_id uuid not null,
    line_id uuid not null,
    first_joined_at timestamptz not null,
    last_joined_at timestamptz not null,
    -- Whose time counts.
    paper_class_id uuid not null,
    wash_s bigint not null constraint wash_time_check check (wash_s > 0),
    last_seq bigint not null,
    primary key (room_id, line_id),
    constraint wash_line_fkey foreign key (room_id, line_id) references line (room_id, id),
    constraint wash_paper_class_fkey foreign key (room_id, paper_class_id)
        references paper_class (room_id, id)
);

do $$
declare
    walled text;
begin
    foreach walled in array array['space', 'bottle', 'finishing', 'wash'] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;
