//! A person's notices.

use askama::Template;

use crate::web::dates::Moment;
use crate::web::shell::Shell;

/// One notice.
#[derive(Debug, Clone)]
pub struct NoticeRow {
    /// When.
    pub at: Moment,
    /// What, one sentence.
    pub sentence: String,
    /// A whole link to where something can be done.
    pub link: Option<String>,
    /// The numbers of the reader's notes that it speaks of.
    pub notes: Vec<i64>,
    /// Was it not read yet?
    pub is_new: bool,
}

/// The notices, newest first; `POST /notices/read` marks all as read.
#[derive(Debug, Clone, Template)]
#[template(path = "notices/notices.html")]
pub struct NoticesPage {
    /// The frame.
    pub shell: Shell,
    /// The notices.
    pub notices: Vec<NoticeRow>,
    /// Leads to older ones: a query.
    pub older: Option<String>,
}
