//! Every kind of entry the program writes, by its noun.

use crate::logbook::Kind;
use crate::{bench, handover, members, mixes, outages, papers, products, rooms, sheets};

/// The table of kinds.
pub const KINDS: &[Kind] = &[
    Kind::of::<rooms::RoomOpened>(),
    Kind::of::<rooms::Demo>(),
    Kind::of::<rooms::RoomSettingsChanged>(),
    Kind::of::<rooms::RoomClosed>(),
    Kind::of::<rooms::RoomReopened>(),
    Kind::of::<members::Joined>(),
    Kind::of::<members::RoleChanged>(),
    Kind::of::<members::Suspended>(),
    Kind::of::<members::Restored>(),
    Kind::of::<members::AccessEnded>(),
    Kind::of::<members::Invited>(),
    Kind::of::<members::InvitationRevoked>(),
    Kind::of::<members::ResetLinkMade>(),
    Kind::of::<papers::SheetSizeSet>(),
    Kind::of::<papers::PaperClassSet>(),
    Kind::of::<products::ProductSet>(),
    Kind::of::<bench::LineSet>(),
    Kind::of::<bench::TraySet>(),
    Kind::of::<mixes::Mixed>(),
    Kind::of::<mixes::Discarded>(),
    Kind::of::<sheets::Noted>(),
    Kind::of::<sheets::NoteUndone>(),
    Kind::of::<outages::OutageBegan>(),
    Kind::of::<outages::OutageEnded>(),
    Kind::of::<handover::HandoverOpened>(),
    Kind::of::<handover::HandedOver>(),
    Kind::of::<handover::HandoverWithdrawn>(),
];
