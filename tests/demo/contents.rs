//! What the demo must hold. A noun that comes later adds a line here.

use std::collections::BTreeSet;

use sqlx::{AssertSqlSafe, PgConnection};
use time::Duration;
use wetside::board::{BenchNow, bench_now};
use wetside::darkroom::verdict::{Measure, Reason, Verdict};
use wetside::database::Scope;
use wetside::kinds::KINDS;
use wetside::mixes::{ReadingKind, Storage, Why};
use wetside::products::{Form, Kind};
use wetside::rights::Role;
use wetside::rooms;

use super::Made;

/// Kinds of entry that no demo holds, and why.
const NOT_IN_A_DEMO: &[(&str, &str)] = &[("room_opened", "a demo begins with its own kind")];

/// Where the book's people live.
const ZONE: &str = "Europe/Berlin";

pub(super) async fn hold(made: &Made) {
    let mut db = made.installation.db().await;
    every_kind(&mut db).await;
    people(made, &mut db).await;
    days(made, &mut db).await;
    the_book(made, &mut db).await;
    let bench = now(made).await;
    the_board(&bench);
    the_bottles(made, &bench);
    what_people_found(&mut db).await;
    what_else(made, &mut db).await;
    made_as_told(made);
}

/// The first column of every row.
async fn texts(db: &mut PgConnection, statement: &str) -> Vec<String> {
    let query = sqlx::query_scalar::<_, String>(AssertSqlSafe(statement.to_owned()));
    query.fetch_all(db).await.unwrap()
}

/// The first column of the one row.
async fn number(db: &mut PgConnection, statement: &str) -> i64 {
    let statement = format!("select ({statement})::bigint");
    let query = sqlx::query_scalar::<_, i64>(AssertSqlSafe(statement));
    query.fetch_one(db).await.unwrap()
}

/// Every word of a list is among those of a column.
fn all_of<'w>(found: &[String], wanted: impl IntoIterator<Item = &'w str>) {
    let missing: Vec<&str> = wanted
        .into_iter()
        .filter(|word| !found.iter().any(|each| each == word))
        .collect();
    assert!(missing.is_empty(), "{missing:?} of {found:?}");
}

async fn every_kind(db: &mut PgConnection) {
    let found = texts(db, "select distinct kind from entry").await;
    let excused = |name: &str| NOT_IN_A_DEMO.iter().any(|(kind, _)| *kind == name);
    let wanted = KINDS.iter().map(|kind| kind.name);
    all_of(&found, wanted.filter(|name| !excused(name)));
    let why = "select distinct convert_from(payload, 'utf8')::jsonb ->> 'why' \
        from entry where kind = 'discarded'";
    all_of(&texts(db, why).await, Why::ALL.map(Why::as_str));
    let storage = "select distinct convert_from(payload, 'utf8')::jsonb ->> 'storage' \
        from entry where kind in ('mixed', 'stored', 'unknown_found')";
    all_of(&texts(db, storage).await, Storage::ALL.map(Storage::as_str));
    let forms = texts(db, "select distinct form from product").await;
    all_of(&forms, Form::ALL.map(Form::as_str));
    let mixed = "select distinct p.kind from mix m \
        join product p on p.room_id = m.room_id and p.id = m.product_id";
    all_of(&texts(db, mixed).await, Kind::ALL.map(Kind::as_str));
}

async fn people(made: &Made, db: &mut PgConnection) {
    let active = "from membership where suspended_at is null and ended_at is null";
    assert!(number(db, &format!("select count(*) {active}")).await >= 38);
    let with = |role: Role| format!("select count(*) {active} and role = '{}'", role.as_str());
    assert_eq!(number(db, &with(Role::Steward)).await, 2);
    assert_eq!(number(db, &with(Role::Treasurer)).await, 1);
    assert!(number(db, &with(Role::Trained)).await >= 4);
    for standing in ["suspended_at is not null", "ended_at is not null"] {
        let wanted = format!("select count(*) from membership where {standing}");
        assert!(number(db, &wanted).await >= 1, "{standing}");
    }
    let joined = "select count(distinct date_trunc('month', recorded_at)) \
        from entry where kind = 'joined'";
    assert!(number(db, joined).await >= 6);
    let names = "select count(*) - count(distinct name) from person";
    assert_eq!(number(db, names).await, 0);
    let open = "select count(*) from invitation \
        where kind = 'join' and used_at is null and revoked_at is null";
    assert_eq!(number(db, open).await, 1);
    let roles: BTreeSet<&str> = made.log_ins.iter().map(|each| each.role.as_str()).collect();
    assert_eq!(roles, Role::ALL.map(Role::as_str).into_iter().collect());
}

/// Areas of 8×10 in that went through, by when.
async fn sheets(db: &mut PgConnection, when: &str) -> i64 {
    let statement = format!(
        "select coalesce(sum(p.sheets::bigint * s.long_tenths_mm * s.short_tenths_mm), 0) / 5161280 \
         from (select *, happened_at at time zone '{ZONE}' as local from pass) p \
         join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id \
         where p.reversed_by is null and {when}"
    );
    number(db, &statement).await
}

async fn days(made: &Made, db: &mut PgConnection) {
    let on = |day: i32| format!("extract(isodow from local) = {day}");
    let (monday, thursday) = (sheets(db, &on(1)).await, sheets(db, &on(4)).await);
    assert!(
        2 * thursday > 3 * monday && monday > 100,
        "{thursday} {monday}"
    );
    let weeks = format!(
        "select count(*)::text from pass \
         group by floor(extract(epoch from '{}'::timestamptz - happened_at) / 604800) order by count(*)",
        made.end
    );
    let weeks = texts(db, &weeks).await;
    let weeks: Vec<i64> = weeks.iter().map(|count| count.parse().unwrap()).collect();
    let middle = weeks[weeks.len() / 2];
    // The week that began with the span's first minutes is the shortest.
    assert!(weeks[1] * 2 < middle, "no quiet week: {weeks:?}");
    let saturdays = "select (count(*))::text from pass \
        where extract(isodow from happened_at at time zone 'Europe/Berlin') = 6 \
        group by date_trunc('day', happened_at) order by count(*)";
    let saturdays = texts(db, saturdays).await;
    let saturdays: Vec<i64> = saturdays
        .iter()
        .map(|count| count.parse().unwrap())
        .collect();
    let usual = saturdays[saturdays.len() / 2];
    assert!(
        *saturdays.last().unwrap() * 10 > usual * 14,
        "{saturdays:?}"
    );
}

async fn the_book(made: &Made, db: &mut PgConnection) {
    let entries = number(db, "select max(seq) from entry").await;
    assert!(entries > 5_000, "{entries}");
    let late = format!(
        "select count(*) from entry where recorded_at > '{0}' or happened_at > '{0}'",
        made.end
    );
    assert_eq!(number(db, &late).await, 0);
    let lately = format!(
        "select count(*) from pass where happened_at > '{}'",
        made.end - Duration::minutes(10)
    );
    assert!(number(db, &lately).await >= 2);
    let first = format!(
        "select count(*) from entry where seq = 1 and kind = 'demo' and recorded_at < '{}'",
        made.end - Duration::weeks(26)
    );
    assert_eq!(number(db, &first).await, 1);
    let shelf = wetside::book::checkpoints::shelf(&made.installation.app, made.room);
    assert!(shelf.await.unwrap().checkpoints.len() > 150);
}

async fn now(made: &Made) -> BenchNow {
    let scope = Scope {
        room: made.room,
        person: None,
    };
    let end = made.end;
    let database = made.installation.app.database();
    let bench = database.reading(scope, move |tx| {
        Box::pin(async move {
            let settings = rooms::settings(tx).await?;
            bench_now(tx, end, &settings).await
        })
    });
    bench.await.unwrap()
}

fn the_board(bench: &BenchNow) {
    let trays = || bench.lines.iter().flat_map(|line| &line.trays);
    for verdict in [
        Verdict::Ready,
        Verdict::TestFirst,
        Verdict::Replace,
        Verdict::Unknown,
        Verdict::NothingRecorded,
    ] {
        let mut found = trays();
        assert!(
            found.any(|now| now.judgement.verdict == verdict),
            "{verdict:?}"
        );
    }
    let nearly = |reason: &Reason| match reason {
        Reason::Used(Measure::Capacity, used) => (900_000_000..1_000_000_000).contains(&used.get()),
        _ => false,
    };
    let mut close = trays().filter(|now| now.judgement.verdict < Verdict::Replace);
    assert!(close.any(|now| now.judgement.reasons.iter().any(nearly)));
    let mut extended = trays();
    let is_extended = |reason: &Reason| matches!(reason, Reason::ExtendedUntil(_));
    assert!(extended.any(|now| now.judgement.reasons.iter().any(is_extended)));
    let spaces = bench.lines.iter().filter(|line| line.space.is_some());
    assert_eq!(spaces.count(), 1);
    let mut washes = trays().filter(|now| now.tray.step == wetside::bench::Step::Wash);
    assert!(washes.next().is_some());
}

fn the_bottles(made: &Made, bench: &BenchNow) {
    assert!(bench.bottles.len() >= 3);
    let expired = bench.bottles.iter().filter(|now| {
        let over = now.mix.life_ends().is_some_and(|ends| ends < made.end);
        over && now.judgement.verdict == Verdict::Replace
    });
    assert!(expired.count() >= 1);
}

async fn what_people_found(db: &mut PgConnection) {
    let found = texts(db, "select distinct kind from reading").await;
    all_of(&found, ReadingKind::ALL.map(ReadingKind::as_str));
    let outcomes = texts(db, "select distinct outcome from reading").await;
    all_of(&outcomes, ["read", "passed", "failed"]);
    // Of what stands: a fresh time, and two that are held against it.
    let series = "select count(*) from reading f join mix m on m.id = f.mix_id \
        where f.is_fresh and m.tray_id is not null and 2 <= (select count(*) from reading r \
            where r.mix_id = f.mix_id and r.kind = f.kind and r.ratio_thousandths is not null)";
    assert!(number(db, series).await >= 1);
}

/// At least so many rows of each: `$now` is the end of the months.
const OF_THE_ROOM: &[(i64, &str)] = &[
    (
        1,
        "notice where read_at is null and person_id = (select id from person where log_in_name = 'ottilie')",
    ),
    (3, "outage"),
    (20, "pass where is_film"),
    (20, "pass where is_estimated"),
    (
        20,
        "pass where happened_at < (select recorded_at from entry e where e.seq = pass.seq) - interval '20 minutes'",
    ),
    (3, "place_air"),
    (1, "place_air where not has_fan"),
    (3, "flow_measurement where undone_by is null"),
    (1, "flow_measurement where undone_by is not null"),
    (
        3,
        "airing where ended_at > $now::timestamptz - interval '1 hour'",
    ),
    (3, "stock_solution"),
    (20, "ingredient"),
    (4, "product where composition_is_known"),
    (
        1,
        "product where not composition_is_known and retired_at is null",
    ),
    (
        20,
        "room_check_result r join room_check c on c.id = r.room_check_id where c.name = 'Eyewash'",
    ),
    (
        1,
        "room_check_result r join room_check c on c.id = r.room_check_id where c.name = 'Eyewash' and not r.has_passed",
    ),
    (1, "room_check_result where undone_by is not null"),
    (
        1,
        "room_check_result where measured_thousandths is not null",
    ),
    (2, "handover where confirmed_at is not null"),
    (1, "paper_class where retired_at is not null"),
    (1, "sheet_size where retired_at is not null"),
    (2, "product where retired_at is not null"),
    (
        1,
        "wash where last_joined_at + wash_s * interval '1 second' > $now",
    ),
    (1, "extension where until_at > $now"),
    (1, "mix where poured_into is not null"),
    (
        5,
        "wear w join mix m on m.id = w.mix_id join product p on p.id = m.product_id where p.kind = 'toner'",
    ),
];

/// The same, of people.
const OF_PEOPLE: &[(i64, &str)] = &[
    (1, "workshop where begins_at > $now"),
    (1, "workshop where ended_seq is not null and is_confirmed"),
    (2, "guest where erased_seq is not null"),
    (1, "pass where workshop_id is not null"),
    (38, "induction where confirmed_by = 'own_account'"),
    (5, "induction where basis = 'on_paper'"),
    (1, "induction where basis = 'self_declared'"),
    (5, "induction_scan where removed_seq is null"),
    (1, "induction where withdrawn_seq is not null"),
    (1, "induction where renews_id is not null"),
    (1, "topic where version > 1"),
    // One who is not inducted came in, and was supervised.
    (1, "presence where supervisor_id is not null"),
    // Whoever came into an empty room said until when, and one stayed longer.
    (20, "presence where expected_at is not null"),
    (1, "entry where kind = 'leaving_expected'"),
    (3, "incident"),
    (2, "incident where finished_seq is null"),
    (1, "incident where erased_seq is not null"),
    (1, "incident_look"),
    // A supplement that is overdue, of which stewards were told.
    (1, "supplement_told"),
    (
        5,
        "induction_topic where good_until between $now and ($now::timestamptz + interval '30 days')",
    ),
];

async fn what_else(made: &Made, db: &mut PgConnection) {
    for (many, wanted) in OF_THE_ROOM.iter().chain(OF_PEOPLE) {
        let wanted = wanted.replace("$now", &format!("'{}'", made.end));
        let count = number(db, &format!("select count(*) from {wanted}")).await;
        assert!(count >= *many, "{count} of {wanted}");
    }
    let off = number(db, "select count(*) from outage where ended_seq is null").await;
    assert_eq!(off, 0);
}

fn made_as_told(made: &Made) {
    let weeks: Vec<i64> = made.told.iter().map(|far| far.week).collect();
    assert_eq!(weeks, (1..=26).collect::<Vec<_>>());
    assert!(made.told.is_sorted_by_key(|far| far.entries));
    assert_eq!(made.told[25].month, "Nov 2026");
}
