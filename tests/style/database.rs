//! The second wall: what the serving role may do, and which rows it sees, asked of
//! the database itself in a log-in of that role.

use std::collections::{BTreeMap, BTreeSet};

use sqlx::{AssertSqlSafe, Connection, Executor, PgConnection, Row};
use uuid::Uuid;
use wetside::database::cluster::WEB_ROLE;
use wetside::database::roles::GRANTS;

use crate::access::house::House;
use crate::harness::{Installation, scenario_alone};

/// Tables with a room's id that every room's log-in may read, and why.
const OPEN: &[(&str, &str)] = &[
    ("room_name", "who looks for a room knows its name only"),
    (
        "invitation",
        "a link is found by its secret, before any room is known",
    ),
    (
        "pairing",
        "a screen is found by its secret, before any room is known",
    ),
    ("work", "due jobs of all rooms; no personal data"),
];

/// Tables with a wall whose rows all rooms may read: ids, numbers and hashes.
const READ_BY_ALL: &str = "head";

async fn as_web(installation: &Installation) -> PgConnection {
    PgConnection::connect_with(&installation.web).await.unwrap()
}

async fn texts(db: &mut PgConnection, statement: &str) -> Vec<String> {
    sqlx::query_scalar(AssertSqlSafe(statement.to_owned()))
        .fetch_all(db)
        .await
        .unwrap()
}

/// The tables that say which room a row is of.
async fn of_rooms(db: &mut PgConnection) -> Vec<String> {
    let statement = "select c.relname::text
        from pg_class c
        join pg_attribute a on a.attrelid = c.oid and a.attname = 'room_id'
        where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'
        order by 1";
    texts(db, statement).await
}

#[test]
fn every_table_of_a_room_has_a_wall() {
    scenario_alone(async |stage| {
        let mut db = stage.installation.db().await;
        let mut without = BTreeSet::new();
        for table in of_rooms(&mut db).await {
            let found = sqlx::query(
                "select c.relrowsecurity, c.relforcerowsecurity,
                    (select count(*) from pg_policy p where p.polrelid = c.oid) as policies
                from pg_class c
                where c.oid = ('public.' || $1)::regclass",
            )
            .bind(&table)
            .fetch_one(&mut db)
            .await
            .unwrap();
            assert!(!found.get::<bool, _>(1), "{table} is forced");
            match (found.get::<bool, _>(0), found.get::<i64, _>(2)) {
                (true, 1..) => {}
                (false, 0) => drop(without.insert(table)),
                other => panic!("{table}: {other:?}"),
            }
        }
        let open: BTreeSet<String> = OPEN.iter().map(|(table, _)| (*table).to_owned()).collect();
        assert_eq!(without, open);
    });
}

#[test]
fn the_role_may_do_what_is_listed_and_no_more() {
    scenario_alone(async |stage| {
        let mut db = stage.installation.db().await;
        let mut found: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
        let rows = sqlx::query(
            "select c.relname::text, lower(g.privilege_type)
            from pg_class c
            cross join lateral aclexplode(c.relacl) g
            left join pg_roles r on r.oid = g.grantee
            where c.relnamespace = 'public'::regnamespace
                and c.relkind in ('r', 'v', 'm', 'S')
                and (g.grantee = 0 or r.rolname = $1)",
        )
        .bind(WEB_ROLE)
        .fetch_all(&mut db)
        .await
        .unwrap();
        for row in rows {
            found.entry(row.get(0)).or_default().insert(row.get(1));
        }
        let wanted: BTreeMap<String, BTreeSet<String>> = GRANTS
            .iter()
            .map(|(table, rights)| {
                let rights = rights.split(", ").map(str::to_owned).collect();
                ((*table).to_owned(), rights)
            })
            .collect();
        assert_eq!(found, wanted);
        let by_column = "select attrelid::regclass::text || '.' || attname
            from pg_attribute
            where attacl is not null and attrelid in (
                select oid from pg_class where relnamespace = 'public'::regnamespace
            )";
        assert_eq!(texts(&mut db, by_column).await, Vec::<String>::new());
        let of_role = format!(
            "select rolname::text from pg_roles where rolname = '{WEB_ROLE}'
                and (rolsuper or rolbypassrls or rolcreatedb or rolcreaterole or rolreplication)
            union all
            select relname::text from pg_class where relowner = '{WEB_ROLE}'::regrole"
        );
        assert_eq!(texts(&mut db, &of_role).await, Vec::<String>::new());
    });
}

/// The code with which the database refuses what a role or a policy does not allow.
const NOT_ALLOWED: &str = "42501";

/// Tries a statement in a transaction that is given up; answers how many rows it
/// touched, or the database's code.
async fn tried(db: &mut PgConnection, room: Option<Uuid>, statement: &str) -> Result<u64, String> {
    let mut tx = db.begin().await.unwrap();
    if let Some(room) = room {
        let set = format!("set local wetside.room = '{room}'");
        tx.execute(AssertSqlSafe(set)).await.unwrap();
    }
    let done = tx.execute(AssertSqlSafe(statement.to_owned())).await;
    let done = done.map(|done| done.rows_affected()).map_err(|cause| {
        let cause = cause.as_database_error().and_then(|cause| cause.code());
        cause.unwrap().into_owned()
    });
    tx.rollback().await.unwrap();
    done
}

#[test]
fn the_book_is_only_ever_added_to() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let room = Some(house.stage.room);
        let mut web = as_web(&house.stage.installation).await;
        let seen = tried(&mut web, room, "select seq from entry").await;
        assert!(seen.is_ok_and(|seen| seen > 5));
        for statement in [
            "update entry set kind = kind",
            "update entry set payload = '' where seq = 1",
            "delete from entry",
            "truncate entry",
            "alter table entry disable trigger all",
            "alter table entry disable row level security",
            "drop table entry",
            "update entry_about set noun = noun",
            "delete from entry_about",
            "delete from person",
            "update wear set spent_nl = 0",
            "create table beside (id uuid)",
            "set role wetside_owner",
        ] {
            let refused = tried(&mut web, room, statement).await;
            assert_eq!(refused, Err(NOT_ALLOWED.to_owned()), "{statement}");
        }
        // The owner has the right; the trigger refuses even so.
        let mut owner = house.stage.installation.db().await;
        for statement in [
            "update entry set kind = kind",
            "delete from entry",
            "truncate entry cascade",
        ] {
            let refused = tried(&mut owner, room, statement).await;
            assert_eq!(refused, Err("P0001".to_owned()), "{statement}");
        }
    });
}

/// A row of each table in which it is written who was told what.
fn told(room: Uuid, person: Uuid) -> Vec<String> {
    vec![
        format!(
            "insert into fog_test_told (room_id, lamp_id, again_by, told_at)
            select room_id, id, '2026-11-25', '2026-11-25 12:00 UTC'
            from lamp
            where room_id = '{room}'"
        ),
        format!(
            "insert into topic_product (room_id, topic_id, product_id)
            select t.room_id, t.id, p.id
            from topic t
            join product p on p.room_id = t.room_id
            where t.room_id = '{room}'
            limit 1"
        ),
        format!(
            "insert into induction_told (room_id, person_id, topic_id, good_until, told_at)
            select room_id, '{person}', id, '2026-11-25', '2026-11-25 12:00 UTC'
            from topic
            where room_id = '{room}'"
        ),
        format!(
            "insert into supplement_told (
                room_id, product_id, topic_id, counts_from_version, told_at
            )
            select room_id, product_id, topic_id, 1, '2026-11-25 12:00 UTC'
            from topic_product
            where room_id = '{room}'"
        ),
        format!(
            "insert into room_check_told (room_id, room_check_id, due_on, told_at)
            select room_id, id, '2026-11-25', '2026-11-25 12:00 UTC'
            from room_check
            where room_id = '{room}'"
        ),
        format!(
            "insert into expected_told (room_id, presence_id, expected_at, person_id, told_at)
            select room_id, id, over_at, person_id, arrived_at
            from presence
            where room_id = '{room}'"
        ),
    ]
}

/// Puts a row in the tables that a day at the bench leaves empty.
async fn fill(house: &House, db: &mut PgConnection) {
    let steward = house.stage.cast.steward.clone();
    house.token(&steward, &house.stage.slug, &["read"]).await;
    let (room, person) = (house.stage.room, steward.id);
    let rows = vec![
        format!(
            "insert into notice (room_id, id, person_id, kind, parameters, made_at)
            values ('{room}', '{person}', '{person}', 'test', '', '2026-11-25 12:00 UTC')"
        ),
        format!(
            "insert into delivery (room_id, notice_id, channel, state, tries)
            values ('{room}', '{person}', 'none', 'waits', 0)"
        ),
        format!(
            "insert into verification (room_id, at, entries, findings)
            values ('{room}', '2026-11-25 12:00 UTC', 1, 0)"
        ),
        format!(
            "insert into extension (room_id, seq, id, mix_id, given_at, until_at, reason)
            select room_id, mixed_seq, id, id, mixed_at, mixed_at, 'test'
            from mix
            where room_id = '{room}'"
        ),
        format!(
            "insert into pin (room_id, person_id, hash, set_at)
            values ('{room}', '{person}', '-', '2026-11-25 12:00 UTC')"
        ),
        format!(
            "insert into avoid_note (room_id, id, person_id, words, made_at)
            values ('{room}', '{person}', '{person}', '-', '2026-11-25 12:00 UTC')"
        ),
        format!(
            "insert into rinse (room_id, vessel_id, due_seq, rinsed_seq)
            values ('{room}', '{person}', 1, 2)"
        ),
    ];
    for statement in rows.into_iter().chain(told(room, person)) {
        db.execute(AssertSqlSafe(statement)).await.unwrap();
    }
}

#[test]
fn no_room_sees_or_touches_anothers_rows() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let mut owner = house.stage.installation.db().await;
        fill(&house, &mut owner).await;
        let ours = house.stage.room;
        let other = format!(
            "select room_id::text from room_name where slug = '{}'",
            house.stage.other_slug
        );
        let other: Uuid = texts(&mut owner, &other).await[0].parse().unwrap();
        let mut web = as_web(&house.stage.installation).await;
        let mut walled = 0;
        for table in of_rooms(&mut owner).await {
            if OPEN.iter().any(|(open, _)| *open == table) {
                continue;
            }
            walled += 1;
            let all = format!("select 1 from {table} where room_id = '{ours}'");
            let there = tried(&mut owner, None, &all).await.unwrap();
            assert!(
                there > 0,
                "{table} has no row of ours: this would prove nothing"
            );
            for room in [Some(other), None] {
                let seen = tried(&mut web, room, &all).await.unwrap();
                let wanted = if table == READ_BY_ALL { there } else { 0 };
                assert_eq!(seen, wanted, "{table} from {room:?}");
                cannot_touch(&mut web, &mut owner, room, &table, ours).await;
            }
        }
        assert!(walled > 18, "{walled}");
        let from_home = tried(&mut web, Some(ours), "select 1 from mix").await;
        assert_eq!(from_home, Ok(2));
        // No entry made these: the book is to verify at the end.
        for table in ["extension", "rinse", "topic_product"] {
            let gone = format!("delete from {table} where room_id = '{ours}'");
            owner.execute(AssertSqlSafe(gone)).await.unwrap();
        }
    });
}

/// Neither changes nor removes a row of ours, nor adds one.
async fn cannot_touch(
    web: &mut PgConnection,
    owner: &mut PgConnection,
    room: Option<Uuid>,
    table: &str,
    ours: Uuid,
) {
    for statement in [
        format!("update {table} set room_id = room_id where room_id = '{ours}'"),
        format!("delete from {table} where room_id = '{ours}'"),
    ] {
        let touched = tried(web, room, &statement).await;
        let refused = [Ok(0), Err(NOT_ALLOWED.to_owned())];
        assert!(refused.contains(&touched), "{statement}: {touched:?}");
    }
    let row = format!("select to_jsonb(t)::text from {table} t where room_id = '{ours}' limit 1");
    let row = texts(owner, &row).await.remove(0).replace('\'', "''");
    let again = format!(
        "insert into public.{table} select (jsonb_populate_record(null::public.{table}, '{row}'::jsonb)).*"
    );
    let added = tried(web, room, &again).await;
    assert_eq!(added, Err(NOT_ALLOWED.to_owned()), "{table} from {room:?}");
}

/// Somebody's memberships are theirs to see in every room, and nobody else's are.
#[test]
fn a_person_sees_their_own_memberships_only() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let mut web = as_web(&house.stage.installation).await;
        let person = house.stage.cast.member.id;
        let mut tx = web.begin().await.unwrap();
        let set = format!("set local wetside.person = '{person}'");
        tx.execute(AssertSqlSafe(set)).await.unwrap();
        let seen = texts(&mut tx, "select person_id::text from membership").await;
        assert_eq!(seen, [person.to_string()]);
    });
}
