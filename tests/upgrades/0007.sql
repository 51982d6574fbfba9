
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

INSERT INTO public._sqlx_migrations VALUES (1, 'spine', '2026-11-26 03:00:11.173221+00', true, '\x84c32b94e05831a5ce25afc8584483edda787d69cd40988d5c84e198abfa9794c8f97abeea09bb5cac39ff5471239ed6', 51802120);
INSERT INTO public._sqlx_migrations VALUES (2, 'verification', '2026-11-26 03:00:11.225782+00', true, '\x2b1f7c9c474ed7e7ec74846825b23a9445740b41802c9ae269726c98339dc9faa521b256ba5af419093e2d226ffa4d43', 1855265);
INSERT INTO public._sqlx_migrations VALUES (3, 'bench', '2026-11-26 03:00:11.228016+00', true, '\x6cb8875096755c0cfc1fcab3665aec30c953f9156f3f4e11e379d99d127207d177b1dff577bae141ccfa9fbeb5386a12', 7943434);
INSERT INTO public._sqlx_migrations VALUES (4, 'chemistry', '2026-11-26 03:00:11.2363+00', true, '\x9999f1c9113f0b97ab636d99dfb2d7c7fc0fdee7c575dc46151ae7d3873bb5a9bd494611371587a608a5b195797b61ae', 4904842);
INSERT INTO public._sqlx_migrations VALUES (5, 'mixes', '2026-11-26 03:00:11.241498+00', true, '\xd24857ab5757b3efbb4fcf241c04a945215d47b321bd3728a069ec684d986fc931bc755cc0bcaefa7472617f220c5df2', 13253969);
INSERT INTO public._sqlx_migrations VALUES (6, 'outages', '2026-11-26 03:00:11.255189+00', true, '\x2676e5baaac2dd5593691d53d6aa121c9406b0d9c9b01aebe0f484dc3da5a9b7cb28525105060be6c67a948fb62d33f9', 6709051);
INSERT INTO public._sqlx_migrations VALUES (7, 'stock solutions', '2026-11-26 03:00:11.262242+00', true, '\x0186ef63a78c5a07aab58c9b08b90532d3218396c52ddb289d28a9b6b473373cc00974de91ef128d8fe47bb100cdbcb2', 3440869);

INSERT INTO public.bottle VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-7c85-8b6b-dfa2e8215c5a', 'Brown 1', 1000000, NULL);
INSERT INTO public.bottle VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-7275-9a04-bced26fa2c8f', 'Accordion', 2000000, NULL);

INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7177-a8cc-d4300deb2915', '01a20658-c791-7a84-a784-dc1ffaea93e6', 80000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7177-a8cc-d4300deb2915', '01a20658-c791-7af1-80ea-52e052102102', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7177-a8cc-d4300deb2915', '01a20658-c791-77f9-8100-02fb42103f23', 80000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-73da-ad8f-caee00c6a293', '01a20658-c791-7a84-a784-dc1ffaea93e6', 70000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-73da-ad8f-caee00c6a293', '01a20658-c791-7af1-80ea-52e052102102', 35000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-73da-ad8f-caee00c6a293', '01a20658-c791-77f9-8100-02fb42103f23', 70000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7c53-813e-7b6780677331', '01a20658-c791-7a84-a784-dc1ffaea93e6', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7c53-813e-7b6780677331', '01a20658-c791-7af1-80ea-52e052102102', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7c53-813e-7b6780677331', '01a20658-c791-77f9-8100-02fb42103f23', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7c53-813e-7b6780677331', '01a20658-c791-7a84-a784-dc1ffaea93e6', 80000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7c53-813e-7b6780677331', '01a20658-c791-7af1-80ea-52e052102102', 40000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7c53-813e-7b6780677331', '01a20658-c791-77f9-8100-02fb42103f23', 80000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7c53-813e-7b6780677331', '01a20658-c791-7a84-a784-dc1ffaea93e6', 80000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7c53-813e-7b6780677331', '01a20658-c791-7af1-80ea-52e052102102', 40000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7c53-813e-7b6780677331', '01a20658-c791-77f9-8100-02fb42103f23', 80000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-766f-91d5-50961e98123e', '01a20658-c791-7a84-a784-dc1ffaea93e6', 40000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-766f-91d5-50961e98123e', '01a20658-c791-7af1-80ea-52e052102102', 20000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-766f-91d5-50961e98123e', '01a20658-c791-77f9-8100-02fb42103f23', 40000, 'from memory', 'first');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-766f-91d5-50961e98123e', '01a20658-c791-7a84-a784-dc1ffaea93e6', 40000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-766f-91d5-50961e98123e', '01a20658-c791-7af1-80ea-52e052102102', 20000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-766f-91d5-50961e98123e', '01a20658-c791-77f9-8100-02fb42103f23', 40000, 'from memory', 'second');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-71a5-9140-6f224d791168', '01a20658-c791-7a84-a784-dc1ffaea93e6', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-71a5-9140-6f224d791168', '01a20658-c791-7af1-80ea-52e052102102', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-71a5-9140-6f224d791168', '01a20658-c791-77f9-8100-02fb42103f23', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7f49-9dee-2c9655a89e50', '01a20658-c791-7af1-80ea-52e052102102', 40000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7eff-af22-0a3fc06b9f74', '01a20658-c791-7a84-a784-dc1ffaea93e6', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7eff-af22-0a3fc06b9f74', '01a20658-c791-7af1-80ea-52e052102102', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7eff-af22-0a3fc06b9f74', '01a20658-c791-77f9-8100-02fb42103f23', 20000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7944-9c92-ac99687c901b', '01a20658-c791-7a84-a784-dc1ffaea93e6', 10000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7944-9c92-ac99687c901b', '01a20658-c791-7af1-80ea-52e052102102', 10000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7944-9c92-ac99687c901b', '01a20658-c791-77f9-8100-02fb42103f23', 10000, 'from memory', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7ada-aa14-7a4aad0cd688', '01a20658-c791-7a84-a784-dc1ffaea93e6', 100000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7ada-aa14-7a4aad0cd688', '01a20658-c791-7af1-80ea-52e052102102', 50000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7ada-aa14-7a4aad0cd688', '01a20658-c791-77f9-8100-02fb42103f23', 50000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-79e8-a7ca-eb080b3e5385', '01a20658-c791-7a84-a784-dc1ffaea93e6', 70000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-79e8-a7ca-eb080b3e5385', '01a20658-c791-7af1-80ea-52e052102102', 40000, 'common practice, no source', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-74bb-820f-eede8209285c', '01a20658-c791-7a84-a784-dc1ffaea93e6', 80000, 'invented for the demo', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-74bb-820f-eede8209285c', '01a20658-c791-7af1-80ea-52e052102102', 40000, 'invented for the demo', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-74bb-820f-eede8209285c', '01a20658-c791-77f9-8100-02fb42103f23', 80000, 'invented for the demo', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-796d-b29b-224cf9ad40f5', '01a20658-c791-7a84-a784-dc1ffaea93e6', 40000, 'invented for the demo', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-796d-b29b-224cf9ad40f5', '01a20658-c791-7af1-80ea-52e052102102', 20000, 'invented for the demo', 'single');
INSERT INTO public.capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-796d-b29b-224cf9ad40f5', '01a20658-c791-77f9-8100-02fb42103f23', 40000, 'invented for the demo', 'single');

INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7177-a8cc-d4300deb2915', '01a20658-c791-79ec-b517-c2cae277fad7', 19000, 86400, 2592000, 'from memory', 1, NULL, NULL, NULL, 250, NULL, NULL, NULL, 'common practice, no source');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-73da-ad8f-caee00c6a293', '01a20658-c791-75d5-890f-859678951dd9', 19000, 86400, 2592000, 'from memory', 1, NULL, NULL, NULL, 78, NULL, NULL, NULL, 'from memory');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7c53-813e-7b6780677331', '01a20658-c791-7110-adf1-38c7d374c735', 4000, 172800, 2592000, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, 2000, NULL, 'from memory');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-766f-91d5-50961e98123e', '01a20658-c791-7110-adf1-38c7d374c735', 9000, 172800, 2592000, 'from memory', 2, NULL, NULL, NULL, NULL, NULL, 2000, NULL, 'from memory');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-71a5-9140-6f224d791168', '01a20658-c791-7a03-afb1-6c18ec489d37', 0, 14400, 14400, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7f49-9dee-2c9655a89e50', '01a20658-c791-7355-bb10-9600183d719f', 9000, 86400, 604800, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7eff-af22-0a3fc06b9f74', '01a20658-c791-70b4-b893-fd019fb1dab0', 9000, 86400, 15552000, 'from memory', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7944-9c92-ac99687c901b', '01a20658-c791-70b4-b893-fd019fb1dab0', 19000, 86400, 15552000, 'from memory', 2, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7ada-aa14-7a4aad0cd688', '01a20658-c791-7387-a03a-c388e959ede0', 9000, 28800, 86400, 'common practice, no source', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-79e8-a7ca-eb080b3e5385', '01a20658-c791-7387-a03a-c388e959ede0', 14000, 28800, 86400, 'common practice, no source', 2, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-74bb-820f-eede8209285c', '01a20b7f-2391-7900-8c4c-66837b020171', 19000, 86400, 604800, 'invented for the demo', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');
INSERT INTO public.dilution VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-796d-b29b-224cf9ad40f5', '01a20b7f-2391-79dc-9728-8e04e1685d02', 4000, 172800, 1209600, 'invented for the demo', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '');

INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 1, '\x0000000000000000000000000000000000000000000000000000000000000000', '\xd9c1c8030a7ded2003e379ed814da951310b5dbc54dde6766a1944b5bfcd53e9', 1, 'demo', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b22736c7567223a226c61726368666f6c64222c2273657474696e6773223a7b226e616d65223a224c61726368666f6c642043656c6c6172222c227a6f6e65223a224575726f70652f4265726c696e222c2263757272656e6379223a22455552222c22756e697473223a226d6574726963222c22646563696d616c5f6d61726b223a222e222c22686f757273223a5b7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d2c7b226f70656e735f6d696e757465223a302c22636c6f7365735f6d696e757465223a313434307d5d2c2270656f706c655f6c696d6974223a31302c22746573745f66697273745f707062223a3830303030303030302c226c6174655f6e6f74655f6d696e75746573223a31303038302c2268617a6172645f72756c6573223a22636c70222c22656d657267656e6379223a7b226e756d626572223a2244656d6f3a20777269746520796f7572206f776e20656d657267656e6379206e756d6265722068657265222c22706f69736f6e5f63656e747265223a2244656d6f3a20777269746520796f757220706f69736f6e2063656e7472652068657265222c2261646472657373223a224c61726368666f6c642043656c6c61722c20616e20696e76656e74656420706c616365222c22636f6e7461637473223a224f7474696c6965204272616e6476696b2c2073746577617264206f6620746869732064656d6f222c2265796577617368223a224f6e207468652077616c6c206c656674206f66207468652073696e6b222c22646174615f736865657473223a22496e207468652072656420666f6c6465722062792074686520646f6f72227d2c2269735f756e686561746564223a66616c73652c2266697865725f736869667473223a332c227365636f6e645f626174685f707062223a3130303030303030302c22616c6b616c695f6d65715f7065725f6c69747265223a6e756c6c2c2273696c7665725f6d675f7065725f726f6c6c223a6e756c6c2c2266696c6d5f6b6570745f707062223a6e756c6c7d2c2273656564223a317d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 2, '\xd9c1c8030a7ded2003e379ed814da951310b5dbc54dde6766a1944b5bfcd53e9', '\x89293ae9f5c204f8a009b6448c721c9f8db41a7f2d629bfaae34f567a7c0553d', 1, 'joined', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b22706572736f6e223a2230316132313563622d646239622d373132372d396632382d366466396234386636363537222c22726f6c65223a2273746577617264222c226d656d6265725f6e756d626572223a312c22696e7669746174696f6e223a6e756c6c7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 3, '\x89293ae9f5c204f8a009b6448c721c9f8db41a7f2d629bfaae34f567a7c0553d', '\xf0117ccf3a7ac01562ea6491e91c61a84b968f64942c971e4b35e5b9fec6875e', 1, 'sheet_size_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373462372d393538312d393938306462363034326136222c226e616d65223a2235c3973720696e222c226c6f6e675f74656e7468735f6d6d223a313737382c2273686f72745f74656e7468735f6d6d223a313237302c22706f736974696f6e223a312c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 4, '\xf0117ccf3a7ac01562ea6491e91c61a84b968f64942c971e4b35e5b9fec6875e', '\xd11354f25e3a689f91a2241ebf863a018b88a283634b206181a4930c045b92be', 1, 'sheet_size_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373334662d613938302d663239383635643966393762222c226e616d65223a2238c397313020696e222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22706f736974696f6e223a322c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 5, '\xd11354f25e3a689f91a2241ebf863a018b88a283634b206181a4930c045b92be', '\xb6ffcb9b3d175f59f567297be482b30b9492b4c10dc4e36353f92a50131d6bbe', 1, 'sheet_size_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373238652d613763322d653565653064386365623463222c226e616d65223a22392e35c397313220696e20283234c39733302e3520636d29222c226c6f6e675f74656e7468735f6d6d223a333034382c2273686f72745f74656e7468735f6d6d223a323431332c22706f736974696f6e223a332c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 6, '\xb6ffcb9b3d175f59f567297be482b30b9492b4c10dc4e36353f92a50131d6bbe', '\x8feb296418757fdc646eea9b5dd8e2913229f7dc022dcc077f6c8be9fda44c5f', 1, 'sheet_size_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373161362d616239342d653138343131363139643936222c226e616d65223a223131c397313420696e222c226c6f6e675f74656e7468735f6d6d223a333535362c2273686f72745f74656e7468735f6d6d223a323739342c22706f736974696f6e223a342c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 7, '\x8feb296418757fdc646eea9b5dd8e2913229f7dc022dcc077f6c8be9fda44c5f', '\x077304653dcd3713fc87f5a6a584142bb3af579b717b8ef644ce873237e39644', 1, 'sheet_size_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373735352d383761612d333436383935316162386537222c226e616d65223a223132c397313620696e222c226c6f6e675f74656e7468735f6d6d223a343036342c2273686f72745f74656e7468735f6d6d223a333034382c22706f736974696f6e223a352c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 8, '\x077304653dcd3713fc87f5a6a584142bb3af579b717b8ef644ce873237e39644', '\x8754e24f60135cdd6accb0731a3375da6154e1cacc5036a5f62bdfddd27238ec', 1, 'sheet_size_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d376635342d623065332d366164663534393263393134222c226e616d65223a223136c397323020696e222c226c6f6e675f74656e7468735f6d6d223a353038302c2273686f72745f74656e7468735f6d6d223a343036342c22706f736974696f6e223a362c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 9, '\x8754e24f60135cdd6accb0731a3375da6154e1cacc5036a5f62bdfddd27238ec', '\x71816ec57d8eab74561cfc6b839554f50ea50a979771829a82ac9e0b84396bc7', 1, 'sheet_size_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373839332d386636622d313562623263386533393961222c226e616d65223a224135222c226c6f6e675f74656e7468735f6d6d223a323130302c2273686f72745f74656e7468735f6d6d223a313438302c22706f736974696f6e223a372c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 10, '\x71816ec57d8eab74561cfc6b839554f50ea50a979771829a82ac9e0b84396bc7', '\x8e71d5e43ad7bc541ff48643e5afa3d9878f850b9c2a1df9683e62615856db9d', 1, 'sheet_size_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373433642d386438362d373561663764623538363639222c226e616d65223a224134222c226c6f6e675f74656e7468735f6d6d223a323937302c2273686f72745f74656e7468735f6d6d223a323130302c22706f736974696f6e223a382c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 11, '\x8e71d5e43ad7bc541ff48643e5afa3d9878f850b9c2a1df9683e62615856db9d', '\xde9a15b202573fcb6a4d845cadbf463fd5fdcc9cd1eeff677d441b5ea53b778e', 1, 'sheet_size_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d376530382d613635322d303037333030666262366436222c226e616d65223a224133222c226c6f6e675f74656e7468735f6d6d223a343230302c2273686f72745f74656e7468735f6d6d223a323937302c22706f736974696f6e223a392c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 12, '\xde9a15b202573fcb6a4d845cadbf463fd5fdcc9cd1eeff677d441b5ea53b778e', '\x4d0221545fdb54a190b041c57e9b4ea717256676c4a2c44e9125ced73331cc39', 1, 'paper_class_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c226e616d65223a225243222c22706f736974696f6e223a312c2269735f72657469726564223a66616c73652c2273696c766572223a6e756c6c2c2263617272795f6f7665725f756c5f7065725f6d32223a6e756c6c7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 13, '\x4d0221545fdb54a190b041c57e9b4ea717256676c4a2c44e9125ced73331cc39', '\xf2b40b8036e39bf3e656f9eb94a1851d98c3a1200975451d453b3708596b3094', 1, 'paper_class_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c226e616d65223a224642222c22706f736974696f6e223a322c2269735f72657469726564223a66616c73652c2273696c766572223a6e756c6c2c2263617272795f6f7665725f756c5f7065725f6d32223a6e756c6c7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 14, '\xf2b40b8036e39bf3e656f9eb94a1851d98c3a1200975451d453b3708596b3094', '\x7dd4ca814892407adb0d41ceeee48c17dd693bc2018e60579fb32f11b76232cd', 1, 'paper_class_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c226e616d65223a2252432c20636f6f6c20746f6e65222c22706f736974696f6e223a332c2269735f72657469726564223a66616c73652c2273696c766572223a6e756c6c2c2263617272795f6f7665725f756c5f7065725f6d32223a6e756c6c7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 15, '\x7dd4ca814892407adb0d41ceeee48c17dd693bc2018e60579fb32f11b76232cd', '\x6c493f8b4a6f9ea367a07b40267f0ff5dcc4934c1e29f235ae27680543811986', 1, 'product_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373338372d613033612d633338386539353965646530222c2276657273696f6e223a312c226e616d65223a224e65757472616c20706170657220646576656c6f706572222c226b696e64223a22646576656c6f706572222c2267726f757073223a5b22646576656c6f706572222c22616c6b616c69222c2273756c66697465222c226f7267616e6963225d2c226f78696469736573223a747275652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a3138302c227761726d6573745f74656e7468735f63656c73697573223a3232302c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2264696c7574696f6e73223a5b7b226964223a2230316132303635382d633739312d376164612d616131342d376134616164306364363838222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a32383830302c22626f74746c655f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d5d7d2c7b226964223a2230316132303635382d633739312d373965382d613763612d656230383062336535333835222c2270617274735f74686f7573616e64746873223a31343030302c22747261795f6c6966655f73223a32383830302c22626f74746c655f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d5d7d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 21, '\x61dabc41dc2dc4f95a348538fbb1ebbdb33ea6749b8779f557a8a7613fef2fd0', '\xacd9fc94251c767c384d4e3f55db8bdbc23be2dc8762c16d98e35dcb1df2e288', 1, 'product_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373062342d623839332d666430313966623164616230222c2276657273696f6e223a312c226e616d65223a2253656c656e69756d2d7479706520746f6e6572222c226b696e64223a22746f6e6572222c2267726f757073223a5b227468696f73756c66617465222c22616d6d6f6e69756d222c2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a747275652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132303635382d633739312d376566662d616632322d306133666330366239663734222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a31353535323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d2c7b226964223a2230316132303635382d633739312d373934342d396339322d616339393638376339303162222c2270617274735f74686f7573616e64746873223a31393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a31353535323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a31303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a31303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a31303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 16, '\x6c493f8b4a6f9ea367a07b40267f0ff5dcc4934c1e29f235ae27680543811986', '\x1893a702a1eb22b2d542a0a58985d6bcc08567e57c26680b50fe9e0b718d5cba', 1, 'product_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373965632d623531372d633263616532373766616437222c2276657273696f6e223a312c226e616d65223a224163657469632073746f702062617468222c226b696e64223a2273746f705f62617468222c2267726f757073223a5b2261636964222c2273746f705f62617468222c226f7267616e6963225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a22616365746963222c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132303635382d633739312d373137372d613863632d643433303064656232393135222c2270617274735f74686f7573616e64746873223a31393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a3235302c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 17, '\x1893a702a1eb22b2d542a0a58985d6bcc08567e57c26680b50fe9e0b718d5cba', '\xed63a04bc11a6901531222c8c80844ec0da68eec9927f21fa2771f04ae749ff1', 1, 'product_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373564352d383930662d383539363738393531646439222c2276657273696f6e223a312c226e616d65223a224369747269632073746f702062617468222c226b696e64223a2273746f705f62617468222c2267726f757073223a5b2261636964222c2273746f705f62617468222c226f7267616e6963225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a22636974726963222c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132303635382d633739312d373364612d616438662d636165653030633661323933222c2270617274735f74686f7573616e64746873223a31393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a37382c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a33353030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 18, '\xed63a04bc11a6901531222c8c80844ec0da68eec9927f21fa2771f04ae749ff1', '\xa9cb43f1d40e3d89c6f0b1177b0845a03a5c3c1597a3905f5792897bf8e8cfc7', 1, 'product_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373131302d616466312d333863376433373463373335222c2276657273696f6e223a312c226e616d65223a22416d6d6f6e69756d207261706964206669786572222c226b696e64223a226669786572222c2267726f757073223a5b226669786572222c227468696f73756c66617465222c22616d6d6f6e69756d222c2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132303635382d633739312d376335332d383133652d376236373830363737333331222c2270617274735f74686f7573616e64746873223a343030302c22747261795f6c6966655f73223a3137323830302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a323030302c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d2c7b226964223a2230316132303635382d633739312d373636662d393164352d353039363165393831323365222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a3137323830302c22626f74746c655f6c6966655f73223a323539323030302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a323030302c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a226669727374222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a227365636f6e64222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 19, '\xa9cb43f1d40e3d89c6f0b1177b0845a03a5c3c1597a3905f5792897bf8e8cfc7', '\x9b0b5aa8c4b118d79e8d9a72183e5fbd98c2f1d02e8dd5d358156fe911e38c57', 1, 'product_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d376130332d616662312d366331386563343839643337222c2276657273696f6e223a312c226e616d65223a22486f6c64696e67207761746572222c226b696e64223a22686f6c64696e675f7761746572222c2267726f757073223a5b226669786572222c227468696f73756c66617465222c22616d6d6f6e69756d222c2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a2272656164795f746f5f757365222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132303635382d633739312d373161352d393134302d366632323464373931313638222c2270617274735f74686f7573616e64746873223a302c22747261795f6c6966655f73223a31343430302c22626f74746c655f6c6966655f73223a31343430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a2266726f6d206d656d6f7279227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 20, '\x9b0b5aa8c4b118d79e8d9a72183e5fbd98c2f1d02e8dd5d358156fe911e38c57', '\x61dabc41dc2dc4f95a348538fbb1ebbdb33ea6749b8779f557a8a7613fef2fd0', 1, 'product_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373335352d626231302d393630303138336437313966222c2276657273696f6e223a312c226e616d65223a225761736820616964222c226b696e64223a22776173685f616964222c2267726f757073223a5b2273756c66697465225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b5d2c2270726563617574696f6e5f636f646573223a5b5d2c22646174615f73686565745f6f6e223a6e756c6c2c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132303635382d633739312d376634392d396465652d326339363535613839653530222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a3630343830302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a2266726f6d206d656d6f7279222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a2266726f6d206d656d6f7279227d5d7d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 22, '\xacd9fc94251c767c384d4e3f55db8bdbc23be2dc8762c16d98e35dcb1df2e288', '\xce53fc57cf15d9a699a12c27c0d32f8b70c881c86532565c088e20b17d838e79', 1, 'line_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', NULL, '\x888630f5a7f5d20cc0679c90b0372b88629a557a00b79082b779649d2a991960', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c226e616d65223a224669727374206c696e65222c22706f736974696f6e223a312c2273706163655f6964223a6e756c6c2c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 23, '\xce53fc57cf15d9a699a12c27c0d32f8b70c881c86532565c088e20b17d838e79', '\x72aba6b4a8362c2e14f48d9a7ed8d00b84cf0cee55da6b3e2f013b67c8219045', 1, 'joined', NULL, '\x00000000000000000000000000000001', '\x90f27bede0301504be6b677f19957a2a757e2b5f0e7e0deb194b8ddac832eb73', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b22706572736f6e223a2230316132313563622d646265322d373534392d386135312d643635386662633534666437222c22726f6c65223a22747261696e6564222c226d656d6265725f6e756d626572223a322c22696e7669746174696f6e223a6e756c6c7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 25, '\xf53e916ded26e66ccd72c9ab9352f5c1e4da03d07be1fe220583caf61cbdd35e', '\xf1b9719753166fc944d3756fd7d5b9c8c6dc665156467375c330d703aa1f27f7', 1, 'joined', NULL, '\x00000000000000000000000000000003', '\x7e77fd3415bffb88d999ed2676344937c9d443604dc94d9cef4c81cceae24ac1', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b22706572736f6e223a2230316132313563622d646332302d373561322d613132302d613133333565373364643232222c22726f6c65223a22747265617375726572222c226d656d6265725f6e756d626572223a342c22696e7669746174696f6e223a6e756c6c7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 26, '\xf1b9719753166fc944d3756fd7d5b9c8c6dc665156467375c330d703aa1f27f7', '\x311307d4545f3ec33945650c06908c5b782d7414f27eda6def87a033a3140819', 1, 'outage_began', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x00000000000000000000000000000004', '\xa6f3a1df5db3b9cd9624ca59662e0570c16a763ae9b26af8357d3ac2ff107173', '2026-11-23 15:00:11.281654+00', '2026-11-23 15:00:11.281654+00', '\x7b226f75746167655f6964223a2230316132303865622d663539312d373463652d613165332d323565383462633766623662222c2277686174223a2266616e222c2273706163655f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 28, '\x95dedef062c781e545ad674bbb7635bcde2d7421c054068e84d66599ce564313', '\x2f2c9f5af09201ae9581df42106d7a8db9c0a7ea258bd52f19510e18f51d4745', 1, 'product_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x00000000000000000000000000000006', '\xb2d5635e5b42ab930216178b7f5a454a033dd5f56410873762e2acb850f3a125', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132303635382d633739312d373338372d613033612d633338386539353965646530222c2276657273696f6e223a322c226e616d65223a224e65757472616c20706170657220646576656c6f706572222c226b696e64223a22646576656c6f706572222c2267726f757073223a5b22646576656c6f706572222c22616c6b616c69222c2273756c66697465222c226f7267616e6963225d2c226f78696469736573223a747275652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b2248333032222c2248333137222c2248333138222c2248333431222c2248333531222c2248343130225d2c2270726563617574696f6e5f636f646573223a5b2250323830222c22503330352b503335312b50333338222c22503330322b50333532222c22503330382b50333133225d2c22646174615f73686565745f6f6e223a22323032362d30332d3032222c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a3138302c227761726d6573745f74656e7468735f63656c73697573223a3232302c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a2266726f6d206d656d6f7279222c2264696c7574696f6e73223a5b7b226964223a2230316132303635382d633739312d376164612d616131342d376134616164306364363838222c2270617274735f74686f7573616e64746873223a393030302c22747261795f6c6966655f73223a32383830302c22626f74746c655f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d5d7d2c7b226964223a2230316132303635382d633739312d373965382d613763612d656230383062336535333835222c2270617274735f74686f7573616e64746873223a31343030302c22747261795f6c6966655f73223a32383830302c22626f74746c655f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a37303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a22636f6d6d6f6e2070726163746963652c206e6f20736f75726365227d5d7d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 29, '\x2f2c9f5af09201ae9581df42106d7a8db9c0a7ea258bd52f19510e18f51d4745', '\xde7a3e6f808f14fc5cc7c2dcb272430f37a23c116b9196174e1c53ea580a2d2b', 1, 'product_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x00000000000000000000000000000007', '\xdbb93551cab05ea4ff03c660fc8cdb1a39ae91dc2c702b2a4a5ad676a5465fd5', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d373930302d386334632d363638333762303230313731222c2276657273696f6e223a312c226e616d65223a224c61726368666f6c642073746f702062617468222c226b696e64223a2273746f705f62617468222c2267726f757073223a5b2261636964222c2273746f705f62617468225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b2248333134225d2c2270726563617574696f6e5f636f646573223a5b2250323830222c22503330332b503336312b50333533222c22503330352b503335312b50333338222c2250333130225d2c22646174615f73686565745f6f6e223a22323032362d30332d3032222c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132306237662d323339312d373462622d383230662d656564653832303932383563222c2270617274735f74686f7573616e64746873223a31393030302c22747261795f6c6966655f73223a38363430302c22626f74746c655f6c6966655f73223a3630343830302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22696e76656e74656420666f72207468652064656d6f222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a22696e76656e74656420666f72207468652064656d6f227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a22696e76656e74656420666f72207468652064656d6f227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c226261736973223a22696e76656e74656420666f72207468652064656d6f227d5d7d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 30, '\xde7a3e6f808f14fc5cc7c2dcb272430f37a23c116b9196174e1c53ea580a2d2b', '\xa5e882cda41fe2e3d4ed65d03ac2306e742f23fda66373fe0370b452945f56e9', 1, 'product_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x00000000000000000000000000000008', '\x9a476f6bfaaf9b89cb1a76a68c8793442d2f092924782bdd7581389cd3efd620', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d373964632d393732382d386530346531363835643032222c2276657273696f6e223a312c226e616d65223a224c61726368666f6c64206669786572222c226b696e64223a226669786572222c2267726f757073223a5b226669786572222c227468696f73756c66617465222c22616d6d6f6e69756d225d2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22737465776172645f6f6e6c79223a66616c73652c2268617a6172645f636f646573223a5b2248333139225d2c2270726563617574696f6e5f636f646573223a5b2250323830222c22503330352b503335312b50333338225d2c22646174615f73686565745f6f6e223a22323032362d30332d3032222c2269735f72657469726564223a66616c73652c22666f726d223a226c6971756964222c226b69745f70617274735f74686f7573616e64746873223a5b5d2c227061636b65745f6d616b65735f756c223a6e756c6c2c227061636b6574735f6d61795f62655f64697669646564223a66616c73652c2273746f636b5f66756c6c5f6c6966655f73223a6e756c6c2c2273746f636b5f706172745f6c6966655f73223a6e756c6c2c226c6f6e676573745f6c6966655f73223a6e756c6c2c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2277617465725f7761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273746f705f61636964223a6e756c6c2c226c696d69745f70685f74686f7573616e64746873223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2264696c7574696f6e73223a5b7b226964223a2230316132306237662d323339312d373936642d623239622d323234636639616434306635222c2270617274735f74686f7573616e64746873223a343030302c22747261795f6c6966655f73223a3137323830302c22626f74746c655f6c6966655f73223a313230393630302c22636f76657265645f6c6966655f73223a6e756c6c2c22706172745f626f74746c655f6c6966655f73223a6e756c6c2c226c6966655f6261736973223a22696e76656e74656420666f72207468652064656d6f222c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c22616369645f6d6d6f6c5f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f73696e676c655f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f66697273745f6d675f7065725f6c69747265223a6e756c6c2c2273696c7665725f6c696d69745f7365636f6e645f6d675f7065725f6c69747265223a6e756c6c2c22666967757265735f6261736973223a22222c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a22696e76656e74656420666f72207468652064656d6f227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c226261736973223a22696e76656e74656420666f72207468652064656d6f227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c22706c616365223a2273696e676c65222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c226261736973223a22696e76656e74656420666f72207468652064656d6f227d5d7d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 31, '\xa5e882cda41fe2e3d4ed65d03ac2306e742f23fda66373fe0370b452945f56e9', '\x2f519895568d5184a25c5f1c215199cd3ccb7761cb1ca2e95de8f1f6ee8771e6', 1, 'line_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x00000000000000000000000000000009', '\x6a576a1f7b0d58fb58f43ccb2dbe359f393c74c48d567110f2353780319d34fe', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d376533382d616265332d636564353265653266363663222c226e616d65223a2257696e646f77206c696e65222c22706f736974696f6e223a322c2273706163655f6964223a6e756c6c2c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 33, '\x759724e9991e998779606d79c8b9e5a264c3f0349eec6f73cbf42bde1f41608f', '\xe6732cea67328b4dd4ca4e8408bef63da7a833ead7755541454abb66630ba3a2', 1, 'tray_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x0000000000000000000000000000000b', '\x8e0cfab054ddee48a633294e1d819d6e553dda56135ba367914ec209d1c34d1c', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d373963372d393266352d333134343034313734343832222c226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c226e616d65223a22446576656c6f706572222c22706f736974696f6e223a312c2273746570223a22646576656c6f706572222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333430302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3635302c226c656173745f64657074685f74656e7468735f6d6d223a3130302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 35, '\x005782968dd098f212a5d443629cc35fb1f1eb4fb5f6fe1b0e30cea0284e028a', '\xe3666b5d69f997c3989a874f56cd4d2eaf2c233d55e5ec88d7cd146e16c0f793', 1, 'tray_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x0000000000000000000000000000000d', '\x9b5a26297870e5c65d7474086c52367d57df25b3bd0ee9b5e9f624cbfed336b8', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d373864662d393162322d623939613032383935376237222c226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c226e616d65223a224669786572222c22706f736974696f6e223a332c2273746570223a226669786572222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333430302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3635302c226c656173745f64657074685f74656e7468735f6d6d223a3130302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 37, '\x2dac225fc4aea66458d88651a65ae75ad6f1cd56a78b89107cb008580fcb36b6', '\x543fcfd77a9d67e4384e4f61d52677aa1218cefac878e22a7c0f5c66290c403c', 1, 'tray_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x0000000000000000000000000000000f', '\x7eb357622984ea4de30ac71b5fde0f4cfe30ce90cb4ebf4e763ea3d42268f181', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d373961622d396231302d646261363131616138393664222c226c696e655f6964223a2230316132306237662d323339312d376265642d623263392d356464656638363531313930222c226e616d65223a22446576656c6f706572222c22706f736974696f6e223a312c2273746570223a22646576656c6f706572222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333430302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3635302c226c656173745f64657074685f74656e7468735f6d6d223a3130302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 39, '\x67996269848a3bfcebfb20fab4e7be7084731072d900ecd46708e2a01c6dbdb8', '\x28436f9eb82c4aca7b8f28bd76ccdc6f48f65004da6a08e13f71882d360dcf11', 1, 'finishing_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x00000000000000000000000000000011', '\xd14a0d1f2e27d6124d3abe7bd63e0a59e29ce10ef624becb590064cb8433a4e6', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c226669785f73223a34352c226c6f6e676573745f6669785f73223a3132302c2272696e73655f73223a33302c22776173685f6169645f73223a6e756c6c2c22776173685f776974685f6169645f73223a6e756c6c2c22776173685f776974686f75745f6169645f73223a3330302c226261736973223a22696e76656e74656420666f72207468652064656d6f227d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 24, '\x72aba6b4a8362c2e14f48d9a7ed8d00b84cf0cee55da6b3e2f013b67c8219045', '\xf53e916ded26e66ccd72c9ab9352f5c1e4da03d07be1fe220583caf61cbdd35e', 1, 'joined', NULL, '\x00000000000000000000000000000002', '\x2c70840fbc2b13ddfd4b15234d575d8c0a722778943b2fd7a5a8c64930977115', '2026-11-23 03:00:11.281654+00', '2026-11-23 03:00:11.281654+00', '\x7b22706572736f6e223a2230316132313563622d646330332d373466322d616665662d623439616331353239363839222c22726f6c65223a226d656d626572222c226d656d6265725f6e756d626572223a332c22696e7669746174696f6e223a6e756c6c7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 27, '\x311307d4545f3ec33945650c06908c5b782d7414f27eda6def87a033a3140819', '\x95dedef062c781e545ad674bbb7635bcde2d7421c054068e84d66599ce564313', 1, 'outage_ended', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x00000000000000000000000000000005', '\xdeabe2073b5243f03f97f0dc4b4ad9493126058d9361c4386a64cfa52d1580bd', '2026-11-23 15:40:11.281654+00', '2026-11-23 15:40:11.281654+00', '\x7b226f75746167655f6964223a2230316132303865622d663539312d373463652d613165332d323565383462633766623662222c2277686174223a2266616e222c2273706163655f6964223a6e756c6c7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 32, '\x2f519895568d5184a25c5f1c215199cd3ccb7761cb1ca2e95de8f1f6ee8771e6', '\x759724e9991e998779606d79c8b9e5a264c3f0349eec6f73cbf42bde1f41608f', 1, 'line_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x0000000000000000000000000000000a', '\xaecc3c7fdb332fbb79adc363ede30cc96da963ac326b3db14bd097742bc1bc51', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d376265642d623263392d356464656638363531313930222c226e616d65223a22436f726e6572206c696e65222c22706f736974696f6e223a332c2273706163655f6964223a6e756c6c2c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 34, '\xe6732cea67328b4dd4ca4e8408bef63da7a833ead7755541454abb66630ba3a2', '\x005782968dd098f212a5d443629cc35fb1f1eb4fb5f6fe1b0e30cea0284e028a', 1, 'tray_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x0000000000000000000000000000000c', '\x1fe68aaa9e8dd17b3f8c53d5d68bc109cd68642f3c66fe3b3be5347d2f16336e', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d376539622d383135302d346665666165363865663831222c226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c226e616d65223a2253746f702062617468222c22706f736974696f6e223a322c2273746570223a2273746f705f62617468222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333430302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3635302c226c656173745f64657074685f74656e7468735f6d6d223a3130302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 36, '\xe3666b5d69f997c3989a874f56cd4d2eaf2c233d55e5ec88d7cd146e16c0f793', '\x2dac225fc4aea66458d88651a65ae75ad6f1cd56a78b89107cb008580fcb36b6', 1, 'tray_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x0000000000000000000000000000000e', '\x90a52d35502142c53da2a771c8fbb975caadc42d3aa011be96cacb12e845926d', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d373339662d623338312d613763643330363638653462222c226c696e655f6964223a2230316132306237662d323339312d376533382d616265332d636564353265653266363663222c226e616d65223a22446576656c6f706572222c22706f736974696f6e223a312c2273746570223a22646576656c6f706572222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333430302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3635302c226c656173745f64657074685f74656e7468735f6d6d223a3130302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 38, '\x543fcfd77a9d67e4384e4f61d52677aa1218cefac878e22a7c0f5c66290c403c', '\x67996269848a3bfcebfb20fab4e7be7084731072d900ecd46708e2a01c6dbdb8', 1, 'tray_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x00000000000000000000000000000010', '\xd6513d9d07ce2e7043e2233f8c5d890ae3dedfb625129e5dc4b8dc3073415979', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d373933632d386163622d653034623561623664646532222c226c696e655f6964223a2230316132306237662d323339312d376265642d623263392d356464656638363531313930222c226e616d65223a2253706172652074726179222c22706f736974696f6e223a322c2273746570223a22616e79222c22696e736964655f6c6f6e675f74656e7468735f6d6d223a333430302c22696e736964655f73686f72745f74656e7468735f6d6d223a323830302c22696e736964655f64657074685f74656e7468735f6d6d223a3635302c226c656173745f64657074685f74656e7468735f6d6d223a3130302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 40, '\x28436f9eb82c4aca7b8f28bd76ccdc6f48f65004da6a08e13f71882d360dcf11', '\x7267ef7a15a1d65df4ea065e78a0d113ec754e7275ea68b97c396590f6e30da4', 1, 'finishing_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x00000000000000000000000000000012', '\x5c75ec21542c029024f18ee2eddc4f5f8d3fc885cd488d2879ccfe260c4236fb', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c226669785f73223a3132302c226c6f6e676573745f6669785f73223a3330302c2272696e73655f73223a3330302c22776173685f6169645f73223a3630302c22776173685f776974685f6169645f73223a313230302c22776173685f776974686f75745f6169645f73223a333630302c226261736973223a22696e76656e74656420666f72207468652064656d6f227d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 42, '\x6efd38c8720a71372fd4884c3a57ef61ab9e576f8126203174848a8c56a13985', '\x8309ed08ad3cba1eafce31482a6be2c41f6809ee41ec9abbf6dcb464cf7f64df', 1, 'bottle_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x00000000000000000000000000000014', '\x52963ba25f4a75a2d378ce5207ea93b58126c812dd2d9ab303ca79fa81a0cca2', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d376338352d386236622d646661326538323135633561222c226e616d65223a2242726f776e2031222c22686f6c64735f756c223a313030303030302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 44, '\x2a8e9606209f5a2486b2fd7ee2ed5bbf75f943e15ea9de32bd66297b5b4b6ea9', '\x7c6f1d3663047013432fef806c1978dd31f9f8218ca42dd269e1770cb06f942c', 1, 'mixed', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x00000000000000000000000000000016', '\x1c1243e2117555cd250e511dbcdfd0402f5a9de483590d64de6e91e8b80e7f63', '2026-11-25 20:00:11.281654+00', '2026-11-25 20:00:11.281654+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313434622d353631312d373534652d393661652d313331383835333831653437222c22747261795f6964223a2230316132306237662d323339312d373339662d623338312d613763643330363638653462222c226c696e655f6964223a2230316132306237662d323339312d376533382d616265332d636564353265653266363663222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132303635382d633739312d373338372d613033612d633338386539353965646530222c2270726f647563745f76657273696f6e223a322c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a313030303030302c22636f6e63656e74726174655f756c223a3130303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a7b226f70656e5f6c6966655f73223a32383830302c22636f76657265645f6c6966655f73223a32383830302c2266756c6c5f626f74746c655f6c6966655f73223a38363430302c22706172745f626f74746c655f6c6966655f73223a38363430302c226c6f6e676573745f6c6966655f73223a6e756c6c2c226f78696469736573223a747275652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22636f6c646573745f74656e7468735f63656c73697573223a3138302c227761726d6573745f74656e7468735f63656c73697573223a3232302c2274696d655f706f696e7473223a5b5d2c2273696c7665725f6c696d697473223a7b2273696e676c65223a6e756c6c2c226669727374223a6e756c6c2c227365636f6e64223a6e756c6c7d2c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c2273746f70223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c7d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 46, '\x07c8be1bfc8de3937b793830f7fcbf5e0c3a255614aa3097d1fdbb772d0636ba', '\xeb3c027c381dc39d20bb5d71cce0783b6ed031b95f99678d6d8bc05c23919e5f', 1, 'noted', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x00000000000000000000000000000018', '\xb6e419c4c88c38992b3c6dd75fda25ecefb850d1c08632953035fbd4985e4a82', '2026-11-25 21:20:11.281654+00', '2026-11-25 21:20:11.281654+00', '\x7b2272756c6573223a312c22706173735f6964223a2234363636363662642d653930612d383436302d616266632d616362663334373731633732222c226c696e655f6964223a2230316132306237662d323339312d376265642d623263392d356464656638363531313930222c22706572736f6e5f6964223a2230316132313563622d646265322d373534392d386135312d643635386662633534666437222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c2273686565745f73697a655f6964223a2230316132303635382d633739312d373334662d613938302d663239383635643966393762222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a34302c2277656172223a5b7b226d69785f6964223a2230316132313438322d343439312d376238332d393062302d646437393337323338303566222c22747261795f6964223a2230316132306237662d323339312d373961622d396231302d646261363131616138393664222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a3430303030303030307d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 47, '\xeb3c027c381dc39d20bb5d71cce0783b6ed031b95f99678d6d8bc05c23919e5f', '\x91c2c5c5502702e3c02c53b8b260b8e30ca6bc435f422bb9813ec8c56c23efe2', 1, 'noted', '01a215cb-dc03-74f2-afef-b49ac1529689', '\x00000000000000000000000000000019', '\xf4f467e0bab297106c00c3c7bff3c961557f413452af17a76fe5e6e9655dd4ef', '2026-11-25 22:20:11.281654+00', '2026-11-25 22:20:11.281654+00', '\x7b2272756c6573223a312c22706173735f6964223a2266626635643430352d336662662d383639382d626531612d313538346264393634376366222c226c696e655f6964223a2230316132306237662d323339312d376265642d623263392d356464656638363531313930222c22706572736f6e5f6964223a2230316132313563622d646330332d373466322d616665662d623439616331353239363839222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c2273686565745f73697a655f6964223a2230316132303635382d633739312d373334662d613938302d663239383635643966393762222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a32322c2277656172223a5b7b226d69785f6964223a2230316132313438322d343439312d376238332d393062302d646437393337323338303566222c22747261795f6964223a2230316132306237662d323339312d373961622d396231302d646261363131616138393664222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c227370656e745f6e6c223a3434303030303030307d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 49, '\xc77ae5f9a6cade3c7e087d3f40785f1c57375e63aa70317726fde88f2825bc8e', '\x2da08e1990e8aeec0a6489b2bdcdd273fda05785527f519d5e9222d4c9b9596a', 1, 'noted', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x0000000000000000000000000000001b', '\x8f498f031ed3438f714416016e5ce4ec468c757ab58533bf812aee6e9e2dafb4', '2026-11-25 23:40:11.281654+00', '2026-11-25 23:40:11.281654+00', '\x7b2272756c6573223a312c22706173735f6964223a2238326261653330362d373134342d383363382d626366322d653732646135363365656238222c226c696e655f6964223a2230316132306237662d323339312d376265642d623263392d356464656638363531313930222c22706572736f6e5f6964223a2230316132313563622d646265322d373534392d386135312d643635386662633534666437222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c2273686565745f73697a655f6964223a2230316132303635382d633739312d373334662d613938302d663239383635643966393762222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a31382c2277656172223a5b7b226d69785f6964223a2230316132313438322d343439312d376238332d393062302d646437393337323338303566222c22747261795f6964223a2230316132306237662d323339312d373961622d396231302d646261363131616138393664222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a3138303030303030307d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 41, '\x7267ef7a15a1d65df4ea065e78a0d113ec754e7275ea68b97c396590f6e30da4', '\x6efd38c8720a71372fd4884c3a57ef61ab9e576f8126203174848a8c56a13985', 1, 'finishing_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x00000000000000000000000000000013', '\x145872263b6f305a4ac53e884a4e2d35306cea2eb757d73ff697777adcda0df6', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c226669785f73223a34352c226c6f6e676573745f6669785f73223a3132302c2272696e73655f73223a33302c22776173685f6169645f73223a6e756c6c2c22776173685f776974685f6169645f73223a6e756c6c2c22776173685f776974686f75745f6169645f73223a3330302c226261736973223a22696e76656e74656420666f72207468652064656d6f227d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 43, '\x8309ed08ad3cba1eafce31482a6be2c41f6809ee41ec9abbf6dcb464cf7f64df', '\x2a8e9606209f5a2486b2fd7ee2ed5bbf75f943e15ea9de32bd66297b5b4b6ea9', 1, 'bottle_set', '01a215cb-db9b-7127-9f28-6df9b48f6657', '\x00000000000000000000000000000015', '\x856df6d73f16895a54cb89699c8edfa15279dc14cfdcf754f64061e961ffc147', '2026-11-24 03:00:11.281654+00', '2026-11-24 03:00:11.281654+00', '\x7b226964223a2230316132306237662d323339312d373237352d396130342d626365643236666132633866222c226e616d65223a224163636f7264696f6e222c22686f6c64735f756c223a323030303030302c2269735f72657469726564223a66616c73657d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 45, '\x7c6f1d3663047013432fef806c1978dd31f9f8218ca42dd269e1770cb06f942c', '\x07c8be1bfc8de3937b793830f7fcbf5e0c3a255614aa3097d1fdbb772d0636ba', 1, 'mixed', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x00000000000000000000000000000017', '\x3da7a214d39a6639906876373c7f1dfc5543a01edf6bbd870d5633f2850250c0', '2026-11-25 21:00:11.281654+00', '2026-11-25 21:00:11.281654+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313438322d343439312d376238332d393062302d646437393337323338303566222c22747261795f6964223a2230316132306237662d323339312d373961622d396231302d646261363131616138393664222c226c696e655f6964223a2230316132306237662d323339312d376265642d623263392d356464656638363531313930222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132303635382d633739312d373338372d613033612d633338386539353965646530222c2270726f647563745f76657273696f6e223a322c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a313030303030302c22636f6e63656e74726174655f756c223a3130303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a7b226f70656e5f6c6966655f73223a32383830302c22636f76657265645f6c6966655f73223a32383830302c2266756c6c5f626f74746c655f6c6966655f73223a38363430302c22706172745f626f74746c655f6c6966655f73223a38363430302c226c6f6e676573745f6c6966655f73223a6e756c6c2c226f78696469736573223a747275652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22636f6c646573745f74656e7468735f63656c73697573223a3138302c227761726d6573745f74656e7468735f63656c73697573223a3232302c2274696d655f706f696e7473223a5b5d2c2273696c7665725f6c696d697473223a7b2273696e676c65223a6e756c6c2c226669727374223a6e756c6c2c227365636f6e64223a6e756c6c7d2c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c2273746f70223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c7d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 48, '\x91c2c5c5502702e3c02c53b8b260b8e30ca6bc435f422bb9813ec8c56c23efe2', '\xc77ae5f9a6cade3c7e087d3f40785f1c57375e63aa70317726fde88f2825bc8e', 1, 'noted', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x0000000000000000000000000000001a', '\xac5f49a95b73fe7fcf9768a73aae4f7f65d2107a27f578703b6bc0ca77fb986f', '2026-11-25 22:40:11.281654+00', '2026-11-25 22:40:11.281654+00', '\x7b2272756c6573223a312c22706173735f6964223a2266623431303333372d623634352d383064302d623634612d306265376663663461643966222c226c696e655f6964223a2230316132306237662d323339312d376533382d616265332d636564353265653266363663222c22706572736f6e5f6964223a2230316132313563622d646265322d373534392d386135312d643635386662633534666437222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c2273686565745f73697a655f6964223a2230316132303635382d633739312d373334662d613938302d663239383635643966393762222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a31382c2277656172223a5b7b226d69785f6964223a2230316132313434622d353631312d373534652d393661652d313331383835333831653437222c22747261795f6964223a2230316132306237662d323339312d373339662d623338312d613763643330363638653462222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a3138303030303030307d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 50, '\x2da08e1990e8aeec0a6489b2bdcdd273fda05785527f519d5e9222d4c9b9596a', '\x4418d70727090681353d6574c6caf993656c0c4ebbf6715061e1d1b29fb2f316', 1, 'mixed', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x0000000000000000000000000000001c', '\xb675720841a3c2a2258b14d73325cc05ebe69f4d9b44000ede5a2aa7d2854b2d', '2026-11-26 00:00:11.281654+00', '2026-11-26 00:00:11.281654+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313532372d313031312d376265642d386231362d386362663863613932383439222c22747261795f6964223a2230316132306237662d323339312d373963372d393266352d333134343034313734343832222c226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132303635382d633739312d373338372d613033612d633338386539353965646530222c2270726f647563745f76657273696f6e223a322c2270617274735f74686f7573616e64746873223a393030302c22636861726765645f756c223a313030303030302c22636f6e63656e74726174655f756c223a3130303030302c226c6966655f73223a32383830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a7b226f70656e5f6c6966655f73223a32383830302c22636f76657265645f6c6966655f73223a32383830302c2266756c6c5f626f74746c655f6c6966655f73223a38363430302c22706172745f626f74746c655f6c6966655f73223a38363430302c226c6f6e676573745f6c6966655f73223a6e756c6c2c226f78696469736573223a747275652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22636f6c646573745f74656e7468735f63656c73697573223a3138302c227761726d6573745f74656e7468735f63656c73697573223a3232302c2274696d655f706f696e7473223a5b5d2c2273696c7665725f6c696d697473223a7b2273696e676c65223a6e756c6c2c226669727374223a6e756c6c2c227365636f6e64223a6e756c6c7d2c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c2273746f70223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c7d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 52, '\x01e7da76485e00ab027b4344819ea4b8b11a5343833c1a9fdd26666b6633562d', '\x37cdc328e84af5a74732f975f3dd9a4fbe435e102a11ebd6f7ac2e94ce021b49', 1, 'mixed', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x0000000000000000000000000000001e', '\xe3d00d011d4255bb40ab22b92c62f200307f6d6fe9695d318c0442ce9e276540', '2026-11-26 00:00:11.281654+00', '2026-11-26 00:00:11.281654+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313532372d313031312d373631322d626364622d326433613931626566393436222c22747261795f6964223a2230316132306237662d323339312d373864662d393162322d623939613032383935376237222c226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132306237662d323339312d373964632d393732382d386530346531363835643032222c2270726f647563745f76657273696f6e223a312c2270617274735f74686f7573616e64746873223a343030302c22636861726765645f756c223a313030303030302c22636f6e63656e74726174655f756c223a3230303030302c226c6966655f73223a3137323830302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a7b226f70656e5f6c6966655f73223a3137323830302c22636f76657265645f6c6966655f73223a3137323830302c2266756c6c5f626f74746c655f6c6966655f73223a313230393630302c22706172745f626f74746c655f6c6966655f73223a313230393630302c226c6f6e676573745f6c6966655f73223a6e756c6c2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273696c7665725f6c696d697473223a7b2273696e676c65223a6e756c6c2c226669727374223a6e756c6c2c227365636f6e64223a6e756c6c7d2c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c2273746f70223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c7d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, '\x03888c102a9616c722e278c7875fc89810e9b465df021ef0651698275b946b9d', '\xf425cf96e506e3a99f869dd1892857ec11ea89e16a356bd8219623a42ddfda23', 1, 'noted', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x00000000000000000000000000000020', '\x628e36b78f9428658dd45f42e36611f5c22c6ee8f854d3e1dbd78a06234dffae', '2026-11-26 01:00:11.281654+00', '2026-11-26 01:00:11.281654+00', '\x7b2272756c6573223a312c22706173735f6964223a2234326561613339662d666534322d383163372d616433302d393661373231623031373033222c226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c22706572736f6e5f6964223a2230316132313563622d646265322d373534392d386135312d643635386662633534666437222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c2273686565745f73697a655f6964223a2230316132303635382d633739312d373334662d613938302d663239383635643966393762222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a362c2277656172223a5b7b226d69785f6964223a2230316132313532372d313031312d376265642d386231362d386362663863613932383439222c22747261795f6964223a2230316132306237662d323339312d373963372d393266352d333134343034313734343832222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a36303030303030307d2c7b226d69785f6964223a2230316132313532372d313031312d373733382d623666352d633934303730343231633039222c22747261795f6964223a2230316132306237662d323339312d376539622d383135302d346665666165363865663831222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c227370656e745f6e6c223a37353030303030307d2c7b226d69785f6964223a2230316132313532372d313031312d373631322d626364622d326433613931626566393436222c22747261795f6964223a2230316132306237662d323339312d373864662d393162322d623939613032383935376237222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c227370656e745f6e6c223a3135303030303030307d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, '\x0fe0ed5a6f1beed8b0787f1e7fb8b3821c15e86598f4d5c42036fe4d54f5398d', '\xfb3b3524226a5fbfb97db363813dc242b13d60d2fa2c7a39e600746cdf0f1213', 1, 'noted', '01a215cb-dc03-74f2-afef-b49ac1529689', '\x00000000000000000000000000000022', '\x290c4a2c85c5786641e3e25bb329daeb663d41fdc8dc4a181470995e0f15c865', '2026-11-26 02:40:11.281654+00', '2026-11-26 02:40:11.281654+00', '\x7b2272756c6573223a312c22706173735f6964223a2266323930626365632d643937662d386262362d616533302d386535306238376336633335222c226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c22706572736f6e5f6964223a2230316132313563622d646330332d373466322d616665662d623439616331353239363839222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c2273686565745f73697a655f6964223a2230316132303635382d633739312d373334662d613938302d663239383635643966393762222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a322c2277656172223a5b7b226d69785f6964223a2230316132313532372d313031312d376265642d386231362d386362663863613932383439222c22747261795f6964223a2230316132306237662d323339312d373963372d393266352d333134343034313734343832222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c227370656e745f6e6c223a34303030303030307d2c7b226d69785f6964223a2230316132313532372d313031312d373733382d623666352d633934303730343231633039222c22747261795f6964223a2230316132306237662d323339312d376539622d383135302d346665666165363865663831222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c227370656e745f6e6c223a35303030303030307d2c7b226d69785f6964223a2230316132313532372d313031312d373631322d626364622d326433613931626566393436222c22747261795f6964223a2230316132306237662d323339312d373864662d393162322d623939613032383935376237222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a32303030302c227370656e745f6e6c223a3130303030303030307d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 51, '\x4418d70727090681353d6574c6caf993656c0c4ebbf6715061e1d1b29fb2f316', '\x01e7da76485e00ab027b4344819ea4b8b11a5343833c1a9fdd26666b6633562d', 1, 'mixed', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '\x0000000000000000000000000000001d', '\x68af1f226dcd21ae9675edb500f063c4fc43533813c0ce5134af2a86d61e162e', '2026-11-26 00:00:11.281654+00', '2026-11-26 00:00:11.281654+00', '\x7b2272756c6573223a312c226d69785f6964223a2230316132313532372d313031312d373733382d623666352d633934303730343231633039222c22747261795f6964223a2230316132306237662d323339312d376539622d383135302d346665666165363865663831222c226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c22626f74746c655f6964223a6e756c6c2c22706c616365223a2273696e676c65222c2270726f647563745f6964223a2230316132306237662d323339312d373930302d386334632d363638333762303230313731222c2270726f647563745f76657273696f6e223a312c2270617274735f74686f7573616e64746873223a31393030302c22636861726765645f756c223a313030303030302c22636f6e63656e74726174655f756c223a35303030302c226c6966655f73223a38363430302c2263617061636974696573223a5b7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c22706c616365223a2273696e676c65227d2c7b2270617065725f636c6173735f6964223a2230316132303635382d633739312d373766392d383130302d303266623432313033663233222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c22706c616365223a2273696e676c65227d5d2c226f726967696e223a226d69786564222c2273746f72616765223a226f70656e5f74726179222c22677565737365645f7370656e745f6e6c223a302c22677565737365645f6167655f707062223a302c22736869667473223a302c2273746f636b5f6964223a6e756c6c2c2266696775726573223a7b226f70656e5f6c6966655f73223a38363430302c22636f76657265645f6c6966655f73223a38363430302c2266756c6c5f626f74746c655f6c6966655f73223a3630343830302c22706172745f626f74746c655f6c6966655f73223a3630343830302c226c6f6e676573745f6c6966655f73223a6e756c6c2c226f78696469736573223a66616c73652c2264657074685f7265666572656e63655f74656e7468735f6d6d223a38302c22636f6c646573745f74656e7468735f63656c73697573223a6e756c6c2c227761726d6573745f74656e7468735f63656c73697573223a6e756c6c2c2274696d655f706f696e7473223a5b5d2c2273696c7665725f6c696d697473223a7b2273696e676c65223a6e756c6c2c226669727374223a6e756c6c2c227365636f6e64223a6e756c6c7d2c2266696c6d5f726f6c6c735f7065725f6c697472655f74686f7573616e64746873223a6e756c6c2c2273746f70223a6e756c6c2c2262726f6d6964655f6c696d69745f6d675f7065725f6c69747265223a6e756c6c7d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 53, '\x37cdc328e84af5a74732f975f3dd9a4fbe435e102a11ebd6f7ac2e94ce021b49', '\x03888c102a9616c722e278c7875fc89810e9b465df021ef0651698275b946b9d', 1, 'noted', '01a215cb-dc03-74f2-afef-b49ac1529689', '\x0000000000000000000000000000001f', '\xe48b5d24007f98bd32df8bf3fc3e236d60d7c09e03ceef3bba92226cf055b3ee', '2026-11-26 00:30:11.281654+00', '2026-11-26 00:30:11.281654+00', '\x7b2272756c6573223a312c22706173735f6964223a2234623638663234322d616166382d383037302d386231302d623633623566316164343630222c226c696e655f6964223a2230316132306237662d323339312d376533382d616265332d636564353265653266363663222c22706572736f6e5f6964223a2230316132313563622d646330332d373466322d616665662d623439616331353239363839222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d376166312d383065612d353265303532313032313032222c2273686565745f73697a655f6964223a2230316132303635382d633739312d373334662d613938302d663239383635643966393762222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a33342c2277656172223a5b7b226d69785f6964223a2230316132313434622d353631312d373534652d393661652d313331383835333831653437222c22747261795f6964223a2230316132306237662d323339312d373339662d623338312d613763643330363638653462222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a35303030302c227370656e745f6e6c223a3638303030303030307d5d7d');
INSERT INTO public.entry VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, '\xf425cf96e506e3a99f869dd1892857ec11ea89e16a356bd8219623a42ddfda23', '\x0fe0ed5a6f1beed8b0787f1e7fb8b3821c15e86598f4d5c42036fe4d54f5398d', 1, 'noted', '01a215cb-dc03-74f2-afef-b49ac1529689', '\x00000000000000000000000000000021', '\x2ac2c5f2b9cbd1417b66958556feb536d7c06eb694fbe0cc5ebdb3cc454032cb', '2026-11-26 02:00:11.281654+00', '2026-11-26 02:00:11.281654+00', '\x7b2272756c6573223a312c22706173735f6964223a2231636461366337612d373363302d383634372d616465662d643237623663353563336636222c226c696e655f6964223a2230316132303635382d633739312d376165382d616166392d653333313163316463303431222c22706572736f6e5f6964223a2230316132313563622d646330332d373466322d616665662d623439616331353239363839222c2270617065725f636c6173735f6964223a2230316132303635382d633739312d376138342d613738342d646331666661656139336536222c2273686565745f73697a655f6964223a2230316132303635382d633739312d373334662d613938302d663239383635643966393762222c226c6f6e675f74656e7468735f6d6d223a323534302c2273686f72745f74656e7468735f6d6d223a323033322c22736865657473223a342c2277656172223a5b7b226d69785f6964223a2230316132313532372d313031312d376265642d386231362d386362663863613932383439222c22747261795f6964223a2230316132306237662d323339312d373963372d393266352d333134343034313734343832222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a3130303030302c227370656e745f6e6c223a34303030303030307d2c7b226d69785f6964223a2230316132313532372d313031312d373733382d623666352d633934303730343231633039222c22747261795f6964223a2230316132306237662d323339312d376539622d383135302d346665666165363865663831222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a38303030302c227370656e745f6e6c223a35303030303030307d2c7b226d69785f6964223a2230316132313532372d313031312d373631322d626364622d326433613931626566393436222c22747261795f6964223a2230316132306237662d323339312d373864662d393162322d623939613032383935376237222c227368656574735f7065725f6c697472655f74686f7573616e64746873223a34303030302c227370656e745f6e6c223a3130303030303030307d5d7d');

INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 2, 'person', '01a215cb-db9b-7127-9f28-6df9b48f6657');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 3, 'sheet_size', '01a20658-c791-74b7-9581-9980db6042a6');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 4, 'sheet_size', '01a20658-c791-734f-a980-f29865d9f97b');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 5, 'sheet_size', '01a20658-c791-728e-a7c2-e5ee0d8ceb4c');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 6, 'sheet_size', '01a20658-c791-71a6-ab94-e18411619d96');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 7, 'sheet_size', '01a20658-c791-7755-87aa-3468951ab8e7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 8, 'sheet_size', '01a20658-c791-7f54-b0e3-6adf5492c914');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 9, 'sheet_size', '01a20658-c791-7893-8f6b-15bb2c8e399a');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 10, 'sheet_size', '01a20658-c791-743d-8d86-75af7db58669');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 11, 'sheet_size', '01a20658-c791-7e08-a652-007300fbb6d6');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 12, 'paper_class', '01a20658-c791-7a84-a784-dc1ffaea93e6');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 13, 'paper_class', '01a20658-c791-7af1-80ea-52e052102102');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 14, 'paper_class', '01a20658-c791-77f9-8100-02fb42103f23');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 15, 'product', '01a20658-c791-7387-a03a-c388e959ede0');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 16, 'product', '01a20658-c791-79ec-b517-c2cae277fad7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 17, 'product', '01a20658-c791-75d5-890f-859678951dd9');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 18, 'product', '01a20658-c791-7110-adf1-38c7d374c735');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 19, 'product', '01a20658-c791-7a03-afb1-6c18ec489d37');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 20, 'product', '01a20658-c791-7355-bb10-9600183d719f');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 21, 'product', '01a20658-c791-70b4-b893-fd019fb1dab0');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 22, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 23, 'person', '01a215cb-dbe2-7549-8a51-d658fbc54fd7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 24, 'person', '01a215cb-dc03-74f2-afef-b49ac1529689');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 25, 'person', '01a215cb-dc20-75a2-a120-a1335e73dd22');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 26, 'outage', '01a208eb-f591-74ce-a1e3-25e84bc7fb6b');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 27, 'outage', '01a208eb-f591-74ce-a1e3-25e84bc7fb6b');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 28, 'product', '01a20658-c791-7387-a03a-c388e959ede0');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 29, 'product', '01a20b7f-2391-7900-8c4c-66837b020171');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 30, 'product', '01a20b7f-2391-79dc-9728-8e04e1685d02');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 31, 'line', '01a20b7f-2391-7e38-abe3-ced52ee2f66c');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 32, 'line', '01a20b7f-2391-7bed-b2c9-5ddef8651190');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 33, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 33, 'tray', '01a20b7f-2391-79c7-92f5-314404174482');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 34, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 34, 'tray', '01a20b7f-2391-7e9b-8150-4fefae68ef81');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 35, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 35, 'tray', '01a20b7f-2391-78df-91b2-b99a028957b7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 36, 'line', '01a20b7f-2391-7e38-abe3-ced52ee2f66c');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 36, 'tray', '01a20b7f-2391-739f-b381-a7cd30668e4b');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 37, 'line', '01a20b7f-2391-7bed-b2c9-5ddef8651190');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 37, 'tray', '01a20b7f-2391-79ab-9b10-dba611aa896d');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 38, 'line', '01a20b7f-2391-7bed-b2c9-5ddef8651190');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 38, 'tray', '01a20b7f-2391-793c-8acb-e04b5ab6dde2');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 39, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 39, 'paper_class', '01a20658-c791-7a84-a784-dc1ffaea93e6');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 40, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 40, 'paper_class', '01a20658-c791-7af1-80ea-52e052102102');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 41, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 41, 'paper_class', '01a20658-c791-77f9-8100-02fb42103f23');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 42, 'bottle', '01a20b7f-2391-7c85-8b6b-dfa2e8215c5a');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 43, 'bottle', '01a20b7f-2391-7275-9a04-bced26fa2c8f');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 44, 'line', '01a20b7f-2391-7e38-abe3-ced52ee2f66c');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 44, 'mix', '01a2144b-5611-754e-96ae-131885381e47');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 44, 'product', '01a20658-c791-7387-a03a-c388e959ede0');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 44, 'tray', '01a20b7f-2391-739f-b381-a7cd30668e4b');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 45, 'line', '01a20b7f-2391-7bed-b2c9-5ddef8651190');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 45, 'mix', '01a21482-4491-7b83-90b0-dd793723805f');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 45, 'product', '01a20658-c791-7387-a03a-c388e959ede0');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 45, 'tray', '01a20b7f-2391-79ab-9b10-dba611aa896d');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 46, 'line', '01a20b7f-2391-7bed-b2c9-5ddef8651190');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 46, 'mix', '01a21482-4491-7b83-90b0-dd793723805f');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 46, 'pass', '466666bd-e90a-8460-abfc-acbf34771c72');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 46, 'person', '01a215cb-dbe2-7549-8a51-d658fbc54fd7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 46, 'tray', '01a20b7f-2391-79ab-9b10-dba611aa896d');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 47, 'line', '01a20b7f-2391-7bed-b2c9-5ddef8651190');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 47, 'mix', '01a21482-4491-7b83-90b0-dd793723805f');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 47, 'pass', 'fbf5d405-3fbf-8698-be1a-1584bd9647cf');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 47, 'person', '01a215cb-dc03-74f2-afef-b49ac1529689');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 47, 'tray', '01a20b7f-2391-79ab-9b10-dba611aa896d');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 48, 'line', '01a20b7f-2391-7e38-abe3-ced52ee2f66c');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 48, 'mix', '01a2144b-5611-754e-96ae-131885381e47');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 48, 'pass', 'fb410337-b645-80d0-b64a-0be7fcf4ad9f');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 48, 'person', '01a215cb-dbe2-7549-8a51-d658fbc54fd7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 48, 'tray', '01a20b7f-2391-739f-b381-a7cd30668e4b');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 49, 'line', '01a20b7f-2391-7bed-b2c9-5ddef8651190');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 49, 'mix', '01a21482-4491-7b83-90b0-dd793723805f');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 49, 'pass', '82bae306-7144-83c8-bcf2-e72da563eeb8');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 49, 'person', '01a215cb-dbe2-7549-8a51-d658fbc54fd7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 49, 'tray', '01a20b7f-2391-79ab-9b10-dba611aa896d');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 50, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 50, 'mix', '01a21527-1011-7bed-8b16-8cbf8ca92849');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 50, 'product', '01a20658-c791-7387-a03a-c388e959ede0');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 50, 'tray', '01a20b7f-2391-79c7-92f5-314404174482');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 51, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 51, 'mix', '01a21527-1011-7738-b6f5-c94070421c09');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 51, 'product', '01a20b7f-2391-7900-8c4c-66837b020171');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 51, 'tray', '01a20b7f-2391-7e9b-8150-4fefae68ef81');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 52, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 52, 'mix', '01a21527-1011-7612-bcdb-2d3a91bef946');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 52, 'product', '01a20b7f-2391-79dc-9728-8e04e1685d02');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 52, 'tray', '01a20b7f-2391-78df-91b2-b99a028957b7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 53, 'line', '01a20b7f-2391-7e38-abe3-ced52ee2f66c');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 53, 'mix', '01a2144b-5611-754e-96ae-131885381e47');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 53, 'pass', '4b68f242-aaf8-8070-8b10-b63b5f1ad460');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 53, 'person', '01a215cb-dc03-74f2-afef-b49ac1529689');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 53, 'tray', '01a20b7f-2391-739f-b381-a7cd30668e4b');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, 'mix', '01a21527-1011-7612-bcdb-2d3a91bef946');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, 'mix', '01a21527-1011-7738-b6f5-c94070421c09');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, 'mix', '01a21527-1011-7bed-8b16-8cbf8ca92849');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, 'pass', '42eaa39f-fe42-81c7-ad30-96a721b01703');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, 'person', '01a215cb-dbe2-7549-8a51-d658fbc54fd7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, 'tray', '01a20b7f-2391-78df-91b2-b99a028957b7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, 'tray', '01a20b7f-2391-79c7-92f5-314404174482');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, 'tray', '01a20b7f-2391-7e9b-8150-4fefae68ef81');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, 'mix', '01a21527-1011-7612-bcdb-2d3a91bef946');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, 'mix', '01a21527-1011-7738-b6f5-c94070421c09');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, 'mix', '01a21527-1011-7bed-8b16-8cbf8ca92849');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, 'pass', '1cda6c7a-73c0-8647-adef-d27b6c55c3f6');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, 'person', '01a215cb-dc03-74f2-afef-b49ac1529689');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, 'tray', '01a20b7f-2391-78df-91b2-b99a028957b7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, 'tray', '01a20b7f-2391-79c7-92f5-314404174482');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, 'tray', '01a20b7f-2391-7e9b-8150-4fefae68ef81');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, 'line', '01a20658-c791-7ae8-aaf9-e3311c1dc041');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, 'mix', '01a21527-1011-7612-bcdb-2d3a91bef946');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, 'mix', '01a21527-1011-7738-b6f5-c94070421c09');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, 'mix', '01a21527-1011-7bed-8b16-8cbf8ca92849');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, 'pass', 'f290bcec-d97f-8bb6-ae30-8e50b87c6c35');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, 'person', '01a215cb-dc03-74f2-afef-b49ac1529689');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, 'tray', '01a20b7f-2391-78df-91b2-b99a028957b7');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, 'tray', '01a20b7f-2391-79c7-92f5-314404174482');
INSERT INTO public.entry_about VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, 'tray', '01a20b7f-2391-7e9b-8150-4fefae68ef81');

INSERT INTO public.finishing VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7ae8-aaf9-e3311c1dc041', '01a20658-c791-7a84-a784-dc1ffaea93e6', 45, 120, 30, NULL, NULL, 300, 'invented for the demo');
INSERT INTO public.finishing VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7ae8-aaf9-e3311c1dc041', '01a20658-c791-7af1-80ea-52e052102102', 120, 300, 300, 600, 1200, 3600, 'invented for the demo');
INSERT INTO public.finishing VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7ae8-aaf9-e3311c1dc041', '01a20658-c791-77f9-8100-02fb42103f23', 45, 120, 30, NULL, NULL, 300, 'invented for the demo');

INSERT INTO public.head VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, '\xfb3b3524226a5fbfb97db363813dc242b13d60d2fa2c7a39e600746cdf0f1213', '2026-11-26 02:40:11.281654+00');

INSERT INTO public.line VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7ae8-aaf9-e3311c1dc041', 'First line', 1, NULL, NULL);
INSERT INTO public.line VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-7e38-abe3-ced52ee2f66c', 'Window line', 2, NULL, NULL);
INSERT INTO public.line VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-7bed-b2c9-5ddef8651190', 'Corner line', 3, NULL, NULL);

INSERT INTO public.membership VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a215cb-db9b-7127-9f28-6df9b48f6657', 1, 'steward', '2026-11-23 03:00:11.281654+00', NULL, NULL);
INSERT INTO public.membership VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', 2, 'trained', '2026-11-23 03:00:11.281654+00', NULL, NULL);
INSERT INTO public.membership VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a215cb-dc03-74f2-afef-b49ac1529689', 3, 'member', '2026-11-23 03:00:11.281654+00', NULL, NULL);
INSERT INTO public.membership VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a215cb-dc20-75a2-a120-a1335e73dd22', 4, 'treasurer', '2026-11-23 03:00:11.281654+00', NULL, NULL);

INSERT INTO public.migration_turn VALUES (true);

INSERT INTO public.mix VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7612-bcdb-2d3a91bef946', '01a20b7f-2391-79dc-9728-8e04e1685d02', 1, 4000, 1000000, 200000, 350000000, 0, '2026-11-26 00:00:11.281654+00', 172800, NULL, '2026-11-26 00:00:11.281654+00', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', 52, '01a20b7f-2391-78df-91b2-b99a028957b7', NULL, NULL, 56, 'mixed', 'open_tray', NULL, '{"open_life_s":172800,"covered_life_s":172800,"full_bottle_life_s":1209600,"part_bottle_life_s":1209600,"longest_life_s":null,"oxidises":false,"depth_reference_tenths_mm":80,"coldest_tenths_celsius":null,"warmest_tenths_celsius":null,"time_points":[],"silver_limits":{"single":null,"first":null,"second":null},"film_rolls_per_litre_thousandths":null,"stop":null,"bromide_limit_mg_per_litre":null}', '2026-11-26 00:00:11.281654+00', 0, 0, 0, 0, 0, 0, 0, 0, NULL, NULL);
INSERT INTO public.mix VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21482-4491-7b83-90b0-dd793723805f', '01a20658-c791-7387-a03a-c388e959ede0', 2, 9000, 1000000, 100000, 1020000000, 0, '2026-11-25 21:00:11.281654+00', 28800, NULL, '2026-11-25 21:00:11.281654+00', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', 45, '01a20b7f-2391-79ab-9b10-dba611aa896d', NULL, NULL, 49, 'mixed', 'open_tray', NULL, '{"open_life_s":28800,"covered_life_s":28800,"full_bottle_life_s":86400,"part_bottle_life_s":86400,"longest_life_s":null,"oxidises":true,"depth_reference_tenths_mm":80,"coldest_tenths_celsius":180,"warmest_tenths_celsius":220,"time_points":[],"silver_limits":{"single":null,"first":null,"second":null},"film_rolls_per_litre_thousandths":null,"stop":null,"bromide_limit_mg_per_litre":null}', '2026-11-25 21:00:11.281654+00', 0, 0, 0, 0, 0, 0, 0, 0, NULL, NULL);
INSERT INTO public.mix VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a2144b-5611-754e-96ae-131885381e47', '01a20658-c791-7387-a03a-c388e959ede0', 2, 9000, 1000000, 100000, 860000000, 0, '2026-11-25 20:00:11.281654+00', 28800, NULL, '2026-11-25 20:00:11.281654+00', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', 44, '01a20b7f-2391-739f-b381-a7cd30668e4b', NULL, NULL, 53, 'mixed', 'open_tray', NULL, '{"open_life_s":28800,"covered_life_s":28800,"full_bottle_life_s":86400,"part_bottle_life_s":86400,"longest_life_s":null,"oxidises":true,"depth_reference_tenths_mm":80,"coldest_tenths_celsius":180,"warmest_tenths_celsius":220,"time_points":[],"silver_limits":{"single":null,"first":null,"second":null},"film_rolls_per_litre_thousandths":null,"stop":null,"bromide_limit_mg_per_litre":null}', '2026-11-25 20:00:11.281654+00', 0, 0, 0, 0, 0, 0, 0, 0, NULL, NULL);
INSERT INTO public.mix VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7738-b6f5-c94070421c09', '01a20b7f-2391-7900-8c4c-66837b020171', 1, 19000, 1000000, 50000, 175000000, 0, '2026-11-26 00:00:11.281654+00', 86400, NULL, '2026-11-26 00:00:11.281654+00', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', 51, '01a20b7f-2391-7e9b-8150-4fefae68ef81', NULL, NULL, 56, 'mixed', 'open_tray', NULL, '{"open_life_s":86400,"covered_life_s":86400,"full_bottle_life_s":604800,"part_bottle_life_s":604800,"longest_life_s":null,"oxidises":false,"depth_reference_tenths_mm":80,"coldest_tenths_celsius":null,"warmest_tenths_celsius":null,"time_points":[],"silver_limits":{"single":null,"first":null,"second":null},"film_rolls_per_litre_thousandths":null,"stop":null,"bromide_limit_mg_per_litre":null}', '2026-11-26 00:00:11.281654+00', 0, 0, 0, 0, 0, 0, 0, 0, NULL, NULL);
INSERT INTO public.mix VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7bed-8b16-8cbf8ca92849', '01a20658-c791-7387-a03a-c388e959ede0', 2, 9000, 1000000, 100000, 140000000, 0, '2026-11-26 00:00:11.281654+00', 28800, NULL, '2026-11-26 00:00:11.281654+00', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', 50, '01a20b7f-2391-79c7-92f5-314404174482', NULL, NULL, 56, 'mixed', 'open_tray', NULL, '{"open_life_s":28800,"covered_life_s":28800,"full_bottle_life_s":86400,"part_bottle_life_s":86400,"longest_life_s":null,"oxidises":true,"depth_reference_tenths_mm":80,"coldest_tenths_celsius":180,"warmest_tenths_celsius":220,"time_points":[],"silver_limits":{"single":null,"first":null,"second":null},"film_rolls_per_litre_thousandths":null,"stop":null,"bromide_limit_mg_per_litre":null}', '2026-11-26 00:00:11.281654+00', 0, 0, 0, 0, 0, 0, 0, 0, NULL, NULL);

INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a2144b-5611-754e-96ae-131885381e47', '01a20658-c791-7a84-a784-dc1ffaea93e6', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a2144b-5611-754e-96ae-131885381e47', '01a20658-c791-7af1-80ea-52e052102102', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a2144b-5611-754e-96ae-131885381e47', '01a20658-c791-77f9-8100-02fb42103f23', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21482-4491-7b83-90b0-dd793723805f', '01a20658-c791-7a84-a784-dc1ffaea93e6', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21482-4491-7b83-90b0-dd793723805f', '01a20658-c791-7af1-80ea-52e052102102', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21482-4491-7b83-90b0-dd793723805f', '01a20658-c791-77f9-8100-02fb42103f23', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7bed-8b16-8cbf8ca92849', '01a20658-c791-7a84-a784-dc1ffaea93e6', 100000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7bed-8b16-8cbf8ca92849', '01a20658-c791-7af1-80ea-52e052102102', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7bed-8b16-8cbf8ca92849', '01a20658-c791-77f9-8100-02fb42103f23', 50000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7738-b6f5-c94070421c09', '01a20658-c791-7a84-a784-dc1ffaea93e6', 80000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7738-b6f5-c94070421c09', '01a20658-c791-7af1-80ea-52e052102102', 40000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7738-b6f5-c94070421c09', '01a20658-c791-77f9-8100-02fb42103f23', 80000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7612-bcdb-2d3a91bef946', '01a20658-c791-7a84-a784-dc1ffaea93e6', 40000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7612-bcdb-2d3a91bef946', '01a20658-c791-7af1-80ea-52e052102102', 20000, 'single');
INSERT INTO public.mix_capacity VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7612-bcdb-2d3a91bef946', '01a20658-c791-77f9-8100-02fb42103f23', 40000, 'single');

INSERT INTO public.outage VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a208eb-f591-74ce-a1e3-25e84bc7fb6b', 'fan', NULL, '2026-11-23 15:00:11.281654+00', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', 26, '2026-11-23 15:40:11.281654+00', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', 27);

INSERT INTO public.paper_class VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7a84-a784-dc1ffaea93e6', 'RC', 1, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL);
INSERT INTO public.paper_class VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7af1-80ea-52e052102102', 'FB', 2, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL);
INSERT INTO public.paper_class VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-77f9-8100-02fb42103f23', 'RC, cool tone', 3, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL);

INSERT INTO public.pass VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 46, '466666bd-e90a-8460-abfc-acbf34771c72', '01a20b7f-2391-7bed-b2c9-5ddef8651190', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '01a20658-c791-7a84-a784-dc1ffaea93e6', '01a20658-c791-734f-a980-f29865d9f97b', 40, '2026-11-25 21:20:11.281654+00', NULL, false, false);
INSERT INTO public.pass VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 47, 'fbf5d405-3fbf-8698-be1a-1584bd9647cf', '01a20b7f-2391-7bed-b2c9-5ddef8651190', '01a215cb-dc03-74f2-afef-b49ac1529689', '01a20658-c791-7af1-80ea-52e052102102', '01a20658-c791-734f-a980-f29865d9f97b', 22, '2026-11-25 22:20:11.281654+00', NULL, false, false);
INSERT INTO public.pass VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 48, 'fb410337-b645-80d0-b64a-0be7fcf4ad9f', '01a20b7f-2391-7e38-abe3-ced52ee2f66c', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '01a20658-c791-7a84-a784-dc1ffaea93e6', '01a20658-c791-734f-a980-f29865d9f97b', 18, '2026-11-25 22:40:11.281654+00', NULL, false, false);
INSERT INTO public.pass VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 49, '82bae306-7144-83c8-bcf2-e72da563eeb8', '01a20b7f-2391-7bed-b2c9-5ddef8651190', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '01a20658-c791-7a84-a784-dc1ffaea93e6', '01a20658-c791-734f-a980-f29865d9f97b', 18, '2026-11-25 23:40:11.281654+00', NULL, false, false);
INSERT INTO public.pass VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 53, '4b68f242-aaf8-8070-8b10-b63b5f1ad460', '01a20b7f-2391-7e38-abe3-ced52ee2f66c', '01a215cb-dc03-74f2-afef-b49ac1529689', '01a20658-c791-7af1-80ea-52e052102102', '01a20658-c791-734f-a980-f29865d9f97b', 34, '2026-11-26 00:30:11.281654+00', NULL, false, false);
INSERT INTO public.pass VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, '42eaa39f-fe42-81c7-ad30-96a721b01703', '01a20658-c791-7ae8-aaf9-e3311c1dc041', '01a215cb-dbe2-7549-8a51-d658fbc54fd7', '01a20658-c791-7a84-a784-dc1ffaea93e6', '01a20658-c791-734f-a980-f29865d9f97b', 6, '2026-11-26 01:00:11.281654+00', NULL, false, false);
INSERT INTO public.pass VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, '1cda6c7a-73c0-8647-adef-d27b6c55c3f6', '01a20658-c791-7ae8-aaf9-e3311c1dc041', '01a215cb-dc03-74f2-afef-b49ac1529689', '01a20658-c791-7a84-a784-dc1ffaea93e6', '01a20658-c791-734f-a980-f29865d9f97b', 4, '2026-11-26 02:00:11.281654+00', NULL, false, false);
INSERT INTO public.pass VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, 'f290bcec-d97f-8bb6-ae30-8e50b87c6c35', '01a20658-c791-7ae8-aaf9-e3311c1dc041', '01a215cb-dc03-74f2-afef-b49ac1529689', '01a20658-c791-7af1-80ea-52e052102102', '01a20658-c791-734f-a980-f29865d9f97b', 2, '2026-11-26 02:40:11.281654+00', NULL, false, false);

INSERT INTO public.person VALUES ('01a215cb-db9b-7127-9f28-6df9b48f6657', 'Ottilie Brandvik', 'ottilie', '$argon2id$v=19$m=19456,t=2,p=1$WqCP+g3SweUab47OaduQKA$vnavLMrcKnw/XVPwSjqXipxmYxdcnt76mRmadMfQ5Xo', true, '2026-11-23 03:00:11.281654+00', NULL, NULL);
INSERT INTO public.person VALUES ('01a215cb-dbe2-7549-8a51-d658fbc54fd7', 'Mirea Dunholt', 'mirea', '$argon2id$v=19$m=19456,t=2,p=1$Yzw/t+MoLIie8Qg2rv2b+g$M4/yNDJ05MJpW438RHUzmLZRLKwOgkzBxYxcVFnmUqQ', false, '2026-11-23 03:00:11.281654+00', NULL, NULL);
INSERT INTO public.person VALUES ('01a215cb-dc03-74f2-afef-b49ac1529689', 'Tomas Ferrow', 'tomas', '$argon2id$v=19$m=19456,t=2,p=1$NiLMW6q5SGtWARMz3VDG6A$FM6ZbHwjDGsmTRM00Oltxx9hOKxzq/IG8mblHHz0l+Y', false, '2026-11-23 03:00:11.281654+00', NULL, NULL);
INSERT INTO public.person VALUES ('01a215cb-dc20-75a2-a120-a1335e73dd22', 'Pavo Sandmoor', 'pavo', '$argon2id$v=19$m=19456,t=2,p=1$DW24UjweWF4cN5vwd2na+A$x6VDIamVv/BWWeomAgh4vfMfZqpOMmRo9uINPWFzMRE', false, '2026-11-23 03:00:11.281654+00', NULL, NULL);

INSERT INTO public.product VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-79ec-b517-c2cae277fad7', 1, 'Acetic stop bath', 'stop_bath', '{acid,stop_bath,organic}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', 'acetic', NULL, NULL, '');
INSERT INTO public.product VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-75d5-890f-859678951dd9', 1, 'Citric stop bath', 'stop_bath', '{acid,stop_bath,organic}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', 'citric', NULL, NULL, '');
INSERT INTO public.product VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7110-adf1-38c7d374c735', 1, 'Ammonium rapid fixer', 'fixer', '{fixer,thiosulfate,ammonium,sulfite}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '');
INSERT INTO public.product VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7a03-afb1-6c18ec489d37', 1, 'Holding water', 'holding_water', '{fixer,thiosulfate,ammonium,sulfite}', false, 80, false, '{}', '{}', NULL, NULL, 'ready_to_use', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '');
INSERT INTO public.product VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7355-bb10-9600183d719f', 1, 'Wash aid', 'wash_aid', '{sulfite}', false, 80, false, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '');
INSERT INTO public.product VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-70b4-b893-fd019fb1dab0', 1, 'Selenium-type toner', 'toner', '{thiosulfate,ammonium,sulfite}', false, 80, true, '{}', '{}', NULL, NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '');
INSERT INTO public.product VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7387-a03a-c388e959ede0', 2, 'Neutral paper developer', 'developer', '{developer,alkali,sulfite,organic}', true, 80, false, '{H302,H317,H318,H341,H351,H410}', '{P280,P305+P351+P338,P302+P352,P308+P313}', '2026-03-02', NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, 180, 220, NULL, '{}', '{}', NULL, NULL, NULL, 'from memory');
INSERT INTO public.product VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-7900-8c4c-66837b020171', 1, 'Larchfold stop bath', 'stop_bath', '{acid,stop_bath}', false, 80, false, '{H314}', '{P280,P303+P361+P353,P305+P351+P338,P310}', '2026-03-02', NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '');
INSERT INTO public.product VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-79dc-9728-8e04e1685d02', 1, 'Larchfold fixer', 'fixer', '{fixer,thiosulfate,ammonium}', false, 80, false, '{H319}', '{P280,P305+P351+P338}', '2026-03-02', NULL, 'liquid', '{}', NULL, false, NULL, NULL, NULL, NULL, NULL, NULL, '{}', '{}', NULL, NULL, NULL, '');

INSERT INTO public.room_name VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 'larchfold', 'Larchfold Cellar', true, NULL);

INSERT INTO public.room_setting VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 'Larchfold Cellar', 'Europe/Berlin', 'EUR', 'metric', '.', '{0,0,0,0,0,0,0}', '{1440,1440,1440,1440,1440,1440,1440}', 10, 800000000, 10080, 'clp', 'Demo: write your own emergency number here', 'Demo: write your poison centre here', 'Larchfold Cellar, an invented place', 'Ottilie Brandvik, steward of this demo', 'On the wall left of the sink', 'In the red folder by the door', 1, false, 3, 100000000, NULL, NULL, NULL);

INSERT INTO public.sheet_size VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-74b7-9581-9980db6042a6', '5×7 in', 1778, 1270, 1, NULL);
INSERT INTO public.sheet_size VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-734f-a980-f29865d9f97b', '8×10 in', 2540, 2032, 2, NULL);
INSERT INTO public.sheet_size VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-728e-a7c2-e5ee0d8ceb4c', '9.5×12 in (24×30.5 cm)', 3048, 2413, 3, NULL);
INSERT INTO public.sheet_size VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-71a6-ab94-e18411619d96', '11×14 in', 3556, 2794, 4, NULL);
INSERT INTO public.sheet_size VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7755-87aa-3468951ab8e7', '12×16 in', 4064, 3048, 5, NULL);
INSERT INTO public.sheet_size VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7f54-b0e3-6adf5492c914', '16×20 in', 5080, 4064, 6, NULL);
INSERT INTO public.sheet_size VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7893-8f6b-15bb2c8e399a', 'A5', 2100, 1480, 7, NULL);
INSERT INTO public.sheet_size VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-743d-8d86-75af7db58669', 'A4', 2970, 2100, 8, NULL);
INSERT INTO public.sheet_size VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20658-c791-7e08-a652-007300fbb6d6', 'A3', 4200, 2970, 9, NULL);

INSERT INTO public.stay VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a2144b-5611-754e-96ae-131885381e47', '01a20b7f-2391-739f-b381-a7cd30668e4b', '01a20b7f-2391-7e38-abe3-ced52ee2f66c', '2026-11-25 20:00:11.281654+00', NULL, 'single');
INSERT INTO public.stay VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21482-4491-7b83-90b0-dd793723805f', '01a20b7f-2391-79ab-9b10-dba611aa896d', '01a20b7f-2391-7bed-b2c9-5ddef8651190', '2026-11-25 21:00:11.281654+00', NULL, 'single');
INSERT INTO public.stay VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7bed-8b16-8cbf8ca92849', '01a20b7f-2391-79c7-92f5-314404174482', '01a20658-c791-7ae8-aaf9-e3311c1dc041', '2026-11-26 00:00:11.281654+00', NULL, 'single');
INSERT INTO public.stay VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7738-b6f5-c94070421c09', '01a20b7f-2391-7e9b-8150-4fefae68ef81', '01a20658-c791-7ae8-aaf9-e3311c1dc041', '2026-11-26 00:00:11.281654+00', NULL, 'single');
INSERT INTO public.stay VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a21527-1011-7612-bcdb-2d3a91bef946', '01a20b7f-2391-78df-91b2-b99a028957b7', '01a20658-c791-7ae8-aaf9-e3311c1dc041', '2026-11-26 00:00:11.281654+00', NULL, 'single');

INSERT INTO public.tray VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-79c7-92f5-314404174482', '01a20658-c791-7ae8-aaf9-e3311c1dc041', 'Developer', 1, 3400, 2800, 650, 100, NULL, 'developer');
INSERT INTO public.tray VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-7e9b-8150-4fefae68ef81', '01a20658-c791-7ae8-aaf9-e3311c1dc041', 'Stop bath', 2, 3400, 2800, 650, 100, NULL, 'stop_bath');
INSERT INTO public.tray VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-78df-91b2-b99a028957b7', '01a20658-c791-7ae8-aaf9-e3311c1dc041', 'Fixer', 3, 3400, 2800, 650, 100, NULL, 'fixer');
INSERT INTO public.tray VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-739f-b381-a7cd30668e4b', '01a20b7f-2391-7e38-abe3-ced52ee2f66c', 'Developer', 1, 3400, 2800, 650, 100, NULL, 'developer');
INSERT INTO public.tray VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-79ab-9b10-dba611aa896d', '01a20b7f-2391-7bed-b2c9-5ddef8651190', 'Developer', 1, 3400, 2800, 650, 100, NULL, 'developer');
INSERT INTO public.tray VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', '01a20b7f-2391-793c-8acb-e04b5ab6dde2', '01a20b7f-2391-7bed-b2c9-5ddef8651190', 'Spare tray', 2, 3400, 2800, 650, 100, NULL, 'any');

INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 46, '01a21482-4491-7b83-90b0-dd793723805f', 400000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 47, '01a21482-4491-7b83-90b0-dd793723805f', 440000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 48, '01a2144b-5611-754e-96ae-131885381e47', 180000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 49, '01a21482-4491-7b83-90b0-dd793723805f', 180000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 53, '01a2144b-5611-754e-96ae-131885381e47', 680000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, '01a21527-1011-7bed-8b16-8cbf8ca92849', 60000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, '01a21527-1011-7738-b6f5-c94070421c09', 75000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 54, '01a21527-1011-7612-bcdb-2d3a91bef946', 150000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, '01a21527-1011-7bed-8b16-8cbf8ca92849', 40000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, '01a21527-1011-7738-b6f5-c94070421c09', 50000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 55, '01a21527-1011-7612-bcdb-2d3a91bef946', 100000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, '01a21527-1011-7bed-8b16-8cbf8ca92849', 40000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, '01a21527-1011-7738-b6f5-c94070421c09', 50000000);
INSERT INTO public.wear VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 56, '01a21527-1011-7612-bcdb-2d3a91bef946', 100000000);

INSERT INTO public.work VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 'verify_book', '2026-11-27 02:10:00+00', 0, NULL);
INSERT INTO public.work VALUES ('01a215cb-dbb5-744b-969b-8aca66d82f14', 'seal_book', '2026-11-27 02:40:00+00', 0, NULL);
INSERT INTO public.work VALUES ('00000000-0000-0000-0000-000000000000', 'expire', '2026-11-26 04:00:00+00', 0, NULL);

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

CREATE INDEX pass_person_idx ON public.pass USING btree (room_id, person_id, seq);

CREATE INDEX reading_mix_idx ON public.reading USING btree (room_id, mix_id, kind, seq);

CREATE INDEX session_person_idx ON public.session USING btree (person_id);

CREATE INDEX stay_line_idx ON public.stay USING btree (room_id, line_id, from_at);

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

ALTER TABLE public.handover ENABLE ROW LEVEL SECURITY;

CREATE POLICY handover_room ON public.handover USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.head ENABLE ROW LEVEL SECURITY;

CREATE POLICY head_made ON public.head FOR INSERT WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

CREATE POLICY head_moved ON public.head FOR UPDATE USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

CREATE POLICY head_seen ON public.head FOR SELECT USING (true);

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

ALTER TABLE public.product ENABLE ROW LEVEL SECURITY;

CREATE POLICY product_room ON public.product USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.reading ENABLE ROW LEVEL SECURITY;

CREATE POLICY reading_room ON public.reading USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.rinse ENABLE ROW LEVEL SECURITY;

CREATE POLICY rinse_room ON public.rinse USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

ALTER TABLE public.room_setting ENABLE ROW LEVEL SECURITY;

CREATE POLICY room_setting_room ON public.room_setting USING ((room_id = ( SELECT public.current_room() AS current_room))) WITH CHECK ((room_id = ( SELECT public.current_room() AS current_room)));

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

