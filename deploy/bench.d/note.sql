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
    md5(random()::text || clock_timestamp()::text) as key
from bench_room b
join head h on h.room_id = b.room
where b.n = :r
for update of h
\gset
select seq, key, actor, fingerprint
from entry
where room_id = :room::uuid and key = any(array[decode(:key, 'hex')]);
select m.person_id, m.role, n.closed_at is not null
from membership m
join room_name n on n.room_id = m.room_id
where m.room_id = :room::uuid
    and m.person_id = any(array[:person::uuid])
    and m.suspended_at is null
    and m.ended_at is null;
select
    i.item, s.long_tenths_mm, s.short_tenths_mm, c.id, c.carry_over_ul_per_m2,
    c.silver_least_mg_per_m2, c.silver_usual_mg_per_m2, c.silver_most_mg_per_m2,
    c.silver_least_kept_ppb, c.silver_usual_kept_ppb, c.silver_most_kept_ppb,
    exists (
        select from line l
        where l.room_id = :room::uuid and l.id = i.line and l.retired_at is null
    ),
    r.late_note_minutes, r.second_bath_ppb, r.alkali_meq_per_litre
from unnest(array[:line::uuid], array[:size::uuid], array[:class::uuid])
    with ordinality as i (line, size, class, item)
join room_setting r on r.room_id = :room::uuid
left join sheet_size s on s.room_id = :room::uuid and s.id = i.size and s.retired_at is null
left join paper_class c on c.room_id = :room::uuid and c.id = i.class and c.retired_at is null
order by i.item;
select i.item, m.id, s.tray_id, s.place, p.name, p.kind, m.charged_ul, m.silver_least_ug,
    m.silver_usual_ug, m.silver_most_ug, m.figures, c.sheets_per_litre_thousandths,
    exists (
        select from mix_capacity a where a.room_id = :room::uuid and a.mix_id = m.id
    )
from unnest(array[:line::uuid], array[:class::uuid], array[now()])
    with ordinality as i (line, class, at, item)
join stay s on s.room_id = :room::uuid
    and s.line_id = i.line
    and s.from_at <= i.at
    and (s.until_at is null or s.until_at > i.at)
join mix o on o.room_id = :room::uuid and o.id = s.mix_id
join mix m on m.room_id = :room::uuid and m.id = coalesce(o.poured_into, o.id)
join tray t on t.room_id = :room::uuid and t.id = s.tray_id
left join product p on p.room_id = :room::uuid and p.id = m.product_id
left join mix_capacity c on c.room_id = :room::uuid
    and c.mix_id = m.id
    and c.paper_class_id = i.class
    and c.place = s.place
order by i.item, t.position, m.mixed_seq;
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
) t;
insert into entry_about (room_id, seq, noun, id)
select :room::uuid, t.*
from unnest(
    array[:next::bigint, :next::bigint, :next::bigint, :next::bigint],
    array['line', 'mix', 'pass', 'person'],
    array[:line::uuid, :mix::uuid, :key::uuid, :person::uuid]
) t;
insert into pass (
    room_id, seq, id, line_id, person_id, paper_class_id, sheet_size_id, sheets, is_film,
    is_estimated, happened_at, reversed_by
)
select :room::uuid, t.*, null
from unnest(
    array[:next::bigint], array[:key::uuid], array[:line::uuid], array[:person::uuid],
    array[:class::uuid], array[:size::uuid], array[1], array[false], array[false], array[now()]
) t;
insert into wear (room_id, seq, mix_id, spent_nl)
select :room::uuid, t.*
from unnest(array[:next::bigint], array[:mix::uuid], array[10000000::bigint]) t;
update mix set
    spent_nl = mix.spent_nl + worn.spent_nl,
    unknown_sheets_at = greatest(mix.unknown_sheets_at, worn.uncounted_at),
    last_seq = worn.seq
from (
    select
        t.mix, sum(t.nl)::bigint as spent_nl, max(t.seq) as seq, max(t.uncounted_at) as uncounted_at
    from unnest(
        array[:next::bigint], array[:mix::uuid], array[10000000::bigint], array[null::timestamptz]
    ) as t (seq, mix, nl, uncounted_at)
    group by t.mix
) worn
where mix.room_id = :room::uuid and mix.id = worn.mix;
update head set seq = :next::bigint, hash = sha256(decode(:key, 'hex')), recorded_at = now()
where room_id = :room::uuid;
commit;
