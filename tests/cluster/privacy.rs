//! Who gets in: the two roles from the cluster's own account, and nobody else.

use std::fs;
use std::os::unix::fs::{MetadataExt, PermissionsExt};

use sqlx::ConnectOptions;
use sqlx::Connection;
use wetside::database::cluster::{DATABASE, OWNER_ROLE, WEB_ROLE};

use super::helpers::{Place, answer, as_stranger, ask, psql};

#[tokio::test]
async fn the_first_start_makes_a_cluster_with_two_modest_roles() {
    let place = Place::new();
    let cluster = place.start().await;
    for options in [cluster.owner_options(), cluster.web_options()] {
        let mut connection = options.connect().await.unwrap();
        connection.ping().await.unwrap();
        connection.close().await.unwrap();
    }
    let socket = cluster.socket();
    let powers = "select rolname from pg_roles where rolname like 'wetside%' and \
                  (rolsuper or rolcreaterole or rolcreatedb or rolbypassrls or rolreplication)";
    assert_eq!(answer(socket, powers), "");
    let owned = "select datname from pg_database where pg_get_userbyid(datdba) = 'wetside_owner'";
    assert_eq!(answer(socket, owned), DATABASE);
    assert_eq!(
        answer(socket, "set role wetside_web; select current_user"),
        WEB_ROLE
    );
    assert_eq!(answer(socket, "show data_checksums"), "on");
    assert_eq!(answer(socket, "show listen_addresses"), "");
    assert_eq!(answer(socket, "show server_encoding"), "UTF8");
    for refused in [
        "create table x (n int)",
        "create temp table x (n int)",
        "set role wetside_owner",
    ] {
        assert!(
            !ask(socket, WEB_ROLE, refused).status.success(),
            "{refused}"
        );
    }
    assert!(
        !ask(socket, OWNER_ROLE, "create database another")
            .status
            .success()
    );
    cluster.stop().await;
}

#[tokio::test]
async fn the_bootstrap_superuser_cannot_log_in() {
    let place = Place::new();
    let cluster = place.start().await;
    let output = psql(cluster.socket(), "postgres", "postgres")
        .args(["-c", "select 1"])
        .output();
    let output = output.unwrap();
    assert!(!output.status.success());
    let said = String::from_utf8_lossy(&output.stderr).into_owned();
    assert!(said.contains("pg_hba.conf rejects"), "{said}");
    cluster.stop().await;
}

#[tokio::test]
async fn everything_belongs_to_the_account_and_is_closed_to_others() {
    let place = Place::new();
    let cluster = place.start().await;
    let socket_file = cluster.socket().join(".s.PGSQL.5432");
    let closed = [
        place.data(),
        place.cluster(),
        cluster.socket().to_path_buf(),
        socket_file,
    ];
    for path in closed {
        let found = fs::metadata(&path).unwrap();
        assert_eq!(found.permissions().mode() & 0o777, 0o700, "{path:?}");
        assert_eq!(found.uid(), cluster.account().uid, "{path:?}");
    }
    assert_ne!(cluster.account().uid, 0);
    cluster.stop().await;
}

#[tokio::test]
async fn another_local_user_gets_no_connection_and_no_listing() {
    let place = Place::new();
    let cluster = place.start().await;
    let socket = cluster.socket();
    let rules = fs::read_to_string(place.cluster().join("pg_hba.conf")).unwrap();
    let rules: Vec<&str> = rules
        .lines()
        .filter(|line| !line.starts_with('#'))
        .collect();
    assert_eq!(
        rules,
        [
            "local  all  wetside_owner,wetside_web  peer map=wetside",
            "local  all  all  reject",
            "host   all  all  all  reject",
        ]
    );
    let names = fs::read_to_string(place.cluster().join("pg_ident.conf")).unwrap();
    let account = cluster.account().name.clone();
    for line in names.lines().filter(|line| !line.starts_with('#')) {
        let user = line.split('"').nth(1).unwrap();
        assert!(user == account || user == "root", "{line}");
    }
    // Only root can be somebody else to try it.
    if let Some(mut list) = as_stranger("ls") {
        assert!(!list.arg(place.data()).output().unwrap().status.success());
        for role in [OWNER_ROLE, WEB_ROLE, "postgres"] {
            let probe = psql(socket, role, DATABASE);
            let mut stranger = as_stranger(probe.get_program().to_str().unwrap()).unwrap();
            let output = stranger
                .args(probe.get_args())
                .args(["-c", "select 1"])
                .output()
                .unwrap();
            let said = String::from_utf8_lossy(&output.stderr).into_owned();
            assert!(
                !output.status.success() && said.contains("Permission denied"),
                "{role}: {said}"
            );
        }
        // Even with the way to the socket open, the kernel's word on who asks decides.
        for folder in [place.data(), socket.to_path_buf()] {
            fs::set_permissions(folder, fs::Permissions::from_mode(0o711)).unwrap();
        }
        fs::set_permissions(
            socket.join(".s.PGSQL.5432"),
            fs::Permissions::from_mode(0o777),
        )
        .unwrap();
        let probe = psql(socket, OWNER_ROLE, DATABASE);
        let mut stranger = as_stranger(probe.get_program().to_str().unwrap()).unwrap();
        let output = stranger
            .args(probe.get_args())
            .args(["-c", "select 1"])
            .output()
            .unwrap();
        let said = String::from_utf8_lossy(&output.stderr).into_owned();
        assert!(
            !output.status.success() && said.contains("eer authentication failed"),
            "{said}"
        );
    }
    cluster.stop().await;
}
