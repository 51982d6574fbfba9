-- Years behind a room, like the day it has had: each day a mix that stood in the
-- tray and was discarded, twenty notes, two readings, five people who came and went,
-- and each month an hour without power. Only for a database of the bench: the entries
-- have no chain and verify would say so. The bench puts the room and the days in.
begin;
create temporary table room on commit drop as
select n.room_id as id, h.seq
from room_name n
join head h on h.room_id = n.room_id
where n.slug = 'SLUG';

create temporary table day on commit drop as
select d.day, gen_random_uuid() as mix, m.id as today, m.mixed_at - d.day * interval '1 day' as at
from generate_series(1, DAYS) as d (day)
cross join (select * from mix where room_id = (select id from room) and tray_id is not null) m;

-- Everything of a past day is what it is today with other ids, numbers and times.
insert into mix
select p.*
from day d
join mix m on m.room_id = (select id from room) and m.id = d.today
cross join lateral jsonb_populate_record(m, jsonb_build_object(
    'id', d.mix, 'mixed_at', d.at, 'age_at', d.at, 'oldest_at', d.at, 'tray_id', null,
    'discarded_at', d.at + interval '10 hours', 'discarded_into', 'Spent developer'
)) p;

insert into mix_capacity
select p.*
from day d
join mix_capacity c on c.room_id = (select id from room) and c.mix_id = d.today
cross join lateral jsonb_populate_record(c, jsonb_build_object('mix_id', d.mix)) p;

insert into stay
select p.*
from day d
join stay s on s.room_id = (select id from room) and s.mix_id = d.today
cross join lateral jsonb_populate_record(s, jsonb_build_object(
    'mix_id', d.mix, 'from_at', d.at, 'until_at', d.at + interval '10 hours'
)) p;

create temporary table past on commit drop as
select
    (select seq from room) + row_number() over (order by d.day desc, t.seq) as seq,
    t.seq as today, d.mix, d.today as today_mix, gen_random_uuid() as id,
    d.at + row_number() over (partition by d.day order by t.seq) * interval '20 minutes' as at
from day d
cross join (select seq from pass where room_id = (select id from room)) t;
create index on past (today);
analyze past;

insert into entry
select p.*
from past x
join entry e on e.room_id = (select id from room) and e.seq = x.today
cross join lateral jsonb_populate_record(e, jsonb_build_object(
    'seq', x.seq, 'key', '\x' || replace(x.id::text, '-', ''),
    'prev', '\x' || encode(sha256(convert_to('prev' || x.seq, 'UTF8')), 'hex'),
    'hash', '\x' || encode(sha256(convert_to('hash' || x.seq, 'UTF8')), 'hex'),
    'happened_at', x.at, 'recorded_at', x.at
)) p;

insert into entry_about
select
    a.room_id, x.seq, a.noun,
    case a.noun when 'mix' then x.mix when 'pass' then x.id else a.id end
from past x
join entry_about a on a.room_id = (select id from room) and a.seq = x.today;

insert into pass
select p.*
from past x
join pass t on t.room_id = (select id from room) and t.seq = x.today
cross join lateral jsonb_populate_record(t, jsonb_build_object(
    'seq', x.seq, 'id', x.id, 'happened_at', x.at
)) p;

insert into wear
select p.*
from past x
join wear w on w.room_id = (select id from room) and w.seq = x.today and w.mix_id = x.today_mix
cross join lateral jsonb_populate_record(w, jsonb_build_object('seq', x.seq, 'mix_id', x.mix)) p;

insert into reading (
    room_id, seq, id, mix_id, kind, outcome, value, sample, is_fresh, spent_nl, contaminants,
    remark, happened_at
)
select
    (select id from room), (select max(seq) from past) + row_number() over (order by d.day desc, k.kind),
    gen_random_uuid(), d.mix, k.kind, 'read', k.value, '', k.is_fresh, 0, '{}', '',
    d.at + interval '1 hour'
from day d
cross join (values ('temperature', 200, false), ('emergence', 12, true)) as k (kind, value, is_fresh);

insert into presence (
    room_id, id, person_id, arrived_at, arrived_seq, over_at, ended_at, ended_seq, is_confirmed
)
select
    (select id from room), gen_random_uuid(), m.person_id, d.at + n.n * interval '1 hour', 1,
    d.at + n.n * interval '1 hour' + interval '12 hours',
    d.at + n.n * interval '1 hour' + interval '3 hours', 1, true
from day d
cross join generate_series(1, 5) as n (n)
cross join (
    select person_id from membership where room_id = (select id from room) limit 1
) m;

insert into outage (room_id, id, what, began_at, began_seq, ended_at, ended_seq)
select
    (select id from room), gen_random_uuid(), 'power', d.at, 1, d.at + interval '1 hour', 1
from day d
where d.day % 30 = 0;

update head set seq = (select max(seq) from reading where room_id = head.room_id)
where room_id = (select id from room);
commit;
analyze;
