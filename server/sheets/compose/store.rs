//! What notes stand on: papers, the room's figures, and what stood in the line.

use time::OffsetDateTime;
use uuid::Uuid;

use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::mixes::Figures;
use crate::papers::SilverFigures;
use crate::products::{Kind, Place};

/// What the note of one item stands on: paper, and how late the room takes notes.
pub(in crate::sheets) struct Ground {
    pub(in crate::sheets) item: i64,
    pub(in crate::sheets) long_tenths_mm: Option<i32>,
    pub(in crate::sheets) short_tenths_mm: Option<i32>,
    pub(in crate::sheets) has_class: bool,
    pub(in crate::sheets) has_line: bool,
    pub(in crate::sheets) late_note_minutes: i32,
    pub(in crate::sheets) second_bath_ppb: i64,
    pub(in crate::sheets) alkali_meq_per_litre: Option<i32>,
    pub(in crate::sheets) carry_over_ul_per_m2: Option<i64>,
    pub(in crate::sheets) silver: Option<SilverFigures>,
}

/// One query for all notes of a group: item by item, in their order.
pub(in crate::sheets) async fn grounds(
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
                select from line where room_id = $1 and id = i.line and retired_at is null limit 1
            ) as "has_line!",
            r.late_note_minutes,
            r.second_bath_ppb,
            r.alkali_meq_per_litre
        from unnest($2::uuid[], $3::uuid[], $4::uuid[])
            with ordinality as i (line, size, class, item)
        join room_setting r on r.room_id = $1
        left join lateral (
            select long_tenths_mm, short_tenths_mm
            from sheet_size
            where room_id = $1 and id = i.size and retired_at is null limit 1
        ) s on true
        left join lateral (
            select
                id, carry_over_ul_per_m2, silver_least_mg_per_m2, silver_usual_mg_per_m2,
                silver_most_mg_per_m2, silver_least_kept_ppb, silver_usual_kept_ppb,
                silver_most_kept_ppb
            from paper_class
            where room_id = $1 and id = i.class and retired_at is null limit 1
        ) c on true
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
pub(in crate::sheets) struct Stood {
    pub(in crate::sheets) item: i64,
    pub(in crate::sheets) mix_id: Uuid,
    pub(in crate::sheets) tray_id: Uuid,
    pub(in crate::sheets) place: Place,
    pub(in crate::sheets) product: Option<String>,
    pub(in crate::sheets) kind: Option<Kind>,
    pub(in crate::sheets) charged_ul: i64,
    pub(in crate::sheets) silver_ug: [i64; 3],
    /// What the mix keeps of its product, as text.
    figures: String,
    /// The mix's capacity for the item's class, where it has one.
    pub(in crate::sheets) sheets_per_litre_thousandths: Option<i64>,
    /// Whether the mix has a capacity for any class.
    pub(in crate::sheets) is_worn: bool,
}

impl Stood {
    /// Whether this paper goes past it: a wash aid or holding water without a
    /// figure for its class, as resin-coated paper goes past a wash aid.
    pub(in crate::sheets) fn is_passed_by(&self) -> bool {
        let may_be = matches!(self.kind, Some(Kind::WashAid | Kind::HoldingWater));
        may_be && self.sheets_per_litre_thousandths.is_none()
    }

    /// What the mix keeps of its product.
    pub(in crate::sheets) fn figures(&self) -> Result<Option<Figures>> {
        match self.figures.is_empty() {
            true => Ok(None),
            false => Ok(Some(serde_json::from_str(&self.figures)?)),
        }
    }
}

/// One query for all notes of a group: what stood in each one's line at its
/// time, in the order prints travel. A stay begins with its first moment and ends
/// before its last.
pub(in crate::sheets) async fn stood(
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
            s.tray_id, s.place,
            p.name as "product?",
            p.kind as "kind?",
            m.charged_ul, m.silver_least_ug, m.silver_usual_ug, m.silver_most_ug, m.figures,
            c.sheets_per_litre_thousandths as "sheets_per_litre_thousandths?",
            exists (
                select from mix_capacity where room_id = $1 and mix_id = m.id limit 1
            ) as "is_worn!"
        from unnest($2::uuid[], $3::uuid[], $4::timestamptz[])
            with ordinality as i (line, class, at, item)
        cross join lateral (
            select mix_id, tray_id, place
            from stay
            where room_id = $1
                and line_id = i.line
                and from_at <= i.at
                and coalesce(until_at, 'infinity') > i.at
            offset 0
        ) s
        cross join lateral (
            select coalesce(poured_into, id) as id from mix where room_id = $1 and id = s.mix_id limit 1
        ) o
        cross join lateral (
            select
                id, product_id, mixed_seq, charged_ul, silver_least_ug, silver_usual_ug, silver_most_ug,
                figures
            from mix
            where room_id = $1 and id = o.id limit 1
        ) m
        cross join lateral (
            select position from tray where room_id = $1 and id = s.tray_id limit 1
        ) t
        left join lateral (
            select name, kind from product where room_id = $1 and id = m.product_id limit 1
        ) p on true
        left join lateral (
            select sheets_per_litre_thousandths
            from mix_capacity
            where room_id = $1 and mix_id = m.id and paper_class_id = i.class and place = s.place
            limit 1
        ) c on true
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
pub(in crate::sheets) async fn usual_sheets(tx: &mut RoomTx, person: Uuid) -> Result<u32> {
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
