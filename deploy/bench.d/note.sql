-- What the server says to the database for one note that shares its transaction
-- with no other, statement by statement, over the rooms listed in bench_room.
-- The head's row also brings the room's ids here, which the server knows already.
\set r random(1, :rooms)
\startpipeline
begin;
set local role wetside_web;
select set_config('wetside.room', (select room from bench_room where n = :r)::text, true);
\endpipeline
select
    h.seq + 1 as next, encode(h.hash, 'hex') as prev, b.room, b.person, b.line, b.class, b.size, b.mix,
    b.tray, md5(random()::text || clock_timestamp()::text) as key
from bench_room b
join head h on h.room_id = b.room
where b.n = :r
for update of h
\gset
select e.seq, e.actor, e.fingerprint, m.role, n.closed_at is not null
from unnest(array[decode(:key, 'hex')], array[:person::uuid])
    with ordinality as i (key, writer, item)
join room_name n on n.room_id = :room::uuid
left join lateral (
    select seq, actor, fingerprint from entry where room_id = :room::uuid and key = i.key limit 1
) e on true
left join lateral (
    select role
    from membership
    where room_id = :room::uuid and person_id = i.writer and suspended_at is null and ended_at is null
    limit 1
) m on true
order by i.item;
select
    i.item, s.long_tenths_mm, s.short_tenths_mm, c.id, c.carry_over_ul_per_m2,
    c.silver_least_mg_per_m2, c.silver_usual_mg_per_m2, c.silver_most_mg_per_m2,
    c.silver_least_kept_ppb, c.silver_usual_kept_ppb, c.silver_most_kept_ppb,
    exists (
        select from line where room_id = :room::uuid and id = i.line and retired_at is null limit 1
    ),
    r.late_note_minutes, r.second_bath_ppb, r.alkali_meq_per_litre
from unnest(array[:line::uuid], array[:size::uuid], array[:class::uuid])
    with ordinality as i (line, size, class, item)
join room_setting r on r.room_id = :room::uuid
left join lateral (
    select long_tenths_mm, short_tenths_mm
    from sheet_size
    where room_id = :room::uuid and id = i.size and retired_at is null limit 1
) s on true
left join lateral (
    select
        id, carry_over_ul_per_m2, silver_least_mg_per_m2, silver_usual_mg_per_m2,
        silver_most_mg_per_m2, silver_least_kept_ppb, silver_usual_kept_ppb,
        silver_most_kept_ppb
    from paper_class
    where room_id = :room::uuid and id = i.class and retired_at is null
    limit 1
) c on true
order by i.item;
select i.item, m.id, s.tray_id, s.place, p.name, p.kind, m.charged_ul, m.silver_least_ug,
    m.silver_usual_ug, m.silver_most_ug, m.figures, c.sheets_per_litre_thousandths,
    exists (select from mix_capacity where room_id = :room::uuid and mix_id = m.id limit 1)
from unnest(array[:line::uuid], array[:class::uuid], array[now()])
    with ordinality as i (line, class, at, item)
cross join lateral (
    select mix_id, tray_id, place
    from stay
    where room_id = :room::uuid
        and line_id = i.line
        and from_at <= i.at
        and coalesce(until_at, 'infinity') > i.at
    offset 0
) s
cross join lateral (
    select coalesce(poured_into, id) as id from mix where room_id = :room::uuid and id = s.mix_id limit 1
) o
cross join lateral (
    select
        id, product_id, mixed_seq, charged_ul, silver_least_ug, silver_usual_ug, silver_most_ug,
        figures
    from mix
    where room_id = :room::uuid and id = o.id
    limit 1
) m
cross join lateral (
    select position from tray where room_id = :room::uuid and id = s.tray_id limit 1
) t
left join lateral (
    select name, kind from product where room_id = :room::uuid and id = m.product_id limit 1
) p on true
left join lateral (
    select sheets_per_litre_thousandths
    from mix_capacity
    where room_id = :room::uuid and mix_id = m.id and paper_class_id = i.class and place = s.place
    limit 1
) c on true
order by i.item, t.position, m.mixed_seq;
with written as (
    insert into entry (
        room_id, version, seq, prev, hash, kind, actor, key, fingerprint, happened_at,
        recorded_at, payload
    )
    select :room::uuid, 1::smallint, t.*
    from unnest(
        array[:next::bigint], array[decode(:prev, 'hex')], array[sha256(decode(:key, 'hex'))],
        array['noted'], array[:person::uuid], array[decode(:key, 'hex')],
        array[sha256(decode(:prev, 'hex'))], array[now()], array[now()],
        array[convert_to(repeat('n', 480), 'UTF8')]
    ) t
), told as (
    insert into entry_about (room_id, seq, noun, id)
    select :room::uuid, t.*
    from unnest(
        array[:next::bigint, :next::bigint, :next::bigint, :next::bigint, :next::bigint],
        array['line', 'mix', 'pass', 'person', 'tray'],
        array[:line::uuid, :mix::uuid, :key::uuid, :person::uuid, :tray::uuid]
    ) t
)
update head set seq = :next::bigint, hash = sha256(decode(:key, 'hex')), recorded_at = now()
where room_id = :room::uuid;
insert into pass (
    room_id, seq, id, line_id, person_id, paper_class_id, sheet_size_id, sheets, is_film,
    is_estimated, happened_at, reversed_by
)
select :room::uuid, t.*, null
from unnest(
    array[:next::bigint], array[:key::uuid], array[:line::uuid], array[:person::uuid],
    array[:class::uuid], array[:size::uuid], array[1], array[false], array[false], array[now()]
) t;
with worn as (
    insert into wear (room_id, seq, mix_id, spent_nl)
    select :room::uuid, t.*
    from unnest(array[:next::bigint], array[:mix::uuid], array[10000000::bigint]) t
)
update mix set
    spent_nl = mix.spent_nl + t.spent_nl,
    unknown_sheets_at = greatest(mix.unknown_sheets_at, t.uncounted_at),
    silver_least_ug = silver_least_ug + t.least,
    silver_usual_ug = silver_usual_ug + t.usual,
    silver_most_ug = silver_most_ug + t.most,
    bromide_ug = bromide_ug + t.bromide,
    alkali_neq = alkali_neq + t.alkali,
    carried_out_ul = carried_out_ul + t.carried,
    received_ul = received_ul + t.received,
    last_seq = t.seq
from unnest(
    array[:mix::uuid], array[:next::bigint], array[10000000::bigint], array[null::timestamptz],
    array[0::bigint], array[0::bigint], array[0::bigint], array[0::bigint], array[0::bigint],
    array[0::bigint], array[0::bigint]
) as t (
    mix, seq, spent_nl, uncounted_at, least, usual, most, bromide, alkali, carried, received
)
where mix.room_id = :room::uuid and mix.id = t.mix;
commit;
