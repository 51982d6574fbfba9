
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

CREATE TABLE public.airing (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    place_id uuid NOT NULL,
    began_at timestamp with time zone NOT NULL,
    began_by uuid,
    began_seq bigint NOT NULL,
    ended_at timestamp with time zone,
    ended_by uuid,
    ended_seq bigint,
    CONSTRAINT airing_ended_check CHECK ((((ended_at IS NULL) = (ended_seq IS NULL)) AND ((ended_at IS NULL) OR (ended_at >= began_at))))
);

CREATE TABLE public.avoid_note (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    person_id uuid NOT NULL,
    product_id uuid,
    words text NOT NULL,
    made_at timestamp with time zone NOT NULL
);

CREATE TABLE public.beside (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    salt bytea,
    words text,
    erased_seq bigint,
    file bytea,
    CONSTRAINT beside_erased_check CHECK ((((salt IS NULL) = (erased_seq IS NOT NULL)) AND (num_nonnulls(words, file) =
CASE
    WHEN (erased_seq IS NULL) THEN 1
    ELSE 0
END)))
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

CREATE TABLE public.exhaust_waiver (
    room_id uuid NOT NULL,
    place_id uuid NOT NULL,
    agreed_by text,
    set_at timestamp with time zone NOT NULL,
    set_seq bigint NOT NULL
);

CREATE TABLE public.expected_told (
    room_id uuid NOT NULL,
    presence_id uuid NOT NULL,
    expected_at timestamp with time zone NOT NULL,
    person_id uuid NOT NULL,
    told_at timestamp with time zone NOT NULL
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

CREATE TABLE public.flow_measurement (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    id uuid NOT NULL,
    place_id uuid NOT NULL,
    what text NOT NULL,
    ul_per_s bigint NOT NULL,
    measured_on date NOT NULL,
    measured_by text NOT NULL,
    how text NOT NULL,
    person_id uuid,
    undone_by bigint,
    CONSTRAINT flow_measurement_flow_check CHECK ((ul_per_s >= 0)),
    CONSTRAINT flow_measurement_what_check CHECK ((what = ANY (ARRAY['exhaust'::text, 'airing'::text])))
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

CREATE TABLE public.guest (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    workshop_id uuid NOT NULL,
    place integer NOT NULL,
    signed_in_at timestamp with time zone NOT NULL,
    signed_in_seq bigint NOT NULL,
    left_at timestamp with time zone,
    left_seq bigint,
    is_confirmed boolean NOT NULL,
    erased_seq bigint,
    CONSTRAINT guest_left_check CHECK ((((left_at IS NULL) = (left_seq IS NULL)) AND ((left_seq IS NOT NULL) OR (NOT is_confirmed))))
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

CREATE TABLE public.incident (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    number bigint NOT NULL,
    person_id uuid NOT NULL,
    reported_by uuid,
    reported_at timestamp with time zone NOT NULL,
    reported_seq bigint NOT NULL,
    finished_seq bigint,
    erased_seq bigint
);

CREATE TABLE public.incident_look (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    incident_id uuid NOT NULL,
    person_id uuid,
    looked_at timestamp with time zone NOT NULL
);

CREATE TABLE public.induction (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    seq bigint NOT NULL,
    person_id uuid NOT NULL,
    inducer_id uuid,
    basis text NOT NULL,
    given_on date NOT NULL,
    remark text NOT NULL,
    renews_id uuid,
    confirmed_seq bigint,
    confirmed_at timestamp with time zone,
    confirmed_by text,
    withdrawn_seq bigint,
    withdrawn_reason text,
    CONSTRAINT induction_basis_check CHECK ((basis = ANY (ARRAY['given'::text, 'on_paper'::text, 'self_declared'::text]))),
    CONSTRAINT induction_confirmed_by_check CHECK ((confirmed_by = ANY (ARRAY['own_account'::text, 'number_and_pin'::text, 'paper'::text, 'oneself'::text]))),
    CONSTRAINT induction_confirmed_check CHECK ((((confirmed_seq IS NULL) = (confirmed_at IS NULL)) AND ((confirmed_seq IS NULL) = (confirmed_by IS NULL)))),
    CONSTRAINT induction_withdrawn_check CHECK (((withdrawn_seq IS NULL) = (withdrawn_reason IS NULL)))
);

CREATE TABLE public.induction_scan (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    seq bigint NOT NULL,
    induction_id uuid NOT NULL,
    media text NOT NULL,
    bytes bigint NOT NULL,
    scanned_at timestamp with time zone NOT NULL,
    removed_seq bigint,
    CONSTRAINT induction_scan_bytes_check CHECK ((bytes > 0)),
    CONSTRAINT induction_scan_media_check CHECK ((media = ANY (ARRAY['application/pdf'::text, 'image/jpeg'::text, 'image/png'::text])))
);

CREATE TABLE public.induction_told (
    room_id uuid NOT NULL,
    person_id uuid NOT NULL,
    topic_id uuid NOT NULL,
    good_until date NOT NULL,
    told_at timestamp with time zone NOT NULL
);

CREATE TABLE public.induction_topic (
    room_id uuid NOT NULL,
    induction_id uuid NOT NULL,
    topic_id uuid NOT NULL,
    version integer NOT NULL,
    good_until date
);

CREATE TABLE public.ingredient (
    room_id uuid NOT NULL,
    product_id uuid NOT NULL,
    "position" integer NOT NULL,
    name text NOT NULL,
    cas text,
    least_millionths integer,
    most_millionths integer,
    hazard_codes text[] NOT NULL,
    CONSTRAINT ingredient_content_check CHECK (((((least_millionths >= 0) AND (least_millionths <= 1000000)) IS NOT FALSE) AND (((most_millionths >= 0) AND (most_millionths <= 1000000)) IS NOT FALSE) AND ((least_millionths <= most_millionths) IS NOT FALSE)))
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
    workshop_id uuid,
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

CREATE TABLE public.place_air (
    room_id uuid NOT NULL,
    place_id uuid NOT NULL,
    floor_hundredths_mm2 bigint,
    height_tenths_mm integer,
    mixing_tenths integer NOT NULL,
    rule text NOT NULL,
    own_ul_per_s bigint,
    basis text NOT NULL,
    has_fan boolean NOT NULL,
    CONSTRAINT place_air_floor_check CHECK ((floor_hundredths_mm2 > 0)),
    CONSTRAINT place_air_height_check CHECK ((height_tenths_mm > 0)),
    CONSTRAINT place_air_mixing_check CHECK (((mixing_tenths >= 10) AND (mixing_tenths <= 100))),
    CONSTRAINT place_air_own_check CHECK ((own_ul_per_s > 0)),
    CONSTRAINT place_air_own_rule_check CHECK (((rule = 'own'::text) = (own_ul_per_s IS NOT NULL))),
    CONSTRAINT place_air_rule_check CHECK ((rule = ANY (ARRAY['imc_2018'::text, 'ashrae_62_1'::text, 'own'::text])))
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
    supervisor_id uuid,
    expected_at timestamp with time zone,
    CONSTRAINT presence_ended_check CHECK ((((ended_at IS NULL) = (ended_seq IS NULL)) AND ((ended_at IS NULL) OR (ended_at >= arrived_at)) AND ((ended_at IS NOT NULL) OR (NOT is_confirmed)))),
    CONSTRAINT presence_expected_check CHECK (((expected_at > arrived_at) AND (expected_at <= over_at))),
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
    composition_is_known boolean DEFAULT false NOT NULL,
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

CREATE TABLE public.room_check (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    name text NOT NULL,
    how text NOT NULL,
    every_days integer NOT NULL,
    basis text NOT NULL,
    on_failure text NOT NULL,
    is_on_board boolean NOT NULL,
    space_id uuid,
    unit text,
    least_thousandths bigint,
    most_thousandths bigint,
    first_due_on date NOT NULL,
    retired_at timestamp with time zone,
    CONSTRAINT room_check_every_check CHECK ((every_days > 0)),
    CONSTRAINT room_check_limit_check CHECK ((((unit IS NOT NULL) OR ((least_thousandths IS NULL) AND (most_thousandths IS NULL))) AND ((least_thousandths <= most_thousandths) IS NOT FALSE)))
);

CREATE TABLE public.room_check_result (
    room_id uuid NOT NULL,
    seq bigint NOT NULL,
    id uuid NOT NULL,
    room_check_id uuid NOT NULL,
    person_id uuid,
    has_passed boolean NOT NULL,
    remark text NOT NULL,
    measured_thousandths bigint,
    unit text,
    due_on date NOT NULL,
    happened_at timestamp with time zone NOT NULL,
    undone_by bigint,
    CONSTRAINT room_check_result_remark_check CHECK ((has_passed OR (remark <> ''::text))),
    CONSTRAINT room_check_result_unit_check CHECK (((measured_thousandths IS NULL) = (unit IS NULL)))
);

CREATE TABLE public.room_check_told (
    room_id uuid NOT NULL,
    room_check_id uuid NOT NULL,
    due_on date NOT NULL,
    told_at timestamp with time zone NOT NULL
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
    forbids_mixing_alone boolean DEFAULT false NOT NULL,
    guest_days integer DEFAULT 30 NOT NULL,
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

CREATE TABLE public.supplement_told (
    room_id uuid NOT NULL,
    product_id uuid NOT NULL,
    topic_id uuid NOT NULL,
    counts_from_version integer NOT NULL,
    told_at timestamp with time zone NOT NULL
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

CREATE TABLE public.topic (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    version integer NOT NULL,
    counts_from_version integer NOT NULL,
    required text NOT NULL,
    traits text[] NOT NULL,
    good_months integer,
    retired_at timestamp with time zone,
    CONSTRAINT topic_months_check CHECK ((good_months > 0)),
    CONSTRAINT topic_required_check CHECK ((required = ANY (ARRAY['always'::text, 'by_trait'::text, 'by_product'::text, 'offered'::text]))),
    CONSTRAINT topic_traits_check CHECK (((required = 'by_trait'::text) = (traits <> '{}'::text[]))),
    CONSTRAINT topic_version_check CHECK (((counts_from_version >= 1) AND (counts_from_version <= version)))
);

CREATE TABLE public.topic_product (
    room_id uuid NOT NULL,
    topic_id uuid NOT NULL,
    product_id uuid NOT NULL
);

CREATE TABLE public.topic_version (
    room_id uuid NOT NULL,
    topic_id uuid NOT NULL,
    version integer NOT NULL,
    title text NOT NULL,
    body text NOT NULL,
    set_seq bigint NOT NULL,
    set_at timestamp with time zone NOT NULL
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

CREATE TABLE public.workshop (
    room_id uuid NOT NULL,
    id uuid NOT NULL,
    title text NOT NULL,
    leader_id uuid NOT NULL,
    space_id uuid,
    begins_at timestamp with time zone NOT NULL,
    ends_at timestamp with time zone NOT NULL,
    most_guests integer NOT NULL,
    line_ids uuid[] NOT NULL,
    paid_by_id uuid,
    planned_seq bigint NOT NULL,
    called_off_seq bigint,
    called_off_reason text,
    opened_at timestamp with time zone,
    opened_seq bigint,
    over_at timestamp with time zone,
    ended_at timestamp with time zone,
    ended_seq bigint,
    is_confirmed boolean NOT NULL,
    CONSTRAINT workshop_called_off_check CHECK ((((called_off_seq IS NULL) = (called_off_reason IS NULL)) AND ((called_off_seq IS NULL) OR (opened_seq IS NULL)))),
    CONSTRAINT workshop_ended_check CHECK ((((ended_at IS NULL) = (ended_seq IS NULL)) AND ((ended_seq IS NULL) OR (opened_seq IS NOT NULL)) AND ((ended_seq IS NOT NULL) OR (NOT is_confirmed)))),
    CONSTRAINT workshop_ends_check CHECK ((ends_at > begins_at)),
    CONSTRAINT workshop_most_check CHECK ((most_guests > 0)),
    CONSTRAINT workshop_opened_check CHECK ((((opened_at IS NULL) = (opened_seq IS NULL)) AND ((opened_at IS NULL) = (over_at IS NULL))))
);

INSERT INTO public._sqlx_migrations VALUES (1, 'spine', '2026-11-26 20:34:40.468251+00', true, '\x84c32b94e05831a5ce25afc8584483edda787d69cd40988d5c84e198abfa9794c8f97abeea09bb5cac39ff5471239ed6', 44382422);
INSERT INTO public._sqlx_migrations VALUES (2, 'verification', '2026-11-26 20:34:40.513229+00', true, '\x2b1f7c9c474ed7e7ec74846825b23a9445740b41802c9ae269726c98339dc9faa521b256ba5af419093e2d226ffa4d43', 1508915);
INSERT INTO public._sqlx_migrations VALUES (3, 'bench', '2026-11-26 20:34:40.514877+00', true, '\x6cb8875096755c0cfc1fcab3665aec30c953f9156f3f4e11e379d99d127207d177b1dff577bae141ccfa9fbeb5386a12', 22920897);
INSERT INTO public._sqlx_migrations VALUES (4, 'chemistry', '2026-11-26 20:34:40.540623+00', true, '\x9999f1c9113f0b97ab636d99dfb2d7c7fc0fdee7c575dc46151ae7d3873bb5a9bd494611371587a608a5b195797b61ae', 6479359);
INSERT INTO public._sqlx_migrations VALUES (5, 'mixes', '2026-11-26 20:34:40.547494+00', true, '\xd24857ab5757b3efbb4fcf241c04a945215d47b321bd3728a069ec684d986fc931bc755cc0bcaefa7472617f220c5df2', 24752487);
INSERT INTO public._sqlx_migrations VALUES (6, 'outages', '2026-11-26 20:34:40.574741+00', true, '\x2676e5baaac2dd5593691d53d6aa121c9406b0d9c9b01aebe0f484dc3da5a9b7cb28525105060be6c67a948fb62d33f9', 16027806);
INSERT INTO public._sqlx_migrations VALUES (7, 'stock solutions', '2026-11-26 20:34:40.593675+00', true, '\x0186ef63a78c5a07aab58c9b08b90532d3218396c52ddb289d28a9b6b473373cc00974de91ef128d8fe47bb100cdbcb2', 8050068);
INSERT INTO public._sqlx_migrations VALUES (8, 'presence', '2026-11-26 20:34:40.599888+00', true, '\xbd5b47314915dfec77e5e4fa9342b6aea04f7cef9d1e7c9bfb2bfc65e16a9a68fa943c2eef50509bee0cc31d05ae2a41', 8345822);
INSERT INTO public._sqlx_migrations VALUES (9, 'long history', '2026-11-26 20:34:40.608819+00', true, '\xdef787b9be80d475a323c3222543956530abe099b77067fed98919c24279304f0406fc971c25ae24c7937797562f7ac8', 1436567);
INSERT INTO public._sqlx_migrations VALUES (10, 'lamps', '2026-11-26 20:34:40.610341+00', true, '\xbe2929cd6cca5da573a26a4753cdf019dfcb62d1dd06b43c59960ed3e5f003d15ed1f5cebb1f384fc73bc870f33f669b', 9383049);
INSERT INTO public._sqlx_migrations VALUES (11, 'screens', '2026-11-26 20:34:40.61998+00', true, '\xc4d0ee731800b4e8ebbe8000ea01f4301fa969e0961e989aa541790c4e79c6ec6455d154218a0692537da6f81c19d535', 8272031);
INSERT INTO public._sqlx_migrations VALUES (12, 'inductions', '2026-11-26 20:34:40.628534+00', true, '\x9f5b9c57015401a4b7061c48811184192cd75edc432b70d5609d922a7ecced53db07b4cd92dde06ab386b9ec037f8df1', 41274885);
INSERT INTO public._sqlx_migrations VALUES (13, 'ingredients and checks', '2026-11-26 20:34:40.670135+00', true, '\xc5348d6c631fcdd8a4ff4038788ef0293c88e23e344cf83fc96bec1b75a14a51b5440eca82ede0a137a390ca02e00544', 10086184);
INSERT INTO public._sqlx_migrations VALUES (14, 'air', '2026-11-26 20:34:40.680627+00', true, '\x69fe80b72689fc659f62a3ed7a00986ee77a8bab3e393cb361f1575cc8646d199da22ea2d322a2ef6750487cd19465a2', 14000903);
INSERT INTO public._sqlx_migrations VALUES (15, 'evenings', '2026-11-26 20:34:40.694862+00', true, '\x45baeda003aedd505061e83d4cf20748cf04521ab14294d9c6d4d3cadf45a691f8cbbd39fb65264ea36ec097cec802ff', 4191443);
INSERT INTO public._sqlx_migrations VALUES (16, 'incidents', '2026-11-26 20:34:40.699175+00', true, '\xfbf7e22bf19fa5fd17dc8506895622e5ec1aefc2c84a459b754acabe3f31c8d123a172a7b52e6caa7970b3f7f32b3aae', 11213117);
INSERT INTO public._sqlx_migrations VALUES (17, 'workshops', '2026-11-26 20:34:40.710648+00', true, '\x244b04accf227ab799e1bbe2f8d155b894dd7975a52eafee36848e84496dc2f2a8298bac7366048159ed37999e721ee9', 14792341);
INSERT INTO public._sqlx_migrations VALUES (18, 'scans', '2026-11-26 20:34:40.725844+00', true, '\x48d637ab1168e91b91b38cde0f4a6997694e74c5d007f491470246104a0dee47c74831f3af1c701d0a5321b471dc7b49', 16443721);

INSERT INTO public.airing VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-776d-a3f3-645c491bd062', '00000000-0000-0000-0000-000000000051', '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 74, '2026-11-25 12:02:00+00', '00000000-0000-0000-0000-000000000052', 74);
INSERT INTO public.airing VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-717b-92e4-6164360bb628', '00000000-0000-0000-0000-000000000051', '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 75, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 76);
INSERT INTO public.airing VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f7b-b4f2-a6903c567453', '01a21293-b600-74ec-aea7-ed60b5dd2bee', '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 77, NULL, NULL, NULL);

INSERT INTO public.beside VALUES ('00000000-0000-0000-0000-000000000051', 78, '\xc014353adae0a4a252f042f2eb05d72392d710049ad29b038a509c6acd33d9ca', 'What happened the 1. time', NULL, NULL);
INSERT INTO public.beside VALUES ('00000000-0000-0000-0000-000000000051', 81, NULL, NULL, 82, NULL);
INSERT INTO public.beside VALUES ('00000000-0000-0000-0000-000000000051', 91, '\x25a6a8cecb36cea5e4b38ad14c13c7e760ded7c04f613544db559802c97797e5', NULL, NULL, '\x255044462d312e34206f6620746865207269676874206f6e65');
INSERT INTO public.beside VALUES ('00000000-0000-0000-0000-000000000051', 90, NULL, NULL, 92, NULL);
INSERT INTO public.beside VALUES ('00000000-0000-0000-0000-000000000051', 118, '\xc00a313ba54e894d5a8eff6730163e1e3988dd4c36d063bcc082fbc277eeed48', '["Ada Moss"]', NULL, NULL);
INSERT INTO public.beside VALUES ('00000000-0000-0000-0000-000000000051', 117, NULL, NULL, 122, NULL);
INSERT INTO public.beside VALUES ('00000000-0000-0000-0000-000000000051', 125, '\xbdb9344cd72496a9de1e6fbece2bc9faf040ccb8ab1344bfa16bcd2a10c4e5c7', '["Ada Moss"]', NULL, NULL);

INSERT INTO public.bottle VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71ae-9d75-61ec6ade41bd', 'Green, two litres', 2000000, NULL);
INSERT INTO public.bottle VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7af9-aff5-bfab3181bb23', 'Brown, two litres', 2000000, NULL);

INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d15-98f1-f33ecd5c0f26', '01a21293-b600-7916-98e5-433f75a80c1d', 80000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d15-98f1-f33ecd5c0f26', '01a21293-b600-7471-9d93-59925179beab', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d15-98f1-f33ecd5c0f26', '01a21293-b600-73d2-b406-6f0d19310889', 80000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7df2-bdad-265828805a17', '01a21293-b600-7916-98e5-433f75a80c1d', 70000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7df2-bdad-265828805a17', '01a21293-b600-7471-9d93-59925179beab', 35000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7df2-bdad-265828805a17', '01a21293-b600-73d2-b406-6f0d19310889', 70000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-745b-9150-835148f7c747', '01a21293-b600-7916-98e5-433f75a80c1d', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-745b-9150-835148f7c747', '01a21293-b600-7471-9d93-59925179beab', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-745b-9150-835148f7c747', '01a21293-b600-73d2-b406-6f0d19310889', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-745b-9150-835148f7c747', '01a21293-b600-7916-98e5-433f75a80c1d', 80000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-745b-9150-835148f7c747', '01a21293-b600-7471-9d93-59925179beab', 40000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-745b-9150-835148f7c747', '01a21293-b600-73d2-b406-6f0d19310889', 80000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-745b-9150-835148f7c747', '01a21293-b600-7916-98e5-433f75a80c1d', 80000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-745b-9150-835148f7c747', '01a21293-b600-7471-9d93-59925179beab', 40000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-745b-9150-835148f7c747', '01a21293-b600-73d2-b406-6f0d19310889', 80000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-714e-ac0f-8825a9205a06', '01a21293-b600-7916-98e5-433f75a80c1d', 40000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-714e-ac0f-8825a9205a06', '01a21293-b600-7471-9d93-59925179beab', 20000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-714e-ac0f-8825a9205a06', '01a21293-b600-73d2-b406-6f0d19310889', 40000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-714e-ac0f-8825a9205a06', '01a21293-b600-7916-98e5-433f75a80c1d', 40000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-714e-ac0f-8825a9205a06', '01a21293-b600-7471-9d93-59925179beab', 20000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-714e-ac0f-8825a9205a06', '01a21293-b600-73d2-b406-6f0d19310889', 40000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7af7-8d43-a75a19293996', '01a21293-b600-7916-98e5-433f75a80c1d', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7af7-8d43-a75a19293996', '01a21293-b600-7471-9d93-59925179beab', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7af7-8d43-a75a19293996', '01a21293-b600-73d2-b406-6f0d19310889', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7763-bc67-e4ace990a454', '01a21293-b600-7471-9d93-59925179beab', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b3c-b6ba-e0cc84f4b357', '01a21293-b600-7916-98e5-433f75a80c1d', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b3c-b6ba-e0cc84f4b357', '01a21293-b600-7471-9d93-59925179beab', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b3c-b6ba-e0cc84f4b357', '01a21293-b600-73d2-b406-6f0d19310889', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7998-a891-27a2b66e7acf', '01a21293-b600-7916-98e5-433f75a80c1d', 10000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7998-a891-27a2b66e7acf', '01a21293-b600-7471-9d93-59925179beab', 10000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7998-a891-27a2b66e7acf', '01a21293-b600-73d2-b406-6f0d19310889', 10000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73f2-867b-400f7c74e093', '01a21293-b600-7916-98e5-433f75a80c1d', 100000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73f2-867b-400f7c74e093', '01a21293-b600-7471-9d93-59925179beab', 50000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73f2-867b-400f7c74e093', '01a21293-b600-73d2-b406-6f0d19310889', 50000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7fbb-b459-d8ee8902c2fe', '01a21293-b600-7916-98e5-433f75a80c1d', 70000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7fbb-b459-d8ee8902c2fe', '01a21293-b600-7471-9d93-59925179beab', 40000, 'common practice, no source', 'single');

INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d15-98f1-f33ecd5c0f26', '01a21293-b600-72dd-b979-955fa32a1984', 19000, 86400, 2592000, 'from memory', 1, NULL, NULL, NULL, 250, NULL, NULL, NULL, 'common practice, no source');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7df2-bdad-265828805a17', '01a21293-b600-7100-b678-8e698b06203b', 19000, 86400, 2592000, 'from memory', 1, NULL, NULL, NULL, 78, NULL, NULL, NULL, 'from memory');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-745b-9150-835148f7c747', '01a21293-b600-7e03-92fe-0696ce69811b', 4000, 172800, 2592000, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, 2000, NULL, 'from memory');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-714e-ac0f-8825a9205a06', '01a21293-b600-7e03-92fe-0696ce69811b', 9000, 172800, 2592000, 'from memory', 2, NULL, NULL, NULL, NULL, NULL, 2000, NULL, 'from memory');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7af7-8d43-a75a19293996', '01a21293-b600-7d17-885d-c7f6c4ea747c', 0, 14400, 14400, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7763-bc67-e4ace990a454', '01a21293-b600-7707-8303-4c3443300102', 9000, 86400, 604800, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b3c-b6ba-e0cc84f4b357', '01a21293-b600-79cd-a1ad-64d1b7172063', 9000, 86400, 15552000, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7998-a891-27a2b66e7acf', '01a21293-b600-79cd-a1ad-64d1b7172063', 19000, 86400, 15552000, 'from memory', 2, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73f2-867b-400f7c74e093', '01a21293-b600-7722-ad03-891f77535c1e', 9000, 28800, 86400, 'common practice, no source', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7fbb-b459-d8ee8902c2fe', '01a21293-b600-7722-ad03-891f77535c1e', 14000, 28800, 86400, 'common practice, no source', 2, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');

INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 1, '\x0000000000000000000000000000000000000000000000000000000000000000', '\x4f95f6a2f23b1412c89d4915b8840df6fd00bb0e6dea200b4377b6c2d303669a', 1, 'room_opened', '00000000-0000-0000-0000-000000000052', NULL, '\x224453eb74e09765ca96abe336b558b5f8be5c1badef00a9961ebd3f3f218521', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22736c7567223a226f757273222c2273657474696e6773223a7b226e616d65223a224f757273222c227a6f6e65223a224575726f70652f4265726c696e222c2263757272656e6379223a22455552222c22756e697473223a226d6574726963222c22646563696d616c5f6d61726b223a222e222c22686f757273223a5b7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d5d2c2270656f706c655f6c696d6974223a31302c22746573745f66697273745f707062223a3830303030303030302c226c6174655f6e6f74655f6d696e75746573223a31303038302c2268617a6172645f72756c6573223a22636c70222c22656d657267656e6379223a7b226e756d626572223a22222c22706f69736f6e5f63656e747265223a22222c2261646472657373223a22222c22636f6e7461637473223a22222c2265796577617368223a22222c22646174615f736865657473223a22227d2c2269735f756e686561746564223a66616c73652c2266697865725f736869667473223a332c227365636f6e645f626174685f707062223a3130303030303030302c22616c6b616c695f6d65715f7065725f6c69747265223a6e756c6c2c2273696c7665725f6d675f7065725f726f6c6c223a6e756c6c2c2266696c6d5f6b6570745f707062223a6e756c6c2c22666f72626964735f6d6978696e675f616c6f6e65223a66616c73652c2267756573745f64617973223a33307d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 2, '\x4f95f6a2f23b1412c89d4915b8840df6fd00bb0e6dea200b4377b6c2d303669a', '\x82a5bc5b5c95f334e45b3d80378f8198935937668c60a8c657641b6f007c6b16', 1, 'joined', '00000000-0000-0000-0000-000000000052', NULL, '\x224453eb74e09765ca96abe336b558b5f8be5c1badef00a9961ebd3f3f218521', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22706572736f6e223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c22726f6c65223a2273746577617264222c226d656d6265725f6e756d626572223a312c22696e7669746174696f6e223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 3, '\x82a5bc5b5c95f334e45b3d80378f8198935937668c60a8c657641b6f007c6b16', '\x265fbcb9093d3ef320f1a72f8c15ff4c4320eb23a76d538e17aff90682c27024', 1, 'joined', '00000000-0000-0000-0000-000000000052', '\x00000000000000000000000000000001', '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22706572736f6e223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22726f6c65223a226d656d626572222c226d656d6265725f6e756d626572223a322c22696e7669746174696f6e223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 4, '\x265fbcb9093d3ef320f1a72f8c15ff4c4320eb23a76d538e17aff90682c27024', '\x2c25b3af11a956e48df4ac78ac14df6f5bcf0ff4c89974fd978516017cc73db1', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373932622d626164342d666438366663316433653134222c226e616d65223a2235c3973720696e222c226c6f6e675f74656e7468735f6d6d223a313737382c2273686f72745f74656e7468735f6d6d223a313237302c22706f736974696f6e223a312c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 5, '\x2c25b3af11a956e48df4ac78ac14df6f5bcf0ff4c89974fd978516017cc73db1', '\x0595aa5a9ea0dbbd869d1be81815c1f06861f2fefff66470d82b331d79449f42', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373261382d386131362d366437323432356537306466222c226e616d65223a2238c397313020696e222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22706f736974696f6e223a322c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 6, '\x0595aa5a9ea0dbbd869d1be81815c1f06861f2fefff66470d82b331d79449f42', '\x161c0e158dda79f4c6b2229f95b3947c472be444fd02ce2b68941178273e7687', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373565352d393762312d623336326166313130326335222c226e616d65223a22392e35c397313220696e20283234c39733302e3520636d29222c226c6f6e675f74656e7468735f6d6d223a333034382c2273686f72745f74656e7468735f6d6d223a323431332c22706f736974696f6e223a332c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 7, '\x161c0e158dda79f4c6b2229f95b3947c472be444fd02ce2b68941178273e7687', '\x33080d4f4adcfc4918c103a88b504e3cd50bfc34bc9123fe6d8a50cac814afe0', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373463372d386333332d376130656465376138616563222c226e616d65223a223131c397313420696e222c226c6f6e675f74656e7468735f6d6d223a333535362c2273686f72745f74656e7468735f6d6d223a323739342c22706f736974696f6e223a342c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 8, '\x33080d4f4adcfc4918c103a88b504e3cd50bfc34bc9123fe6d8a50cac814afe0', '\x63e919ba44046c0961dff8faefd25b3e1928bf4d481f35fd1cf67954f7070c1e', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373665622d386562312d623037333130626537303464222c226e616d65223a223132c397313620696e222c226c6f6e675f74656e7468735f6d6d223a343036342c2273686f72745f74656e7468735f6d6d223a333034382c22706f736974696f6e223a352c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 9, '\x63e919ba44046c0961dff8faefd25b3e1928bf4d481f35fd1cf67954f7070c1e', '\x592a3f1f520dd1fe61a90d79fe13794e04dff6a2325c4416967ee2c918af31a4', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373036342d613539342d373030383838663930313535222c226e616d65223a223136c397323020696e222c226c6f6e675f74656e7468735f6d6d223a353038302c2273686f72745f74656e7468735f6d6d223a343036342c22706f736974696f6e223a362c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 10, '\x592a3f1f520dd1fe61a90d79fe13794e04dff6a2325c4416967ee2c918af31a4', '\xb747b15097eef1eb9cd5cec96c932b7c0a72b175f6d7b4b4f5cc667519586f15', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373430632d393464662d353532633931656234623339222c226e616d65223a224135222c226c6f6e675f74656e7468735f6d6d223a323130302c2273686f72745f74656e7468735f6d6d223a313438302c22706f736974696f6e223a372c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 11, '\xb747b15097eef1eb9cd5cec96c932b7c0a72b175f6d7b4b4f5cc667519586f15', '\xa637978e0c1bf16e47427534670091b7ac8ac8da4cd2d3992e73f5aa63d3a812', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373165632d383136662d333166303764316165306137222c226e616d65223a224134222c226c6f6e675f74656e7468735f6d6d223a323937302c2273686f72745f74656e7468735f6d6d223a323130302c22706f736974696f6e223a382c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 12, '\xa637978e0c1bf16e47427534670091b7ac8ac8da4cd2d3992e73f5aa63d3a812', '\x679a73bca191ba467a48f6563d7aa859ac5687abe38ed9f350eb54c2cf7ea0bf', 1, 'sheet_size_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373264312d383234632d616431663138363839323464222c226e616d65223a224133222c226c6f6e675f74656e7468735f6d6d223a343230302c2273686f72745f74656e7468735f6d6d223a323937302c22706f736974696f6e223a392c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 13, '\x679a73bca191ba467a48f6563d7aa859ac5687abe38ed9f350eb54c2cf7ea0bf', '\x48070057234385e6cae6d735920a26407a5f165f56ff2f957b364fb9a8159110', 1, 'paper_class_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c226e616d65223a225243222c22706f736974696f6e223a312c2269735f72657469726564223a66616c73652c2273696c766572223a6e756c6c2c2263617272795f6f7665725f756c5f7065725f6d32223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 14, '\x48070057234385e6cae6d735920a26407a5f165f56ff2f957b364fb9a8159110', '\xdd8599cc44f90f5656e05d0e5c1326a29676933f13ae84031a8f14a66dff1dc3', 1, 'paper_class_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c226e616d65223a224642222c22706f736974696f6e223a322c2269735f72657469726564223a66616c73652c2273696c766572223a6e756c6c2c2263617272795f6f7665725f756c5f7065725f6d32223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 15, '\xdd8599cc44f90f5656e05d0e5c1326a29676933f13ae84031a8f14a66dff1dc3', '\xe7d52a1f2aba0eb514d2e9f0894ea117482215c3ad5755947a2e6f0405d8e9fa', 1, 'paper_class_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c226e616d65223a2252432c20636f6f6c20746f6e65222c22706f736974696f6e223a332c2269735f72657469726564223a66616c73652c2273696c766572223a6e756c6c2c2263617272795f6f7665725f756c5f7065725f6d32223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 16, '\xe7d52a1f2aba0eb514d2e9f0894ea117482215c3ad5755947a2e6f0405d8e9fa', '\xe32947b07364d1e0f61aef0386d826a84cd01f32905e9853b2c6fe8b26b60e1d', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373732322d616430332d383931663737353335633165222c2276657273696f6e223a312c226e616d65223a224e65757472616c20706170657220646576656c6f706572222c226b696e64223a22646576656c6f706572222c2267726f757073223a5b22646576656c6f706572222c22616c6b616c69222c2273756c66697465222c226f7267616e6963225d2c226f78696469736573223a747275652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a3138302c227761726d6573745f74656e7468735f63656c73697573223a3232302c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d373366322d383637622d343030663763373465303933222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a32383830302c22626f74746c655f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d5d7d2c7b226964223a2230316132313239332d623630302d376662622d623435392d643865653839303263326665222c2270617274735f74686f7573616e64746873223a31343030302c22747261795f6c6966655f73223a32383830302c22626f74746c655f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d5d7d5d2c22696e6772656469656e7473223a5b5d2c22636f6d706f736974696f6e5f69735f6b6e6f776e223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 33, '\x18eb01fe9f11795c1f6e2d39b2554afefdb53e45501d600d3c8a73ee76ee50dd', '\x709eb6ac566f283aaeaaedd98ba45b4a75eff5b6a70bd22a55c8ef6e2b9ff00a', 1, 'discard_undone', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226d69785f6964223a2230316132313239332d623630302d376438392d383435322d303239396238346161383337222c22646973636172645f736571223a312c22747261795f6964223a2230316132313239332d623630302d376534362d396264352d343335613734376666653235222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c22726561736f6e223a225468652077726f6e672074726179227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 34, '\x709eb6ac566f283aaeaaedd98ba45b4a75eff5b6a70bd22a55c8ef6e2b9ff00a', '\x74cae5b2f81ce82fa4927fe2fe89f64818f27df6c83d209e2a04cb310672d209', 1, 'stored', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376438392d383435322d303239396238346161383337222c2266726f6d223a7b22747261795f6964223a2230316132313239332d623630302d376534362d396264352d343335613734376666653235222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65227d2c22746f223a7b22747261795f6964223a6e756c6c2c226c696e655f6964223a6e756c6c2c22626f74746c655f6964223a2230316132313239332d623630302d373161652d396437352d363165633661646534316264222c22706c616365223a2273696e676c65227d2c2273746f72616765223a2266756c6c5f626f74746c65222c226c6966655f73223a38363430307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 17, '\xe32947b07364d1e0f61aef0386d826a84cd01f32905e9853b2c6fe8b26b60e1d', '\xc50bd3b684c319738cee086a00f628b189c02a1b1ae23caf812d3126d615a868', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373264642d623937392d393535666133326131393834222c2276657273696f6e223a312c226e616d65223a224163657469632073746f702062617468222c226b696e64223a2273746f705f62617468222c2267726f757073223a5b2261636964222c2273746f705f62617468222c226f7267616e6963225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a22616365746963222c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d376431352d393866312d663333656364356330663236222c2270617274735f74686f7573616e64746873223a31393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a3235302c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d2c22696e6772656469656e7473223a5b5d2c22636f6d706f736974696f6e5f69735f6b6e6f776e223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 18, '\xc50bd3b684c319738cee086a00f628b189c02a1b1ae23caf812d3126d615a868', '\x452cae6dd11b3b7c5ca571d7230d95ad8894e0da325d873faf47a17f1918b2ed', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373130302d623637382d386536393862303632303362222c2276657273696f6e223a312c226e616d65223a224369747269632073746f702062617468222c226b696e64223a2273746f705f62617468222c2267726f757073223a5b2261636964222c2273746f705f62617468222c226f7267616e6963225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a22636974726963222c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d376466322d626461642d323635383238383035613137222c2270617274735f74686f7573616e64746873223a31393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a37382c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a33353030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d2c22696e6772656469656e7473223a5b5d2c22636f6d706f736974696f6e5f69735f6b6e6f776e223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 19, '\x452cae6dd11b3b7c5ca571d7230d95ad8894e0da325d873faf47a17f1918b2ed', '\x2317a7e501f47ef75811fac09a3677362307dd01dbb7dc5a7cf53a45d93e2a9c', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376530332d393266652d303639366365363938313162222c2276657273696f6e223a312c226e616d65223a22416d6d6f6e69756d207261706964206669786572222c226b696e64223a226669786572222c2267726f757073223a5b226669786572222c227468696f73756c66617465222c22616d6d6f6e69756d222c2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d373435622d393135302d383335313438663763373437222c2270617274735f74686f7573616e64746873223a343030302c22747261795f6c6966655f73223a3137323830302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a323030302c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d2c7b226964223a2230316132313239332d623630302d373134652d616330662d383832356139323035613036222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a3137323830302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a323030302c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d2c22696e6772656469656e7473223a5b5d2c22636f6d706f736974696f6e5f69735f6b6e6f776e223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 20, '\x2317a7e501f47ef75811fac09a3677362307dd01dbb7dc5a7cf53a45d93e2a9c', '\x060c30fe64f1ab71181860a83e82f8c91218a590679b56f4277821ef6a51b7c7', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376431372d383835642d633766366334656137343763222c2276657273696f6e223a312c226e616d65223a22486f6c64696e67207761746572222c226b696e64223a22686f6c64696e675f7761746572222c2267726f757073223a5b226669786572222c227468696f73756c66617465222c22616d6d6f6e69756d222c2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a2272656164795f746f5f757365222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d376166372d386434332d613735613139323933393936222c2270617274735f74686f7573616e64746873223a302c22747261795f6c6966655f73223a31343430302c22626f74746c655f6c6966655f73223a31343430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d2c22696e6772656469656e7473223a5b5d2c22636f6d706f736974696f6e5f69735f6b6e6f776e223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 21, '\x060c30fe64f1ab71181860a83e82f8c91218a590679b56f4277821ef6a51b7c7', '\xf480e0d037e186740737551d48549ac9b9750c2fa41dc35769c02a29ca7c8c4b', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373730372d383330332d346333343433333030313032222c2276657273696f6e223a312c226e616d65223a225761736820616964222c226b696e64223a22776173685f616964222c2267726f757073223a5b2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d373736332d626336372d653461636539393061343534222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a3630343830302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d2c22696e6772656469656e7473223a5b5d2c22636f6d706f736974696f6e5f69735f6b6e6f776e223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 22, '\xf480e0d037e186740737551d48549ac9b9750c2fa41dc35769c02a29ca7c8c4b', '\x73bab2719d1bdf645bfd412bfc8c253826e94dcf63c1ce6570c6925919647117', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373963642d613161642d363464316237313732303633222c2276657273696f6e223a312c226e616d65223a2253656c656e69756d2d7479706520746f6e6572222c226b696e64223a22746f6e6572222c2267726f757073223a5b227468696f73756c66617465222c22616d6d6f6e69756d222c2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a747275652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d376233632d623662612d653063633834663462333537222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a31353535323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d2c7b226964223a2230316132313239332d623630302d373939382d613839312d323761326236366537616366222c2270617274735f74686f7573616e64746873223a31393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a31353535323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a31303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a31303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a31303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d2c22696e6772656469656e7473223a5b5d2c22636f6d706f736974696f6e5f69735f6b6e6f776e223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 23, '\x73bab2719d1bdf645bfd412bfc8c253826e94dcf63c1ce6570c6925919647117', '\x03677d7050189efa65acc28fb5de065cb1f68113138efae0deaf5636d7ed2af7', 1, 'line_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c226e616d65223a224c696e65222c22706f736974696f6e223a312c2273706163655f6964223a6e756c6c2c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 24, '\x03677d7050189efa65acc28fb5de065cb1f68113138efae0deaf5636d7ed2af7', '\x6c1440353d223e70a4344314e958f5b82e99caeced89e6019da30144927130ff', 1, 'tray_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c226e616d65223a22547261792031222c22706f736974696f6e223a312c2273746570223a22616e79222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333530302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3730302c226c656173745f64657074685f74656e7468735f6d6d223a38302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 25, '\x6c1440353d223e70a4344314e958f5b82e99caeced89e6019da30144927130ff', '\x1ba86e48a06ef27fc09293f3a734687fd3a3fc073326cde2c05dd6202a3dcaaa', 1, 'mixed', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132313239332d623630302d373732322d616430332d383931663737353335633165222c2270726f647563745f76657273696f6e223a312c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a323030303030302c22636f6e63656e74726174655f756c223a3230303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 26, '\x1ba86e48a06ef27fc09293f3a734687fd3a3fc073326cde2c05dd6202a3dcaaa', '\x65862600c6c223a9ebd1a7be77a847afec87e64447159950186cb5114857aa44', 1, 'tray_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376534362d396264352d343335613734376666653235222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c226e616d65223a22547261792032222c22706f736974696f6e223a322c2273746570223a22616e79222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333530302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3730302c226c656173745f64657074685f74656e7468735f6d6d223a38302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 27, '\x65862600c6c223a9ebd1a7be77a847afec87e64447159950186cb5114857aa44', '\x14278792f6527bdc7cd8865e26cea8b0cb0852d4858f5f7afc621510dab0b75b', 1, 'mixed', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376438392d383435322d303239396238346161383337222c22747261795f6964223a2230316132313239332d623630302d376534362d396264352d343335613734376666653235222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132313239332d623630302d373732322d616430332d383931663737353335633165222c2270726f647563745f76657273696f6e223a312c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a323030303030302c22636f6e63656e74726174655f756c223a3230303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 28, '\x14278792f6527bdc7cd8865e26cea8b0cb0852d4858f5f7afc621510dab0b75b', '\x090a11fc342fc5b6a451d37bd914b95b5f0871be3068b2fc60f40b27deaf8fd5', 1, 'noted', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22706173735f6964223a2230316132313239332d623630302d373062612d616564612d303534643339633761373432222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c2273686565745f73697a655f6964223a2230316132313239332d623630302d373261382d386131362d366437323432356537306466222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a362c2277656172223a5b7b226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d2c7b226d69785f6964223a2230316132313239332d623630302d376438392d383435322d303239396238346161383337222c22747261795f6964223a2230316132313239332d623630302d376534362d396264352d343335613734376666653235222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 29, '\x090a11fc342fc5b6a451d37bd914b95b5f0871be3068b2fc60f40b27deaf8fd5', '\x12e44b11e2e5bfa14a4798ae3aaf4d6ecb148fc68e14d1e397926732d91639f1', 1, 'noted', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22706173735f6964223a2230316132313239332d623630302d376162302d623033392d633431373434353638383435222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c2273686565745f73697a655f6964223a2230316132313239332d623630302d373261382d386131362d366437323432356537306466222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a362c2277656172223a5b7b226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d2c7b226d69785f6964223a2230316132313239332d623630302d376438392d383435322d303239396238346161383337222c22747261795f6964223a2230316132313239332d623630302d376534362d396264352d343335613734376666653235222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 30, '\x12e44b11e2e5bfa14a4798ae3aaf4d6ecb148fc68e14d1e397926732d91639f1', '\x066e7cd816012d612e54892fff54709570d2cd4772c59b1f3176dc32d4a37e7c', 1, 'note_undone', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22706173735f6964223a2230316132313239332d623630302d373062612d616564612d303534643339633761373432222c22706173735f736571223a32382c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c2277656172223a5b7b226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d2c7b226d69785f6964223a2230316132313239332d623630302d376438392d383435322d303239396238346161383337222c22747261795f6964223a2230316132313239332d623630302d376534362d396264352d343335613734376666653235222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d5d2c22726561736f6e223a22436f756e746564207477696365227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 31, '\x066e7cd816012d612e54892fff54709570d2cd4772c59b1f3176dc32d4a37e7c', '\x93e17eafec900236fc320069b4e55b1b8b9e9f779a0635cd8cd4baeb4ee917e1', 1, 'discarded', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226d69785f6964223a2230316132313239332d623630302d376438392d383435322d303239396238346161383337222c22747261795f6964223a2230316132313239332d623630302d376534362d396264352d343335613734376666653235222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c22766f6c756d655f756c223a323030303030302c2264657374696e6174696f6e223a22636f6c6c6563746564222c22636f6e7461696e6572223a2247726579206472756d222c22776879223a227370656e74227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 32, '\x93e17eafec900236fc320069b4e55b1b8b9e9f779a0635cd8cd4baeb4ee917e1', '\x18eb01fe9f11795c1f6e2d39b2554afefdb53e45501d600d3c8a73ee76ee50dd', 1, 'bottle_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373161652d396437352d363165633661646534316264222c226e616d65223a22477265656e2c2074776f206c6974726573222c22686f6c64735f756c223a323030303030302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 48, '\x956704619709cd1617918301b0d65c7f846ad0ae8b9511cecbcba4d092d2a7e1', '\x5c75d37028d2b4b04bf4851a03d199e14513d32d4889224a28dbcc12fe10b19d', 1, 'rinsed', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 35, '\x74cae5b2f81ce82fa4927fe2fe89f64818f27df6c83d209e2a04cb310672d209', '\x22063465fc904ffa1243aa68b972f9451ee9a51ca32b6de064445b40080b069d', 1, 'topped_up', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132313239332d623630302d373732322d616430332d383931663737353335633165222c2270726f647563745f76657273696f6e223a312c22766f6c756d655f756c223a3130303030302c22636f6e63656e74726174655f756c223a31303030302c2273746f636b5f6964223a6e756c6c2c226c6966655f73223a32383830307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 36, '\x22063465fc904ffa1243aa68b972f9451ee9a51ca32b6de064445b40080b069d', '\xdf42276258486a01626d76e3cefda42ecaaeac2d1bcd968e0c411fb74cf1e60d', 1, 'film_noted', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22706173735f6964223a2230316132313239332d623630302d373465612d623339342d653265616466343633643033222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22726f6c6c73223a322c2277656172223a5b7b226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c227370656e745f6e6c223a3130303030303030302c2262726f75676874223a7b2273696c7665725f7567223a5b312c322c335d2c2262726f6d6964655f7567223a342c22616c6b616c695f6e6571223a352c22636172726965645f6f75745f756c223a362c2272656365697665645f756c223a377d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 37, '\xdf42276258486a01626d76e3cefda42ecaaeac2d1bcd968e0c411fb74cf1e60d', '\xd9422042031df5484cbd08ff56c10452f0d6d1f66f82b0802b62f135a27d26f5', 1, 'reading', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c2272656164696e675f6964223a2230316132313239332d623630302d373539612d396236352d383538663966643339633664222c226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c226b696e64223a22656d657267656e6365222c226f7574636f6d65223a22706173736564222c2276616c7565223a32352c2274656e7468735f63656c73697573223a3230302c2273616d706c65223a225468696e2063617264222c2269735f6672657368223a747275652c22726174696f5f74686f7573616e64746873223a313130302c2266726573685f72656164696e675f6964223a6e756c6c2c227370656e745f6e6c223a302c22636f6e74616d696e616e74223a6e756c6c2c2272656d61726b223a22227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 38, '\xd9422042031df5484cbd08ff56c10452f0d6d1f66f82b0802b62f135a27d26f5', '\xbf2d785e261f6e1bea46268658f8f375180af939262b09967ba94b550feaa88e', 1, 'reading', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c2272656164696e675f6964223a2230316132313239332d623630302d373632652d393261352d373038653230623934333361222c226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c226b696e64223a22636f6e74616d696e6174696f6e222c226f7574636f6d65223a226661696c6564222c2276616c7565223a6e756c6c2c2274656e7468735f63656c73697573223a6e756c6c2c2273616d706c65223a22222c2269735f6672657368223a66616c73652c22726174696f5f74686f7573616e64746873223a6e756c6c2c2266726573685f72656164696e675f6964223a6e756c6c2c227370656e745f6e6c223a302c22636f6e74616d696e616e74223a7b2267726f757073223a5b226879706f63686c6f72697465225d7d2c2272656d61726b223a2253706c6173686564227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 39, '\xbf2d785e261f6e1bea46268658f8f375180af939262b09967ba94b550feaa88e', '\xb20987ace33ec9dbdb641bc4369f4bc96b2d952bb5278adeaca6d4908cdd2487', 1, 'reading', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c2272656164696e675f6964223a2230316132313239332d623630302d376431362d623130642d613733626164633431666162222c226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c226b696e64223a22746573745f7072696e74222c226f7574636f6d65223a226661696c6564222c2276616c7565223a6e756c6c2c2274656e7468735f63656c73697573223a6e756c6c2c2273616d706c65223a22222c2269735f6672657368223a66616c73652c22726174696f5f74686f7573616e64746873223a6e756c6c2c2266726573685f72656164696e675f6964223a6e756c6c2c227370656e745f6e6c223a302c22636f6e74616d696e616e74223a6e756c6c2c2272656d61726b223a22227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 40, '\xb20987ace33ec9dbdb641bc4369f4bc96b2d952bb5278adeaca6d4908cdd2487', '\x69b52afa613f3e7c51ef1c1af0dae1c269c75ed90d416b50a342ff8900a32c48', 1, 'reading_undone', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272656164696e675f6964223a2230316132313239332d623630302d376431362d623130642d613733626164633431666162222c2272656164696e675f736571223a33392c226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c22726561736f6e223a2257726f6e67207061706572227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 41, '\x69b52afa613f3e7c51ef1c1af0dae1c269c75ed90d416b50a342ff8900a32c48', '\xcc511249fb2ca9366450872508daea213e88dbd365e1720cc950b04564c57b84', 1, 'extended', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22657874656e73696f6e5f6964223a2230316132313239332d623630302d373933632d396663302d396564616666386662633064222c226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c22676976656e5f7573223a313030303030302c22756e74696c5f7573223a333630313030303030302c22636c656172696e675f74686f7573616e64746873223a313130302c22656d657267656e63655f74686f7573616e64746873223a313230302c22726561736f6e223a224f6e65206d6f7265206576656e696e67227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 42, '\xcc511249fb2ca9366450872508daea213e88dbd365e1720cc950b04564c57b84', '\x2973e8d540eee4ad6d05e64d58e1f82d29a667032340454a7834ae4ac17bfbfd', 1, 'poured_together', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c22706f757265645f6d69785f6964223a2230316132313239332d623630302d376438392d383435322d303239396238346161383337222c22706f757265645f66726f6d223a7b22747261795f6964223a6e756c6c2c226c696e655f6964223a6e756c6c2c22626f74746c655f6964223a2230316132313239332d623630302d373161652d396437352d363165633661646534316264222c22706c616365223a2273696e676c65227d2c22766f6c756d655f756c223a323030303030302c22706f757265645f7370656e745f6e6c223a36303030303030302c22706f757265645f6167655f707062223a302c226c6966655f73223a32383830307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 43, '\x2973e8d540eee4ad6d05e64d58e1f82d29a667032340454a7834ae4ac17bfbfd', '\xd0cb8bc30537d1320886878647f7a5b6279b41e4da12d3a0180997407461cff5', 1, 'unknown_found', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d373265332d383366312d663831653335373763343531222c22747261795f6964223a6e756c6c2c226c696e655f6964223a6e756c6c2c22626f74746c655f6964223a2230316132313239332d623630302d373161652d396437352d363165633661646534316264222c22706c616365223a2273696e676c65222c2273746f72616765223a22706172745f626f74746c65222c22636861726765645f756c223a3530303030302c2272656d61726b223a2242726f776e2c206e6f206c6162656c227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 44, '\xd0cb8bc30537d1320886878647f7a5b6279b41e4da12d3a0180997407461cff5', '\x1d3395b8d7de4a8c5b1190619576bdb378076ed75e2204f387564656eeb94c21', 1, 'tray_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373536382d393035652d306530346431333763376334222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c226e616d65223a22547261792033222c22706f736974696f6e223a332c2273746570223a22616e79222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333530302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3730302c226c656173745f64657074685f74656e7468735f6d6d223a38302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 45, '\x1d3395b8d7de4a8c5b1190619576bdb378076ed75e2204f387564656eeb94c21', '\x681eea6cbcb629fc4fabead357a90f32b7471fec33dd7d39774af598f196401a', 1, 'mixed', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376666652d393038662d373537316536366161643531222c22747261795f6964223a2230316132313239332d623630302d373536382d393035652d306530346431333763376334222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a227365636f6e64222c2270726f647563745f6964223a2230316132313239332d623630302d373732322d616430332d383931663737353335633165222c2270726f647563745f76657273696f6e223a312c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a323030303030302c22636f6e63656e74726174655f756c223a3230303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 46, '\x681eea6cbcb629fc4fabead357a90f32b7471fec33dd7d39774af598f196401a', '\x3a3455de431982a9459f6fd31a2200381ab5c27a7bab0c0e7abcf7528cee4faf', 1, 'shifted', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d376666652d393038662d373537316536366161643531222c2266726f6d223a7b22747261795f6964223a2230316132313239332d623630302d373536382d393035652d306530346431333763376334222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a227365636f6e64227d2c22746f223a7b22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a226669727374227d2c2266697273745f6d69785f6964223a2230316132313239332d623630302d376564302d396565322d343032303439643264343864222c22766f6c756d655f756c223a313030303030302c2264657374696e6174696f6e223a22636f6c6c6563746564222c22636f6e7461696e6572223a2247726579206472756d222c226c6966655f73223a32383830302c22736869667473223a317d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 47, '\x3a3455de431982a9459f6fd31a2200381ab5c27a7bab0c0e7abcf7528cee4faf', '\x956704619709cd1617918301b0d65c7f846ad0ae8b9511cecbcba4d092d2a7e1', 1, 'discarded', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226d69785f6964223a2230316132313239332d623630302d376666652d393038662d373537316536366161643531222c22747261795f6964223a2230316132313239332d623630302d373139392d623264662d616131613737366236356431222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a226669727374222c22766f6c756d655f756c223a3930303030302c2264657374696e6174696f6e223a22636f6c6c6563746564222c22636f6e7461696e6572223a22426c7565206472756d222c22776879223a2274657374227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 49, '\x5c75d37028d2b4b04bf4851a03d199e14513d32d4889224a28dbcc12fe10b19d', '\xc1c15bc2470f1fabaed632d5d7e7334e491a92013f2aa70d53fd4ceb44ad3431', 1, 'tray_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373334622d393661612d666634666664613863376563222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c226e616d65223a22547261792034222c22706f736974696f6e223a342c2273746570223a22616e79222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333530302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3730302c226c656173745f64657074685f74656e7468735f6d6d223a38302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 50, '\xc1c15bc2470f1fabaed632d5d7e7334e491a92013f2aa70d53fd4ceb44ad3431', '\x9e5548828f3e46b783f6e3f00045c03cebc1ecd2728cf6a7e51e1544631f5334', 1, 'stock_made', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c2273746f636b5f6964223a2230316132313239332d623630302d373765322d386561342d316261373731373333303730222c2270726f647563745f6964223a2230316132313239332d623630302d373732322d616430332d383931663737353335633165222c2270726f647563745f76657273696f6e223a312c227061636b6574735f74686f7573616e64746873223a323030302c22766f6c756d655f756c223a323030303030302c2266756c6c5f6c6966655f73223a3836343030302c22706172745f6c6966655f73223a38363430307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 51, '\x9e5548828f3e46b783f6e3f00045c03cebc1ecd2728cf6a7e51e1544631f5334', '\xd92bbd3ab03dd007eb297756ea9dc6abf0fb7c15417a870688f3a6ac3c90b50e', 1, 'mixed', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313239332d623630302d373330642d393264332d663065666262623339616533222c22747261795f6964223a2230316132313239332d623630302d373334622d393661612d666634666664613863376563222c226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132313239332d623630302d373732322d616430332d383931663737353335633165222c2270726f647563745f76657273696f6e223a312c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a323030303030302c22636f6e63656e74726174655f756c223a3230303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a2230316132313239332d623630302d373765322d386561342d316261373731373333303730222c2266696775726573223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 52, '\xd92bbd3ab03dd007eb297756ea9dc6abf0fb7c15417a870688f3a6ac3c90b50e', '\x033beeb1f003d5c30ea5a039a220b516dc85d1ae0659e01ce672ffc72b66d90d', 1, 'space_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373465632d616561372d656436306235646432626565222c226e616d65223a2243656c6c6172222c22706f736974696f6e223a312c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 53, '\x033beeb1f003d5c30ea5a039a220b516dc85d1ae0659e01ce672ffc72b66d90d', '\xc40a2085974a37bc10b4c326db7f9c58631e6c33bbb74f3e40b65a85cf5838d8', 1, 'bottle_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376166392d616666352d626661623331383162623233222c226e616d65223a2242726f776e2c2074776f206c6974726573222c22686f6c64735f756c223a323030303030302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 54, '\xc40a2085974a37bc10b4c326db7f9c58631e6c33bbb74f3e40b65a85cf5838d8', '\x093faf3745da75de7f8a49ab69643b84aa0040814fb7fb5dc6c219f9269c8be5', 1, 'finishing_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c226669785f73223a36302c226c6f6e676573745f6669785f73223a3132302c2272696e73655f73223a33302c22776173685f6169645f73223a3330302c22776173685f776974685f6169645f73223a3630302c22776173685f776974686f75745f6169645f73223a313830302c226261736973223a22696e76656e74656420666f7220746869732074657374227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 55, '\x093faf3745da75de7f8a49ab69643b84aa0040814fb7fb5dc6c219f9269c8be5', '\x9cf6f043c51455f80963604fade5fcc1c55768124fa6db68f8751d44b72ce504', 1, 'wash_joined', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c226861645f776173685f616964223a747275652c22776173685f73223a3630307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 56, '\x9cf6f043c51455f80963604fade5fcc1c55768124fa6db68f8751d44b72ce504', '\x2f9f51ca368e5231244f3ed4191428afe047bb2360d6e1dac3d283ee14dca018', 1, 'wash_emptied', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 57, '\x2f9f51ca368e5231244f3ed4191428afe047bb2360d6e1dac3d283ee14dca018', '\x0f79b88f13cca483decea76d89338858532b8751bdcdfa95618d07257fa6d38a', 1, 'wash_joined', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226c696e655f6964223a2230316132313239332d623630302d373738332d383765302d666162653036626364623637222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c226861645f776173685f616964223a747275652c22776173685f73223a3630307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 58, '\x0f79b88f13cca483decea76d89338858532b8751bdcdfa95618d07257fa6d38a', '\x8ac030e60e5f606640e0be1bdeabefa43977b0e90629e6c4f529ee4189d6664b', 1, 'product_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373732322d616430332d383931663737353335633165222c2276657273696f6e223a322c226e616d65223a224e65757472616c20706170657220646576656c6f706572222c226b696e64223a22646576656c6f706572222c2267726f757073223a5b22646576656c6f706572222c22616c6b616c69222c2273756c66697465222c226f7267616e6963225d2c226f78696469736573223a747275652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a3138302c227761726d6573745f74656e7468735f63656c73697573223a3232302c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2264696c7574696f6e73223a5b7b226964223a2230316132313239332d623630302d373366322d383637622d343030663763373465303933222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a32383830302c22626f74746c655f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373364322d623430362d366630643139333130383839222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d5d7d2c7b226964223a2230316132313239332d623630302d376662622d623435392d643865653839303263326665222c2270617274735f74686f7573616e64746873223a31343030302c22747261795f6c6966655f73223a32383830302c22626f74746c655f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132313239332d623630302d373437312d396439332d353939323531373962656162222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d5d7d5d2c22696e6772656469656e7473223a5b7b226e616d65223a22487964726f7175696e6f6e65222c22636173223a223132332d33312d39222c226c656173745f6d696c6c696f6e746873223a31303030302c226d6f73745f6d696c6c696f6e746873223a35303030302c2268617a6172645f636f646573223a5b2248333137225d7d2c7b226e616d65223a22412073616c74222c22636173223a6e756c6c2c226c656173745f6d696c6c696f6e746873223a31303030302c226d6f73745f6d696c6c696f6e746873223a35303030302c2268617a6172645f636f646573223a5b2248333137225d7d5d2c22636f6d706f736974696f6e5f69735f6b6e6f776e223a747275657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 59, '\x8ac030e60e5f606640e0be1bdeabefa43977b0e90629e6c4f529ee4189d6664b', '\x398cbc0760d43733957ae8fbc687771cc9df431e70680923291a449468483437', 1, 'room_check_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373564632d613036392d363762656161643334373464222c226e616d65223a22412066616e20746861742072756e733a2074727565222c22686f77223a22486f6c6420746865206d6574657220746f20746865206772696c6c65222c2265766572795f64617973223a372c226261736973223a22696e76656e74656420666f7220746869732074657374222c226f6e5f6661696c757265223a224f70656e2074686520646f6f72222c2269735f6f6e5f626f617264223a747275652c2273706163655f6964223a6e756c6c2c226d656173757265223a7b22756e6974223a224c2f73222c226c656173745f74686f7573616e64746873223a35303030302c226d6f73745f74686f7573616e64746873223a39303030307d2c2266697273745f6475655f6f6e223a22323032362d31312d3235222c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 60, '\x398cbc0760d43733957ae8fbc687771cc9df431e70680923291a449468483437', '\x4fa327ae038fb84bb68db9a9d37cc151e193d72fb52a39af3bc8a124fe5401ad', 1, 'room_checked', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22726573756c745f6964223a2230316132313239332d623630302d373539362d396266322d336238616632353730653831222c22726f6f6d5f636865636b5f6964223a2230316132313239332d623630302d373564632d613036392d363762656161643334373464222c226861735f706173736564223a747275652c2272656d61726b223a2246656c7420736f222c226d656173757265645f74686f7573616e64746873223a36303030302c226d656173757265223a7b22756e6974223a224c2f73222c226c656173745f74686f7573616e64746873223a35303030302c226d6f73745f74686f7573616e64746873223a39303030307d2c226475655f6f6e223a22323032362d31322d3032227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 61, '\x4fa327ae038fb84bb68db9a9d37cc151e193d72fb52a39af3bc8a124fe5401ad', '\x2d49256dbb491f2c89accc532689cc741bc4249479a95b08fcf887823a3f76d5', 1, 'room_check_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373363332d623335332d623339646231623631343937222c226e616d65223a22412066616e20746861742072756e733a2066616c7365222c22686f77223a22486f6c6420746865206d6574657220746f20746865206772696c6c65222c2265766572795f64617973223a372c226261736973223a22696e76656e74656420666f7220746869732074657374222c226f6e5f6661696c757265223a224f70656e2074686520646f6f72222c2269735f6f6e5f626f617264223a747275652c2273706163655f6964223a6e756c6c2c226d656173757265223a7b22756e6974223a224c2f73222c226c656173745f74686f7573616e64746873223a35303030302c226d6f73745f74686f7573616e64746873223a39303030307d2c2266697273745f6475655f6f6e223a22323032362d31312d3235222c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 62, '\x2d49256dbb491f2c89accc532689cc741bc4249479a95b08fcf887823a3f76d5', '\x64a7d986a03c249c832cb332833d02ec90315ebafda9f7bf4f368685668788ca', 1, 'room_checked', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22726573756c745f6964223a2230316132313239332d623630302d373030332d393331382d653961326238646334333663222c22726f6f6d5f636865636b5f6964223a2230316132313239332d623630302d373363332d623335332d623339646231623631343937222c226861735f706173736564223a66616c73652c2272656d61726b223a2246656c7420736f222c226d656173757265645f74686f7573616e64746873223a36303030302c226d656173757265223a7b22756e6974223a224c2f73222c226c656173745f74686f7573616e64746873223a35303030302c226d6f73745f74686f7573616e64746873223a39303030307d2c226475655f6f6e223a22323032362d31322d3032227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 63, '\x64a7d986a03c249c832cb332833d02ec90315ebafda9f7bf4f368685668788ca', '\x448b1db1eb3162a4f0795058657db49106866f6c6633833a78e77dd24f2821d0', 1, 'room_check_taken_back', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22726573756c745f6964223a2230316132313239332d623630302d373030332d393331382d653961326238646334333663222c22726573756c745f736571223a36322c22726f6f6d5f636865636b5f6964223a2230316132313239332d623630302d373363332d623335332d623339646231623631343937222c22726561736f6e223a22416e6f746865722066616e227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 64, '\x448b1db1eb3162a4f0795058657db49106866f6c6633833a78e77dd24f2821d0', '\xd6347bcdc02c232c306c4e409c605d7678364cf579d3368502e58e9ea50ee045', 1, 'lamp_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373738332d616430392d313430626562636535303664222c226e616d65223a224120736166656c69676874222c2268616e6773223a7b226b696e64223a22736166656c69676874222c226c69676874223a225265642066696c746572222c2264697374616e63655f74656e7468735f6d6d223a31323030302c2273706163655f6964223a6e756c6c7d2c22746573745f6d6f6e746873223a31322c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 65, '\xd6347bcdc02c232c306c4e409c605d7678364cf579d3368502e58e9ea50ee045', '\x06685225ed96d97267c348bddb26f45da4a80e82182b4b946103b6ee3e335361', 1, 'fog_tested', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22666f675f746573745f6964223a2230316132313239332d623630302d376363352d383039612d633532653837613136323466222c226c616d705f6964223a2230316132313239332d623630302d373738332d616430392d313430626562636535303664222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c2268616e6773223a7b226b696e64223a22736166656c69676874222c226c69676874223a225265642066696c746572222c2264697374616e63655f74656e7468735f6d6d223a31323030302c2273706163655f6964223a6e756c6c7d2c22636c65616e5f73223a3234302c22666f676765645f73223a3438302c22736166655f73223a3136392c22616761696e5f6279223a22323032372d31312d3235227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 66, '\x06685225ed96d97267c348bddb26f45da4a80e82182b4b946103b6ee3e335361', '\x36b96bb522a681daceebbce14d31afe183c1a0dcb7352820e934927388c9139c', 1, 'lamp_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d376530382d616563382d313536633763393265663665222c226e616d65223a22412073637265656e222c2268616e6773223a7b226b696e64223a2273637265656e222c226c69676874223a225265642066696c746572222c2264697374616e63655f74656e7468735f6d6d223a31323030302c2273706163655f6964223a6e756c6c7d2c22746573745f6d6f6e746873223a31322c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 67, '\x36b96bb522a681daceebbce14d31afe183c1a0dcb7352820e934927388c9139c', '\x6de5e5c2f945d89be42ba656d638b8bcc66ae9b2f0048e6dc85ee1e7dc018c61', 1, 'fog_tested', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2272756c6573223a312c22666f675f746573745f6964223a2230316132313239332d623630302d373962382d613833372d383335663234636330333134222c226c616d705f6964223a2230316132313239332d623630302d376530382d616563382d313536633763393265663665222c2270617065725f636c6173735f6964223a2230316132313239332d623630302d373931362d393865352d343333663735613830633164222c2268616e6773223a7b226b696e64223a2273637265656e222c226c69676874223a225265642066696c746572222c2264697374616e63655f74656e7468735f6d6d223a31323030302c2273706163655f6964223a6e756c6c7d2c22636c65616e5f73223a3234302c22666f676765645f73223a3438302c22736166655f73223a3136392c22616761696e5f6279223a22323032372d31312d3235227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 68, '\x6de5e5c2f945d89be42ba656d638b8bcc66ae9b2f0048e6dc85ee1e7dc018c61', '\x0cafdd2aca63b89e7c4ffe302f8c209f837e417b7b790c038cf12866e88b7ef3', 1, 'fog_test_taken_back', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22666f675f746573745f6964223a2230316132313239332d623630302d373962382d613833372d383335663234636330333134222c22666f675f746573745f736571223a36372c226c616d705f6964223a2230316132313239332d623630302d376530382d616563382d313536633763393265663665222c22726561736f6e223a22416e6f746865722073637265656e227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 69, '\x0cafdd2aca63b89e7c4ffe302f8c209f837e417b7b790c038cf12866e88b7ef3', '\x4b240711c2994530f8e6ba989808f2d3ec4d2877ba3e3d269eea6f9403a38c3f', 1, 'air_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2273706163655f6964223a6e756c6c2c22616972223a7b22666c6f6f725f68756e647265647468735f6d6d32223a323030303030303030302c226865696768745f74656e7468735f6d6d223a32363030302c226d6978696e675f74656e746873223a33302c2272756c65223a226f776e222c226f776e5f756c5f7065725f73223a36303030303030302c226261736973223a224275696c64696e67207065726d6974222c226861735f66616e223a747275657d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 70, '\x4b240711c2994530f8e6ba989808f2d3ec4d2877ba3e3d269eea6f9403a38c3f', '\x96ab84bb994c3501010bbdaf10e48c900cfdf3a67631483bc2aff725e7a59d02', 1, 'flow_measured', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22666c6f775f6d6561737572656d656e745f6964223a2230316132313239332d623630302d373666332d613266362d666138323331356335336465222c2273706163655f6964223a6e756c6c2c226f66223a2265786861757374222c22756c5f7065725f73223a38303030303030302c226d656173757265645f6f6e223a22323032362d31312d3230222c226d656173757265645f6279223a22546865206368696d6e6579207377656570222c22686f77223a22417420746865206772696c6c65227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 71, '\x96ab84bb994c3501010bbdaf10e48c900cfdf3a67631483bc2aff725e7a59d02', '\x70e863824ea00b28082d0ebfecaedc3c747427184e929059fcf54d448634f492', 1, 'flow_measured', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22666c6f775f6d6561737572656d656e745f6964223a2230316132313239332d623630302d376139302d626430632d653036666335393439646134222c2273706163655f6964223a6e756c6c2c226f66223a22616972696e67222c22756c5f7065725f73223a38303030303030302c226d656173757265645f6f6e223a22323032362d31312d3230222c226d656173757265645f6279223a22546865206368696d6e6579207377656570222c22686f77223a22417420746865206772696c6c65227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 72, '\x70e863824ea00b28082d0ebfecaedc3c747427184e929059fcf54d448634f492', '\x52b07c0197852de843134f4f1165ac3de0e5af6f63b9628963d381f7d6ccf5ca', 1, 'flow_taken_back', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22666c6f775f6d6561737572656d656e745f6964223a2230316132313239332d623630302d376139302d626430632d653036666335393439646134222c22666c6f775f6d6561737572656d656e745f736571223a37312c2273706163655f6964223a6e756c6c2c22726561736f6e223a22416e6f7468657220646f6f72227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 73, '\x52b07c0197852de843134f4f1165ac3de0e5af6f63b9628963d381f7d6ccf5ca', '\xde0a5c5a4c0dc4b4844b1b45740f7f54813ec98fd02eff8755479e8a3da82e8b', 1, 'exhaust_waiver_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2273706163655f6964223a6e756c6c2c226167726565645f6279223a225468652064697374726963742073616665747920656e67696e656572227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 74, '\xde0a5c5a4c0dc4b4844b1b45740f7f54813ec98fd02eff8755479e8a3da82e8b', '\xec6bb8560a37a307f667ed012dbb69278616c913d021f0f17a9e6f317394e05f', 1, 'aired', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22616972696e675f6964223a2230316132313239332d623630302d373736642d613366332d363435633439316264303632222c2273706163655f6964223a6e756c6c2c227365636f6e6473223a3132307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 75, '\xec6bb8560a37a307f667ed012dbb69278616c913d021f0f17a9e6f317394e05f', '\x337acbc22f3515fecc5e14fe417b01388b70ba18d037c1afe7ea1b03a20a06da', 1, 'airing_began', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22616972696e675f6964223a2230316132313239332d623630302d373137622d393265342d363136343336306262363238222c2273706163655f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 76, '\x337acbc22f3515fecc5e14fe417b01388b70ba18d037c1afe7ea1b03a20a06da', '\xb2ca5ad1513a5e04928f6fd6f8068335b6475d45a3fcc32d1aabc02080301118', 1, 'airing_ended', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22616972696e675f6964223a2230316132313239332d623630302d373137622d393265342d363136343336306262363238222c2273706163655f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 77, '\xb2ca5ad1513a5e04928f6fd6f8068335b6475d45a3fcc32d1aabc02080301118', '\x32ff50fa0f5d005d2a2cd40e40586f7dc47e48ec51e4fd03bc5693e50cf4c142', 1, 'airing_began', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22616972696e675f6964223a2230316132313239332d623630302d376637622d623466322d613639303363353637343533222c2273706163655f6964223a2230316132313239332d623630302d373465632d616561372d656436306235646432626565227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 78, '\x32ff50fa0f5d005d2a2cd40e40586f7dc47e48ec51e4fd03bc5693e50cf4c142', '\x1c190bce50c9c263a96d9156283677c82ec34b3c94024fa7f03058b20a6f6c5d', 1, 'incident_reported', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22696e636964656e745f6964223a2230316132313239332d623630302d373539392d616366652d393339656135373130653833222c226e756d626572223a312c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226265736964655f736861323536223a2232303630353661373264646539393230626230656234643864636466316262373539343336336232343562323564353534303264333339316165666463666163227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 79, '\x1c190bce50c9c263a96d9156283677c82ec34b3c94024fa7f03058b20a6f6c5d', '\x95dd5cd6ddd836b7649492b1c825e198d5e46b13383f91aa480af36b61b7174a', 1, 'incident_looked_at', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22696e636964656e745f6964223a2230316132313239332d623630302d373539392d616366652d393339656135373130653833222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 80, '\x95dd5cd6ddd836b7649492b1c825e198d5e46b13383f91aa480af36b61b7174a', '\x39942b0849044f0772b5848fb264cf469c859ed8eaa548e6eeb6d651aae895a6', 1, 'incident_finished', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22696e636964656e745f6964223a2230316132313239332d623630302d373539392d616366652d393339656135373130653833222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 81, '\x39942b0849044f0772b5848fb264cf469c859ed8eaa548e6eeb6d651aae895a6', '\xf9ff6ff0877c5c3d602d7a3f95ed8241f3da12a44d277a8dcf00d483f6cd8363', 1, 'incident_reported', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22696e636964656e745f6964223a2230316132313239332d623630302d373963382d383062662d386639323134383036346261222c226e756d626572223a322c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226265736964655f736861323536223a2262663134356164396665613235386461326530323937613939366434393031643831653264376639313235646436616231623235353331623564363535323166227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 82, '\xf9ff6ff0877c5c3d602d7a3f95ed8241f3da12a44d277a8dcf00d483f6cd8363', '\x386af28d2290b2e6bf6e55632c4870366637528f2dbe2ea1768a13b8cfb4b00a', 1, 'incident_erased', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22696e636964656e745f6964223a2230316132313239332d623630302d373963382d383062662d386639323134383036346261222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226572617365735f6265736964655f736571223a38317d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 83, '\x386af28d2290b2e6bf6e55632c4870366637528f2dbe2ea1768a13b8cfb4b00a', '\x77f5f690a55ec6ca9aa20afbc52b274c75bc459cdab670586adf8bf6f677b567', 1, 'topic_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373934382d383164342d383838393431306431303231222c2276657273696f6e223a312c22636f756e74735f66726f6d5f76657273696f6e223a312c227469746c65223a2262795f7472616974222c22626f6479223a2253617920697420616c6f75642e222c227265717569726564223a7b2262795f7472616974223a5b2273656e73697469736572222c22616369645f6f725f616c6b616c69225d7d2c22676f6f645f6d6f6e746873223a32342c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 84, '\x77f5f690a55ec6ca9aa20afbc52b274c75bc459cdab670586adf8bf6f677b567', '\x87f8ca03e3fe8fac93e1c596d9d856277f3c49db298664072d182cc11d960ac9', 1, 'topic_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373862352d386165372d303030353737643332383036222c2276657273696f6e223a312c22636f756e74735f66726f6d5f76657273696f6e223a312c227469746c65223a2262795f70726f64756374222c22626f6479223a2253617920697420616c6f75642e222c227265717569726564223a7b2262795f70726f64756374223a5b2230316132313239332d623630302d373264642d623937392d393535666133326131393834225d7d2c22676f6f645f6d6f6e746873223a32342c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 85, '\x87f8ca03e3fe8fac93e1c596d9d856277f3c49db298664072d182cc11d960ac9', '\x201b42107185c787df676721b288c22a556415629d15a552a46255d49325e20a', 1, 'topic_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226964223a2230316132313239332d623630302d373862352d386165372d303030353737643332383036222c2276657273696f6e223a322c22636f756e74735f66726f6d5f76657273696f6e223a312c227469746c65223a2262795f70726f64756374222c22626f6479223a224f7468657220776f7264732e222c227265717569726564223a7b2262795f70726f64756374223a5b2230316132313239332d623630302d373264642d623937392d393535666133326131393834225d7d2c22676f6f645f6d6f6e746873223a32342c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 86, '\x201b42107185c787df676721b288c22a556415629d15a552a46255d49325e20a', '\x65ccaccec703403f0aa7f37291ba192ea520e1b97f1c4bb6ae49f087154b1c3a', 1, 'inducted', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22696e64756374696f6e5f6964223a2230316132313239332d623630302d373136642d613038632d343066383365396434333962222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22746f70696373223a5b7b22746f7069635f6964223a2230316132313239332d623630302d373934382d383164342d383838393431306431303231222c2276657273696f6e223a312c22676f6f645f756e74696c223a22323032382d31312d3235227d2c7b22746f7069635f6964223a2230316132313239332d623630302d373862352d386165372d303030353737643332383036222c2276657273696f6e223a312c22676f6f645f756e74696c223a6e756c6c7d5d2c226261736973223a22676976656e222c22676976656e5f6f6e223a22323032362d31312d3235222c2272656d61726b223a22496e207468652062696e646572222c2272656e6577735f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 87, '\x65ccaccec703403f0aa7f37291ba192ea520e1b97f1c4bb6ae49f087154b1c3a', '\xd0a646550ceacbcac579c20f7bbbdf618183c9cff8cb7fb64f16ca85181880c8', 1, 'induction_confirmed', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22696e64756374696f6e5f6964223a2230316132313239332d623630302d373136642d613038632d343066383365396434333962222c22696e64756374696f6e5f736571223a38362c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226d65616e73223a226f776e5f6163636f756e74227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 88, '\xd0a646550ceacbcac579c20f7bbbdf618183c9cff8cb7fb64f16ca85181880c8', '\x536934171a412314fe36f56abe743548e1bdb1d1644c9ed1d3e64237ace06dda', 1, 'inducted', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22696e64756374696f6e5f6964223a2230316132313239332d623630302d376630362d383538312d643265333064666432633738222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22746f70696373223a5b7b22746f7069635f6964223a2230316132313239332d623630302d373934382d383164342d383838393431306431303231222c2276657273696f6e223a312c22676f6f645f756e74696c223a22323032382d31312d3235227d5d2c226261736973223a226f6e5f7061706572222c22676976656e5f6f6e223a22323032362d31312d3235222c2272656d61726b223a22496e207468652062696e646572222c2272656e6577735f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 89, '\x536934171a412314fe36f56abe743548e1bdb1d1644c9ed1d3e64237ace06dda', '\x631500ae25b417ae8ce05b18431fa6d61a8cdf15170496f0e2e8edf09330eca8', 1, 'induction_withdrawn', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22696e64756374696f6e5f6964223a2230316132313239332d623630302d376630362d383538312d643265333064666432633738222c22696e64756374696f6e5f736571223a38382c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22726561736f6e223a22416e6f7468657220706572736f6e2773207061706572227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 90, '\x631500ae25b417ae8ce05b18431fa6d61a8cdf15170496f0e2e8edf09330eca8', '\x5b1beef860c6a7a490ee854d2b17127ff6b8d379e36f2b8793d2dfe8f2c0411a', 1, 'induction_scanned', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b227363616e5f6964223a2230316132313239332d623630302d373736322d393061662d356464346466383839633538222c22696e64756374696f6e5f6964223a2230316132313239332d623630302d376630362d383538312d643265333064666432633738222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226d65646961223a226170706c69636174696f6e2f706466222c226279746573223a32352c226265736964655f736861323536223a2262616435303839643538386365343831616634393161383164366638393838316132643837396566323031346138643038393939353562346665636439633261227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 91, '\x5b1beef860c6a7a490ee854d2b17127ff6b8d379e36f2b8793d2dfe8f2c0411a', '\x9b64f6c391480eeca49ae55644250aa566d022cd6ce55f7a421e13564da8dffe', 1, 'induction_scanned', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b227363616e5f6964223a2230316132313239332d623630302d376630392d616366332d656239646537646661306233222c22696e64756374696f6e5f6964223a2230316132313239332d623630302d376630362d383538312d643265333064666432633738222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226d65646961223a226170706c69636174696f6e2f706466222c226279746573223a32352c226265736964655f736861323536223a2264643832393332343336346631326132333231336637343464343532373765663539353736626533643163353634303132636136353631633361393664346638227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 92, '\x9b64f6c391480eeca49ae55644250aa566d022cd6ce55f7a421e13564da8dffe', '\x6f3fbd44fd55d45c5a053b04782cbaeb7f4f4c54081c579cbb6b16b302d7699f', 1, 'induction_scan_removed', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b227363616e5f6964223a2230316132313239332d623630302d373736322d393061662d356464346466383839633538222c22696e64756374696f6e5f6964223a2230316132313239332d623630302d376630362d383538312d643265333064666432633738222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226572617365735f6265736964655f736571223a39307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 93, '\x6f3fbd44fd55d45c5a053b04782cbaeb7f4f4c54081c579cbb6b16b302d7699f', '\xea7ec01314fb48cff02f6dd6cb4730e52af35b1aab745c7a2af84e4edabd6f45', 1, 'inducted', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22696e64756374696f6e5f6964223a2230316132313239332d623630302d376234392d393662632d653432646637626363336630222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c22746f70696373223a5b7b22746f7069635f6964223a2230316132313239332d623630302d373934382d383164342d383838393431306431303231222c2276657273696f6e223a312c22676f6f645f756e74696c223a22323032382d31312d3235227d2c7b22746f7069635f6964223a2230316132313239332d623630302d373862352d386165372d303030353737643332383036222c2276657273696f6e223a312c22676f6f645f756e74696c223a6e756c6c7d5d2c226261736973223a2273656c665f6465636c61726564222c22676976656e5f6f6e223a22323032362d31312d3235222c2272656d61726b223a22496e207468652062696e646572222c2272656e6577735f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 94, '\xea7ec01314fb48cff02f6dd6cb4730e52af35b1aab745c7a2af84e4edabd6f45', '\xb30c733803603f2d9eccbd65f462a2e92ab80ed63f57a6e42809a912e2cb015f', 1, 'outage_began', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226f75746167655f6964223a2230316132313239332d623630302d376265382d623337652d396139346330326136656332222c2277686174223a2266616e222c2273706163655f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 95, '\xb30c733803603f2d9eccbd65f462a2e92ab80ed63f57a6e42809a912e2cb015f', '\x3ded0c6b86fa0acc09ab017d91dc748925cbebb327f0a25fda9c7bea3eba3108', 1, 'outage_ended', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226f75746167655f6964223a2230316132313239332d623630302d376265382d623337652d396139346330326136656332222c2277686174223a2266616e222c2273706163655f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 96, '\x3ded0c6b86fa0acc09ab017d91dc748925cbebb327f0a25fda9c7bea3eba3108', '\xd158bee8051e5c72fb5567560249a4270c0f9e7b3acf1f13861ca2ea9003888b', 1, 'outage_began', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b226f75746167655f6964223a2230316132313239332d623630302d376132302d383338352d646262383165643432303262222c2277686174223a22706f776572222c2273706163655f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 97, '\xd158bee8051e5c72fb5567560249a4270c0f9e7b3acf1f13861ca2ea9003888b', '\x9bce08d588121da15627e5a0480aed14d0072bb489fc2b8de32ecea552bae444', 1, 'screen_paired', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2273637265656e5f6964223a2230316132313239332d623630302d376563642d393137302d333330633036383461323762222c226b696e64223a22626f617264222c226e616d65223a2257616c6c222c22646973706c6179223a22736166656c69676874227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 98, '\x9bce08d588121da15627e5a0480aed14d0072bb489fc2b8de32ecea552bae444', '\x6e7ba371299d09bbc3e078209ad012992c33d272d9eb8632afe608ac76b9fca1', 1, 'screen_paired', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2273637265656e5f6964223a2230316132313239332d623630302d373361382d626237352d333163663761613064666235222c226b696e64223a22646f6f72222c226e616d65223a22446f6f72222c22646973706c6179223a22736166656c69676874227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 99, '\x6e7ba371299d09bbc3e078209ad012992c33d272d9eb8632afe608ac76b9fca1', '\x8b6b2320d689ac7392eb5bc5f7893383521b0ffa5552d2707c4e71919df2721b', 1, 'screen_renamed', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2273637265656e5f6964223a2230316132313239332d623630302d373361382d626237352d333163663761613064666235222c226e616d65223a22456e7472616e6365227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 100, '\x8b6b2320d689ac7392eb5bc5f7893383521b0ffa5552d2707c4e71919df2721b', '\xd165ab0ebb6c63e00a801610ea6aaffa2d64fb7739d205931bb80ac746bf0deb', 1, 'screen_ended', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2273637265656e5f6964223a2230316132313239332d623630302d373361382d626237352d333163663761613064666235227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 101, '\xd165ab0ebb6c63e00a801610ea6aaffa2d64fb7739d205931bb80ac746bf0deb', '\x6957a0b77086fd7eaee0f9ec663510fa57eec8a93f777a169eea41eb8358746b', 1, 'pin_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 102, '\x6957a0b77086fd7eaee0f9ec663510fa57eec8a93f777a169eea41eb8358746b', '\x4c32bda47d4821dfd2fd32326f2fca4696bf017766af87c6045973759de8df69', 1, 'pin_removed', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 103, '\x4c32bda47d4821dfd2fd32326f2fca4696bf017766af87c6045973759de8df69', '\x81af54dab97ea91c604c6b1e8fcdb229431119f17fff30def0963036ac3cfaa6', 1, 'arrived', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d373033612d383237652d333636653934636234383937222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226c6f63616c5f64617465223a22323032362d31312d3235222c226f7665725f61745f7573223a313838323030383030303030303030302c226578706563746564223a7b2261745f7573223a313739353631313630303030303030302c22636c6f636b223a2231343a3030227d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 104, '\x81af54dab97ea91c604c6b1e8fcdb229431119f17fff30def0963036ac3cfaa6', '\x9a267eedc4d73b34abc304a5b7771fe83713960a32e8e98df5482c0a383cc210', 1, 'leaving_expected', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d373033612d383237652d333636653934636234383937222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226578706563746564223a7b2261745f7573223a313739353631353230303030303030302c22636c6f636b223a2231353a3030227d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 105, '\x9a267eedc4d73b34abc304a5b7771fe83713960a32e8e98df5482c0a383cc210', '\x38043d68df2eece59331b5c5c1763570b66cfcad13154ac46a2d750945eefe57', 1, 'left', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d373033612d383237652d333636653934636234383937222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 106, '\x38043d68df2eece59331b5c5c1763570b66cfcad13154ac46a2d750945eefe57', '\xb3b433be367ea1207db960309f521d02f04f55e715af1fd3d6c65aa3e9c49a6b', 1, 'arrived', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d376231362d386661622d356163363663643364363036222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226c6f63616c5f64617465223a22323032362d31312d3235222c226f7665725f61745f7573223a313838323030383030303030303030302c2273757065727669736f725f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 107, '\xb3b433be367ea1207db960309f521d02f04f55e715af1fd3d6c65aa3e9c49a6b', '\x3d65fc789297447fe22c2cd6590c9bbdbf7da66d46a4bb85d5fe0ed297191188', 1, 'not_confirmed_left', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d376231362d386661622d356163363663643364363036222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c226c6f63616c5f64617465223a22323032362d31312d3235227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 108, '\x3d65fc789297447fe22c2cd6590c9bbdbf7da66d46a4bb85d5fe0ed297191188', '\x20e2d7d171fe0db577cabf1c43daf789960f9158eae528bfe54fdb980d988bb5', 1, 'arrived', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2270726573656e63655f6964223a2230316132313239332d623630302d373961642d393262652d353232333339353331666633222c22706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c226c6f63616c5f64617465223a22323032362d31312d3235222c226f7665725f61745f7573223a313838323030383030303030303030307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 109, '\x20e2d7d171fe0db577cabf1c43daf789960f9158eae528bfe54fdb980d988bb5', '\xb112d9bfacef680086c760bca18c707f59686a5687c6179737e8e4799fa4a7e5', 1, 'handover_opened', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2268616e646f7665725f6964223a2230316132313239332d623630302d376566612d616230312d363331303437393435626162222c2266726f6d5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22746f5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c227061727473223a5b7b2268656164696e67223a224f6666206e6f77222c226c696e6573223a5b2254686520706f7765722e225d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 110, '\xb112d9bfacef680086c760bca18c707f59686a5687c6179737e8e4799fa4a7e5', '\x0768f3d81332827e30b64c0c2f55d669103637f4a2632cffd05e077eb42a85d1', 1, 'handover_withdrawn', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2268616e646f7665725f6964223a2230316132313239332d623630302d376566612d616230312d363331303437393435626162222c2266726f6d5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22746f5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 111, '\x0768f3d81332827e30b64c0c2f55d669103637f4a2632cffd05e077eb42a85d1', '\x38bcc0c206741fb01306370566824fa4c8fa5f53594f5f2e2fffd8ecb5f9329a', 1, 'handover_opened', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2268616e646f7665725f6964223a2230316132313239332d623630302d373961612d383231322d336432383931663765613132222c2266726f6d5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22746f5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c227061727473223a5b7b2268656164696e67223a224f6666206e6f77222c226c696e6573223a5b2254686520706f7765722e225d7d5d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 112, '\x38bcc0c206741fb01306370566824fa4c8fa5f53594f5f2e2fffd8ecb5f9329a', '\x5e8c2dbc6b4adaacd5daf7a102c070ab9eef053e0f1adb4338645e0ae4d46178', 1, 'handed_over', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b2268616e646f7665725f6964223a2230316132313239332d623630302d373961612d383231322d336432383931663765613132222c2266726f6d5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c22746f5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c2270617274735f736861323536223a2232303066376634633437323366646439356535356264336539303539663337653465316165353334633061323130646433356530383736656136376639333636227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 113, '\x5e8c2dbc6b4adaacd5daf7a102c070ab9eef053e0f1adb4338645e0ae4d46178', '\x92770842efeced868239a45181e0b07af8ae9ebe847552fa3aa789450bf5d885', 1, 'workshop_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d376639362d383031352d353064613064383765393432222c227469746c65223a224669727374207072696e7473222c226c65616465725f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c2273706163655f6964223a6e756c6c2c226c6f63616c5f64617465223a22323032362d31312d3235222c22626567696e735f61745f7573223a313739353630383030303030303030302c22656e64735f61745f7573223a313739353631383830303030303030302c226d6f73745f677565737473223a352c226c696e655f696473223a5b5d2c22706169645f62795f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 114, '\x92770842efeced868239a45181e0b07af8ae9ebe847552fa3aa789450bf5d885', '\xa357193414764af91a0096cbdefddc8e41d6dd87606e45ff8a0028aa1cfe49dc', 1, 'workshop_called_off', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d376639362d383031352d353064613064383765393432222c22726561736f6e223a224e6f626f647920636f756c6420636f6d65227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 115, '\xa357193414764af91a0096cbdefddc8e41d6dd87606e45ff8a0028aa1cfe49dc', '\x15bc69f861ccbfa2f98f3107e3e5ff299862cfbb57f74fe6be412e6b2254b22d', 1, 'workshop_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d376565342d616436302d336463393039343037623035222c227469746c65223a224669727374207072696e7473222c226c65616465725f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c2273706163655f6964223a6e756c6c2c226c6f63616c5f64617465223a22323032362d31312d3235222c22626567696e735f61745f7573223a313739353630383030303030303030302c22656e64735f61745f7573223a313739353631383830303030303030302c226d6f73745f677565737473223a352c226c696e655f696473223a5b5d2c22706169645f62795f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 116, '\x15bc69f861ccbfa2f98f3107e3e5ff299862cfbb57f74fe6be412e6b2254b22d', '\x700f0eded9fdb8240cb79c4ca80920929c8cfa2344d4e0ed0c6a28f3f2d724bd', 1, 'workshop_opened', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d376565342d616436302d336463393039343037623035222c226c65616465725f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c226f7665725f61745f7573223a313838323030383030303030303030302c2270726f6475637473223a5b7b2270726f647563745f6964223a2230316132313239332d623630302d373264642d623937392d393535666133326131393834222c2276657273696f6e223a317d5d2c22746f70696373223a5b7b22746f7069635f6964223a2230316132313239332d623630302d373862352d386165372d303030353737643332383036222c2276657273696f6e223a327d5d2c2269735f756e6b6e6f776e5f7468657265223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 117, '\x700f0eded9fdb8240cb79c4ca80920929c8cfa2344d4e0ed0c6a28f3f2d724bd', '\x86f59768cf4410beda3cb20cb794d9fa4104fe66c4a98a2818e1916bc3ec1f03', 1, 'guests_signed_in', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d376565342d616436302d336463393039343037623035222c2267756573745f696473223a5b2230316132313239332d623630302d376132632d396437342d323434373936333730313039222c2230316132313239332d623630302d373431342d393663302d346563346164646332643038225d2c226265736964655f736861323536223a2263666465666135653131316264373163333536333963343731393035313530626633646162663536346337653432333361386666393165636330646261393765227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 118, '\x86f59768cf4410beda3cb20cb794d9fa4104fe66c4a98a2818e1916bc3ec1f03', '\xd70ee7ef1723579cb860194c762ed1fe7926275923b99d2621b201e0271c8a2b', 1, 'guests_signed_in', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d376565342d616436302d336463393039343037623035222c2267756573745f696473223a5b2230316132313239332d623630302d373539322d393334662d643237353464346565653665225d2c226265736964655f736861323536223a2265666638343861373666393432313165393335356261613832346433663134343735383265623361396536663833613962343663633731306634333264626235227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 119, '\xd70ee7ef1723579cb860194c762ed1fe7926275923b99d2621b201e0271c8a2b', '\xe1477633f165b540d436d937b89a00907c7a8bdbf13b16139e82714b3a266194', 1, 'guests_signed_out', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d376565342d616436302d336463393039343037623035222c2267756573745f696473223a5b2230316132313239332d623630302d373431342d393663302d346563346164646332643038225d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 120, '\xe1477633f165b540d436d937b89a00907c7a8bdbf13b16139e82714b3a266194', '\xe1e1575ea2acd7be926e2a3696a38456a89253cf3b545a27e4e45941e4712671', 1, 'workshop_taken_over', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d376565342d616436302d336463393039343037623035222c226c65616465725f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303533222c2266726f6d5f706572736f6e5f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c226f7665725f61745f7573223a313838323030383030313030303030307d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 121, '\xe1e1575ea2acd7be926e2a3696a38456a89253cf3b545a27e4e45941e4712671', '\xe749233476959ca71331833d725dfb78bb24b51f6ec36294e9f59958c6a9c03b', 1, 'workshop_ended', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d376565342d616436302d336463393039343037623035222c2267756573745f696473223a5b2230316132313239332d623630302d376132632d396437342d323434373936333730313039222c2230316132313239332d623630302d373539322d393334662d643237353464346565653665225d7d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 122, '\xe749233476959ca71331833d725dfb78bb24b51f6ec36294e9f59958c6a9c03b', '\x56306ee40ef06254dd8116c77c3575bfbfe308e106261003b9c45de9abd10de7', 1, 'guest_names_erased', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d376565342d616436302d336463393039343037623035222c226572617365735f6265736964655f736571223a3131377d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 123, '\x56306ee40ef06254dd8116c77c3575bfbfe308e106261003b9c45de9abd10de7', '\x64421d5af3041d93ed0ecd5bae22df73f0b7004b35a4682ea4f3d339795f48ff', 1, 'workshop_set', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d373465342d626235352d333035346430373061626266222c227469746c65223a224669727374207072696e7473222c226c65616465725f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c2273706163655f6964223a6e756c6c2c226c6f63616c5f64617465223a22323032362d31312d3235222c22626567696e735f61745f7573223a313739353630383030303030303030302c22656e64735f61745f7573223a313739353631383830303030303030302c226d6f73745f677565737473223a352c226c696e655f696473223a5b5d2c22706169645f62795f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 124, '\x64421d5af3041d93ed0ecd5bae22df73f0b7004b35a4682ea4f3d339795f48ff', '\xc03d02919c555dd729019610a722121607bae8426116eb94b199919165c5c71a', 1, 'workshop_opened', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d373465342d626235352d333035346430373061626266222c226c65616465725f6964223a2230303030303030302d303030302d303030302d303030302d303030303030303030303532222c226f7665725f61745f7573223a313838323030383030303030303030302c2270726f6475637473223a5b7b2270726f647563745f6964223a2230316132313239332d623630302d373264642d623937392d393535666133326131393834222c2276657273696f6e223a317d5d2c22746f70696373223a5b7b22746f7069635f6964223a2230316132313239332d623630302d373862352d386165372d303030353737643332383036222c2276657273696f6e223a327d5d2c2269735f756e6b6e6f776e5f7468657265223a66616c73657d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 125, '\xc03d02919c555dd729019610a722121607bae8426116eb94b199919165c5c71a', '\x6d36013a864db4f5700f53b8dc00abde2bca7368221946916de4af3c78c97597', 1, 'guests_signed_in', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d373465342d626235352d333035346430373061626266222c2267756573745f696473223a5b2230316132313239332d623630302d373163392d626664362d356364303331616631333764225d2c226265736964655f736861323536223a2266623230373331616430393666376462646431346637633463613139366463313930336233633337633964326333393432316231363363656138313030616562227d');
INSERT INTO public.entry VALUES ('00000000-0000-0000-0000-000000000051', 126, '\x6d36013a864db4f5700f53b8dc00abde2bca7368221946916de4af3c78c97597', '\x68defec260dcdac229bcaf8581737dd4f7680497fa54a4522f2f55bc5072e97f', 1, 'workshop_not_ended', '00000000-0000-0000-0000-000000000052', NULL, '\xce0388758ae532954b6cd1b1ecc43b05e77497898892b047d560a7f57a687f21', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '\x7b22776f726b73686f705f6964223a2230316132313239332d623630302d373465342d626235352d333035346430373061626266222c2267756573745f696473223a5b2230316132313239332d623630302d373163392d626664362d356364303331616631333764225d2c226c6f63616c5f64617465223a22323032362d31312d3235227d');

INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 2, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 3, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 4, 'sheet_size', '01a21293-b600-792b-bad4-fd86fc1d3e14');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 5, 'sheet_size', '01a21293-b600-72a8-8a16-6d72425e70df');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 6, 'sheet_size', '01a21293-b600-75e5-97b1-b362af1102c5');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 7, 'sheet_size', '01a21293-b600-74c7-8c33-7a0ede7a8aec');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 8, 'sheet_size', '01a21293-b600-76eb-8eb1-b07310be704d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 9, 'sheet_size', '01a21293-b600-7064-a594-700888f90155');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 10, 'sheet_size', '01a21293-b600-740c-94df-552c91eb4b39');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 11, 'sheet_size', '01a21293-b600-71ec-816f-31f07d1ae0a7');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 12, 'sheet_size', '01a21293-b600-72d1-824c-ad1f1868924d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 13, 'paper_class', '01a21293-b600-7916-98e5-433f75a80c1d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 14, 'paper_class', '01a21293-b600-7471-9d93-59925179beab');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 15, 'paper_class', '01a21293-b600-73d2-b406-6f0d19310889');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 16, 'product', '01a21293-b600-7722-ad03-891f77535c1e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 17, 'product', '01a21293-b600-72dd-b979-955fa32a1984');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 18, 'product', '01a21293-b600-7100-b678-8e698b06203b');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 19, 'product', '01a21293-b600-7e03-92fe-0696ce69811b');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 20, 'product', '01a21293-b600-7d17-885d-c7f6c4ea747c');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 21, 'product', '01a21293-b600-7707-8303-4c3443300102');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 22, 'product', '01a21293-b600-79cd-a1ad-64d1b7172063');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 23, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 24, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 24, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 25, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 25, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 25, 'product', '01a21293-b600-7722-ad03-891f77535c1e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 25, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 26, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 26, 'tray', '01a21293-b600-7e46-9bd5-435a747ffe25');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 27, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 27, 'mix', '01a21293-b600-7d89-8452-0299b84aa837');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 27, 'product', '01a21293-b600-7722-ad03-891f77535c1e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 27, 'tray', '01a21293-b600-7e46-9bd5-435a747ffe25');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'mix', '01a21293-b600-7d89-8452-0299b84aa837');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'pass', '01a21293-b600-70ba-aeda-054d39c7a742');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 28, 'tray', '01a21293-b600-7e46-9bd5-435a747ffe25');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'mix', '01a21293-b600-7d89-8452-0299b84aa837');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'pass', '01a21293-b600-7ab0-b039-c41744568845');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 29, 'tray', '01a21293-b600-7e46-9bd5-435a747ffe25');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'mix', '01a21293-b600-7d89-8452-0299b84aa837');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'pass', '01a21293-b600-70ba-aeda-054d39c7a742');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 30, 'tray', '01a21293-b600-7e46-9bd5-435a747ffe25');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 31, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 31, 'mix', '01a21293-b600-7d89-8452-0299b84aa837');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 31, 'tray', '01a21293-b600-7e46-9bd5-435a747ffe25');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 32, 'bottle', '01a21293-b600-71ae-9d75-61ec6ade41bd');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 33, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 33, 'mix', '01a21293-b600-7d89-8452-0299b84aa837');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 33, 'tray', '01a21293-b600-7e46-9bd5-435a747ffe25');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 34, 'bottle', '01a21293-b600-71ae-9d75-61ec6ade41bd');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 34, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 34, 'mix', '01a21293-b600-7d89-8452-0299b84aa837');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 34, 'tray', '01a21293-b600-7e46-9bd5-435a747ffe25');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 35, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 35, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 35, 'product', '01a21293-b600-7722-ad03-891f77535c1e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 35, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 36, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 36, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 36, 'pass', '01a21293-b600-74ea-b394-e2eadf463d03');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 36, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 36, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 37, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 37, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 37, 'reading', '01a21293-b600-759a-9b65-858f9fd39c6d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 37, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 38, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 38, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 38, 'reading', '01a21293-b600-762e-92a5-708e20b9433a');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 38, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 39, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 39, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 39, 'reading', '01a21293-b600-7d16-b10d-a73badc41fab');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 39, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 40, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 40, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 40, 'reading', '01a21293-b600-7d16-b10d-a73badc41fab');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 40, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 41, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 41, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 41, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 42, 'bottle', '01a21293-b600-71ae-9d75-61ec6ade41bd');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 42, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 42, 'mix', '01a21293-b600-7d89-8452-0299b84aa837');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 42, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 42, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 43, 'bottle', '01a21293-b600-71ae-9d75-61ec6ade41bd');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 43, 'mix', '01a21293-b600-72e3-83f1-f81e3577c451');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 44, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 44, 'tray', '01a21293-b600-7568-905e-0e04d137c7c4');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 45, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 45, 'mix', '01a21293-b600-7ffe-908f-7571e66aad51');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 45, 'product', '01a21293-b600-7722-ad03-891f77535c1e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 45, 'tray', '01a21293-b600-7568-905e-0e04d137c7c4');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 46, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 46, 'mix', '01a21293-b600-7ed0-9ee2-402049d2d48d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 46, 'mix', '01a21293-b600-7ffe-908f-7571e66aad51');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 46, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 46, 'tray', '01a21293-b600-7568-905e-0e04d137c7c4');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 47, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 47, 'mix', '01a21293-b600-7ffe-908f-7571e66aad51');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 47, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 48, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 48, 'tray', '01a21293-b600-7199-b2df-aa1a776b65d1');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 49, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 49, 'tray', '01a21293-b600-734b-96aa-ff4ffda8c7ec');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 50, 'product', '01a21293-b600-7722-ad03-891f77535c1e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 50, 'stock_solution', '01a21293-b600-77e2-8ea4-1ba771733070');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 51, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 51, 'mix', '01a21293-b600-730d-92d3-f0efbbb39ae3');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 51, 'product', '01a21293-b600-7722-ad03-891f77535c1e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 51, 'stock_solution', '01a21293-b600-77e2-8ea4-1ba771733070');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 51, 'tray', '01a21293-b600-734b-96aa-ff4ffda8c7ec');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 52, 'space', '01a21293-b600-74ec-aea7-ed60b5dd2bee');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 53, 'bottle', '01a21293-b600-7af9-aff5-bfab3181bb23');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 54, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 54, 'paper_class', '01a21293-b600-7916-98e5-433f75a80c1d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 55, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 55, 'paper_class', '01a21293-b600-7916-98e5-433f75a80c1d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 56, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 57, 'line', '01a21293-b600-7783-87e0-fabe06bcdb67');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 57, 'paper_class', '01a21293-b600-7916-98e5-433f75a80c1d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 58, 'product', '01a21293-b600-7722-ad03-891f77535c1e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 59, 'room_check', '01a21293-b600-75dc-a069-67beaad3474d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 60, 'room_check', '01a21293-b600-75dc-a069-67beaad3474d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 60, 'room_check_result', '01a21293-b600-7596-9bf2-3b8af2570e81');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 61, 'room_check', '01a21293-b600-73c3-b353-b39db1b61497');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 62, 'room_check', '01a21293-b600-73c3-b353-b39db1b61497');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 62, 'room_check_result', '01a21293-b600-7003-9318-e9a2b8dc436c');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 63, 'room_check', '01a21293-b600-73c3-b353-b39db1b61497');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 63, 'room_check_result', '01a21293-b600-7003-9318-e9a2b8dc436c');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 64, 'lamp', '01a21293-b600-7783-ad09-140bebce506d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 65, 'fog_test', '01a21293-b600-7cc5-809a-c52e87a1624f');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 65, 'lamp', '01a21293-b600-7783-ad09-140bebce506d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 65, 'paper_class', '01a21293-b600-7916-98e5-433f75a80c1d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 66, 'lamp', '01a21293-b600-7e08-aec8-156c7c92ef6e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 67, 'fog_test', '01a21293-b600-79b8-a837-835f24cc0314');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 67, 'lamp', '01a21293-b600-7e08-aec8-156c7c92ef6e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 67, 'paper_class', '01a21293-b600-7916-98e5-433f75a80c1d');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 68, 'fog_test', '01a21293-b600-79b8-a837-835f24cc0314');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 68, 'lamp', '01a21293-b600-7e08-aec8-156c7c92ef6e');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 70, 'flow_measurement', '01a21293-b600-76f3-a2f6-fa82315c53de');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 71, 'flow_measurement', '01a21293-b600-7a90-bd0c-e06fc5949da4');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 72, 'flow_measurement', '01a21293-b600-7a90-bd0c-e06fc5949da4');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 74, 'airing', '01a21293-b600-776d-a3f3-645c491bd062');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 75, 'airing', '01a21293-b600-717b-92e4-6164360bb628');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 76, 'airing', '01a21293-b600-717b-92e4-6164360bb628');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 77, 'airing', '01a21293-b600-7f7b-b4f2-a6903c567453');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 77, 'space', '01a21293-b600-74ec-aea7-ed60b5dd2bee');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 78, 'incident', '01a21293-b600-7599-acfe-939ea5710e83');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 78, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 79, 'incident', '01a21293-b600-7599-acfe-939ea5710e83');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 79, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 80, 'incident', '01a21293-b600-7599-acfe-939ea5710e83');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 80, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 81, 'incident', '01a21293-b600-79c8-80bf-8f92148064ba');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 81, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 82, 'incident', '01a21293-b600-79c8-80bf-8f92148064ba');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 82, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 83, 'topic', '01a21293-b600-7948-81d4-8889410d1021');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 84, 'topic', '01a21293-b600-78b5-8ae7-000577d32806');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 85, 'topic', '01a21293-b600-78b5-8ae7-000577d32806');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 86, 'induction', '01a21293-b600-716d-a08c-40f83e9d439b');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 86, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 86, 'topic', '01a21293-b600-78b5-8ae7-000577d32806');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 86, 'topic', '01a21293-b600-7948-81d4-8889410d1021');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 87, 'induction', '01a21293-b600-716d-a08c-40f83e9d439b');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 87, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 88, 'induction', '01a21293-b600-7f06-8581-d2e30dfd2c78');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 88, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 88, 'topic', '01a21293-b600-7948-81d4-8889410d1021');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 89, 'induction', '01a21293-b600-7f06-8581-d2e30dfd2c78');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 89, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 90, 'induction', '01a21293-b600-7f06-8581-d2e30dfd2c78');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 90, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 90, 'scan', '01a21293-b600-7762-90af-5dd4df889c58');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 91, 'induction', '01a21293-b600-7f06-8581-d2e30dfd2c78');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 91, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 91, 'scan', '01a21293-b600-7f09-acf3-eb9de7dfa0b3');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 92, 'induction', '01a21293-b600-7f06-8581-d2e30dfd2c78');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 92, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 92, 'scan', '01a21293-b600-7762-90af-5dd4df889c58');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 93, 'induction', '01a21293-b600-7b49-96bc-e42df7bcc3f0');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 93, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 93, 'topic', '01a21293-b600-78b5-8ae7-000577d32806');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 93, 'topic', '01a21293-b600-7948-81d4-8889410d1021');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 94, 'outage', '01a21293-b600-7be8-b37e-9a94c02a6ec2');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 95, 'outage', '01a21293-b600-7be8-b37e-9a94c02a6ec2');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 96, 'outage', '01a21293-b600-7a20-8385-dbb81ed4202b');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 97, 'screen', '01a21293-b600-7ecd-9170-330c0684a27b');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 98, 'screen', '01a21293-b600-73a8-bb75-31cf7aa0dfb5');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 99, 'screen', '01a21293-b600-73a8-bb75-31cf7aa0dfb5');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 100, 'screen', '01a21293-b600-73a8-bb75-31cf7aa0dfb5');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 101, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 102, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 103, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 103, 'presence', '01a21293-b600-703a-827e-366e94cb4897');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 104, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 104, 'presence', '01a21293-b600-703a-827e-366e94cb4897');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 105, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 105, 'presence', '01a21293-b600-703a-827e-366e94cb4897');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 106, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 106, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 106, 'presence', '01a21293-b600-7b16-8fab-5ac66cd3d606');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 107, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 107, 'presence', '01a21293-b600-7b16-8fab-5ac66cd3d606');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 108, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 108, 'presence', '01a21293-b600-79ad-92be-522339531ff3');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 109, 'handover', '01a21293-b600-7efa-ab01-631047945bab');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 109, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 109, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 110, 'handover', '01a21293-b600-7efa-ab01-631047945bab');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 110, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 110, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 111, 'handover', '01a21293-b600-79aa-8212-3d2891f7ea12');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 111, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 111, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 112, 'handover', '01a21293-b600-79aa-8212-3d2891f7ea12');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 112, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 112, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 113, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 113, 'workshop', '01a21293-b600-7f96-8015-50da0d87e942');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 114, 'workshop', '01a21293-b600-7f96-8015-50da0d87e942');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 115, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 115, 'workshop', '01a21293-b600-7ee4-ad60-3dc909407b05');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 116, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 116, 'workshop', '01a21293-b600-7ee4-ad60-3dc909407b05');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 117, 'workshop', '01a21293-b600-7ee4-ad60-3dc909407b05');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 118, 'workshop', '01a21293-b600-7ee4-ad60-3dc909407b05');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 119, 'workshop', '01a21293-b600-7ee4-ad60-3dc909407b05');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 120, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 120, 'person', '00000000-0000-0000-0000-000000000053');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 120, 'workshop', '01a21293-b600-7ee4-ad60-3dc909407b05');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 121, 'workshop', '01a21293-b600-7ee4-ad60-3dc909407b05');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 122, 'workshop', '01a21293-b600-7ee4-ad60-3dc909407b05');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 123, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 123, 'workshop', '01a21293-b600-74e4-bb55-3054d070abbf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 124, 'person', '00000000-0000-0000-0000-000000000052');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 124, 'workshop', '01a21293-b600-74e4-bb55-3054d070abbf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 125, 'workshop', '01a21293-b600-74e4-bb55-3054d070abbf');
INSERT INTO public.entry_about VALUES ('00000000-0000-0000-0000-000000000051', 126, 'workshop', '01a21293-b600-74e4-bb55-3054d070abbf');

INSERT INTO public.exhaust_waiver VALUES ('00000000-0000-0000-0000-000000000051', '00000000-0000-0000-0000-000000000051', 'The district safety engineer', '2026-11-25 12:00:00+00', 73);

INSERT INTO public.extension VALUES ('00000000-0000-0000-0000-000000000051', 41, '01a21293-b600-793c-9fc0-9edaff8fbc0d', '01a21293-b600-7ed0-9ee2-402049d2d48d', '00000000-0000-0000-0000-000000000052', '1970-01-01 00:00:01+00', '1970-01-01 01:00:01+00', 1100, 1200, 'One more evening');

INSERT INTO public.finishing VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7783-87e0-fabe06bcdb67', '01a21293-b600-7916-98e5-433f75a80c1d', 60, 120, 30, 300, 600, 1800, 'invented for this test');

INSERT INTO public.flow_measurement VALUES ('00000000-0000-0000-0000-000000000051', 70, '01a21293-b600-76f3-a2f6-fa82315c53de', '00000000-0000-0000-0000-000000000051', 'exhaust', 80000000, '2026-11-20', 'The chimney sweep', 'At the grille', '00000000-0000-0000-0000-000000000052', NULL);
INSERT INTO public.flow_measurement VALUES ('00000000-0000-0000-0000-000000000051', 71, '01a21293-b600-7a90-bd0c-e06fc5949da4', '00000000-0000-0000-0000-000000000051', 'airing', 80000000, '2026-11-20', 'The chimney sweep', 'At the grille', '00000000-0000-0000-0000-000000000052', 72);

INSERT INTO public.fog_test VALUES ('00000000-0000-0000-0000-000000000051', 65, '01a21293-b600-7cc5-809a-c52e87a1624f', '01a21293-b600-7783-ad09-140bebce506d', '01a21293-b600-7916-98e5-433f75a80c1d', '00000000-0000-0000-0000-000000000052', 'safelight', 'Red filter', 12000, NULL, 240, 480, 169, '2027-11-25', '2026-11-25 12:00:00+00', NULL);
INSERT INTO public.fog_test VALUES ('00000000-0000-0000-0000-000000000051', 67, '01a21293-b600-79b8-a837-835f24cc0314', '01a21293-b600-7e08-aec8-156c7c92ef6e', '01a21293-b600-7916-98e5-433f75a80c1d', '00000000-0000-0000-0000-000000000052', 'screen', 'Red filter', 12000, NULL, 240, 480, 169, '2027-11-25', '2026-11-25 12:00:00+00', 68);

INSERT INTO public.guest VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7592-934f-d2754d4eee6e', '01a21293-b600-7ee4-ad60-3dc909407b05', 0, '2026-11-25 12:00:00+00', 118, '2026-11-25 12:00:00+00', 121, true, NULL);
INSERT INTO public.guest VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7a2c-9d74-244796370109', '01a21293-b600-7ee4-ad60-3dc909407b05', 0, '2026-11-25 12:00:00+00', 117, '2026-11-25 12:00:00+00', 121, true, 122);
INSERT INTO public.guest VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7414-96c0-4ec4addc2d08', '01a21293-b600-7ee4-ad60-3dc909407b05', 1, '2026-11-25 12:00:00+00', 117, '2026-11-25 12:00:00+00', 119, true, 122);
INSERT INTO public.guest VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71c9-bfd6-5cd031af137d', '01a21293-b600-74e4-bb55-3054d070abbf', 0, '2026-11-25 12:00:00+00', 125, '2026-11-25 12:00:00+00', 126, false, NULL);

INSERT INTO public.handover VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7efa-ab01-631047945bab', '00000000-0000-0000-0000-000000000053', '00000000-0000-0000-0000-000000000052', '[{"heading":"Off now","lines":["The power."]}]', '2026-11-25 12:00:00+00', 109, NULL, NULL, '2026-11-25 12:00:00+00', 110);
INSERT INTO public.handover VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-79aa-8212-3d2891f7ea12', '00000000-0000-0000-0000-000000000053', '00000000-0000-0000-0000-000000000052', '[{"heading":"Off now","lines":["The power."]}]', '2026-11-25 12:00:00+00', 111, '2026-11-25 12:00:00+00', 112, NULL, NULL);

INSERT INTO public.head VALUES ('00000000-0000-0000-0000-000000000051', 126, '\x68defec260dcdac229bcaf8581737dd4f7680497fa54a4522f2f55bc5072e97f', '2026-11-25 12:00:00+00');

INSERT INTO public.incident VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7599-acfe-939ea5710e83', 1, '00000000-0000-0000-0000-000000000053', '00000000-0000-0000-0000-000000000052', '2026-11-25 12:00:00+00', 78, 80, NULL);
INSERT INTO public.incident VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-79c8-80bf-8f92148064ba', 2, '00000000-0000-0000-0000-000000000053', '00000000-0000-0000-0000-000000000052', '2026-11-25 12:00:00+00', 81, NULL, 82);

INSERT INTO public.incident_look VALUES ('00000000-0000-0000-0000-000000000051', 79, '01a21293-b600-7599-acfe-939ea5710e83', '00000000-0000-0000-0000-000000000052', '2026-11-25 12:00:00+00');

INSERT INTO public.induction VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-716d-a08c-40f83e9d439b', 86, '00000000-0000-0000-0000-000000000053', '00000000-0000-0000-0000-000000000052', 'given', '2026-11-25', 'In the binder', NULL, 87, '2026-11-25 12:00:00+00', 'own_account', NULL, NULL);
INSERT INTO public.induction VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f06-8581-d2e30dfd2c78', 88, '00000000-0000-0000-0000-000000000053', '00000000-0000-0000-0000-000000000052', 'on_paper', '2026-11-25', 'In the binder', NULL, 88, '2026-11-25 12:00:00+00', 'paper', 89, 'Another person''s paper');
INSERT INTO public.induction VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b49-96bc-e42df7bcc3f0', 93, '00000000-0000-0000-0000-000000000052', '00000000-0000-0000-0000-000000000052', 'self_declared', '2026-11-25', 'In the binder', NULL, 93, '2026-11-25 12:00:00+00', 'oneself', NULL, NULL);

INSERT INTO public.induction_scan VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f09-acf3-eb9de7dfa0b3', 91, '01a21293-b600-7f06-8581-d2e30dfd2c78', 'application/pdf', 25, '2026-11-25 12:00:00+00', NULL);
INSERT INTO public.induction_scan VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7762-90af-5dd4df889c58', 90, '01a21293-b600-7f06-8581-d2e30dfd2c78', 'application/pdf', 25, '2026-11-25 12:00:00+00', 92);

INSERT INTO public.induction_topic VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-716d-a08c-40f83e9d439b', '01a21293-b600-7948-81d4-8889410d1021', 1, '2028-11-25');
INSERT INTO public.induction_topic VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-716d-a08c-40f83e9d439b', '01a21293-b600-78b5-8ae7-000577d32806', 1, NULL);
INSERT INTO public.induction_topic VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f06-8581-d2e30dfd2c78', '01a21293-b600-7948-81d4-8889410d1021', 1, '2028-11-25');
INSERT INTO public.induction_topic VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b49-96bc-e42df7bcc3f0', '01a21293-b600-7948-81d4-8889410d1021', 1, '2028-11-25');
INSERT INTO public.induction_topic VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b49-96bc-e42df7bcc3f0', '01a21293-b600-78b5-8ae7-000577d32806', 1, NULL);

INSERT INTO public.ingredient VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7722-ad03-891f77535c1e', 1, 'Hydroquinone', '123-31-9', 10000, 50000, '{H317}');
INSERT INTO public.ingredient VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7722-ad03-891f77535c1e', 2, 'A salt', NULL, 10000, 50000, '{H317}');

INSERT INTO public.lamp VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7783-ad09-140bebce506d', 'A safelight', 'safelight', 'Red filter', 12000, NULL, 12, NULL);
INSERT INTO public.lamp VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7e08-aec8-156c7c92ef6e', 'A screen', 'screen', 'Red filter', 12000, NULL, 12, NULL);

INSERT INTO public.line VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7783-87e0-fabe06bcdb67', 'Line', 1, NULL, NULL);

INSERT INTO public.membership VALUES ('00000000-0000-0000-0000-000000000051', '00000000-0000-0000-0000-000000000052', 1, 'steward', '2026-11-25 12:00:00+00', NULL, NULL);
INSERT INTO public.membership VALUES ('00000000-0000-0000-0000-000000000051', '00000000-0000-0000-0000-000000000053', 2, 'member', '2026-11-25 12:00:00+00', NULL, NULL);

INSERT INTO public.migration_turn VALUES (true);

INSERT INTO public.mix VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d89-8452-0299b84aa837', '01a21293-b600-7722-ad03-891f77535c1e', 1, 9000, 2000000, 200000, 60000000, 0, '2026-11-25 12:00:00+00', 86400, NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 27, NULL, NULL, NULL, 42, 'mixed', 'full_bottle', NULL, '', '2026-11-25 12:00:00+00', 0, 0, 0, 0, 0, 0, 0, 0, '01a21293-b600-7ed0-9ee2-402049d2d48d', NULL);
INSERT INTO public.mix VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-72e3-83f1-f81e3577c451', NULL, 0, 0, 500000, 0, 0, 0, '2026-11-25 12:00:00+00', 0, NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 43, NULL, NULL, NULL, 43, 'unknown', 'part_bottle', '01a21293-b600-71ae-9d75-61ec6ade41bd', '', '2026-11-25 12:00:00+00', 0, 0, 0, 0, 0, 0, 0, 0, NULL, NULL);
INSERT INTO public.mix VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ed0-9ee2-402049d2d48d', '01a21293-b600-7722-ad03-891f77535c1e', 1, 9000, 4100000, 410000, 220000000, 0, '2026-11-25 12:00:00+00', 28800, NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 25, NULL, '2026-11-25 12:00:00+00', 'Grey drum', 46, 'mixed', 'open_tray', NULL, '', '2026-11-25 12:00:00+00', 1, 2, 3, 4, 5, 6, 7, 0, NULL, NULL);
INSERT INTO public.mix VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ffe-908f-7571e66aad51', '01a21293-b600-7722-ad03-891f77535c1e', 1, 9000, 2000000, 200000, 0, 0, '2026-11-25 12:00:00+00', 28800, NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 45, NULL, '2026-11-25 12:00:00+00', 'Blue drum', 47, 'mixed', 'open_tray', NULL, '', '2026-11-25 12:00:00+00', 0, 0, 0, 0, 0, 0, 0, 1, NULL, NULL);
INSERT INTO public.mix VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-730d-92d3-f0efbbb39ae3', '01a21293-b600-7722-ad03-891f77535c1e', 1, 9000, 2000000, 200000, 0, 0, '2026-11-25 12:00:00+00', 28800, NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 51, '01a21293-b600-734b-96aa-ff4ffda8c7ec', NULL, NULL, 51, 'mixed', 'open_tray', NULL, '', '2026-11-25 12:00:00+00', 0, 0, 0, 0, 0, 0, 0, 0, NULL, '01a21293-b600-77e2-8ea4-1ba771733070');

INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d89-8452-0299b84aa837', '01a21293-b600-7916-98e5-433f75a80c1d', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d89-8452-0299b84aa837', '01a21293-b600-7471-9d93-59925179beab', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d89-8452-0299b84aa837', '01a21293-b600-73d2-b406-6f0d19310889', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ed0-9ee2-402049d2d48d', '01a21293-b600-73d2-b406-6f0d19310889', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ed0-9ee2-402049d2d48d', '01a21293-b600-7471-9d93-59925179beab', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ed0-9ee2-402049d2d48d', '01a21293-b600-7916-98e5-433f75a80c1d', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ffe-908f-7571e66aad51', '01a21293-b600-7916-98e5-433f75a80c1d', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ffe-908f-7571e66aad51', '01a21293-b600-7471-9d93-59925179beab', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ffe-908f-7571e66aad51', '01a21293-b600-73d2-b406-6f0d19310889', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-730d-92d3-f0efbbb39ae3', '01a21293-b600-7916-98e5-433f75a80c1d', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-730d-92d3-f0efbbb39ae3', '01a21293-b600-7471-9d93-59925179beab', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-730d-92d3-f0efbbb39ae3', '01a21293-b600-73d2-b406-6f0d19310889', 50000, 'single');

INSERT INTO public.outage VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7be8-b37e-9a94c02a6ec2', 'fan', NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 94, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 95);
INSERT INTO public.outage VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7a20-8385-dbb81ed4202b', 'power', NULL, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 96, NULL, NULL, NULL);

INSERT INTO public.paper_class VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7916-98e5-433f75a80c1d', 'RC', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL);
INSERT INTO public.paper_class VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7471-9d93-59925179beab', 'FB', 2, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL);
INSERT INTO public.paper_class VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73d2-b406-6f0d19310889', 'RC, cool tone', 3, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL);

INSERT INTO public.pass VALUES ('00000000-0000-0000-0000-000000000051', 29, '01a21293-b600-7ab0-b039-c41744568845', '01a21293-b600-7783-87e0-fabe06bcdb67', '00000000-0000-0000-0000-000000000053', '01a21293-b600-7916-98e5-433f75a80c1d', '01a21293-b600-72a8-8a16-6d72425e70df', 6, '2026-11-25 12:00:00+00', NULL, false, false, NULL);
INSERT INTO public.pass VALUES ('00000000-0000-0000-0000-000000000051', 28, '01a21293-b600-70ba-aeda-054d39c7a742', '01a21293-b600-7783-87e0-fabe06bcdb67', '00000000-0000-0000-0000-000000000053', '01a21293-b600-7916-98e5-433f75a80c1d', '01a21293-b600-72a8-8a16-6d72425e70df', 6, '2026-11-25 12:00:00+00', 30, false, false, NULL);
INSERT INTO public.pass VALUES ('00000000-0000-0000-0000-000000000051', 36, '01a21293-b600-74ea-b394-e2eadf463d03', '01a21293-b600-7783-87e0-fabe06bcdb67', '00000000-0000-0000-0000-000000000053', NULL, NULL, 2, '2026-11-25 12:00:00+00', NULL, true, false, NULL);

INSERT INTO public.person VALUES ('00000000-0000-0000-0000-000000000052', 'Steward', 'steward', '-', false, '2026-11-26 20:34:41.377105+00', NULL, NULL);
INSERT INTO public.person VALUES ('00000000-0000-0000-0000-000000000053', 'Member', 'member', '-', false, '2026-11-26 20:34:41.381735+00', NULL, NULL);

INSERT INTO public.place_air VALUES ('00000000-0000-0000-0000-000000000051', '00000000-0000-0000-0000-000000000051', 2000000000, 26000, 30, 'own', 60000000, 'Building permit', true);

INSERT INTO public.presence VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-703a-827e-366e94cb4897', '00000000-0000-0000-0000-000000000053', '2026-11-25 12:00:00+00', 103, '2029-08-21 12:00:00+00', '2026-11-25 12:00:00+00', 105, true, NULL, '2026-11-25 14:00:00+00');
INSERT INTO public.presence VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7b16-8fab-5ac66cd3d606', '00000000-0000-0000-0000-000000000053', '2026-11-25 12:00:00+00', 106, '2029-08-21 12:00:00+00', '2026-11-25 12:00:00+00', 107, false, '00000000-0000-0000-0000-000000000052', NULL);
INSERT INTO public.presence VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-79ad-92be-522339531ff3', '00000000-0000-0000-0000-000000000052', '2026-11-25 12:00:00+00', 108, '2029-08-21 12:00:00+00', NULL, NULL, false, NULL, NULL);

INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-72dd-b979-955fa32a1984', 1, 'Acetic stop bath', 'stop_bath', '{acid,stop_bath,organic}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', 'acetic', NULL, NULL, '', false);
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7100-b678-8e698b06203b', 1, 'Citric stop bath', 'stop_bath', '{acid,stop_bath,organic}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', 'citric', NULL, NULL, '', false);
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7e03-92fe-0696ce69811b', 1, 'Ammonium rapid fixer', 'fixer', '{fixer,thiosulfate,ammonium,sulfite}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '', false);
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d17-885d-c7f6c4ea747c', 1, 'Holding water', 'holding_water', '{fixer,thiosulfate,ammonium,sulfite}', false, 80, false, '{}', '{}', NULL, NULL, 'ready_to_use', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '', false);
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7707-8303-4c3443300102', 1, 'Wash aid', 'wash_aid', '{sulfite}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '', false);
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-79cd-a1ad-64d1b7172063', 1, 'Selenium-type toner', 'toner', '{thiosulfate,ammonium,sulfite}', false, 80, true, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '', false);
INSERT INTO public.product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7722-ad03-891f77535c1e', 2, 'Neutral paper developer', 'developer', '{developer,alkali,sulfite,organic}', true, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, 180, 220, NULL, '{}', '{}', NULL, NULL, NULL, 'from memory', true);

INSERT INTO public.reading VALUES ('00000000-0000-0000-0000-000000000051', 37, '01a21293-b600-759a-9b65-858f9fd39c6d', '01a21293-b600-7ed0-9ee2-402049d2d48d', '00000000-0000-0000-0000-000000000052', 'emergence', 'passed', 25, 200, 'Thin card', true, 1100, 0, '{}', '', '2026-11-25 12:00:00+00', NULL);
INSERT INTO public.reading VALUES ('00000000-0000-0000-0000-000000000051', 38, '01a21293-b600-762e-92a5-708e20b9433a', '01a21293-b600-7ed0-9ee2-402049d2d48d', '00000000-0000-0000-0000-000000000052', 'contamination', 'failed', NULL, NULL, '', false, NULL, 0, '{hypochlorite}', 'Splashed', '2026-11-25 12:00:00+00', NULL);
INSERT INTO public.reading VALUES ('00000000-0000-0000-0000-000000000051', 39, '01a21293-b600-7d16-b10d-a73badc41fab', '01a21293-b600-7ed0-9ee2-402049d2d48d', '00000000-0000-0000-0000-000000000052', 'test_print', 'failed', NULL, NULL, '', false, NULL, 0, '{}', '', '2026-11-25 12:00:00+00', 40);

INSERT INTO public.rinse VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7199-b2df-aa1a776b65d1', 46, 48);

INSERT INTO public.room_check VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-75dc-a069-67beaad3474d', 'A fan that runs: true', 'Hold the meter to the grille', 7, 'invented for this test', 'Open the door', true, NULL, 'L/s', 50000, 90000, '2026-11-25', NULL);
INSERT INTO public.room_check VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73c3-b353-b39db1b61497', 'A fan that runs: false', 'Hold the meter to the grille', 7, 'invented for this test', 'Open the door', true, NULL, 'L/s', 50000, 90000, '2026-11-25', NULL);

INSERT INTO public.room_check_result VALUES ('00000000-0000-0000-0000-000000000051', 60, '01a21293-b600-7596-9bf2-3b8af2570e81', '01a21293-b600-75dc-a069-67beaad3474d', '00000000-0000-0000-0000-000000000052', true, 'Felt so', 60000, 'L/s', '2026-12-02', '2026-11-25 12:00:00+00', NULL);
INSERT INTO public.room_check_result VALUES ('00000000-0000-0000-0000-000000000051', 62, '01a21293-b600-7003-9318-e9a2b8dc436c', '01a21293-b600-73c3-b353-b39db1b61497', '00000000-0000-0000-0000-000000000052', false, 'Felt so', 60000, 'L/s', '2026-12-02', '2026-11-25 12:00:00+00', 63);

INSERT INTO public.room_name VALUES ('00000000-0000-0000-0000-000000000051', 'ours', 'Ours', false, NULL);

INSERT INTO public.room_setting VALUES ('00000000-0000-0000-0000-000000000051', 'Ours', 'Europe/Berlin', 'EUR', 'metric', '.', '{0,0,0,0,0,0,0}', '{1440,1440,1440,1440,1440,1440,1440}', 10, 800000000, 10080, 'clp', '', '', '', '', '', '', 1, false, 3, 100000000, NULL, NULL, NULL, false, 30);

INSERT INTO public.screen VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ecd-9170-330c0684a27b', 'board', 'Wall', 'safelight', '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 97, NULL, NULL);
INSERT INTO public.screen VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-73a8-bb75-31cf7aa0dfb5', 'door', 'Entrance', 'safelight', '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 98, '2026-11-25 12:00:00+00', 100);

INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-792b-bad4-fd86fc1d3e14', '5×7 in', 1778, 1270, 1, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-72a8-8a16-6d72425e70df', '8×10 in', 2540, 2032, 2, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-75e5-97b1-b362af1102c5', '9.5×12 in (24×30.5 cm)', 3048, 2413, 3, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-74c7-8c33-7a0ede7a8aec', '11×14 in', 3556, 2794, 4, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-76eb-8eb1-b07310be704d', '12×16 in', 4064, 3048, 5, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7064-a594-700888f90155', '16×20 in', 5080, 4064, 6, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-740c-94df-552c91eb4b39', 'A5', 2100, 1480, 7, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-71ec-816f-31f07d1ae0a7', 'A4', 2970, 2100, 8, NULL);
INSERT INTO public.sheet_size VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-72d1-824c-ad1f1868924d', 'A3', 4200, 2970, 9, NULL);

INSERT INTO public.space VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-74ec-aea7-ed60b5dd2bee', 'Cellar', 1, NULL);

INSERT INTO public.stay VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7d89-8452-0299b84aa837', '01a21293-b600-7e46-9bd5-435a747ffe25', '01a21293-b600-7783-87e0-fabe06bcdb67', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', 'single');
INSERT INTO public.stay VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ed0-9ee2-402049d2d48d', '01a21293-b600-7199-b2df-aa1a776b65d1', '01a21293-b600-7783-87e0-fabe06bcdb67', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', 'single');
INSERT INTO public.stay VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ffe-908f-7571e66aad51', '01a21293-b600-7199-b2df-aa1a776b65d1', '01a21293-b600-7783-87e0-fabe06bcdb67', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', 'first');
INSERT INTO public.stay VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-730d-92d3-f0efbbb39ae3', '01a21293-b600-734b-96aa-ff4ffda8c7ec', '01a21293-b600-7783-87e0-fabe06bcdb67', '2026-11-25 12:00:00+00', NULL, 'single');

INSERT INTO public.stock_solution VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-77e2-8ea4-1ba771733070', '01a21293-b600-7722-ad03-891f77535c1e', 1, 2000, 2000000, 200000, 864000, 86400, '2026-11-25 12:00:00+00', '00000000-0000-0000-0000-000000000052', 50, '2026-11-25 12:00:00+00');

INSERT INTO public.topic VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7948-81d4-8889410d1021', 1, 1, 'by_trait', '{sensitiser,acid_or_alkali}', 24, NULL);
INSERT INTO public.topic VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-78b5-8ae7-000577d32806', 2, 1, 'by_product', '{}', 24, NULL);

INSERT INTO public.topic_product VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-78b5-8ae7-000577d32806', '01a21293-b600-72dd-b979-955fa32a1984');

INSERT INTO public.topic_version VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7948-81d4-8889410d1021', 1, 'by_trait', 'Say it aloud.', 83, '2026-11-25 12:00:00+00');
INSERT INTO public.topic_version VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-78b5-8ae7-000577d32806', 1, 'by_product', 'Say it aloud.', 84, '2026-11-25 12:00:00+00');
INSERT INTO public.topic_version VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-78b5-8ae7-000577d32806', 2, 'by_product', 'Other words.', 85, '2026-11-25 12:00:00+00');

INSERT INTO public.tray VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7199-b2df-aa1a776b65d1', '01a21293-b600-7783-87e0-fabe06bcdb67', 'Tray 1', 1, 3500, 2800, 700, 80, NULL, 'any');
INSERT INTO public.tray VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7e46-9bd5-435a747ffe25', '01a21293-b600-7783-87e0-fabe06bcdb67', 'Tray 2', 2, 3500, 2800, 700, 80, NULL, 'any');
INSERT INTO public.tray VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7568-905e-0e04d137c7c4', '01a21293-b600-7783-87e0-fabe06bcdb67', 'Tray 3', 3, 3500, 2800, 700, 80, NULL, 'any');
INSERT INTO public.tray VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-734b-96aa-ff4ffda8c7ec', '01a21293-b600-7783-87e0-fabe06bcdb67', 'Tray 4', 4, 3500, 2800, 700, 80, NULL, 'any');

INSERT INTO public.wash VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7783-87e0-fabe06bcdb67', '2026-11-25 12:00:00+00', '2026-11-25 12:00:00+00', '01a21293-b600-7916-98e5-433f75a80c1d', 600, 57);

INSERT INTO public.wear VALUES ('00000000-0000-0000-0000-000000000051', 28, '01a21293-b600-7ed0-9ee2-402049d2d48d', 60000000);
INSERT INTO public.wear VALUES ('00000000-0000-0000-0000-000000000051', 28, '01a21293-b600-7d89-8452-0299b84aa837', 60000000);
INSERT INTO public.wear VALUES ('00000000-0000-0000-0000-000000000051', 29, '01a21293-b600-7ed0-9ee2-402049d2d48d', 60000000);
INSERT INTO public.wear VALUES ('00000000-0000-0000-0000-000000000051', 29, '01a21293-b600-7d89-8452-0299b84aa837', 60000000);
INSERT INTO public.wear VALUES ('00000000-0000-0000-0000-000000000051', 36, '01a21293-b600-7ed0-9ee2-402049d2d48d', 100000000);

INSERT INTO public.workshop VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7f96-8015-50da0d87e942', 'First prints', '00000000-0000-0000-0000-000000000052', NULL, '2026-11-25 12:00:00+00', '2026-11-25 15:00:00+00', 5, '{}', '00000000-0000-0000-0000-000000000052', 113, 114, 'Nobody could come', NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.workshop VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-7ee4-ad60-3dc909407b05', 'First prints', '00000000-0000-0000-0000-000000000053', NULL, '2026-11-25 12:00:00+00', '2026-11-25 15:00:00+00', 5, '{}', '00000000-0000-0000-0000-000000000052', 115, NULL, NULL, '2026-11-25 12:00:00+00', 116, '2029-08-21 12:00:01+00', '2026-11-25 12:00:00+00', 121, true);
INSERT INTO public.workshop VALUES ('00000000-0000-0000-0000-000000000051', '01a21293-b600-74e4-bb55-3054d070abbf', 'First prints', '00000000-0000-0000-0000-000000000052', NULL, '2026-11-25 12:00:00+00', '2026-11-25 15:00:00+00', 5, '{}', '00000000-0000-0000-0000-000000000052', 123, NULL, NULL, '2026-11-25 12:00:00+00', 124, '2029-08-21 12:00:00+00', '2026-11-25 12:00:00+00', 126, false);

ALTER TABLE ONLY public._sqlx_migrations
    ADD CONSTRAINT _sqlx_migrations_pkey PRIMARY KEY (version);

ALTER TABLE ONLY public.airing
    ADD CONSTRAINT airing_pkey PRIMARY KEY (room_id, id);

ALTER TABLE ONLY public.avoid_note
    ADD CONSTRAINT avoid_note_pkey PRIMARY KEY (room_id, id);

ALTER TABLE ONLY public.beside
    ADD CONSTRAINT beside_pkey PRIMARY KEY (room_id, seq);

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

ALTER TABLE ONLY public.exhaust_waiver
    ADD CONSTRAINT exhaust_waiver_pkey PRIMARY KEY (room_id, place_id);

ALTER TABLE ONLY public.expected_told
    ADD CONSTRAINT expected_told_pkey PRIMARY KEY (room_id, presence_id, expected_at, person_id);

ALTER TABLE ONLY public.extension
    ADD CONSTRAINT extension_pkey PRIMARY KEY (room_id, seq);

ALTER TABLE ONLY public.finishing
    ADD CONSTRAINT finishing_pkey PRIMARY KEY (room_id, line_id, paper_class_id);

ALTER TABLE ONLY public.flow_measurement
    ADD CONSTRAINT flow_measurement_id_key UNIQUE (room_id, id);

ALTER TABLE ONLY public.flow_measurement
    ADD CONSTRAINT flow_measurement_pkey PRIMARY KEY (room_id, seq);

ALTER TABLE ONLY public.fog_test
    ADD CONSTRAINT fog_test_id_key UNIQUE (room_id, id);

ALTER TABLE ONLY public.fog_test
    ADD CONSTRAINT fog_test_pkey PRIMARY KEY (room_id, seq);

ALTER TABLE ONLY public.fog_test_told
    ADD CONSTRAINT fog_test_told_pkey PRIMARY KEY (room_id, lamp_id, again_by);

ALTER TABLE ONLY public.guest
    ADD CONSTRAINT guest_pkey PRIMARY KEY (room_id, id);

ALTER TABLE ONLY public.guest
    ADD CONSTRAINT guest_place_key UNIQUE (room_id, signed_in_seq, place);

ALTER TABLE ONLY public.handover
    ADD CONSTRAINT handover_pkey PRIMARY KEY (room_id, id);

ALTER TABLE ONLY public.head
    ADD CONSTRAINT head_pkey PRIMARY KEY (room_id);

ALTER TABLE ONLY public.incident_look
    ADD CONSTRAINT incident_look_pkey PRIMARY KEY (room_id, seq);

ALTER TABLE ONLY public.incident
    ADD CONSTRAINT incident_number_key UNIQUE (room_id, number);

ALTER TABLE ONLY public.incident
    ADD CONSTRAINT incident_pkey PRIMARY KEY (room_id, id);

ALTER TABLE ONLY public.induction
    ADD CONSTRAINT induction_pkey PRIMARY KEY (room_id, id);

ALTER TABLE ONLY public.induction_scan
    ADD CONSTRAINT induction_scan_pkey PRIMARY KEY (room_id, id);

ALTER TABLE ONLY public.induction_scan
    ADD CONSTRAINT induction_scan_seq_key UNIQUE (room_id, seq);

ALTER TABLE ONLY public.induction
    ADD CONSTRAINT induction_seq_key UNIQUE (room_id, seq);

ALTER TABLE ONLY public.induction_told
    ADD CONSTRAINT induction_told_pkey PRIMARY KEY (room_id, person_id, topic_id, good_until);

ALTER TABLE ONLY public.induction_topic
    ADD CONSTRAINT induction_topic_pkey PRIMARY KEY (room_id, induction_id, topic_id);

ALTER TABLE ONLY public.ingredient
    ADD CONSTRAINT ingredient_pkey PRIMARY KEY (room_id, product_id, "position");

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

ALTER TABLE ONLY public.place_air
    ADD CONSTRAINT place_air_pkey PRIMARY KEY (room_id, place_id);

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

ALTER TABLE ONLY public.room_check
    ADD CONSTRAINT room_check_pkey PRIMARY KEY (room_id, id);

ALTER TABLE ONLY public.room_check_result
    ADD CONSTRAINT room_check_result_id_key UNIQUE (room_id, id);

ALTER TABLE ONLY public.room_check_result
    ADD CONSTRAINT room_check_result_pkey PRIMARY KEY (room_id, seq);

ALTER TABLE ONLY public.room_check_told
    ADD CONSTRAINT room_check_told_pkey PRIMARY KEY (room_id, room_check_id, due_on);

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

ALTER TABLE ONLY public.supplement_told
    ADD CONSTRAINT supplement_told_pkey PRIMARY KEY (room_id, product_id, topic_id, counts_from_version);

ALTER TABLE ONLY public.throttle
    ADD CONSTRAINT throttle_pkey PRIMARY KEY (scope, subject);

ALTER TABLE ONLY public.token
    ADD CONSTRAINT token_pkey PRIMARY KEY (room_id, id);

ALTER TABLE ONLY public.topic
    ADD CONSTRAINT topic_pkey PRIMARY KEY (room_id, id);

ALTER TABLE ONLY public.topic_product
    ADD CONSTRAINT topic_product_pkey PRIMARY KEY (room_id, topic_id, product_id);

ALTER TABLE ONLY public.topic_version
    ADD CONSTRAINT topic_version_pkey PRIMARY KEY (room_id, topic_id, version);

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

ALTER TABLE ONLY public.workshop
    ADD CONSTRAINT workshop_pkey PRIMARY KEY (room_id, id);

CREATE UNIQUE INDEX airing_open_key ON public.airing USING btree (room_id, place_id) WHERE (ended_seq IS NULL);

CREATE INDEX airing_place_idx ON public.airing USING btree (room_id, place_id, began_at);

CREATE INDEX avoid_note_person_idx ON public.avoid_note USING btree (room_id, person_id);

CREATE INDEX entry_about_id_idx ON public.entry_about USING btree (room_id, noun, id, seq);

CREATE INDEX entry_actor_idx ON public.entry USING btree (room_id, actor, seq);

CREATE INDEX entry_kind_idx ON public.entry USING btree (room_id, kind, seq);

CREATE INDEX extension_mix_idx ON public.extension USING btree (room_id, mix_id, seq);

CREATE INDEX flow_measurement_place_idx ON public.flow_measurement USING btree (room_id, place_id, what, measured_on, seq);

CREATE INDEX fog_test_lamp_idx ON public.fog_test USING btree (room_id, lamp_id, paper_class_id, happened_at, seq);

CREATE INDEX guest_named_idx ON public.guest USING btree (room_id, signed_in_at) WHERE (erased_seq IS NULL);

CREATE INDEX guest_workshop_idx ON public.guest USING btree (room_id, workshop_id);

CREATE UNIQUE INDEX handover_open_key ON public.handover USING btree (room_id, from_person_id) WHERE ((confirmed_seq IS NULL) AND (withdrawn_seq IS NULL));

CREATE INDEX handover_opened_idx ON public.handover USING btree (room_id, opened_seq);

CREATE INDEX incident_person_idx ON public.incident USING btree (room_id, person_id);

CREATE INDEX induction_person_idx ON public.induction USING btree (room_id, person_id, seq);

CREATE INDEX induction_scan_induction_idx ON public.induction_scan USING btree (room_id, induction_id);

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

CREATE INDEX pass_workshop_idx ON public.pass USING btree (room_id, workshop_id) WHERE (workshop_id IS NOT NULL);

CREATE INDEX presence_ended_idx ON public.presence USING btree (room_id, ended_at) WHERE (ended_at IS NOT NULL);

CREATE INDEX presence_expected_idx ON public.presence USING btree (room_id, expected_at) WHERE (expected_at IS NOT NULL);

CREATE UNIQUE INDEX presence_open_key ON public.presence USING btree (room_id, person_id) WHERE (ended_seq IS NULL);

CREATE INDEX reading_fresh_idx ON public.reading USING btree (room_id, kind, seq) WHERE (is_fresh AND (undone_by IS NULL));

CREATE INDEX reading_mix_idx ON public.reading USING btree (room_id, mix_id, kind, seq);

CREATE INDEX room_check_result_check_idx ON public.room_check_result USING btree (room_id, room_check_id, happened_at, seq);

CREATE UNIQUE INDEX screen_name_key ON public.screen USING btree (room_id, lower(name)) WHERE (ended_seq IS NULL);

CREATE INDEX session_person_idx ON public.session USING btree (person_id);

CREATE INDEX stay_ends_idx ON public.stay USING btree (room_id, line_id, COALESCE(until_at, 'infinity'::timestamp with time zone));

CREATE INDEX stock_solution_product_idx ON public.stock_solution USING btree (room_id, product_id);

CREATE INDEX wear_mix_idx ON public.wear USING btree (room_id, mix_id, seq);

CREATE INDEX work_due_idx ON public.work USING btree (due_at);

CREATE INDEX workshop_begins_idx ON public.workshop USING btree (room_id, begins_at);

CREATE TRIGGER entry_append_only BEFORE DELETE OR UPDATE ON public.entry FOR EACH ROW EXECUTE FUNCTION public.refuse_change();

CREATE TRIGGER entry_no_truncate BEFORE TRUNCATE ON public.entry FOR EACH STATEMENT EXECUTE FUNCTION public.refuse_change();

ALTER TABLE ONLY public.airing
    ADD CONSTRAINT airing_began_by_fkey FOREIGN KEY (began_by) REFERENCES public.person(id);

ALTER TABLE ONLY public.airing
    ADD CONSTRAINT airing_ended_by_fkey FOREIGN KEY (ended_by) REFERENCES public.person(id);

ALTER TABLE ONLY public.airing
    ADD CONSTRAINT airing_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.avoid_note
    ADD CONSTRAINT avoid_note_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.avoid_note
    ADD CONSTRAINT avoid_note_product_fkey FOREIGN KEY (room_id, product_id) REFERENCES public.product(room_id, id);

ALTER TABLE ONLY public.avoid_note
    ADD CONSTRAINT avoid_note_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.beside
    ADD CONSTRAINT beside_entry_fkey FOREIGN KEY (room_id, seq) REFERENCES public.entry(room_id, seq);

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

ALTER TABLE ONLY public.exhaust_waiver
    ADD CONSTRAINT exhaust_waiver_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.expected_told
    ADD CONSTRAINT expected_told_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.expected_told
    ADD CONSTRAINT expected_told_presence_fkey FOREIGN KEY (room_id, presence_id) REFERENCES public.presence(room_id, id);

ALTER TABLE ONLY public.extension
    ADD CONSTRAINT extension_mix_fkey FOREIGN KEY (room_id, mix_id) REFERENCES public.mix(room_id, id);

ALTER TABLE ONLY public.extension
    ADD CONSTRAINT extension_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.finishing
    ADD CONSTRAINT finishing_line_fkey FOREIGN KEY (room_id, line_id) REFERENCES public.line(room_id, id);

ALTER TABLE ONLY public.finishing
    ADD CONSTRAINT finishing_paper_class_fkey FOREIGN KEY (room_id, paper_class_id) REFERENCES public.paper_class(room_id, id);

ALTER TABLE ONLY public.flow_measurement
    ADD CONSTRAINT flow_measurement_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.flow_measurement
    ADD CONSTRAINT flow_measurement_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.fog_test
    ADD CONSTRAINT fog_test_lamp_fkey FOREIGN KEY (room_id, lamp_id) REFERENCES public.lamp(room_id, id);

ALTER TABLE ONLY public.fog_test
    ADD CONSTRAINT fog_test_paper_class_fkey FOREIGN KEY (room_id, paper_class_id) REFERENCES public.paper_class(room_id, id);

ALTER TABLE ONLY public.fog_test
    ADD CONSTRAINT fog_test_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.fog_test_told
    ADD CONSTRAINT fog_test_told_lamp_fkey FOREIGN KEY (room_id, lamp_id) REFERENCES public.lamp(room_id, id);

ALTER TABLE ONLY public.guest
    ADD CONSTRAINT guest_workshop_fkey FOREIGN KEY (room_id, workshop_id) REFERENCES public.workshop(room_id, id);

ALTER TABLE ONLY public.handover
    ADD CONSTRAINT handover_from_person_id_fkey FOREIGN KEY (from_person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.handover
    ADD CONSTRAINT handover_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.handover
    ADD CONSTRAINT handover_to_person_id_fkey FOREIGN KEY (to_person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.head
    ADD CONSTRAINT head_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.room_name(room_id);

ALTER TABLE ONLY public.incident_look
    ADD CONSTRAINT incident_look_incident_fkey FOREIGN KEY (room_id, incident_id) REFERENCES public.incident(room_id, id);

ALTER TABLE ONLY public.incident_look
    ADD CONSTRAINT incident_look_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.incident
    ADD CONSTRAINT incident_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.incident
    ADD CONSTRAINT incident_reported_by_fkey FOREIGN KEY (reported_by) REFERENCES public.person(id);

ALTER TABLE ONLY public.incident
    ADD CONSTRAINT incident_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.induction
    ADD CONSTRAINT induction_inducer_id_fkey FOREIGN KEY (inducer_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.induction
    ADD CONSTRAINT induction_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.induction
    ADD CONSTRAINT induction_renews_fkey FOREIGN KEY (room_id, renews_id) REFERENCES public.induction(room_id, id);

ALTER TABLE ONLY public.induction
    ADD CONSTRAINT induction_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.induction_scan
    ADD CONSTRAINT induction_scan_induction_fkey FOREIGN KEY (room_id, induction_id) REFERENCES public.induction(room_id, id);

ALTER TABLE ONLY public.induction_told
    ADD CONSTRAINT induction_told_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.induction_told
    ADD CONSTRAINT induction_told_topic_fkey FOREIGN KEY (room_id, topic_id) REFERENCES public.topic(room_id, id);

ALTER TABLE ONLY public.induction_topic
    ADD CONSTRAINT induction_topic_induction_fkey FOREIGN KEY (room_id, induction_id) REFERENCES public.induction(room_id, id);

ALTER TABLE ONLY public.induction_topic
    ADD CONSTRAINT induction_topic_version_fkey FOREIGN KEY (room_id, topic_id, version) REFERENCES public.topic_version(room_id, topic_id, version);

ALTER TABLE ONLY public.ingredient
    ADD CONSTRAINT ingredient_product_fkey FOREIGN KEY (room_id, product_id) REFERENCES public.product(room_id, id);

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

ALTER TABLE ONLY public.pass
    ADD CONSTRAINT pass_workshop_fkey FOREIGN KEY (room_id, workshop_id) REFERENCES public.workshop(room_id, id);

ALTER TABLE ONLY public.pin
    ADD CONSTRAINT pin_membership_fkey FOREIGN KEY (room_id, person_id) REFERENCES public.membership(room_id, person_id);

ALTER TABLE ONLY public.place_air
    ADD CONSTRAINT place_air_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.presence
    ADD CONSTRAINT presence_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.presence
    ADD CONSTRAINT presence_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.presence
    ADD CONSTRAINT presence_supervisor_id_fkey FOREIGN KEY (supervisor_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.product
    ADD CONSTRAINT product_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.reading
    ADD CONSTRAINT reading_mix_fkey FOREIGN KEY (room_id, mix_id) REFERENCES public.mix(room_id, id);

ALTER TABLE ONLY public.reading
    ADD CONSTRAINT reading_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.rinse
    ADD CONSTRAINT rinse_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.room_check_result
    ADD CONSTRAINT room_check_result_check_fkey FOREIGN KEY (room_id, room_check_id) REFERENCES public.room_check(room_id, id);

ALTER TABLE ONLY public.room_check_result
    ADD CONSTRAINT room_check_result_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.room_check
    ADD CONSTRAINT room_check_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.room_check
    ADD CONSTRAINT room_check_space_fkey FOREIGN KEY (room_id, space_id) REFERENCES public.space(room_id, id);

ALTER TABLE ONLY public.room_check_told
    ADD CONSTRAINT room_check_told_check_fkey FOREIGN KEY (room_id, room_check_id) REFERENCES public.room_check(room_id, id);

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

ALTER TABLE ONLY public.supplement_told
    ADD CONSTRAINT supplement_told_product_fkey FOREIGN KEY (room_id, product_id) REFERENCES public.product(room_id, id);

ALTER TABLE ONLY public.supplement_told
    ADD CONSTRAINT supplement_told_topic_fkey FOREIGN KEY (room_id, topic_id) REFERENCES public.topic(room_id, id);

ALTER TABLE ONLY public.token
    ADD CONSTRAINT token_person_id_fkey FOREIGN KEY (person_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.topic_product
    ADD CONSTRAINT topic_product_product_fkey FOREIGN KEY (room_id, product_id) REFERENCES public.product(room_id, id);

ALTER TABLE ONLY public.topic_product
    ADD CONSTRAINT topic_product_topic_fkey FOREIGN KEY (room_id, topic_id) REFERENCES public.topic(room_id, id);

ALTER TABLE ONLY public.topic
    ADD CONSTRAINT topic_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.topic_version
    ADD CONSTRAINT topic_version_topic_fkey FOREIGN KEY (room_id, topic_id) REFERENCES public.topic(room_id, id);

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

ALTER TABLE ONLY public.workshop
    ADD CONSTRAINT workshop_leader_id_fkey FOREIGN KEY (leader_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.workshop
    ADD CONSTRAINT workshop_paid_by_id_fkey FOREIGN KEY (paid_by_id) REFERENCES public.person(id);

ALTER TABLE ONLY public.workshop
    ADD CONSTRAINT workshop_room_id_fkey FOREIGN KEY (room_id) REFERENCES public.head(room_id);

ALTER TABLE ONLY public.workshop
    ADD CONSTRAINT workshop_space_fkey FOREIGN KEY (room_id, space_id) REFERENCES public.space(room_id, id);

ALTER TABLE public.airing ENABLE ROW LEVEL SECURITY;

CREATE POLICY airing_room ON public.airing USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.avoid_note ENABLE ROW LEVEL SECURITY;

CREATE POLICY avoid_note_own ON public.avoid_note USING (((room_id = ( SELECT public.current_room() AS current_room)) AND (person_id = ( SELECT public.current_person() AS current_person)))) WITH CHECK (((room_id = ( SELECT public.current_room() AS current_room)) AND (person_id = ( SELECT public.current_person() AS current_person))));

ALTER TABLE public.beside ENABLE ROW LEVEL SECURITY;

CREATE POLICY beside_room ON public.beside USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

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

ALTER TABLE public.exhaust_waiver ENABLE ROW LEVEL SECURITY;

CREATE POLICY exhaust_waiver_room ON public.exhaust_waiver USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.expected_told ENABLE ROW LEVEL SECURITY;

CREATE POLICY expected_told_room ON public.expected_told USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.extension ENABLE ROW LEVEL SECURITY;

CREATE POLICY extension_room ON public.extension USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.finishing ENABLE ROW LEVEL SECURITY;

CREATE POLICY finishing_room ON public.finishing USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.flow_measurement ENABLE ROW LEVEL SECURITY;

CREATE POLICY flow_measurement_room ON public.flow_measurement USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.fog_test ENABLE ROW LEVEL SECURITY;

CREATE POLICY fog_test_room ON public.fog_test USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.fog_test_told ENABLE ROW LEVEL SECURITY;

CREATE POLICY fog_test_told_room ON public.fog_test_told USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.guest ENABLE ROW LEVEL SECURITY;

CREATE POLICY guest_room ON public.guest USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.handover ENABLE ROW LEVEL SECURITY;

CREATE POLICY handover_room ON public.handover USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.head ENABLE ROW LEVEL SECURITY;

CREATE POLICY head_made ON public.head FOR INSERT WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

CREATE POLICY head_moved ON public.head FOR UPDATE USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

CREATE POLICY head_seen ON public.head FOR SELECT USING (true);

ALTER TABLE public.incident ENABLE ROW LEVEL SECURITY;

ALTER TABLE public.incident_look ENABLE ROW LEVEL SECURITY;

CREATE POLICY incident_look_room ON public.incident_look USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

CREATE POLICY incident_room ON public.incident USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.induction ENABLE ROW LEVEL SECURITY;

CREATE POLICY induction_room ON public.induction USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.induction_scan ENABLE ROW LEVEL SECURITY;

CREATE POLICY induction_scan_room ON public.induction_scan USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.induction_told ENABLE ROW LEVEL SECURITY;

CREATE POLICY induction_told_room ON public.induction_told USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.induction_topic ENABLE ROW LEVEL SECURITY;

CREATE POLICY induction_topic_room ON public.induction_topic USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.ingredient ENABLE ROW LEVEL SECURITY;

CREATE POLICY ingredient_room ON public.ingredient USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

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

ALTER TABLE public.place_air ENABLE ROW LEVEL SECURITY;

CREATE POLICY place_air_room ON public.place_air USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.presence ENABLE ROW LEVEL SECURITY;

CREATE POLICY presence_room ON public.presence USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.product ENABLE ROW LEVEL SECURITY;

CREATE POLICY product_room ON public.product USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.reading ENABLE ROW LEVEL SECURITY;

CREATE POLICY reading_room ON public.reading USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.rinse ENABLE ROW LEVEL SECURITY;

CREATE POLICY rinse_room ON public.rinse USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.room_check ENABLE ROW LEVEL SECURITY;

ALTER TABLE public.room_check_result ENABLE ROW LEVEL SECURITY;

CREATE POLICY room_check_result_room ON public.room_check_result USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

CREATE POLICY room_check_room ON public.room_check USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.room_check_told ENABLE ROW LEVEL SECURITY;

CREATE POLICY room_check_told_room ON public.room_check_told USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

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

ALTER TABLE public.supplement_told ENABLE ROW LEVEL SECURITY;

CREATE POLICY supplement_told_room ON public.supplement_told USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.token ENABLE ROW LEVEL SECURITY;

CREATE POLICY token_room ON public.token USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.topic ENABLE ROW LEVEL SECURITY;

ALTER TABLE public.topic_product ENABLE ROW LEVEL SECURITY;

CREATE POLICY topic_product_room ON public.topic_product USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

CREATE POLICY topic_room ON public.topic USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.topic_version ENABLE ROW LEVEL SECURITY;

CREATE POLICY topic_version_room ON public.topic_version USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.tray ENABLE ROW LEVEL SECURITY;

CREATE POLICY tray_room ON public.tray USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.verification ENABLE ROW LEVEL SECURITY;

CREATE POLICY verification_room ON public.verification USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.wash ENABLE ROW LEVEL SECURITY;

CREATE POLICY wash_room ON public.wash USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.wear ENABLE ROW LEVEL SECURITY;

CREATE POLICY wear_room ON public.wear USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.workshop ENABLE ROW LEVEL SECURITY;

CREATE POLICY workshop_room ON public.workshop USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

