//! What guests are: on the roll, named to few, company to nobody, and able to do nothing.

use wetside::error::Error;
use wetside::problem::Problem;
use wetside::rights::{LeadWorkshop, NoteSheets};
use wetside::sheets::NewNote;
use wetside::sheets::actions::note_sheets;
use wetside::workshops::leading::{Opening, open};

use crate::harness::{new_key, scenario};

#[test]
fn they_own_no_account_and_are_nobody_who_could_act() {
    scenario(async |stage| {
        let mut db = stage.installation.db().await;
        let people = || "select count(*) from person";
        let before: i64 = sqlx::query_scalar(people())
            .fetch_one(&mut db)
            .await
            .unwrap();
        let id = stage.opened().await;
        stage.come(id, &["Ada Moss", "Bo Lind"]).await.unwrap();
        let after: i64 = sqlx::query_scalar(people())
            .fetch_one(&mut db)
            .await
            .unwrap();
        assert_eq!(before, after);
        for guest in stage.guests_of(id).await {
            for table in ["membership", "presence", "session", "pin"] {
                let statement = format!("select count(*) from {table} where person_id = $1");
                let there: i64 = sqlx::query_scalar(sqlx::AssertSqlSafe(statement))
                    .bind(guest.id)
                    .fetch_one(&mut db)
                    .await
                    .unwrap();
                assert_eq!(there, 0, "{table}");
            }
        }
        // Whoever comes with a guest's name is not let in.
        let mut nobody = stage.nobody();
        nobody
            .get(&stage.at(&format!("/workshops/{id}")))
            .await
            .expect(303);
    });
}

#[test]
fn their_names_are_read_by_those_who_are_there() {
    scenario(async |stage| {
        let id = stage.opened().await;
        stage.come(id, &["Ada Moss"]).await.unwrap();
        let page = format!("/workshops/{id}");
        let cast = &stage.cast;
        let reads = async |person| {
            let mut found = Vec::new();
            for path in ["/present", &page] {
                let said = stage.looks(person, path).await.page().main();
                assert!(said.contains("1 guest"), "{said}");
                found.push(said.contains("Moss"));
            }
            found
        };
        assert_eq!(reads(&cast.member).await, [true, true]);
        assert_eq!(reads(&cast.steward).await, [true, true]);
        assert_eq!(reads(&cast.trained).await, [false, false]);
        assert_eq!(reads(&cast.treasurer).await, [false, false]);
        stage.arrives(&cast.trained).await.unwrap();
        assert_eq!(reads(&cast.trained).await, [true, true]);
        // Once it is over it is its leader's and the stewards' matter.
        stage.is_ended(&cast.member, id).await.unwrap();
        let names = async |person| {
            stage
                .looks(person, &page)
                .await
                .page()
                .main()
                .contains("Moss")
        };
        assert!(names(&cast.member).await && names(&cast.steward).await);
        assert!(!names(&cast.trained).await);
        // Another room knows nothing of it.
        let mut neighbour = stage.browser(&cast.neighbour).await;
        neighbour.get(&stage.at(&page)).await.expect(404);
        let path = format!("/rooms/{}{page}", stage.other_slug);
        neighbour.get(&path).await.expect(404);
    });
}

#[test]
fn they_are_no_company() {
    scenario(async |stage| {
        let id = stage.opened().await;
        stage.come(id, &["Ada Moss"]).await.unwrap();
        // The leader is asked until when they stay still, and nobody says they are alone.
        let page = stage.looks(&stage.cast.member, "/arrive").await;
        let said = page.page().main();
        assert!(
            said.contains("Guests are no company") || said.contains("You said that you would"),
            "{said}"
        );
        assert!(!said.contains("You are alone here"), "{said}");
        let board = stage.looks(&stage.cast.trained, "/board").await;
        let said = board.page().all("#present li").join(" ");
        assert!(!said.contains("alone"), "{said}");
    });
}

#[test]
fn a_note_is_for_a_workshop_that_one_leads_and_that_goes_on() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let id = stage.opened().await;
        let app = &stage.installation.app;
        let note = |happened_at_us| NewNote {
            line_id: bench.line,
            paper_class_id: bench.classes[0],
            sheet_size_id: bench.size,
            sheets: Some(4),
            is_toned: false,
            is_without_tray: true,
            happened_at_us,
            workshop_id: Some(id),
        };
        let notes = async |person, at| {
            let permit = stage.permit::<NoteSheets>(person).await.unwrap();
            note_sheets(app, &permit, new_key(), note(at)).await
        };
        let not_theirs = |outcome| match outcome {
            Err(Error::Invalid(problems)) => problems
                .iter()
                .next()
                .is_some_and(|found| found == ("workshop", &Problem::NotTheirWorkshop)),
            _ => false,
        };
        let (leader, trained) = (&stage.cast.member, &stage.cast.trained);
        assert!(not_theirs(notes(trained, None).await));
        let began = wetside::clock::micros(crate::harness::START);
        stage.pass(time::Duration::minutes(30));
        assert!(not_theirs(notes(leader, Some(began - 60_000_000)).await));
        notes(leader, None).await.unwrap();
        notes(leader, Some(began + 60_000_000)).await.unwrap();
        stage.is_ended(leader, id).await.unwrap();
        // What waited on a phone until it was over counts for it.
        stage.pass(time::Duration::minutes(10));
        notes(leader, Some(began + 120_000_000)).await.unwrap();
        assert!(not_theirs(notes(leader, None).await));
        let page = stage.looks(trained, &format!("/workshops/{id}")).await;
        let said = page.page().main();
        assert!(said.contains("In all 12 sheets."), "{said}");
    });
}

#[test]
fn what_was_read_is_what_stands_here() {
    scenario(async |stage| {
        let id = stage.planned().await;
        stage.arrives(&stage.cast.member).await.unwrap();
        let read = stage.to_read().await;
        // A bath is mixed meanwhile, of a product whose sheet was copied anew.
        stage.bench().await;
        let permit = stage
            .permit::<LeadWorkshop>(&stage.cast.member)
            .await
            .unwrap();
        let opening = Opening {
            opened_workshop_id: id,
            read,
        };
        let app = &stage.installation.app;
        let refused = open(app, &permit, new_key(), opening).await;
        assert!(matches!(
            refused,
            Err(Error::Refused(Problem::CautionsChanged))
        ));
        stage.opens(&stage.cast.member, id).await.unwrap();
        let book = stage.looks(&stage.cast.member, "/book").await;
        let said = book.page().main();
        assert!(
            said.contains("the cautions were read to the group. Products: "),
            "{said}"
        );
    });
}
