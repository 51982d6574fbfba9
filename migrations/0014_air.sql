-- Room air: what is known of each space, what was measured in it, when it was aired,
-- and where a steward lets baths start without measured exhaust.
--
-- A place is a space of the room, or the room itself by its own id: a room without
-- spaces has air too. So no key leads from here to the spaces.

create table place_air (
    room_id uuid not null references head (room_id),
    place_id uuid not null,
    floor_hundredths_mm2 bigint constraint place_air_floor_check check (floor_hundredths_mm2 > 0),
    height_tenths_mm integer constraint place_air_height_check check (height_tenths_mm > 0),
    -- By how much clearing takes longer than where air mixes perfectly.
    mixing_tenths integer not null
        constraint place_air_mixing_check check (mixing_tenths between 10 and 100),
    rule text not null
        constraint place_air_rule_check check (rule in ('imc_2018', 'ashrae_62_1', 'own')),
    -- The steward's own figure, for all of the place, and where it comes from.
    own_ul_per_s bigint constraint place_air_own_check check (own_ul_per_s > 0),
    basis text not null,
    has_fan boolean not null,
    primary key (room_id, place_id),
    constraint place_air_own_rule_check check ((rule = 'own') = (own_ul_per_s is not null))
);

-- Each measurement stays; one that was mistaken is taken back. What moves while a place
-- is aired through doors and windows is no exhaust.
create table flow_measurement (
    room_id uuid not null references head (room_id),
    seq bigint not null,
    id uuid not null,
    place_id uuid not null,
    what text not null constraint flow_measurement_what_check check (what in ('exhaust', 'airing')),
    ul_per_s bigint not null constraint flow_measurement_flow_check check (ul_per_s >= 0),
    -- A day, not an instant: certificates name no time.
    measured_on date not null,
    measured_by text not null,
    how text not null,
    person_id uuid references person (id),
    undone_by bigint,
    primary key (room_id, seq),
    constraint flow_measurement_id_key unique (room_id, id)
);
create index flow_measurement_place_idx
    on flow_measurement (room_id, place_id, what, measured_on, seq);

-- Where a bath may start without measured exhaust, and who agreed; nobody where that
-- was withdrawn.
create table exhaust_waiver (
    room_id uuid not null references head (room_id),
    place_id uuid not null,
    agreed_by text,
    set_at timestamptz not null,
    set_seq bigint not null,
    primary key (room_id, place_id)
);

create table airing (
    room_id uuid not null references head (room_id),
    id uuid not null,
    place_id uuid not null,
    began_at timestamptz not null,
    began_by uuid references person (id),
    began_seq bigint not null,
    ended_at timestamptz,
    ended_by uuid references person (id),
    ended_seq bigint,
    primary key (room_id, id),
    constraint airing_ended_check
        check ((ended_at is null) = (ended_seq is null) and (ended_at is null or ended_at >= began_at))
);
-- A place is aired once at a time.
create unique index airing_open_key on airing (room_id, place_id) where ended_seq is null;
create index airing_place_idx on airing (room_id, place_id, began_at);

do $$
declare
    walled text;
begin
    foreach walled in array array['place_air', 'flow_measurement', 'exhaust_waiver', 'airing'] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;
