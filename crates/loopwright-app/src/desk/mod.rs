//! The desk: what was typed, readable and writable from every view, and what may be said about its keeping.
//!
//! A write changes the page at once and goes to the store behind it. What may be said about the storage is no part of what
//! makes two desks differ: when a keystroke is kept the footer is drawn anew, and the page above it is not.

mod facts;
mod held;
pub mod hers;
mod keeper;
mod others;
mod persist;
mod place;
mod provider;
mod queue;
mod state;
pub mod undo;

pub use held::Held;
pub use persist::Persistence;
pub use provider::use_desk;
pub use queue::Keeping;
pub use state::{Announcement, Status};
pub use undo::Back;

use crate::store::{Entry, Fields, ProjectId, Sheets, StoreError, Typed};
use gloo_utils::document_element;
use held::FieldName;
use keeper::Keeper;
use loopwright_project::{Project, StepId};
use place::Place;
use state::{Action, State};
use std::rc::Rc;
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

/// What views read and write. Cheap to clone.
#[derive(Clone)]
pub struct Desk {
    live: UseReducerHandle<State>,
    keeper: Rc<Keeper>,
    moment: Moment,
    place: Place,
}

/// What lay on the desk when it was handed out.
#[derive(Clone, PartialEq)]
struct Moment {
    sheets: Rc<Sheets>,
    announcement: Announcement,
    laid: u32,
    held: Option<Held>,
}

impl PartialEq for Desk {
    /// Two desks are equal if nothing that lies on them changed between the moments they were handed out.
    fn eq(&self, other: &Self) -> bool {
        self.moment == other.moment && self.place == other.place && Rc::ptr_eq(&self.keeper, &other.keeper)
    }
}

impl Desk {
    /// The newest sheets, also in a callback that was made before the last change.
    pub fn newest(&self) -> Rc<Sheets> {
        self.live.sheets.clone()
    }

    /// The newest sheets, as far as they are to be kept.
    pub fn to_be_kept(&self) -> Sheets {
        hers::without_unkept(&self.live.sheets)
    }

    /// Whether something lies here that is on this page only.
    pub fn has_unkept(&self) -> bool {
        hers::has_unkept(&self.live.sheets)
    }

    /// The project that is open.
    pub fn project_id(&self) -> ProjectId {
        place::open_project(&self.live.sheets)
    }

    /// All that is known of the project that is open.
    pub fn project(&self) -> Project {
        Project::from_sheets(&self.live.sheets.of_project(self.project_id()))
    }

    /// The same desk, where the sheet of a tool is that of a step.
    pub fn at_step(&self, tool: &'static str, step: StepId) -> Self {
        Self {
            place: Place::at_step(tool, step),
            ..self.clone()
        }
    }

    /// Whether it keeps nothing: an example, or a page inside another one.
    pub fn is_guest(&self) -> bool {
        self.keeper.is_guest()
    }

    /// The step at which this desk stands, if at any.
    pub const fn step(&self) -> Option<StepId> {
        self.place.step()
    }

    /// The name under which a sheet of the open project is kept.
    fn stored(&self, sheet: &str) -> String {
        self.place.stored(&self.live.sheets, sheet)
    }

    /// What stands in a field now, also in a callback older than the last change: a tap that counts may start from it.
    pub fn text(&self, sheet: &str, field: &str) -> Option<Typed> {
        self.live.sheets.text(&self.stored(sheet), field).cloned()
    }

    /// All fields of a sheet now.
    pub fn fields(&self, sheet: &str) -> Fields {
        self.live.sheets.fields(&self.stored(sheet))
    }

    /// Looks at a sheet as it lies now, without a copy of it: taps are many.
    pub fn look<Seen>(&self, sheet: &str, see: impl FnOnce(&Fields) -> Seen) -> Seen {
        match self.live.sheets.sheet(&self.stored(sheet)) {
            Some(fields) => see(fields),
            None => see(&Fields::new()),
        }
    }

    /// A field as it is kept, for the element in which is typed.
    pub fn kept_as(&self, sheet: &str, field: &str) -> String {
        self.field_name(sheet, field).print()
    }

    /// What another window wrote into a field while she was typing there.
    pub fn held(&self, sheet: &str, field: &str) -> Option<Held> {
        let held = self.live.held.clone();
        held.filter(|held| held.name == self.field_name(sheet, field))
    }

    fn field_name(&self, sheet: &str, field: &str) -> FieldName {
        FieldName {
            sheet: self.stored(sheet),
            field: field.to_owned(),
        }
    }

    /// Takes what another window wrote into the field in which she is typing.
    pub fn take_theirs(&self) {
        self.live.dispatch(Action::GaveWay { is_left: false });
    }

    /// Puts back what stood in a field before another window wrote there.
    pub fn put_back_held(&self, held: &Held) {
        self.write_stored(vec![held.putting_back()]);
    }

    /// How many stored records no version of this page wrote that this one knows.
    pub fn strange_records(&self) -> usize {
        self.keeper.strange_records()
    }

    /// What may be said about the storage.
    pub fn status(&self) -> Status {
        self.live.status.clone()
    }

    /// What there is to say about the last tap.
    pub fn announcement(&self) -> Announcement {
        self.live.announcement.clone()
    }

    /// Says something about a tap, until the next change.
    pub fn announce(&self, announcement: Announcement) {
        self.live.dispatch(Action::Announced(announcement));
    }

    /// Sets a field, or takes it away. Seen at once, kept soon after.
    pub fn write(&self, sheet: &str, field: &str, typed: Option<Typed>) {
        self.write_many(vec![Entry::new(sheet, field, typed)]);
    }

    /// Several changes of sheets of the open project as one: all are kept or none. Each field once.
    pub fn write_many(&self, mut entries: Vec<Entry>) {
        for entry in &mut entries {
            entry.sheet = self.stored(&entry.sheet);
        }
        self.write_stored(entries);
    }

    /// Several changes of sheets under the names they are kept under as one: all are kept or none. Each field once.
    pub fn write_stored(&self, mut entries: Vec<Entry>) {
        entries.retain(|entry| self.live.sheets.text(&entry.sheet, &entry.field) != entry.typed.as_ref());
        entries.extend(facts::remembered(&self.live.sheets, &entries));
        entries.extend(hers::taken_back(&self.live.sheets, &entries));
        if entries.is_empty() {
            return;
        }
        let kept = hers::to_be_kept(&self.live.sheets, &entries);
        let leaves_behind = hers::leaves_behind(&self.live.sheets, &kept);
        self.live.dispatch(Action::Wrote(entries));
        if !kept.is_empty() {
            self.keeper.push(kept);
        }
        if leaves_behind {
            self.keeper.shorten();
        }
        self.start_writing();
        if !self.keeper.is_guest() {
            self.mark_touched();
        }
    }

    /// Makes a sheet exactly what a link says; what lay there can be put back.
    pub fn open_link(&self, sheet: &str, fields: &Fields) {
        self.hand_over(sheet, fields, &Fields::new());
    }

    /// Makes a sheet what another answer hands on, with the references from where fields get their text.
    pub fn hand_over(&self, sheet: &str, fields: &Fields, from: &Fields) {
        let [fields, from] = [fields.clone(), from.clone()];
        let laid = undo::Laid { fields, from };
        self.lay(undo::lay_over(&self.live.sheets, &self.stored(sheet), &laid));
    }

    /// How many times something was laid over a sheet as a whole in this visit.
    pub fn laid(&self) -> u32 {
        self.live.laid
    }

    /// What there is to put back, if it differs from what lies there.
    pub fn back(&self, sheet: &str) -> Option<Back> {
        undo::back(&self.live.sheets, &self.stored(sheet))
    }

    /// Puts back what lay on a sheet before a link or a copy was laid over it.
    pub fn put_back(&self, sheet: &str) {
        self.lay(undo::put_back(&self.live.sheets, &self.stored(sheet)));
    }

    /// Keeps everything now; `Ok` only when it is kept.
    pub async fn flush(&self) -> Result<(), StoreError> {
        self.keeper.flush().await
    }

    /// Has all that lies on the desk kept anew, after the storage was cleared.
    pub fn keep_anew(&self) {
        self.keeper.write_anew();
        self.start_writing();
    }

    /// Notes that a copy of all that lies on the desk was saved.
    pub fn copy_was_saved(&self) {
        self.keeper.copy_was_saved();
        self.start_writing();
    }

    fn new(live: UseReducerHandle<State>, keeper: Rc<Keeper>) -> Self {
        let moment = Moment {
            sheets: live.sheets.clone(),
            announcement: live.announcement.clone(),
            laid: live.laid,
            held: live.held.clone(),
        };
        Self {
            live,
            keeper,
            moment,
            place: Place::default(),
        }
    }

    /// The same desk, handed out anew.
    pub fn as_it_lies(&self) -> Self {
        Self {
            place: self.place,
            ..Self::new(self.live.clone(), self.keeper.clone())
        }
    }

    fn lay(&self, entries: Vec<Entry>) {
        if !entries.is_empty() {
            self.live.dispatch(Action::Laid);
            self.write_stored(entries);
        }
    }

    fn start_writing(&self) {
        let keeper = self.keeper.clone();
        spawn_local(async move { keeper.run().await });
    }

    /// At the first change of this visit: the page must not be reloaded unasked any more, and the browser is asked
    /// not to forget.
    fn mark_touched(&self) {
        const TOUCHED: &str = "data-touched";
        let root = document_element();
        if !root.has_attribute(TOUCHED) {
            let _ = root.set_attribute(TOUCHED, "yes");
            let dispatch = self.live.dispatcher();
            spawn_local(async move {
                dispatch.dispatch(Action::Persistence(persist::ask().await));
            });
        }
    }
}
