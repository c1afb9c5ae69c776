//! A store for tests: it keeps what it is given, except at the steps where the test says that it fails.

use super::{Entry, Later, Line, Memory, Store, StoreError};
use std::cell::RefCell;
use std::collections::VecDeque;

/// A store that fails on plan. Shared by reference, so that the test can look into it.
pub struct Faulty {
    inside: Memory,
    plan: RefCell<VecDeque<Option<StoreError>>>,
    /// What was asked of it, in order.
    pub asked: RefCell<Vec<&'static str>>,
}

impl Faulty {
    /// One item a step: `None` succeeds, an error fails. After the plan's end everything succeeds.
    pub fn new(log: Vec<Line>, plan: impl IntoIterator<Item = Option<StoreError>>) -> Self {
        Self {
            inside: Memory::found(log),
            plan: RefCell::new(plan.into_iter().collect()),
            asked: RefCell::default(),
        }
    }

    /// Forgets everything, and says so at the next step, as the browser's database does.
    pub fn clear(&self) {
        self.inside.clear();
        self.plan.borrow_mut().push_front(Some(StoreError::Cleared));
    }

    /// Has lost everything, and says nothing, as a browser may after a write that failed.
    pub fn lose(&self) {
        self.inside.clear();
    }

    fn step(&self, name: &'static str) -> Result<(), StoreError> {
        self.asked.borrow_mut().push(name);
        match self.plan.borrow_mut().pop_front().flatten() {
            Some(error) => Err(error),
            None => Ok(()),
        }
    }
}

impl Store for std::rc::Rc<Faulty> {
    fn load(&self) -> Later<'_, Vec<Line>> {
        Box::pin(async {
            self.step("load")?;
            self.inside.load().await
        })
    }

    fn append(&self, entries: Vec<Entry>) -> Later<'_, ()> {
        Box::pin(async {
            self.step("append")?;
            self.inside.append(entries).await
        })
    }

    fn compact(&self) -> Later<'_, usize> {
        Box::pin(async {
            self.step("compact")?;
            self.inside.compact().await
        })
    }

    fn write_anew(&self, entries: Vec<Entry>) -> Later<'_, ()> {
        Box::pin(async {
            self.step("write anew")?;
            self.inside.write_anew(entries).await
        })
    }

    fn renew(&self) -> Later<'_, Vec<Line>> {
        Box::pin(async {
            self.step("renew")?;
            self.inside.load().await
        })
    }
}
