//! The text of the pattern, line by line: her numbers by weight and size, the others struck through, and below a line what is
//! to be asked about it.

use super::{name, writing};
use crate::part::View;
use crate::part::plain::{button, element, list, quiet_button, text, text_element};
use crate::words::sizes_in_text as words;
use loopwright::sizes_in_text::{
    Answer, Asked, Decision, FromLine, MarkedLine, Name, Piece, PieceKind, Question, Show, Verdict, read_size,
    with_decision, with_from_line, without_decision, without_from_line,
};
use yew::prelude::*;

/// More numbers than so many are not offered one by one.
const OFFERED: usize = 12;

/// The whole text.
pub fn text_of(view: &View, question: &Question, answer: &Answer, show: Show) -> Html {
    let page = Page {
        view,
        text: &question.text,
        answer,
        show,
        next: read_size(&view.fields.text(view.fields.path(Name::Next))).filter(|size| *size < answer.names.len()),
    };
    let lines = answer.lines.iter().enumerate().map(|(at, line)| page.line(at, line));
    let content = vec![text_element("h3", "", words::marked_for(answer)), list(lines.collect())];
    element("section", "marked-pattern", content)
}

struct Page<'a> {
    view: &'a View,
    text: &'a str,
    answer: &'a Answer,
    show: Show,
    next: Option<usize>,
}

impl Page<'_> {
    fn line(&self, at: usize, line: &MarkedLine) -> Html {
        let pieces = match self.show {
            Show::Struck => line.pieces.iter().map(|piece| self.piece(piece)).collect(),
            Show::Only => line.only.iter().map(|piece| self.piece(piece)).collect(),
            Show::All => line.pieces.iter().map(|piece| self.plain(piece)).collect(),
        };
        let mut content = vec![self.begin_here(at, line), element("p", "", pieces)];
        content.extend(line.begins.map(|size| self.begins(at, size)));
        let no_step = line.pieces.iter().any(|piece| piece.kind == PieceKind::NoStep);
        content.extend(no_step.then(|| text_element("p", "note", words::NO_STEP)));
        content.extend(
            line.for_some
                .iter()
                .map(|place| text_element("p", "note", words::for_some(place, &self.answer.names, line.size))),
        );
        content.extend(line.asked.iter().map(|asked| self.asked(line, asked)));
        list(content)
    }

    fn words_at(&self, range: &std::ops::Range<usize>) -> String {
        self.text.get(range.clone()).unwrap_or_default().to_owned()
    }

    fn plain(&self, piece: &Piece) -> Html {
        text(self.words_at(&piece.range).into())
    }

    fn piece(&self, piece: &Piece) -> Html {
        let words = self.words_at(&piece.range);
        match piece.kind {
            PieceKind::Plain => text(words.into()),
            PieceKind::Hers | PieceKind::NoStep => text_element("strong", "hers", words),
            PieceKind::Anothers => text_element("s", "", words),
            PieceKind::Marks => text_element("span", "marks", words),
            PieceKind::InDoubt => text_element("mark", "", words),
        }
    }

    /// As long as a line is looked for: the tap that says it is this one.
    fn begin_here(&self, at: usize, line: &MarkedLine) -> Html {
        let place = self.answer.found.lines.place(self.text, at);
        match (self.next, place.filter(|_| !line.pieces.is_empty())) {
            (Some(size), Some(line)) => {
                let kept = with_from_line(&self.kept(Name::OtherSizes), &FromLine { line, size });
                let typed = vec![(Name::OtherSizes, kept), (Name::Next, String::new())];
                button(words::from_here(name(self.answer, size)), writing(self.view, typed))
            }
            (Some(_), None) | (None, _) => Html::default(),
        }
    }

    fn begins(&self, at: usize, size: usize) -> Html {
        let place = self.answer.found.lines.place(self.text, at);
        let end = place.map(|line| {
            let without = without_from_line(&self.kept(Name::OtherSizes), &line);
            quiet_button(
                words::END_IT.into(),
                writing(self.view, vec![(Name::OtherSizes, without)]),
            )
        });
        let said = text_element("p", "", words::begins(name(self.answer, size)));
        element("div", "to-ask begins", [said].into_iter().chain(end).collect())
    }

    fn kept(&self, name: Name) -> String {
        self.view.fields.text(self.view.fields.path(name))
    }

    /// What is in doubt about a list, with the taps that settle it; or what she said.
    fn asked(&self, line: &MarkedLine, asked: &Asked) -> Html {
        let sizes = self.answer.names.len();
        let sentence = words::doubt(asked.kind, &self.words_at(&asked.range), sizes);
        let mut content = vec![text_element("p", "", sentence)];
        match asked.said {
            Some(said) => content.push(self.said(asked, said)),
            None => content.push(element("div", "size-taps", self.verdicts(line, asked))),
        }
        element("div", "to-ask", content)
    }

    fn said(&self, asked: &Asked, said: Verdict) -> Html {
        let number = match said {
            Verdict::Number { entry, .. } => asked.entries.get(entry).map(|range| self.words_at(range)),
            Verdict::List | Verdict::ForAll => None,
        };
        let list_place = self.place(asked);
        let again = list_place.map(|place| {
            let kept = without_decision(&self.kept(Name::Decided), &place);
            quiet_button(words::TAKE_BACK.into(), writing(self.view, vec![(Name::Decided, kept)]))
        });
        let said = text_element("span", "", words::said(said, number.as_deref()));
        element("p", "line", [said].into_iter().chain(again).collect())
    }

    fn place(&self, asked: &Asked) -> Option<loopwright::sizes_in_text::ListPlace> {
        let list = self.answer.found.lists.get(asked.list)?;
        self.answer.found.place(self.text, list)
    }

    fn verdicts(&self, line: &MarkedLine, asked: &Asked) -> Vec<Html> {
        let Some(place) = self.place(asked) else {
            return Vec::new();
        };
        let kept = self.kept(Name::Decided);
        let tap = |label: String, verdict: Verdict| {
            let list = place.clone();
            let decided = with_decision(&kept, &Decision { list, verdict });
            button(label, writing(self.view, vec![(Name::Decided, decided)]))
        };
        let mut taps = Vec::new();
        if asked.is_whole {
            taps.push(tap(words::IS_LIST.into(), Verdict::List));
        }
        if let Some(size) = line.size.filter(|_| !asked.is_whole) {
            let entries = asked.entries.iter().take(OFFERED).enumerate();
            taps.extend(entries.map(|(entry, range)| {
                let label = words::mine(&self.words_at(range), name(self.answer, size));
                tap(label, Verdict::Number { size, entry })
            }));
        }
        taps.push(tap(words::IS_FOR_ALL.into(), Verdict::ForAll));
        taps
    }
}
