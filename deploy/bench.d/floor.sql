-- The least that a numbered, keyed line in a book of one's own can cost: two
-- statements in a transaction, without walls, roles, chain or anything made of it.
\set r random(1, :rooms)
\set a random(1, 4611686018427387904)
begin;
update floor_head set seq = seq + 1 where n = :r returning seq \gset
insert into floor_entry (n, seq, key, payload)
values (:r, :seq, :a, convert_to(repeat('n', 480), 'UTF8'));
commit;
