//! What else becomes of mixes: one entry of every kind, figures invented.

use wetside::bench::BottleSet;
use wetside::darkroom::incompatibility::Group;
use wetside::error::Result;
use wetside::logbook::Book;
use wetside::mixes::{
    Contaminant, DiscardUndone, Discarded, Extended, Mixed, Outcome, PouredTogether, RULES,
    Reading, ReadingKind, ReadingUndone, Rinsed, Shifted, Stand, Storage, Stored, ToppedUp,
    UnknownFound, Why,
};
use wetside::products::Place;
use wetside::sheets::{Brought, FilmNoted, Wear};

/// Writes them: `stays` stands in its tray and stays there, `gone` was just
/// discarded.
pub(super) async fn write(
    book: &mut Book<'_>,
    printer: uuid::Uuid,
    stays: &Mixed,
    gone: &Mixed,
) -> Result<()> {
    let bottle = BottleSet {
        id: book.new_id(),
        name: "Green, two litres".to_owned(),
        holds_ul: 2_000_000,
        is_retired: false,
    };
    book.append(&bottle).await?;
    let in_bottle = Stand {
        bottle_id: Some(bottle.id),
        ..Stand::default()
    };
    let back = DiscardUndone {
        mix_id: gone.mix_id,
        discard_seq: 1,
        stand: gone.stand,
        reason: "The wrong tray".to_owned(),
    };
    book.append(&back).await?;
    book.append(&to_bottle(gone, in_bottle)).await?;
    book.append(&top_up(stays)).await?;
    let pass_id = book.new_id();
    book.append(&film(pass_id, printer, stays)).await?;
    test(book, stays).await?;
    let joined = PouredTogether {
        rules: RULES,
        mix_id: stays.mix_id,
        stand: stays.stand,
        poured_mix_id: gone.mix_id,
        poured_from: in_bottle,
        volume_ul: gone.charged_ul,
        poured_spent_nl: 60_000_000,
        poured_age_ppb: 0,
        life_s: stays.life_s,
    };
    book.append(&joined).await?;
    let unknown = UnknownFound {
        rules: RULES,
        mix_id: book.new_id(),
        stand: in_bottle,
        storage: Storage::PartBottle,
        charged_ul: 500_000,
        remark: "Brown, no label".to_owned(),
    };
    book.append(&unknown).await?;
    pair(book, stays).await?;
    book.append(&Rinsed { stand: stays.stand }).await?;
    Ok(())
}

fn to_bottle(mix: &Mixed, bottle: Stand) -> Stored {
    Stored {
        rules: RULES,
        mix_id: mix.mix_id,
        from: mix.stand,
        to: bottle,
        storage: Storage::FullBottle,
        life_s: 86_400,
    }
}

fn top_up(mix: &Mixed) -> ToppedUp {
    ToppedUp {
        rules: RULES,
        mix_id: mix.mix_id,
        stand: mix.stand,
        product_id: mix.product_id,
        product_version: mix.product_version,
        volume_ul: 100_000,
        concentrate_ul: 10_000,
        stock_id: None,
        life_s: mix.life_s,
    }
}

fn film(pass_id: uuid::Uuid, person_id: uuid::Uuid, mix: &Mixed) -> FilmNoted {
    FilmNoted {
        rules: RULES,
        pass_id,
        line_id: mix.stand.line_id.unwrap(),
        person_id,
        rolls: 2,
        wear: vec![Wear {
            mix_id: mix.mix_id,
            tray_id: mix.stand.tray_id.unwrap(),
            sheets_per_litre_thousandths: 20_000,
            // Two rolls at twenty a litre.
            spent_nl: 100_000_000,
            share_ppb: None,
            brought: Some(Brought {
                silver_ug: [1, 2, 3],
                bromide_ug: 4,
                alkali_neq: 5,
                carried_out_ul: 6,
                received_ul: 7,
            }),
        }],
    }
}

fn look(book: &mut Book<'_>, mix: &Mixed, kind: ReadingKind, outcome: Outcome) -> Reading {
    Reading {
        rules: RULES,
        reading_id: book.new_id(),
        mix_id: mix.mix_id,
        stand: mix.stand,
        kind,
        outcome,
        value: None,
        tenths_celsius: None,
        sample: String::new(),
        is_fresh: false,
        ratio_thousandths: None,
        fresh_reading_id: None,
        spent_nl: 0,
        contaminant: None,
        remark: String::new(),
        person_id: None,
    }
}

/// A timed check, a report of household bleach, one taken back, an extension.
async fn test(book: &mut Book<'_>, mix: &Mixed) -> Result<()> {
    let timed = Reading {
        value: Some(25),
        tenths_celsius: Some(200),
        sample: "Thin card".to_owned(),
        is_fresh: true,
        ratio_thousandths: Some(1_100),
        ..look(book, mix, ReadingKind::Emergence, Outcome::Passed)
    };
    book.append(&timed).await?;
    let flagged = Reading {
        contaminant: Some(Contaminant::Groups(vec![Group::Hypochlorite])),
        remark: "Splashed".to_owned(),
        ..look(book, mix, ReadingKind::Contamination, Outcome::Failed)
    };
    book.append(&flagged).await?;
    let wrong = look(book, mix, ReadingKind::TestPrint, Outcome::Failed);
    let reading_seq = book.append(&wrong).await?;
    let undone = ReadingUndone {
        reading_id: wrong.reading_id,
        reading_seq,
        mix_id: mix.mix_id,
        stand: mix.stand,
        reason: "Wrong paper".to_owned(),
    };
    book.append(&undone).await?;
    let extended = Extended {
        rules: RULES,
        extension_id: book.new_id(),
        mix_id: mix.mix_id,
        stand: mix.stand,
        given_us: 1_000_000,
        until_us: 3_601_000_000,
        clearing_thousandths: Some(1_100),
        emergence_thousandths: Some(1_200),
        reason: "One more evening".to_owned(),
    };
    book.append(&extended).await?;
    Ok(())
}

/// Two fixing baths, the second of which moves up; the first held bleach.
async fn pair(book: &mut Book<'_>, first: &Mixed) -> Result<()> {
    let line = first.stand.line_id.unwrap();
    let tray = super::bench::tray(book, line, 3);
    book.append(&tray).await?;
    let second = Mixed {
        stand: Stand {
            tray_id: Some(tray.id),
            line_id: Some(line),
            bottle_id: None,
            place: Place::Second,
        },
        ..super::bench::mixed(book, &tray).await?
    };
    book.append(&second).await?;
    let shifted = Shifted {
        rules: RULES,
        mix_id: second.mix_id,
        from: second.stand,
        to: Stand {
            place: Place::First,
            ..first.stand
        },
        first_mix_id: first.mix_id,
        volume_ul: 1_000_000,
        destination: "collected".to_owned(),
        container: "Grey drum".to_owned(),
        life_s: second.life_s,
        shifts: 1,
    };
    book.append(&shifted).await?;
    let discarded = Discarded {
        mix_id: second.mix_id,
        stand: shifted.to,
        volume_ul: 900_000,
        destination: "collected".to_owned(),
        container: "Blue drum".to_owned(),
        why: Why::Test,
    };
    book.append(&discarded).await?;
    Ok(())
}
