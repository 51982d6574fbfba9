//! Starting, ending, being killed, and starting again.

use std::fs;
use std::os::unix::fs::{MetadataExt, chown};
use std::process::Stdio;

use wetside::database::cluster::{Cluster, StartOptions};

use super::helpers::{
    Place, Program, answer, answers, as_user, is_alive, keep_busy, processes_in, program, quick,
    send, server_of, until,
};

#[tokio::test]
async fn it_stops_when_asked_and_keeps_what_was_written() {
    let place = Place::new();
    let cluster = place.start().await;
    let pid = cluster.server_pid().unwrap();
    answer(
        cluster.socket(),
        "create table sheet as select generate_series(1, 1000) as n",
    );
    cluster.stop().await;
    assert!(!is_alive(pid));
    assert!(!place.cluster().join("postmaster.pid").exists());
    let cluster = place.start().await;
    assert_eq!(
        answer(cluster.socket(), "select count(*) from sheet"),
        "1000"
    );
    cluster.stop().await;
}

#[tokio::test]
async fn a_second_start_on_the_same_folder_is_refused_but_a_guest_gets_in() {
    let place = Place::new();
    let cluster = place.start().await;
    let refused = Cluster::start(&place.folders(), &quick())
        .await
        .unwrap_err()
        .to_string();
    assert!(
        refused.contains(&format!("process {}", std::process::id())),
        "{refused}"
    );
    assert!(
        refused.contains("Stop it first") && refused.contains("--data"),
        "{refused}"
    );

    let guest = Cluster::reach(&place.folders(), &quick()).await.unwrap();
    assert_eq!(answer(guest.socket(), "select 1"), "1");
    guest.stop().await;
    assert!(
        answers(cluster.socket()),
        "a guest leaves the server running"
    );
    cluster.stop().await;
    let alone = Cluster::reach(&place.folders(), &quick()).await.unwrap();
    assert!(
        alone.server_pid().is_some(),
        "without another one, it keeps the server itself"
    );
    alone.stop().await;
}

#[tokio::test]
async fn two_at_once_on_a_new_folder_make_one_cluster() {
    let place = Place::new();
    let (folders, options) = (place.folders(), quick());
    let (one, other) = tokio::join!(
        Cluster::start(&folders, &options),
        Cluster::start(&folders, &options)
    );
    let (up, refused) = match (one, other) {
        (Ok(up), Err(refused)) | (Err(refused), Ok(up)) => (up, refused),
        (one, other) => panic!("one of them: {one:?} and {other:?}"),
    };
    assert!(refused.to_string().contains("Another Wetside"), "{refused}");
    assert!(answers(up.socket()));
    up.stop().await;
}

#[tokio::test]
async fn a_database_that_is_killed_is_started_again_by_itself() {
    let place = Place::new();
    let cluster = place.start().await;
    answer(cluster.socket(), "create table sheet as select 7 as n");
    let (_busy, backend) = keep_busy(cluster.socket()).await;
    let killed = cluster.server_pid().unwrap();
    send(killed, "KILL");
    until("another server is up", || {
        cluster.server_pid().is_some_and(|pid| pid != killed)
    })
    .await;
    until("it answers", || answers(cluster.socket())).await;
    assert!(!is_alive(backend), "what outlived the server was ended");
    assert_eq!(answer(cluster.socket(), "select n from sheet"), "7");
    cluster.stop().await;
}

#[tokio::test]
async fn a_server_that_outlived_its_program_is_adopted() {
    let place = Place::new();
    let mut program = place.run_program().await;
    let pid = server_of(&place.cluster()).unwrap();
    program.kill();
    assert!(
        is_alive(pid),
        "PostgreSQL outlives the program that was killed"
    );
    let cluster = place.start().await;
    assert_eq!(cluster.server_pid(), Some(pid));
    assert!(answers(cluster.socket()));
    cluster.stop().await;
    assert!(
        !is_alive(pid),
        "an adopted server is stopped like an own one"
    );
}

#[tokio::test]
async fn after_both_are_killed_the_orphans_are_ended_and_the_data_is_whole() {
    let place = Place::new();
    let mut program = place.run_program().await;
    let socket = place.folders().socket().to_path_buf();
    until("it answers", || answers(&socket)).await;
    answer(
        &socket,
        "create table sheet as select generate_series(1, 1000) as n",
    );
    let (_busy, backend) = keep_busy(&socket).await;
    let pid = server_of(&place.cluster()).unwrap();
    program.kill();
    send(pid, "KILL");
    until("the server is dead", || !is_alive(pid)).await;
    assert!(
        processes_in(&place.cluster()).contains(&backend),
        "its busy backend lives on"
    );

    let cluster = place.start().await;
    assert!(!is_alive(backend));
    assert_ne!(cluster.server_pid(), Some(pid));
    assert_eq!(
        answer(cluster.socket(), "select count(*) from sheet"),
        "1000"
    );
    cluster.stop().await;
}

#[tokio::test]
async fn a_creation_that_was_killed_is_begun_anew() {
    let place = Place::new();
    let mut program = Program::spawn(&place.data());
    let unfinished = || {
        let Ok(entries) = fs::read_dir(place.data()) else {
            return None;
        };
        let mut paths = entries.flatten().map(|entry| entry.path());
        paths.find(|path| {
            path.file_name()
                .unwrap()
                .to_string_lossy()
                .starts_with("postgres.new-")
        })
    };
    until("the creation is under way", || {
        unfinished().is_some_and(|folder| folder.join("base").exists())
    })
    .await;
    program.kill();
    assert!(
        !place.cluster().exists(),
        "an unfinished cluster does not have the real one's name"
    );
    let cluster = place.start().await;
    assert!(answers(cluster.socket()));
    assert_eq!(unfinished(), None);
    cluster.stop().await;
}

#[tokio::test]
async fn the_program_works_as_the_account_and_can_still_start_the_server_again() {
    let place = Place::new();
    let program = place.run_program().await;
    let socket = place.folders().socket().to_path_buf();
    until("it answers", || answers(&socket)).await;
    let owner = wetside::database::cluster::look(&place.folders())
        .unwrap()
        .account;
    let status = format!("/proc/{}/status", program.child.id());
    let ids = |line: &str| -> Vec<u32> {
        let text = fs::read_to_string(&status).unwrap();
        let line = text
            .lines()
            .find(|l| l.starts_with(line))
            .unwrap()
            .to_owned();
        line.split_whitespace()
            .skip(1)
            .map(|id| id.parse().unwrap())
            .collect()
    };
    until("root's powers are given up", || {
        ids("Uid:") == [owner.uid; 4]
    })
    .await;
    assert_eq!(ids("Gid:"), [owner.gid; 4]);
    assert!(!ids("Groups:").contains(&0));
    let killed = server_of(&place.cluster()).unwrap();
    send(killed, "KILL");
    until("another is up", || {
        server_of(&place.cluster()).is_some_and(|pid| pid != killed)
    })
    .await;
    until("it answers whoever started it", || answers(&socket)).await;
}

#[tokio::test]
async fn a_number_that_another_process_has_now_does_not_stop_the_start() {
    let place = Place::new();
    let cluster = place.start().await;
    let socket = cluster.socket().to_path_buf();
    let notes = [
        place.cluster().join("postmaster.pid"),
        socket.join(".s.PGSQL.5432.lock"),
    ];
    let kept = notes
        .each_ref()
        .map(|note| fs::read_to_string(note).unwrap());
    let server = cluster.server_pid().unwrap();
    // Of the same user, else PostgreSQL knows by itself that it is none of its own.
    let mut other = as_user(cluster.account().uid, "sleep")
        .arg("600")
        .spawn()
        .unwrap();
    cluster.stop().await;
    for (note, text) in notes.iter().zip(kept) {
        let text = text.replacen(&server.to_string(), &other.id().to_string(), 1);
        fs::write(note, text).unwrap();
        chown(note, Some(fs::metadata(place.data()).unwrap().uid()), None).unwrap();
    }
    let cluster = place.start().await;
    assert!(answers(cluster.socket()));
    assert!(
        other.try_wait().unwrap().is_none(),
        "the other process is left alone"
    );
    cluster.stop().await;
    other.kill().unwrap();
    other.wait().unwrap();
}

#[tokio::test]
async fn ctrl_c_reaches_the_program_alone() {
    let place = Place::new();
    let mut program = place.run_program().await;
    let group = |pid: u32| -> String {
        let stat = fs::read_to_string(format!("/proc/{pid}/stat")).unwrap();
        // proc(5): state, parent and process group follow the name in brackets.
        stat.rsplit(')')
            .next()
            .unwrap()
            .split_whitespace()
            .nth(2)
            .unwrap()
            .to_owned()
    };
    let server = server_of(&place.cluster()).unwrap();
    assert_ne!(group(program.child.id()), group(server.unsigned_abs()));
    until("the signals are listened to", || {
        answers(place.folders().socket())
    })
    .await;
    send(program.child.id().cast_signed(), "INT");
    assert!(program.child.wait().unwrap().success());
    assert!(!is_alive(server), "the program stopped it before it ended");
}

#[tokio::test]
async fn a_throw_away_cluster_goes_with_its_process() {
    let place = Place::new();
    let options = StartOptions::for_tests();
    let cluster = Cluster::start(&place.folders(), &options).await.unwrap();
    let pid = cluster.server_pid().unwrap();
    answer(cluster.socket(), "create database another template wetside");
    drop(cluster);
    until("the server has ended", || !is_alive(pid)).await;
    until("the folder is gone or empty", || {
        fs::read_dir(place.data()).map_or(true, |mut entries| entries.next().is_none())
    })
    .await;
}

#[tokio::test]
async fn the_command_says_how_things_stand() {
    let place = Place::new();
    let status = || {
        let output = program()
            .args(["cluster", "status", "--data"])
            .arg(place.data())
            .output();
        let output = output.unwrap();
        (
            output.status.success(),
            String::from_utf8(output.stdout).unwrap(),
        )
    };
    let (ok, said) = status();
    assert!(
        !ok && said.contains("There is no private database"),
        "{said}"
    );
    assert!(!place.data().exists(), "looking makes nothing");

    let mut running = program();
    running
        .args(["cluster", "run", "--until-input-ends", "--data"])
        .arg(place.data());
    let mut running = running
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    until("it is up", || server_of(&place.cluster()).is_some()).await;
    let (ok, said) = status();
    let pid = server_of(&place.cluster()).unwrap();
    assert!(
        ok && said.contains(&format!("running as process {pid}")),
        "{said}"
    );

    drop(running.stdin.take());
    let output = running.wait_with_output().unwrap();
    let said = String::from_utf8(output.stdout).unwrap();
    assert!(output.status.success(), "{said}");
    assert!(
        said.contains("psql -h ") && said.contains("has stopped"),
        "{said}"
    );
    let (ok, said) = status();
    assert!(!ok && said.contains("It is not running"), "{said}");
}
