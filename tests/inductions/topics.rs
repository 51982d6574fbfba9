//! Topics: the starter set, versions, and whom a new text asks again.

use wetside::error::Error;
use wetside::inductions::Standing;
use wetside::problem::Problem;
use wetside::topics::actions::NewTopic;
use wetside::topics::{Required, Topic, starter};

use crate::harness::{Visitor, scenario};

#[test]
fn one_press_copies_the_starter_set_in() {
    scenario(async |stage| {
        stage.topic("Spills", Required::Offered).await;
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.open("/topics").await;
        let page = steward.send_on(&page, "Copy the starter set in", &[]).await;
        assert!(page.page().form("Copy the starter set in").is_none());
        let topics = stage.topics().await;
        assert_eq!(topics.len(), starter::SET.len());
        // What the room had under a title stays its own.
        let spills = topics.iter().find(|topic| topic.title == "Spills").unwrap();
        assert_eq!(
            (spills.body.as_str(), &spills.required),
            ("Say it aloud.", &Required::Offered)
        );
        assert!(topics.iter().all(|topic| topic.good_months == Some(24)));
        let again = stage.copies_starter().await;
        assert!(matches!(again, Err(Error::Refused(Problem::Unchanged))));
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.open("/topics").await;
        let page = member.follow(&page, "Gloves and tongs").await;
        assert!(page.page().main().contains("Gloves must not be skipped."));
        let links = page.page().links();
        assert!(links.iter().all(|(words, _)| words != "Change it"));
    });
}

#[test]
fn the_starter_set_defers_and_calls_nothing_safe() {
    let all: String = starter::SET.iter().map(|topic| topic.body).collect();
    for wanted in [
        "safety data sheet",
        "local rules",
        "at least 15 minutes",
        "it is the count that matters",
        "often skipped, and should not be",
        "never water into acid",
    ] {
        assert!(all.contains(wanted), "{wanted}");
    }
    let banned = regex::Regex::new(r"(?i)harmless|non-?toxic|\bsafe\b|no risk|no danger").unwrap();
    assert_eq!(banned.find(&all).map(|found| found.as_str()), None);
    for topic in &starter::SET {
        let paragraphs = topic.body.split("\n\n").count();
        assert!((2..=3).contains(&paragraphs), "{}", topic.title);
        assert!(topic.body.chars().count() < 900, "{}", topic.title);
        assert!(!topic.body.contains("  "), "{}", topic.title);
    }
}

fn reworded(topic: &Topic, asks_anew: bool) -> NewTopic {
    NewTopic {
        body: format!("{}\n\nThen wipe it up.", topic.body),
        asks_anew,
        ..NewTopic::like(topic, false)
    }
}

#[test]
fn a_new_text_is_a_version_and_old_ones_stay_to_be_read() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        let spills = stage.topic("Spills", Required::Always).await;
        stage.inducts(member, &[spills]).await.unwrap();
        stage.confirms(member).await.unwrap();
        let topic = stage.topics().await.remove(0);
        stage.sets_topic(reworded(&topic, false)).await.unwrap();
        let second = stage.topics().await.remove(0);
        assert_eq!((second.version, second.counts_from_version), (2, 1));
        assert!(stage.lacks(member).await.is_empty());
        stage.sets_topic(reworded(&second, true)).await.unwrap();
        let third = stage.topics().await.remove(0);
        assert_eq!((third.version, third.counts_from_version), (3, 3));
        assert_eq!(stage.lacks(member).await[0].1, Standing::Outdated);
        // What changes no word is no version.
        let other = NewTopic {
            good_months: None,
            asks_anew: true,
            ..NewTopic::like(&third, false)
        };
        stage.sets_topic(other).await.unwrap();
        assert_eq!(stage.topics().await[0].version, 3);
        let mut visitor = Visitor::of(&stage, member).await;
        let path = format!("/topics/{spills}?version=1");
        let old = visitor.open(&path).await;
        assert!(old.page().main().contains("This is version 1, as it was."));
        assert!(!old.page().main().contains("Then wipe it up."));
        let gone = visitor.at(&format!("/topics/{spills}?version=4"));
        visitor.browser.get(&gone).await.expect(404);
    });
}

#[test]
fn a_retired_topic_asks_nobody() {
    scenario(async |stage| {
        let spills = stage.topic("Spills", Required::Always).await;
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.open(&format!("/topics/{spills}/retire")).await;
        let page = steward.send_on(&page, "Retire it", &[]).await;
        assert!(stage.lacks(&stage.cast.member).await.is_empty());
        let refused = stage.inducts(&stage.cast.member, &[spills]).await;
        assert!(matches!(refused, Err(Error::Invalid(_))));
        steward.send_on(&page, "Bring back Spills", &[]).await;
        assert_eq!(stage.lacks(&stage.cast.member).await.len(), 1);
    });
}

#[test]
fn the_form_says_what_is_missing() {
    scenario(async |stage| {
        stage.topic("Spills", Required::Always).await;
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.open("/topics/new").await;
        let form = page
            .page()
            .form("Add it")
            .unwrap()
            .choose("By what is here");
        let empty = steward.browser.submit(&form).await.expect(422);
        let fields: Vec<String> = empty
            .page()
            .problems()
            .into_iter()
            .map(|(field, _)| field)
            .collect();
        assert_eq!(fields, ["title", "body"]);
        let form = form.fill("Title", "Spills").fill("Text", "Say it aloud.");
        let taken = steward.browser.submit(&form).await.expect(422);
        assert!(
            taken
                .page()
                .main()
                .contains("Something here has that name already")
        );
        let form = form.fill("Title", "Acids");
        let without = steward.browser.submit(&form).await.expect(422);
        assert_eq!(without.page().problems()[0].0, "traits");
        let form = form.choose("An acid or an alkali");
        let done = steward.browser.submit_and_follow(&form).await.expect(200);
        let said = done.page().first(".lead").unwrap();
        assert!(
            said.contains("Required while an acid or an alkali is in a tray"),
            "{said}"
        );
    });
}
