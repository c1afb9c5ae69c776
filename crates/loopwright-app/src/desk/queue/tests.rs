//! What is tried, in which order, and what is said meanwhile.

use super::*;
use crate::store::Typed;

fn entry(text: &str) -> Entry {
    Entry::new("spacing", "stitches", Some(Typed::plain(text)))
}

fn loaded() -> Queue {
    let mut queue = Queue::new(None);
    assert_eq!(queue.next(), Some(Job::Load));
    assert_eq!(queue.finish(Ok(Done::Loaded(vec![]))), Some(Sheets::default()));
    queue
}

#[test]
fn what_is_typed_while_a_batch_is_on_its_way_goes_in_the_next() {
    let mut queue = loaded();
    queue.push(vec![entry("1")]);
    assert_eq!(queue.next(), Some(Job::Append(vec![entry("1")])));
    queue.push(vec![entry("13")]);
    queue.push(vec![entry("132")]);
    assert_eq!(queue.next(), None, "one job at a time");
    queue.finish(Ok(Done::Appended));
    assert_eq!(queue.keeping(), Keeping::Writing);
    assert_eq!(queue.next(), Some(Job::Append(vec![entry("13"), entry("132")])));
    assert_eq!(queue.keeping(), Keeping::Writing);
    queue.finish(Ok(Done::Appended));
    assert_eq!((queue.next(), queue.keeping()), (None, Keeping::Kept));
}

#[test]
fn a_failed_batch_goes_again_before_what_came_later() {
    let mut queue = loaded();
    queue.push(vec![entry("1")]);
    queue.next();
    queue.push(vec![entry("13")]);
    queue.finish(Err(StoreError::Full));
    assert_eq!(queue.next(), Some(Job::Append(vec![entry("1"), entry("13")])));
    queue.finish(Err(StoreError::Full));
    assert_eq!(
        (queue.next(), queue.keeping()),
        (None, Keeping::Failed(StoreError::Full))
    );
}

#[test]
fn after_a_failure_only_the_last_words_are_tried() {
    let mut queue = loaded();
    queue.push(vec![entry("much too long")]);
    for _ in 0..2 {
        queue.next();
        queue.finish(Err(StoreError::Full));
    }
    queue.push(vec![entry("short")]);
    assert_eq!(queue.next(), Some(Job::Append(vec![entry("short")])));
}

#[test]
fn what_is_typed_during_a_load_lies_on_top_of_it() {
    let mut queue = Queue::new(None);
    queue.next();
    queue.push(vec![entry("2")]);
    let sheets = queue.finish(Ok(Done::Loaded(vec![Line::Known(entry("1"))])));
    let mut expected = Sheets::default();
    expected.apply(&entry("2"));
    assert_eq!(sheets, Some(expected));
    assert_eq!(queue.keeping(), Keeping::Writing);
}

#[test]
fn a_guest_is_never_said_to_be_kept() {
    let mut queue = Queue::new(Some(StoreError::Guest));
    queue.next();
    queue.finish(Ok(Done::Loaded(vec![])));
    assert_eq!(queue.keeping(), Keeping::MemoryOnly(StoreError::Guest));
}

/// Has the next job end so.
fn end(queue: &mut Queue, outcome: Result<Done, StoreError>) -> Option<Sheets> {
    assert!(queue.next().is_some(), "nothing to do");
    queue.finish(outcome)
}

fn sheets(entries: &[Entry]) -> Sheets {
    let mut sheets = Sheets::default();
    sheets.apply_all(entries);
    sheets
}

#[test]
fn where_a_newer_version_has_the_storage_nothing_is_tried_again() {
    let mut queue = loaded();
    queue.reload();
    end(&mut queue, Err(StoreError::Newer));
    assert_eq!(queue.keeping(), Keeping::Superseded { is_all_kept: true });
    queue.push(vec![entry("1")]);
    queue.reload();
    assert_eq!(queue.next(), None);
    assert_eq!(queue.keeping(), Keeping::Superseded { is_all_kept: false });
}

#[test]
fn what_was_on_its_way_to_a_newer_versions_storage_is_not_said_to_be_kept() {
    let mut queue = loaded();
    queue.push(vec![entry("1")]);
    end(&mut queue, Err(StoreError::Newer));
    assert_eq!(queue.keeping(), Keeping::Superseded { is_all_kept: false });
    let mut queue = Queue::new(None);
    end(&mut queue, Err(StoreError::Newer));
    assert_eq!(queue.keeping(), Keeping::MemoryOnly(StoreError::Newer));
    assert_eq!(queue.next(), None);
}

#[test]
fn after_the_storage_was_cleared_all_is_kept_anew_when_she_says_so() {
    let mut queue = loaded();
    queue.push(vec![entry("1")]);
    end(&mut queue, Ok(Done::Appended));
    queue.reload();
    assert_eq!(
        end(&mut queue, Err(StoreError::Cleared)),
        None,
        "the page is not emptied"
    );
    assert_eq!(queue.keeping(), Keeping::Cleared(None));
    let other = Entry::new("tail", "stitches", Some(Typed::plain("96")));
    queue.push(vec![other.clone()]);
    assert_eq!((queue.next(), queue.keeping()), (None, Keeping::Cleared(None)));
    queue.write_anew();
    end(&mut queue, Err(StoreError::Full));
    assert_eq!(queue.keeping(), Keeping::Cleared(Some(StoreError::Full)));
    queue.write_anew();
    assert_eq!(queue.next(), Some(Job::WriteAnew(vec![entry("1"), other])));
    queue.push(vec![entry("13")]);
    queue.finish(Ok(Done::Appended));
    assert_eq!(queue.next(), Some(Job::Append(vec![entry("13")])), "typed meanwhile");
}

#[test]
fn after_a_failed_write_a_copy_and_a_log_that_agrees_end_the_doubt() {
    let mut queue = loaded();
    queue.push(vec![entry("1")]);
    end(&mut queue, Err(StoreError::Full));
    end(&mut queue, Ok(Done::Appended));
    assert_eq!(queue.keeping(), Keeping::KeptInDoubt);
    queue.push(vec![entry("13")]);
    end(&mut queue, Ok(Done::Appended));
    assert_eq!(queue.keeping(), Keeping::KeptInDoubt, "from then on");
    queue.copy_was_saved();
    // The log has lost what it said it had: nothing is taken from the page, and it is still in doubt.
    assert_eq!(end(&mut queue, Ok(Done::Renewed(vec![]))), None);
    assert_eq!(queue.keeping(), Keeping::KeptInDoubt);
    queue.copy_was_saved();
    end(&mut queue, Err(StoreError::Dropped));
    assert_eq!(queue.keeping(), Keeping::KeptInDoubt);
    queue.reload();
    let log = vec![Line::Known(entry("13"))];
    assert_eq!(
        end(&mut queue, Ok(Done::Loaded(log.clone()))),
        Some(sheets(&[entry("13")]))
    );
    assert_eq!(queue.keeping(), Keeping::KeptInDoubt, "no copy was saved for that");
    queue.copy_was_saved();
    assert_eq!(queue.next(), Some(Job::Renew));
    // What is typed while the storage is put away waits, and takes no part in it.
    queue.push(vec![entry("132")]);
    queue.finish(Ok(Done::Renewed(log)));
    assert_eq!(queue.keeping(), Keeping::Writing);
    end(&mut queue, Ok(Done::Appended));
    assert_eq!(queue.keeping(), Keeping::Kept);
}

#[test]
fn a_copy_that_was_saved_while_nothing_could_be_kept_ends_no_doubt() {
    let mut queue = loaded();
    queue.push(vec![entry("1")]);
    end(&mut queue, Err(StoreError::Full));
    end(&mut queue, Err(StoreError::Full));
    queue.copy_was_saved();
    queue.push(vec![entry("13")]);
    end(&mut queue, Ok(Done::Appended));
    assert_eq!((queue.next(), queue.keeping()), (None, Keeping::KeptInDoubt));
}

#[test]
fn a_connection_that_was_dropped_puts_nothing_in_doubt() {
    let mut queue = loaded();
    queue.push(vec![entry("1")]);
    end(&mut queue, Err(StoreError::Dropped));
    end(&mut queue, Ok(Done::Appended));
    assert_eq!(queue.keeping(), Keeping::Kept);
}
