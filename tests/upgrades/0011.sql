SET statement_timeout = 0;
SET lock_timeout = 0;
SET idle_in_transaction_session_timeout = 0;
SET client_encoding = 'UTF8';
SET standard_conforming_strings = on;
SELECT pg_catalog.set_config('search_path', '', false);
SET check_function_bodies = false;
SET xmloption = content;
SET client_min_messages = warning;
SET row_security = off;
CREATE FUNCTION public.current_person() RETURNS uuid
    LANGUAGE sql STABLE
    AS $$ select nullif(current_setting('wetside.person', true), '')::uuid $$;
CREATE FUNCTION public.current_room() RETURNS uuid
    LANGUAGE sql STABLE
    AS $$ select nullif(current_setting('wetside.room', true), '')::uuid $$;
CREATE FUNCTION public.refuse_change() RETURNS trigger
    LANGUAGE plpgsql
    AS $$ begin raise exception 'the book is append-only: % on %', tg_op, tg_table_name; end $$;
SET default_tablespace = '';
SET default_table_access_method = heap;
CREATE TABLE public._sqlx_migrations (
    version bigint NOT NULL,
    description text NOT NULL,
    installed_on timestamp with time zone DEFAULT now() NOT NULL,
    success boolean NOT NULL,
    checksum bytea NOT NULL,
    execution_time bigint NOT NULL
);
CREATE TABLE public.bottle (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    name text NOT NULL,
    holds_ul bigint NOT NULL,
    retired_at timestamp with time zone,
    CONSTRAINT bottle_holds_check CHECK ((holds_ul > 0))
);
CREATE TABLE public.capacity (
    room_id uuid NOT NULL,
    dilution_id uuid NOT NULL,
    paper_class_id uuid NOT NULL,
    sheets_per_litre_thousandths bigint NOT NULL,
    basis text NOT NULL,
    place text DEFAULT 'single'::text NOT NULL,
    CONSTRAINT capacity_place_check CHECK ((place = ANY (ARRAY['single'::text, 'first'::text, 'second'::text])))
);
CREATE TABLE public.delivery (
    room_id uuid NOT NULL,
    notice_id uuid NOT NULL,
    channel text NOT NULL,
    state text NOT NULL,
    tries integer NOT NULL
);
CREATE TABLE public.dilution (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    product_id uuid NOT NULL,
    parts_thousandths bigint NOT NULL,
    tray_life_s bigint NOT NULL,
    bottle_life_s bigint NOT NULL,
    life_basis text NOT NULL,
    "position" integer NOT NULL,
    covered_life_s bigint,
    part_bottle_life_s bigint,
    film_rolls_per_litre_thousandths bigint,
    acid_mmol_per_litre bigint,
    silver_limit_single_mg_per_litre bigint,
    silver_limit_first_mg_per_litre bigint,
    silver_limit_second_mg_per_litre bigint,
    figures_basis text DEFAULT ''::text NOT NULL
);
CREATE TABLE public.entry (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    prev bytea NOT NULL,
    hash bytea NOT NULL,
    version smallint NOT NULL,
    kind text NOT NULL,
    actor uuid,
    key bytea,
    fingerprint bytea NOT NULL,
    happened_at timestamp with time zone NOT NULL,
    recorded_at timestamp with time zone NOT NULL,
    payload bytea NOT NULL,
    CONSTRAINT entry_seq_check CHECK ((seq > 0))
);
CREATE TABLE public.entry_about (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    noun text NOT NULL,
    id uuid NOT NULL
);
CREATE TABLE public.extension (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    id uuid NOT NULL,
    mix_id uuid NOT NULL,
    person_id uuid,
    given_at timestamp with time zone NOT NULL,
    until_at timestamp with time zone NOT NULL,
    clearing_thousandths bigint,
    emergence_thousandths bigint,
    reason text NOT NULL
);
CREATE TABLE public.finishing (
    room_id uuid NOT NULL,
    line_id uuid NOT NULL,
    paper_class_id uuid NOT NULL,
    fix_s bigint NOT NULL,
    longest_fix_s bigint NOT NULL,
    rinse_s bigint NOT NULL,
    wash_aid_s bigint,
    wash_with_aid_s bigint,
    wash_without_aid_s bigint NOT NULL,
    basis text NOT NULL,
    CONSTRAINT finishing_fix_check CHECK ((fix_s <= longest_fix_s))
);
CREATE TABLE public.fog_test (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    id uuid NOT NULL,
    lamp_id uuid NOT NULL,
    paper_class_id uuid NOT NULL,
    person_id uuid,
    kind text NOT NULL,
    light text NOT NULL,
    distance_tenths_mm integer NOT NULL,
    space_id uuid,
    clean_s bigint,
    fogged_s bigint,
    safe_s bigint,
    again_by date NOT NULL,
    happened_at timestamp with time zone NOT NULL,
    undone_by bigint,
    CONSTRAINT fog_test_safe_check CHECK ((((clean_s IS NULL) = (safe_s IS NULL)) AND (((safe_s * 2) <= fogged_s) IS NOT FALSE))),
    CONSTRAINT fog_test_steps_check CHECK ((((clean_s IS NOT NULL) OR (fogged_s IS NOT NULL)) AND ((clean_s < fogged_s) IS NOT FALSE)))
);
CREATE TABLE public.fog_test_told (
    room_id uuid NOT NULL,
    lamp_id uuid NOT NULL,
    again_by date NOT NULL,
    told_at timestamp with time zone NOT NULL
);
CREATE TABLE public.handover (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    from_person_id uuid NOT NULL,
    to_person_id uuid NOT NULL,
    sheet text NOT NULL,
    opened_at timestamp with time zone NOT NULL,
    opened_seq bigint NOT NULL,
    confirmed_at timestamp with time zone,
    confirmed_seq bigint,
    withdrawn_at timestamp with time zone,
    withdrawn_seq bigint,
    CONSTRAINT handover_one_end_check CHECK (((confirmed_seq IS NULL) OR (withdrawn_seq IS NULL))),
    CONSTRAINT handover_two_people_check CHECK ((from_person_id <> to_person_id))
);
CREATE TABLE public.head (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    hash bytea NOT NULL,
    recorded_at timestamp with time zone NOT NULL
);
CREATE TABLE public.invitation (
    id uuid NOT NULL,
    secret_hash bytea NOT NULL,
    kind text NOT NULL,
    room_id uuid,
    role text,
    person_id uuid,
    made_by uuid,
    made_at timestamp with time zone NOT NULL,
    expires_at timestamp with time zone,
    used_at timestamp with time zone,
    revoked_at timestamp with time zone,
    CONSTRAINT invitation_expires_check CHECK (((expires_at IS NOT NULL) OR (kind = 'set_up'::text))),
    CONSTRAINT invitation_kind_check CHECK ((kind = ANY (ARRAY['set_up'::text, 'join'::text, 'reset'::text])))
);
CREATE TABLE public.known_device (
    secret_hash bytea NOT NULL,
    person_id uuid NOT NULL,
    seen_at timestamp with time zone NOT NULL
);
CREATE TABLE public.lamp (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    name text NOT NULL,
    kind text NOT NULL,
    light text NOT NULL,
    distance_tenths_mm integer NOT NULL,
    space_id uuid,
    test_months integer NOT NULL,
    retired_at timestamp with time zone,
    CONSTRAINT lamp_distance_check CHECK ((distance_tenths_mm > 0)),
    CONSTRAINT lamp_kind_check CHECK ((kind = ANY (ARRAY['safelight'::text, 'screen'::text]))),
    CONSTRAINT lamp_months_check CHECK ((test_months > 0))
);
CREATE TABLE public.line (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    name text NOT NULL,
    "position" integer NOT NULL,
    retired_at timestamp with time zone,
    space_id uuid
);
CREATE TABLE public.membership (
    room_id uuid NOT NULL,
    person_id uuid NOT NULL,
    member_number integer NOT NULL,
    role text NOT NULL,
    joined_at timestamp with time zone NOT NULL,
    suspended_at timestamp with time zone,
    ended_at timestamp with time zone,
    CONSTRAINT membership_role_check CHECK ((role = ANY (ARRAY['member'::text, 'trained'::text, 'steward'::text, 'treasurer'::text])))
);
CREATE TABLE public.migration_turn (
    only_row boolean NOT NULL
);
CREATE TABLE public.mix (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    product_id uuid,
    product_version integer NOT NULL,
    parts_thousandths bigint NOT NULL,
    charged_ul bigint NOT NULL,
    concentrate_ul bigint NOT NULL,
    spent_nl bigint NOT NULL,
    age_ppb bigint NOT NULL,
    age_at timestamp with time zone NOT NULL,
    life_s bigint NOT NULL,
    unknown_sheets_at timestamp with time zone,
    mixed_at timestamp with time zone NOT NULL,
    mixed_by uuid,
    mixed_seq bigint NOT NULL,
    tray_id uuid,
    discarded_at timestamp with time zone,
    discarded_into text,
    last_seq bigint NOT NULL,
    origin text DEFAULT 'mixed'::text NOT NULL,
    storage text DEFAULT 'open_tray'::text NOT NULL,
    bottle_id uuid,
    figures text DEFAULT ''::text NOT NULL,
    oldest_at timestamp with time zone NOT NULL,
    silver_least_ug bigint DEFAULT 0 NOT NULL,
    silver_usual_ug bigint DEFAULT 0 NOT NULL,
    silver_most_ug bigint DEFAULT 0 NOT NULL,
    bromide_ug bigint DEFAULT 0 NOT NULL,
    alkali_neq bigint DEFAULT 0 NOT NULL,
    carried_out_ul bigint DEFAULT 0 NOT NULL,
    received_ul bigint DEFAULT 0 NOT NULL,
    shifts integer DEFAULT 0 NOT NULL,
    poured_into uuid,
    stock_id uuid,
    CONSTRAINT mix_charged_check CHECK ((charged_ul > 0)),
    CONSTRAINT mix_one_place_check CHECK (((tray_id IS NULL) OR (bottle_id IS NULL))),
    CONSTRAINT mix_origin_check CHECK ((origin = ANY (ARRAY['mixed'::text, 'guessed'::text, 'unknown'::text]))),
    CONSTRAINT mix_spent_check CHECK ((spent_nl >= 0)),
    CONSTRAINT mix_storage_check CHECK ((storage = ANY (ARRAY['open_tray'::text, 'covered_tray'::text, 'full_bottle'::text, 'part_bottle'::text])))
);
CREATE TABLE public.mix_capacity (
    room_id uuid NOT NULL,
    mix_id uuid NOT NULL,
    paper_class_id uuid NOT NULL,
    sheets_per_litre_thousandths bigint NOT NULL,
    place text DEFAULT 'single'::text NOT NULL,
    CONSTRAINT mix_capacity_place_check CHECK ((place = ANY (ARRAY['single'::text, 'first'::text, 'second'::text])))
);
CREATE TABLE public.notice (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    person_id uuid NOT NULL,
    kind text NOT NULL,
    parameters text NOT NULL,
    made_at timestamp with time zone NOT NULL,
    read_at timestamp with time zone
);
CREATE TABLE public.outage (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    what text NOT NULL,
    space_id uuid,
    began_at timestamp with time zone NOT NULL,
    began_by uuid,
    began_seq bigint NOT NULL,
    ended_at timestamp with time zone,
    ended_by uuid,
    ended_seq bigint,
    CONSTRAINT outage_ended_check CHECK ((((ended_at IS NULL) = (ended_seq IS NULL)) AND ((ended_at IS NULL) OR (ended_at >= began_at)))),
    CONSTRAINT outage_what_check CHECK ((what = ANY (ARRAY['power'::text, 'fan'::text])))
);
CREATE TABLE public.pairing (
    secret_hash bytea NOT NULL,
    code_hash bytea,
    shown_at timestamp with time zone NOT NULL,
    room_id uuid,
    screen_id uuid,
    last_seen_at timestamp with time zone NOT NULL,
    CONSTRAINT pairing_state_check CHECK ((((room_id IS NULL) = (screen_id IS NULL)) AND ((code_hash IS NULL) = (screen_id IS NOT NULL))))
);
CREATE TABLE public.paper_class (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    name text NOT NULL,
    "position" integer NOT NULL,
    retired_at timestamp with time zone,
    silver_least_mg_per_m2 bigint,
    silver_usual_mg_per_m2 bigint,
    silver_most_mg_per_m2 bigint,
    silver_least_kept_ppb bigint,
    silver_usual_kept_ppb bigint,
    silver_most_kept_ppb bigint,
    silver_basis text,
    carry_over_ul_per_m2 bigint,
    CONSTRAINT paper_class_silver_check CHECK ((num_nulls(silver_least_mg_per_m2, silver_usual_mg_per_m2, silver_most_mg_per_m2, silver_least_kept_ppb, silver_usual_kept_ppb, silver_most_kept_ppb, silver_basis) = ANY (ARRAY[0, 7])))
);
CREATE TABLE public.pass (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    id uuid NOT NULL,
    line_id uuid NOT NULL,
    person_id uuid NOT NULL,
    paper_class_id uuid,
    sheet_size_id uuid,
    sheets integer NOT NULL,
    happened_at timestamp with time zone NOT NULL,
    reversed_by bigint,
    is_film boolean DEFAULT false NOT NULL,
    is_estimated boolean DEFAULT false NOT NULL,
    CONSTRAINT pass_film_check CHECK (((is_film = (paper_class_id IS NULL)) AND (is_film = (sheet_size_id IS NULL)))),
    CONSTRAINT pass_sheets_check CHECK ((sheets > 0))
);
CREATE TABLE public.person (
    id uuid NOT NULL,
    name text NOT NULL,
    log_in_name text NOT NULL,
    password_hash text NOT NULL,
    is_operator boolean DEFAULT false NOT NULL,
    created_at timestamp with time zone NOT NULL,
    suspended_at timestamp with time zone,
    reset_seen_at timestamp with time zone,
    CONSTRAINT person_name_check CHECK (((length(name) >= 1) AND (length(name) <= 80)))
);
CREATE TABLE public.pin (
    room_id uuid NOT NULL,
    person_id uuid NOT NULL,
    hash text NOT NULL,
    set_at timestamp with time zone NOT NULL
);
CREATE TABLE public.presence (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    person_id uuid NOT NULL,
    arrived_at timestamp with time zone NOT NULL,
    arrived_seq bigint NOT NULL,
    over_at timestamp with time zone NOT NULL,
    ended_at timestamp with time zone,
    ended_seq bigint,
    is_confirmed boolean NOT NULL,
    CONSTRAINT presence_ended_check CHECK ((((ended_at IS NULL) = (ended_seq IS NULL)) AND ((ended_at IS NULL) OR (ended_at >= arrived_at)) AND ((ended_at IS NOT NULL) OR (NOT is_confirmed)))),
    CONSTRAINT presence_over_check CHECK ((over_at > arrived_at))
);
CREATE TABLE public.product (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    version integer NOT NULL,
    name text NOT NULL,
    kind text NOT NULL,
    groups text[] NOT NULL,
    oxidises boolean NOT NULL,
    depth_reference_tenths_mm integer NOT NULL,
    steward_only boolean NOT NULL,
    hazard_codes text[] NOT NULL,
    precaution_codes text[] NOT NULL,
    data_sheet_on date,
    retired_at timestamp with time zone,
    form text DEFAULT 'liquid'::text NOT NULL,
    kit_parts_thousandths bigint[] DEFAULT '{}'::bigint[] NOT NULL,
    packet_makes_ul bigint,
    packets_may_be_divided boolean DEFAULT false NOT NULL,
    stock_full_life_s bigint,
    stock_part_life_s bigint,
    longest_life_s bigint,
    coldest_tenths_celsius integer,
    warmest_tenths_celsius integer,
    water_warmest_tenths_celsius integer,
    time_point_seconds bigint[] DEFAULT '{}'::bigint[] NOT NULL,
    time_point_tenths_celsius integer[] DEFAULT '{}'::integer[] NOT NULL,
    stop_acid text,
    limit_ph_thousandths bigint,
    bromide_limit_mg_per_litre bigint,
    figures_basis text DEFAULT ''::text NOT NULL,
    CONSTRAINT product_form_check CHECK ((form = ANY (ARRAY['liquid'::text, 'kit'::text, 'powder'::text, 'ready_to_use'::text]))),
    CONSTRAINT product_kind_check CHECK ((kind = ANY (ARRAY['developer'::text, 'stop_bath'::text, 'fixer'::text, 'wash_aid'::text, 'toner'::text, 'holding_water'::text]))),
    CONSTRAINT product_stop_acid_check CHECK ((stop_acid = ANY (ARRAY['acetic'::text, 'citric'::text])))
);
CREATE TABLE public.reading (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    id uuid NOT NULL,
    mix_id uuid NOT NULL,
    person_id uuid,
    kind text NOT NULL,
    outcome text NOT NULL,
    value bigint,
    tenths_celsius integer,
    sample text NOT NULL,
    is_fresh boolean NOT NULL,
    ratio_thousandths bigint,
    spent_nl bigint NOT NULL,
    contaminants text[] NOT NULL,
    remark text NOT NULL,
    happened_at timestamp with time zone NOT NULL,
    undone_by bigint,
    CONSTRAINT reading_kind_check CHECK ((kind = ANY (ARRAY['temperature'::text, 'test_print'::text, 'emergence'::text, 'clearing'::text, 'ph'::text, 'indicator_colour'::text, 'silver'::text, 'residual_silver'::text, 'residual_thiosulfate'::text, 'contamination'::text]))),
    CONSTRAINT reading_outcome_check CHECK ((outcome = ANY (ARRAY['read'::text, 'passed'::text, 'failed'::text])))
);
CREATE TABLE public.rinse (
    room_id uuid NOT NULL,
    vessel_id uuid NOT NULL,
    due_seq bigint NOT NULL,
    rinsed_seq bigint
);
CREATE TABLE public.room_name (
    room_id uuid NOT NULL,
    slug text NOT NULL,
    name text NOT NULL,
    is_demo boolean DEFAULT false NOT NULL,
    closed_at timestamp with time zone
);
CREATE TABLE public.room_setting (
    room_id uuid NOT NULL,
    name text NOT NULL,
    zone text NOT NULL,
    currency text NOT NULL,
    units text NOT NULL,
    decimal_mark text NOT NULL,
    opens integer[] NOT NULL,
    closes integer[] NOT NULL,
    people_limit integer NOT NULL,
    test_first_ppb bigint NOT NULL,
    late_note_minutes integer NOT NULL,
    hazard_rules text NOT NULL,
    emergency_number text NOT NULL,
    poison_centre text NOT NULL,
    address text NOT NULL,
    contacts text NOT NULL,
    eyewash text NOT NULL,
    data_sheets text NOT NULL,
    seq bigint NOT NULL,
    is_unheated boolean DEFAULT false NOT NULL,
    fixer_shifts integer DEFAULT 3 NOT NULL,
    second_bath_ppb bigint DEFAULT 100000000 NOT NULL,
    alkali_meq_per_litre integer,
    silver_mg_per_roll bigint,
    film_kept_ppb bigint,
    CONSTRAINT room_setting_decimal_mark_check CHECK ((decimal_mark = ANY (ARRAY['.'::text, ','::text]))),
    CONSTRAINT room_setting_hazard_rules_check CHECK ((hazard_rules = ANY (ARRAY['clp'::text, 'north_american'::text]))),
    CONSTRAINT room_setting_units_check CHECK ((units = ANY (ARRAY['metric'::text, 'inch'::text])))
);
CREATE TABLE public.screen (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    kind text NOT NULL,
    name text NOT NULL,
    display text NOT NULL,
    paired_at timestamp with time zone NOT NULL,
    paired_by uuid,
    paired_seq bigint NOT NULL,
    ended_at timestamp with time zone,
    ended_seq bigint,
    CONSTRAINT screen_display_check CHECK ((display = ANY (ARRAY['day'::text, 'dim'::text, 'safelight'::text]))),
    CONSTRAINT screen_ended_check CHECK (((ended_at IS NULL) = (ended_seq IS NULL))),
    CONSTRAINT screen_kind_check CHECK ((kind = ANY (ARRAY['board'::text, 'door'::text])))
);
CREATE TABLE public.session (
    secret_hash bytea NOT NULL,
    id uuid NOT NULL,
    person_id uuid NOT NULL,
    agent text NOT NULL,
    created_at timestamp with time zone NOT NULL,
    last_seen_at timestamp with time zone NOT NULL,
    expires_at timestamp with time zone NOT NULL
);
CREATE TABLE public.sheet_size (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    name text NOT NULL,
    long_tenths_mm integer NOT NULL,
    short_tenths_mm integer NOT NULL,
    "position" integer NOT NULL,
    retired_at timestamp with time zone,
    CONSTRAINT sheet_size_sides_check CHECK (((long_tenths_mm >= short_tenths_mm) AND (short_tenths_mm > 0)))
);
CREATE TABLE public.space (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    name text NOT NULL,
    "position" integer NOT NULL,
    retired_at timestamp with time zone
);
CREATE TABLE public.stay (
    room_id uuid NOT NULL,
    mix_id uuid NOT NULL,
    tray_id uuid NOT NULL,
    line_id uuid NOT NULL,
    from_at timestamp with time zone NOT NULL,
    until_at timestamp with time zone,
    place text DEFAULT 'single'::text NOT NULL,
    CONSTRAINT stay_place_check CHECK ((place = ANY (ARRAY['single'::text, 'first'::text, 'second'::text])))
);
CREATE TABLE public.stock_solution (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    product_id uuid NOT NULL,
    product_version integer NOT NULL,
    packets_thousandths bigint NOT NULL,
    volume_ul bigint NOT NULL,
    drawn_ul bigint DEFAULT 0 NOT NULL,
    full_life_s bigint,
    part_life_s bigint,
    made_at timestamp with time zone NOT NULL,
    made_by uuid,
    made_seq bigint NOT NULL,
    opened_at timestamp with time zone,
    CONSTRAINT stock_solution_drawn_check CHECK (((drawn_ul >= 0) AND (drawn_ul <= volume_ul)))
);
CREATE TABLE public.throttle (
    scope text NOT NULL,
    subject bytea NOT NULL,
    tries integer NOT NULL,
    window_ends_at timestamp with time zone NOT NULL
);
CREATE TABLE public.token (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    person_id uuid NOT NULL,
    name text NOT NULL,
    secret_hash bytea NOT NULL,
    scopes text[] NOT NULL,
    made_at timestamp with time zone NOT NULL,
    expires_at timestamp with time zone NOT NULL,
    last_used_at timestamp with time zone,
    revoked_at timestamp with time zone
);
CREATE TABLE public.tray (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    line_id uuid NOT NULL,
    name text NOT NULL,
    "position" integer NOT NULL,
    inside_long_tenths_mm integer NOT NULL,
    inside_short_tenths_mm integer NOT NULL,
    inside_depth_tenths_mm integer NOT NULL,
    least_depth_tenths_mm integer NOT NULL,
    retired_at timestamp with time zone,
    step text DEFAULT 'any'::text NOT NULL,
    CONSTRAINT tray_step_check CHECK ((step = ANY (ARRAY['any'::text, 'developer'::text, 'stop_bath'::text, 'fixer'::text, 'first_fixer'::text, 'second_fixer'::text, 'holding_water'::text, 'wash_aid'::text, 'toner'::text, 'wash'::text])))
);
CREATE TABLE public.verification (
    room_id uuid NOT NULL,
    at timestamp with time zone NOT NULL,
    entries bigint NOT NULL,
    sealed_seq bigint,
    findings bigint NOT NULL
);
CREATE TABLE public.wash (
    room_id uuid NOT NULL,
    line_id uuid NOT NULL,
    first_joined_at timestamp with time zone NOT NULL,
    last_joined_at timestamp with time zone NOT NULL,
    paper_class_id uuid NOT NULL,
    wash_s bigint NOT NULL,
    last_seq bigint NOT NULL,
    CONSTRAINT wash_time_check CHECK ((wash_s > 0))
);
CREATE TABLE public.wear (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    mix_id uuid NOT NULL,
    spent_nl bigint NOT NULL
);
CREATE TABLE public.work (
    room_id uuid NOT NULL,
    kind text NOT NULL,
    due_at timestamp with time zone NOT NULL,
    attempts integer DEFAULT 0 NOT NULL,
    lease_until timestamp with time zone
);
INSERT INTO public._sqlx_migrations VALUES (1, 'spine', '2026-11-26 17:32:16.689801+00', true, '\x84c32b94e05831a5ce25afc8584483edda787d69cd40988d5c84e198abfa9794c8f97abeea09bb5cac39ff5471239ed6', 65146550);
INSERT INTO public._sqlx_migrations VALUES (2, 'verification', '2026-11-26 17:32:16.756867+00', true, '\x2b1f7c9c474ed7e7ec74846825b23a9445740b41802c9ae269726c98339dc9faa521b256ba5af419093e2d226ffa4d43', 5449523);
INSERT INTO public._sqlx_migrations VALUES (3, 'bench', '2026-11-26 17:32:16.763044+00', true, '\x6cb8875096755c0cfc1fcab3665aec30c953f9156f3f4e11e379d99d127207d177b1dff577bae141ccfa9fbeb5386a12', 11784615);
INSERT INTO public._sqlx_migrations VALUES (4, 'chemistry', '2026-11-26 17:32:16.775275+00', true, '\x9999f1c9113f0b97ab636d99dfb2d7c7fc0fdee7c575dc46151ae7d3873bb5a9bd494611371587a608a5b195797b61ae', 7738750);
INSERT INTO public._sqlx_migrations VALUES (5, 'mixes', '2026-11-26 17:32:16.783574+00', true, '\xd24857ab5757b3efbb4fcf241c04a945215d47b321bd3728a069ec684d986fc931bc755cc0bcaefa7472617f220c5df2', 22317120);
INSERT INTO public._sqlx_migrations VALUES (6, 'outages', '2026-11-26 17:32:16.806921+00', true, '\x2676e5baaac2dd5593691d53d6aa121c9406b0d9c9b01aebe0f484dc3da5a9b7cb28525105060be6c67a948fb62d33f9', 16765284);
INSERT INTO public._sqlx_migrations VALUES (7, 'stock solutions', '2026-11-26 17:32:16.823503+00', true, '\x0186ef63a78c5a07aab58c9b08b90532d3218396c52ddb289d28a9b6b473373cc00974de91ef128d8fe47bb100cdbcb2', 8475336);
INSERT INTO public._sqlx_migrations VALUES (8, 'presence', '2026-11-26 17:32:16.832205+00', true, '\xbd5b47314915dfec77e5e4fa9342b6aea04f7cef9d1e7c9bfb2bfc65e16a9a68fa943c2eef50509bee0cc31d05ae2a41', 2806905);
INSERT INTO public._sqlx_migrations VALUES (9, 'long history', '2026-11-26 17:32:16.835207+00', true, '\xdef787b9be80d475a323c3222543956530abe099b77067fed98919c24279304f0406fc971c25ae24c7937797562f7ac8', 2326523);
INSERT INTO public._sqlx_migrations VALUES (10, 'lamps', '2026-11-26 17:32:16.837684+00', true, '\xbe2929cd6cca5da573a26a4753cdf019dfcb62d1dd06b43c59960ed3e5f003d15ed1f5cebb1f384fc73bc870f33f669b', 13096675);
INSERT INTO public._sqlx_migrations VALUES (11, 'screens', '2026-11-26 17:32:16.854307+00', true, '\xc4d0ee731800b4e8ebbe8000ea01f4301fa969e0961e989aa541790c4e79c6ec6455d154218a0692537da6f81c19d535', 10771584);
INSERT INTO public.bottle VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-743a-8d70-23df3994431d', 'Green, two litres', 2000000, NULL);
INSERT INTO public.bottle VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-764f-8c38-a69fec99f338', 'Brown, two litres', 2000000, NULL);
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-74fc-b2d3-b3a7350cd521', '01a21293-b600-7fd6-8462-543cf5de1bcf', 100000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-74fc-b2d3-b3a7350cd521', '01a21293-b600-7310-99f8-a65265db6ddc', 50000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-74fc-b2d3-b3a7350cd521', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 50000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7a64-a12a-dfe51ac41fdd', '01a21293-b600-7fd6-8462-543cf5de1bcf', 70000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7a64-a12a-dfe51ac41fdd', '01a21293-b600-7310-99f8-a65265db6ddc', 40000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-75e8-8acf-54748e6ef4ec', '01a21293-b600-7fd6-8462-543cf5de1bcf', 80000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-75e8-8acf-54748e6ef4ec', '01a21293-b600-7310-99f8-a65265db6ddc', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-75e8-8acf-54748e6ef4ec', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 80000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7977-bcfa-9cbf79c6155b', '01a21293-b600-7fd6-8462-543cf5de1bcf', 70000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7977-bcfa-9cbf79c6155b', '01a21293-b600-7310-99f8-a65265db6ddc', 35000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7977-bcfa-9cbf79c6155b', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 70000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71df-a192-42ab47d2a23c', '01a21293-b600-7fd6-8462-543cf5de1bcf', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71df-a192-42ab47d2a23c', '01a21293-b600-7310-99f8-a65265db6ddc', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71df-a192-42ab47d2a23c', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71df-a192-42ab47d2a23c', '01a21293-b600-7fd6-8462-543cf5de1bcf', 80000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71df-a192-42ab47d2a23c', '01a21293-b600-7310-99f8-a65265db6ddc', 40000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71df-a192-42ab47d2a23c', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 80000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71df-a192-42ab47d2a23c', '01a21293-b600-7fd6-8462-543cf5de1bcf', 80000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71df-a192-42ab47d2a23c', '01a21293-b600-7310-99f8-a65265db6ddc', 40000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71df-a192-42ab47d2a23c', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 80000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73b8-a697-411702596b22', '01a21293-b600-7fd6-8462-543cf5de1bcf', 40000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73b8-a697-411702596b22', '01a21293-b600-7310-99f8-a65265db6ddc', 20000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73b8-a697-411702596b22', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 40000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73b8-a697-411702596b22', '01a21293-b600-7fd6-8462-543cf5de1bcf', 40000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73b8-a697-411702596b22', '01a21293-b600-7310-99f8-a65265db6ddc', 20000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73b8-a697-411702596b22', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 40000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f3d-8214-84a778fc5b1c', '01a21293-b600-7fd6-8462-543cf5de1bcf', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f3d-8214-84a778fc5b1c', '01a21293-b600-7310-99f8-a65265db6ddc', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f3d-8214-84a778fc5b1c', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7752-b73c-6a83bb04ba84', '01a21293-b600-7310-99f8-a65265db6ddc', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d55-9ece-b6af4f04ba1a', '01a21293-b600-7fd6-8462-543cf5de1bcf', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d55-9ece-b6af4f04ba1a', '01a21293-b600-7310-99f8-a65265db6ddc', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d55-9ece-b6af4f04ba1a', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-772c-9be1-cea6ad7099a2', '01a21293-b600-7fd6-8462-543cf5de1bcf', 10000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-772c-9be1-cea6ad7099a2', '01a21293-b600-7310-99f8-a65265db6ddc', 10000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-772c-9be1-cea6ad7099a2', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 10000, 'from memory', 'single');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-74fc-b2d3-b3a7350cd521', '01a21293-b600-702d-b55b-403e68dee0d7', 9000, 28800, 86400, 'common practice, no source', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7a64-a12a-dfe51ac41fdd', '01a21293-b600-702d-b55b-403e68dee0d7', 14000, 28800, 86400, 'common practice, no source', 2, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-75e8-8acf-54748e6ef4ec', '01a21293-b600-7c8c-8968-5311ee081a59', 19000, 86400, 2592000, 'from memory', 1, NULL, NULL, NULL, 250, NULL, NULL, NULL, 'common practice, no source');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7977-bcfa-9cbf79c6155b', '01a21293-b600-7dbc-a185-69ffb62028f4', 19000, 86400, 2592000, 'from memory', 1, NULL, NULL, NULL, 78, NULL, NULL, NULL, 'from memory');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71df-a192-42ab47d2a23c', '01a21293-b600-7b58-8279-2cc8e1af3443', 4000, 172800, 2592000, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, 2000, NULL, 'from memory');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73b8-a697-411702596b22', '01a21293-b600-7b58-8279-2cc8e1af3443', 9000, 172800, 2592000, 'from memory', 2, NULL, NULL, NULL, NULL, NULL, 2000, NULL, 'from memory');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f3d-8214-84a778fc5b1c', '01a21293-b600-73e9-8218-b83173d10f4b', 0, 14400, 14400, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7752-b73c-6a83bb04ba84', '01a21293-b600-7245-813d-f0f838d6a602', 9000, 86400, 604800, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d55-9ece-b6af4f04ba1a', '01a21293-b600-7acc-93fe-085468b45c30', 9000, 86400, 15552000, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-772c-9be1-cea6ad7099a2', '01a21293-b600-7acc-93fe-085468b45c30', 19000, 86400, 15552000, 'from memory', 2, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 1, '\x0000000000000000000000000000000000000000000000000000000000000000', '\x96d56feef5cc47d9966420246a7ff0925178670a17df8a282cd7af4c518e2484', 1, 'room_opened', '00000000-0000-0000-0000-000000000052', NULL, '\xb7ee7e07b888efe1e81bee3fc69aca05002ef230882195f45e50cd1b9daf94f8', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22736c7567223a226f757273222c2273657474696e6773223a7b226e616d65223a224f757273222c227a6f6e65223a224575726f70652f4265726c696e222c2263757272656e6379223a22455552222c22756e697473223a226d6574726963222c22646563696d616c5f6d61726b223a222e222c22686f757273223a5b7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d5d2c2270656f706c655f6c696d6974223a31302c22746573745f66697273745f707062223a3830303030303030302c226c6174655f6e6f74655f6d696e75746573223a31303038302c2268617a6172645f72756c6573223a22636c70222c22656d657267656e6379223a7b226e756d626572223a22222c22706f69736f6e5f63656e747265223a22222c2261646472657373223a22222c22636f6e7461637473223a22222c2265796577617368223a22222c22646174615f736865657473223a22227d2c2269735f756e686561746564223a66616c73652c2266697865725f736869667473223a332c227365636f6e645f626174685f707062223a3130303030303030302c22616c6b616c695f6d65715f7065725f6c69747265223a6e756c6c2c2273696c7665725f6d675f7065725f726f6c6c223a6e756c6c2c2266696c6d5f6b6570745f707062223a6e756c6c7d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 2, '\x96d56feef5cc47d9966420246a7ff0925178670a17df8a282cd7af4c518e2484', '\x272b0948763d2684544125cf468bac118cce8895eef6198ceef10285620c5693', 1, 'joined', '00000000-0000-0000-0000-000000000052', NULL, '\xb7ee7e07b888efe1e81bee3fc69aca05002ef230882195f45e50cd1b9daf94f8', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22706572736f6e223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c22726f6c65223a2273746577617264222c226d656d6265725f6e756d626572223a312c22696e7669746174696f6e223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 3, '\x272b0948763d2684544125cf468bac118cce8895eef6198ceef10285620c5693', '\x6395d624902db69e8fb63fc3f3ad11d343fab0347a674bbaf818ef9e5cd7dcb0', 1, 'joined', '00000000-0000-0000-0000-000000000052', '\x00000000000000000000000000000003', '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22706572736f6e223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22726f6c65223a226d656d626572222c226d656d6265725f6e756d626572223a322c22696e7669746174696f6e223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 4, '\x6395d624902db69e8fb63fc3f3ad11d343fab0347a674bbaf818ef9e5cd7dcb0', '\x6b92fc444096aba4b4f056429f15950925e9befae8e6aa376d1c0c07a39fcb80', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373963392d386664342d666336316435386265656139222c226e616d65223a2235c3973720696e222c226c6f6e675f74656e7468735f6d6d223a313737382c2273686f72745f74656e7468735f6d6d223a313237302c22706f736974696f6e223a312c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 5, '\x6b92fc444096aba4b4f056429f15950925e9befae8e6aa376d1c0c07a39fcb80', '\x26436d73601072a5ba41eb412e2b1c7192c4e2e79db135dd296a586650a8738d', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376237642d613936352d616434616334646138366661222c226e616d65223a2238c397313020696e222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22706f736974696f6e223a322c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 6, '\x26436d73601072a5ba41eb412e2b1c7192c4e2e79db135dd296a586650a8738d', '\x9d4edadd9f9586ad916fda1bfcf831c5d6fb32d47d5c228157dcedb268e85d12', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373935372d613338302d643462343038636466656466222c226e616d65223a22392e35c397313220696e20283234c39733302e3520636d29222c226c6f6e675f74656e7468735f6d6d223a333034382c2273686f72745f74656e7468735f6d6d223a323431332c22706f736974696f6e223a332c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 7, '\x9d4edadd9f9586ad916fda1bfcf831c5d6fb32d47d5c228157dcedb268e85d12', '\x771fbcb449db5455ad62b1104529d862194ba327ee23306c24976d887f2f4f37', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376331622d616638302d303062353963613063303832222c226e616d65223a223131c397313420696e222c226c6f6e675f74656e7468735f6d6d223a333535362c2273686f72745f74656e7468735f6d6d223a323739342c22706f736974696f6e223a342c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 8, '\x771fbcb449db5455ad62b1104529d862194ba327ee23306c24976d887f2f4f37', '\xa453c7da4c2a45e809eaa130ea200c338ad061cec001620c9f8a6a6ac5e8b098', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373439612d623931632d326661643066366464383661222c226e616d65223a223132c397313620696e222c226c6f6e675f74656e7468735f6d6d223a343036342c2273686f72745f74656e7468735f6d6d223a333034382c22706f736974696f6e223a352c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 9, '\xa453c7da4c2a45e809eaa130ea200c338ad061cec001620c9f8a6a6ac5e8b098', '\xcd56b3d59c4cc336a51e5bb25ff84058fad49ab8b78a5ee0cb8407ea85dfb5e0', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373836302d623331312d346264313130626236376136222c226e616d65223a223136c397323020696e222c226c6f6e675f74656e7468735f6d6d223a353038302c2273686f72745f74656e7468735f6d6d223a343036342c22706f736974696f6e223a362c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 10, '\xcd56b3d59c4cc336a51e5bb25ff84058fad49ab8b78a5ee0cb8407ea85dfb5e0', '\xebd2264a6c773a0886316b4335486589cb0d6c97a7c50c43b60bfd030a5eadef', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373739362d613866632d353033316438363034363666222c226e616d65223a224135222c226c6f6e675f74656e7468735f6d6d223a323130302c2273686f72745f74656e7468735f6d6d223a313438302c22706f736974696f6e223a372c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 11, '\xebd2264a6c773a0886316b4335486589cb0d6c97a7c50c43b60bfd030a5eadef', '\x71c9273b0b18a845bf215fcc9ed6ce9e3bc755d46a72d0f2ae8cc2594d71d900', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373665392d383030392d323331363535653934623738222c226e616d65223a224134222c226c6f6e675f74656e7468735f6d6d223a323937302c2273686f72745f74656e7468735f6d6d223a323130302c22706f736974696f6e223a382c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 12, '\x71c9273b0b18a845bf215fcc9ed6ce9e3bc755d46a72d0f2ae8cc2594d71d900', '\xe9d84ca20cb68a15e23a0255caefd788520f8514682863bf4b2be024a3d19d1f', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376632302d393561642d643266396465316437663539222c226e616d65223a224133222c226c6f6e675f74656e7468735f6d6d223a343230302c2273686f72745f74656e7468735f6d6d223a323937302c22706f736974696f6e223a392c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 13, '\xe9d84ca20cb68a15e23a0255caefd788520f8514682863bf4b2be024a3d19d1f', '\xba3280da5f949601d872ee230aad8ca32aece20c05adf58565d3af749fbc902e', 1, 'paper_class_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c226e616d65223a225243222c22706f736974696f6e223a312c2269735f72657469726564223a66616c73652c2273696c766572223a6e756c6c2c2263617272795f6f7665725f756c5f7065725f6d32223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 14, '\xba3280da5f949601d872ee230aad8ca32aece20c05adf58565d3af749fbc902e', '\xd066a128820e97c50ff1d22e8bb8c3f9bb191a6d1a288cc60e9c3f2040db3f51', 1, 'paper_class_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c226e616d65223a224642222c22706f736974696f6e223a322c2269735f72657469726564223a66616c73652c2273696c766572223a6e756c6c2c2263617272795f6f7665725f756c5f7065725f6d32223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 15, '\xd066a128820e97c50ff1d22e8bb8c3f9bb191a6d1a288cc60e9c3f2040db3f51', '\xd177b042b47fec75618b0bc66e318ad83908f9e768e9cc5b0c64cd113c7db673', 1, 'paper_class_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c226e616d65223a2252432c20636f6f6c20746f6e65222c22706f736974696f6e223a332c2269735f72657469726564223a66616c73652c2273696c766572223a6e756c6c2c2263617272795f6f7665725f756c5f7065725f6d32223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 16, '\xd177b042b47fec75618b0bc66e318ad83908f9e768e9cc5b0c64cd113c7db673', '\x09a7356a120af7aeb1fe6def3b0e1348860ce6d0be3cd7c140d9f848f92c40a1', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373032642d623535622d343033653638646565306437222c2276657273696f6e223a312c226e616d65223a224e65757472616c20706170657220646576656c6f706572222c226b696e64223a22646576656c6f706572222c2267726f757073223a5b22646576656c6f706572222c22616c6b616c69222c2273756c66697465222c226f7267616e6963225d2c226f78696469736573223a747275652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a3138302c227761726d6573745f74656e7468735f63656c73697573223a3232302c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d373466632d623264332d623361373335306364353231222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a32383830302c22626f74746c655f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d5d7d2c7b226964223a2230316132313239332d623630302d376136342d613132612d646665353161633431666464222c2270617274735f74686f7573616e64746873223a31343030302c22747261795f6c6966655f73223a32383830302c22626f74746c655f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d5d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 34, '\x7dc7f84019f1d391d3c8ee10774856bc0bcfbd2ea823bce337248dd36f83f651', '\xf44bf6b2bc3869d1ae46cc4dcdb3eaec8cfa7655d3fb1a3df72251c3518b6a4c', 1, 'stored', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d373433622d393733632d376565303939623237623066222c2266726f6d223a7b22747261795f6964223a2230316132313239332d623630302d373363632d616435302d643638396262363638396138222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65227d2c22746f223a7b22747261795f6964223a6e756c6c2c226c696e655f6964223a6e756c6c2c22626f74746c655f6964223a2230316132313239332d623630302d373433612d386437302d323364663339393434333164222c22706c616365223a2273696e676c65227d2c2273746f72616765223a2266756c6c5f626f74746c65222c226c6966655f73223a38363430307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 35, '\xf44bf6b2bc3869d1ae46cc4dcdb3eaec8cfa7655d3fb1a3df72251c3518b6a4c', '\x310077192cead425dae108b139d560098a5facf12b3c7cb79fa4b1d3c2f3934a', 1, 'topped_up', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132313239332d623630302d373032642d623535622d343033653638646565306437222c2270726f647563745f76657273696f6e223a312c22766f6c756d655f756c223a3130303030302c22636f6e63656e74726174655f756c223a31303030302c2273746f636b5f6964223a6e756c6c2c226c6966655f73223a32383830307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 17, '\x09a7356a120af7aeb1fe6def3b0e1348860ce6d0be3cd7c140d9f848f92c40a1', '\xfdfb67349bf8aa32fcfefe632f9cc9d6706e99a2146a5b02b78a9dcb890b3232', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376338632d383936382d353331316565303831613539222c2276657273696f6e223a312c226e616d65223a224163657469632073746f702062617468222c226b696e64223a2273746f705f62617468222c2267726f757073223a5b2261636964222c2273746f705f62617468222c226f7267616e6963225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a22616365746963222c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d373565382d386163662d353437343865366566346563222c2270617274735f74686f7573616e64746873223a31393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a3235302c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 18, '\xfdfb67349bf8aa32fcfefe632f9cc9d6706e99a2146a5b02b78a9dcb890b3232', '\x5452d2912bd48360b622e5e49f2cce5c29b6eb254bac8f182c1e212cdb614fd1', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376462632d613138352d363966666236323032386634222c2276657273696f6e223a312c226e616d65223a224369747269632073746f702062617468222c226b696e64223a2273746f705f62617468222c2267726f757073223a5b2261636964222c2273746f705f62617468222c226f7267616e6963225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a22636974726963222c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d373937372d626366612d396362663739633631353562222c2270617274735f74686f7573616e64746873223a31393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a37382c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a33353030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 19, '\x5452d2912bd48360b622e5e49f2cce5c29b6eb254bac8f182c1e212cdb614fd1', '\x237c9659dd22f6db642f9469ad52744aade568517251be727286e33540b45cc2', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376235382d383237392d326363386531616633343433222c2276657273696f6e223a312c226e616d65223a22416d6d6f6e69756d207261706964206669786572222c226b696e64223a226669786572222c2267726f757073223a5b226669786572222c227468696f73756c66617465222c22616d6d6f6e69756d222c2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d373164662d613139322d343261623437643261323363222c2270617274735f74686f7573616e64746873223a343030302c22747261795f6c6966655f73223a3137323830302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a323030302c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d2c7b226964223a2230316132313239332d623630302d373362382d613639372d343131373032353936623232222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a3137323830302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a323030302c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 20, '\x237c9659dd22f6db642f9469ad52744aade568517251be727286e33540b45cc2', '\x51940db818c1cb133e0a7a95489870b336514713ba36a9b6cae269bf4576adef', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373365392d383231382d623833313733643130663462222c2276657273696f6e223a312c226e616d65223a22486f6c64696e67207761746572222c226b696e64223a22686f6c64696e675f7761746572222c2267726f757073223a5b226669786572222c227468696f73756c66617465222c22616d6d6f6e69756d222c2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a2272656164795f746f5f757365222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d376633642d383231342d383461373738666335623163222c2270617274735f74686f7573616e64746873223a302c22747261795f6c6966655f73223a31343430302c22626f74746c655f6c6966655f73223a31343430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 21, '\x51940db818c1cb133e0a7a95489870b336514713ba36a9b6cae269bf4576adef', '\x27912c11fc47fffc46869d8c94edb0c09c4c0899251ffb1f6ff98da420c21ce9', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373234352d383133642d663066383338643661363032222c2276657273696f6e223a312c226e616d65223a225761736820616964222c226b696e64223a22776173685f616964222c2267726f757073223a5b2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d373735322d623733632d366138336262303462613834222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a3630343830302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 69, '\xce564d303e855c03cdcfd4aac321e697c0e82d6c681b6322732624968cef3581', '\x4be5751d8168c5961437e97706a0eb21d0f62f2aee2e0eefc4b5393d3cce0bae', 1, 'screen_ended', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2273637265656e5f6964223a2230316132313239332d623630302d373635652d393732612d396332326636653537326662227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 22, '\x27912c11fc47fffc46869d8c94edb0c09c4c0899251ffb1f6ff98da420c21ce9', '\xc10e4de41b2cc6575b8fc79973d8baa9b132e780b8ef26e4beab11b8eb67b8e6', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376163632d393366652d303835343638623435633330222c2276657273696f6e223a312c226e616d65223a2253656c656e69756d2d7479706520746f6e6572222c226b696e64223a22746f6e6572222c2267726f757073223a5b227468696f73756c66617465222c22616d6d6f6e69756d222c2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a747275652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d376435352d396563652d623661663466303462613161222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a31353535323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d2c7b226964223a2230316132313239332d623630302d373732632d396265312d636561366164373039396132222c2270617274735f74686f7573616e64746873223a31393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a31353535323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a31303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a31303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a31303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 23, '\xc10e4de41b2cc6575b8fc79973d8baa9b132e780b8ef26e4beab11b8eb67b8e6', '\xa197066ec9348da998fd0cbe8a712321f51178399f76e0e9435e37a49fce0e34', 1, 'line_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c226e616d65223a224c696e65222c22706f736974696f6e223a312c2273706163655f6964223a6e756c6c2c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 24, '\xa197066ec9348da998fd0cbe8a712321f51178399f76e0e9435e37a49fce0e34', '\x02e09b74ee30e47b264b602bb5b1f475357ced02a23525bfa9de9e4b29a905cc', 1, 'tray_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c226e616d65223a22547261792031222c22706f736974696f6e223a312c2273746570223a22616e79222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333530302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3730302c226c656173745f64657074685f74656e7468735f6d6d223a38302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 25, '\x02e09b74ee30e47b264b602bb5b1f475357ced02a23525bfa9de9e4b29a905cc', '\x573657556c39775c323886bbfbb6c9201f7be1047fea95b652ec2f405fc56254', 1, 'mixed', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132313239332d623630302d373032642d623535622d343033653638646565306437222c2270726f647563745f76657273696f6e223a312c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a323030303030302c22636f6e63656e74726174655f756c223a3230303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 26, '\x573657556c39775c323886bbfbb6c9201f7be1047fea95b652ec2f405fc56254', '\x15eea9a048f998ace3841efa5cff84a7fa4b5d06544ea683c9c27328a6f37de9', 1, 'tray_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373363632d616435302d643638396262363638396138222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c226e616d65223a22547261792032222c22706f736974696f6e223a322c2273746570223a22616e79222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333530302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3730302c226c656173745f64657074685f74656e7468735f6d6d223a38302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 27, '\x15eea9a048f998ace3841efa5cff84a7fa4b5d06544ea683c9c27328a6f37de9', '\x8e8c61c47e2768c805818ccb4358be94a7b9e486348daaa74157d7252740b59e', 1, 'mixed', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d373433622d393733632d376565303939623237623066222c22747261795f6964223a2230316132313239332d623630302d373363632d616435302d643638396262363638396138222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132313239332d623630302d373032642d623535622d343033653638646565306437222c2270726f647563745f76657273696f6e223a312c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a323030303030302c22636f6e63656e74726174655f756c223a3230303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 28, '\x8e8c61c47e2768c805818ccb4358be94a7b9e486348daaa74157d7252740b59e', '\x8960b905e7cb80912626a20d7b6b8f614ee290c3b8447d4fe0571e2d9833ddc7', 1, 'noted', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22706173735f6964223a2230316132313239332d623630302d373732612d383737662d623837636137323732663939222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c2273686565745f73697a655f6964223a2230316132313239332d623630302d376237642d613936352d616434616334646138366661222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a362c2277656172223a5b7b226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d2c7b226d69785f6964223a2230316132313239332d623630302d373433622d393733632d376565303939623237623066222c22747261795f6964223a2230316132313239332d623630302d373363632d616435302d643638396262363638396138222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 29, '\x8960b905e7cb80912626a20d7b6b8f614ee290c3b8447d4fe0571e2d9833ddc7', '\xc8055cb8263f962459519233ea2e53edc425d30884cc3b9e54ad57d98b488a7c', 1, 'noted', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22706173735f6964223a2230316132313239332d623630302d376464332d623465642d653135346331646130313837222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c2273686565745f73697a655f6964223a2230316132313239332d623630302d376237642d613936352d616434616334646138366661222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a362c2277656172223a5b7b226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d2c7b226d69785f6964223a2230316132313239332d623630302d373433622d393733632d376565303939623237623066222c22747261795f6964223a2230316132313239332d623630302d373363632d616435302d643638396262363638396138222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 30, '\xc8055cb8263f962459519233ea2e53edc425d30884cc3b9e54ad57d98b488a7c', '\x2d273ac9aef2812a11dfb077bb1bb30b6c7720cf602cc6a4da34fc93ca634bc4', 1, 'note_undone', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22706173735f6964223a2230316132313239332d623630302d373732612d383737662d623837636137323732663939222c22706173735f736571223a32382c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c2277656172223a5b7b226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d2c7b226d69785f6964223a2230316132313239332d623630302d373433622d393733632d376565303939623237623066222c22747261795f6964223a2230316132313239332d623630302d373363632d616435302d643638396262363638396138222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d5d2c22726561736f6e223a22436f756e746564207477696365227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 31, '\x2d273ac9aef2812a11dfb077bb1bb30b6c7720cf602cc6a4da34fc93ca634bc4', '\xa5187e9800ee9fe01860592fdc79d2ccc63885f6ccf507bd7251a97d7078c302', 1, 'discarded', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226d69785f6964223a2230316132313239332d623630302d373433622d393733632d376565303939623237623066222c22747261795f6964223a2230316132313239332d623630302d373363632d616435302d643638396262363638396138222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c22766f6c756d655f756c223a323030303030302c2264657374696e6174696f6e223a22636f6c6c6563746564222c22636f6e7461696e6572223a2247726579206472756d222c22776879223a227370656e74227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 32, '\xa5187e9800ee9fe01860592fdc79d2ccc63885f6ccf507bd7251a97d7078c302', '\xc6494d685d919a42e18a8dc6df4902204cada0940c617a7672a4aaba4cd57620', 1, 'bottle_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373433612d386437302d323364663339393434333164222c226e616d65223a22477265656e2c2074776f206c6974726573222c22686f6c64735f756c223a323030303030302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 33, '\xc6494d685d919a42e18a8dc6df4902204cada0940c617a7672a4aaba4cd57620', '\x7dc7f84019f1d391d3c8ee10774856bc0bcfbd2ea823bce337248dd36f83f651', 1, 'discard_undone', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226d69785f6964223a2230316132313239332d623630302d373433622d393733632d376565303939623237623066222c22646973636172645f736571223a312c22747261795f6964223a2230316132313239332d623630302d373363632d616435302d643638396262363638396138222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c22726561736f6e223a225468652077726f6e672074726179227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 36, '\x310077192cead425dae108b139d560098a5facf12b3c7cb79fa4b1d3c2f3934a', '\x1b38e172611c6a0f72aeee0f3795edeab3bc8c0df9586178e37df9508c3d7cc6', 1, 'film_noted', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22706173735f6964223a2230316132313239332d623630302d373535642d383565612d323539373661373832373765222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22726f6c6c73223a322c2277656172223a5b7b226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c227370656e745f6e6c223a3130303030303030302c2262726f75676874223a7b2273696c7665725f7567223a5b312c322c335d2c2262726f6d6964655f7567223a342c22616c6b616c695f6e6571223a352c22636172726965645f6f75745f756c223a362c2272656365697665645f756c223a377d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 37, '\x1b38e172611c6a0f72aeee0f3795edeab3bc8c0df9586178e37df9508c3d7cc6', '\x499e7c1f6b22ebdf15b3581cd9d14496cbbe996eaf851d758c82e020462d8946', 1, 'reading', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c2272656164696e675f6964223a2230316132313239332d623630302d376137372d623662392d343062383062643463393261222c226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c226b696e64223a22656d657267656e6365222c226f7574636f6d65223a22706173736564222c2276616c7565223a32352c2274656e7468735f63656c73697573223a3230302c2273616d706c65223a225468696e2063617264222c2269735f6672657368223a747275652c22726174696f5f74686f7573616e64746873223a313130302c2266726573685f72656164696e675f6964223a6e756c6c2c227370656e745f6e6c223a302c22636f6e74616d696e616e74223a6e756c6c2c2272656d61726b223a22227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 38, '\x499e7c1f6b22ebdf15b3581cd9d14496cbbe996eaf851d758c82e020462d8946', '\x09947d0e70fcacf52860f39c3be08f519ef99ee353f355ef4110a69f7f2869d0', 1, 'reading', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c2272656164696e675f6964223a2230316132313239332d623630302d376663332d386537662d643739386538386264373830222c226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c226b696e64223a22636f6e74616d696e6174696f6e222c226f7574636f6d65223a226661696c6564222c2276616c7565223a6e756c6c2c2274656e7468735f63656c73697573223a6e756c6c2c2273616d706c65223a22222c2269735f6672657368223a66616c73652c22726174696f5f74686f7573616e64746873223a6e756c6c2c2266726573685f72656164696e675f6964223a6e756c6c2c227370656e745f6e6c223a302c22636f6e74616d696e616e74223a7b2267726f757073223a5b226879706f63686c6f72697465225d7d2c2272656d61726b223a2253706c6173686564227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 39, '\x09947d0e70fcacf52860f39c3be08f519ef99ee353f355ef4110a69f7f2869d0', '\xe4af194b0581fe05cad5246b6400b30dc13f7fe21e342e86fd4b79fd3d6d9924', 1, 'reading', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c2272656164696e675f6964223a2230316132313239332d623630302d376239612d613563342d396238623130356138396435222c226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c226b696e64223a22746573745f7072696e74222c226f7574636f6d65223a226661696c6564222c2276616c7565223a6e756c6c2c2274656e7468735f63656c73697573223a6e756c6c2c2273616d706c65223a22222c2269735f6672657368223a66616c73652c22726174696f5f74686f7573616e64746873223a6e756c6c2c2266726573685f72656164696e675f6964223a6e756c6c2c227370656e745f6e6c223a302c22636f6e74616d696e616e74223a6e756c6c2c2272656d61726b223a22227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 40, '\xe4af194b0581fe05cad5246b6400b30dc13f7fe21e342e86fd4b79fd3d6d9924', '\x2fad5892c0f54773bfc37d363e4023dc7fdb064e3857a076356088f61d26b05c', 1, 'reading_undone', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272656164696e675f6964223a2230316132313239332d623630302d376239612d613563342d396238623130356138396435222c2272656164696e675f736571223a33392c226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c22726561736f6e223a2257726f6e67207061706572227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 41, '\x2fad5892c0f54773bfc37d363e4023dc7fdb064e3857a076356088f61d26b05c', '\x159d7d57e604e342e058cf7a4459a88390aaf18b42cab5f3fce97c2e6b05c580', 1, 'extended', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22657874656e73696f6e5f6964223a2230316132313239332d623630302d376663392d613838342d356565356536313636383963222c226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c22676976656e5f7573223a313030303030302c22756e74696c5f7573223a333630313030303030302c22636c656172696e675f74686f7573616e64746873223a313130302c22656d657267656e63655f74686f7573616e64746873223a313230302c22726561736f6e223a224f6e65206d6f7265206576656e696e67227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 42, '\x159d7d57e604e342e058cf7a4459a88390aaf18b42cab5f3fce97c2e6b05c580', '\xc8b39ef8777ad6669e4e190979c9c5f9c45decf1d047d8820fa4a2754396e4a6', 1, 'poured_together', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c22706f757265645f6d69785f6964223a2230316132313239332d623630302d373433622d393733632d376565303939623237623066222c22706f757265645f66726f6d223a7b22747261795f6964223a6e756c6c2c226c696e655f6964223a6e756c6c2c22626f74746c655f6964223a2230316132313239332d623630302d373433612d386437302d323364663339393434333164222c22706c616365223a2273696e676c65227d2c22766f6c756d655f756c223a323030303030302c22706f757265645f7370656e745f6e6c223a36303030303030302c22706f757265645f6167655f707062223a302c226c6966655f73223a32383830307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 43, '\xc8b39ef8777ad6669e4e190979c9c5f9c45decf1d047d8820fa4a2754396e4a6', '\x9b8d77510480b200389faaf414f7a1171357a8696830cd4633244ad8b87e71c1', 1, 'unknown_found', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d373463382d383531642d643931646464306538633037222c22747261795f6964223a6e756c6c2c226c696e655f6964223a6e756c6c2c22626f74746c655f6964223a2230316132313239332d623630302d373433612d386437302d323364663339393434333164222c22706c616365223a2273696e676c65222c2273746f72616765223a22706172745f626f74746c65222c22636861726765645f756c223a3530303030302c2272656d61726b223a2242726f776e2c206e6f206c6162656c227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 44, '\x9b8d77510480b200389faaf414f7a1171357a8696830cd4633244ad8b87e71c1', '\xef3f4c59d3efee780f3c373684cb02d7926f7942a34962edc0841449005b6929', 1, 'tray_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376661632d623037662d343039373961346534376130222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c226e616d65223a22547261792033222c22706f736974696f6e223a332c2273746570223a22616e79222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333530302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3730302c226c656173745f64657074685f74656e7468735f6d6d223a38302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 45, '\xef3f4c59d3efee780f3c373684cb02d7926f7942a34962edc0841449005b6929', '\x4300e27582caf13ce019b92700fe4cddf94cb4d723c62603609337407ce17efe', 1, 'mixed', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376537312d396139352d343164373463366365383532222c22747261795f6964223a2230316132313239332d623630302d376661632d623037662d343039373961346534376130222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a227365636f6e64222c2270726f647563745f6964223a2230316132313239332d623630302d373032642d623535622d343033653638646565306437222c2270726f647563745f76657273696f6e223a312c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a323030303030302c22636f6e63656e74726174655f756c223a3230303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 46, '\x4300e27582caf13ce019b92700fe4cddf94cb4d723c62603609337407ce17efe', '\xc3390b917e76afedeafc133c7eab0145bf8d54623b96d59378ba1f81dffc1d01', 1, 'shifted', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376537312d396139352d343164373463366365383532222c2266726f6d223a7b22747261795f6964223a2230316132313239332d623630302d376661632d623037662d343039373961346534376130222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a227365636f6e64227d2c22746f223a7b22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a226669727374227d2c2266697273745f6d69785f6964223a2230316132313239332d623630302d376366392d396639332d623834376363623235626137222c22766f6c756d655f756c223a313030303030302c2264657374696e6174696f6e223a22636f6c6c6563746564222c22636f6e7461696e6572223a2247726579206472756d222c226c6966655f73223a32383830302c22736869667473223a317d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 47, '\xc3390b917e76afedeafc133c7eab0145bf8d54623b96d59378ba1f81dffc1d01', '\x1fdf475aca2dccdbc04e48a0e125cb59c75ec007b012148a799dff031326a1a1', 1, 'discarded', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226d69785f6964223a2230316132313239332d623630302d376537312d396139352d343164373463366365383532222c22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a226669727374222c22766f6c756d655f756c223a3930303030302c2264657374696e6174696f6e223a22636f6c6c6563746564222c22636f6e7461696e6572223a22426c7565206472756d222c22776879223a2274657374227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 48, '\x1fdf475aca2dccdbc04e48a0e125cb59c75ec007b012148a799dff031326a1a1', '\x872c4cd2d416ca43ab78e83c5a3cd1c6b63e36eacf86960604e23b666d52a3d7', 1, 'rinsed', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22747261795f6964223a2230316132313239332d623630302d376565342d393032362d383661303761653338373737222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 70, '\x4be5751d8168c5961437e97706a0eb21d0f62f2aee2e0eefc4b5393d3cce0bae', '\x5ebc45ce037e0ff22dcb672793dbe4973935550a9b4b63d8bd71523d5fd86c44', 1, 'pin_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 49, '\x872c4cd2d416ca43ab78e83c5a3cd1c6b63e36eacf86960604e23b666d52a3d7', '\x2dc00dfeb0e4e2928bef1d011e8c782f7c53c3f3de900a1a6112a040aa14a02b', 1, 'tray_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373131622d626539352d393165333033393763643961222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c226e616d65223a22547261792034222c22706f736974696f6e223a342c2273746570223a22616e79222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333530302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3730302c226c656173745f64657074685f74656e7468735f6d6d223a38302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 50, '\x2dc00dfeb0e4e2928bef1d011e8c782f7c53c3f3de900a1a6112a040aa14a02b', '\x777d74bd1f0a16b854bc5b65da288782dcd5115d704f463060d4d912176a6150', 1, 'stock_made', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c2273746f636b5f6964223a2230316132313239332d623630302d376539362d396637372d643333326630306466363537222c2270726f647563745f6964223a2230316132313239332d623630302d373032642d623535622d343033653638646565306437222c2270726f647563745f76657273696f6e223a312c227061636b6574735f74686f7573616e64746873223a323030302c22766f6c756d655f756c223a323030303030302c2266756c6c5f6c6966655f73223a3836343030302c22706172745f6c6966655f73223a38363430307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 51, '\x777d74bd1f0a16b854bc5b65da288782dcd5115d704f463060d4d912176a6150', '\x44a6c1cadb7f41a51e291dad030c733efb9b022b75adcc82109e04da455ecdf1', 1, 'mixed', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d373039392d393164642d343433303037653632396437222c22747261795f6964223a2230316132313239332d623630302d373131622d626539352d393165333033393763643961222c226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132313239332d623630302d373032642d623535622d343033653638646565306437222c2270726f647563745f76657273696f6e223a312c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a323030303030302c22636f6e63656e74726174655f756c223a3230303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373331302d393966382d613635323635646236646463222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d376662332d383565642d376365396538306534663739222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a2230316132313239332d623630302d376539362d396637372d643333326630306466363537222c2266696775726573223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 52, '\x44a6c1cadb7f41a51e291dad030c733efb9b022b75adcc82109e04da455ecdf1', '\x64495720cc41054dafebb980cd96eb66cdbc9b256bde4cf1f839ea6b29214a52', 1, 'space_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376465622d386139652d326133616632663239336437222c226e616d65223a2243656c6c6172222c22706f736974696f6e223a312c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 53, '\x64495720cc41054dafebb980cd96eb66cdbc9b256bde4cf1f839ea6b29214a52', '\x100887f9d8ad6e77346162e0940bc8404f1325747eb87922ef58131183f2dc49', 1, 'bottle_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373634662d386333382d613639666563393966333338222c226e616d65223a2242726f776e2c2074776f206c6974726573222c22686f6c64735f756c223a323030303030302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 54, '\x100887f9d8ad6e77346162e0940bc8404f1325747eb87922ef58131183f2dc49', '\x5a329b6313582d249f43c500b05f66ddcd57ad1a96ad79313439ac4d05f428ad', 1, 'finishing_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c226669785f73223a36302c226c6f6e676573745f6669785f73223a3132302c2272696e73655f73223a33302c22776173685f6169645f73223a3330302c22776173685f776974685f6169645f73223a3630302c22776173685f776974686f75745f6169645f73223a313830302c226261736973223a22696e76656e74656420666f7220746869732074657374227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 55, '\x5a329b6313582d249f43c500b05f66ddcd57ad1a96ad79313439ac4d05f428ad', '\x651456835ec99b7f2e7439551335ec2549b3e9abcd57d5d5b594e775f3868544', 1, 'wash_joined', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c226861645f776173685f616964223a747275652c22776173685f73223a3630307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 56, '\x651456835ec99b7f2e7439551335ec2549b3e9abcd57d5d5b594e775f3868544', '\x3ff983d3527721cd4c3b985b522172029f4d25ae7a766afe340a1664bf932871', 1, 'wash_emptied', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 57, '\x3ff983d3527721cd4c3b985b522172029f4d25ae7a766afe340a1664bf932871', '\x573ebb82ba6e9e7a7a2e696a23afc1f7279c821568e1bde04196bc2123c0244f', 1, 'wash_joined', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226c696e655f6964223a2230316132313239332d623630302d373934372d613466392d346564336461346230656362222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c226861645f776173685f616964223a747275652c22776173685f73223a3630307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 58, '\x573ebb82ba6e9e7a7a2e696a23afc1f7279c821568e1bde04196bc2123c0244f', '\xb0ffeaa41298c51ce175b4a8a38b7f4e390120d1ed0569db0cbc6f636822d51f', 1, 'lamp_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376639312d393762322d383138343335646466366366222c226e616d65223a224120736166656c69676874222c2268616e6773223a7b226b696e64223a22736166656c69676874222c226c69676874223a225265642066696c746572222c2264697374616e63655f74656e7468735f6d6d223a31323030302c2273706163655f6964223a6e756c6c7d2c22746573745f6d6f6e746873223a31322c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 59, '\xb0ffeaa41298c51ce175b4a8a38b7f4e390120d1ed0569db0cbc6f636822d51f', '\x5d9aa92ad7fe9e1b6a7a3bbde4fa33d724c337cfccc85ede4478ff55d8cb5a6a', 1, 'fog_tested', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22666f675f746573745f6964223a2230316132313239332d623630302d373836382d396261642d663061363666313232376138222c226c616d705f6964223a2230316132313239332d623630302d376639312d393762322d383138343335646466366366222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c2268616e6773223a7b226b696e64223a22736166656c69676874222c226c69676874223a225265642066696c746572222c2264697374616e63655f74656e7468735f6d6d223a31323030302c2273706163655f6964223a6e756c6c7d2c22636c65616e5f73223a3234302c22666f676765645f73223a3438302c22736166655f73223a3136392c22616761696e5f6279223a22323032372d31312d3235227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 60, '\x5d9aa92ad7fe9e1b6a7a3bbde4fa33d724c337cfccc85ede4478ff55d8cb5a6a', '\xaa2c9a8e5c476d4f9acb893c13116a9a6b9ca1c40bbbba2305c4fd099aee5107', 1, 'lamp_set', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376364312d613731662d393236346235396465373535222c226e616d65223a22412073637265656e222c2268616e6773223a7b226b696e64223a2273637265656e222c226c69676874223a225265642066696c746572222c2264697374616e63655f74656e7468735f6d6d223a31323030302c2273706163655f6964223a6e756c6c7d2c22746573745f6d6f6e746873223a31322c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 61, '\xaa2c9a8e5c476d4f9acb893c13116a9a6b9ca1c40bbbba2305c4fd099aee5107', '\x7017f81c55fb87f26cb2a37865fb1f1a432b1bb5371d146156c8b1560a5d47d7', 1, 'fog_tested', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22666f675f746573745f6964223a2230316132313239332d623630302d373834652d616162642d353332616538636164643436222c226c616d705f6964223a2230316132313239332d623630302d376364312d613731662d393236346235396465373535222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d376664362d383436322d353433636635646531626366222c2268616e6773223a7b226b696e64223a2273637265656e222c226c69676874223a225265642066696c746572222c2264697374616e63655f74656e7468735f6d6d223a31323030302c2273706163655f6964223a6e756c6c7d2c22636c65616e5f73223a3234302c22666f676765645f73223a3438302c22736166655f73223a3136392c22616761696e5f6279223a22323032372d31312d3235227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 62, '\x7017f81c55fb87f26cb2a37865fb1f1a432b1bb5371d146156c8b1560a5d47d7', '\x026d830ee141543a2828394c3f8269686fd6969e114618f6cc600b1fabf07f13', 1, 'fog_test_taken_back', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22666f675f746573745f6964223a2230316132313239332d623630302d373834652d616162642d353332616538636164643436222c22666f675f746573745f736571223a36312c226c616d705f6964223a2230316132313239332d623630302d376364312d613731662d393236346235396465373535222c22726561736f6e223a22416e6f746865722073637265656e227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 63, '\x026d830ee141543a2828394c3f8269686fd6969e114618f6cc600b1fabf07f13', '\x8b91bf4c82aad55a9c35d84fa357528d7886efb6f7a187b19eab26f649cfdf85', 1, 'outage_began', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226f75746167655f6964223a2230316132313239332d623630302d373232332d626139322d336536646462323733653435222c2277686174223a2266616e222c2273706163655f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 64, '\x8b91bf4c82aad55a9c35d84fa357528d7886efb6f7a187b19eab26f649cfdf85', '\x4b2a687e013cad141c5df0eedc9a6dff8d63af4d3cc5f42fa718f7c1200f610f', 1, 'outage_ended', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226f75746167655f6964223a2230316132313239332d623630302d373232332d626139322d336536646462323733653435222c2277686174223a2266616e222c2273706163655f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 65, '\x4b2a687e013cad141c5df0eedc9a6dff8d63af4d3cc5f42fa718f7c1200f610f', '\x958d6715502e9df31423fd3b11feb0cc29c3650bdb6cfd05191921280f54e6e7', 1, 'outage_began', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226f75746167655f6964223a2230316132313239332d623630302d373639612d623238612d666266643331323965303361222c2277686174223a22706f776572222c2273706163655f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 66, '\x958d6715502e9df31423fd3b11feb0cc29c3650bdb6cfd05191921280f54e6e7', '\x649a531cd3042ac0e6a58407539837cf3eb1ae9d50d1699051a622ee99e79337', 1, 'screen_paired', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2273637265656e5f6964223a2230316132313239332d623630302d376236362d386536302d306634376334613234376362222c226b696e64223a22626f617264222c226e616d65223a2257616c6c222c22646973706c6179223a22736166656c69676874227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 67, '\x649a531cd3042ac0e6a58407539837cf3eb1ae9d50d1699051a622ee99e79337', '\xa54a7c9955b5024bfdbba5f6c895720a43503ec1d02e0d9d691469a0452f2dd7', 1, 'screen_paired', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2273637265656e5f6964223a2230316132313239332d623630302d373635652d393732612d396332326636653537326662222c226b696e64223a22646f6f72222c226e616d65223a22446f6f72222c22646973706c6179223a22736166656c69676874227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 68, '\xa54a7c9955b5024bfdbba5f6c895720a43503ec1d02e0d9d691469a0452f2dd7', '\xce564d303e855c03cdcfd4aac321e697c0e82d6c681b6322732624968cef3581', 1, 'screen_renamed', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2273637265656e5f6964223a2230316132313239332d623630302d373635652d393732612d396332326636653537326662222c226e616d65223a22456e7472616e6365227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 71, '\x5ebc45ce037e0ff22dcb672793dbe4973935550a9b4b63d8bd71523d5fd86c44', '\x7b49e86375644cf006ef0a8190e83ea5946c0d0fd44d5a9a30b28cda3df7b2b7', 1, 'pin_removed', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 72, '\x7b49e86375644cf006ef0a8190e83ea5946c0d0fd44d5a9a30b28cda3df7b2b7', '\xb502a1c8e9d90beb2622781cc70a013d2643935c669a20f09506b123cafa71b1', 1, 'arrived', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d376661342d616439372d386534363333616537383265222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226c6f63616c5f64617465223a22323032362d31312d3235222c226f7665725f61745f7573223a313838323030383030303030303030307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 73, '\xb502a1c8e9d90beb2622781cc70a013d2643935c669a20f09506b123cafa71b1', '\x1623826d92eef24080ba21503fcda2199317275f61378dcc38e8e8b49708ee00', 1, 'left', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d376661342d616439372d386534363333616537383265222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 74, '\x1623826d92eef24080ba21503fcda2199317275f61378dcc38e8e8b49708ee00', '\x8e764ab46de2f2e5778c861fade62acf31e17e154e1836fe09ac496309fa337a', 1, 'arrived', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d373131312d616330392d326231663561306634303166222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226c6f63616c5f64617465223a22323032362d31312d3235222c226f7665725f61745f7573223a313838323030383030303030303030307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 75, '\x8e764ab46de2f2e5778c861fade62acf31e17e154e1836fe09ac496309fa337a', '\xed40931342ceb35f336b72de90c934daf2a2863209b9519e576e06c4b1b7478d', 1, 'not_confirmed_left', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d373131312d616330392d326231663561306634303166222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226c6f63616c5f64617465223a22323032362d31312d3235227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 76, '\xed40931342ceb35f336b72de90c934daf2a2863209b9519e576e06c4b1b7478d', '\x5af42655560d460dd93044178763092e84bf5a958f360a4ca3a623630c73c315', 1, 'arrived', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d373335352d623964302d306335333665633534333265222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c226c6f63616c5f64617465223a22323032362d31312d3235222c226f7665725f61745f7573223a313838323030383030303030303030307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 77, '\x5af42655560d460dd93044178763092e84bf5a958f360a4ca3a623630c73c315', '\xcea3edf553bdce08f4dc1d8bf7481e7cebf082c7785b7d69590101e73910038e', 1, 'handover_opened', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2268616e646f7665725f6964223a2230316132313239332d623630302d376633342d613134342d613931333931313135346231222c2266726f6d5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22746f5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c227061727473223a5b7b2268656164696e67223a224f6666206e6f77222c226c696e6573223a5b2254686520706f7765722e225d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 78, '\xcea3edf553bdce08f4dc1d8bf7481e7cebf082c7785b7d69590101e73910038e', '\xc98eb84e3882fd6944f427700f6e5622b9a09d10c49ca400f9105bfc915d1489', 1, 'handover_withdrawn', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2268616e646f7665725f6964223a2230316132313239332d623630302d376633342d613134342d613931333931313135346231222c2266726f6d5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22746f5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 79, '\xc98eb84e3882fd6944f427700f6e5622b9a09d10c49ca400f9105bfc915d1489', '\x69411a1d5676065b54147ae7dc210586cb825eb662564304ff4f6966d7b60bed', 1, 'handover_opened', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2268616e646f7665725f6964223a2230316132313239332d623630302d373836342d613665302d383865663961613566356339222c2266726f6d5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22746f5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c227061727473223a5b7b2268656164696e67223a224f6666206e6f77222c226c696e6573223a5b2254686520706f7765722e225d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 80, '\x69411a1d5676065b54147ae7dc210586cb825eb662564304ff4f6966d7b60bed', '\x1c37eb0bd594d426c18041f388eb5261684dd4f136a4b75e91e35497246121ad', 1, 'handed_over', '00000000-0000-0000-0000-000000000052', NULL, '\xac8fdae2850f4b0742847e7ec1f688045b9fd8b007e66bdbad97bc75f231dd26', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2268616e646f7665725f6964223a2230316132313239332d623630302d373836342d613665302d383865663961613566356339222c2266726f6d5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22746f5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c2270617274735f736861323536223a2232303066376634633437323366646439356535356264336539303539663337653465316165353334633061323130646433356530383736656136376639333636227d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 2, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 3, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 4, 'sheet_size', '01a21293-b600-79c9-8fd4-fc61d58beea9');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 5, 'sheet_size', '01a21293-b600-7b7d-a965-ad4ac4da86fa');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 6, 'sheet_size', '01a21293-b600-7957-a380-d4b408cdfedf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 7, 'sheet_size', '01a21293-b600-7c1b-af80-00b59ca0c082');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 8, 'sheet_size', '01a21293-b600-749a-b91c-2fad0f6dd86a');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 9, 'sheet_size', '01a21293-b600-7860-b311-4bd110bb67a6');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 10, 'sheet_size', '01a21293-b600-7796-a8fc-5031d860466f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 11, 'sheet_size', '01a21293-b600-76e9-8009-231655e94b78');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 12, 'sheet_size', '01a21293-b600-7f20-95ad-d2f9de1d7f59');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 13, 'paper_class', '01a21293-b600-7fd6-8462-543cf5de1bcf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 14, 'paper_class', '01a21293-b600-7310-99f8-a65265db6ddc');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 15, 'paper_class', '01a21293-b600-7fb3-85ed-7ce9e80e4f79');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 16, 'product', '01a21293-b600-702d-b55b-403e68dee0d7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 17, 'product', '01a21293-b600-7c8c-8968-5311ee081a59');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 18, 'product', '01a21293-b600-7dbc-a185-69ffb62028f4');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 19, 'product', '01a21293-b600-7b58-8279-2cc8e1af3443');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 20, 'product', '01a21293-b600-73e9-8218-b83173d10f4b');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 21, 'product', '01a21293-b600-7245-813d-f0f838d6a602');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 22, 'product', '01a21293-b600-7acc-93fe-085468b45c30');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 23, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 24, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 24, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 25, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 25, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 25, 'product', '01a21293-b600-702d-b55b-403e68dee0d7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 25, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 26, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 26, 'tray', '01a21293-b600-73cc-ad50-d689bb6689a8');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 27, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 27, 'mix', '01a21293-b600-743b-973c-7ee099b27b0f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 27, 'product', '01a21293-b600-702d-b55b-403e68dee0d7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 27, 'tray', '01a21293-b600-73cc-ad50-d689bb6689a8');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'mix', '01a21293-b600-743b-973c-7ee099b27b0f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'pass', '01a21293-b600-772a-877f-b87ca7272f99');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'tray', '01a21293-b600-73cc-ad50-d689bb6689a8');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'mix', '01a21293-b600-743b-973c-7ee099b27b0f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'pass', '01a21293-b600-7dd3-b4ed-e154c1da0187');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'tray', '01a21293-b600-73cc-ad50-d689bb6689a8');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'mix', '01a21293-b600-743b-973c-7ee099b27b0f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'pass', '01a21293-b600-772a-877f-b87ca7272f99');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'tray', '01a21293-b600-73cc-ad50-d689bb6689a8');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 31, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 31, 'mix', '01a21293-b600-743b-973c-7ee099b27b0f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 31, 'tray', '01a21293-b600-73cc-ad50-d689bb6689a8');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 32, 'bottle', '01a21293-b600-743a-8d70-23df3994431d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 33, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 33, 'mix', '01a21293-b600-743b-973c-7ee099b27b0f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 33, 'tray', '01a21293-b600-73cc-ad50-d689bb6689a8');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 34, 'bottle', '01a21293-b600-743a-8d70-23df3994431d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 34, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 34, 'mix', '01a21293-b600-743b-973c-7ee099b27b0f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 34, 'tray', '01a21293-b600-73cc-ad50-d689bb6689a8');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 35, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 35, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 35, 'product', '01a21293-b600-702d-b55b-403e68dee0d7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 35, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 36, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 36, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 36, 'pass', '01a21293-b600-755d-85ea-25976a78277e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 36, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 36, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 37, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 37, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 37, 'reading', '01a21293-b600-7a77-b6b9-40b80bd4c92a');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 37, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 38, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 38, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 38, 'reading', '01a21293-b600-7fc3-8e7f-d798e88bd780');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 38, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 39, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 39, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 39, 'reading', '01a21293-b600-7b9a-a5c4-9b8b105a89d5');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 39, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 40, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 40, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 40, 'reading', '01a21293-b600-7b9a-a5c4-9b8b105a89d5');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 40, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 41, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 41, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 41, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 42, 'bottle', '01a21293-b600-743a-8d70-23df3994431d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 42, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 42, 'mix', '01a21293-b600-743b-973c-7ee099b27b0f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 42, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 42, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 43, 'bottle', '01a21293-b600-743a-8d70-23df3994431d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 43, 'mix', '01a21293-b600-74c8-851d-d91ddd0e8c07');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 44, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 44, 'tray', '01a21293-b600-7fac-b07f-40979a4e47a0');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 45, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 45, 'mix', '01a21293-b600-7e71-9a95-41d74c6ce852');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 45, 'product', '01a21293-b600-702d-b55b-403e68dee0d7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 45, 'tray', '01a21293-b600-7fac-b07f-40979a4e47a0');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 46, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 46, 'mix', '01a21293-b600-7cf9-9f93-b847ccb25ba7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 46, 'mix', '01a21293-b600-7e71-9a95-41d74c6ce852');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 46, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 46, 'tray', '01a21293-b600-7fac-b07f-40979a4e47a0');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 47, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 47, 'mix', '01a21293-b600-7e71-9a95-41d74c6ce852');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 47, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 48, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 48, 'tray', '01a21293-b600-7ee4-9026-86a07ae38777');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 49, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 49, 'tray', '01a21293-b600-711b-be95-91e30397cd9a');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 50, 'product', '01a21293-b600-702d-b55b-403e68dee0d7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 50, 'stock_solution', '01a21293-b600-7e96-9f77-d332f00df657');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 51, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 51, 'mix', '01a21293-b600-7099-91dd-443007e629d7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 51, 'product', '01a21293-b600-702d-b55b-403e68dee0d7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 51, 'stock_solution', '01a21293-b600-7e96-9f77-d332f00df657');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 51, 'tray', '01a21293-b600-711b-be95-91e30397cd9a');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 52, 'space', '01a21293-b600-7deb-8a9e-2a3af2f293d7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 53, 'bottle', '01a21293-b600-764f-8c38-a69fec99f338');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 54, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 54, 'paper_class', '01a21293-b600-7fd6-8462-543cf5de1bcf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 55, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 55, 'paper_class', '01a21293-b600-7fd6-8462-543cf5de1bcf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 56, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 57, 'line', '01a21293-b600-7947-a4f9-4ed3da4b0ecb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 57, 'paper_class', '01a21293-b600-7fd6-8462-543cf5de1bcf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 58, 'lamp', '01a21293-b600-7f91-97b2-818435ddf6cf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 59, 'fog_test', '01a21293-b600-7868-9bad-f0a66f1227a8');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 59, 'lamp', '01a21293-b600-7f91-97b2-818435ddf6cf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 59, 'paper_class', '01a21293-b600-7fd6-8462-543cf5de1bcf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 60, 'lamp', '01a21293-b600-7cd1-a71f-9264b59de755');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 61, 'fog_test', '01a21293-b600-784e-aabd-532ae8cadd46');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 61, 'lamp', '01a21293-b600-7cd1-a71f-9264b59de755');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 61, 'paper_class', '01a21293-b600-7fd6-8462-543cf5de1bcf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 62, 'fog_test', '01a21293-b600-784e-aabd-532ae8cadd46');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 62, 'lamp', '01a21293-b600-7cd1-a71f-9264b59de755');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 63, 'outage', '01a21293-b600-7223-ba92-3e6ddb273e45');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 64, 'outage', '01a21293-b600-7223-ba92-3e6ddb273e45');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 65, 'outage', '01a21293-b600-769a-b28a-fbfd3129e03a');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 66, 'screen', '01a21293-b600-7b66-8e60-0f47c4a247cb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 67, 'screen', '01a21293-b600-765e-972a-9c22f6e572fb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 68, 'screen', '01a21293-b600-765e-972a-9c22f6e572fb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 69, 'screen', '01a21293-b600-765e-972a-9c22f6e572fb');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 70, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 71, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 72, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 72, 'presence', '01a21293-b600-7fa4-ad97-8e4633ae782e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 73, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 73, 'presence', '01a21293-b600-7fa4-ad97-8e4633ae782e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 74, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 74, 'presence', '01a21293-b600-7111-ac09-2b1f5a0f401f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 75, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 75, 'presence', '01a21293-b600-7111-ac09-2b1f5a0f401f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 76, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 76, 'presence', '01a21293-b600-7355-b9d0-0c536ec5432e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 77, 'handover', '01a21293-b600-7f34-a144-a913911154b1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 77, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 77, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 78, 'handover', '01a21293-b600-7f34-a144-a913911154b1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 78, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 78, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 79, 'handover', '01a21293-b600-7864-a6e0-88ef9aa5f5c9');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 79, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 79, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 80, 'handover', '01a21293-b600-7864-a6e0-88ef9aa5f5c9');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 80, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 80, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.extension VALUES ('00000000-0000-0000-0000-000000000051', 41, '01a21293-b600-7fc9-a884-5ee5e616689c', '01a21293-b600-7cf9-9f93-b847ccb25ba7', '00000000-0000-0000-0000-000000000052', '1970-01-01 00:00:01+00', '1970-01-01 01:00:01+00', 1100, 1200, 'One more evening');
INSERT INTO public.finishing VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', '01a21293-b600-7fd6-8462-543cf5de1bcf', 60, 120, 30, 300, 600, 1800, 'invented for this test');
INSERT INTO public.fog_test VALUES ('00000000-0000-0000-0000-000000000051', 59, '01a21293-b600-7868-9bad-f0a66f1227a8', '01a21293-b600-7f91-97b2-818435ddf6cf', '01a21293-b600-7fd6-8462-543cf5de1bcf', '00000000-0000-0000-0000-000000000052', 'safelight', 'Red filter', 12000, NULL, 240, 480, 169, '2027-11-25', '2026-11-25 12:00:00+00', NULL);
INSERT INTO public.fog_test VALUES ('00000000-0000-0000-0000-000000000051', 61, '01a21293-b600-784e-aabd-532ae8cadd46', '01a21293-b600-7cd1-a71f-9264b59de755', '01a21293-b600-7fd6-8462-543cf5de1bcf', '00000000-0000-0000-0000-000000000052', 'screen', 'Red filter', 12000, NULL, 240, 480, 169, '2027-11-25', '2026-11-25 12:00:00+00', 62);
INSERT INTO public.handover VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f34-a144-a913911154b1', '00000000-0000-0000-0000-000000000053', '00000000-0000-0000-0000-000000000052', '[{"heading":"Off now","lines":["The power."]}]', '2026-11-25 12:00:00+00', 77, NULL, NULL, '2026-11-25 12:00:00+00', 78);
INSERT INTO public.handover VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7864-a6e0-88ef9aa5f5c9', '00000000-0000-0000-0000-000000000053', '00000000-0000-0000-0000-000000000052', '[{"heading":"Off now","lines":["The power."]}]', '2026-11-25 12:00:00+00', 79, '2026-11-25 12:00:00+00', 80, NULL, NULL);
INSERT INTO public.head VALUES ('00000000-0000-0000-0000-000000000051', 80, '\x1c37eb0bd594d426c18041f388eb5261684dd4f136a4b75e91e35497246121ad', '2026-11-25 12:00:00+00');
INSERT INTO public.lamp VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f91-97b2-818435ddf6cf', 'A safelight', 'safelight', 'Red filter', 12000, NULL, 12, NULL);
INSERT INTO public.lamp VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7cd1-a71f-9264b59de755', 'A screen', 'screen', 'Red filter', 12000, NULL, 12, NULL);
INSERT INTO public.line VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', 'Line', 1, NULL, NULL);
INSERT INTO public.membership VALUES ('00000000-0000-0000-0000-000000000051', '00000000-0000-0000-0000-000000000052', 1, 'steward', '2026-11-25 12:00:00+00', NULL, NULL);
INSERT INTO public.membership VALUES ('00000000-0000-0000-0000-000000000051', '00000000-0000-0000-0000-000000000053', 2, 'member', '2026-11-25 12:00:00+00', NULL, NULL);
INSERT INTO public.migration_turn VALUES (true);
INSERT INTO public.mix VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-743b-973c-7ee099b27b0f', '01a21293-b600-702d-b55b-403e68dee0d7', 1, 9000, 2000000, 200000, 60000000, 0, '2026-11-25 12:00:00+00', 86400, NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 27, NULL, NULL, NULL, 42, 'mixed', 'full_bottle', NULL, '', '2026-11-25 12:00:00+00', 0, 0, 0, 0, 0, 0, 0, 0, '01a21293-b600-7cf9-9f93-b847ccb25ba7', NULL);
INSERT INTO public.mix VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-74c8-851d-d91ddd0e8c07', NULL, 0, 0, 500000, 0, 0, 0, '2026-11-25 12:00:00+00', 0, NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 43, NULL, NULL, NULL, 43, 'unknown', 'part_bottle', '01a21293-b600-743a-8d70-23df3994431d', '', '2026-11-25 12:00:00+00', 0, 0, 0, 0, 0, 0, 0, 0, NULL, NULL);
INSERT INTO public.mix VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7cf9-9f93-b847ccb25ba7', '01a21293-b600-702d-b55b-403e68dee0d7', 1, 9000, 4100000, 410000, 220000000, 0, '2026-11-25 12:00:00+00', 28800, NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 25, NULL, '2026-11-25 12:00:00+00', 'Grey drum', 46, 'mixed', 'open_tray', NULL, '', '2026-11-25 12:00:00+00', 1, 2, 3, 4, 5, 6, 7, 0, NULL, NULL);
INSERT INTO public.mix VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7e71-9a95-41d74c6ce852', '01a21293-b600-702d-b55b-403e68dee0d7', 1, 9000, 2000000, 200000, 0, 0, '2026-11-25 12:00:00+00', 28800, NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 45, NULL, '2026-11-25 12:00:00+00', 'Blue drum', 47, 'mixed', 'open_tray', NULL, '', '2026-11-25 12:00:00+00', 0, 0, 0, 0, 0, 0, 0, 1, NULL, NULL);
INSERT INTO public.mix VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7099-91dd-443007e629d7', '01a21293-b600-702d-b55b-403e68dee0d7', 1, 9000, 2000000, 200000, 0, 0, '2026-11-25 12:00:00+00', 28800, NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 51, '01a21293-b600-711b-be95-91e30397cd9a', NULL, NULL, 51, 'mixed', 'open_tray', NULL, '', '2026-11-25 12:00:00+00', 0, 0, 0, 0, 0, 0, 0, 0, NULL, '01a21293-b600-7e96-9f77-d332f00df657');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-743b-973c-7ee099b27b0f', '01a21293-b600-7fd6-8462-543cf5de1bcf', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-743b-973c-7ee099b27b0f', '01a21293-b600-7310-99f8-a65265db6ddc', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-743b-973c-7ee099b27b0f', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7cf9-9f93-b847ccb25ba7', '01a21293-b600-7310-99f8-a65265db6ddc', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7cf9-9f93-b847ccb25ba7', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7cf9-9f93-b847ccb25ba7', '01a21293-b600-7fd6-8462-543cf5de1bcf', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7e71-9a95-41d74c6ce852', '01a21293-b600-7fd6-8462-543cf5de1bcf', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7e71-9a95-41d74c6ce852', '01a21293-b600-7310-99f8-a65265db6ddc', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7e71-9a95-41d74c6ce852', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7099-91dd-443007e629d7', '01a21293-b600-7fd6-8462-543cf5de1bcf', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7099-91dd-443007e629d7', '01a21293-b600-7310-99f8-a65265db6ddc', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7099-91dd-443007e629d7', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 50000, 'single');
INSERT INTO public.outage VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7223-ba92-3e6ddb273e45', 'fan', NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 63, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 64);
INSERT INTO public.outage VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-769a-b28a-fbfd3129e03a', 'power', NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 65, NULL, NULL, NULL);
INSERT INTO public.paper_class VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7fd6-8462-543cf5de1bcf', 'RC', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL);
INSERT INTO public.paper_class VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7310-99f8-a65265db6ddc', 'FB', 2, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL);
INSERT INTO public.paper_class VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7fb3-85ed-7ce9e80e4f79', 'RC, cool tone', 3, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL);
INSERT INTO public.pass VALUES ('00000000-0000-0000-0000-000000000051', 29, '01a21293-b600-7dd3-b4ed-e154c1da0187', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', '00000000-0000-0000-0000-000000000053', '01a21293-b600-7fd6-8462-543cf5de1bcf', '01a21293-b600-7b7d-a965-ad4ac4da86fa', 6, '2026-11-25 12:00:00+00', NULL, false, false);
INSERT INTO public.pass VALUES ('00000000-0000-0000-0000-000000000051', 28, '01a21293-b600-772a-877f-b87ca7272f99', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', '00000000-0000-0000-0000-000000000053', '01a21293-b600-7fd6-8462-543cf5de1bcf', '01a21293-b600-7b7d-a965-ad4ac4da86fa', 6, '2026-11-25 12:00:00+00', 30, false, false);
INSERT INTO public.pass VALUES ('00000000-0000-0000-0000-000000000051', 36, '01a21293-b600-755d-85ea-25976a78277e', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', '00000000-0000-0000-0000-000000000053', NULL, NULL, 2, '2026-11-25 12:00:00+00', NULL, true, false);
INSERT INTO public.person VALUES ('00000000-0000-0000-0000-000000000052', 'Steward', 'steward', '-', false, '2026-11-26 17:32:17.658776+00', NULL, NULL);
INSERT INTO public.person VALUES ('00000000-0000-0000-0000-000000000053', 'Member', 'member', '-', false, '2026-11-26 17:32:17.666934+00', NULL, NULL);
INSERT INTO public.presence VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7fa4-ad97-8e4633ae782e', '00000000-0000-0000-0000-000000000053', '2026-11-25 12:00:00+00', 72, '2029-08-21 12:00:00+00', '2026-11-25 12:00:00+00', 73, true);
INSERT INTO public.presence VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7111-ac09-2b1f5a0f401f', '00000000-0000-0000-0000-000000000053', '2026-11-25 12:00:00+00', 74, '2029-08-21 12:00:00+00', '2026-11-25 12:00:00+00', 75, false);
INSERT INTO public.presence VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7355-b9d0-0c536ec5432e', '00000000-0000-0000-0000-000000000052', '2026-11-25 12:00:00+00', 76, '2029-08-21 12:00:00+00', NULL, NULL, false);
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-702d-b55b-403e68dee0d7', 1, 'Neutral paper developer', 'developer', '{developer,alkali,sulfite,organic}', true, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, 180, 220, NULL, '{}', '{}', NULL, NULL, NULL, 'from memory');
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7c8c-8968-5311ee081a59', 1, 'Acetic stop bath', 'stop_bath', '{acid,stop_bath,organic}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', 'acetic', NULL, NULL, '');
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7dbc-a185-69ffb62028f4', 1, 'Citric stop bath', 'stop_bath', '{acid,stop_bath,organic}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', 'citric', NULL, NULL, '');
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b58-8279-2cc8e1af3443', 1, 'Ammonium rapid fixer', 'fixer', '{fixer,thiosulfate,ammonium,sulfite}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '');
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73e9-8218-b83173d10f4b', 1, 'Holding water', 'holding_water', '{fixer,thiosulfate,ammonium,sulfite}', false, 80, false, '{}', '{}', NULL, NULL, 'ready_to_use', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '');
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7245-813d-f0f838d6a602', 1, 'Wash aid', 'wash_aid', '{sulfite}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '');
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7acc-93fe-085468b45c30', 1, 'Selenium-type toner', 'toner', '{thiosulfate,ammonium,sulfite}', false, 80, true, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '');
INSERT INTO public.reading VALUES ('00000000-0000-0000-0000-000000000051', 37, '01a21293-b600-7a77-b6b9-40b80bd4c92a', '01a21293-b600-7cf9-9f93-b847ccb25ba7', '00000000-0000-0000-0000-000000000052', 'emergence', 'passed', 25, 200, 'Thin card', true, 1100, 0, '{}', '', '2026-11-25 12:00:00+00', NULL);
INSERT INTO public.reading VALUES ('00000000-0000-0000-0000-000000000051', 38, '01a21293-b600-7fc3-8e7f-d798e88bd780', '01a21293-b600-7cf9-9f93-b847ccb25ba7', '00000000-0000-0000-0000-000000000052', 'contamination', 'failed', NULL, NULL, '', false, NULL, 0, '{hypochlorite}', 'Splashed', '2026-11-25 12:00:00+00', NULL);
INSERT INTO public.reading VALUES ('00000000-0000-0000-0000-000000000051', 39, '01a21293-b600-7b9a-a5c4-9b8b105a89d5', '01a21293-b600-7cf9-9f93-b847ccb25ba7', '00000000-0000-0000-0000-000000000052', 'test_print', 'failed', NULL, NULL, '', false, NULL, 0, '{}', '', '2026-11-25 12:00:00+00', 40);
INSERT INTO public.rinse VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ee4-9026-86a07ae38777', 46, 48);
INSERT INTO public.room_name VALUES ('00000000-0000-0000-0000-000000000051', 'ours', 'Ours', false, NULL);
INSERT INTO public.room_setting VALUES ('00000000-0000-0000-0000-000000000051', 'Ours', 'Europe/Berlin', 'EUR', 'metric', '.', '{0,0,0,0,0,0,0}', '{1440,1440,1440,1440,1440,1440,1440}', 10, 800000000, 10080, 'clp', '', '', '', '', '', '', 1, false, 3, 100000000, NULL, NULL, NULL);
INSERT INTO public.screen VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b66-8e60-0f47c4a247cb', 'board', 'Wall', 'safelight', '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 66, NULL, NULL);
INSERT INTO public.screen VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-765e-972a-9c22f6e572fb', 'door', 'Entrance', 'safelight', '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 67, '2026-11-25 12:00:00+00', 69);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-79c9-8fd4-fc61d58beea9', '5×7 in', 1778, 1270, 1, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b7d-a965-ad4ac4da86fa', '8×10 in', 2540, 2032, 2, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7957-a380-d4b408cdfedf', '9.5×12 in (24×30.5 cm)', 3048, 2413, 3, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7c1b-af80-00b59ca0c082', '11×14 in', 3556, 2794, 4, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-749a-b91c-2fad0f6dd86a', '12×16 in', 4064, 3048, 5, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7860-b311-4bd110bb67a6', '16×20 in', 5080, 4064, 6, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7796-a8fc-5031d860466f', 'A5', 2100, 1480, 7, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-76e9-8009-231655e94b78', 'A4', 2970, 2100, 8, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f20-95ad-d2f9de1d7f59', 'A3', 4200, 2970, 9, NULL);
INSERT INTO public.space VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7deb-8a9e-2a3af2f293d7', 'Cellar', 1, NULL);
INSERT INTO public.stay VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-743b-973c-7ee099b27b0f', '01a21293-b600-73cc-ad50-d689bb6689a8', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', 'single');
INSERT INTO public.stay VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7cf9-9f93-b847ccb25ba7', '01a21293-b600-7ee4-9026-86a07ae38777', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', 'single');
INSERT INTO public.stay VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7e71-9a95-41d74c6ce852', '01a21293-b600-7ee4-9026-86a07ae38777', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', 'first');
INSERT INTO public.stay VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7099-91dd-443007e629d7', '01a21293-b600-711b-be95-91e30397cd9a', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', '2026-11-25 12:00:00+00', NULL, 'single');
INSERT INTO public.stock_solution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7e96-9f77-d332f00df657', '01a21293-b600-702d-b55b-403e68dee0d7', 1, 2000, 2000000, 200000, 864000, 86400, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 50, '2026-11-25 12:00:00+00');
INSERT INTO public.tray VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ee4-9026-86a07ae38777', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', 'Tray 1', 1, 3500, 2800, 700, 80, NULL, 'any');
INSERT INTO public.tray VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73cc-ad50-d689bb6689a8', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', 'Tray 2', 2, 3500, 2800, 700, 80, NULL, 'any');
INSERT INTO public.tray VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7fac-b07f-40979a4e47a0', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', 'Tray 3', 3, 3500, 2800, 700, 80, NULL, 'any');
INSERT INTO public.tray VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-711b-be95-91e30397cd9a', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', 'Tray 4', 4, 3500, 2800, 700, 80, NULL, 'any');
INSERT INTO public.wash VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7947-a4f9-4ed3da4b0ecb', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '01a21293-b600-7fd6-8462-543cf5de1bcf', 600, 57);
INSERT INTO public.wear VALUES ('00000000-0000-0000-0000-000000000051', 28, '01a21293-b600-7cf9-9f93-b847ccb25ba7', 60000000);
INSERT INTO public.wear VALUES ('00000000-0000-0000-0000-000000000051', 28, '01a21293-b600-743b-973c-7ee099b27b0f', 60000000);
INSERT INTO public.wear VALUES ('00000000-0000-0000-0000-000000000051', 29, '01a21293-b600-7cf9-9f93-b847ccb25ba7', 60000000);
INSERT INTO public.wear VALUES ('00000000-0000-0000-0000-000000000051', 29, '01a21293-b600-743b-973c-7ee099b27b0f', 60000000);
INSERT INTO public.wear VALUES ('00000000-0000-0000-0000-000000000051', 36, '01a21293-b600-7cf9-9f93-b847ccb25ba7', 100000000);
ALTER TABLE ONLY public._sqlx_migrations
    ADD CONSTRAINT _sqlx_migrations_pkey PRIMARY KEY (version);
ALTER TABLE ONLY public.bottle
    ADD CONSTRAINT bottle_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.capacity
    ADD CONSTRAINT capacity_pkey PRIMARY KEY (room_id, dilution_id, paper_class_id, place);
ALTER TABLE ONLY public.delivery
    ADD CONSTRAINT delivery_pkey PRIMARY KEY (room_id, notice_id, channel);
ALTER TABLE ONLY public.dilution
    ADD CONSTRAINT dilution_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.entry_about
    ADD CONSTRAINT entry_about_pkey PRIMARY KEY (room_id, seq, noun, id);
ALTER TABLE ONLY public.entry
    ADD CONSTRAINT entry_key_key UNIQUE (room_id, key);
ALTER TABLE ONLY public.entry
    ADD CONSTRAINT entry_pkey PRIMARY KEY (room_id, seq);
ALTER TABLE ONLY public.entry
    ADD CONSTRAINT entry_prev_key UNIQUE (room_id, prev);
ALTER TABLE ONLY public.extension
    ADD CONSTRAINT extension_pkey PRIMARY KEY (room_id, seq);
ALTER TABLE ONLY public.finishing
    ADD CONSTRAINT finishing_pkey PRIMARY KEY (room_id, line_id, paper_class_id);
ALTER TABLE ONLY public.fog_test
    ADD CONSTRAINT fog_test_id_key UNIQUE (room_id, id);
ALTER TABLE ONLY public.fog_test
    ADD CONSTRAINT fog_test_pkey PRIMARY KEY (room_id, seq);
ALTER TABLE ONLY public.fog_test_told
    ADD CONSTRAINT fog_test_told_pkey PRIMARY KEY (room_id, lamp_id, again_by);
ALTER TABLE ONLY public.handover
    ADD CONSTRAINT handover_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.head
    ADD CONSTRAINT head_pkey PRIMARY KEY (room_id);
ALTER TABLE ONLY public.invitation
    ADD CONSTRAINT invitation_pkey PRIMARY KEY (id);
ALTER TABLE ONLY public.invitation
    ADD CONSTRAINT invitation_secret_hash_key UNIQUE (secret_hash);
ALTER TABLE ONLY public.known_device
    ADD CONSTRAINT known_device_pkey PRIMARY KEY (secret_hash, person_id);
ALTER TABLE ONLY public.lamp
    ADD CONSTRAINT lamp_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.line
    ADD CONSTRAINT line_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.membership
    ADD CONSTRAINT membership_number_key UNIQUE (room_id, member_number);
ALTER TABLE ONLY public.membership
    ADD CONSTRAINT membership_pkey PRIMARY KEY (room_id, person_id);
ALTER TABLE ONLY public.migration_turn
    ADD CONSTRAINT migration_turn_pkey PRIMARY KEY (only_row);
ALTER TABLE ONLY public.mix_capacity
    ADD CONSTRAINT mix_capacity_pkey PRIMARY KEY (room_id, mix_id, paper_class_id, place);
ALTER TABLE ONLY public.mix
    ADD CONSTRAINT mix_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.notice
    ADD CONSTRAINT notice_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.outage
    ADD CONSTRAINT outage_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.pairing
    ADD CONSTRAINT pairing_code_hash_key UNIQUE (code_hash);
ALTER TABLE ONLY public.pairing
    ADD CONSTRAINT pairing_pkey PRIMARY KEY (secret_hash);
ALTER TABLE ONLY public.paper_class
    ADD CONSTRAINT paper_class_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.pass
    ADD CONSTRAINT pass_id_key UNIQUE (room_id, id);
ALTER TABLE ONLY public.pass
    ADD CONSTRAINT pass_pkey PRIMARY KEY (room_id, seq);
ALTER TABLE ONLY public.person
    ADD CONSTRAINT person_log_in_name_key UNIQUE (log_in_name);
ALTER TABLE ONLY public.person
    ADD CONSTRAINT person_pkey PRIMARY KEY (id);
ALTER TABLE ONLY public.pin
    ADD CONSTRAINT pin_pkey PRIMARY KEY (room_id, person_id);
ALTER TABLE ONLY public.presence
    ADD CONSTRAINT presence_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.product
    ADD CONSTRAINT product_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.reading
    ADD CONSTRAINT reading_id_key UNIQUE (room_id, id);
ALTER TABLE ONLY public.reading
    ADD CONSTRAINT reading_pkey PRIMARY KEY (room_id, seq);
ALTER TABLE ONLY public.rinse
    ADD CONSTRAINT rinse_pkey PRIMARY KEY (room_id, vessel_id);
ALTER TABLE ONLY public.room_name
    ADD CONSTRAINT room_name_pkey PRIMARY KEY (room_id);
ALTER TABLE ONLY public.room_name
    ADD CONSTRAINT room_name_slug_key UNIQUE (slug);
ALTER TABLE ONLY public.room_setting
    ADD CONSTRAINT room_setting_pkey PRIMARY KEY (room_id);
ALTER TABLE ONLY public.screen
    ADD CONSTRAINT screen_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_id_key UNIQUE (id);
ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_pkey PRIMARY KEY (secret_hash);
ALTER TABLE ONLY public.sheet_size
    ADD CONSTRAINT sheet_size_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.space
    ADD CONSTRAINT space_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.stay
    ADD CONSTRAINT stay_pkey PRIMARY KEY (room_id, mix_id, from_at);
ALTER TABLE ONLY public.stock_solution
    ADD CONSTRAINT stock_solution_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.throttle
    ADD CONSTRAINT throttle_pkey PRIMARY KEY (scope, subject);
ALTER TABLE ONLY public.token
    ADD CONSTRAINT token_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.tray
    ADD CONSTRAINT tray_pkey PRIMARY KEY (room_id, id);
ALTER TABLE ONLY public.verification
    ADD CONSTRAINT verification_pkey PRIMARY KEY (room_id, at);
ALTER TABLE ONLY public.wash
    ADD CONSTRAINT wash_pkey PRIMARY KEY (room_id, line_id);
ALTER TABLE ONLY public.wear
    ADD CONSTRAINT wear_pkey PRIMARY KEY (room_id, seq, mix_id);
ALTER TABLE ONLY public.work
    ADD CONSTRAINT work_pkey PRIMARY KEY (room_id, kind, due_at);
CREATE INDEX entry_about_id_idx ON public.entry_about USING btree (room_id, noun, id, seq);
CREATE INDEX entry_actor_idx ON public.entry USING btree (room_id, actor, seq);
CREATE INDEX entry_kind_idx ON public.entry USING btree (room_id, kind, seq);
CREATE INDEX extension_mix_idx ON public.extension USING btree (room_id, mix_id, seq);
CREATE INDEX fog_test_lamp_idx ON public.fog_test USING btree (room_id, lamp_id, paper_class_id, happened_at, seq);
CREATE UNIQUE INDEX handover_open_key ON public.handover USING btree (room_id, from_person_id) WHERE ((confirmed_seq IS NULL) AND (withdrawn_seq IS NULL));
CREATE INDEX handover_opened_idx ON public.handover USING btree (room_id, opened_seq);
CREATE INDEX invitation_person_idx ON public.invitation USING btree (person_id) WHERE (person_id IS NOT NULL);
CREATE INDEX invitation_room_idx ON public.invitation USING btree (room_id);
CREATE INDEX membership_person_idx ON public.membership USING btree (person_id);
CREATE UNIQUE INDEX mix_bottle_key ON public.mix USING btree (room_id, bottle_id) WHERE (bottle_id IS NOT NULL);
CREATE INDEX mix_container_idx ON public.mix USING btree (room_id, lower(discarded_into)) WHERE (discarded_into IS NOT NULL);
CREATE UNIQUE INDEX mix_tray_key ON public.mix USING btree (room_id, tray_id) WHERE (tray_id IS NOT NULL);
CREATE INDEX notice_person_idx ON public.notice USING btree (room_id, person_id, made_at);
CREATE INDEX outage_began_idx ON public.outage USING btree (room_id, began_seq);
CREATE UNIQUE INDEX outage_open_key ON public.outage USING btree (room_id, what, space_id) NULLS NOT DISTINCT WHERE (ended_seq IS NULL);
CREATE UNIQUE INDEX pairing_screen_key ON public.pairing USING btree (room_id, screen_id) WHERE (screen_id IS NOT NULL);
CREATE INDEX pass_person_idx ON public.pass USING btree (room_id, person_id, seq);
CREATE INDEX presence_ended_idx ON public.presence USING btree (room_id, ended_at) WHERE (ended_at IS NOT NULL);
CREATE UNIQUE INDEX presence_open_key ON public.presence USING btree (room_id, person_id) WHERE (ended_seq IS NULL);
CREATE INDEX reading_fresh_idx ON public.reading USING btree (room_id, kind, seq) WHERE (is_fresh AND (undone_by IS NULL));
CREATE INDEX reading_mix_idx ON public.reading USING btree (room_id, mix_id, kind, seq);
CREATE UNIQUE INDEX screen_name_key ON public.screen USING btree (room_id, lower(name)) WHERE (ended_seq IS NULL);
CREATE INDEX session_person_idx ON public.session USING btree (person_id);
CREATE INDEX stay_ends_idx ON public.stay USING btree (room_id, line_id, COALESCE(until_at, 'infinity'::timestamp with time zone));
CREATE INDEX stock_solution_product_idx ON public.stock_solution USING btree (room_id, product_id);
CREATE INDEX wear_mix_idx ON public.wear USING btree (room_id, mix_id, seq);
CREATE INDEX work_due_idx ON public.work USING btree (due_at);
CREATE TRIGGER entry_append_only BEFORE DELETE OR UPDATE ON public.entry FOR EACH ROW EXECUTE FUNCTION public.refuse_change();
CREATE TRIGGER entry_no_truncate BEFORE TRUNCATE ON public.entry FOR EACH STATEMENT EXECUTE FUNCTION public.refuse_change();
ALTER TABLE ONLY public.bottle
    ADD CONSTRAINT bottle_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.capacity
    ADD CONSTRAINT capacity_dilution_fkey FOREIGN KEY (room_id, dilution_id) REFERENCES public.dilution(room_id, id);
ALTER TABLE ONLY public.capacity
    ADD CONSTRAINT capacity_paper_class_fkey FOREIGN KEY (room_id, paper_class_id) REFERENCES public.paper_class(room_id, id);
ALTER TABLE ONLY public.delivery
    ADD CONSTRAINT delivery_notice_fkey FOREIGN KEY (room_id, notice_id) REFERENCES public.notice(room_id, id);
ALTER TABLE ONLY public.dilution
    ADD CONSTRAINT dilution_product_fkey FOREIGN KEY (room_id, product_id) REFERENCES public.product(room_id, id);
ALTER TABLE ONLY public.entry_about
    ADD CONSTRAINT entry_about_entry_fkey FOREIGN KEY (room_id, seq) REFERENCES public.entry(room_id, seq);
ALTER TABLE ONLY public.entry
    ADD CONSTRAINT entry_actor_fkey FOREIGN KEY (actor) REFERENCES public.person(id);
ALTER TABLE ONLY public.entry
    ADD CONSTRAINT entry_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.extension
    ADD CONSTRAINT extension_mix_fkey FOREIGN KEY (room_id, mix_id) REFERENCES public.mix(room_id, id);
ALTER TABLE ONLY public.extension
    ADD CONSTRAINT extension_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.finishing
    ADD CONSTRAINT finishing_line_fkey FOREIGN KEY (room_id, line_id) REFERENCES public.line(room_id, id);
ALTER TABLE ONLY public.finishing
    ADD CONSTRAINT finishing_paper_class_fkey FOREIGN KEY (room_id, paper_class_id) REFERENCES public.paper_class(room_id, id);
ALTER TABLE ONLY public.fog_test
    ADD CONSTRAINT fog_test_lamp_fkey FOREIGN KEY (room_id, lamp_id) REFERENCES public.lamp(room_id, id);
ALTER TABLE ONLY public.fog_test
    ADD CONSTRAINT fog_test_paper_class_fkey FOREIGN KEY (room_id, paper_class_id) REFERENCES public.paper_class(room_id, id);
ALTER TABLE ONLY public.fog_test
    ADD CONSTRAINT fog_test_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.fog_test_told
    ADD CONSTRAINT fog_test_told_lamp_fkey FOREIGN KEY (room_id, lamp_id) REFERENCES public.lamp(room_id, id);
ALTER TABLE ONLY public.handover
    ADD CONSTRAINT handover_from_person_id_fkey FOREIGN KEY (from_person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.handover
    ADD CONSTRAINT handover_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.handover
    ADD CONSTRAINT handover_to_person_id_fkey FOREIGN KEY (to_person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.head
    ADD CONSTRAINT head_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.room_name(room_id);
ALTER TABLE ONLY public.invitation
    ADD CONSTRAINT invitation_made_by_fkey FOREIGN KEY (made_by) REFERENCES public.person(id);
ALTER TABLE ONLY public.invitation
    ADD CONSTRAINT invitation_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.invitation
    ADD CONSTRAINT invitation_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.room_name(room_id);
ALTER TABLE ONLY public.known_device
    ADD CONSTRAINT known_device_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.lamp
    ADD CONSTRAINT lamp_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.lamp
    ADD CONSTRAINT lamp_space_fkey FOREIGN KEY (room_id, space_id) REFERENCES public.space(room_id, id);
ALTER TABLE ONLY public.line
    ADD CONSTRAINT line_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.line
    ADD CONSTRAINT line_space_fkey FOREIGN KEY (room_id, space_id) REFERENCES public.space(room_id, id);
ALTER TABLE ONLY public.membership
    ADD CONSTRAINT membership_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.membership
    ADD CONSTRAINT membership_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.mix
    ADD CONSTRAINT mix_bottle_fkey FOREIGN KEY (room_id, bottle_id) REFERENCES public.bottle(room_id, id);
ALTER TABLE ONLY public.mix_capacity
    ADD CONSTRAINT mix_capacity_mix_fkey FOREIGN KEY (room_id, mix_id) REFERENCES public.mix(room_id, id);
ALTER TABLE ONLY public.mix
    ADD CONSTRAINT mix_mixed_by_fkey FOREIGN KEY (mixed_by) REFERENCES public.person(id);
ALTER TABLE ONLY public.mix
    ADD CONSTRAINT mix_product_fkey FOREIGN KEY (room_id, product_id) REFERENCES public.product(room_id, id);
ALTER TABLE ONLY public.mix
    ADD CONSTRAINT mix_stock_fkey FOREIGN KEY (room_id, stock_id) REFERENCES public.stock_solution(room_id, id);
ALTER TABLE ONLY public.mix
    ADD CONSTRAINT mix_tray_fkey FOREIGN KEY (room_id, tray_id) REFERENCES public.tray(room_id, id);
ALTER TABLE ONLY public.notice
    ADD CONSTRAINT notice_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.outage
    ADD CONSTRAINT outage_began_by_fkey FOREIGN KEY (began_by) REFERENCES public.person(id);
ALTER TABLE ONLY public.outage
    ADD CONSTRAINT outage_ended_by_fkey FOREIGN KEY (ended_by) REFERENCES public.person(id);
ALTER TABLE ONLY public.outage
    ADD CONSTRAINT outage_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.pairing
    ADD CONSTRAINT pairing_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.room_name(room_id);
ALTER TABLE ONLY public.paper_class
    ADD CONSTRAINT paper_class_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.pass
    ADD CONSTRAINT pass_line_fkey FOREIGN KEY (room_id, line_id) REFERENCES public.line(room_id, id);
ALTER TABLE ONLY public.pass
    ADD CONSTRAINT pass_paper_class_fkey FOREIGN KEY (room_id, paper_class_id) REFERENCES public.paper_class(room_id, id);
ALTER TABLE ONLY public.pass
    ADD CONSTRAINT pass_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.pass
    ADD CONSTRAINT pass_sheet_size_fkey FOREIGN KEY (room_id, sheet_size_id) REFERENCES public.sheet_size(room_id, id);
ALTER TABLE ONLY public.pin
    ADD CONSTRAINT pin_membership_fkey FOREIGN KEY (room_id, person_id) REFERENCES public.membership(room_id, person_id);
ALTER TABLE ONLY public.presence
    ADD CONSTRAINT presence_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.presence
    ADD CONSTRAINT presence_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.product
    ADD CONSTRAINT product_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.reading
    ADD CONSTRAINT reading_mix_fkey FOREIGN KEY (room_id, mix_id) REFERENCES public.mix(room_id, id);
ALTER TABLE ONLY public.reading
    ADD CONSTRAINT reading_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.rinse
    ADD CONSTRAINT rinse_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.room_setting
    ADD CONSTRAINT room_setting_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.screen
    ADD CONSTRAINT screen_paired_by_fkey FOREIGN KEY (paired_by) REFERENCES public.person(id);
ALTER TABLE ONLY public.screen
    ADD CONSTRAINT screen_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.sheet_size
    ADD CONSTRAINT sheet_size_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.space
    ADD CONSTRAINT space_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.stay
    ADD CONSTRAINT stay_mix_fkey FOREIGN KEY (room_id, mix_id) REFERENCES public.mix(room_id, id);
ALTER TABLE ONLY public.stay
    ADD CONSTRAINT stay_tray_fkey FOREIGN KEY (room_id, tray_id) REFERENCES public.tray(room_id, id);
ALTER TABLE ONLY public.stock_solution
    ADD CONSTRAINT stock_solution_made_by_fkey FOREIGN KEY (made_by) REFERENCES public.person(id);
ALTER TABLE ONLY public.stock_solution
    ADD CONSTRAINT stock_solution_product_fkey FOREIGN KEY (room_id, product_id) REFERENCES public.product(room_id, id);
ALTER TABLE ONLY public.stock_solution
    ADD CONSTRAINT stock_solution_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.token
    ADD CONSTRAINT token_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);
ALTER TABLE ONLY public.tray
    ADD CONSTRAINT tray_line_fkey FOREIGN KEY (room_id, line_id) REFERENCES public.line(room_id, id);
ALTER TABLE ONLY public.verification
    ADD CONSTRAINT verification_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);
ALTER TABLE ONLY public.wash
    ADD CONSTRAINT wash_line_fkey FOREIGN KEY (room_id, line_id) REFERENCES public.line(room_id, id);
ALTER TABLE ONLY public.wash
    ADD CONSTRAINT wash_paper_class_fkey FOREIGN KEY (room_id, paper_class_id) REFERENCES public.paper_class(room_id, id);
ALTER TABLE ONLY public.wear
    ADD CONSTRAINT wear_mix_fkey FOREIGN KEY (room_id, mix_id) REFERENCES public.mix(room_id, id);
ALTER TABLE public.bottle ENABLE ROW LEVEL SECURITY;
CREATE POLICY bottle_room ON public.bottle USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.capacity ENABLE ROW LEVEL SECURITY;
CREATE POLICY capacity_room ON public.capacity USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.delivery ENABLE ROW LEVEL SECURITY;
CREATE POLICY delivery_room ON public.delivery USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.dilution ENABLE ROW LEVEL SECURITY;
CREATE POLICY dilution_room ON public.dilution USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.entry ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.entry_about ENABLE ROW LEVEL SECURITY;
CREATE POLICY entry_about_room ON public.entry_about USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
CREATE POLICY entry_room ON public.entry USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.extension ENABLE ROW LEVEL SECURITY;
CREATE POLICY extension_room ON public.extension USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.finishing ENABLE ROW LEVEL SECURITY;
CREATE POLICY finishing_room ON public.finishing USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.fog_test ENABLE ROW LEVEL SECURITY;
CREATE POLICY fog_test_room ON public.fog_test USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.fog_test_told ENABLE ROW LEVEL SECURITY;
CREATE POLICY fog_test_told_room ON public.fog_test_told USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.handover ENABLE ROW LEVEL SECURITY;
CREATE POLICY handover_room ON public.handover USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.head ENABLE ROW LEVEL SECURITY;
CREATE POLICY head_made ON public.head FOR INSERT WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
CREATE POLICY head_moved ON public.head FOR UPDATE USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
CREATE POLICY head_seen ON public.head FOR SELECT USING (true);
ALTER TABLE public.lamp ENABLE ROW LEVEL SECURITY;
CREATE POLICY lamp_room ON public.lamp USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.line ENABLE ROW LEVEL SECURITY;
CREATE POLICY line_room ON public.line USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.membership ENABLE ROW LEVEL SECURITY;
CREATE POLICY membership_added ON public.membership FOR INSERT WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
CREATE POLICY membership_changed ON public.membership FOR UPDATE USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
CREATE POLICY membership_seen ON public.membership FOR SELECT USING (((room_id = ( SELECT public.current_room() AS current_room)) OR (person_id = ( SELECT public.current_person() AS current_person))));
ALTER TABLE public.mix ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.mix_capacity ENABLE ROW LEVEL SECURITY;
CREATE POLICY mix_capacity_room ON public.mix_capacity USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
CREATE POLICY mix_room ON public.mix USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.notice ENABLE ROW LEVEL SECURITY;
CREATE POLICY notice_made ON public.notice FOR INSERT WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
CREATE POLICY notice_read ON public.notice FOR UPDATE USING (((room_id = ( SELECT public.current_room() AS current_room)) AND (person_id = ( SELECT public.current_person() AS current_person))));
CREATE POLICY notice_seen ON public.notice FOR SELECT USING (((room_id = ( SELECT public.current_room() AS current_room)) AND (person_id = ( SELECT public.current_person() AS current_person))));
ALTER TABLE public.outage ENABLE ROW LEVEL SECURITY;
CREATE POLICY outage_room ON public.outage USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.paper_class ENABLE ROW LEVEL SECURITY;
CREATE POLICY paper_class_room ON public.paper_class USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.pass ENABLE ROW LEVEL SECURITY;
CREATE POLICY pass_room ON public.pass USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.pin ENABLE ROW LEVEL SECURITY;
CREATE POLICY pin_room ON public.pin USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.presence ENABLE ROW LEVEL SECURITY;
CREATE POLICY presence_room ON public.presence USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.product ENABLE ROW LEVEL SECURITY;
CREATE POLICY product_room ON public.product USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.reading ENABLE ROW LEVEL SECURITY;
CREATE POLICY reading_room ON public.reading USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.rinse ENABLE ROW LEVEL SECURITY;
CREATE POLICY rinse_room ON public.rinse USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.room_setting ENABLE ROW LEVEL SECURITY;
CREATE POLICY room_setting_room ON public.room_setting USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.screen ENABLE ROW LEVEL SECURITY;
CREATE POLICY screen_room ON public.screen USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.sheet_size ENABLE ROW LEVEL SECURITY;
CREATE POLICY sheet_size_room ON public.sheet_size USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.space ENABLE ROW LEVEL SECURITY;
CREATE POLICY space_room ON public.space USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.stay ENABLE ROW LEVEL SECURITY;
CREATE POLICY stay_room ON public.stay USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.stock_solution ENABLE ROW LEVEL SECURITY;
CREATE POLICY stock_solution_room ON public.stock_solution USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.token ENABLE ROW LEVEL SECURITY;
CREATE POLICY token_room ON public.token USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.tray ENABLE ROW LEVEL SECURITY;
CREATE POLICY tray_room ON public.tray USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.verification ENABLE ROW LEVEL SECURITY;
CREATE POLICY verification_room ON public.verification USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.wash ENABLE ROW LEVEL SECURITY;
CREATE POLICY wash_room ON public.wash USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
ALTER TABLE public.wear ENABLE ROW LEVEL SECURITY;
CREATE POLICY wear_room ON public.wear USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));
