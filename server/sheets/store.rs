//! The SQL of notes.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Brought, FilmNoted, NoteUndone, Noted, Wear};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;
use crate::mixes::Figures;
use crate::papers::SilverFigures;
use crate::products::{Kind, Place};

/// A note as it now is.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Pass {
    /// The number of its entry.
    pub seq: i64,
    /// The note.
    pub id: Uuid,
    /// The line.
    pub line_id: Uuid,
    /// The line's name.
    pub line_name: String,
    /// Who printed.
    pub person_id: Uuid,
    /// The paper class, nothing for film.
    pub paper_class_id: Option<Uuid>,
    /// The paper class's name, nothing for film.
    pub paper_class: Option<String>,
    /// The sheet size, nothing for film.
    pub sheet_size_id: Option<Uuid>,
    /// The sheet size's name, nothing for film.
    pub sheet_size: Option<String>,
    /// How many sheets, or rolls of film.
    pub sheets: i32,
    /// Whether it was film.
    pub is_film: bool,
    /// Whether nobody counted and the number is the usual one.
    pub is_estimated: bool,
    /// When.
    pub happened_at: OffsetDateTime,
    /// When it was written.
    pub recorded_at: OffsetDateTime,
    /// The entry that took it back.
    pub reversed_by: Option<i64>,
}

/// One note.
///
/// # Errors
/// The database's.
pub async fn pass(tx: &mut RoomTx, id: Uuid) -> Result<Option<Pass>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Pass,
        r#"
        select
            p.seq, p.id, p.line_id, l.name as line_name, p.person_id, p.paper_class_id,
            c.name as "paper_class?", p.sheet_size_id, s.name as "sheet_size?", p.sheets, p.is_film,
            p.is_estimated, p.happened_at, e.recorded_at, p.reversed_by
        from pass p
        join line l on l.room_id = p.room_id and l.id = p.line_id
        left join paper_class c on c.room_id = p.room_id and c.id = p.paper_class_id
        left join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id
        join entry e on e.room_id = p.room_id and e.seq = p.seq
        where p.room_id = $1 and p.id = $2
        "#,
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

/// The notes before one entry, or all, newest first and at most `most`.
///
/// # Errors
/// The database's.
pub async fn passes(tx: &mut RoomTx, before: Option<i64>, most: i64) -> Result<Vec<Pass>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Pass,
        r#"
        select
            p.seq, p.id, p.line_id, l.name as line_name, p.person_id, p.paper_class_id,
            c.name as "paper_class?", p.sheet_size_id, s.name as "sheet_size?", p.sheets, p.is_film,
            p.is_estimated, p.happened_at, e.recorded_at, p.reversed_by
        from pass p
        join line l on l.room_id = p.room_id and l.id = p.line_id
        left join paper_class c on c.room_id = p.room_id and c.id = p.paper_class_id
        left join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id
        join entry e on e.room_id = p.room_id and e.seq = p.seq
        where p.room_id = $1 and ($2::bigint is null or p.seq < $2)
        order by p.seq desc
        limit $3
        "#,
        room,
        before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// One note by the number of its entry.
///
/// # Errors
/// The database's.
pub async fn pass_at(tx: &mut RoomTx, seq: i64) -> Result<Option<Pass>> {
    let room = tx.room();
    let id = sqlx::query_scalar!(
        "select id from pass where room_id = $1 and seq = $2",
        room,
        seq
    )
    .fetch_optional(tx.db())
    .await?;
    match id {
        Some(id) => pass(tx, id).await,
        None => Ok(None),
    }
}

/// What a person chose last: line, paper class, sheet size, count.
pub(super) async fn last_choice(
    tx: &mut RoomTx,
    person: Uuid,
) -> Result<Option<(Uuid, Uuid, Uuid, i32)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select
            line_id, paper_class_id as "paper_class_id!", sheet_size_id as "sheet_size_id!", sheets
        from pass
        where room_id = $1 and person_id = $2 and not is_film
        order by seq desc
        limit 1
        "#,
        room,
        person
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found.map(|row| {
        (
            row.line_id,
            row.paper_class_id,
            row.sheet_size_id,
            row.sheets,
        )
    }))
}

/// What a note used up of one mix, and how that mix stands now.
pub(super) struct Effect {
    pub(super) product: String,
    pub(super) spent_nl: i64,
    pub(super) mix_spent_nl: i64,
    pub(super) charged_ul: i64,
}

/// What a note did, mix by mix.
pub(super) async fn effects(tx: &mut RoomTx, seq: i64) -> Result<Vec<Effect>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Effect,
        r#"
        select p.name as product, w.spent_nl, m.spent_nl as mix_spent_nl, m.charged_ul
        from wear w
        join mix m on m.room_id = w.room_id and m.id = w.mix_id
        join product p on p.room_id = m.room_id and p.id = m.product_id
        where w.room_id = $1 and w.seq = $2 and w.spent_nl > 0
        order by m.mixed_seq
        "#,
        room,
        seq
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// What one paper class, or film, used up of a mix.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct WornByClass {
    /// The class; nothing for film.
    pub paper_class: Option<String>,
    /// The mix's capacity for it where it stands, in thousandths of a sheet a litre.
    pub sheets_per_litre_thousandths: Option<i64>,
    /// Sheets, or rolls of film.
    pub count: i64,
    /// The area of the sheets, in hundredths of a square millimetre.
    pub area: i64,
    /// What that used up, in nanolitres.
    pub spent_nl: i64,
}

/// What used up a mix, class by class, notes that were taken back left out.
///
/// # Errors
/// The database's.
pub async fn worn_by_class(tx: &mut RoomTx, mix: Uuid, place: Place) -> Result<Vec<WornByClass>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        WornByClass,
        r#"
        select
            c.name as "paper_class?",
            k.sheets_per_litre_thousandths as "sheets_per_litre_thousandths?",
            sum(p.sheets)::bigint as "count!",
            coalesce(
                sum(p.sheets::bigint * s.long_tenths_mm::bigint * s.short_tenths_mm::bigint), 0
            )::bigint as "area!",
            sum(w.spent_nl)::bigint as "spent_nl!"
        from wear w
        join pass p on p.room_id = w.room_id and p.seq = w.seq
        left join paper_class c on c.room_id = p.room_id and c.id = p.paper_class_id
        left join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id
        left join mix_capacity k on k.room_id = w.room_id
            and k.mix_id = w.mix_id
            and k.paper_class_id = p.paper_class_id
            and k.place = $3
        where w.room_id = $1 and w.mix_id = $2 and p.reversed_by is null and w.spent_nl > 0
        group by c.id, c.name, c.position, k.sheets_per_litre_thousandths
        order by c.position, c.id
        "#,
        room,
        mix,
        place.as_str()
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// What notes of sheets and of film have in common.
#[derive(serde::Deserialize)]
struct Worn {
    wear: Vec<Wear>,
}

/// What a note used up, as its entry stored it.
pub(super) async fn wear_of(tx: &mut RoomTx, seq: i64) -> Result<Vec<Wear>> {
    let room = tx.room();
    let payload = sqlx::query_scalar!(
        "select payload from entry where room_id = $1 and seq = $2",
        room,
        seq
    )
    .fetch_optional(tx.db())
    .await?
    .ok_or(Error::NotFound)?;
    let worn: Worn = serde_json::from_slice(&payload)?;
    Ok(worn.wear)
}

/// What the note of one item stands on: paper, and how late the room takes notes.
pub(super) struct Ground {
    pub(super) item: i64,
    pub(super) long_tenths_mm: Option<i32>,
    pub(super) short_tenths_mm: Option<i32>,
    pub(super) has_class: bool,
    pub(super) has_line: bool,
    pub(super) late_note_minutes: i32,
    pub(super) second_bath_ppb: i64,
    pub(super) alkali_meq_per_litre: Option<i32>,
    pub(super) carry_over_ul_per_m2: Option<i64>,
    pub(super) silver: Option<SilverFigures>,
}

/// One query for all notes of a group: item by item, in their order.
pub(super) async fn grounds(
    tx: &mut RoomTx,
    lines: &[Uuid],
    sizes: &[Uuid],
    classes: &[Uuid],
) -> Result<Vec<Ground>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        GroundRow,
        r#"
        select
            i.item as "item!",
            s.long_tenths_mm as "long_tenths_mm?",
            s.short_tenths_mm as "short_tenths_mm?",
            c.id as "class?",
            c.carry_over_ul_per_m2 as "carry_over_ul_per_m2?",
            c.silver_least_mg_per_m2 as "least_mg?",
            c.silver_usual_mg_per_m2 as "usual_mg?",
            c.silver_most_mg_per_m2 as "most_mg?",
            c.silver_least_kept_ppb as "least_kept?",
            c.silver_usual_kept_ppb as "usual_kept?",
            c.silver_most_kept_ppb as "most_kept?",
            exists (
                select from line l
                where l.room_id = $1 and l.id = i.line and l.retired_at is null
            ) as "has_line!",
            r.late_note_minutes,
            r.second_bath_ppb,
            r.alkali_meq_per_litre
        from unnest($2::uuid[], $3::uuid[], $4::uuid[])
            with ordinality as i (line, size, class, item)
        join room_setting r on r.room_id = $1
        left join sheet_size s on s.room_id = $1 and s.id = i.size and s.retired_at is null
        left join paper_class c on c.room_id = $1 and c.id = i.class and c.retired_at is null
        order by i.item
        "#,
        room,
        lines,
        sizes,
        classes
    )
    .fetch_all(tx.db())
    .await?;
    Ok(rows.into_iter().map(Ground::from).collect())
}

/// A ground as the database keeps it.
struct GroundRow {
    item: i64,
    long_tenths_mm: Option<i32>,
    short_tenths_mm: Option<i32>,
    class: Option<Uuid>,
    carry_over_ul_per_m2: Option<i64>,
    least_mg: Option<i64>,
    usual_mg: Option<i64>,
    most_mg: Option<i64>,
    least_kept: Option<i64>,
    usual_kept: Option<i64>,
    most_kept: Option<i64>,
    has_line: bool,
    late_note_minutes: i32,
    second_bath_ppb: i64,
    alkali_meq_per_litre: Option<i32>,
}

impl From<GroundRow> for Ground {
    fn from(row: GroundRow) -> Self {
        Self {
            silver: row.silver(),
            item: row.item,
            long_tenths_mm: row.long_tenths_mm,
            short_tenths_mm: row.short_tenths_mm,
            has_class: row.class.is_some(),
            has_line: row.has_line,
            late_note_minutes: row.late_note_minutes,
            second_bath_ppb: row.second_bath_ppb,
            alkali_meq_per_litre: row.alkali_meq_per_litre,
            carry_over_ul_per_m2: row.carry_over_ul_per_m2,
        }
    }
}

impl GroundRow {
    /// All of a class's figures of silver, or none.
    fn silver(&self) -> Option<SilverFigures> {
        Some(SilverFigures {
            least_mg_per_m2: self.least_mg?,
            usual_mg_per_m2: self.usual_mg?,
            most_mg_per_m2: self.most_mg?,
            least_kept_ppb: self.least_kept?,
            usual_kept_ppb: self.usual_kept?,
            most_kept_ppb: self.most_kept?,
            basis: String::new(),
        })
    }
}

/// A mix that stood in an item's line at its time; where it was poured into
/// another since, that one.
pub(super) struct Stood {
    pub(super) item: i64,
    pub(super) mix_id: Uuid,
    pub(super) tray_id: Uuid,
    pub(super) place: Place,
    pub(super) product: Option<String>,
    pub(super) kind: Option<Kind>,
    pub(super) charged_ul: i64,
    pub(super) silver_ug: [i64; 3],
    /// What the mix keeps of its product, as text.
    figures: String,
    /// The mix's capacity for the item's class, where it has one.
    pub(super) sheets_per_litre_thousandths: Option<i64>,
    /// Whether the mix has a capacity for any class.
    pub(super) is_worn: bool,
}

impl Stood {
    /// What the mix keeps of its product.
    pub(super) fn figures(&self) -> Result<Option<Figures>> {
        match self.figures.is_empty() {
            true => Ok(None),
            false => Ok(Some(serde_json::from_str(&self.figures)?)),
        }
    }
}

/// One query for all notes of a group: what stood in each one's line at its
/// time, in the order prints travel. A stay begins with its first moment and ends
/// before its last.
pub(super) async fn stood(
    tx: &mut RoomTx,
    lines: &[Uuid],
    classes: &[Uuid],
    times: &[OffsetDateTime],
) -> Result<Vec<Stood>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        StoodRow,
        r#"
        select
            i.item as "item!",
            m.id as mix_id,
            s.tray_id,
            s.place,
            p.name as "product?",
            p.kind as "kind?",
            m.charged_ul,
            m.silver_least_ug,
            m.silver_usual_ug,
            m.silver_most_ug,
            m.figures,
            c.sheets_per_litre_thousandths as "sheets_per_litre_thousandths?",
            exists (
                select from mix_capacity a where a.room_id = $1 and a.mix_id = m.id
            ) as "is_worn!"
        from unnest($2::uuid[], $3::uuid[], $4::timestamptz[])
            with ordinality as i (line, class, at, item)
        join stay s on s.room_id = $1
            and s.line_id = i.line
            and s.from_at <= i.at
            and (s.until_at is null or s.until_at > i.at)
        join mix o on o.room_id = $1 and o.id = s.mix_id
        join mix m on m.room_id = $1 and m.id = coalesce(o.poured_into, o.id)
        join tray t on t.room_id = $1 and t.id = s.tray_id
        left join product p on p.room_id = $1 and p.id = m.product_id
        left join mix_capacity c on c.room_id = $1
            and c.mix_id = m.id
            and c.paper_class_id = i.class
            and c.place = s.place
        order by i.item, t.position, m.mixed_seq
        "#,
        room,
        lines,
        classes,
        times
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(StoodRow::read).collect()
}

/// What stood there, as the database keeps it.
struct StoodRow {
    item: i64,
    mix_id: Uuid,
    tray_id: Uuid,
    place: String,
    product: Option<String>,
    kind: Option<String>,
    charged_ul: i64,
    silver_least_ug: i64,
    silver_usual_ug: i64,
    silver_most_ug: i64,
    figures: String,
    sheets_per_litre_thousandths: Option<i64>,
    is_worn: bool,
}

impl StoodRow {
    fn read(self) -> Result<Stood> {
        let unknown = |text: &str| Error::fault(format!("not a word of this column: {text}"));
        let kind = self.kind.as_deref();
        let kind = kind.map(|text| Kind::parse(text).ok_or_else(|| unknown(text)));
        Ok(Stood {
            item: self.item,
            mix_id: self.mix_id,
            tray_id: self.tray_id,
            place: Place::parse(&self.place).ok_or_else(|| unknown(&self.place))?,
            product: self.product,
            kind: kind.transpose()?,
            charged_ul: self.charged_ul,
            silver_ug: [
                self.silver_least_ug,
                self.silver_usual_ug,
                self.silver_most_ug,
            ],
            figures: self.figures,
            sheets_per_litre_thousandths: self.sheets_per_litre_thousandths,
            is_worn: self.is_worn,
        })
    }
}

/// The usual number of sheets of one note: the middle one of the person's last
/// twenty that somebody counted, else of the room's last fifty, else five (from
/// memory).
pub(super) async fn usual_sheets(tx: &mut RoomTx, person: Uuid) -> Result<u32> {
    let room = tx.room();
    let usual = sqlx::query_scalar!(
        r#"
        select coalesce(
            (
                select percentile_disc(0.5) within group (order by o.sheets)
                from (
                    select sheets
                    from pass
                    where room_id = $1
                        and person_id = $2
                        and not is_film
                        and not is_estimated
                        and reversed_by is null
                    order by seq desc
                    limit 20
                ) o
            ),
            (
                select percentile_disc(0.5) within group (order by a.sheets)
                from (
                    select sheets
                    from pass
                    where room_id = $1
                        and not is_film
                        and not is_estimated
                        and reversed_by is null
                    order by seq desc
                    limit 50
                ) a
            ),
            5
        ) as "usual!"
        "#,
        room,
        person
    )
    .fetch_one(tx.db())
    .await?;
    u32::try_from(usual).map_err(Error::fault)
}

/// Notes, column by column.
#[derive(Default)]
struct PassRows {
    seq: Vec<i64>,
    id: Vec<Uuid>,
    line: Vec<Uuid>,
    person: Vec<Uuid>,
    class: Vec<Option<Uuid>>,
    size: Vec<Option<Uuid>>,
    count: Vec<i32>,
    is_film: Vec<bool>,
    is_estimated: Vec<bool>,
    happened_at: Vec<OffsetDateTime>,
    worn: WearRows,
}

/// What notes used up, column by column.
#[derive(Default)]
struct WearRows {
    seq: Vec<i64>,
    mix: Vec<Uuid>,
    nl: Vec<i64>,
    /// When, of notes whose number nobody counted.
    uncounted_at: Vec<Option<OffsetDateTime>>,
    brought: Vec<(i64, Uuid, Brought)>,
}

impl PassRows {
    fn of_sheets(placed: &[Placed<Noted>]) -> Result<Self> {
        let mut rows = Self::default();
        for each in placed {
            let noted = &each.entry;
            let ids = (noted.pass_id, noted.line_id, noted.person_id);
            rows.push(each.seq, each.happened_at, ids, noted.sheets)?;
            rows.class.push(Some(noted.paper_class_id));
            rows.size.push(Some(noted.sheet_size_id));
            rows.is_film.push(false);
            rows.is_estimated.push(noted.is_estimated);
            let uncounted = noted.is_estimated.then_some(each.happened_at);
            rows.worn.push(each.seq, &noted.wear, uncounted);
        }
        Ok(rows)
    }

    fn of_films(placed: &[Placed<FilmNoted>]) -> Result<Self> {
        let mut rows = Self::default();
        for each in placed {
            let noted = &each.entry;
            let ids = (noted.pass_id, noted.line_id, noted.person_id);
            rows.push(each.seq, each.happened_at, ids, noted.rolls)?;
            rows.class.push(None);
            rows.size.push(None);
            rows.is_film.push(true);
            rows.is_estimated.push(false);
            rows.worn.push(each.seq, &noted.wear, None);
        }
        Ok(rows)
    }

    fn push(
        &mut self,
        seq: i64,
        happened_at: OffsetDateTime,
        (id, line, person): (Uuid, Uuid, Uuid),
        count: u32,
    ) -> Result<()> {
        self.seq.push(seq);
        self.id.push(id);
        self.line.push(line);
        self.person.push(person);
        self.count.push(i32::try_from(count).map_err(Error::fault)?);
        self.happened_at.push(happened_at);
        Ok(())
    }
}

impl WearRows {
    fn push(&mut self, seq: i64, wear: &[Wear], uncounted_at: Option<OffsetDateTime>) {
        for worn in wear {
            self.seq.push(seq);
            self.mix.push(worn.mix_id);
            self.nl.push(worn.spent_nl);
            self.uncounted_at.push(uncounted_at);
            let brought = worn.brought.map(|brought| (seq, worn.mix_id, brought));
            self.brought.extend(brought);
        }
    }
}

pub(super) async fn insert_passes(tx: &mut RoomTx, placed: &[Placed<Noted>]) -> Result<()> {
    insert(tx, &PassRows::of_sheets(placed)?).await
}

pub(super) async fn insert_films(tx: &mut RoomTx, placed: &[Placed<FilmNoted>]) -> Result<()> {
    insert(tx, &PassRows::of_films(placed)?).await
}

async fn insert(tx: &mut RoomTx, rows: &PassRows) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into pass (
            room_id, seq, id, line_id, person_id, paper_class_id, sheet_size_id, sheets, is_film,
            is_estimated, happened_at, reversed_by
        )
        select $1, t.*, null
        from unnest(
            $2::bigint[], $3::uuid[], $4::uuid[], $5::uuid[], $6::uuid[], $7::uuid[],
            $8::integer[], $9::boolean[], $10::boolean[], $11::timestamptz[]
        ) t
        "#,
        room,
        &rows.seq,
        &rows.id,
        &rows.line,
        &rows.person,
        &rows.class as &[Option<Uuid>],
        &rows.size as &[Option<Uuid>],
        &rows.count,
        &rows.is_film,
        &rows.is_estimated,
        &rows.happened_at
    )
    .execute(tx.db())
    .await?;
    if rows.worn.seq.is_empty() {
        return Ok(());
    }
    wear(tx, &rows.worn).await?;
    for (seq, mix, brought) in &rows.worn.brought {
        bring(tx, *mix, brought, 1, *seq).await?;
    }
    Ok(())
}

async fn wear(tx: &mut RoomTx, rows: &WearRows) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into wear (room_id, seq, mix_id, spent_nl)
        select $1, t.*
        from unnest($2::bigint[], $3::uuid[], $4::bigint[]) t
        "#,
        room,
        &rows.seq,
        &rows.mix,
        &rows.nl
    )
    .execute(tx.db())
    .await?;
    sqlx::query!(
        r#"
        update mix set
            spent_nl = mix.spent_nl + worn.spent_nl,
            unknown_sheets_at = greatest(mix.unknown_sheets_at, worn.uncounted_at),
            last_seq = worn.seq
        from (
            select
                t.mix,
                sum(t.nl)::bigint as spent_nl,
                max(t.seq) as seq,
                max(t.uncounted_at) as uncounted_at
            from unnest($2::bigint[], $3::uuid[], $4::bigint[], $5::timestamptz[])
                as t (seq, mix, nl, uncounted_at)
            group by t.mix
        ) worn
        where mix.room_id = $1 and mix.id = worn.mix
        "#,
        room,
        &rows.seq,
        &rows.mix,
        &rows.nl,
        &rows.uncounted_at as &[Option<OffsetDateTime>]
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Adds what prints brought, or with −1 takes it off again.
async fn bring(tx: &mut RoomTx, mix: Uuid, brought: &Brought, sign: i64, seq: i64) -> Result<()> {
    let room = tx.room();
    let [least, usual, most] = brought.silver_ug.map(|silver| silver * sign);
    sqlx::query!(
        r#"
        update mix set
            silver_least_ug = silver_least_ug + $3,
            silver_usual_ug = silver_usual_ug + $4,
            silver_most_ug = silver_most_ug + $5,
            bromide_ug = bromide_ug + $6,
            alkali_neq = alkali_neq + $7,
            carried_out_ul = carried_out_ul + $8,
            received_ul = received_ul + $9,
            last_seq = $10
        where room_id = $1 and id = $2
        "#,
        room,
        mix,
        least,
        usual,
        most,
        brought.bromide_ug * sign,
        brought.alkali_neq * sign,
        brought.carried_out_ul * sign,
        brought.received_ul * sign,
        seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn reverse_pass(tx: &mut RoomTx, placed: &Placed<NoteUndone>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update pass set reversed_by = $3 where room_id = $1 and seq = $2",
        room,
        placed.entry.pass_seq,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    for wear in &placed.entry.wear {
        unwear(tx, wear, placed.seq).await?;
        if let Some(brought) = &wear.brought {
            bring(tx, wear.mix_id, brought, -1, placed.seq).await?;
        }
    }
    Ok(())
}

/// Takes the stored wear off again; what nobody counted is in doubt only as long
/// as such a note stands.
async fn unwear(tx: &mut RoomTx, wear: &Wear, seq: i64) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update mix set
            spent_nl = spent_nl - $3,
            unknown_sheets_at = (
                select max(p.happened_at)
                from wear w
                join pass p on p.room_id = w.room_id and p.seq = w.seq
                where w.room_id = $1
                    and w.mix_id = $2
                    and p.is_estimated
                    and p.reversed_by is null
            ),
            last_seq = $4
        where room_id = $1 and id = $2
        "#,
        room,
        wear.mix_id,
        wear.spent_nl,
        seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Where the liquid of a mix is now: in itself, or in what it was poured into.
pub(super) async fn present_mix(tx: &mut RoomTx, mix: Uuid) -> Result<Uuid> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        r#"
        select coalesce(poured_into, id) as "id!"
        from mix
        where room_id = $1 and id = $2
        "#,
        room,
        mix
    )
    .fetch_optional(tx.db())
    .await?;
    found.ok_or(Error::NotFound)
}

/// Whether a note went through a toner.
pub(super) async fn was_toned(tx: &mut RoomTx, seq: i64) -> Result<bool> {
    let room = tx.room();
    let was = sqlx::query_scalar!(
        r#"
        select exists (
            select
            from wear w
            join mix m on m.room_id = w.room_id and m.id = w.mix_id
            join product p on p.room_id = m.room_id and p.id = m.product_id
            where w.room_id = $1 and w.seq = $2 and p.kind = 'toner'
        ) as "was!"
        "#,
        room,
        seq
    )
    .fetch_one(tx.db())
    .await?;
    Ok(was)
}
