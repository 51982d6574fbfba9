//! Scans of papers: added by a form that brings a file, read by the person and by
//! stewards, told by their first bytes, erased for good, and held against the book.

use axum::body::Body;
use axum::http::Method;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_SECURITY_POLICY, CONTENT_TYPE};
use uuid::Uuid;
use wetside::topics::Required;

use super::log::on_paper;
use crate::harness::{Answer, Stage, Visitor, scenario};

const PDF: &[u8] = b"%PDF-1.4\nA signed paper.\n%%EOF\n";

/// A line between the parts of a form that occurs in none of them.
const BOUNDARY: &str = "between-the-parts";

/// A form as a browser sends it where it brings a file.
fn multipart(fields: &[(&str, &str)], file: &[u8]) -> Vec<u8> {
    let mut body = Vec::new();
    let mut part = |disposition: &str, bytes: &[u8]| {
        let head = format!("--{BOUNDARY}\r\ncontent-disposition: form-data; {disposition}\r\n\r\n");
        body.extend_from_slice(head.as_bytes());
        body.extend_from_slice(bytes);
        body.extend_from_slice(b"\r\n");
    };
    for (name, value) in fields {
        part(&format!("name=\"{name}\""), value.as_bytes());
    }
    part("name=\"scan\"; filename=\"paper\"", file);
    body.extend_from_slice(format!("--{BOUNDARY}--\r\n").as_bytes());
    body
}

/// Opens the form of a record and sends this file with it.
async fn sends(visitor: &mut Visitor, record: Uuid, also: &[Uuid], file: &[u8]) -> Answer {
    let path = format!("/inductions/records/{record}/scan");
    let page = visitor.open(&path).await;
    let form = page.page().form("Add the scan").unwrap();
    let also: Vec<String> = also.iter().map(Uuid::to_string).collect();
    let mut fields = vec![("key", form.value("key").unwrap())];
    fields.extend(also.iter().map(|id| ("also", id.as_str())));
    let request = visitor.browser.request(Method::POST, &form.action);
    let kind = format!("multipart/form-data; boundary={BOUNDARY}");
    let request = request.header(CONTENT_TYPE, kind);
    let body = Body::from(multipart(&fields, file));
    visitor.browser.send(request.body(body).unwrap()).await
}

async fn paper(stage: &Stage, person: Uuid, topic: Uuid) -> Uuid {
    let done = stage.records(on_paper(person, topic, "2025-03-10")).await;
    done.unwrap().id("induction").unwrap()
}

/// Where the record's page leads to its scan.
async fn link(visitor: &mut Visitor, record: Uuid) -> Option<String> {
    let page = visitor.open(&format!("/inductions/records/{record}")).await;
    let links = page.page().links();
    let found = links
        .into_iter()
        .find(|(words, _)| words.starts_with("Scan, "));
    found.map(|(_, link)| link)
}

#[test]
fn one_paper_that_several_signed_is_scanned_once_and_read_by_each() {
    scenario(async |stage| {
        let (member, trained) = (&stage.cast.member, &stage.cast.trained);
        let spills = stage.topic("Spills", Required::Always).await;
        let first = paper(&stage, member.id, spills).await;
        let second = paper(&stage, trained.id, spills).await;
        let mut steward = Visitor::steward(&stage).await;
        let form = steward
            .open(&format!("/inductions/records/{first}/scan"))
            .await;
        assert!(form.page().main().contains(&trained.name), "it is offered");
        let sent = sends(&mut steward, first, &[second], PDF).await.expect(303);
        assert!(sent.location().unwrap().ends_with(&first.to_string()));
        for (person, record) in [(member, first), (trained, second)] {
            let mut visitor = Visitor::of(&stage, person).await;
            let link = link(&mut visitor, record).await.unwrap();
            let file = visitor.browser.get(&link).await.expect(200);
            assert_eq!(file.body.as_bytes(), PDF);
            let header = |name| file.headers.get(name).unwrap().to_str().unwrap().to_owned();
            assert_eq!(header(CONTENT_TYPE), "application/pdf");
            assert!(header(CONTENT_DISPOSITION).starts_with("attachment; filename=\"induction-"));
            assert!(header(CONTENT_SECURITY_POLICY).contains("sandbox"));
        }
        // Nobody else reads it.
        let link = link(&mut steward, first).await.unwrap();
        let mut other = Visitor::of(&stage, trained).await;
        other.browser.get(&link).await.expect(404);
        // Whoever has one already is not offered again.
        let form = steward
            .open(&format!("/inductions/records/{first}/scan"))
            .await;
        assert!(!form.page().main().contains(&trained.name));
    });
}

#[test]
fn what_is_no_scan_is_refused_beside_the_field() {
    scenario(async |stage| {
        let spills = stage.topic("Spills", Required::Always).await;
        let record = paper(&stage, stage.cast.member.id, spills).await;
        let mut steward = Visitor::steward(&stage).await;
        let mut large = PDF.to_vec();
        large.resize(5_000_001, b' ');
        for (file, sentence) in [
            (&b""[..], "Choose a file"),
            (b"<svg onload=\"x\">", "neither a PDF nor a JPEG nor a PNG"),
            (&large, "larger than 5 MB"),
        ] {
            let refused = sends(&mut steward, record, &[], file).await.expect(422);
            let said = refused.page().first("#error-scan").unwrap();
            assert!(said.contains(sentence), "{said}");
        }
        large.truncate(5_000_000);
        sends(&mut steward, record, &[], &large).await.expect(303);
        large.resize(6_000_000, b' ');
        sends(&mut steward, record, &[], &large).await.expect(413);
    });
}

/// Changes every file beside the book.
async fn change(stage: &Stage, to: &[u8]) {
    let mut db = stage.installation.db().await;
    let other = "update beside set file = $2 where room_id = $1 and file is not null";
    let other = sqlx::query(other).bind(stage.room).bind(to);
    assert_eq!(other.execute(&mut db).await.unwrap().rows_affected(), 1);
}

#[test]
fn a_scan_is_erased_for_good_and_the_book_stands() {
    scenario(async |stage| {
        let spills = stage.topic("Spills", Required::Always).await;
        let record = paper(&stage, stage.cast.member.id, spills).await;
        let mut steward = Visitor::steward(&stage).await;
        sends(&mut steward, record, &[], PDF).await.expect(303);
        let found = "what lies beside it is not what it holds the hash of";
        for (file, is_found) in [(PDF, false), (b"%PDF-1.4\nAnother.", true), (PDF, false)] {
            change(&stage, file).await;
            let said = stage.verified().await.to_string();
            assert_eq!(said.contains(found), is_found, "{said}");
        }
        let link = link(&mut steward, record).await.unwrap();
        let page = steward.browser.get(&format!("{link}/remove")).await;
        let form = page.expect(200).page().form("Erase it").unwrap();
        let kept = steward.browser.submit_and_follow(&form).await.expect(200);
        assert!(kept.page().main().contains("was erased."));
        steward.browser.get(&link).await.expect(404);
        let said = stage.verified().await.to_string();
        assert!(said.contains("Everything agrees."), "{said}");
    });
}
