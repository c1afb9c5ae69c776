//! Written lines: no text panics or goes on for ever, every place lies in the text, and what is printed reads the same.

#![no_main]

use libfuzzer_sys::fuzz_target;
use loopwright::written::{Start, nearest, read, work};

fuzz_target!(|given: (u8, u16, &str)| {
    let (sizes, stitches, text) = given;
    let sizes = usize::from(sizes % 4);
    let (pattern, faults) = read(text, sizes, &[]);
    for fault in &faults {
        assert!(text.get(fault.place.range()).is_some());
    }
    let start = Start::with(u32::from(stitches));
    for worked in work(&pattern, &start, 0) {
        assert!(worked.place.is_none_or(|place| text.get(place.range()).is_some()));
    }
    for at in 0..pattern.lines.len().min(4) {
        let _ = nearest(&pattern, &start, 0, at);
    }
    for line in pattern
        .lines
        .iter()
        .filter(|line| line.is_whole && !line.items.is_empty())
    {
        let printed = line.to_string();
        let (again, faults) = read(&printed, sizes, &[]);
        assert!(faults.is_empty() && again.lines.len() == 1);
        assert_eq!(again.lines[0].to_string(), printed);
    }
});
