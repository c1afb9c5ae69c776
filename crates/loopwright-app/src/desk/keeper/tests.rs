//! A keeper beside stores that fail in every way a browser's does.

use super::*;
use crate::store::{Faulty, Line, Memory, Typed, fold};
use std::rc::Rc;

type Heard = Rc<RefCell<Vec<News>>>;

fn entry(text: &str) -> Entry {
    Entry::new("spacing", "stitches", Some(Typed::plain(text)))
}

fn sheets(texts: &[&str]) -> Sheets {
    let log: Vec<Line> = texts.iter().map(|text| Line::Known(entry(text))).collect();
    fold(&log)
}

fn keeper(store: &Rc<Faulty>) -> (Keeper, Heard) {
    let heard = Heard::default();
    let ear = heard.clone();
    let tell = move |news| ear.borrow_mut().push(news);
    (Keeper::new(Box::new(store.clone()), tell), heard)
}

fn said(heard: &Heard) -> Keeping {
    let keeping = |news: &News| match news {
        News::Keeping(keeping) => Some(keeping.clone()),
        News::Loaded(_) | News::Word(_) => None,
    };
    heard.borrow().iter().rev().find_map(keeping).unwrap()
}

fn stored(store: &Rc<Faulty>) -> Sheets {
    fold(&pollster::block_on(store.load()).unwrap())
}

#[test]
fn what_was_typed_is_kept_in_one_batch_and_said_only_then() {
    let store = Rc::new(Faulty::new(vec![], []));
    let (keeper, heard) = keeper(&store);
    pollster::block_on(keeper.run());
    assert_eq!(said(&heard), Keeping::Kept);
    keeper.push(vec![entry("1")]);
    keeper.push(vec![entry("13")]);
    assert_eq!(said(&heard), Keeping::Writing);
    pollster::block_on(keeper.run());
    assert_eq!(said(&heard), Keeping::Kept);
    assert_eq!(*store.asked.borrow(), ["load", "append"]);
    assert_eq!(stored(&store), sheets(&["13"]));
}

#[test]
fn one_failure_is_tried_again_and_not_spoken_of() {
    let store = Rc::new(Faulty::new(vec![], [None, Some(StoreError::Dropped)]));
    let (keeper, heard) = keeper(&store);
    keeper.push(vec![entry("1")]);
    assert_eq!(pollster::block_on(keeper.flush()), Ok(()));
    assert_eq!(*store.asked.borrow(), ["load", "append", "append"]);
    assert!(
        !heard
            .borrow()
            .contains(&News::Keeping(Keeping::Failed(StoreError::Dropped)))
    );
    assert_eq!(stored(&store), sheets(&["1"]));
}

#[test]
fn two_failures_are_said_and_the_next_change_brings_everything() {
    let full = || Some(StoreError::Full);
    let store = Rc::new(Faulty::new(vec![], [None, full(), full()]));
    let (keeper, heard) = keeper(&store);
    keeper.push(vec![entry("1")]);
    assert_eq!(pollster::block_on(keeper.flush()), Err(StoreError::Full));
    assert_eq!(said(&heard), Keeping::Failed(StoreError::Full));
    let other = Entry::new("spacing", "change", Some(Typed::plain("k2tog")));
    keeper.push(vec![other.clone()]);
    assert_eq!(said(&heard), Keeping::Failed(StoreError::Full));
    pollster::block_on(keeper.run());
    assert_eq!(said(&heard), Keeping::KeptInDoubt);
    let mut both = sheets(&["1"]);
    both.apply(&other);
    assert_eq!(stored(&store), both);
}

#[test]
fn without_storage_the_page_goes_on_in_memory_and_says_so() {
    let denied = || Some(StoreError::Denied);
    let store = Rc::new(Faulty::new(vec![], [denied(), denied()]));
    let (keeper, heard) = keeper(&store);
    pollster::block_on(keeper.run());
    assert_eq!(said(&heard), Keeping::MemoryOnly(StoreError::Denied));
    // The storage comes back: what was typed meanwhile lies on top of what was found.
    keeper.push(vec![entry("1")]);
    pollster::block_on(keeper.run());
    assert_eq!(said(&heard), Keeping::Kept);
    assert!(heard.borrow().contains(&News::Loaded(sheets(&["1"]))));
    assert_eq!(stored(&store), sheets(&["1"]));
}

#[test]
fn a_slow_load_is_said_and_still_welcome() {
    let found = vec![Line::Known(entry("132"))];
    let store = Rc::new(Faulty::new(found, []));
    let (keeper, heard) = keeper(&store);
    keeper.is_slow();
    assert_eq!(said(&heard), Keeping::MemoryOnly(StoreError::Slow));
    pollster::block_on(keeper.run());
    assert_eq!(said(&heard), Keeping::Kept);
    assert!(heard.borrow().contains(&News::Loaded(sheets(&["132"]))));
}

#[test]
fn another_tabs_words_are_read_after_ours_are_kept() {
    let store = Rc::new(Faulty::new(vec![], []));
    let (keeper, heard) = keeper(&store);
    pollster::block_on(keeper.run());
    let theirs = Entry::new("spacing", "change", Some(Typed::plain("ssk")));
    pollster::block_on(store.append(vec![theirs.clone()])).unwrap();
    keeper.push(vec![entry("1")]);
    keeper.reload();
    pollster::block_on(keeper.run());
    let mut both = sheets(&["1"]);
    both.apply(&theirs);
    assert!(heard.borrow().contains(&News::Loaded(both)));
    assert_eq!(*store.asked.borrow(), ["load", "append", "append", "load"]);
}

#[test]
fn a_failed_reload_takes_nothing_away() {
    let store = Rc::new(Faulty::new(vec![], [None, Some(StoreError::Denied)]));
    let (keeper, heard) = keeper(&store);
    pollster::block_on(keeper.run());
    keeper.reload();
    pollster::block_on(keeper.run());
    assert_eq!(said(&heard), Keeping::Kept);
}

#[test]
fn a_long_log_is_shortened_and_says_the_same() {
    let long: Vec<Line> = (0..3_000).map(|n| Line::Known(entry(&n.to_string()))).collect();
    let store = Rc::new(Faulty::new(long, []));
    let (keeper, heard) = keeper(&store);
    pollster::block_on(keeper.run());
    assert_eq!(*store.asked.borrow(), ["load", "compact"]);
    assert_eq!(pollster::block_on(store.load()).unwrap().len(), 1);
    assert_eq!(stored(&store), sheets(&["2999"]));
    assert_eq!(said(&heard), Keeping::Kept);
}

#[test]
fn a_log_that_cannot_be_shortened_is_not_a_knitters_trouble() {
    let long: Vec<Line> = (0..3_000).map(|n| Line::Known(entry(&n.to_string()))).collect();
    let store = Rc::new(Faulty::new(long, [None, Some(StoreError::Dropped)]));
    let (keeper, heard) = keeper(&store);
    pollster::block_on(keeper.run());
    keeper.push(vec![entry("1")]);
    pollster::block_on(keeper.run());
    assert_eq!(*store.asked.borrow(), ["load", "compact", "append"]);
    assert_eq!(said(&heard), Keeping::Kept);
}

#[test]
fn a_guest_forgets_and_is_content() {
    let heard = Heard::default();
    let ear = heard.clone();
    let store = Memory::holding([entry("132")]);
    let keeper = Keeper::new(Box::new(store), move |news| ear.borrow_mut().push(news));
    assert_eq!(pollster::block_on(keeper.flush()), Ok(()));
    assert!(heard.borrow().contains(&News::Loaded(sheets(&["132"]))));
    assert_eq!(said(&heard), Keeping::MemoryOnly(StoreError::Guest));
}

#[test]
fn a_disc_that_was_full_once_is_said_until_a_copy_is_saved_and_the_log_agrees() {
    let store = Rc::new(Faulty::new(vec![], [None, Some(StoreError::Full)]));
    let (keeper, heard) = keeper(&store);
    keeper.push(vec![entry("1")]);
    assert_eq!(pollster::block_on(keeper.flush()), Ok(()));
    assert_eq!(said(&heard), Keeping::KeptInDoubt);
    keeper.copy_was_saved();
    pollster::block_on(keeper.run());
    assert_eq!(said(&heard), Keeping::Kept);
    assert_eq!(*store.asked.borrow(), ["load", "append", "append", "renew"]);
    let words: Vec<Word> = heard
        .borrow()
        .iter()
        .filter_map(|news| match news {
            News::Word(word) => Some(*word),
            News::Loaded(_) | News::Keeping(_) => None,
        })
        .collect();
    assert_eq!(words, [Word::InDoubt, Word::News, Word::LetGo, Word::Whole]);
}

#[test]
fn a_storage_that_has_lost_what_it_said_it_kept_is_not_called_kept() {
    let store = Rc::new(Faulty::new(vec![], [None, Some(StoreError::Broken("full".into()))]));
    let (keeper, heard) = keeper(&store);
    keeper.push(vec![entry("1")]);
    assert_eq!(pollster::block_on(keeper.flush()), Ok(()));
    store.lose();
    keeper.copy_was_saved();
    pollster::block_on(keeper.run());
    assert_eq!(said(&heard), Keeping::KeptInDoubt);
}

#[test]
fn another_window_that_failed_is_believed() {
    let store = Rc::new(Faulty::new(vec![], []));
    let (keeper, heard) = keeper(&store);
    pollster::block_on(keeper.run());
    keeper.hear(Word::InDoubt);
    assert_eq!(said(&heard), Keeping::KeptInDoubt);
    keeper.hear(Word::Whole);
    pollster::block_on(keeper.run());
    assert_eq!(said(&heard), Keeping::Kept);
    assert_eq!(*store.asked.borrow(), ["load", "load"]);
}

#[test]
fn a_storage_that_was_cleared_takes_nothing_from_the_page_and_is_filled_anew() {
    let store = Rc::new(Faulty::new(vec![], []));
    let (keeper, heard) = keeper(&store);
    keeper.push(vec![entry("1")]);
    assert_eq!(pollster::block_on(keeper.flush()), Ok(()));
    store.clear();
    let other = Entry::new("spacing", "change", Some(Typed::plain("ssk")));
    keeper.push(vec![other.clone()]);
    assert_eq!(pollster::block_on(keeper.flush()), Err(StoreError::Cleared));
    assert_eq!(said(&heard), Keeping::Cleared(None));
    assert_eq!(stored(&store), Sheets::default(), "half of it would be no copy");
    keeper.write_anew();
    assert_eq!(pollster::block_on(keeper.flush()), Ok(()));
    let mut both = sheets(&["1"]);
    both.apply(&other);
    assert_eq!((said(&heard), stored(&store)), (Keeping::Kept, both));
}

#[test]
fn a_newer_version_of_the_page_is_given_way_to() {
    let store = Rc::new(Faulty::new(vec![], [None, Some(StoreError::Newer)]));
    let (keeper, heard) = keeper(&store);
    keeper.push(vec![entry("1")]);
    assert_eq!(pollster::block_on(keeper.flush()), Err(StoreError::Newer));
    assert_eq!(said(&heard), Keeping::Superseded { is_all_kept: false });
    assert_eq!(pollster::block_on(keeper.flush()), Err(StoreError::Newer));
    assert_eq!(*store.asked.borrow(), ["load", "append"], "nothing is written any more");
}
