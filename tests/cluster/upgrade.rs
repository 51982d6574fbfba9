//! Carrying the data over to other programs.

use std::fs;
use std::path::PathBuf;

use wetside::database::cluster::{Account, OWNER_ROLE, Programs, Upgraded, upgrade};

use super::helpers::{Place, answer, psql};

/// A folder whose data looks as if an older PostgreSQL, no longer on this
/// machine, had written it.
async fn place_of_version_9() -> Place {
    let place = Place::new();
    let cluster = place.start().await;
    answer(
        cluster.socket(),
        "create table sheet as select generate_series(1, 42) as n",
    );
    answer(cluster.socket(), "grant select on sheet to wetside_web");
    let probe = psql(cluster.socket(), OWNER_ROLE, "wetside");
    let pg_dump = PathBuf::from(probe.get_program()).with_file_name("pg_dump");
    fs::create_dir(place.data().join("dumps")).unwrap();
    let dumped = std::process::Command::new(pg_dump)
        .args([
            "-w",
            "--format=custom",
            "-U",
            OWNER_ROLE,
            "-d",
            "wetside",
            "-h",
        ])
        .arg(cluster.socket())
        .arg("--file")
        .arg(place.data().join("dumps/nightly.dump"))
        .status();
    assert!(dumped.unwrap().success());
    if wetside::database::cluster::is_root() {
        let Account { uid, gid, .. } = *cluster.account();
        for path in ["dumps", "dumps/nightly.dump"] {
            std::os::unix::fs::chown(place.data().join(path), Some(uid), Some(gid)).unwrap();
        }
    }
    cluster.stop().await;
    fs::write(place.cluster().join("PG_VERSION"), "9\n").unwrap();
    place
}

#[tokio::test]
async fn without_the_old_programs_the_newest_dump_is_restored() {
    let place = place_of_version_9().await;
    let done = upgrade(&place.folders()).await.unwrap();
    let Upgraded::From {
        from,
        dump,
        is_current,
        kept,
        ..
    } = done
    else {
        panic!("{done:?}")
    };
    assert_eq!(from, "9");
    assert!(
        !is_current && dump.ends_with("dumps/nightly.dump"),
        "{dump:?}"
    );
    assert_eq!(fs::read_to_string(kept.join("PG_VERSION")).unwrap(), "9\n");

    let cluster = place.start().await;
    assert_eq!(answer(cluster.socket(), "select count(*) from sheet"), "42");
    assert_eq!(
        answer(
            cluster.socket(),
            "set role wetside_web; select max(n) from sheet"
        ),
        "42"
    );
    cluster.stop().await;
}

#[tokio::test]
async fn without_old_programs_and_dump_it_says_what_is_needed() {
    let place = place_of_version_9().await;
    fs::remove_file(place.data().join("dumps/nightly.dump")).unwrap();
    let refused = upgrade(&place.folders()).await.unwrap_err().to_string();
    assert!(
        refused.contains("Install PostgreSQL 9") && refused.contains("dumps"),
        "{refused}"
    );
    assert!(place.cluster().exists());
}

#[tokio::test]
async fn a_crash_between_the_two_renames_is_put_right() {
    let place = Place::new();
    let cluster = place.start().await;
    answer(cluster.socket(), "create table sheet as select 3 as n");
    cluster.stop().await;
    fs::rename(place.cluster(), place.data().join("postgres.upgraded")).unwrap();
    let cluster = place.start().await;
    assert_eq!(answer(cluster.socket(), "select n from sheet"), "3");
    cluster.stop().await;
}

#[tokio::test]
async fn data_of_the_newest_version_stays_as_it_is() {
    let place = Place::new();
    let cluster = place.start().await;
    let account = cluster.account().clone();
    cluster.stop().await;
    let newest = Programs::all(&account)
        .iter()
        .map(|p| p.major)
        .max()
        .unwrap();
    let preferred = Programs::preferred(&account).unwrap().major;
    let done = upgrade(&place.folders()).await.unwrap();
    match done {
        Upgraded::Already { version } => assert_eq!(version, newest.to_string()),
        Upgraded::From { to, is_current, .. } => {
            // Where several versions are installed and an older one was named.
            assert!(preferred < newest && to == newest && is_current);
        }
    }
}
