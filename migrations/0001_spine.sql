-- The spine: people, rooms, the book, and the first bench.
--
-- Room tables lead every key with room_id, so no row can point into another
-- room, and carry a policy: a transaction sees the room it was opened for and
-- nothing else. The owner of the tables is exempt; the server never works as
-- owner. Volumes are whole microlitres, wear whole nanolitres, lengths tenths
-- of a millimetre, areas hundredths of a square millimetre, fractions of life
-- parts per billion.

create function current_room() returns uuid language sql stable as
$$ select nullif(current_setting('wetside.room', true), '')::uuid $$;

create function current_person() returns uuid language sql stable as
$$ select nullif(current_setting('wetside.person', true), '')::uuid $$;

-- People and how they get in: the installation's, not a room's.

create table person (
    id uuid primary key,
    name text not null constraint person_name_check check (length(name) between 1 and 80),
    log_in_name text not null constraint person_log_in_name_key unique,
    password_hash text not null,
    is_operator boolean not null default false,
    created_at timestamptz not null,
    -- The whole account, by the machine; a room suspends a membership.
    suspended_at timestamptz,
    reset_seen_at timestamptz
);

create table session (
    secret_hash bytea primary key,
    id uuid not null constraint session_id_key unique,
    person_id uuid not null references person (id),
    agent text not null,
    created_at timestamptz not null,
    last_seen_at timestamptz not null,
    expires_at timestamptz not null
);
create index session_person_idx on session (person_id);

-- A browser that logged in before; it keeps its own allowance of tries.
create table known_device (
    secret_hash bytea not null,
    person_id uuid not null references person (id),
    seen_at timestamptz not null,
    primary key (secret_hash, person_id)
);

create table throttle (
    scope text not null,
    subject bytea not null,
    tries integer not null,
    window_ends_at timestamptz not null,
    primary key (scope, subject)
);

create table room_name (
    room_id uuid primary key,
    slug text not null constraint room_name_slug_key unique,
    name text not null,
    is_demo boolean not null default false,
    closed_at timestamptz
);

-- One row a room; its lock orders every write of that room.
create table head (
    room_id uuid primary key references room_name (room_id),
    seq bigint not null,
    hash bytea not null,
    recorded_at timestamptz not null
);

-- One-time links: a room's first day, an invitation, a new password.
create table invitation (
    id uuid primary key,
    secret_hash bytea not null constraint invitation_secret_hash_key unique,
    kind text not null constraint invitation_kind_check check (kind in ('set_up', 'join', 'reset')),
    room_id uuid references room_name (room_id),
    role text,
    person_id uuid references person (id),
    made_by uuid references person (id),
    made_at timestamptz not null,
    -- A set-up link is good until the first room is there.
    expires_at timestamptz constraint invitation_expires_check
        check (expires_at is not null or kind = 'set_up'),
    used_at timestamptz,
    revoked_at timestamptz
);
create index invitation_room_idx on invitation (room_id);
create index invitation_person_idx on invitation (person_id) where person_id is not null;

-- Jobs that fall due; no personal data.
create table work (
    room_id uuid not null,
    kind text not null,
    due_at timestamptz not null,
    attempts integer not null default 0,
    lease_until timestamptz,
    primary key (room_id, kind, due_at)
);
create index work_due_idx on work (due_at);

-- The book.

create table entry (
    room_id uuid not null references head (room_id),
    seq bigint not null constraint entry_seq_check check (seq > 0),
    prev bytea not null,
    hash bytea not null,
    version smallint not null,
    kind text not null,
    actor uuid references person (id),
    key bytea,
    fingerprint bytea not null,
    happened_at timestamptz not null,
    recorded_at timestamptz not null,
    payload bytea not null,
    primary key (room_id, seq),
    -- The fork guard, should a writer ever forget the lock.
    constraint entry_prev_key unique (room_id, prev),
    constraint entry_key_key unique (room_id, key)
);
create index entry_kind_idx on entry (room_id, kind, seq);
create index entry_actor_idx on entry (room_id, actor, seq);

create table entry_about (
    room_id uuid not null,
    seq bigint not null,
    noun text not null,
    id uuid not null,
    primary key (room_id, seq, noun, id),
    constraint entry_about_entry_fkey foreign key (room_id, seq) references entry (room_id, seq)
);
create index entry_about_id_idx on entry_about (room_id, noun, id, seq);

-- The room's people and rules, as its entries left them.

create table membership (
    room_id uuid not null references head (room_id),
    person_id uuid not null references person (id),
    member_number integer not null,
    role text not null constraint membership_role_check
        check (role in ('member', 'trained', 'steward', 'treasurer')),
    joined_at timestamptz not null,
    suspended_at timestamptz,
    ended_at timestamptz,
    primary key (room_id, person_id),
    constraint membership_number_key unique (room_id, member_number)
);
create index membership_person_idx on membership (person_id);

create table room_setting (
    room_id uuid primary key references head (room_id),
    name text not null,
    zone text not null,
    currency text not null,
    units text not null constraint room_setting_units_check check (units in ('metric', 'inch')),
    decimal_mark text not null constraint room_setting_decimal_mark_check
        check (decimal_mark in ('.', ',')),
    -- Minutes after midnight, Monday first; null is closed that day.
    opens integer[] not null,
    closes integer[] not null,
    people_limit integer not null,
    test_first_ppb bigint not null,
    late_note_minutes integer not null,
    hazard_rules text not null constraint room_setting_hazard_rules_check
        check (hazard_rules in ('clp', 'north_american')),
    emergency_number text not null,
    poison_centre text not null,
    address text not null,
    contacts text not null,
    eyewash text not null,
    data_sheets text not null,
    seq bigint not null
);

-- Papers.

create table sheet_size (
    room_id uuid not null references head (room_id),
    id uuid not null,
    name text not null,
    long_tenths_mm integer not null,
    short_tenths_mm integer not null,
    position integer not null,
    retired_at timestamptz,
    primary key (room_id, id),
    constraint sheet_size_sides_check check (long_tenths_mm >= short_tenths_mm and short_tenths_mm > 0)
);

create table paper_class (
    room_id uuid not null references head (room_id),
    id uuid not null,
    name text not null,
    position integer not null,
    retired_at timestamptz,
    primary key (room_id, id)
);

-- Chemistry.

create table product (
    room_id uuid not null references head (room_id),
    id uuid not null,
    version integer not null,
    name text not null,
    kind text not null constraint product_kind_check
        check (kind in ('developer', 'stop_bath', 'fixer', 'wash_aid', 'toner')),
    groups text[] not null,
    oxidises boolean not null,
    depth_reference_tenths_mm integer not null,
    steward_only boolean not null,
    hazard_codes text[] not null,
    precaution_codes text[] not null,
    data_sheet_on date,
    retired_at timestamptz,
    primary key (room_id, id)
);

create table dilution (
    room_id uuid not null,
    id uuid not null,
    product_id uuid not null,
    parts_thousandths bigint not null,
    tray_life_s bigint not null,
    bottle_life_s bigint not null,
    life_basis text not null,
    position integer not null,
    primary key (room_id, id),
    constraint dilution_product_fkey foreign key (room_id, product_id) references product (room_id, id)
);

create table capacity (
    room_id uuid not null,
    dilution_id uuid not null,
    paper_class_id uuid not null,
    sheets_per_litre_thousandths bigint not null,
    basis text not null,
    primary key (room_id, dilution_id, paper_class_id),
    constraint capacity_dilution_fkey foreign key (room_id, dilution_id) references dilution (room_id, id),
    constraint capacity_paper_class_fkey foreign key (room_id, paper_class_id)
        references paper_class (room_id, id)
);

-- The bench.

create table line (
    room_id uuid not null references head (room_id),
    id uuid not null,
    name text not null,
    position integer not null,
    retired_at timestamptz,
    primary key (room_id, id)
);

create table tray (
    room_id uuid not null,
    id uuid not null,
    line_id uuid not null,
    name text not null,
    position integer not null,
    inside_long_tenths_mm integer not null,
    inside_short_tenths_mm integer not null,
    inside_depth_tenths_mm integer not null,
    least_depth_tenths_mm integer not null,
    retired_at timestamptz,
    primary key (room_id, id),
    constraint tray_line_fkey foreign key (room_id, line_id) references line (room_id, id)
);

create table mix (
    room_id uuid not null,
    id uuid not null,
    product_id uuid not null,
    product_version integer not null,
    parts_thousandths bigint not null,
    charged_ul bigint not null constraint mix_charged_check check (charged_ul > 0),
    concentrate_ul bigint not null,
    spent_nl bigint not null constraint mix_spent_check check (spent_nl >= 0),
    -- Life used when last set, and the pace since: one life in life_s seconds.
    age_ppb bigint not null,
    age_at timestamptz not null,
    life_s bigint not null,
    unknown_sheets_at timestamptz,
    mixed_at timestamptz not null,
    mixed_by uuid references person (id),
    mixed_seq bigint not null,
    tray_id uuid,
    discarded_at timestamptz,
    discarded_into text,
    last_seq bigint not null,
    primary key (room_id, id),
    constraint mix_product_fkey foreign key (room_id, product_id) references product (room_id, id),
    constraint mix_tray_fkey foreign key (room_id, tray_id) references tray (room_id, id)
);
-- One mix stands in a tray at a time.
create unique index mix_tray_key on mix (room_id, tray_id) where tray_id is not null;
create index mix_container_idx on mix (room_id, lower(discarded_into)) where discarded_into is not null;

create table mix_capacity (
    room_id uuid not null,
    mix_id uuid not null,
    paper_class_id uuid not null,
    sheets_per_litre_thousandths bigint not null,
    primary key (room_id, mix_id, paper_class_id),
    constraint mix_capacity_mix_fkey foreign key (room_id, mix_id) references mix (room_id, id)
);

-- Where a mix stood and when, so that a late note finds the mix of its hour.
create table stay (
    room_id uuid not null,
    mix_id uuid not null,
    tray_id uuid not null,
    line_id uuid not null,
    from_at timestamptz not null,
    until_at timestamptz,
    primary key (room_id, mix_id, from_at),
    constraint stay_mix_fkey foreign key (room_id, mix_id) references mix (room_id, id),
    constraint stay_tray_fkey foreign key (room_id, tray_id) references tray (room_id, id)
);
create index stay_line_idx on stay (room_id, line_id, from_at);

create table pass (
    room_id uuid not null,
    seq bigint not null,
    id uuid not null,
    line_id uuid not null,
    person_id uuid not null references person (id),
    paper_class_id uuid not null,
    sheet_size_id uuid not null,
    sheets integer not null constraint pass_sheets_check check (sheets > 0),
    happened_at timestamptz not null,
    reversed_by bigint,
    primary key (room_id, seq),
    constraint pass_id_key unique (room_id, id),
    constraint pass_line_fkey foreign key (room_id, line_id) references line (room_id, id),
    constraint pass_paper_class_fkey foreign key (room_id, paper_class_id)
        references paper_class (room_id, id),
    constraint pass_sheet_size_fkey foreign key (room_id, sheet_size_id)
        references sheet_size (room_id, id)
);
create index pass_person_idx on pass (room_id, person_id, seq);

create table wear (
    room_id uuid not null,
    seq bigint not null,
    mix_id uuid not null,
    spent_nl bigint not null,
    primary key (room_id, seq, mix_id),
    constraint wear_mix_fkey foreign key (room_id, mix_id) references mix (room_id, id)
);
create index wear_mix_idx on wear (room_id, mix_id, seq);

-- Not folded from entries: what was read, and secrets.

create table notice (
    room_id uuid not null,
    id uuid not null,
    person_id uuid not null references person (id),
    kind text not null,
    parameters text not null,
    made_at timestamptz not null,
    read_at timestamptz,
    primary key (room_id, id)
);
create index notice_person_idx on notice (room_id, person_id, made_at);

create table delivery (
    room_id uuid not null,
    notice_id uuid not null,
    channel text not null,
    state text not null,
    tries integer not null,
    primary key (room_id, notice_id, channel),
    constraint delivery_notice_fkey foreign key (room_id, notice_id) references notice (room_id, id)
);

create table token (
    room_id uuid not null,
    id uuid not null,
    person_id uuid not null references person (id),
    name text not null,
    secret_hash bytea not null,
    scopes text[] not null,
    made_at timestamptz not null,
    expires_at timestamptz not null,
    last_used_at timestamptz,
    revoked_at timestamptz,
    primary key (room_id, id)
);

-- The second wall.

do $$
declare
    walled text;
begin
    foreach walled in array array[
        'entry', 'entry_about', 'room_setting', 'sheet_size', 'paper_class', 'product', 'dilution',
        'capacity', 'line', 'tray', 'mix', 'mix_capacity', 'stay', 'pass', 'wear', 'delivery', 'token'
    ] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;

alter table membership enable row level security;
create policy membership_seen on membership for select
    using (room_id = (select current_room()) or person_id = (select current_person()));
create policy membership_added on membership for insert
    with check (room_id = (select current_room()));
create policy membership_changed on membership for update
    using (room_id = (select current_room())) with check (room_id = (select current_room()));

alter table notice enable row level security;
create policy notice_seen on notice for select
    using (room_id = (select current_room()) and person_id = (select current_person()));
create policy notice_made on notice for insert
    with check (room_id = (select current_room()));
create policy notice_read on notice for update
    using (room_id = (select current_room()) and person_id = (select current_person()));

alter table head enable row level security;
create policy head_seen on head for select using (true);
create policy head_made on head for insert with check (room_id = (select current_room()));
create policy head_moved on head for update
    using (room_id = (select current_room())) with check (room_id = (select current_room()));

-- History is never changed: no grant allows it, and this says so to anyone
-- who has the grant.
create function refuse_change() returns trigger language plpgsql as
$$ begin raise exception 'the book is append-only: % on %', tg_op, tg_table_name; end $$;

create trigger entry_append_only before update or delete on entry
    for each row execute function refuse_change();
create trigger entry_no_truncate before truncate on entry
    for each statement execute function refuse_change();
