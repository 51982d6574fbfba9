//! Which folders are taken, and the sentences where they cannot be.

use std::fs::{self, DirBuilder, Permissions};
use std::os::unix::fs::{DirBuilderExt, PermissionsExt};
use std::path::{Path, PathBuf};

use wetside::database::cluster::{Cluster, Folders, Surroundings, is_root};

use super::helpers::{Place, quick};

fn surroundings() -> Surroundings {
    Surroundings {
        home: Some("/home/x".into()),
        ..Surroundings::default()
    }
}

#[test]
fn the_data_folder_is_the_first_that_is_named() {
    let data = |around: &Surroundings, named: Option<&str>| {
        Folders::choose_in(around, named.map(Path::new))
            .unwrap()
            .data()
            .to_path_buf()
    };
    let mut around = surroundings();
    assert_eq!(
        data(&around, None),
        PathBuf::from("/home/x/.local/share/wetside")
    );
    around.xdg_data_home = Some("/home/x/d".into());
    assert_eq!(data(&around, None), PathBuf::from("/home/x/d/wetside"));
    around.is_root = true;
    assert_eq!(data(&around, None), PathBuf::from("/var/lib/wetside"));
    // systemd.exec(5): several folders are listed with colons.
    around.state_directory = Some("/var/lib/ws:/var/lib/other".into());
    assert_eq!(data(&around, None), PathBuf::from("/var/lib/ws"));
    assert_eq!(data(&around, Some("/srv/room")), PathBuf::from("/srv/room"));
}

#[test]
fn without_a_home_the_sentence_says_what_to_set() {
    let refused = Folders::choose_in(&Surroundings::default(), None)
        .unwrap_err()
        .to_string();
    assert!(
        refused.contains("--data") && refused.contains("HOME"),
        "{refused}"
    );
}

#[test]
fn the_source_code_is_no_place_for_the_book() {
    let place = Place::new();
    fs::write(
        place.path.join("Cargo.toml"),
        "[package]\nname = \"wetside\"\n",
    )
    .unwrap();
    let refused = Folders::choose(Some(&place.path.join("a/b")))
        .unwrap_err()
        .to_string();
    assert!(refused.contains("inside the source code"), "{refused}");
}

#[test]
fn a_socket_whose_path_is_too_long_goes_elsewhere_or_is_refused() {
    // unix(7): 108 bytes with the final NUL, of which PostgreSQL's name takes 14 with its slash.
    let of_length = |length: usize| PathBuf::from(format!("/{}", "x".repeat(length - 1)));
    let longest = 107 - "/run/.s.PGSQL.5432".len();
    let mut around = surroundings();
    let just = Folders::choose_in(&around, Some(&of_length(longest))).unwrap();
    assert_eq!(just.socket(), just.data().join("run"));

    let long = of_length(longest + 1);
    let refused = Folders::choose_in(&around, Some(&long))
        .unwrap_err()
        .to_string();
    assert!(
        refused.contains("108 bytes") && refused.contains("107"),
        "{refused}"
    );
    assert!(
        refused.contains("--data") && refused.contains("RUNTIME_DIRECTORY"),
        "{refused}"
    );

    around.xdg_runtime_dir = Some("/run/user/7".into());
    let moved = Folders::choose_in(&around, Some(&long)).unwrap();
    assert!(
        moved.socket().starts_with("/run/user/7"),
        "{:?}",
        moved.socket()
    );
    // Root's runtime folder is closed to the account the database runs as.
    around.is_root = true;
    Folders::choose_in(&around, Some(&long)).unwrap_err();
    around.runtime_directory = Some("/run/ws".into());
    let moved = Folders::choose_in(&around, Some(&long)).unwrap();
    assert!(
        moved.socket().starts_with("/run/ws"),
        "{:?}",
        moved.socket()
    );
}

#[tokio::test]
async fn a_folder_with_other_things_in_it_is_left_alone() {
    let place = Place::new();
    DirBuilder::new().mode(0o755).create(place.data()).unwrap();
    // Names such as the system's own folders have.
    for name in ["lock", "run", "lib"] {
        fs::create_dir(place.data().join(name)).unwrap();
    }
    let refused = Cluster::start(&place.folders(), &quick())
        .await
        .unwrap_err()
        .to_string();
    assert!(refused.contains("holds something else"), "{refused}");
    let mode = fs::metadata(place.data()).unwrap().permissions().mode();
    assert_eq!(mode & 0o777, 0o755);
}

#[tokio::test]
async fn a_closed_parent_folder_is_named() {
    let place = Place::new();
    let closed = place.path.join("closed");
    DirBuilder::new().mode(0o700).create(&closed).unwrap();
    let folders = Folders::choose(Some(&closed.join("data"))).unwrap();
    if !is_root() {
        // To its own user a folder is closed without these bits.
        fs::set_permissions(&closed, Permissions::from_mode(0o600)).unwrap();
    }
    let refused = Cluster::start(&folders, &quick())
        .await
        .unwrap_err()
        .to_string();
    fs::set_permissions(&closed, Permissions::from_mode(0o700)).unwrap();
    assert!(refused.contains(closed.to_str().unwrap()), "{refused}");
    if is_root() {
        assert!(
            refused.contains("cannot enter") && refused.contains("chmod o+x"),
            "{refused}"
        );
    }
}

#[tokio::test]
async fn data_of_another_version_is_refused_with_the_way_out() {
    let place = Place::new();
    place.start().await.stop().await;
    for (version, way_out) in [("9", true), ("999", false)] {
        fs::write(place.cluster().join("PG_VERSION"), format!("{version}\n")).unwrap();
        let refused = Cluster::start(&place.folders(), &quick())
            .await
            .unwrap_err()
            .to_string();
        assert!(
            refused.contains(&format!("written by PostgreSQL {version} ")),
            "{refused}"
        );
        assert!(
            refused.contains(&format!("Install PostgreSQL {version} again")),
            "{refused}"
        );
        assert_eq!(
            refused.contains("wetside cluster upgrade"),
            way_out,
            "{refused}"
        );
    }
    fs::remove_file(place.cluster().join("PG_VERSION")).unwrap();
    let refused = Cluster::start(&place.folders(), &quick())
        .await
        .unwrap_err()
        .to_string();
    assert!(
        refused.contains("damaged") && refused.contains("backup"),
        "{refused}"
    );
}
