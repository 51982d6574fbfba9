-- What people must know before they touch chemistry, and on record who was told what.
--
-- A topic is a text in versions: a change of it is a new version, and old ones stay to
-- be read. An induction names person, topics and the version of each; it counts once
-- both sides have confirmed it, and until the last day of each topic.

create table topic (
    room_id uuid not null references head (room_id),
    id uuid not null,
    version integer not null,
    -- Inductions on an earlier version count no more.
    counts_from_version integer not null,
    required text not null constraint topic_required_check
        check (required in ('always', 'by_trait', 'by_product', 'offered')),
    -- Of what is in the trays or stands there as concentrate.
    traits text[] not null,
    -- None: an induction on it has no end.
    good_months integer constraint topic_months_check check (good_months > 0),
    retired_at timestamptz,
    primary key (room_id, id),
    constraint topic_version_check check (counts_from_version between 1 and version),
    constraint topic_traits_check check ((required = 'by_trait') = (traits <> '{}'))
);

create table topic_version (
    room_id uuid not null,
    topic_id uuid not null,
    version integer not null,
    title text not null,
    body text not null,
    set_seq bigint not null,
    set_at timestamptz not null,
    primary key (room_id, topic_id, version),
    constraint topic_version_topic_fkey
        foreign key (room_id, topic_id) references topic (room_id, id)
);

create table topic_product (
    room_id uuid not null,
    topic_id uuid not null,
    product_id uuid not null,
    primary key (room_id, topic_id, product_id),
    constraint topic_product_topic_fkey
        foreign key (room_id, topic_id) references topic (room_id, id),
    constraint topic_product_product_fkey
        foreign key (room_id, product_id) references product (room_id, id)
);

create table induction (
    room_id uuid not null references head (room_id),
    id uuid not null,
    seq bigint not null,
    person_id uuid not null references person (id),
    inducer_id uuid references person (id),
    basis text not null constraint induction_basis_check
        check (basis in ('given', 'on_paper', 'self_declared')),
    -- A day, not an instant: paper says no more.
    given_on date not null,
    remark text not null,
    renews_id uuid,
    confirmed_seq bigint,
    confirmed_at timestamptz,
    confirmed_by text constraint induction_confirmed_by_check
        check (confirmed_by in ('own_account', 'number_and_pin', 'paper', 'oneself')),
    withdrawn_seq bigint,
    withdrawn_reason text,
    primary key (room_id, id),
    constraint induction_seq_key unique (room_id, seq),
    constraint induction_renews_fkey
        foreign key (room_id, renews_id) references induction (room_id, id),
    constraint induction_confirmed_check check (
        (confirmed_seq is null) = (confirmed_at is null)
        and (confirmed_seq is null) = (confirmed_by is null)
    ),
    constraint induction_withdrawn_check check (
        (withdrawn_seq is null) = (withdrawn_reason is null)
    )
);
create index induction_person_idx on induction (room_id, person_id, seq);

create table induction_topic (
    room_id uuid not null,
    induction_id uuid not null,
    topic_id uuid not null,
    version integer not null,
    -- The last day it holds; none for one without end.
    good_until date,
    primary key (room_id, induction_id, topic_id),
    constraint induction_topic_induction_fkey
        foreign key (room_id, induction_id) references induction (room_id, id),
    constraint induction_topic_version_fkey
        foreign key (room_id, topic_id, version)
        references topic_version (room_id, topic_id, version)
);

-- Of which ends people were told: each once.
create table induction_told (
    room_id uuid not null,
    person_id uuid not null references person (id),
    topic_id uuid not null,
    good_until date not null,
    told_at timestamptz not null,
    primary key (room_id, person_id, topic_id, good_until),
    constraint induction_told_topic_fkey
        foreign key (room_id, topic_id) references topic (room_id, id)
);

-- Of which supplements stewards were told: each once.
create table supplement_told (
    room_id uuid not null,
    product_id uuid not null,
    topic_id uuid not null,
    counts_from_version integer not null,
    told_at timestamptz not null,
    primary key (room_id, product_id, topic_id, counts_from_version),
    constraint supplement_told_product_fkey
        foreign key (room_id, product_id) references product (room_id, id),
    constraint supplement_told_topic_fkey
        foreign key (room_id, topic_id) references topic (room_id, id)
);

-- Who answers for somebody who is not inducted yet and came in all the same.
alter table presence add column supervisor_id uuid references person (id);

do $$
declare
    walled text;
begin
    foreach walled in array array[
        'topic', 'topic_version', 'topic_product', 'induction', 'induction_topic',
        'induction_told', 'supplement_told'
    ] loop
        execute format('alter table %I enable row level security', walled);
        execute format(
            'create policy %I on %I using (room_id = (select current_room())) '
            'with check (room_id = (select current_room()))',
            walled || '_room', walled);
    end loop;
end
$$;
