-- The whole shelf: kits, powders and what is ready to use; working ranges,
-- covered trays and part-filled bottles, film, silver and acid. Every default
-- is what an entry without the figure meant.

alter table product drop constraint product_kind_check;
alter table product
    add constraint product_kind_check check (
        kind in (
            'developer', 'stop_bath', 'fixer', 'wash_aid', 'toner', 'holding_water'
        )
    ),
    add column form text not null default 'liquid'
        constraint product_form_check check (form in ('liquid', 'kit', 'powder', 'ready_to_use')),
    add column kit_parts_thousandths bigint[] not null default '{}',
    -- A powder: the stock solution a packet makes, and how long that keeps.
    add column packet_makes_ul bigint,
    add column packets_may_be_divided boolean not null default false,
    add column stock_full_life_s bigint,
    add column stock_part_life_s bigint,
    -- The age that no top-up moves.
    add column longest_life_s bigint,
    add column coldest_tenths_celsius integer,
    add column warmest_tenths_celsius integer,
    add column water_warmest_tenths_celsius integer,
    -- The points of the sheet, in the order of its entry: both lists are as long.
    add column time_point_seconds bigint[] not null default '{}',
    add column time_point_tenths_celsius integer[] not null default '{}',
    add column stop_acid text
        constraint product_stop_acid_check check (stop_acid in ('acetic', 'citric')),
    add column limit_ph_thousandths bigint,
    add column bromide_limit_mg_per_litre bigint,
    add column figures_basis text not null default '';

alter table dilution
    -- None: as in an open tray, as in a full bottle.
    add column covered_life_s bigint,
    add column part_bottle_life_s bigint,
    -- None: paper only.
    add column film_rolls_per_litre_thousandths bigint,
    add column acid_mmol_per_litre bigint,
    add column silver_limit_single_mg_per_litre bigint,
    add column silver_limit_first_mg_per_litre bigint,
    add column silver_limit_second_mg_per_litre bigint,
    add column figures_basis text not null default '';

alter table capacity
    add column place text not null default 'single'
        constraint capacity_place_check check (place in ('single', 'first', 'second')),
    drop constraint capacity_pkey,
    add primary key (room_id, dilution_id, paper_class_id, place);

alter table paper_class
    add column silver_least_mg_per_m2 bigint,
    add column silver_usual_mg_per_m2 bigint,
    add column silver_most_mg_per_m2 bigint,
    add column silver_least_kept_ppb bigint,
    add column silver_usual_kept_ppb bigint,
    add column silver_most_kept_ppb bigint,
    add column silver_basis text,
    add column carry_over_ul_per_m2 bigint,
    add constraint paper_class_silver_check check (
        num_nulls(
            silver_least_mg_per_m2, silver_usual_mg_per_m2, silver_most_mg_per_m2,
            silver_least_kept_ppb, silver_usual_kept_ppb, silver_most_kept_ppb, silver_basis
        ) in (0, 7)
    );

alter table room_setting
    add column is_unheated boolean not null default false,
    -- Three shifts and a tenth: from memory.
    add column fixer_shifts integer not null default 3,
    add column second_bath_ppb bigint not null default 100000000,
    add column alkali_meq_per_litre integer,
    add column silver_mg_per_roll bigint,
    add column film_kept_ppb bigint;
