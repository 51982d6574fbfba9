-- What section 3 of a supplier's data sheet lists of a product, and what a room looks at
-- on a schedule.

-- Whether a steward said that the list of ingredients is complete. Until then what is in
-- the product is unknown, and the unknown counts as hazardous.
alter table product add column composition_is_known boolean not null default false;

create table ingredient (
    room_id uuid not null,
    product_id uuid not null,
    -- Where it stands in the sheet's list.
    position integer not null,
    name text not null,
    cas text,
    -- Its share by mass, in millionths; a sheet may give one end only, or none.
    least_millionths integer,
    most_millionths integer,
    hazard_codes text[] not null,
    primary key (room_id, product_id, position),
    constraint ingredient_product_fkey foreign key (room_id, product_id)
        references product (room_id, id),
    constraint ingredient_content_check check (
        (least_millionths between 0 and 1000000) is not false
        and (most_millionths between 0 and 1000000) is not false
        and (least_millionths <= most_millionths) is not false
    )
);

-- What is looked at, how, and how often.
create table room_check (
    room_id uuid not null references head (room_id),
    id uuid not null,
    name text not null,
    how text not null,
    every_days integer not null constraint room_check_every_check check (every_days > 0),
    -- Where the number of days comes from.
    basis text not null,
    on_failure text not null,
    -- Whether the board says so while it is overdue or has failed.
    is_on_board boolean not null,
    space_id uuid,
    -- The unit of what is measured; none where nothing is.
    unit text,
    least_thousandths bigint,
    most_thousandths bigint,
    -- The day from which it is to be done; a day, not an instant.
    first_due_on date not null,
    retired_at timestamptz,
    primary key (room_id, id),
    constraint room_check_space_fkey foreign key (room_id, space_id)
        references space (room_id, id),
    constraint room_check_limit_check check (
        (unit is not null or (least_thousandths is null and most_thousandths is null))
        and (least_thousandths <= most_thousandths) is not false
    )
);

create table room_check_result (
    room_id uuid not null,
    seq bigint not null,
    id uuid not null,
    room_check_id uuid not null,
    person_id uuid references person (id),
    has_passed boolean not null,
    remark text not null,
    -- What was measured, in the unit of then.
    measured_thousandths bigint,
    unit text,
    due_on date not null,
    happened_at timestamptz not null,
    undone_by bigint,
    primary key (room_id, seq),
    constraint room_check_result_id_key unique (room_id, id),
    constraint room_check_result_check_fkey foreign key (room_id, room_check_id)
        references room_check (room_id, id),
    constraint room_check_result_remark_check check (has_passed or remark <> ''),
    constraint room_check_result_unit_check check (
        (measured_thousandths is null) = (unit is null)
    )
);
create index room_check_result_check_idx
    on room_check_result (room_id, room_check_id, happened_at, seq);

-- Which overdue checks stewards were told of: each once.
create table room_check_told (
    room_id uuid not null,
    room_check_id uuid not null,
    due_on date not null,
    told_at timestamptz not null,
    primary key (room_id, room_check_id, due_on),
    constraint room_check_told_check_fkey
        foreign key (room_id, room_check_id) references room_check (room_id, id)
);

do $$
declare
    walled text;
begin
    foreach walled in array array[
        'ingredient', 'room_check', 'room_check_result', 'room_check_told'
    ] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;
