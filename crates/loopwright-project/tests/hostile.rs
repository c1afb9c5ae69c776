//! Files and links that are no project, or not quite one, line by line from `hostile.txt`: each says what comes of it.

use loopwright_project::{
    file::{self, FileError, MadeBy, Reading},
    link,
};

/// What comes of a text, in the words of the list.
fn outcome(read: Result<Reading, FileError>) -> String {
    match read {
        Err(why) => why.to_string(),
        Ok(reading) => {
            let opens = match reading.made_by {
                MadeBy::ThisVersion => "opens",
                MadeBy::LaterVersion => "opens to look at",
            };
            let places: Vec<String> = reading.passed_over.iter().map(ToString::to_string).collect();
            if places.is_empty() {
                opens.into()
            } else {
                format!("{opens} without {}", places.join(", "))
            }
        }
    }
}

#[test]
fn each_stranger_comes_to_what_the_list_says() {
    let lines = include_str!("hostile.txt")
        .lines()
        .filter(|line| !line.starts_with('#') && !line.is_empty());
    let mut count = 0;
    for line in lines {
        let mut cells = line.splitn(3, '|').map(str::trim);
        let [Some(kind), Some(expected), Some(text)] = [cells.next(), cells.next(), cells.next()] else {
            panic!("a line of the list has three cells: {line}");
        };
        let read = match kind {
            "file" => file::read(text),
            "link" => link::read(text),
            kind => panic!("no kind of the list: {kind}"),
        };
        assert_eq!(outcome(read), expected, "{line}");
        count += 1;
    }
    assert!(count >= 40, "only {count} lines were read");
}
