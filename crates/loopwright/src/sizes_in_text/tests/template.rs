//! A line with its lists as `{96|108|120}`, from which the text of one size follows.

/// The text of one size: of each list the entry of that place.
pub(super) fn of_size(template: &str, size: usize) -> String {
    let mut text = String::new();
    let mut rest = template;
    while let Some((before, behind)) = rest.split_once('{') {
        let (list, behind) = behind.split_once('}').expect("a list of a template is closed");
        let entries: Vec<&str> = list.split('|').collect();
        text.push_str(before);
        text.push_str(
            entries
                .get(size)
                .unwrap_or_else(|| panic!("{template} has no size {size}")),
        );
        rest = behind;
    }
    text + rest
}
