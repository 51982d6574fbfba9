//! Coming in and going out by the pages.

use futures_util::future::join_all;
use wetside::arrivals::actions::arrive;
use wetside::error::Error;
use wetside::identity::permit_for;
use wetside::problem::Problem;
use wetside::rights::Arrive;

use super::{book, look, names};
use crate::access::house::somebody;
use crate::harness::{new_key, scenario};

#[test]
fn one_is_there_two_taps_from_the_board_and_gone_again() {
    scenario(async |stage| {
        stage.bench().await;
        let member = &stage.cast.member;
        let mut browser = stage.browser(member).await;
        let board = look(&mut browser, &stage, "/board").await;
        assert_eq!(
            board.page().first("#present .present-count").unwrap(),
            "0 of 10 places taken"
        );
        let links = board.page().links();
        let way = links.iter().find(|(words, _)| words == "Arrive or leave");
        let page = browser.get(&way.unwrap().1).await.expect(200);
        // What stands in the trays asks for gloves first; its codes come last.
        let cautions = page.page().all(".cautions li");
        let [allergy, unknown, codes] = cautions.as_slice() else {
            panic!("{cautions:?}");
        };
        assert!(allergy.contains("Gloves and tongs, never bare hands."));
        assert!(unknown.starts_with("Contents not fully known: Neutral paper developer."));
        assert!(codes.contains("H317"), "{codes}");
        let form = page.page().form("I am here").unwrap();
        let here = browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(here.page().heading(), "You are here");
        let until = here.page().first(".lead").unwrap();
        assert!(until.starts_with("Since 13:00."), "{until}");
        assert!(until.contains("taken for gone at 00:00"), "{until}");

        let steward = stage.looks(&stage.cast.steward, "/board").await;
        assert_eq!(names(&steward), std::slice::from_ref(&member.name));
        let said = steward.page().first("#present li").unwrap();
        let wanted = "since 13:00, alone, expected until 15:00";
        assert_eq!(said, format!("{} {wanted}", member.name));

        let page = look(&mut browser, &stage, "/leave").await;
        let open = page.page().all(".open-trays li");
        assert!(open[0].starts_with("First line, Developer"), "{open:?}");
        let said = page.page().main();
        assert!(said.contains("You are the last one here"), "{said}");
        let form = page.page().form("I have left").unwrap();
        let roll = browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(roll.page().heading(), "Who is here");
        assert!(names(&stage.looks(member, "/board").await).is_empty());
        // Who leaves and says so is in no list.
        assert!(!roll.page().main().contains(&member.name));
        let said = book(&stage, &stage.cast.steward).await;
        let name = &member.name;
        assert_eq!(
            said[..2],
            [
                format!("{name} left."),
                format!("{name} arrived, expected until 15:00.")
            ]
        );
    });
}

#[test]
fn what_is_covered_is_not_asked_for_when_one_leaves() {
    scenario(async |stage| {
        stage.bench().await;
        stage.arrives(&stage.cast.member).await.unwrap();
        stage.arrives(&stage.cast.trained).await.unwrap();
        let mut browser = stage.browser(&stage.cast.member).await;
        let page = look(&mut browser, &stage, "/leave").await;
        let said = page.page().main();
        assert!(said.contains("Others are still here"), "{said}");
        let links = page.page().links();
        let keep = links
            .iter()
            .find(|(words, _)| words.contains("cover or bottle"));
        let keep = browser.get(&keep.unwrap().1).await.expect(200);
        let cover = keep.page().form("It is covered").unwrap();
        browser.submit(&cover).await.expect(303);
        let page = look(&mut browser, &stage, "/leave").await;
        assert!(page.page().all(".open-trays li").is_empty());
        // The treasurer neither notes nor covers, and is not led there.
        let treasurer = &stage.cast.treasurer;
        stage.arrives(treasurer).await.unwrap();
        let page = stage.looks(treasurer, "/leave").await;
        let led = page.page().links();
        let led = led
            .iter()
            .any(|(_, to)| to.ends_with("/sheets/new") || to.ends_with("/keep"));
        assert!(!led);
    });
}

#[test]
fn nobody_is_there_twice() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        let mut browser = stage.browser(member).await;
        let mut forms = Vec::new();
        for _ in 0..2 {
            let page = look(&mut browser, &stage, "/arrive").await;
            forms.push(page.page().form("I am here").unwrap());
        }
        browser.submit(&forms[0]).await.expect(303);
        // The same order again is the same arrival; a new one is none.
        browser.submit(&forms[0]).await.expect(303);
        let refused = browser.submit(&forms[1]).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(said.contains("has you as here already"), "{said}");
        assert_eq!(names(&stage.looks(member, "/board").await).len(), 1);
        stage.leaves(member).await.unwrap();
        let again = stage.leaves(member).await;
        assert!(matches!(again, Err(Error::Refused(Problem::NotHere))));
        let page = look(&mut browser, &stage, "/leave").await;
        assert!(page.page().form("I have left").is_none());
        // Being there in one room is nothing to another.
        let mut stranger = stage.browser(&stage.cast.stranger).await;
        let path = format!("/rooms/{}/arrive", stage.other_slug);
        let page = stranger.get(&path).await.expect(200);
        let form = page.page().form("I am here").unwrap();
        stranger.submit(&form).await.expect(303);
        assert!(names(&stage.looks(member, "/board").await).is_empty());
    });
}

#[test]
fn a_full_room_says_so() {
    scenario(async |stage| {
        stage.has_places("2").await;
        let mut late = stage.browser(&stage.cast.trained).await;
        let page = look(&mut late, &stage, "/arrive").await;
        let form = page.page().form("I am here").unwrap();
        stage.arrives(&stage.cast.member).await.unwrap();
        stage.arrives(&stage.cast.treasurer).await.unwrap();
        let refused = late.submit(&form).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(said.contains("all 2 places are taken"), "{said}");
        let page = look(&mut late, &stage, "/arrive").await;
        assert!(page.page().form("I am here").is_none());
        assert!(page.page().main().contains("The room is full"));
        stage.leaves(&stage.cast.member).await.unwrap();
        late.submit(&form).await.expect(303);
    });
}

/// Two at the door, two servers, one place.
#[test]
fn of_two_at_the_last_place_exactly_one_gets_it() {
    scenario(async |stage| {
        stage.has_places("4").await;
        for person in [&stage.cast.steward, &stage.cast.member, &stage.cast.trained] {
            stage.arrives(person).await.unwrap();
        }
        let mut people = vec![stage.cast.treasurer.clone()];
        for part in ["one", "two", "three"] {
            people.push(somebody(&stage, part, stage.room, wetside::rights::Role::Member).await);
        }
        let second = stage.installation.second();
        let servers = [&stage.installation.app, &second];
        let coming = people.iter().enumerate().map(|(place, person)| {
            let app = servers[place % 2];
            let stage = &stage;
            async move {
                let permit = permit_for::<Arrive>(app, person.clone(), &stage.slug).await?;
                arrive(app, &permit, new_key(), None).await
            }
        });
        let answers = join_all(coming).await;
        second.database().close().await;
        let full = Problem::RoomFull { places: 4 };
        let in_time = answers.iter().filter(|answer| answer.is_ok()).count();
        assert_eq!(in_time, 1, "{answers:?}");
        for late in answers.into_iter().filter_map(Result::err) {
            assert!(matches!(late, Error::Refused(why) if why == full));
        }
        let board = stage.looks(&stage.cast.member, "/board").await;
        assert_eq!(names(&board).len(), 4);
        assert!(board.page().main().contains("the room is full"));
    });
}

/// Who came and went is shown to the person and to stewards.
#[test]
fn the_book_shows_comings_to_whose_they_are() {
    scenario(async |stage| {
        let done = stage.arrives(&stage.cast.member).await.unwrap();
        let not_shown = format!("entry {}, not shown to you", done.seq);
        let own = book(&stage, &stage.cast.member).await;
        let said = format!("{} arrived, expected until 14:00.", stage.cast.member.name);
        assert_eq!(own[0], said);
        let others = stage.looks(&stage.cast.trained, "/book").await;
        assert!(others.page().main().contains(&not_shown));
        assert!(!others.page().main().contains("arrived, expected"));
    });
}
