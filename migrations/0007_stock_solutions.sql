-- Stock solution made of a powder: its making is an entry, and what is mixed
-- from it draws what remains.
create table stock_solution (
    room_id uuid not null references head (room_id),
    id uuid not null,
    product_id uuid not null,
    product_version integer not null,
    packets_thousandths bigint not null,
    volume_ul bigint not null,
    drawn_ul bigint not null default 0,
    -- As the product had them then; none where nobody knows how long it keeps.
    full_life_s bigint,
    part_life_s bigint,
    made_at timestamptz not null,
    made_by uuid references person (id),
    made_seq bigint not null,
    -- When something was first drawn from it.
    opened_at timestamptz,
    primary key (room_id, id),
    constraint stock_solution_product_fkey
        foreign key (room_id, product_id) references product (room_id, id),
    -- Nobody draws what is not there.
    constraint stock_solution_drawn_check check (drawn_ul between 0 and volume_ul)
);
create index stock_solution_product_idx on stock_solution (room_id, product_id);

-- The stock solution a mix was first made from; none where it was not from stock.
alter table mix
    add column stock_id uuid,
    add constraint mix_stock_fkey
        foreign key (room_id, stock_id) references stock_solution (room_id, id);

alter table stock_solution enable row level security;
create policy stock_solution_room on stock_solution
    using (room_id = (select current_room()))
    with check (room_id = (select current_room()));
