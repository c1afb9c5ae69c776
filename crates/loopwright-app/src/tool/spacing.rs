//! The view of even spacing: a sentence with fields in it, the row, the ring or comb of the needle, the sum.

use super::State;
use crate::desk::Desk;
use crate::drawing::needle::{self, Needle};
use crate::part::plain::{button, el, element, list, says, tells};
use crate::part::{
    Choice, ChoiceRow, Label, Page, Reading, Say, Sheet, answered, asked, choice, choices, chosen, field, more, notes,
    row, select, working,
};
use crate::words::spacing as words;
use loopwright::bounds::Bounds;
use loopwright::spacing::{
    Answer, Ask, Decrease, Edge, Fabric, Face, Increase, Knitting, MULTIPLE, Order, Question, STITCHES, Way, answer,
};
use yew::prelude::*;

const SHEET: &str = "spacing";

/// A page draws at most this many changes as marks.
const MOST_DRAWN: usize = 2_000;

/// Places listed where the text is too long to knit from.
const MOST_LISTED: usize = 600;

/// Places shown before the page says that there are more.
const FIRST_LISTED: usize = 120;

/// Numbers in the second field; what is too many there is for the maths to say.
const AMOUNTS: Bounds<u32> = Bounds::new(0, STITCHES.most * 2);

/// The place among what can be asked of a multiple; and among the edges, of plain stitches.
const MULTIPLES: usize = 3;
const LEAST: usize = 1;

/// Plain stitches at an edge, before anything is typed.
const EDGE_PLAIN: &str = "2";

/// The named states.
pub const STATES: &[State] = &[
    State::new("empty", ""),
    State::new("filled", "stitches=132&amount=16"),
    State::new("increases", "stitches=96&ask=gain&amount=20"),
    State::new("flat-mirrored", "stitches=61&amount=7&knitting=flat&edge=mirrored"),
    State::new("purl-rib", "stitches=120&amount=12&face=purl&fabric=rib"),
    State::new("multiple", "stitches=131&ask=multiple&amount=8&plus=3"),
    State::new("impossible", "stitches=132&amount=70"),
    State::new("odd-double", "stitches=132&ask=reach&amount=117&decrease=sk2p"),
    State::new("unreadable", "stitches=13z&amount=7 1/2"),
    State::new("one-change", "stitches=24&amount=1"),
    State::new("sixty-changes", "stitches=510&amount=60"),
    State::new("extreme", "stitches=100000&amount=31416&order=even"),
];

const ASK: ChoiceRow = ("ask", words::LABEL_ASK, &words::ASKS);
const KNITTING: ChoiceRow = ("knitting", words::LABEL_KNITTING, &words::KNITTINGS);
const DECREASE: ChoiceRow = ("decrease", words::LABEL_DECREASE, &words::DECREASES);
const INCREASE: ChoiceRow = ("increase", words::LABEL_INCREASE, &words::INCREASES);
const EDGE: ChoiceRow = ("edge", words::LABEL_EDGE, &words::EDGES);
const MARKER: ChoiceRow = ("marker", words::LABEL_MARKER, &words::MARKERS);
const FACE: ChoiceRow = ("face", words::LABEL_FACE, &words::FACES);
const FABRIC: ChoiceRow = ("fabric", words::LABEL_FABRIC, &words::FABRICS);

/// Draws the tool.
pub fn view(desk: &Desk) -> Html {
    let sheet = Sheet::new(desk, SHEET);
    let mut reading = Reading::of(&sheet);
    let question = question(&mut reading, &sheet);
    let is_read = reading.problems.is_empty();
    let answers = reading.done().and_then(|()| answer(&question));
    let answers = answers.map(|answer| shown(&sheet, &question, &answer));
    let page = Page {
        folded: &["edge_plain"],
        waiting: words::WAITING,
        problem: &|problem| words::problem(is_read.then_some(&question), problem),
    };
    asked(&sheet, &page, &ask_for, answers)
}

/// Its small picture: a ring of twenty stitches with five decreases.
pub fn sign() -> Html {
    needle::ring(&Needle {
        stitches: 20,
        places: vec![2, 6, 10, 14, 18],
        uses: 2,
        gives: 1,
        caption: None,
    })
}

/// From the fields as typed to the question.
fn question(reading: &mut Reading, sheet: &Sheet) -> Question {
    let stitches = reading.count("stitches", STITCHES, "");
    let ask = chosen(sheet, &ASK);
    let amounts = if ask == MULTIPLES { MULTIPLE } else { AMOUNTS };
    let amount = reading.count("amount", amounts, "");
    Question {
        stitches,
        ask: match ask {
            0 => Ask::Lose(amount),
            1 => Ask::Gain(amount),
            2 => Ask::Reach(amount),
            MULTIPLES => Ask::Multiple {
                of: amount,
                plus: reading.count("plus", Bounds::new(0, MULTIPLE.most), "0"),
            },
            4 => Ask::Decreases(amount),
            _ => Ask::Increases(amount),
        },
        knitting: match (chosen(sheet, &KNITTING), chosen(sheet, &EDGE)) {
            (0, _) => Knitting::Round {
                end_on_change: chosen(sheet, &MARKER) == 1,
            },
            (_, 0) => Knitting::Flat { edge: Edge::Half },
            (_, LEAST) => Knitting::Flat {
                edge: Edge::AtLeast(reading.count("edge_plain", Bounds::new(0, STITCHES.most), EDGE_PLAIN)),
            },
            _ => Knitting::Flat { edge: Edge::Mirrored },
        },
        decrease: match chosen(sheet, &DECREASE) {
            0 => Decrease::K2tog,
            1 => Decrease::Ssk,
            2 => Decrease::P2tog,
            3 => Decrease::Sk2p,
            _ => Decrease::Cdd,
        },
        increase: match chosen(sheet, &INCREASE) {
            0 => Increase::M1,
            1 => Increase::Yo,
            _ => Increase::Kfb,
        },
        face: match chosen(sheet, &FACE) {
            0 => Face::Knit,
            _ => Face::Purl,
        },
        fabric: match chosen(sheet, &FABRIC) {
            0 => Fabric::Stockinette,
            1 => Fabric::Garter,
            _ => Fabric::Rib,
        },
    }
}

/// The sentence with its fields, and the rest under "more".
fn ask_for(sheet: &Sheet, say: Say) -> Html {
    let number = |name: &'static str, label, start| field(sheet, name, Label::Unseen(label), start, say(name));
    let word = |words| says("span", "", words);
    let have = vec![
        word(words::I_HAVE),
        number("stitches", words::LABEL_STITCHES, ""),
        word(words::STITCHES),
    ];
    let mut want = vec![
        word(words::AND_WANT),
        choice(sheet, &ASK),
        number("amount", words::LABEL_AMOUNT, ""),
    ];
    if chosen(sheet, &ASK) == MULTIPLES {
        want.extend([word(words::PLUS), number("plus", words::LABEL_PLUS, "0")]);
    }
    let how = vec![word(words::WORKING), choice(sheet, &KNITTING)];
    list(vec![
        el("div", "line", have),
        el("div", "line", want),
        el("div", "line", how),
        more(vec![the_rest(sheet, say)]),
    ])
}

/// Fields that have a sensible start; only those that matter to what is asked.
fn the_rest(sheet: &Sheet, say: Say) -> Html {
    let ask = chosen(sheet, &ASK);
    let flat = chosen(sheet, &KNITTING) == 1;
    let mut fields = Vec::new();
    if !matches!(ask, 1 | 5) {
        fields.push(choices(sheet, &[&DECREASE]));
    }
    if !matches!(ask, 0 | 4) {
        fields.push(choices(sheet, &[&INCREASE]));
    }
    fields.push(choices(sheet, &[if flat { &EDGE } else { &MARKER }]));
    if flat && chosen(sheet, &EDGE) == LEAST {
        let label = Label::Shown(words::LABEL_EDGE_PLAIN);
        fields.push(field(sheet, "edge_plain", label, EDGE_PLAIN, say("edge_plain")));
    }
    fields.push(choices(sheet, &[&FACE, &FABRIC]));
    list(fields)
}

/// The answer in the order it is chosen, with its drawing and its sum.
fn shown(sheet: &Sheet, question: &Question, answer: &Answer) -> Html {
    let way = chosen_way(sheet, answer);
    let round = matches!(question.knitting, Knitting::Round { .. });
    let mut marks = Vec::new();
    for change in way.row.changes().take(MOST_DRAWN + 1) {
        marks.push(change.after as u32);
    }
    let listed = places(&marks, answer.changes, way.readable);
    let line = if way.readable {
        row(&way.row)
    } else {
        let blocks = row(&answer.ways[answer.suggested].row);
        list(vec![tells("p", "", words::too_long(way.row.terms())), blocks])
    };
    list(vec![
        answered(words::once(round), line, words::outcome(answer)),
        neighbours(sheet, answer),
        orders(sheet, answer),
        el("figure", "needle", vec![drawn(answer, marks, round)]),
        listed,
        notes(answer.notes.iter().map(words::note).collect(), &way.row),
        working(answer.steps.iter().map(words::step).collect(), words::SOURCE),
    ])
}

fn order_key(way: &Way) -> &'static str {
    match way.order {
        Order::TwoBlocks => "two",
        Order::BlocksInTurn => "turn",
        Order::MostEven => "even",
    }
}

/// The order the knitter chose, or the suggested one.
fn chosen_way<'a>(sheet: &Sheet, answer: &'a Answer) -> &'a Way {
    let key = sheet.text("order", "");
    let suggested = &answer.ways[answer.suggested];
    answer
        .ways
        .iter()
        .find(|way| order_key(way) == key)
        .unwrap_or(suggested)
}

fn orders(sheet: &Sheet, answer: &Answer) -> Html {
    if answer.ways.len() < 2 {
        return Html::default();
    }
    let choice = |way: &Way| Choice {
        key: order_key(way),
        label: words::order(way.order, way.drift).into(),
    };
    let choices = answer.ways.iter().map(choice).collect();
    let start = order_key(&answer.ways[answer.suggested]);
    let label = Label::Shown(words::LABEL_ORDER);
    el("div", "line", vec![select(sheet, "order", label, choices, start)])
}

/// The counts either side, when a multiple was asked for: a tap goes there.
fn neighbours(sheet: &Sheet, answer: &Answer) -> Html {
    let Some(multiples) = answer.multiples else {
        return Html::default();
    };
    let mut line = vec![says("span", "", words::MULTIPLES)];
    for reached in [multiples.below, multiples.above].into_iter().flatten() {
        let go = sheet.sets(vec![("ask", "reach".into()), ("amount", reached.stitches.to_string())]);
        line.push(button(words::reached(answer.before, &reached), go));
    }
    el("p", "line", line)
}

fn drawn(answer: &Answer, places: Vec<u32>, round: bool) -> Html {
    let caption = needle::Caption {
        text: words::drawing(answer, &places, round),
        count: words::counts(answer),
        changes: words::changes(answer),
    };
    let picture = Needle {
        stitches: answer.before,
        places,
        uses: answer.change.uses(),
        gives: answer.change.gives(),
        caption: Some(caption),
    };
    if round {
        needle::ring(&picture)
    } else {
        needle::comb(&picture)
    }
}

/// Where the changes fall, folded away unless the row is too long to knit from.
fn places(marks: &[u32], changes: u32, readable: bool) -> Html {
    let most = if readable { FIRST_LISTED } else { MOST_LISTED };
    let mut places = Vec::new();
    for mark in marks.iter().take(most) {
        places.push(tells("li", "", mark.to_string()));
    }
    let content = vec![
        says("summary", "", words::PLACES),
        tells("p", "", words::places(places.len() as u32, changes)),
        el("ol", "numbers", places),
    ];
    let attributes = [("class", "places"), ("open", "open")];
    element("details", &attributes[..if readable { 1 } else { 2 }], content)
}
