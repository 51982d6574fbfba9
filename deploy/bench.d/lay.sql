-- What the two scripts stand on, in a copy of an installation with its rooms.
create table bench_room as
select
    row_number() over (order by s.room_id)::integer as n, s.room_id as room, p.person_id as person,
    s.line_id as line, c.paper_class_id as class, z.id as size, s.mix_id as mix,
    s.tray_id as tray
from stay s
join lateral (
    select person_id from membership m where m.room_id = s.room_id and m.role = 'member' limit 1
) p on true
join lateral (
    select paper_class_id from mix_capacity c where c.room_id = s.room_id and c.mix_id = s.mix_id limit 1
) c on true
join sheet_size z on z.room_id = s.room_id and z.name like '8×10%'
where s.until_at is null;
alter table bench_room add primary key (n);
grant select on bench_room to wetside_web;
create table floor_head (n integer primary key, seq bigint not null);
insert into floor_head select n, 0 from bench_room;
create table floor_entry (
    n integer not null references floor_head (n),
    seq bigint not null,
    key bigint not null,
    payload bytea not null,
    primary key (n, seq),
    unique (n, key)
);
analyze;
