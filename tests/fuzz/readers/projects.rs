//! Projects, as files, as links, and as the sheets on which they are kept: whatever is brought opens or is refused in words, and
//! what opened comes back from what is written of it.

use loopwright_project::change::since_seen;
use loopwright_project::file::{self, FileError, Reading};
use loopwright_project::knitting::{on, repeats_done, rows_done, taps, times};
use loopwright_project::{
    Answered, Outcome, Project, Sheets, Texts, Toolbox, Totals, Trouble, Typed, derive, link, sum,
};

/// Reads the text as a file.
pub fn a_file_that_opens_comes_back(text: &str) {
    comes_back(text, file::read(text));
}

/// Reads the text as a link.
pub fn a_link_that_opens_comes_back(text: &str) {
    comes_back(text, link::read(text));
}

fn comes_back(text: &str, read: Result<Reading, FileError>) {
    let project = match read {
        Ok(Reading { project, .. }) => project,
        Err(why) => {
            assert!(!why.to_string().is_empty(), "{text:?}");
            return;
        }
    };
    assert_eq!(file::parse(&file::print(&project)), Ok(project.clone()), "{text:?}");
    if link::fits(&project) {
        assert_eq!(link::parse(&link::print(&project)), Ok(project.clone()), "{text:?}");
    }
    is_derived(&project);
}

/// Reads the text as sheets: each line a sheet, a field, a text and a unit, parted by `|`. Lines end in `;`.
pub fn any_sheets_are_a_project(text: &str) {
    let mut sheets = Sheets::new();
    for line in text.split(';') {
        let mut cells = line.split('|').map(str::to_owned);
        let [sheet, field, text, unit] = [cells.next(), cells.next(), cells.next(), cells.next()];
        let (Some(sheet), Some(field), Some(text)) = (sheet, field, text) else {
            continue;
        };
        sheets.entry(sheet).or_default().insert(field, Typed { text, unit });
    }
    for texts in sheets.values() {
        let taps = taps(texts);
        let _ = (
            rows_done(&taps),
            repeats_done(&taps, 1),
            on(&taps, u64::MAX),
            times(&taps),
        );
    }
    let project = Project::from_sheets(&sheets);
    let kept = project.to_sheets();
    assert_eq!(Project::from_sheets(&kept).to_sheets(), kept, "{text:?}");
    is_derived(&project);
}

/// All that follows from a project, in whatever state it is.
fn is_derived(project: &Project) {
    let sheet = derive(project, &Counting);
    let _ = (since_seen(project, &Counting, &sheet), sum(project, &sheet, "rows"));
    let bundled: usize = project
        .bundles(&sheet)
        .iter()
        .map(|bundle| project.steps.iter().filter(|step| bundle.holds(step.id)).count())
        .sum();
    assert_eq!(bundled, project.steps.len(), "each step is knitted once");
}

/// One tool, which hands on the count it is given, and takes as many rows.
struct Counting;

impl Toolbox for Counting {
    fn asks(&self, _: &str, _: &Texts) -> Vec<(String, String)> {
        vec![("stitches".into(), "cast_on".into())]
    }

    fn takes(&self, _: &str, _: &str, typed: &Typed) -> bool {
        typed.text.parse::<u32>().is_ok()
    }

    fn answer(&self, tool: &str, fields: &Texts) -> Answered {
        let stitches = fields.get("stitches").and_then(|typed| typed.text.parse().ok());
        match stitches {
            None => Err(vec![Trouble::NoSuchTool]),
            Some(count) => Ok(Outcome {
                headline: tool.to_owned(),
                gifts: [("after".to_owned(), Typed::plain(u32::to_string(&count)))].into(),
                totals: Totals {
                    before: Some(count),
                    after: Some(count),
                    rows: Some(count),
                    yarn_mm: Some(u64::from(count)),
                    balls: Some(count),
                },
                ..Outcome::default()
            }),
        }
    }
}
