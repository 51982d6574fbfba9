//! A book with entries of every kind: two trays, two mixes, notes, one taken
//! back, one mix discarded, lamps tested, the room checked, people inducted, the fan off
//! and on again, the room handed over, workshops held.

use uuid::Uuid;
use wetside::arrivals::{Arrived, Expected, LeavingExpected, Left, NotConfirmedLeft};
use wetside::bench::{
    BottleSet, FinishingSet, LineSet, SpaceSet, Step, TraySet, WashEmptied, WashJoined,
};
use wetside::clock::micros;
use wetside::darkroom::state::Origin;
use wetside::error::{Error, Result};
use wetside::handover::{HandedOver, HandoverOpened, HandoverWithdrawn, Part, digest};
use wetside::logbook::Book;
use wetside::members::{self, Joined};
use wetside::mixes::stock::StockMade;
use wetside::mixes::{Discarded, FrozenCapacity, Mixed, RULES, Stand, Storage, Why};
use wetside::papers;
use wetside::products::{self, Ingredient};
use wetside::rights::Role;
use wetside::screens::{PinRemoved, PinSet, ScreenEnded, ScreenPaired, ScreenRenamed};
use wetside::sheets::{NoteUndone, Noted, Wear};

use super::{incidents, the_room};

/// So many entries the book has: the room's opening, its steward joining, and
/// what [`write`] writes.
pub(crate) const ENTRIES: i64 = 112 + super::workshops::ENTRIES;

pub(crate) async fn write(book: &mut Book<'_>, printer: Uuid) -> Result<()> {
    let joined = Joined {
        person: printer,
        role: Role::Member,
        member_number: 2,
        invitation: None,
    };
    book.append(&joined).await?;
    papers::starter::write(book).await?;
    products::starter::write(book).await?;
    let line = LineSet {
        id: book.new_id(),
        name: "Line".to_owned(),
        position: 1,
        space_id: None,
        is_retired: false,
    };
    book.append(&line).await?;
    let mut mixes = Vec::new();
    for position in 1..=2 {
        let tray = tray(book, line.id, position);
        book.append(&tray).await?;
        let mix = mixed(book, &tray).await?;
        book.append(&mix).await?;
        mixes.push(mix);
    }
    let first = noted(book, line.id, printer, &mixes).await?;
    let first_seq = book.append(&first).await?;
    let second = noted(book, line.id, printer, &mixes).await?;
    book.append(&second).await?;
    let undone = NoteUndone {
        pass_id: first.pass_id,
        pass_seq: first_seq,
        line_id: line.id,
        person_id: printer,
        wear: first.wear,
        reason: "Counted twice".to_owned(),
    };
    book.append(&undone).await?;
    let gone = &mixes[1];
    book.append(&discarded(gone)).await?;
    super::mixes::write(book, printer, &mixes[0], gone).await?;
    from_stock(book, line.id).await?;
    let space = furnish(book, line.id, first.paper_class_id).await?;
    ingredients(book, mixes[0].product_id).await?;
    the_room::checks(book).await?;
    the_room::lamps(book, first.paper_class_id).await?;
    the_room::air(book, space).await?;
    incidents::write(book, printer).await?;
    super::inductions::write(book, printer).await?;
    the_room::outages(book).await?;
    screens(book, printer).await?;
    presences(book, printer).await?;
    handovers(book, printer).await?;
    super::workshops::write(book, printer).await
}

fn discarded(gone: &Mixed) -> Discarded {
    Discarded {
        mix_id: gone.mix_id,
        stand: gone.stand,
        volume_ul: gone.charged_ul,
        destination: "collected".to_owned(),
        container: "Grey drum".to_owned(),
        why: Why::Spent,
    }
}

/// Stock solution, and a mix that was drawn from it.
async fn from_stock(book: &mut Book<'_>, line_id: Uuid) -> Result<()> {
    let tray = tray(book, line_id, 4);
    book.append(&tray).await?;
    let mix = mixed(book, &tray).await?;
    let made = StockMade {
        rules: RULES,
        stock_id: book.new_id(),
        product_id: mix.product_id,
        product_version: mix.product_version,
        packets_thousandths: 2_000,
        volume_ul: 2_000_000,
        full_life_s: Some(864_000),
        part_life_s: Some(86_400),
    };
    book.append(&made).await?;
    let drawn = Mixed {
        stock_id: Some(made.stock_id),
        ..mix
    };
    book.append(&drawn).await?;
    Ok(())
}

/// What stands around the trays, and prints in the wash; the space that it has.
async fn furnish(book: &mut Book<'_>, line_id: Uuid, paper_class_id: Uuid) -> Result<Uuid> {
    let space = SpaceSet {
        id: book.new_id(),
        name: "Cellar".to_owned(),
        position: 1,
        is_retired: false,
    };
    book.append(&space).await?;
    let bottle = BottleSet {
        id: book.new_id(),
        name: "Brown, two litres".to_owned(),
        holds_ul: 2_000_000,
        is_retired: false,
    };
    book.append(&bottle).await?;
    let times = FinishingSet {
        line_id,
        paper_class_id,
        fix_s: 60,
        longest_fix_s: 120,
        rinse_s: 30,
        wash_aid_s: Some(300),
        wash_with_aid_s: Some(600),
        wash_without_aid_s: 1_800,
        basis: "invented for this test".to_owned(),
    };
    book.append(&times).await?;
    let joined = WashJoined {
        line_id,
        paper_class_id,
        had_wash_aid: true,
        wash_s: 600,
    };
    book.append(&joined).await?;
    book.append(&WashEmptied { line_id }).await?;
    book.append(&joined).await?;
    Ok(space.id)
}

/// What the sheet of a product lists.
async fn ingredients(book: &mut Book<'_>, product_id: Uuid) -> Result<()> {
    let products = products::products(book.tx()).await?;
    let product = products.into_iter().find(|each| each.id == product_id);
    let mut product = product.ok_or(Error::NotFound)?;
    product.version += 1;
    product.composition_is_known = true;
    for (name, cas) in [("Hydroquinone", Some("123-31-9")), ("A salt", None)] {
        product.ingredients.push(Ingredient {
            name: name.to_owned(),
            cas: cas.map(str::to_owned),
            least_millionths: Some(10_000),
            most_millionths: Some(50_000),
            hazard_codes: vec!["H317".to_owned()],
        });
    }
    book.append(&product).await?;
    Ok(())
}

/// A screen on the wall, one at the door that was renamed and is gone; a PIN that
/// was set and taken away.
async fn screens(book: &mut Book<'_>, person_id: Uuid) -> Result<()> {
    let mut screen_id = book.new_id();
    for (kind, name) in [("board", "Wall"), ("door", "Door")] {
        screen_id = book.new_id();
        let paired = ScreenPaired {
            screen_id,
            kind: kind.to_owned(),
            name: name.to_owned(),
            display: "safelight".to_owned(),
        };
        book.append(&paired).await?;
    }
    let name = "Entrance".to_owned();
    book.append(&ScreenRenamed { screen_id, name }).await?;
    book.append(&ScreenEnded { screen_id }).await?;
    book.append(&PinSet { person_id }).await?;
    book.append(&PinRemoved { person_id }).await?;
    Ok(())
}

/// Somebody came alone, stayed longer and left, and came and forgot to; the steward is there.
async fn presences(book: &mut Book<'_>, printer: Uuid) -> Result<()> {
    let steward = steward(book).await?;
    for is_confirmed in [true, false] {
        let arrived = Arrived {
            supervisor_id: (!is_confirmed).then_some(steward),
            expected: is_confirmed.then(|| expected(book, 1)),
            ..arrived(book, printer)
        };
        book.append(&arrived).await?;
        let (presence_id, person_id) = (arrived.presence_id, printer);
        if is_confirmed {
            let stays = LeavingExpected {
                presence_id,
                person_id,
                expected: expected(book, 2),
            };
            book.append(&stays).await?;
            let left = Left {
                presence_id,
                person_id,
            };
            book.append(&left).await?;
        } else {
            let forgotten = NotConfirmedLeft {
                presence_id,
                person_id,
                local_date: arrived.local_date,
            };
            book.append(&forgotten).await?;
        }
    }
    let arrived = arrived(book, steward);
    book.append(&arrived).await?;
    Ok(())
}

fn arrived(book: &mut Book<'_>, person_id: Uuid) -> Arrived {
    Arrived {
        presence_id: book.new_id(),
        person_id,
        local_date: "2026-11-25".to_owned(),
        // Long after every night of the tests.
        over_at_us: micros(book.now()) + 1_000 * 86_400_000_000,
        supervisor_id: None,
        expected: None,
    }
}

fn expected(book: &Book<'_>, hours: i64) -> Expected {
    Expected {
        at_us: micros(book.now()) + hours * 3_600_000_000,
        clock: format!("{}:00", 13 + hours),
    }
}

pub(super) async fn steward(book: &mut Book<'_>) -> Result<Uuid> {
    let stewards = members::members(book.tx(), 0).await?;
    let steward = stewards.iter().find(|member| member.role == Role::Steward);
    Ok(steward.unwrap().person)
}

/// One handover that was taken back, one that was confirmed.
async fn handovers(book: &mut Book<'_>, from: Uuid) -> Result<()> {
    let to = steward(book).await?;
    for is_confirmed in [false, true] {
        let parts = vec![Part {
            heading: "Off now".to_owned(),
            lines: vec!["The power.".to_owned()],
        }];
        let opened = HandoverOpened {
            handover_id: book.new_id(),
            from_person_id: from,
            to_person_id: to,
            parts,
        };
        book.append(&opened).await?;
        if is_confirmed {
            let done = HandedOver {
                handover_id: opened.handover_id,
                from_person_id: from,
                to_person_id: to,
                parts_sha256: digest(&opened.parts)?,
            };
            book.append(&done).await?;
        } else {
            let withdrawn = HandoverWithdrawn {
                handover_id: opened.handover_id,
                from_person_id: from,
                to_person_id: to,
            };
            book.append(&withdrawn).await?;
        }
    }
    Ok(())
}

pub(super) fn tray(book: &mut Book<'_>, line_id: Uuid, position: i32) -> TraySet {
    TraySet {
        id: book.new_id(),
        line_id,
        name: format!("Tray {position}"),
        position,
        step: Step::Any,
        inside_long_tenths_mm: 3_500,
        inside_short_tenths_mm: 2_800,
        inside_depth_tenths_mm: 700,
        least_depth_tenths_mm: 80,
        is_retired: false,
    }
}

pub(super) async fn mixed(book: &mut Book<'_>, tray: &TraySet) -> Result<Mixed> {
    let product = products::products(book.tx())
        .await?
        .into_iter()
        .find(|each| each.kind == products::Kind::Developer)
        .unwrap();
    let figures = &product.dilutions[0];
    Ok(Mixed {
        rules: RULES,
        mix_id: book.new_id(),
        stand: Stand {
            tray_id: Some(tray.id),
            line_id: Some(tray.line_id),
            ..Stand::default()
        },
        product_id: product.id,
        product_version: product.version,
        parts_thousandths: figures.parts_thousandths,
        charged_ul: 2_000_000,
        concentrate_ul: 200_000,
        life_s: figures.tray_life_s,
        capacities: figures
            .capacities
            .iter()
            .map(|figure| FrozenCapacity {
                paper_class_id: figure.paper_class_id,
                place: figure.place,
                sheets_per_litre_thousandths: figure.sheets_per_litre_thousandths,
            })
            .collect(),
        origin: Origin::Mixed,
        storage: Storage::OpenTray,
        guessed_spent_nl: 0,
        guessed_age_ppb: 0,
        shifts: 0,
        stock_id: None,
        figures: None,
    })
}

async fn noted(
    book: &mut Book<'_>,
    line_id: Uuid,
    person_id: Uuid,
    mixes: &[Mixed],
) -> Result<Noted> {
    let size = papers::sheet_sizes(book.tx()).await?.remove(1);
    let capacity = &mixes[0].capacities[0];
    Ok(Noted {
        rules: RULES,
        pass_id: book.new_id(),
        line_id,
        person_id,
        paper_class_id: capacity.paper_class_id,
        sheet_size_id: size.id,
        long_tenths_mm: size.long_tenths_mm,
        short_tenths_mm: size.short_tenths_mm,
        sheets: 6,
        is_estimated: false,
        corrects_seq: None,
        workshop_id: None,
        wear: mixes
            .iter()
            .map(|mix| Wear {
                mix_id: mix.mix_id,
                tray_id: mix.stand.tray_id.unwrap(),
                sheets_per_litre_thousandths: capacity.sheets_per_litre_thousandths,
                // Six 8×10 in sheets at 100 a litre.
                spent_nl: 60_000_000,
                share_ppb: None,
                brought: None,
            })
            .collect(),
    })
}
