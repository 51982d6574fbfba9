//! Databases as earlier programs left them: each is brought up to date and its
//! books verify. `NNNN.sql` is a room as the program of that migration made it, a demo
//! or the book of these tests, written out with `pg_dump --inserts --no-owner
//! --no-privileges`.

use wetside::kinds::KINDS;
use wetside::logbook::vault::Vault;
use wetside::logbook::verify::verify_all;

use crate::harness::{bare, on_runtime};

const DUMPS: &[(&str, &str)] = &[
    ("0001", include_str!("0001.sql")),
    ("0007", include_str!("0007.sql")),
    ("0011", include_str!("0011.sql")),
    ("0018", include_str!("0018.sql")),
];

#[test]
fn every_earlier_database_is_brought_up_to_date_and_verifies() {
    on_runtime(async {
        for (name, dump) in DUMPS {
            let installation = bare(dump).await;
            let vault = Vault {
                data: installation.data.clone(),
                key_file: None,
            };
            let owner = installation.app.owner().unwrap();
            let reports = verify_all(owner, KINDS, &vault).await.unwrap();
            assert_eq!(reports.len(), 1, "{name}");
            assert!(reports[0].is_clean(), "{name}: {}", reports[0]);
            installation.close().await;
        }
    });
}

/// Every migration that a release ended with has its dump.
#[test]
fn every_dump_is_tested() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/upgrades");
    let mut found: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|file| file.unwrap().file_name().into_string().unwrap())
        .filter_map(|name| name.strip_suffix(".sql").map(str::to_owned))
        .collect();
    found.sort();
    let tested: Vec<&str> = DUMPS.iter().map(|(name, _)| *name).collect();
    assert_eq!(found, tested);
}
