-- What else becomes of a mix: it is topped up, covered, bottled, poured into
-- another, moved up a place, tested, flagged, extended, thrown away by mistake
-- and brought back; liquid that nobody can name is a mix of unknown origin.
alter table mix
    alter column product_id drop not null,
    add column origin text not null default 'mixed' constraint mix_origin_check
        check (origin in ('mixed', 'guessed', 'unknown')),
    add column storage text not null default 'open_tray' constraint mix_storage_check
        check (storage in ('open_tray', 'covered_tray', 'full_bottle', 'part_bottle')),
    add column bottle_id uuid,
    -- What the entry froze of the product, as the entry says it; empty for
    -- entries from before there was such a thing.
    add column figures text not null default '',
    -- When the oldest part of it was mixed.
    add column oldest_at timestamptz,
    add column silver_least_ug bigint not null default 0,
    add column silver_usual_ug bigint not null default 0,
    add column silver_most_ug bigint not null default 0,
    add column bromide_ug bigint not null default 0,
    add column alkali_neq bigint not null default 0,
    add column carried_out_ul bigint not null default 0,
    add column received_ul bigint not null default 0,
    -- How often the mixes of this pair of fixing baths moved up before.
    add column shifts integer not null default 0,
    -- Where its liquid is now, once it was poured into another.
    add column poured_into uuid,
    add constraint mix_bottle_fkey foreign key (room_id, bottle_id) references bottle (room_id, id),
    add constraint mix_one_place_check check (tray_id is null or bottle_id is null);
update mix set oldest_at = mixed_at;
alter table mix alter column oldest_at set not null;
-- One mix stands in a bottle at a time.
create unique index mix_bottle_key on mix (room_id, bottle_id) where bottle_id is not null;

alter table mix_capacity
    add column place text not null default 'single' constraint mix_capacity_place_check
        check (place in ('single', 'first', 'second')),
    drop constraint mix_capacity_pkey,
    add primary key (room_id, mix_id, paper_class_id, place);

-- Which place among fixing baths the tray was then.
alter table stay
    add column place text not null default 'single' constraint stay_place_check
        check (place in ('single', 'first', 'second'));

-- Rolls of film have neither class nor size.
alter table pass
    alter column paper_class_id drop not null,
    alter column sheet_size_id drop not null,
    add column is_film boolean not null default false,
    add column is_estimated boolean not null default false,
    add constraint pass_film_check
        check (is_film = (paper_class_id is null) and is_film = (sheet_size_id is null));

-- What people found of a mix: checks, temperatures, contamination.
create table reading (
    room_id uuid not null,
    seq bigint not null,
    id uuid not null,
    mix_id uuid not null,
    person_id uuid references person (id),
    kind text not null constraint reading_kind_check check (kind in (
        'temperature', 'test_print', 'emergence', 'clearing', 'ph', 'indicator_colour', 'silver',
        'residual_silver', 'residual_thiosulfate', 'contamination'
    )),
    outcome text not null constraint reading_outcome_check
        check (outcome in ('read', 'passed', 'failed')),
    -- Tenths of a degree, seconds, thousandths of pH or mg/l, as the kind says.
    value bigint,
    tenths_celsius integer,
    -- The paper or film it was made with.
    sample text not null,
    is_fresh boolean not null,
    -- Against the fresh reading.
    ratio_thousandths bigint,
    -- What of the mix was spent then.
    spent_nl bigint not null,
    -- What came into it, by group; `unknown` where nobody knows.
    contaminants text[] not null,
    remark text not null,
    happened_at timestamptz not null,
    undone_by bigint,
    primary key (room_id, seq),
    constraint reading_id_key unique (room_id, id),
    constraint reading_mix_fkey foreign key (room_id, mix_id) references mix (room_id, id)
);
create index reading_mix_idx on reading (room_id, mix_id, kind, seq);

-- A steward's word that a mix may be tested and used a little longer.
create table extension (
    room_id uuid not null,
    seq bigint not null,
    id uuid not null,
    mix_id uuid not null,
    person_id uuid references person (id),
    given_at timestamptz not null,
    until_at timestamptz not null,
    clearing_thousandths bigint,
    emergence_thousandths bigint,
    reason text not null,
    primary key (room_id, seq),
    constraint extension_mix_fkey foreign key (room_id, mix_id) references mix (room_id, id)
);
create index extension_mix_idx on extension (room_id, mix_id, seq);

-- A vessel that held household bleach stays out of use until it was rinsed.
create table rinse (
    room_id uuid not null references head (room_id),
    vessel_id uuid not null,
    due_seq bigint not null,
    rinsed_seq bigint,
    primary key (room_id, vessel_id)
);

do $$
declare
    walled text;
begin
    foreach walled in array array['reading', 'extension', 'rinse'] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;
