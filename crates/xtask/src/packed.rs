//! Files that stand packed beside themselves, `name.br` and `name.gz`, so that a host need not pack them at each request.
//!
//! Only what packing makes smaller by a tenth: a picture is packed already. The same bytes always give the same bytes.

use crate::{
    files::Files,
    sizes::{brotli, gzip},
};
use anyhow::Result;

/// What packs a file.
type Pack = fn(&[u8]) -> Result<Vec<u8>>;

/// The endings, each with what the file is packed by.
const ENDINGS: [(&str, Pack); 2] = [(".br", brotli), (".gz", gzip)];

/// The packed files that belong beside these.
pub fn beside(files: &Files) -> Result<Files> {
    let mut packed = Files::new();
    for (path, bytes) in files {
        for (ending, pack) in ENDINGS {
            let smaller = pack(bytes)?;
            if smaller.len() * 10 <= bytes.len() * 9 {
                packed.insert(format!("{path}{ending}"), smaller);
            }
        }
    }
    Ok(packed)
}

/// Leaves the files as they were before the packed ones were put beside them.
pub fn take_away(files: &mut Files) {
    files.retain(|path, _| !is_packed(path));
}

/// Whether a file is there for a host only, and no page asks for it by name.
pub fn is_packed(path: &str) -> bool {
    ENDINGS.iter().any(|(ending, _)| path.ends_with(ending))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_can_be_packed_is_and_the_rest_is_not() {
        // Bytes without a pattern cannot be packed.
        let mut seed = 1_u32;
        let noise = std::iter::repeat_with(|| {
            seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (seed >> 24) as u8
        });
        let noise: Vec<u8> = noise.take(400).collect();
        let mut files = Files::from([
            ("a.js".to_owned(), b"knit ".repeat(100)),
            ("b.png".to_owned(), noise),
            ("c.txt".to_owned(), Vec::new()),
        ]);
        let packed = beside(&files).unwrap();
        assert_eq!(packed.keys().collect::<Vec<_>>(), ["a.js.br", "a.js.gz"]);
        assert_eq!(packed, beside(&files).unwrap());
        let before = files.clone();
        files.extend(packed);
        take_away(&mut files);
        assert_eq!(files, before);
    }
}
