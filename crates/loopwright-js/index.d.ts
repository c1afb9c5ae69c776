/** A question whose fields but `K` have a usual value, and may be left out. */
export type Asked<Q, K extends keyof Q> = Pick<Q, K> & Partial<Q>;

/** What a tool says: the answer, or what is wrong with the question. */
export type Result<A> =
  | { answer: A; problems?: undefined }
  | { answer?: undefined; problems: Problem[] };

/** What was read from a text, with the unit that was written; or why nothing was. */
export type Reading<T> =
  | { value: T; unit: Unit | null; unreadable?: undefined }
  | { value?: undefined; unit?: undefined; unreadable: Unreadable };

export type CastOnResult = Result<CastOnAnswer>;

export type CordsResult = Result<CordsAnswer>;

export type FlareResult = Result<FlareAnswer>;

export type GaugeResult = Result<GaugeAnswer>;

export type NeedlesResult = Result<NeedlesAnswer>;

export type RaglanResult = Result<RaglanAnswer>;

export type RaiseResult = Result<RaiseAnswer>;

export type RegaugeResult = Result<RegaugeAnswer>;

export type RowsResult = Result<RowsAnswer>;

export type ShapingResult = Result<ShapingAnswer>;

export type SizesInTextResult = Result<SizesInTextAnswer>;

export type SizingResult = Result<SizingAnswer>;

export type SpacingResult = Result<SpacingAnswer>;

export type StairsResult = Result<StairsAnswer>;

export type SwatchResult = Result<SwatchAnswer>;

export type TailResult = Result<TailAnswer>;

export type WrittenResult = Result<WrittenAnswer>;

export type YarnResult = Result<YarnAnswer>;

export type YokeResult = Result<YokeAnswer>;

/** The shaping rounds of a yoke, and what follows at the underarm. */
export interface YokeAnswer {
  /** Each shaping round, what it changes and the count after it. */
  schedule: ShapingSchedule;
  /** The same rounds, each written out. */
  rounds: YokeRound[];
  /** Plain rounds between the underarm and the shaping round next to it. */
  plain: number;
  /** The yoke divided into front, back and two sleeves; none where it has too few stitches for four. */
  division: YokeDivision | null;
}

/** A yoke at the underarm. */
export interface YokeDivision {
  /** Stitches of the front. */
  front: number;
  /** Stitches of the back, which has one more where they do not come out even. */
  back: number;
  /** Stitches of each sleeve, before those of the underarm. */
  sleeve: number;
  /** Stitches cast on at each underarm. */
  underarm: number;
  /** Stitches round the body below the underarm. */
  body_round: number;
  /** Stitches round each sleeve below the underarm. */
  sleeve_round: number;
}

/** One shaping round. */
export interface YokeRound {
  /** Its number. */
  round: number;
  /** Stitches before it. */
  before: number;
  /** Stitches gained or lost in it. */
  change: number;
  /** Stitches after it. */
  after: number;
  /** How much that is of the stitches before it, in whole per cent. */
  percent: number;
  /** What is knitted, as it is written: `K3, M1, (K7, M1) 3 times, K4`. */
  text: string;
  /** The same as data. */
  row: Row;
}

/** One row or round as it is written. */
export interface Row {
  /** What is worked, in order. */
  items: Item[];
}

/** One term of a written row. */
export type Item =
  /** The same stitch some times over: `K7`, `k2tog`. */
  | { Run: Run }
  /** A bracket worked some times over: `(K7, k2tog) 4 times`. */
  | { Repeat: {
      /** What stands in the bracket. */
      body: Item[];
      /** How often it is worked in all. */
      times: number;
    } }
  /** A bracket that is not the same every time: `(K1, M1) 40 times, but K2 the 5th, 10th and 15th time`. */
  | { Varied: Varied };

/** A bracket worked some times over, in which one run is another some of the times. */
export interface Varied {
  /** What stands in the bracket. */
  body: Run[];
  /** How often it is worked in all. */
  times: number;
  /** What is worked in place of the first run of the same stitch, when it differs. */
  instead: Run;
  /** Which times differ, counted from one, each larger than the one before. */
  at: number[];
}

/** The same stitch worked some times over. */
export interface Run {
  /** The stitch. */
  stitch: Stitch;
  /** How often. */
  count: number;
}

/** A stitch as the trade writes it. */
export type Stitch =
  /** Knit one. */
  | "Knit"
  /** Purl one. */
  | "Purl"
  /** Work one in the rib as it is set. */
  | "Rib"
  /** Knit two together: one stitch fewer, leaning right. */
  | "K2tog"
  /** Slip, slip, knit the two together: one stitch fewer, leaning left. */
  | "Ssk"
  /** Purl two together: k2tog from the purl side. */
  | "P2tog"
  /** Slip, slip, purl the two together through the back: ssk from the purl side. */
  | "Ssp"
  /** Slip one, k2tog, pass the slipped stitch over: two stitches fewer, leaning left. */
  | "Sk2p"
  /** Knit three together: two stitches fewer, leaning right. */
  | "K3tog"
  /** Purl three together: k3tog from the purl side. */
  | "P3tog"
  /** Purl three together through the back: sk2p from the purl side. */
  | "P3togTbl"
  /** Centred double decrease: two stitches fewer, leaning neither way. */
  | "Cdd"
  /** Centred double decrease from the purl side. */
  | "Cddp"
  /** Make one from the bar between two stitches. */
  | "M1"
  /** Make one, leaning left. */
  | "M1L"
  /** Make one, leaning right. */
  | "M1R"
  /** Make one purlwise. */
  | "M1p"
  /** Make one purlwise, leaning left. */
  | "M1Lp"
  /** Make one purlwise, leaning right. */
  | "M1Rp"
  /** Yarn over. */
  | "Yo"
  /** Knit into the front and the back of one stitch. */
  | "Kfb"
  /** Purl into the front and the back of one stitch. */
  | "Pfb";

/** An instruction over rows, as data: the blocks one after the other, then the plain rows that are left. */
export interface ShapingSchedule {
  /** Flat or in the round, and the side of row 1. */
  knitting: ShapingKnitting;
  /** Stitches before row 1, where known. */
  stitches: number | null;
  /** Whether stitches are gained; lost otherwise. */
  gain: boolean;
  /** Plain rows, then one shaping row; so many times. */
  blocks: ShapingBlock[];
  /** Plain rows after the last shaping row. */
  left: number;
}

/** Some rows plain, then one shaping row; so many times. */
export interface ShapingBlock {
  /** Plain rows, which come first. */
  plain: number;
  /** Stitches lost or gained in the shaping row behind them. */
  change: number;
  /** How often, in all. */
  times: number;
}

/** Flat or in the round. */
export type ShapingKnitting =
  /** In the round: every row is a right-side one. */
  | "Round"
  /** Back and forth. */
  | { Flat: {
      /** The side of the row that is worked next, which is row 1 of the answer. */
      next: Side;
    } };

/** The side of the fabric that faces the knitter. */
export type Side =
  /** The right side: RS. */
  | "Right"
  /** The wrong side: WS. */
  | "Wrong";

/** A yoke, worked in either direction. */
export interface YokeQuestion {
  /** Stitches at the beginning, within `STITCHES`. */
  from: number;
  /** Stitches at the end, within `STITCHES`. */
  to: number;
  /** Rounds there are, within `ROWS`. */
  rounds: number;
  /** In how many of them the count changes, within `SHAPING_ROUNDS`. */
  shaping_rounds: number;
  /** How the growth is shared between them. */
  growth: YokeGrowth;
  /** Stitches of one repeat that every count but the first is a multiple of, within `MULTIPLE`; 1 for any. */
  multiple: number;
  /**
   * Plain rounds before the first shaping round, within `PLAIN`. None is the usual: from the body up, which begins at
   * the underarm, `Question::usual_plain`; from the neck down a gap like the others.
   */
  first: number | null;
  /**
   * Plain rounds at least at the end, within `PLAIN`. None is the usual: from the neck down, which ends at the
   * underarm, `Question::usual_plain`; from the body up one.
   */
  last: number | null;
  /** Stitches of each sleeve at the underarm, without those cast on; none for `Division::usual_sleeve`. */
  sleeve: number | null;
  /** Stitches cast on at each underarm, within `UNDERARM`. */
  underarm: number;
}

/** How the growth of a yoke is shared between its shaping rounds. */
export type YokeGrowth =
  /** The same number of stitches in each. */
  | "Equal"
  /** As much as a flat circle grows: more where many rounds follow. */
  | "Circle";

/** How much yarn, and how many balls. */
export interface YarnAnswer {
  /** Balls to buy: for the top of the range and the reserve. */
  balls: number;
  /** Balls that hold what is expected, with the ends of their changes; never more than `balls`. */
  likely: number;
  /** Yarn that is used, with every line but the reserve. */
  length: YarnEstimate;
  /** What is expected of it, as weight, where a ball's is known. */
  mass: Mass | null;
  /** What the balls have to hold: the top of the range, the reserve, and the ends of every change of ball. */
  need: Length;
  /** Yarn on the balls bought. */
  bought: Length;
  /**
   * What is left as likely as not: bought less expected, the reserve counted as left. From a pattern's balls, what is
   * left at the least.
   */
  leftover: Length;
  /** What there is to say of the last ball. */
  close: YarnClose | null;
  /** Stitches in all, when they were counted. */
  stitches: YarnStitchSum | null;
  /** Yarn in one stitch of the swatch's fabric, when it was reckoned with. */
  per_stitch: YarnPerStitch | null;
  /** Each yarn by itself, where there are several; `balls` are those of all of them then. */
  yarns: YarnPerYarn[];
  /** Where the yarn goes. The expected lengths add up to `length.expected`, the greatest ones to `need`: the sum. */
  lines: YarnLine[];
  /** What else she should know. */
  notes: YarnNote[];
}

/** One thing to know. */
export type YarnNote =
  /** A swatch was weighed: that is better than any formula. */
  | "Weighed"
  /** A formula was used, with constants that were found for machine-knitted wool: a swatch on the scale is better. */
  | "WeighingIsBetter"
  /** The swatch is lighter than `practice::SWATCH_MASS`, so that the scale's own step counts for much. */
  | "WeighMore"
  /** Only a garter gauge is known, and the number for it is practice. */
  | "GarterIsPractice"
  /** A lace gauge was taken for stockinette: is it pinned out? */
  | "LaceAsStockinette"
  /** The swatch was pinned out, and its gauge was brought back to rest. */
  | "PinnedOut"
  /** The swatch was not washed. */
  | "Unwashed"
  /** A trapezoid is only the middle of what a shaping schedule may come to: sum the schedule where there is one. */
  | "SumTheSchedule"
  /** The edges of a section are not counted, since only its stitches are known. */
  | "EdgesNotCounted"
  /** Two yarns are used: this is for both together. */
  | "BothYarns"
  /** A section ends with live stitches although nothing goes on from them. A plain bind-off there takes so much more. */
  | { LeftOpen: {
      /** The section's place, counted from nought. */
      section: number;
      /** What a plain bind-off takes, with its end. Common practice, no source. */
      bind_off: Length;
    } }
  /** The pattern's yarn is thicker or thinner by more than a tenth. */
  | "OtherThickness"
  /** Buy all of it from one dye lot. */
  | "OneDyeLot";

/** Yarn for one purpose. */
export interface YarnLine {
  /** What for. */
  part: YarnPart;
  /** How much. */
  length: YarnEstimate;
  /** Where the figure comes from. */
  certainty: Certainty;
}

/** How sure we are of a value, and of what kind it is. */
export type Certainty =
  /** Published, and read in the source that is named beside it. */
  | "Read"
  /** Published, and read as others quote it: the source that is named was not read. */
  | "Quoted"
  /** Written down from memory: if a source is named, it was not read for it. */
  | "FromMemory"
  /** Common practice, no source. */
  | "Practice"
  /** Follows from other values by the sum that is shown. */
  | "Computed";

/** What a line of the list is for. */
export type YarnPart =
  /** A section, by its place counted from nought. */
  | { Knitting: {
      /** The place. */
      section: number;
    } }
  /** Casting on, ends and all. */
  | "CastOn"
  /** Binding off, ends and all. */
  | "BindOff"
  /** Sewing up. */
  | "Seams"
  /** The swatch. */
  | "Swatch"
  /** Anything else that was asked for. */
  | "Other"
  /** What the pattern asks for. */
  | "Pattern"
  /** The ends at each change of ball. */
  | "Joins"
  /** The reserve for mistakes: bought, and not expected to be used. */
  | "Reserve";

/** One of several yarns. */
export interface YarnPerYarn {
  /** Which one. */
  yarn: number;
  /** Balls of it to buy. */
  balls: number;
  /** What is used of it. */
  length: YarnEstimate;
  /** What its balls have to hold. */
  need: Length;
  /** What is left of it as likely as not. */
  leftover: Length;
}

/** Yarn in one stitch of the swatch's fabric, and how it was found. */
export interface YarnPerStitch {
  /** The loop. */
  length: Length;
  /** Yarn in the swatch. */
  swatch: Length;
  /** How the loop was found. */
  found: YarnFound;
  /** How sure the number is that this rests on. */
  certainty: Certainty;
  /** How far hand and fibre may be off either way, in percent. */
  hand: number;
  /** How far reading the tape or the scale may be off, in percent. */
  reading: number;
  /** What the range is made with, in percent: both together, a tenth at the least. */
  spread: number;
}

/** How the yarn in a stitch was found. */
export type YarnFound =
  /**
   * By loop geometry, `sqrt(product / density)` in cm. The constants alone would move it between `dry` and `fully`,
   * which is less than the range.
   */
  | { Geometry: {
      /** Stitches in a square centimetre at rest. */
      density: number;
      /** The constant. */
      product: number;
      /** The loop of a stockinette of that density that was never washed. */
      dry: Length;
      /** Washed. */
      wet: Length;
      /** Washed and tumbled. */
      fully: Length;
    } }
  /** By the scale: the swatch's yarn shared out between its loops. */
  | { Weighing: {
      /** Loops in it, its edges counted as loops. */
      loops: number;
    } };

/** A number of stitches that may end in a half. */
export interface YarnStitchSum {
  /** Half stitches. */
  halves: number;
}

/**
 * What there is to say of the last ball: that it holds reserve only, or that the need lies within a twentieth of a ball
 * of a whole number of balls. Nothing is said of the second where the very ball of the pattern is bought.
 */
export type YarnClose =
  /** Just enough, and as many are expected to be used: buy one more, or swatch. */
  | { JustUnder: {
      /** What the balls hold beyond the need; it may be nothing. */
      spare: Length;
    } }
  /** The last ball is for a few metres, and not only for the reserve: a slightly shorter piece would do without it. */
  | { JustOver: {
      /** What is needed beyond what one ball fewer holds. */
      over: Length;
    } }
  /** Even the top of the range does without the last balls. */
  | { ReserveOnly: {
      /** How many. */
      balls: number;
    } };

/** A length that is not known exactly. */
export interface YarnEstimate {
  /** The bottom of the range. */
  least: Length;
  /** As likely as not. */
  expected: Length;
  /** The top of the range. */
  most: Length;
}

/** What is to be knitted, and from which ball. */
export interface YarnQuestion {
  /** What is asked. */
  ask: YarnAsk;
  /** The ball that is to be bought. */
  ball: YarnBall;
  /** Reserve for mistakes on the top of the range, in percent, within `RESERVE`. */
  reserve: number;
  /**
   * Which yarn each section is knitted with, in their order, such as its colour: within `YARNS`. Those beyond are
   * knitted with `USUAL_YARN`, so that nothing has to be said where there is one yarn.
   */
  yarns: number[];
}

/** A ball as its band has it. */
export interface YarnBall {
  /** Yarn on it, within `BALL_LENGTH`. */
  length: Length;
  /** Its weight, within `BALL_MASS`: a swatch on the scale cannot do without it. */
  mass: Mass | null;
}

/** What is asked. */
export type YarnAsk =
  /** Work it out from what is knitted. */
  | { Piece: YarnPiece }
  /** The pattern asks for so many balls of another yarn. */
  | { Balls: {
      /** How many, within `BALLS`. */
      balls: number;
      /** The pattern's ball. */
      ball: YarnBall;
    } }
  /** The pattern asks for so long a yarn, within `STATED`. */
  | { Length: Length };

/** What is knitted, and what is known about the yarn on its needle. */
export interface YarnPiece {
  /** The sections, as many as `SECTIONS` allows. */
  sections: YarnSection[];
  /** The swatch. */
  swatch: YarnSwatch;
  /** What takes yarn beside the knitting. */
  extras: YarnExtras;
}

/** What takes yarn beside the knitting and its edges. */
export interface YarnExtras {
  /** Whether the swatch is knitted from the same balls. */
  swatch: boolean;
  /** Whether ends are left at each change of ball. */
  joins: boolean;
  /** Length of all seams together, within `EXTRA`. */
  seams: Length;
  /** Anything else, such as fringe and pompoms, within `EXTRA`. */
  other: Length;
}

/** What is known about the yarn on its needle. */
export type YarnSwatch =
  /** The gauge of a swatch on the same needle. */
  | { Gauge: {
      /**
       * What the swatch is knitted in. Stockinette serves for every section; garter and lace for plain ones, more
       * roughly; the others for none.
       */
      fabric: Fabric;
      /** Its stitches. */
      stitches: Gauge;
      /** Its rows. */
      rows: Gauge;
      /** How it came to rest. */
      rest: YarnRest;
    } }
  /** A swatch on the scale, its cast-on and bind-off with it: better, since it asks no formula. */
  | { Weighed: {
      /** What it is knitted in. */
      fabric: Fabric;
      /** Stitches across, within `super::STITCHES`. */
      stitches: number;
      /** Rows, within `super::ROWS`. */
      rows: number;
      /** What it weighs, within `super::SWATCH_MASS`. */
      mass: Mass;
    } };

/** How a swatch came to rest before it was measured. */
export type YarnRest =
  /** Washed and dried flat, as the piece will be. */
  | "Washed"
  /** Not washed. */
  | "Unwashed"
  /** Pinned out wider and longer than it lies by itself, as lace is. */
  | { PinnedOut: {
      /** By how much each way, in percent, within `super::PINNED`. */
      percent: number;
    } };

/** What is knitted. */
export type Fabric =
  /** Stockinette. */
  | "Stockinette"
  /** Garter. */
  | "Garter"
  /** Rib of any kind. */
  | "Rib"
  /** Cables. */
  | "Cable"
  /** Lace. */
  | "Lace"
  /** Two colours in a row: a loop of one and a float of the other in every stitch, both together. */
  | "Stranded";

/** One section of a piece. */
export interface YarnSection {
  /** What the knitter calls it; empty where she gave it no name. */
  name: string;
  /** How many stitches. */
  shape: YarnShape;
  /** What is knitted. */
  fabric: Fabric;
  /** How often it is worked, within `TIMES`. */
  times: number;
  /** Whether it begins with a cast-on; otherwise it goes on from live stitches. */
  cast_on: boolean;
  /** How it is bound off; not at all where it goes on. */
  bind_off: YarnBindOff | null;
}

/** Ways to bind off, by how much yarn they take. */
export type YarnBindOff =
  /** The plain chain. */
  | "Plain"
  /** One that stretches: sewn, lace, k2tog through the back. */
  | "Elastic"
  /** An i-cord along the edge. */
  | "ICord";

/** How a section is measured out in stitches. */
export type YarnShape =
  /** As wide everywhere, or evenly wider or narrower from one end to the other. */
  | { Trapezoid: {
      /** Stitches at the beginning, within `TAPERED`. */
      stitches: number;
      /** Stitches at the end, within `TAPERED`. */
      to: number;
      /** Rows, within `ROWS`. */
      rows: number;
    } }
  /** Row by row, as a shaping schedule has them. */
  | { Rows: YarnLevel[] }
  /** As wide everywhere, and measured instead of counted. */
  | { Measured: {
      /** Its width, within `MEASURED`. */
      width: Length;
      /** Its length, within `MEASURED`. */
      length: Length;
      /** The stitch gauge of its own fabric: garter has other rows than stockinette. */
      stitches: Gauge;
      /** The row gauge of its own fabric. */
      rows: Gauge;
    } }
  /** So many stitches. */
  | { Stitches: YarnStitchSum };

/** Rows one after the other with the same stitches. */
export interface YarnLevel {
  /** Stitches on the needle, within `STITCHES`. */
  stitches: number;
  /** For how many rows, within `ROWS`. */
  rows: number;
}

/** What comes of the lines. */
export interface WrittenAnswer {
  /** What the sizes are called; one without a name where there is only one. */
  sizes: string[];
  /** Every line, in the order of the text. */
  lines: WrittenLineWorked[];
  /** Lines that do not come out, in the order of the text, `MOST_OPENED` at most. */
  failures: WrittenFailure[];
  /** How many lines do not come out in some size. */
  failing: number;
  /** How many lines are worked, those that fail among them. */
  worked: number;
  /** How many have words in them that could not be read. */
  unread: number;
  /** What could not be read, of all lines. */
  faults: WrittenFault[];
  /** Brackets right behind a number, and whether they were taken for sizes or for something to repeat. */
  brackets: WrittenBracketed[];
}

/** A bracket right behind a number, and what it was taken for. */
export interface WrittenBracketed {
  /** Where it stands. */
  place: WrittenPlace;
  /** Whether it holds the numbers of the other sizes; otherwise it is repeated. */
  is_sizes: boolean;
}

/** Where something stands in a text, in bytes. */
export interface WrittenPlace {
  /** Where it begins. */
  start: number;
  /** Where it has ended. */
  end: number;
}

/** A place that could not be read. */
export interface WrittenFault {
  /** Where, in bytes; at the end of a line where something is missing there. */
  place: WrittenPlace;
  /** What is wrong, or was looked for. */
  kind: WrittenFaultKind;
}

/** What is wrong with a place, or was looked for there. */
export type WrittenFaultKind =
  /** A word that is not known. */
  | "UnknownWord"
  /** A word that means one thing to some and another to others. */
  | "Twofold"
  /** A known word or sign that says nothing in this place. */
  | "OutOfPlace"
  /** A whole number that a needle could hold. */
  | "Number"
  /** A list that has another number of entries than there are sizes. */
  | { Sizes: {
      /** How many entries it has. */
      found: number;
      /** How many sizes there are. */
      wanted: number;
    } }
  /** How often: `3 times`, `to end`, `to last 4 sts`. */
  | "HowOften"
  /** How many stitches. */
  | "HowMany"
  /** The bracket that closes it. */
  | "Closing"
  /** The bracket that it closes. */
  | "Opening"
  /** Something to repeat between the asterisk or bracket and its end. */
  | "Empty"
  /** An asterisk to repeat from. */
  | "Star"
  /** `rep from *`: the asterisk is never repeated from. */
  | "Repeat"
  /** Which rows. */
  | "Rows"
  /** Fewer brackets within brackets. */
  | "TooDeep"
  /** A bracket of runs in front of "but", one of them of the stitch that differs. */
  | "Simple"
  /** One of the times that the bracket is worked, behind the one before. */
  | "Time";

/** A line that does not come out. */
export interface WrittenFailure {
  /** Which line, counted from nought. */
  line: number;
  /** The first size in which it fails, counted from nought. */
  size: number;
  /** In how many sizes it fails. */
  sizes: number;
  /** What comes of it in that size. */
  worked: WrittenWorked;
  /** The nearest lines that would come out in that size. */
  nearest: WrittenNear[];
  /** Its row as far as it goes, stitch by stitch. */
  drawn: WrittenDrawn | null;
}

/** A row as far as it goes. */
export interface WrittenDrawn {
  /** What is worked, in order. */
  cells: WrittenCell[];
  /** Stitches that are left on the needle where it ends. */
  left: number;
  /** Whether it halts where the last cell stands, for want of stitches or of whatever else is missing. */
  is_halted: boolean;
  /** Whether it goes on further than is drawn. */
  is_cut: boolean;
}

/** One thing that is worked. */
export interface WrittenCell {
  /** What it is. */
  worked: WrittenCellKind;
  /** Where its word stands. */
  place: WrittenPlace;
  /** Brackets that begin with it. */
  opens: number;
  /** Brackets that end with it. */
  closes: number;
}

/** What is worked, as a drawing tells it apart. */
export type WrittenCellKind =
  /** A knit stitch, or one that is plain in any other way. */
  | "Knit"
  /** A purl stitch. */
  | "Purl"
  /** A stitch that is slipped. */
  | "Slipped"
  /** Fewer are left than were taken. */
  | "Decrease"
  /** More are left than were taken. */
  | "Increase"
  /** Several that cross or are worked together, and stay as many. */
  | "Crossed"
  /** A stitch that is bound off. */
  | "BoundOff"
  /** A stitch that is cast on. */
  | "CastOn"
  /** A stitch that is put on a holder. */
  | "Held"
  /** A marker. */
  | "Marker"
  /** The work is turned. */
  | "Turn";

/** A line that would come out. */
export interface WrittenNear {
  /** What is other in it. */
  way: WrittenWay;
  /** Stitches after it. */
  after: number;
}

/** What is other in a line that would come out. */
export type WrittenWay =
  /** A bracket is worked more or less often. */
  | { Repeats: WrittenEdit }
  /** Other plain stitches; two numbers where `to last 3 sts, k3` says it twice. */
  | { Plain: WrittenEdit[] }
  /** The count that the pattern says is another one. */
  | { Said: WrittenEdit }
  /** The line as it is, with another count before it. */
  | { Before: number }
  /** Another row altogether, evenly spaced. */
  | { Spaced: Row };

/** A number to be changed. */
export interface WrittenEdit {
  /** Where it stands. */
  place: WrittenPlace;
  /** What it says. */
  was: number;
  /** What it should say. */
  now: number;
}

/** What came of a line for one size. */
export interface WrittenWorked {
  /** How many rows of it were worked. */
  rows: number;
  /** Stitches on the needle before it. */
  before: number;
  /** Stitches of those that its first row uses. */
  used: number;
  /** Stitches after it. */
  after: number;
  /** Whether it comes out. */
  outcome: WrittenOutcome;
  /** Where it does not. */
  place: WrittenPlace | null;
  /** Which of its rows that was, counted from one. */
  row: number;
  /** What may be meant in another way, and what comes of that. */
  otherwise: WrittenOtherwise | null;
  /** An earlier line that could not be worked as it is written, so that the count before this one is not sure. */
  stands_on: number | null;
  /** Whether a marker stood in the midst of a stitch that takes several. */
  crosses_marker: boolean;
}

/** What comes of the line when the doubtful place is meant in the other way. */
export interface WrittenOtherwise {
  /** What is in doubt. */
  doubt: WrittenDoubt;
  /** Whether the usual meaning was given up for the other, since only that one comes out; then this is the usual one. */
  is_usual: boolean;
  /** Stitches after it. */
  after: number;
  /** Whether it comes out so. */
  outcome: WrittenOutcome;
}

/** What may be meant in two ways. */
export type WrittenDoubt =
  /** `rep from * 3 times`: after the first, or in all. */
  | "Times"
  /** `BO 5, k10`: whether the stitch that is on the right needle after the bind-off is one of the ten. */
  | "BindOff"
  /** `CO 5, k25`: whether the new stitches are worked in the same row. */
  | "CastOn"
  /** `rep rows 1-4` where row 2 says by itself `rep row 1 twice more`: with that, or without. */
  | "RowsWithin";

/** Whether a line comes out, and if not why. */
export type WrittenOutcome =
  /** Every stitch is used, and none is missing. */
  | "ComesOut"
  /** Stitches are left at the end. */
  | { LeftOver: {
      /** How many. */
      stitches: number;
      /** After how many repeats, where the line has any. */
      repeats: number | null;
    } }
  /** There are too few stitches for the next one. */
  | { RunsOut: {
      /** How many are missing for it. */
      short: number;
      /** The how-manyth time it is worked in the line. */
      time: number;
    } }
  /** "To the last so many" does not stop there. */
  | { ToLast: {
      /** How many were to be left. */
      wanted: number;
      /** How many are left when it is worked once more, or already. */
      leaves: number;
      /** How many are left when it is not. */
      before: number;
      /** How often it was worked by then. */
      repeats: number;
    } }
  /** A repeat uses no stitch, so that it never comes to its end. */
  | "MakesNothing"
  /** There is no marker, or it is not here. */
  | { NoMarker: {
      /** So many stitches on, if there is one. */
      ahead: number | null;
    } }
  /** The next marker is too near: so many stitches are missing before it. */
  | { PastMarker: {
      /** How many are missing. */
      short: number;
    } }
  /** There is nothing on the right needle to pass over, or nothing on a holder to return. */
  | "Nothing"
  /** The pattern says another count than there is. */
  | { Differs: {
      /** What it says. */
      said: number;
      /** What is. */
      is: number;
    } }
  /** Rows are to be repeated that the pattern does not have. */
  | { NoSuchRow: {
      /** The first of them. */
      row: number;
    } }
  /** A line names some rows, and what it repeats makes others: `Rows 3-8: Rep rows 1-2 four times`. */
  | { OtherRows: {
      /** How many it names. */
      named: number;
      /** How many there are. */
      made: number;
    } }
  /** Rows are repeated to a length, and change the count, so that it cannot be told after them. */
  | "ByLength"
  /** Repeated until there are so many stitches, which never happens. */
  | { NeverComesTo: {
      /** How many were wanted. */
      wanted: number;
      /** The count before it is passed. */
      before: number;
      /** The count after. */
      after: number;
    } }
  /** Longer than anybody knits. */
  | "Endless"
  /** Words are not known, so that it was not worked. */
  | "Unread"
  /** Nothing is worked in it: a heading, or a line for rows that never come. */
  | "NotWorked"
  /** Turned in the round and worked on past the beginning: it cannot be told. */
  | "CannotTell";

/** What comes of one line in each size. */
export interface WrittenLineWorked {
  /** Where it stands in the text. */
  place: WrittenPlace;
  /** What it is called: `Row 7`; none where it has no name. */
  called: string | null;
  /** What it is. */
  kind: WrittenLineKind;
  /** What comes of it, one for each size. */
  sizes: WrittenWorked[];
}

/** What a line is. */
export type WrittenLineKind =
  /** It is worked. */
  | "Row"
  /** It has words in it that could not be read, so that it is not worked. */
  | "Unread"
  /** Nothing in it could be read as anything that is worked. */
  | "Sentence"
  /** It names the sizes. */
  | "Sizes"
  /** It has a name and nothing else: `Yoke:`. */
  | "Heading";

/** The lines, and what they are worked on. */
export interface WrittenQuestion {
  /** The lines as they are written: `TEXT` bytes. */
  text: string;
  /** What the sizes are called; none for those that the text names, or for one where it names none. */
  sizes: string[];
  /**
   * Stitches on the needle before the first line, within `STITCHES`: one count for all sizes, one for each, or none
   * where the text casts on.
   */
  stitches: number[];
  /** In the round or flat, until a line says otherwise. */
  working: Working;
  /** Words of hers. */
  own: WrittenOwnStitch[];
}

/** A word of hers, and what it does: named once, it holds for this pattern. */
export interface WrittenOwnStitch {
  /** The word as it stands in the pattern; large and small letters are the same. */
  word: string;
  /** Stitches it takes from the left needle. */
  uses: number;
  /** Stitches it puts on the right one. */
  gives: number;
}

/** In the round or flat, where nothing else has to be said about it. */
export type Working =
  /** In the round. */
  | "Round"
  /** Back and forth. */
  | "Flat";

/** How much to leave. */
export interface TailAnswer {
  /** How much to leave before the slip knot; of each strand where there are two. */
  tail: Length;
  /** From the least of the estimates, without reserve, to the largest of them with it; the end is in both. */
  range: Range;
  /** What the tail is, by the method. */
  strand: TailStrand;
  /** The estimates that can be made from what is known: wraps, practice, measured. None where no long tail is needed. */
  estimates: TailEstimate[];
  /** Which of `estimates` the tail rests on. */
  wins: number | null;
  /** Why that one. */
  why: TailWhy;
  /** The reserve that was put on the stitches, in percent. */
  reserve: number;
  /** What the stitches need by the estimate that wins. */
  needs: Length;
  /** That with the reserve; the end comes on top of it, once. */
  with_reserve: Length;
  /** The tail in arm's lengths of `ARM`, rounded up to a tenth of one. */
  arms: SpacingFraction;
  /** Whether what is left will do. */
  left: TailRemaining | null;
  /** Stitches to cast on in waste yarn, where the method begins with half of them: rounded up. */
  waste: number | null;
  /** Whether two strands would be easier, which they are above `TWO_STRANDS_ABOVE`. */
  two_strands: boolean;
}

/** Whether it will do. */
export interface TailRemaining {
  /** The tail that is left. */
  tail: Length;
  /** Stitches still to cast on. */
  to_go: number;
  /** How many it gives; none where the stitches come from elsewhere. */
  gives: TailGives | null;
  /** What the stitches to go need. */
  needs: Length;
  /** That with the reserve. */
  with_reserve: Length;
  /** Enough, tight or short. */
  verdict: TailVerdict;
  /** What is over when they have their reserve and the end; negative is how much is lacking. */
  over: Length;
  /** What is over without the reserve; negative is how much is lacking. */
  over_bare: Length;
}

/** Whether what is left will do. */
export type TailVerdict =
  /** Enough, with the reserve. */
  | "Enough"
  /** Enough if nothing takes more than it should. */
  | "Tight"
  /** Not enough: begin again, or go on with a second strand. */
  | "Short";

/** How many stitches what is left gives, when the end to weave in is kept back. */
export interface TailGives {
  /** With the reserve on each. */
  with_reserve: number;
  /** Without it: if nothing takes more than it should. */
  bare: number;
}

/** A quotient that is compared exactly. */
export interface SpacingFraction {
  /** Above the line. */
  over: number;
  /** Below the line, never zero. */
  under: number;
}

/** Why an estimate wins. */
export type TailWhy =
  /** It was measured over `MEASURED_FROM` stitches or more. */
  | "Measured"
  /** It is the largest, and what was measured rests on too few stitches to be trusted alone. */
  | "FewMeasured"
  /** It is the largest: a tail too long is cut off, and one too short is begun again. */
  | "Largest"
  /** The method needs no long tail. */
  | "NoLongTail";

/** What the stitches need, by one way of reckoning: no reserve, no end. */
export interface TailEstimate {
  /** Where it comes from. */
  way: TailWay;
  /** What some stitches take, before it is made more by the percents. */
  piece: TailPiece;
  /** Percent of that at the least, by the rule and by the method. */
  least_percent: number;
  /** Percent of that at the most. */
  most_percent: number;
  /** What all stitches need. The tail is worked out with the most. */
  needs: Range;
}

/** What a piece used: cast it on by the same method, pull it out, and measure between the two marks. */
export interface TailPiece {
  /** Stitches it has, the slip knot not counted, within `super::STITCHES`. */
  stitches: number;
  /** The tail they *used*, not what was left of it, without the slip knot; within `super::USED`. */
  used: Length;
}

/** Where an estimate comes from. */
export type TailWay =
  /** Every stitch is one turn round needle and yarn. Thought out, not published: common practice, no source. */
  | { Wraps: {
      /** How thick the needle is, or both. */
      needle: Length;
      /** How thick the yarn is. */
      yarn: Length;
    } }
  /** `EDGE_TIMES` the edge. Common practice, no source. */
  | { Edge: {
      /** How long it will lie. */
      width: Length;
    } }
  /** The same by the gauge, where the edge was not measured. Common practice, no source. */
  | { Gauge: {
      /** The gauge. */
      gauge: Gauge;
      /** How long the edge will lie by it. */
      width: Length;
    } }
  /** So much a stitch by the class of the yarn. Common practice, no source. */
  | { Class: {
      /** The class. */
      weight: Weight;
      /** What one stitch takes of long-tail. */
      each: Length;
    } }
  /** What a piece used. */
  | { Measured: TailPiece };

/** The name of a class, thinnest first. */
export type Weight =
  /** 0: lace. */
  | "Lace"
  /** 1: super fine, such as sock yarn. */
  | "SuperFine"
  /** 2: fine, such as sport. */
  | "Fine"
  /** 3: light, such as double knitting. */
  | "Light"
  /** 4: medium, such as worsted. */
  | "Medium"
  /** 5: bulky, or chunky. */
  | "Bulky"
  /** 6: super bulky, or super chunky. */
  | "SuperBulky"
  /** 7: jumbo. */
  | "Jumbo";

/** What the tail has to do. */
export type TailStrand =
  /** It is the strand on the thumb, and all stitches are drawn from it. */
  | { Thumb: {
      /** Yarn a stitch at the least, in percent of long-tail. */
      least_percent: number;
      /** Yarn a stitch at the most, in percent of long-tail: what the tail is worked out with. */
      most_percent: number;
    } }
  /** It is an end to weave in, `SHORT`. */
  | "EndOnly"
  /** It is an end to weave in; half the stitches, rounded up, are cast on in waste yarn. */
  | "HalfInWaste"
  /** A second strand does its work; each strand leaves an end to weave in. */
  | "Second";

/** The least and the most that a length may be, both possible. */
export interface Range {
  /** The least. */
  least: Length;
  /** The most. */
  most: Length;
}

/** What is to be cast on and what is known of needle and yarn. */
export interface TailQuestion {
  /** Stitches to cast on, the extra one of a join included, within `STITCHES`. */
  stitches: number;
  /** How they are cast on. */
  method: TailMethod;
  /** How thick the yarn is: by wraps or by its class. */
  yarn: TailThickness | null;
  /**
   * The needle that is cast on *with*, often a size or two larger than the one that is knitted with; within
   * `NEEDLE`.
   */
  needle: Length | null;
  /** A second needle held together with it: the yarn goes round both. */
  second: Length | null;
  /** How long the edge of `stitches` will lie, within `EDGE`. */
  width: Length | null;
  /** The stitches in a span of the swatch: what the edge comes to where it was not measured. */
  gauge: Gauge | null;
  /** What a piece cast on by this method used. */
  measured: TailPiece | null;
  /** The end to weave in, added once, within `END`. */
  end: Length;
  /** What is left in the middle of casting on, to know whether it will do. */
  left: TailLeft | null;
}

/** What is left. */
export interface TailLeft {
  /** The tail from the last stitch to its end, within `super::LEFT`. */
  tail: Length;
  /** Stitches still to cast on, no more than there are in all. */
  to_go: number;
}

/** How thick the yarn is. */
export type TailThickness =
  /** So many wraps, side by side, in an inch, within `WRAPS`. */
  | { Wraps: number }
  /** The class on the band, which is taken at its thick end. */
  | { Class: Weight };

/** A way to cast on. */
export type TailMethod =
  /** Long-tail. */
  | "LongTail"
  /** Twisted, or German twisted, or old Norwegian. */
  | "TwistedGerman"
  /** Cable: the needle goes between two stitches. */
  | "Cable"
  /** Knitted on: the needle goes into the last stitch. */
  | "Knitted"
  /** Backward loop. */
  | "BackwardLoop"
  /** A crochet chain round the needle. */
  | "CrochetChain"
  /** Tubular, begun in waste yarn with half the stitches. */
  | "Tubular"
  /** Long-tail with a strand for the thumb and one for the finger, knotted together. */
  | "TwoStrand";

/** How to knit it. */
export interface SwatchAnswer {
  /** Stitches to cast on. */
  cast_on: number;
  /**
   * What is measured, in the middle: the span of the gauge, but no less than 10 cm, or 4 in if it was given over whole
   * or half inches.
   */
  span: Length;
  /** The gauge that is hoped for, over that span. */
  hoped: Gauge;
  /** Stitches in it, rounded up. */
  measured: number;
  /** Stitches on both sides together that are not. */
  beside: number;
  /** Whole repeats that are cast on. */
  repeats: number;
  /** Stitches beside the repeats; none in the round. */
  plus: number;
  /** How wide it will be at the gauge that is hoped for. */
  width: Length;
  /** How high to knit: half the span again, up to whole repeats where a row gauge is hoped for. */
  height: Length;
  /** Rows for that; none when no row gauge is hoped for. */
  rows: SwatchRows | null;
  /** The needle, and those to try next; none where it is not known. */
  needles: SwatchNeedles | null;
  /** What else she should know. */
  notes: SwatchNote[];
}

/** What else she should know. */
export type SwatchNote =
  /** A round has no edges: these stitches beside the repeats are not cast on. */
  | { PlusDropped: {
      /** How many. */
      plus: number;
    } }
  /** A swatch worked flat can be a stitch or two off for a round. */
  | "FlatDiffers";

/** The needle of a swatch, and the ones that come next to it. */
export interface SwatchNeedles {
  /** The needle it will be knitted on. */
  this: GaugeCalled;
  /** A size down, for too few stitches; none where the table begins. */
  thinner: GaugeCalled | null;
  /** A size up, for too many; none where the table ends. */
  thicker: GaugeCalled | null;
}

/** A needle and its US number. */
export interface GaugeCalled {
  /** How thick it is, exactly. */
  across: Length;
  /** Its number, if there is a US needle of just this thickness. */
  us: Number | null;
}

/** A number of a needle: `7`, `10 1/2`, `000`. Held in quarters; noughts beyond the first count down from nothing. */
export type Number = number;

/** How many rows to work. */
export interface SwatchRows {
  /** Rows of half the span again. */
  least: number;
  /** Whole repeats that reach it. */
  repeats: number;
  /** Rows of these. */
  count: number;
}

/** What is expected of the swatch. */
export interface SwatchQuestion {
  /** The stitches that are hoped for, mostly the pattern's: `Gauge::COUNTS` over `Gauge::SPANS`. */
  gauge: Gauge;
  /** The rows that are hoped for, with their own span. */
  rows: Gauge | null;
  /** The repeat of the pattern stitch, within `MULTIPLE` and `PLUS`; its `plus` is not counted in the round. */
  multiple: Multiple;
  /** Rows of one repeat, within `MULTIPLE`; 1 when any number will do. */
  row_repeat: number;
  /** How the piece is worked, and so the swatch. */
  knitting: Working;
  /** The needle it will be knitted on, within `NEEDLE`; where it is known those to try next have a name. */
  needle: Length | null;
}

/** `multiple of 8 plus 3`. At least one whole repeat is cast on. */
export interface Multiple {
  /** Stitches of one repeat, within `MULTIPLE`; 1 when any count will do. */
  of: number;
  /**
   * Stitches beside the repeats, within `PLUS`, that balance the two edges of a flat piece. Kept in the question
   * but not counted in the round, so that it is back when the knitting is flat again.
   */
  plus: number;
}

/** The steps. */
export interface StairsAnswer {
  /** Steps at one edge. */
  steps: number;
  /** Stitches of a smaller step: stitches over steps, rounded down. */
  smaller: number;
  /** What is over: so many steps are one larger. */
  over: number;
  /** The steps of all edges in the order they are worked. */
  stairs: StairsStair[];
  /** Turns at one edge, in short rows: one fewer than steps. */
  turns: number;
  /** The row of the last step. */
  used: number;
  /** Plain rows left after it, where the rows were given. */
  left: number;
}

/** One step at one edge. */
export interface StairsStair {
  /** The row it is worked in. */
  row: number;
  /** The side that faces the knitter in this row. */
  side: Side;
  /** `Edge::Right` or `Edge::Left`. */
  edge: StairsEdge;
  /** Stitches bound off at the beginning of this row, or left unworked at its end beside those left before. */
  stitches: number;
  /** Stitches gone at this edge up to and with this step. In short rows, work to the last so many and turn. */
  gone: number;
  /** The last step of this edge. In short rows it is no turn: work over all the stitches. */
  last: boolean;
}

/** An edge of the piece, as its right side faces you: not the wearer's right and left. */
export type StairsEdge =
  /** The right one. */
  | "Right"
  /** The left one. */
  | "Left"
  /** Both, so many stitches at each. */
  | "Both";

/** What has to go, and where. */
export interface StairsQuestion {
  /** Stitches to go at one edge, within `STITCHES`. */
  stitches: number;
  /** In how many steps or rows. */
  ask: StairsAsk;
  /** At which edge. */
  edge: StairsEdge;
  /** Shoulder or neck. */
  place: StairsPlace;
  /** Bound off or left on the needle. */
  way: StairsWay;
  /** The side of the next row, which is row 1 of the answer. */
  next: Side;
}

/** How stitches go. */
export type StairsWay =
  /** Bound off at the beginning of a row. */
  | "BindOff"
  /** Left unworked at the end of a row. */
  | "ShortRows";

/** What is shaped. */
export type StairsPlace =
  /** A straight slope. */
  | "Shoulder"
  /** A curve: the larger steps first. */
  | "Neck";

/** In how many steps or rows. */
export type StairsAsk =
  /** So many steps at each edge, within `STEPS` and no more than stitches. */
  | { Steps: number }
  /** As many steps as there is room for in so many rows, within `ROWS`. */
  | { Rows: number };

/** The row to work, written in up to three orders. */
export interface SpacingAnswer {
  /** Stitches before. */
  before: number;
  /** Stitches after. */
  after: number;
  /** The change, as it is worked on this side of the fabric. */
  change: Stitch;
  /** How many of them. */
  changes: number;
  /** The ways to write it: easiest first, most even last. */
  ways: SpacingWay[];
  /** Which of `ways` to offer first: the shortest to say of those that stray too little to be seen. */
  suggested: number;
  /** The counts either side, when a multiple was asked for. */
  multiples: SpacingMultiples | null;
  /** What else she should know. */
  notes: SpacingNote[];
  /** The sum. */
  steps: SpacingStep[];
}

/** One line of the sum. */
export type SpacingStep =
  /** Stitches less those the changes use: the plain ones. */
  | { Plain: {
      /** Stitches on the needle. */
      stitches: number;
      /** Changes. */
      changes: number;
      /** Stitches each uses. */
      uses: number;
      /** What is left. */
      plain: number;
    } }
  /** The plain stitches that stand at the two edges. */
  | { Edges: {
      /** At the beginning. */
      first: number;
      /** At the end. */
      last: number;
    } }
  /** Plain stitches shared between runs. */
  | { Shared: {
      /** Plain stitches shared. */
      plain: number;
      /** Runs they are shared between. */
      runs: number;
      /** A short run. */
      short: number;
      /** How many short runs. */
      short_times: number;
      /** How many runs are one longer. */
      long_times: number;
    } }
  /** Plain stitches and what the changes give: the count after. */
  | { After: {
      /** Plain stitches. */
      plain: number;
      /** Changes. */
      changes: number;
      /** Stitches each gives. */
      gives: number;
      /** Stitches after. */
      after: number;
    } };

/** One thing to know. */
export type SpacingNote =
  /** The run at the marker is one run in two pieces, so that no change stands there. */
  | { SplitAtMarker: {
      /** The whole run, in the way that is suggested. */
      run: number;
    } }
  /** There are too few plain stitches to keep a change off the marker. */
  | "ChangeAtMarker"
  /** Ending on the change was asked for, and not done: an increase in a gap is easily lost at the marker. */
  | "KeptOffMarker"
  /** Garter in the round: work the change on the knit round. */
  | "KnitRoundIsBetter"
  /** Flat: a change is easier to see and to count on a right-side row. */
  | "RightSideIsBetter"
  /** Rib: keep the changes in the purl ribs, or lose whole repeats. */
  | "KeepToPurlRibs"
  /** `plus` stitches were dropped, since a round has no edges. */
  | { PlusDropped: {
      /** How many were asked for. */
      plus: number;
    } }
  /** The row is mirrored but for one stitch at the end. */
  | "MirroredButForOne"
  /** The change in the middle of a mirrored row leans to one side. */
  | { MiddleLeans: {
      /** That change. */
      change: Stitch;
    } }
  /** The bar of a kfb sits left of its stitch, so the last plain run is one longer for the eye to be even. */
  | "KfbBar"
  /** A yarn over leaves a hole. */
  | "YarnOverHole";

/** The multiples either side of a count. */
export interface SpacingMultiples {
  /** The nearest that can be had by decreasing. */
  below: SpacingReached | null;
  /** The nearest that can be had by increasing. */
  above: SpacingReached | null;
  /** Stitches that were asked for beside the multiple and dropped, since a round has no edges. */
  dropped: number;
}

/** A count and what it takes to get there. */
export interface SpacingReached {
  /** Stitches on the needle in the end. */
  stitches: number;
  /** The change that gets there. */
  change: Stitch;
  /** How many of them. */
  changes: number;
}

/** One order of the runs, written. */
export interface SpacingWay {
  /** The order of the long and the short runs. */
  order: SpacingOrder;
  /** The row as it is written: `K3, k2tog, (K7, k2tog) 3 times, K4`. */
  text: string;
  /** The row as data. */
  row: Row;
  /** How far the changes stray from dead even, in stitches. */
  drift: SpacingFraction;
  /** Whether the text is short enough to knit from. */
  readable: boolean;
}

/** How long and short runs follow each other. */
export type SpacingOrder =
  /** All the long runs, then all the short ones. */
  | "TwoBlocks"
  /** Two blocks, several times over. */
  | "BlocksInTurn"
  /** Each run as near to its even place as whole stitches allow. */
  | "MostEven";

/** What is on the needle and what is wanted. */
export interface SpacingQuestion {
  /** Stitches on the needle, within `STITCHES`. */
  stitches: number;
  /** What is wanted. */
  ask: SpacingAsk;
  /** How to decrease, where the answer is to decrease. */
  decrease: SpacingDecrease;
  /** How to increase, where the answer is to increase. */
  increase: SpacingIncrease;
  /** In the round or flat. */
  knitting: SpacingKnitting;
  /** Whether this row is a knit one or a purl one. */
  face: SpacingFace;
  /** What the fabric is. */
  fabric: SpacingFabric;
}

/** The fabric the row belongs to. */
export type SpacingFabric =
  /** Stockinette. */
  | "Stockinette"
  /** Garter. */
  | "Garter"
  /** Rib. */
  | "Rib";

/** The side that faces the knitter as she works this row. */
export type SpacingFace =
  /** A knit row or round. */
  | "Knit"
  /** A purl row or round. */
  | "Purl";

/** In the round, where the last run meets the first, or flat, where each end is an edge. */
export type SpacingKnitting =
  /** In the round. */
  | { Round: {
      /**
       * End on the change: shorter to write, but the last change stands beside the marker. Never done for an
       * increase in a gap, which would be lost there.
       */
      end_on_change: boolean;
    } }
  /** Back and forth. */
  | { Flat: {
      /** What happens at the two edges. */
      edge: SpacingEdge;
    } };

/** What happens at the two edges of a flat row. */
export type SpacingEdge =
  /** Half a run at each end, so that two such pieces sewn together space evenly. */
  | "Half"
  /** At least so many plain stitches at each end. */
  | { AtLeast: number }
  /** The second half is the first in a mirror, leaning stitches and all. */
  | "Mirrored";

/** Ways to gain stitches. */
export type SpacingIncrease =
  /** Make one from the bar between two stitches. */
  | "M1"
  /** Yarn over. */
  | "Yo"
  /** Knit into the front and the back. */
  | "Kfb";

/** Ways to lose stitches. */
export type SpacingDecrease =
  /** Knit two together. */
  | "K2tog"
  /** Slip, slip, knit. */
  | "Ssk"
  /** Purl two together. */
  | "P2tog"
  /** Slip one, knit two together, pass the slipped stitch over. */
  | "Sk2p"
  /** Centred double decrease. */
  | "Cdd";

/** What is wanted. */
export type SpacingAsk =
  /** So many stitches fewer. */
  | { Lose: number }
  /** So many stitches more. */
  | { Gain: number }
  /** So many decreases, whatever each takes away. */
  | { Decreases: number }
  /** So many increases. */
  | { Increases: number }
  /** So many stitches in the end. */
  | { Reach: number }
  /** A multiple of `of`, plus `plus` when flat; in the round there are no edges to need the `plus`, and it is dropped. */
  | { Multiple: {
      /** Stitches of one repeat, within `MULTIPLE`. */
      of: number;
      /** Stitches beside the repeats, fewer than one repeat. */
      plus: number;
    } };

/** The size to knit, and how all of them sit. */
export interface SizingAnswer {
  /** The size to knit, as its place in the list of the question. */
  pick: number;
  /** Why this one. */
  why: SizingWhy;
  /** Every size: the pick, then the runner-up, then from better to worse. */
  ranked: SizingRanked[];
  /**
   * The girth of the body that the sizes were held against: the bust, or for a wrap round bust and arms. A list of
   * bodies is of busts, whatever is knitted.
   */
  body: Length;
  /** The garment girth that was looked for; none where bodies are listed. */
  target: Length | null;
  /** What the knitter's own gauge moves, where both gauges are known. */
  moves: SizingMoves | null;
  /** What else she should know. */
  notes: SizingNote[];
  /** The sum. */
  steps: SizingStep[];
}

/** One line of the sum. A size is its place in the list of the question. */
export type SizingStep =
  /** Bust and twice the upper arm. */
  | { RoundBoth: {
      /** The bust. */
      bust: Length;
      /** One upper arm. */
      upper_arm: Length;
      /** Round them all. */
      round: Length;
    } }
  /** The garment that is looked for. */
  | { Target: {
      /** The body. */
      body: Length;
      /** What is added to it; less than nothing where the garment is to be smaller. */
      ease: Length;
      /** The garment. */
      garment: Length;
    } }
  /** What a size measures, by its stitches. */
  | { ByStitches: {
      /** The size. */
      size: number;
      /** Its stitches. */
      stitches: number;
      /** The gauge they are knitted at. */
      gauge: Gauge;
      /** What they make. */
      girth: Length;
    } }
  /** What a size measures, by the two gauges. */
  | { ByGauges: {
      /** The size. */
      size: number;
      /** What is listed. */
      listed: Length;
      /** The pattern's gauge. */
      pattern: Gauge;
      /** The knitter's own. */
      own: Gauge;
      /** What that makes. */
      girth: Length;
    } }
  /** The body is one of those a size is for. */
  | { Inside: {
      /** The size. */
      size: number;
      /** The bodies it is for. */
      bodies: SizingSpan;
      /** The body. */
      body: Length;
    } }
  /** The body is none of those a size is for. */
  | { Outside: {
      /** The size. */
      size: number;
      /** The bodies it is for. */
      bodies: SizingSpan;
      /** The body. */
      body: Length;
      /** How far outside that is. */
      away: Length;
    } }
  /** How a size sits. */
  | { Sits: {
      /** The size. */
      size: number;
      /** The garment. */
      garment: Length;
      /** The body. */
      body: Length;
      /** The garment less the body. */
      ease: Length;
      /** The same as a share of the body. */
      share: SizingPerMille;
    } };

/** Thousandths. */
export type SizingPerMille = number;

/** From one girth to another, both included; the same twice where one number is listed. */
export interface SizingSpan {
  /** The smaller girth. */
  from: Length;
  /** The larger girth. */
  to: Length;
}

/** One thing to know. A size is its place in the list of the question. */
export type SizingNote =
  /** No garment is as large as is wanted, or the body is larger than every size. */
  | { NoneLargeEnough: {
      /** What the nearest lacks. */
      lacks: Length;
    } }
  /** No garment is as small as is wanted, or the body is smaller than every size. */
  | { NoneSmallEnough: {
      /** What is too much of the nearest. */
      over: Length;
    } }
  /** The body lies between two sizes, in neither. */
  | { BetweenSizes: {
      /** The smaller size. */
      smaller: number;
      /** The larger size. */
      larger: number;
      /** From the one to the other. */
      gap: Length;
    } }
  /** The body is outside the range of the pick by less than a tape can tell, and was taken to be in it. */
  | { OnEdge: {
      /** The pick. */
      size: number;
      /** Where its range ends on the side of the body. */
      edge: Length;
      /** Whether that is its lower end. */
      is_lower: boolean;
    } }
  /** No size sits as was asked; the pick is the nearest. */
  | "NoneAsAsked"
  /** The bust is below what is `LIKELY`: perhaps inches were typed for centimetres. */
  | "SmallBust"
  /** The bust is above what is `LIKELY`: perhaps centimetres were typed for inches. */
  | "LargeBust"
  /** The list was said to be of garments, but it has ranges, which mostly are of bodies. */
  | "LooksLikeBodies"
  /** There is only one size: how it sits is what can be said. */
  | "OneSize"
  /** The sizes do not stand in order of girth. */
  | "Unsorted"
  /** Two sizes fit some of the same bodies. */
  | { Overlap: {
      /** The one that is listed first. */
      first: number;
      /** The other. */
      second: number;
    } }
  /** Bodies are listed: no ease was added, since it is in the garment already. */
  | "EaseIsInTheList"
  /** The real ease is not known until a finished measure, or stitches and a gauge, are typed. */
  | "EaseUnknown"
  /** The pick is tighter than is usual. */
  | { TooTight: {
      /** Its ease as a share of the body. */
      share: SizingPerMille;
    } }
  /** The stitches of a size cannot go round its girth and were left out. */
  | { StitchesLeftOut: {
      /** The size. */
      size: number;
      /** What its stitches make. */
      makes: Length;
      /** What is listed. */
      listed: Length;
    } }
  /** At the pattern's gauge another size would be picked. */
  | { PickMoved: {
      /** That size. */
      size: number;
    } }
  /** Her own gauge could not be used: the pattern's gauge or the stitches are missing. */
  | "OwnGaugeUnused"
  /** The pattern's gauge could not be used: her own is missing. */
  | "PatternGaugeUnused"
  /** What a size measures at her gauge comes from the listed girth, not from its stitches; it may be off a little. */
  | "StitchesUnknown"
  /** The bust is much fuller than the high bust: a size by that fits the shoulders, with room to be added in front. */
  | { HighBust: {
      /** How much fuller. */
      fuller: Length;
      /** The size that fits the shoulders. */
      size: number;
    } }
  /** The listed girth of a wrap is to be the one at the underarm, not at the hem. */
  | "GirthAtUnderarm"
  /** The girth round bust and both arms is an estimate. */
  | { RoundEstimated: {
      /** The upper arm that was taken. */
      upper_arm: Length;
    } }
  /** The neck opening is not known. */
  | "NeckUnknown"
  /** The neck does not go over the head. */
  | { NeckBinds: {
      /** By how much it is short. */
      short: Length;
    } }
  /** The neck goes over some heads and not over others: measure the head. */
  | { NeckUnsure: {
      /** Smaller and larger heads. */
      heads: SizingSpan;
    } };

/** What the knitter's own gauge moves, where both are known. */
export interface SizingMoves {
  /** How many stitches more to the length, in thousandths of the pattern's. */
  stitches: SizingPerMille;
  /**
   * How many rows more to the length; none where a row gauge is missing, and they are taken to change as the
   * stitches do.
   */
  rows: SizingPerMille | null;
  /** What an armhole of `ARMHOLE` comes to by the pattern's rows; none where a row gauge is missing. */
  armhole_by_rows: Length | null;
  /** Yarn more for a piece of the same measures. */
  yarn_same_measure: SizingPerMille;
  /** Yarn more than the pattern has for the picked size, its stitches kept and its lengths knitted to measure. */
  yarn_same_size: SizingPerMille;
}

/** How one size sits. */
export interface SizingRanked {
  /** Its place in the list of the question. */
  size: number;
  /** The bodies it fits, or what the garment measures; at the knitter's own gauge where that is known. */
  girth: SizingSpan;
  /** What the garment measures round the bust, where known; at the knitter's own gauge where that is known. */
  garment: Length | null;
  /**
   * Whether `garment` comes from the size's stitches at her own gauge. From the listed girth by the two gauges it may
   * be off by what the pattern rounded to whole repeats.
   */
  from_stitches: boolean;
  /** The garment less the body, where known: the ease of a sweater, the room in a wrap. */
  ease: Length | null;
  /** The same in thousandths of the body. */
  share: SizingPerMille;
  /** The word for the ease of a sweater. */
  fit: Fit | null;
  /** Whether it is as wanted: the body in its range, the ease in the band, nothing binding. */
  suits: boolean;
  /** How much larger it is than what was looked for, or smaller; nothing for a range with the body in it. */
  off: Length;
  /** Whether it is exactly as good as the pick, were it not for the cloth. */
  tied: boolean;
}

/** How a sweater feels. */
export type Fit =
  /** Smaller than the body; it stretches to fit. */
  | "VeryClose"
  /** As the body, or a little more. */
  | "Close"
  /** The usual sweater; the newer edition says "classic". */
  | "Standard"
  /** Roomy. */
  | "Loose"
  /** Meant to be large. */
  | "Oversized";

/** Why a size was picked. */
export type SizingWhy =
  /** There is only one size. */
  | "OnlySize"
  /** The body lies in its range, for all that a [tape](TAPE_MARK) can tell, and in no other as well. */
  | "Within"
  /** It is the nearest to what was looked for. */
  | "Nearest"
  /** Another is exactly as near; the cloth decided. */
  | { Tie: SizingCloth }
  /** Another is as near within `CLOSE_CALL`; the cloth decided. */
  | { CloseCall: SizingCloth };

/** How the fabric takes a girth that is a little off. */
export type SizingCloth =
  /** It stretches, and snug is welcome: down. */
  | "Stretches"
  /** It is to drape: up. */
  | "Drapes";

/** The body, the list, and how it should sit. */
export interface SizingQuestion {
  /** The body round the fullest part of the bust, within `GIRTH`. */
  bust: Length;
  /** The body round the chest above the bust, under the arms, where measured; within `GIRTH`. */
  high_bust: Length | null;
  /** What is knitted. */
  garment: SizingGarment;
  /** The pattern's sizes, in any order. */
  sizes: SizingSize[];
  /** What the listed numbers measure. It is asked and never guessed: without it there is no answer. */
  listed: SizingListed | null;
  /** How it should sit. Not looked at where bodies are listed. */
  ask: SizingAsk;
  /** Which way to go where two sizes are as good as each other. */
  cloth: SizingCloth;
  /** The pattern's gauge, washed. */
  pattern: SizingGauges | null;
  /** The knitter's own gauge, washed. */
  own: SizingGauges | null;
}

/**
 * Stitches and rows of one fabric, each within `Gauge::COUNTS` over `Gauge::SPANS`. Each carries its own span: 10 cm
 * and 4 in may meet.
 */
export interface SizingGauges {
  /** Stitches. */
  stitches: Gauge;
  /** Rows, where known. */
  rows: Gauge | null;
}

/** How it should sit. */
export type SizingAsk =
  /** One of the five fits. For a wrap it only means that nothing may bind. */
  | { Fit: Fit }
  /** So much ease, less than nothing allowed; within `EASE`. For a wrap it is room past the girth that binds. */
  | { Ease: Length }
  /** So many thousandths of the body. */
  | { Percent: SizingPerMille };

/** What the listed numbers measure. */
export type SizingListed =
  /** The body: "to fit bust". */
  | "Body"
  /** The garment: "finished bust", "actual measurement". */
  | "Garment";

/** One size as the pattern lists it. */
export interface SizingSize {
  /** What it is called; where the list has numbers only, its number as typed. */
  label: string;
  /** The number or range that is listed, of the body or of the garment. */
  girth: SizingSpan;
  /** Stitches round the bust in this size, without those a seam takes, where known. */
  stitches: number | null;
}

/** What is knitted. */
export type SizingGarment =
  /** Worn round the body with the arms outside: sweater, cardigan, vest. */
  | "Sweater"
  /** Worn over the arms: wrap, poncho, cape. The listed girth is the one at the underarm, not the hem. */
  | { Wrap: SizingWrap };

/** What binds in a wrap, where measured. */
export interface SizingWrap {
  /** The girth round bust and both upper arms, arms hanging; within `GIRTH`. */
  round: Length | null;
  /** Round one upper arm, within `GIRTH`; used where `round` is not measured. */
  upper_arm: Length | null;
  /** The neck opening, stretched, where it goes over the head; within `GIRTH`. */
  neck: Length | null;
  /** Round the head, within `GIRTH`. */
  head: Length | null;
}

/** The text with her size marked in it. */
export interface SizesInTextAnswer {
  /** The names of the sizes. */
  names: string[];
  /** The line from which they were read, counted from nought; none where they were told. */
  named_in: number | null;
  /** Every line that names sizes, the one that says it best first. */
  offered: SizesInTextSizesLine[];
  /** Her size, counted from nought. */
  size: number | null;
  /** What was found. */
  found: SizesInTextFound;
  /** The text line by line. */
  lines: SizesInTextMarkedLine[];
  /** How many lists have a number that is hers. */
  marked: number;
  /** How many lists have still to be asked about. */
  in_doubt: number;
  /** Where two sizes meet. */
  joins: SizesInTextJoin[];
  /** Lines from which on another size was hers, and which are no longer there. */
  lost: SizesInTextFromLine[];
  /** The stitch counts. */
  counts: SizesInTextHerCount[];
  /** The text for her size only. */
  plain: string;
}

/** A stitch count in her size. */
export interface SizesInTextHerCount {
  /** How many. */
  stitches: number;
  /** What it may be a count of. */
  of: SizesInTextStitchCount;
}

/** A list of stitches, and what it may be. */
export interface SizesInTextStitchCount {
  /** Which list. */
  list: number;
  /** The line in which it stands, counted from nought. */
  line: number;
  /** How many for each size; none where a dash stands, or what is no count. */
  stitches: (number | null)[];
  /** Whether they are cast on. */
  is_cast_on: boolean;
  /** The part of the piece. */
  part: SizesInTextPart | null;
}

/** A part of a piece that has a count of its own. */
export type SizesInTextPart =
  /** The neck. */
  | "Neck"
  /** The body. */
  | "Body"
  /** A sleeve. */
  | "Sleeve"
  /** The underarm. */
  | "Underarm";

/** From a line on another size is hers. */
export interface SizesInTextFromLine {
  /** The line. */
  line: SizesInTextLinePlace;
  /** The size, counted from nought. */
  size: number;
}

/** A line, named by its words. */
export interface SizesInTextLinePlace {
  /** What is written in it, without the spaces around. */
  words: string;
  /** How many lines with the same words stand before it. */
  which: number;
}

/** A place where two sizes meet. */
export interface SizesInTextJoin {
  /** The line from which on the other size is hers. */
  line: number;
  /** The size before it. */
  before: number;
  /** The size from it on. */
  after: number;
  /** The lists of the last line before it that has any. */
  lists_before: number[];
  /** The lists of the first line from it on that has any. */
  lists_after: number[];
}

/** One line of the text. */
export interface SizesInTextMarkedLine {
  /** All of it, in its order. */
  pieces: SizesInTextPiece[];
  /** The same for her size only. */
  only: SizesInTextPiece[];
  /** The lists in it that were in doubt. */
  asked: SizesInTextAsked[];
  /** Where it speaks to some sizes only. */
  for_some: SizesInTextForSome[];
  /** The size that is hers in it, counted from nought; none where she has not chosen one. */
  size: number | null;
  /** The size that is hers from this line on, where she said so of this line. */
  begins: number | null;
}

/** A place where some of the sizes are named. */
export interface SizesInTextForSome {
  /** The line, counted from nought. */
  line: number;
  /** The words that name them. */
  range: { start: number; end: number };
  /** Which they are, counted from nought. */
  sizes: number[];
}

/** A list that was in doubt, and her word about it. */
export interface SizesInTextAsked {
  /** Which list. */
  list: number;
  /** What was in doubt. */
  kind: SizesInTextDoubtKind;
  /** What she said last that settles it for the size that is hers there. */
  said: SizesInTextVerdict | null;
  /** Whether it has as many numbers as there are sizes. */
  is_whole: boolean;
  /** Where it stands. */
  range: { start: number; end: number };
  /** Its numbers. */
  entries: ({ start: number; end: number })[];
}

/** What she says of a list. */
export type SizesInTextVerdict =
  /** It has one number for each size, as it stands. */
  | "List"
  /** It is none: all of it is for every size. */
  | "ForAll"
  /** Of this size it is this entry, whatever else is wrong with it. */
  | { Number: {
      /** The size, counted from nought. */
      size: number;
      /** The entry, counted from nought. */
      entry: number;
    } };

/** What is in doubt about a list. */
export type SizesInTextDoubtKind =
  /** It has fewer numbers than there are sizes. */
  | "TooFew"
  /** It has more numbers than there are sizes. */
  | "TooMany"
  /** Its numbers neither rise nor fall, or fall where all other lists rise. */
  | "OutOfOrder"
  /** A number is so many times its neighbour that a decimal point or a digit may be missing. */
  | "FarApart"
  /** A bracket is closed by one of another kind. */
  | "WrongBracket"
  /** A bracket is never closed. */
  | "NotClosed"
  /** A bracket is closed that was never opened. */
  | "NotOpened"
  /** A unit stands behind some of the numbers, and not behind the others. */
  | "UnitAmong"
  /** Something stands among the numbers that is none. */
  | "Strange"
  /** The first is a range and the others are not: it may be a range that the list ends. */
  | "SomeRanges"
  /** It may be a repeat: `K6 (K7, K8)`. */
  | "MayBeRepeat"
  /** What stands in the bracket may be a count, said in passing: `dec 4 sts (92)`. */
  | "MayBeCount"
  /** They may be several numbers that all sizes have: `at 4, 8, 12 cm`. */
  | "MayBeForAll"
  /** It may be a date. */
  | "MayBeDate";

/** A piece of the text. */
export interface SizesInTextPiece {
  /** Where it stands. */
  range: { start: number; end: number };
  /** What it is. */
  kind: SizesInTextPieceKind;
  /** The list it belongs to, where it belongs to one. */
  list: number | null;
}

/** What a piece is. */
export type SizesInTextPieceKind =
  /** For every size. */
  | "Plain"
  /** The number of her size. */
  | "Hers"
  /** The dash of her size: it has no such step. */
  | "NoStep"
  /** The number of another size. */
  | "Anothers"
  /** What sets a list: its brackets, the marks between its numbers, names beside them. */
  | "Marks"
  /** A list that has to be asked about, whole. */
  | "InDoubt";

/** All that was found in a text. */
export interface SizesInTextFound {
  /** How many sizes there are. */
  sizes: number;
  /** The lists, in the order of the text; none lies within another one. */
  lists: SizesInTextList[];
  /** The lines of the text. */
  lines: SizesInTextLines;
}

/** The lines of a text, in order. */
export interface SizesInTextLines {
  /** Where each stands, without its end. */
  ranges: ({ start: number; end: number })[];
  /** How many lines before it have the same words. */
  which: number[];
}

/** One list: a number for each size. */
export interface SizesInTextList {
  /** Where it stands, from its first number to its last bracket, or to the unit behind that. */
  range: { start: number; end: number };
  /** The line in which it begins, counted from nought. */
  line: number;
  /** The how-manyth list of its line it is, counted from nought. */
  nth: number;
  /** How it is printed. */
  style: SizesInTextStyle;
  /** Its numbers, one for each size where nothing is in doubt. */
  entries: SizesInTextEntry[];
  /** A unit that is printed once and counts for all. */
  unit: SizesInTextUnitOnce | null;
  /** What has to be asked. */
  doubt: SizesInTextDoubt | null;
}

/** Something about a list that has to be asked: what, and at which place of it. */
export interface SizesInTextDoubt {
  /** What. */
  kind: SizesInTextDoubtKind;
  /** The place to point at. */
  at: { start: number; end: number };
}

/** A unit that counts for every number of its list. */
export interface SizesInTextUnitOnce {
  /** Which. */
  unit: Unit;
  /** Where it stands, with the space before it: behind the list, behind its last number, or behind its first. */
  range: { start: number; end: number };
}

/** What stands in a list for one size. */
export interface SizesInTextEntry {
  /** Where it stands, with the unit that is its own. */
  range: { start: number; end: number };
  /** What it is. */
  kind: SizesInTextEntryKind;
  /** The unit that stands behind it, and not once for all. */
  unit: Unit | null;
  /** Where its number, or the first of its two, stands without a unit. */
  number: { start: number; end: number };
}

/** What an entry is. */
export type SizesInTextEntryKind =
  /** One number: `96`, `7½`. */
  | "Number"
  /** One of an order: `6th`. */
  | "Ordinal"
  /** From one number to another: `34"-36"`. */
  | "Span"
  /** A dash in place of a number: this size has no such step. */
  | "NoStep"
  /** The name of a size. */
  | "Name";

/** How a list is printed. */
export type SizesInTextStyle =
  /** The first number, and the others in brackets: `96 (108, 120)`. */
  | "Brackets"
  /** All of them in one bracket: `(96, 108, 120)`. */
  | "OneBracket"
  /** `8/9/10` */
  | "Slashes"
  /** `81:86:91` */
  | "Colons"
  /** `81-86-91` */
  | "Dashes"
  /** `81 | 86 | 91` */
  | "Bars"
  /** Commas, spaces or `and` alone: `96, 108 and 120`. */
  | "Bare"
  /** The names of the sizes: `S (M, L)`. */
  | "Names"
  /** Each number beside the name of its size: `S 96, M 108, L 120`. */
  | "BesideNames";

/** A line that names the sizes. */
export interface SizesInTextSizesLine {
  /** Which line, counted from nought. */
  line: number;
  /** The names, in order. */
  names: string[];
  /** Where they stand. */
  ranges: ({ start: number; end: number })[];
  /** How the line says that they are sizes. */
  says: SizesInTextSays;
}

/** How a line says that its list names the sizes. The first says it best. */
export type SizesInTextSays =
  /** `Sizes: S (M, L)` */
  | "Sizes"
  /** Nothing but letters: `XS/S/M`. */
  | "Letters"
  /** `To fit bust: 81 (86, 91) cm` */
  | "ToFit";

/** A pattern, its sizes, and which of them is hers. */
export interface SizesInTextQuestion {
  /** The text: `TEXT` bytes. */
  text: string;
  /** The names of the sizes, `SIZES` of them; none where they are to be read in the pattern's own line. */
  names: string[];
  /** Her size, counted from nought; none where it is not chosen yet, or is none of them. */
  size: number | null;
  /** Another one from a line on. */
  from: SizesInTextFromLine[];
  /** Her word about lists that are in doubt. */
  decisions: SizesInTextDecision[];
}

/** Her word about one list. */
export interface SizesInTextDecision {
  /** About which list. */
  list: SizesInTextListPlace;
  /** What she says. */
  verdict: SizesInTextVerdict;
}

/** A list, named by its line. */
export interface SizesInTextListPlace {
  /** Its line. */
  line: SizesInTextLinePlace;
  /** How many lists stand before it in the line, those in doubt included. */
  nth: number;
}

/**
 * Which rows to shape in. Steeper than the most is for bind-off steps (`crate::stairs`) or for casting on; the
 * gentlest is one shaping row, and no slope.
 */
export interface ShapingAnswer {
  /** The instruction: plain rows, then one shaping row, so many times; with its rows one by one. */
  schedule: ShapingSchedule;
  /** Shaping rows. */
  shaping_rows: number;
  /** Stitches lost or gained in all. */
  change: number;
  /** How many of them are wrong-side rows. */
  wrong_side: number;
  /** What the last shaping row changes: `each`, or what is left over. */
  in_last: number;
  /** Stitches in the end, where the count now is known. */
  after: number | null;
  /** The row of the last shaping: so many rows are used, and `schedule.left` are left. */
  used: number;
  /** How the rows are shared out. */
  shared: ShapingShared;
  /**
   * The most stitches that these rows could take by the same means: every row that may be shaped, and one stitch
   * stays on the needle.
   */
  most: number;
  /** The fewest rows that this change takes. */
  fewest_rows: number;
  /** What to work at the two edges, for two stitches a shaping row where there is room for it at first. */
  pair: ShapingPair | null;
  /** The first row of two stitches that has no room for the pair any more. */
  cramped: number | null;
}

/** One change at each edge, in the order they are worked. */
export interface ShapingPair {
  /** Plain stitches before the first. */
  before: number;
  /** The change at the beginning of a right-side row. */
  first: Stitch;
  /** The change at its end: the mirror. */
  last: Stitch;
  /** Plain stitches after it. */
  after: number;
}

/** How the rows are shared out between gaps, each from one shaping row to the next. */
export interface ShapingShared {
  /** Rows from the first shaping row to the last; from the beginning, where that is a gap like the others. */
  rows: number;
  /** How many gaps; none when there is one shaping row only. */
  gaps: number;
  /** The rows of a short gap: "every so many". */
  every: number;
  /** How many gaps are longer. */
  longer: number;
  /** How many rows a longer gap has more. */
  by: number;
}

/** What is wanted, in how many rows, and how it may be done. */
export interface ShapingQuestion {
  /** What is wanted. */
  ask: ShapingAsk;
  /** Rows or rounds there are for it, within `ROWS`. */
  rows: number;
  /** Stitches on the needle now, within `STITCHES`; none when only the change matters. */
  stitches: number | null;
  /**
   * Stitches lost or gained in one shaping row, all edges and lines together; within `EACH`, usually
   * `USUAL_EACH`.
   */
  each: number;
  /** Whether the last shaping row may change fewer than the others, when the change is no multiple of `each`. */
  rest: boolean;
  /** Whether shaping keeps to right-side rows. Nothing in the round, where every round is a right-side one. */
  right_side: boolean;
  /** Flat or in the round, and which row is next. */
  knitting: ShapingKnitting;
  /**
   * Plain rows before the first shaping row, within `PLAIN`: 0 shapes at once. None makes the beginning a gap like
   * the others, as "every 8th row" is often meant.
   */
  first: number | null;
  /** Plain rows at least after the last shaping row, within `PLAIN`; usually `USUAL_LAST`. */
  last: number;
  /** How gaps of two lengths follow each other. */
  order: ShapingOrder;
  /** Plain stitches outside each stitch of a pair, within `EDGE`; only for two stitches a shaping row. */
  edge: number;
  /** Which way a pair leans. */
  slope: ShapingSlope;
  /** How a pair gains. */
  increase: SpacingIncrease;
}

/** Which way a pair leans. */
export type ShapingSlope =
  /** As the edge does: smooth. */
  | "Along"
  /** Against it: a line that shows. */
  | "Across";

/** How gaps of two lengths follow each other. */
export type ShapingOrder =
  /** The short gaps first: steep, then gentle. */
  | "CloseFirst"
  /** The long gaps first: gentle, then steep. */
  | "WideFirst"
  /** All gaps short, and what is over is left plain at the end: one rate to remember. */
  | "OneRate"
  /** Long and short in turn, each shaping row as near to the straight line as whole rows allow. */
  | "Mixed";

/** What is wanted. */
export type ShapingAsk =
  /** So many stitches fewer. */
  | { Lose: number }
  /** So many stitches more. */
  | { Gain: number }
  /** So many stitches in the end; the count now has to be known. */
  | { Reach: number };

/** How many rows, and how long. */
export interface RowsAnswer {
  /** The nearest number that ends as asked, the smaller of two equally near; or the number that was asked about. */
  pick: RowsCount;
  /** By how much its length is over what was wanted; negative when it is under. */
  off: Length;
  /** Whole ridges in them, if it is garter. */
  ridges: number;
  /** Whole repeats of the chart, after its set-up rows. */
  repeats: number;
  /** Rows of the next repeat that are worked; 0 when it ends with a whole one. */
  row: number;
  /** The next below that ends as asked. */
  below: RowsCount | null;
  /** The next above. */
  above: RowsCount | null;
  /** Whether `above` is exactly as near as the pick. */
  as_near: boolean;
  /**
   * Whether the pick ends as asked: in the right row of the chart, and in garter on a whole ridge where the chart
   * ever does.
   */
  ends: boolean;
  /** How long the pick is if the swatch was read half a row wrong, either way. */
  range: Range;
  /** The number that would fit exactly, without edges; seldom whole. */
  ideal: SpacingFraction;
  /** Ahead or behind; none without a tape. */
  course: RowsCourse | null;
  /** What else she should know. */
  notes: RowsNote[];
}

/** What else she should know. */
export type RowsNote =
  /** In the round garter is a knit round and a purl round in turn. */
  | "GarterInTheRound"
  /** Back and forth, with row 1 on the right side, the last row is on this side. */
  | { LastRow: {
      /** On which. */
      side: Side;
    } }
  /** The rows that were asked about end in another row of the repeat than the chart does. */
  | "InsideRepeat"
  /** The rows that were asked about end in the middle of a ridge. */
  | "HalfRidge"
  /** With this repeat garter never ends on a whole ridge. */
  | "NeverWholeRidges"
  /** Longer than was wanted, and nothing shorter ends as asked. */
  | "NoFewer"
  /** So long a piece drops under its own weight when worn, by `DROP`(super::DROP). */
  | "Drops";

/** What the tape says, and what follows. */
export interface RowsCourse {
  /** Ahead, behind or neither. */
  standing: RowsStanding;
  /** What the tape should say, by the unwashed gauge. */
  should_be: Length;
  /** By how much it says more; negative for less. */
  off: Length;
  /** How long what is done will be after washing, if it washes as the swatch did. */
  after_washing: Length;
  /**
   * Rows in all: the pick of the answer, or off course those that come nearest to the wanted length if the rest is
   * knitted as what is done.
   */
  rows: number;
  /** Of these still to be knitted. */
  to_go: number;
  /** Or knitted too many. */
  past: number;
  /** What the tape should say when they are done: unwashed, and without edges. */
  stop_at: Length;
}

/** Whether the knitting is as long as the swatch said it would be. */
export type RowsStanding =
  /** As long, as near as a count to the half row can tell. */
  | "OnCourse"
  /** Longer: the rows are taller than the swatch's, and fewer will do. */
  | "Ahead"
  /** Shorter: the rows are flatter than the swatch's, and it takes more. */
  | "Behind";

/** A number of rows. */
export interface RowsCount {
  /** All rows or rounds. */
  rows: number;
  /** How long they are after washing, with the edges that are measured along. */
  length: Length;
}

/** What is wanted, the gauges, and how the rows may end. */
export interface RowsQuestion {
  /** A length, or a number of rows, ridges or repeats. */
  ask: RowsAsk;
  /** Rows of the *washed* swatch in this very fabric: `Gauge::COUNTS` over `Gauge::SPANS`. */
  gauge: Gauge;
  /** Rows of the swatch before washing, for the tape in mid-knit. */
  unwashed: Gauge | null;
  /** Garter stitch: two rows a ridge. */
  garter: boolean;
  /** In the round, or back and forth with row 1 on the right side. */
  round: boolean;
  /** Rows of one repeat of the chart, within `REPEAT`; 1 when any number will do, 2 to end after a wrong-side row. */
  repeat: number;
  /** Rows before the first repeat, within `SET_UP`. */
  set_up: number;
  /** End after this row of the repeat; 0, or as many as the repeat has, for whole repeats. */
  end_after: number;
  /** How many edges are measured along, within `EDGES`. */
  edges: number;
  /** What the tape says in mid-knit. */
  tape: RowsTape | null;
}

/** What the tape says in mid-knit, on the needle and unwashed. */
export interface RowsTape {
  /** Rows that are done, within `ROWS`. */
  rows: number;
  /** How long they are, without an edge; within `WIDTH`. */
  length: Length;
}

/** From which side the sum is done. */
export type RowsAsk =
  /** How many rows make this washed length, within `WIDTH`. */
  | { Length: Length }
  /** How long so many rows are, within `ROWS`; where they end need not suit the chart. */
  | { Rows: number }
  /** How long so many ridges of garter are: two rows each. */
  | { Ridges: number }
  /** How long so many whole repeats are, with the set-up rows, and the rows after them if there are any. */
  | { Repeats: number };

/** Everything at one's own gauge. */
export interface RegaugeAnswer {
  /** What each of the counts becomes. */
  stitches: RegaugeConverted[];
  /** What each of the rows becomes, and last the rows of the length where there is one. */
  rows: RegaugeConverted[];
  /** Which of the counts to follow as it is. */
  follow: RegaugeFollow | null;
  /**
   * What the size to follow measures, or otherwise what the first count becomes, if the own swatch was read half a
   * stitch wrong, either way; nothing where there is no count.
   */
  range: Range;
  /** The shaping, shared out anew. */
  shaping: RegaugeShaped | null;
  /** What the own gauge moves besides: rows, and yarn. */
  moves: SizingMoves;
  /** Which row gauge the rows, the length and the shaping wait for; none where they are here, or not asked for. */
  rows_wait: RegaugeRowsWait | null;
  /** What else she should know. */
  notes: RegaugeNote[];
}

/** What else she should know. */
export type RegaugeNote =
  /** A round has no edges: these stitches beside the repeats are dropped. */
  | { PlusDropped: {
      /** How many. */
      plus: number;
    } }
  /** Edges and the join are in the counts, not in their measures. */
  | "Outside"
  /** The two gauges were counted over different spans. */
  | "SpansDiffer"
  /** Rows end in the same row of the repeat as the pattern's, where stitches go to whole multiples. */
  | { SameRow: {
      /** Rows of one repeat. */
      repeat: number;
    } }
  /** Back and forth, rows stay odd or even, so that the last is on the same side. */
  | "SameSide"
  /** Both ends of the shaping are converted, and its rate is not. */
  | "SharedOut"
  /** The first row of the shaping is taken as a right-side row. */
  | "RowOneIsRightSide";

/** What the rows, the length and the shaping wait for. */
export type RegaugeRowsWait =
  /** The pattern's row gauge. */
  | "Pattern"
  /** The knitter's own. */
  | "Own"
  /** Both. */
  | "Both";

/** Shaping at one's own gauge. */
export interface RegaugeShaped {
  /** Stitches before. */
  from: number;
  /** Stitches after. */
  to: number;
  /** Rows there are for it. */
  rows: number;
  /** Shaping rows there have to be. */
  times: number;
  /** The fewest rows there is room for them in, where there are too few; 0 otherwise. */
  needs: number;
  /** The instruction, with at least one plain row at the end; none when it needs more rows than there are. */
  schedule: ShapingSchedule | null;
  /** The piece as the pattern has it. */
  was: RegaugePiece;
  /** The piece at one's own gauge. */
  becomes: RegaugePiece;
}

/** A piece that is worked upwards from one count of stitches to another. */
export interface RegaugePiece {
  /** Stitches at its lower edge. */
  from: number;
  /** Stitches at its upper edge. */
  to: number;
  /** Rows from the one to the other. */
  rows: number;
  /** How wide its lower edge is, without edge and seam stitches. */
  lower: Length;
  /** How wide its upper edge is. */
  upper: Length;
  /** How high it is. */
  height: Length;
}

/** The size to follow as it is. */
export interface RegaugeFollow {
  /** Its place in the counts; the one of fewer stitches where two are equally near. */
  size: number;
  /** How much over the wanted measure it is at one's own gauge; negative when it is under. */
  off: Length;
  /** Another that is exactly as near. */
  tied: number | null;
}

/** A count of the pattern, and what it becomes. */
export interface RegaugeConverted {
  /** As the pattern has it. */
  pattern: number;
  /** What it becomes: everything, with edges, seams and the extra one of the join; the smaller of two equally near. */
  count: number;
  /** What would keep the measure exactly, without edges, seams and join; to the thousandth. */
  ideal: SpacingFraction;
  /** Whether the count of the pattern keeps what has to be kept itself. */
  kept: boolean;
  /** What it measures in the pattern, without edges and seams. */
  was: Length;
  /** What it will measure. */
  becomes: Length;
  /** What it would measure if the count of the pattern were kept. */
  unchanged: Length;
}

/** Two gauges, and what is to be brought from the one to the other. */
export interface RegaugeQuestion {
  /** Stitches in a span, as the pattern has it: washed. `Gauge::COUNTS` over `Gauge::SPANS`. */
  pattern: Gauge;
  /** Stitches in a span of the washed swatch; its span may be another. */
  own: Gauge;
  /** Rows in a span, as the pattern has it. */
  pattern_rows: Gauge | null;
  /** Rows in a span of the washed swatch. */
  own_rows: Gauge | null;
  /**
   * Stitches in the pattern, each within `STITCHES`: one count, all of a piece, or those of its sizes. As cast on:
   * with edge and seam stitches and with the extra one of the join, where `knitting` has them.
   */
  counts: number[];
  /**
   * Which places of the pattern's list of stitches are dashes, in order and counted from nought among counts and
   * dashes: sizes without this step. They are kept so that every count stays beside its size; see `places`.
   */
  count_gaps: number[];
  /** Rows in the pattern, each within `ROWS`. */
  rows: number[];
  /** Which places of the pattern's list of rows are dashes, as with `count_gaps`. */
  row_gaps: number[];
  /** A length by measure that is wanted in rows, within `MEASURE`. */
  length: Length | null;
  /** How wide it is to be, or how far round, without edges and seams, within `MEASURE`: which of `counts` to follow. */
  wanted: Length | null;
  /** Shaping in the pattern. */
  shaping: RegaugeShaping | null;
  /** What a count has to be; within the bounds of `cast_on`(crate::cast_on). */
  multiple: Multiple;
  /** In the round or flat, with what stands outside the width. */
  knitting: CastOnKnitting;
  /** Whether odd stays odd and even stays even, for a stitch at the centre. */
  parity: boolean;
  /** Rows of one repeat of the chart, within `REPEAT`: the last row stays the same row of it. */
  row_repeat: number;
}

/** In the round or flat, with what each adds outside the width. */
export type CastOnKnitting =
  /** In the round. */
  | { Round: {
      /** Cast on one more and join by working the first and the last stitch together. */
      extra: boolean;
    } }
  /** Back and forth. */
  | { Flat: {
      /** Edge stitches at each edge that stay to be seen, outside the width; within `EDGE`. */
      edge: number;
      /** Stitches at each edge that the seam takes in; within `EDGE`, usually `USUAL_SEAM`, 0 for no seam. */
      seam: number;
    } };

/** Shaping as the pattern has it. */
export interface RegaugeShaping {
  /**
   * Stitches before, with edge and seam stitches and without the extra one of a join; within
   * `STITCHES`(super::STITCHES).
   */
  from: number;
  /** Stitches after, within the same: a multiple of `each` away. */
  to: number;
  /** Rows from the one to the other, plain ones included, within `ROWS`(super::ROWS). */
  rows: number;
  /** Stitches that one shaping row changes, within `EACH`: 2 at two edges, 8 at eight lines. */
  each: number;
  /** Only in right-side rows, the first row being one. Nothing in the round. */
  right_side_only: boolean;
}

/** The short rows. */
export interface RaiseAnswer {
  /** Stitches that the short rows go over in the end: an even number, both sides alike. */
  across: number;
  /** A stitch of an odd number that stays out. */
  left_out: boolean;
  /** How far from the middle each turn is, in stitches, the nearest first; the same at both sides. */
  turns: number[];
  /** The short rows in the order they are worked. */
  rows: RaiseShortRow[];
  /** Stitches from the last turn to where the round begins, its double stitch not counted. */
  home: number;
  /** How much higher the middle is in the end. */
  raised: Length;
  /** By how much that is over what was wanted; negative when it is under. */
  off: Length;
}

/** One short row. */
export interface RaiseShortRow {
  /** Its number, counted from 1. */
  row: number;
  /** The side that faces the knitter. */
  side: Side;
  /** Whether it begins with the double stitch of the turn before. */
  double: boolean;
  /** What is worked before the turn, the double stitch not counted: `K6`. */
  text: string;
  /** The same as data. */
  worked: Row;
  /** How far from the middle it is turned, in stitches. */
  from_middle: number;
}

/** What is to be raised, and by how much. */
export interface RaiseQuestion {
  /** How wide the back is. */
  across: RaiseAcross;
  /** How high it is to be raised in the middle, washed, within `HEIGHT`. */
  height: Length;
  /** Rows in a span of the washed swatch. */
  rows: Gauge;
  /** Turns at one side, within `TURNS`, where she would rather say than have them worked out. */
  turns: number | null;
  /** How it is turned. */
  method: RaiseMethod;
  /** Where the round begins. */
  begins: RaiseBegins;
}

/** Where the round begins. */
export type RaiseBegins =
  /** In the middle of the back. */
  | "Middle"
  /** At the edge of the back, whose stitches come first. */
  | "Edge";

/** How a short row is turned. */
export type RaiseMethod =
  /** One stitch further, turned, and that stitch pulled up into a double one. */
  | "German"
  /** The next stitch wrapped, and turned. */
  | "Wrap";

/** How wide the back is. */
export type RaiseAcross =
  /** So many stitches, within `ACROSS`. */
  | { Stitches: number }
  /** So wide, at this gauge. */
  | { Width: {
      /** Within `WIDTH`. */
      width: Length;
      /** Stitches in a span of the washed swatch. */
      gauge: Gauge;
    } };

/** The raglan rounds, and what they come to. */
export interface RaglanAnswer {
  /**
   * All stitches: a round of `FULL` adds to body and sleeves, one of `PART` to one of the two; to which,
   * `Answer::rounds` says.
   */
  schedule: ShapingSchedule;
  /** Front and back together: 4 stitches in each of its rounds. */
  body: ShapingTrack;
  /** One sleeve: 2 stitches in each of its rounds. */
  sleeves: ShapingTrack;
  /** Rounds that add to both: 4 stitches to the body and 2 to each sleeve. */
  full: number;
  /** Rounds that add 4 stitches to the body only. */
  body_only: number;
  /** Rounds that add 2 stitches to each sleeve only. */
  sleeves_only: number;
  /** Stitches on the needle before the sleeves are put aside, and before anything is cast on. */
  needle: number;
  /** Stitches of front and back together then. */
  front_and_back: number;
  /** Stitches of one sleeve to put aside. */
  aside: number;
  /** With raglan rounds no closer than every other one, as most are, so many rounds. Common practice, no source. */
  every_other: number;
}

/** Something that grows by the same number in each of its shaping rounds, and how far it strays from the straight line. */
export interface ShapingTrack {
  /** Its shaping rounds, with its own count. */
  schedule: ShapingSchedule;
  /** How far they stray. */
  drift: ShapingDrift;
}

/** How far shaping rounds stray from the straight line. */
export interface ShapingDrift {
  /** Rounds by which the earliest of them comes before its place on the line. */
  early: SpacingFraction;
  /** Rounds by which the latest of them comes behind its place. */
  late: SpacingFraction;
  /** Rounds from one shaping round to the next on the line. */
  gap: SpacingFraction;
}

/** A raglan in the round, from the neck down. */
export interface RaglanQuestion {
  /** Stitches of front and back together at the beginning, within `STITCHES`. */
  body: number;
  /** Stitches of one sleeve at the beginning, within `STITCHES`. */
  sleeve: number;
  /** Stitches round the body below the underarm, within `STITCHES`. */
  body_to: number;
  /** Stitches round one sleeve below the underarm, within `STITCHES`. */
  sleeve_to: number;
  /** Stitches cast on at one underarm, within `UNDERARM`. */
  underarm: number;
  /** Rounds there are, within `ROWS`. */
  rounds: number;
  /** Plain rounds before the first raglan round, within `PLAIN`. */
  first: number;
  /** Plain rounds at least at the end, within `PLAIN`; usually `USUAL_LAST`, before the sleeves are put aside. */
  last: number;
  /** What the rounds are shared out for: usually to be held in the head. */
  rhythm: ShapingPace;
}

/** What shaping rounds are shared out for. */
export type ShapingPace =
  /** To be held in the head: at most two rates. */
  | "Easiest"
  /** To lie as near to the straight line as whole rounds allow. */
  | "MostEven";

/** Which needle it is, and what else it is called. */
export interface NeedlesAnswer {
  /** The needle, or each that it may be, thinnest first: a number can stand for two, and a hole lets several pass. */
  needles: NeedlesNeedle[];
}

/** One needle and its names. */
export interface NeedlesNeedle {
  /** How thick it is, exactly as named. */
  across: Length;
  /**
   * The equal or nearest of each system, in the order of `System::ALL`; two where both are as near, thinner first,
   * and none where the system has none so thin or so thick.
   */
  named: NeedlesNamed[];
  /** The smallest hole of a needle gauge that it passes wholly; none when it is thicker than all. */
  hole: Length | null;
  /** The next smaller hole, which stops it; none when it is thinner than all. */
  stops: Length | null;
}

/** A needle by a system. */
export interface NeedlesNamed {
  /** The system. */
  system: System;
  /** Its number; none for millimetres. */
  number: Number | null;
  /** How thick that needle is. */
  across: Length;
  /** How much thicker that is than the needle in question: nothing when they are equal. */
  off: Length;
  /** How sure the number is. */
  certainty: Certainty;
}

/** A way to name how thick a needle is. */
export type System =
  /** Millimetres across, as sold. */
  | "Metric"
  /** US numbers: the higher, the thicker. */
  | "Us"
  /** Old UK and Canadian numbers: the higher, the thinner. */
  | "Uk"
  /** Japanese numbers: the higher, the thicker. */
  | "Japanese";

/** A needle, as it is named. */
export interface NeedlesQuestion {
  /** What is known of it. */
  size: NeedlesSize;
}

/** A needle, as it is named. */
export type NeedlesSize =
  /** How thick it is, within `NEEDLE`(crate::tail::NEEDLE). Never rounded. */
  | { Metric: Length }
  /** Its US number. */
  | { Us: Number }
  /** Its old UK or Canadian number. */
  | { Uk: Number }
  /** Its Japanese number. */
  | { Japanese: Number }
  /** No number is left on it: the smallest hole of a needle gauge that it passes wholly. */
  | { Hole: Length };

/** What the swatch says. */
export interface GaugeAnswer {
  /** Across. */
  stitches: GaugeMeasured;
  /** Upwards; none when no rows were counted. */
  rows: GaugeMeasured | null;
  /**
   * What to do next, by stitches alone: a suggestion, and the next swatch decides. None where there is no pattern and
   * the spots agree.
   */
  next: GaugeNext | null;
  /** From which needle to which, where the needle is known and another is next. */
  change: GaugeChange | null;
  /** Stitches match the pattern's and rows do not: lengths by measure hold; counted rows come out otherwise. */
  rows_only: boolean;
  /** What else she should know. */
  notes: GaugeNote[];
}

/** What else she should know. */
export type GaugeNote =
  /** What a needle size changes is a suggestion; the next swatch decides. */
  | "NeedleIsATry"
  /** Counts from before washing stand in for washed ones. */
  | "NotWashed"
  /** Long and heavy pieces drop further than a swatch. */
  | "Drops";

/** From one needle to the next to try. */
export interface GaugeChange {
  /** The needle the swatch was knitted on. */
  from: GaugeCalled;
  /** The one to try; none where the table ends before it. */
  to: GaugeCalled | null;
}

/** What to do next. */
export type GaugeNext =
  /** The spots are further apart than the eye misreads: count again, away from the edges. */
  | "CountAgain"
  /**
   * The counts miss the pattern by half a needle size or more, and yet could be the pattern's, half a stitch misread:
   * count over a longer span.
   */
  | "CountLonger"
  /** The same needle: the pattern is missed by less than half a size, so that another lands further off. */
  | "Keep"
  /** Too few stitches: a smaller needle. */
  | { Down: {
      /** How many sizes, at most `MOST_SIZES`. */
      sizes: number;
    } }
  /** Too many stitches: a larger needle. */
  | { Up: {
      /** How many sizes, at most `MOST_SIZES`. */
      sizes: number;
    } }
  /** Further off than `MOST_SIZES` needles are likely to bring: another yarn, or another size at one's own gauge. */
  | "AnotherYarn";

/** One direction: across or upwards. */
export interface GaugeMeasured {
  /**
   * The gauge to knit by and to keep: the mean of the washed counts, or else of the unwashed ones, to the thousandth;
   * over the span of the counts, so that what reckons with half a stitch of it reckons right; where they differ, over
   * 4 in if the first was taken over whole or half inches, else over 10 cm.
   */
  gauge: Gauge;
  /** The same over 10 cm if the first count was taken over inches, else over 4 in. */
  converted: Gauge;
  /** Whether that is of the washed swatch. */
  washed: boolean;
  /** The gauge as it lies on the needle, for the tape in mid-knit. */
  unwashed: Gauge | null;
  /** All counts over all spans together. */
  all: Gauge;
  /** How many counts. */
  readings: number;
  /** The count with the fewest in a width, as it was taken. */
  fewest: Gauge;
  /** The count with the most in a width, as it was taken. */
  most: Gauge;
  /** How much more the most is than the fewest, in per mille. */
  spread_permille: number;
  /** Whether these two differ by more than half a stitch of reading on either side. */
  uneven: boolean;
  /**
   * What the wanted length would measure with the pattern's counts, if nothing changed; without a pattern the wanted
   * length itself.
   */
  would_be: Length;
  /**
   * How far that is known if each count may be half a stitch wrong: as it was counted, and if as many counts had been
   * taken over each of the longer spans that are usual. Of uneven spots only the first, as wide as the spots.
   */
  reading: GaugeReading[];
  /** Beside the pattern's gauge. */
  against: GaugeAgainst | null;
  /** What washing does; none unless both were counted. */
  wash: GaugeWash | null;
}

/** What washing does. */
export interface GaugeWash {
  /** How much longer a length becomes, in per mille; negative when it shrinks. */
  permille: number;
  /** What to knit, by the tape and unwashed, so that the washed length is the wanted one. */
  knit: Length;
  /** What the wanted length would become if it were knitted by the tape. */
  becomes: Length;
}

/** Beside the pattern's gauge. */
export interface GaugeAgainst {
  /** How many more stitches than the pattern's, in per mille; negative for fewer. */
  off_permille: number;
  /** Whether the pattern's lies within half a stitch of reading. */
  matches: boolean;
}

/** How far a length is known when each count may be half a stitch wrong. */
export interface GaugeReading {
  /** The span of one count; of spans that differ, the mean. */
  span: Length;
  /** Half a stitch in that span, divided by the square root of the number of counts, in per mille of the count. */
  permille: number;
  /** The length at the least: `W / (1 + 0.5 / N)`. */
  least: Length;
  /** The length at the most: `W / (1 - 0.5 / N)`. */
  most: Length;
}

/** Counts from the swatch, the pattern's gauge, and what is to be knitted. */
export interface GaugeQuestion {
  /**
   * Stitches of the *washed* swatch, one count a spot, each over its own span: `Gauge::COUNTS` over
   * `Gauge::SPANS`. They may be left out if unwashed ones are counted.
   */
  stitches: Gauge[];
  /** Rows of the washed swatch. */
  rows: Gauge[];
  /** Stitches before washing. */
  stitches_unwashed: Gauge[];
  /** Rows before washing. */
  rows_unwashed: Gauge[];
  /** The pattern's stitches, with their own span. */
  pattern: Gauge | null;
  /** The pattern's rows, with their own span. */
  pattern_rows: Gauge | null;
  /** The needle the swatch was knitted on, within `NEEDLE`; where it is known the next one has a name. */
  needle: Length | null;
  /** How wide the washed piece is to be; within `WIDTH`. */
  width: Length;
  /** How long it is to be where it is worked by counted rows; within `WIDTH`. */
  length: Length;
}

/** How it grows and hangs. */
export interface FlareAnswer {
  /** Plain rounds, then an increase round, so many times; with every increase round and the count after it. */
  schedule: ShapingSchedule;
  /** How far they stray from the straight line. */
  drift: ShapingDrift;
  /** Stitches at the hem. */
  hem: number;
  /** Stitches gained. */
  gain: number;
  /** Rounds. */
  rounds: number;
  /** Increase rounds among them. */
  increase_rounds: number;
  /** Increases in the last of them, where they are fewer than in the others. */
  rest: number | null;
  /** What a flat circle gains in a round, in thousandths of a stitch. */
  flat_rate: number;
  /** What a flat piece gains in all these rounds: the sum, rounded once. */
  flat_gain: number;
  /** How it hangs. */
  hang: FlareHang;
  /** What it measures. */
  shape: FlareShape;
  /** What a bind-off takes. */
  bind_off: FlareBindOffYarn;
}

/** What a bind-off takes by each way, the least and the most: of the stitches of the last round, not of the neck. */
export interface FlareBindOffYarn {
  /** Of the plain chain. */
  plain: Range;
  /** Of one that stretches. */
  elastic: Range;
  /** Of an i-cord. */
  i_cord: Range;
}

/** The finished piece, washed, at rest. Lengths are rounded once. */
export interface FlareShape {
  /** Round the neck along its stitches. */
  neck_girth: Length;
  /** Round the hem along its stitches, waves and all. */
  hem_girth: Length;
  /** From the axis to the neck. */
  neck_radius: Length;
  /** From the axis to the hem, as it hangs or lies. For a ruffle no more than `Self::flat_radius`. */
  radius: Length;
  /** From the axis to the hem of a piece that lies flat: neck and slant together. */
  flat_radius: Length;
  /** From neck to hem along the fabric: the rounds. */
  slant: Length;
  /** How far the hem hangs below the neck; none where it grows as fast as a flat circle or faster. */
  drop: Length;
  /** The hem's stitches over the circle they lie on, in thousandths: 1000, and more for a ruffle. */
  fullness: number;
}

/** How a piece hangs. */
export type FlareHang =
  /** It does not grow. */
  | "Tube"
  /** It grows more slowly than a flat circle. */
  | "Cone"
  /** It lies flat, or within `STILL_FLAT` of it. */
  | "Flat"
  /** It grows faster, and waves. */
  | "Ruffle";

/** Where it begins, where it ends, and how it grows. Worked in the round, from the neck down. */
export interface FlareQuestion {
  /** Stitches at the neck, within `STITCHES`. */
  neck: number;
  /** How wide it is to be at the hem. */
  hem: FlareHem;
  /** How deep, measured along the fabric from neck to hem; within `DEPTH`. */
  depth: Length;
  /** Stitches in a span of the *washed* swatch. */
  gauge: Gauge;
  /**
   * Rows in a span of the washed swatch *of the fabric of this section*: garter has half as many rows again as
   * stockinette, and a third fewer stitches to increase.
   */
  row_gauge: Gauge;
  /**
   * Stitches gained in one increase round, within `EACH` and no more than the neck has: so many lines, or so many
   * scattered.
   */
  each: number;
  /**
   * Whether the increases stand in lines, one above the other; otherwise they are scattered evenly over the round, and
   * the last increase round may have fewer.
   */
  lines: boolean;
  /** Stitches of one repeat that the hem is to be a multiple of, within `MULTIPLE`; 1 when any count will do. */
  multiple: number;
  /**
   * Plain rounds before the first increase; with none, beginning and end share a gap, so that a single increase round
   * stands in the middle.
   */
  first: number | null;
  /** Plain rounds at least at the end; usually `USUAL_LAST`, before a bind-off. */
  last: number;
  /** What the increase rounds are shared out for: usually to be held in the head. */
  rhythm: ShapingPace;
}

/** How wide the hem is to be. */
export type FlareHem =
  /** As wide as lies flat. */
  | "Flat"
  /** So far round along its stitches, within `GIRTH`; the nearest count that can be had. */
  | { Girth: Length }
  /** Exactly so many stitches, within `STITCHES`. */
  | { Stitches: number };

/** Which cords serve, and when. */
export interface CordsAnswer {
  /** What lies on the needle in the first round and in the last, before washing. */
  girths: Length[];
  /** Every cord at hand, and when it serves. */
  cords: CordsCord[];
  /** The fewest cords that serve all that can be served, shortest first. */
  picks: Length[];
  /** Which of them when, in the order of the rounds, with as few changes as there can be. */
  plan: CordsStretch[];
  /** What one cord more would give, where a change of the plan can fall on a single round only. */
  easier: CordsEasier | null;
  /** The needle that all of them have to be, where it is known: another thickness would change the gauge. */
  needle: GaugeCalled | null;
}

/** The piece on one cord more, with wider windows to change in. */
export interface CordsEasier {
  /** The cord that is added. */
  cord: Length;
  /** Which cord when. */
  plan: CordsStretch[];
}

/** A part of the piece on one cord, or on none. */
export interface CordsStretch {
  /** What it is knitted on. */
  by: CordsBy;
  /** The first round that can be knitted on to it, counted from 1. */
  earliest: number;
  /** The last round by which it has to be. Any plain round between the two will do. */
  latest: number;
  /** The last round it serves. */
  last: number;
}

/** What a part of the piece is knitted on. */
export type CordsBy =
  /** A cord. */
  | { Cord: Length }
  /** No cord at hand serves. */
  | { Gap: CordsGap };

/** What no cord at hand serves, and what would. */
export interface CordsGap {
  /** The smallest girth in it. */
  least: Length;
  /** The largest. */
  most: Length;
  /** Whether it is smaller than every cord: double-pointed needles, two circulars, or magic loop. */
  small: boolean;
  /** The shortest and the longest that one cord may be to serve all of it; none where no such cord is sold. */
  cord: [Length, Length] | null;
  /** The shortest cord that is sold and serves all of it, and the longest; the same where there is one only. */
  sold: [Length, Length] | null;
  /**
   * The shortest cord that is sold and is long enough for magic loop, tips and all; none back and forth, and where none
   * so long is sold.
   */
  magic_loop: Length | null;
}

/** A cord at hand, and when it serves. */
export interface CordsCord {
  /** How long it is, tips and all. */
  length: Length;
  /** The fewest stitches it serves, and the most; nanometres where a girth was typed. */
  stitches: [number, number];
  /** The longest tip with which it bends into a ring; none where that does not matter. */
  tip: Length | null;
  /** Whether its tips are longer than that, so that it serves nothing. */
  stiff: boolean;
  /** The rounds it serves. */
  runs: CordsRun[];
}

/** Rounds one after the other, counted from 1. */
export interface CordsRun {
  /** The first. */
  from: number;
  /** The last. */
  to: number;
}

/** A piece, and the cords there are. */
export interface CordsQuestion {
  /** What goes round the cord. */
  around: CordsAround;
  /** Stitches in a span of the swatch *before washing*: `Gauge::COUNTS` over `Gauge::SPANS`. */
  unwashed: Gauge | null;
  /** The same after washing: used, for want of a better one, where `unwashed` is not known. */
  washed: Gauge | null;
  /** Knitted back and forth. */
  flat: boolean;
  /** The cords at hand, each with its tips, within `CORD`, at most as many as `CORDS`; none for `USUAL`. */
  cords: Length[];
  /** How long one tip is on cords up to `TIPS_MATTER_TO`, where known; within `TIP`. */
  tip: Length | null;
  /** How thick the needles are, where known; within `NEEDLE`. All cords have to be of that thickness. */
  needle: Length | null;
}

/** What goes round the cord. */
export type CordsAround =
  /** One girth, measured on the needle before washing and not stretched; within `GIRTH`. */
  | { Girth: Length }
  /** Stitches that grow or shrink evenly; the same at both ends for a tube. */
  | { Even: {
      /** Stitches in the first round, within `STITCHES`. */
      from: number;
      /** Stitches in the last round, within `STITCHES`. */
      to: number;
      /** Rounds, the first and the last included; within `ROUNDS`, and two at the least where the stitches change. */
      rounds: number;
    } }
  /** Stitches that change in steps, as a yoke has them. */
  | { Steps: {
      /** Stitches in the first round, within `STITCHES`. */
      from: number;
      /** The steps, each in a later round than the one before; one at the least. */
      steps: CordsStep[];
      /** Rounds, the first and the last included: no fewer than the steps take; within `ROUNDS`. */
      rounds: number;
    } }
  /** Stitches of each round, each within `STITCHES`, as many as `ROUNDS`: from a schedule. */
  | { Rounds: number[] };

/** So many stitches after a round. */
export interface CordsStep {
  /** The round in which the stitches change, counted from 1. */
  round: number;
  /** Stitches there are after it, within `STITCHES`. */
  stitches: number;
}

/** How many to cast on. */
export interface CastOnAnswer {
  /** The nearest count that the pattern can be worked on; the smaller of two that are equally near. */
  pick: CastOnCount;
  /** One repeat fewer, unless there is none. */
  below: CastOnCount | null;
  /** One repeat more, unless that is more than `STITCHES`. */
  above: CastOnCount | null;
  /** Whether `above` is exactly as near as the pick. */
  as_near: boolean;
  /** How wide the pick is if the swatch was read half a stitch wrong, either way. */
  range: Range;
  /** The count that would fit exactly: width times gauge, seldom whole. */
  ideal: SpacingFraction;
  /** Stitches beside the repeats that are counted: none in the round. */
  plus: number;
  /** Where to set markers while casting on, at each `Distance`. */
  markers: CastOnMarkerPlan[];
  /** What else she should know. */
  notes: CastOnNote[];
}

/** One thing to know. */
export type CastOnNote =
  /** `plus` stitches were dropped, since a round has no edges. */
  | { PlusDropped: {
      /** How many were asked for. */
      plus: number;
    } }
  /** Join by working the first and the last stitch together; so many are left. */
  | { JoinTogether: {
      /** Stitches in the round from then on. */
      after: number;
    } }
  /** The seams take in so many, and they are outside the width. One an edge is common practice, no source. */
  | { SeamsTakeIn: {
      /** Stitches, both edges together. */
      stitches: number;
    } }
  /** Edge stitches stay to be seen, and make the piece wider than was asked. */
  | { EdgesWiden: {
      /** Stitches, both edges together. */
      stitches: number;
    } };

/** Markers at one distance, and what is left behind the last. */
export interface CastOnMarkerPlan {
  /** All stitches that are cast on, the extra one of a join included. */
  stitches: number;
  /** A marker after so many. */
  every: number;
  /** Full groups. */
  groups: number;
  /** Stitches of the last group where it is not full. */
  rest: number;
}

/** A count that the pattern can be worked on. */
export interface CastOnCount {
  /** Stitches to cast on: everything, the extra one of the join included. */
  cast_on: number;
  /** Stitches there are from the first row or round on: one fewer than cast on where one was extra for the join. */
  worked: number;
  /** Stitches that make the width: without edges, seams and the extra one. */
  inside: number;
  /** Whole repeats in them. */
  repeats: number;
  /** How wide those are, or how far round, after washing. */
  width: Length;
  /** By how much `width` is over what was wanted; negative when it is under. */
  off: Length;
}

/** What is wanted, and the swatch. */
export interface CastOnQuestion {
  /** How wide the washed piece is to be, or how far round; without edge and seam stitches. Within `WIDTH`. */
  width: Length;
  /** Stitches in a span of the *washed* swatch: `Gauge::COUNTS` over `Gauge::SPANS`. */
  gauge: Gauge;
  /** What the pattern asks the count to be. */
  multiple: Multiple;
  /** In the round or flat. */
  knitting: CastOnKnitting;
}

/** A count over a span, in one direction. */
export interface Gauge {
  thousandths: number;
  span: Length;
}

/** A weight, exact, in whole nanograms. */
export type Mass = number;

/** A length, exact, in whole nanometres; negative is allowed (ease can be). */
export type Length = number;

/** Any unit that can be written behind a number. */
export type Unit =
  /** A unit of length, as in `7 in`. */
  | { Length: LengthUnit }
  /** A unit of weight, as in `50 g`. */
  | { Mass: MassUnit }
  /** A thing that is counted, as in `132 sts`. */
  | { Count: CountUnit };

/** A thing that is counted, by the word behind the number. */
export type CountUnit =
  /** `st`, `sts`, `stitches`. */
  | "Stitch"
  /** `row`, `rows`. */
  | "Row"
  /** `rnd`, `rnds`, `rounds`. */
  | "Round"
  /** `ball`, `skein`, `hank`. */
  | "Ball"
  /** `time`, `times`, `x`. */
  | "Time";

/** A unit that weights are written in. */
export type MassUnit =
  /** Gram: balls. */
  | "Gram"
  /** Kilogram: cones and lots. */
  | "Kilogram"
  /** Ounce avoirdupois, 28.349523125 g: balls. */
  | "Ounce"
  /** Pound avoirdupois, 16 ounces: cones and lots. */
  | "Pound";

/** A unit that lengths are written in. */
export type LengthUnit =
  /** Millimetre: needles. */
  | "Mm"
  /** Centimetre: bodies and knitting. */
  | "Cm"
  /** Metre: yarn. */
  | "M"
  /** Inch, 25.4 mm: bodies and knitting. */
  | "Inch"
  /** Yard, 0.9144 m: yarn. */
  | "Yard";

/** Why a text is not the quantity that is wanted, with what would be right where there is something. */
export type Unreadable =
  /** Nothing is written. */
  | "Empty"
  /** It breaks off where more has to follow, such as `7 1/`, `7-` or a sign alone. While she types, a page may wait. */
  | "Unfinished"
  /** It does not begin with a number, or the number is not written in any known way (`1.2.3`). */
  | "NotANumber"
  /** There are two numbers where one is wanted, such as `7-8` or `132 (144)`. */
  | "TwoNumbers"
  /** What stands behind the number is no unit that is known here. */
  | "UnknownUnit"
  /** The unit measures something else, such as grams for a length. */
  | { WrongKind: {
      /** The unit that was written. */
      written: Unit;
      /** What is measured here. */
      wanted: Dimension;
    } }
  /** It may be meant in several ways, such as `1,000 m`: it has to be asked which. */
  | { Ambiguous: Readings }
  /** A part of one where only whole ones make sense, such as half a stitch. */
  | { NotWhole: {
      /** The nearest count below that is accepted. */
      below: number;
      /** The nearest count above that is accepted. */
      above: number;
    } }
  /** Less than is accepted. */
  | { TooSmall: {
      /** The least that is accepted. */
      least: Amount;
    } }
  /** More than is accepted. */
  | { TooLarge: {
      /** The most that is accepted. */
      most: Amount;
    } }
  /** A fraction with nought below the stroke. */
  | "ZeroDenominator";

/** A quantity of any kind: how a limit or a reading travels in an error. */
export type Amount =
  /** A length; nanometres when it is written out as data. */
  | { Length: Length }
  /** A weight; nanograms when it is written out as data. */
  | { Mass: Mass }
  /** A count. */
  | { Count: number };

/** Why a text is in doubt, and what it may mean: at most three ways, each of which the field accepts. */
export interface Readings {
  /** Why. */
  cause: Cause;
  /** The way that is named first. */
  first: Meant;
  /** Another one. */
  second: Meant | null;
  /** And another. */
  third: Meant | null;
}

/** One way in which a text may be meant. */
export type Meant =
  /** A count. */
  | { Count: number }
  /** A length, in the unit it was typed in. */
  | { Length: {
      /** How long. */
      value: Length;
      /** The unit. */
      unit: LengthUnit;
    } }
  /** A weight, in the unit it was typed in. */
  | { Mass: {
      /** How heavy. */
      value: Mass;
      /** The unit. */
      unit: MassUnit;
    } }
  /** A needle by its number. */
  | { Needle: {
      /** Whose number. */
      system: System;
      /** The number. */
      number: Number;
      /** How thick that needle is. */
      across: Length;
    } };

/** Why a text may be meant in several ways. */
export type Cause =
  /** A comma that parts thousands or decimals, as in `1,150`. */
  | "Comma"
  /** A point that parts thousands or decimals, as in `1.500`. */
  | "Point"
  /** A space that parts thousands or two numbers, as in `88 112`. */
  | "Space"
  /** A number that may be millimetres or a needle's name, as in `10 1/2`; beside US needles any that is a US number. */
  | "NeedleSystem"
  /** Two needles are sold under that number, as US 17. */
  | "TwoNeedles"
  /** No needle has that number; the ways are its neighbours. */
  | "NoSuchNeedle";

/** What is being measured, whatever the unit. */
export type Dimension =
  /** How long. */
  | "Length"
  /** How heavy. */
  | "Mass"
  /** How many. */
  | "Count";

/** One thing that has to change before there is an answer. */
export interface Problem {
  /** Where in the question. */
  field: string;
  /** What is wrong, with the nearest thing that would be right. */
  kind: Kind;
}

/** What is wrong, with the nearest thing that would be right. */
export type Kind =
  /** The text is not a quantity. */
  | { Unreadable: Unreadable }
  /** The text is not such a list. */
  | { UnreadableList: Unread }
  /** The number is smaller than can be worked with. */
  | { TooFew: {
      /** The smallest that works. */
      least: number;
    } }
  /** The number is larger than can be worked with. */
  | { TooMany: {
      /** The largest that works. */
      most: number;
    } }
  /** The quantity is smaller than can be worked with. */
  | { TooSmall: {
      /** The smallest that works. */
      least: Amount;
    } }
  /** The quantity is larger than can be worked with. */
  | { TooLarge: {
      /** The largest that works. */
      most: Amount;
    } }
  /** This has to be answered before the rest means anything. */
  | "Missing"
  /** It is none of the things to choose from: no question holds such a choice, and a link may name one. */
  | "NotOffered"
  /** The gauge that is known cannot tell the yarn in a stitch: a stockinette gauge can, or a swatch on the scale. */
  | "NeedsSwatch"
  /** That number cannot be had exactly; these are the nearest that can. */
  | { NoExact: {
      /** The nearest below. */
      below: number | null;
      /** The nearest above. */
      above: number | null;
    } }
  /** It is so already; there is nothing to change. */
  | "Already"
  /** Another field says another count for the same thing. */
  | { Differs: {
      /** What the other field says. */
      other: number;
    } }
  /** It is such a multiple already; these are the next ones. */
  | { AlreadyMultiple: {
      /** The next below that can be had. */
      below: number | null;
      /** The next above that can be had. */
      above: number | null;
    } };

/** A piece of a list that could not be read. */
export interface Unread {
  /** Where in the text the piece begins, in bytes. */
  from: number;
  /** Where it ends. */
  to: number;
  /** What is wrong with it. */
  why: WhyUnread;
}

/** What is wrong with a piece of a list. */
export type WhyUnread =
  /** A number that cannot be one of these. */
  | { Number: Unreadable }
  /** A mark that has no place in a list. */
  | "Misplaced"
  /** A number that would be left unused. */
  | "Unused"
  /** Centimetres and inches that are not the same girths. */
  | "TwoUnits"
  /** More than one list. */
  | "TwoLists"
  /** No names, and the largest number is so many times the smallest that some of them are no girths. */
  | "FarApart"
  /** Not as many numbers as there are sizes. */
  | { NotAsMany: {
      /** How many there are. */
      numbers: number;
      /** How many sizes there are. */
      sizes: number;
    } };

/**
 * "The hem is to be 100 cm round and my washed swatch has 21 stitches in 10 cm. How many do I cast on?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function castOn(question: Asked<CastOnQuestion, 'width' | 'gauge'>): CastOnResult;

/**
 * "This yoke grows from 90 stitches to 300. Which circular needles do I need, and when do I change?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function cords(question: Asked<CordsQuestion, 'around'>): CordsResult;

/**
 * "From 96 stitches at the neck to a hem of 3 m, in a depth of 30 cm. When do I increase, and how will it hang?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function flare(question: Asked<FlareQuestion, 'neck' | 'depth' | 'gauge' | 'row_gauge'>): FlareResult;

/**
 * "I counted 21 stitches in 10 cm, and the pattern has 19. Which needle do I try next?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function gauge(question: Asked<GaugeQuestion, 'stitches'>): GaugeResult;

/**
 * "The pattern says US 7. Which needle is that, and what is it called elsewhere?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function needles(question: Asked<NeedlesQuestion, 'size'>): NeedlesResult;

/**
 * Writes a length as finely as it is usually shown: `"7 1/2 in"`, `"19 cm"`. For the eye: it is rounded.
 *
 * # Errors
 * A `TypeError` when either is not what it should be.
 */
export function printLength(length: Length, unit: LengthUnit): string;

/**
 * Writes a weight as finely as it is usually shown: `"48.5 g"`, `"1.76 oz"`. For the eye: it is rounded.
 *
 * # Errors
 * A `TypeError` when either is not what it should be.
 */
export function printMass(mass: Mass, unit: MassUnit): string;

/**
 * "From a neck of 56 and twice 16 stitches to a body of 200 and sleeves of 68. Which rounds, and how many?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function raglan(question: Asked<RaglanQuestion, 'body' | 'sleeve' | 'body_to' | 'sleeve_to' | 'rounds'>): RaglanResult;

/**
 * "My yoke is worked in the round and the back of the neck is to sit 2.5 cm higher. Where do I turn?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function raise(question: Asked<RaiseQuestion, 'across' | 'height' | 'rows'>): RaiseResult;

/**
 * Reads a count: `"132"`, `"1,000 sts"`. Half a stitch is unreadable, with the counts either side.
 *
 * # Errors
 * A `TypeError` when `text` is no string.
 */
export function readCount(text: string): Reading<number>;

/**
 * Reads a gauge in one direction, such as `"21 1/2"` or `"22 sts = 4 in"`, counted over a span, such as `readLength("10 cm", "Cm").value`.
 *
 * # Errors
 * A `TypeError` when `text` is no string or `over` no length above zero.
 */
export function readGauge(text: string, over: Length): Reading<Gauge>;

/**
 * Reads a length: `"7 1/2 in"`, `"19,5"`. Without a unit in the text, `unit` is meant.
 *
 * # Errors
 * A `TypeError` when `text` is no string or `unit` no unit.
 */
export function readLength(text: string, unit: LengthUnit): Reading<Length>;

/**
 * Reads a weight: `"50 g"`, `"1.75 oz"`. Without a unit in the text, `unit` is meant.
 *
 * # Errors
 * A `TypeError` when `text` is no string or `unit` no unit.
 */
export function readMass(text: string, unit: MassUnit): Reading<Mass>;

/**
 * Reads how thick a needle is: `"4"` and `"4 mm"`, `"US 6"`, `"6 US"`, `"UK 8"`. A number alone is millimetres; where it may
 * be a needle's name, as `"10 1/2"`, it is unreadable, with the needles it may mean.
 *
 * # Errors
 * A `TypeError` when `text` is no string.
 */
export function readNeedle(text: string): Reading<Length>;

/**
 * "It has 180 stitches at 20 in 10 cm, and I knit 22. What do I cast on?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function regauge(question: Asked<RegaugeQuestion, 'pattern' | 'own'>): RegaugeResult;

/**
 * "The body is to be 40 cm long and my washed swatch has 28 rows in 10 cm. How many rows is that, and am I on course?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function rows(question: Asked<RowsQuestion, 'ask' | 'gauge'>): RowsResult;

/**
 * "I have to lose 18 stitches in the next 66 rows, one at each edge. Which rows?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function shaping(question: Asked<ShapingQuestion, 'ask' | 'rows'>): ShapingResult;

/**
 * "My pattern is written for five sizes. Which of its numbers are mine?" A decision or a line is named by the words of its
 * line, so that it outlives what is changed elsewhere in the text. Places are bytes of the text in UTF-8.
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function sizesInText(question: Asked<SizesInTextQuestion, 'text'>): SizesInTextResult;

/**
 * "My bust is 91 cm. Which size do I knit, and how will it sit?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function sizing(question: Asked<SizingQuestion, 'bust' | 'sizes' | 'listed'>): SizingResult;

/**
 * "I have 132 stitches and want to lose 16 evenly in this round. What do I knit?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function spacing(question: Asked<SpacingQuestion, 'stitches' | 'ask'>): SpacingResult;

/**
 * "27 stitches of a shoulder are to go in 4 steps. How many do I bind off, and when?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function stairs(question: Asked<StairsQuestion, 'stitches' | 'ask'>): StairsResult;

/**
 * "I hope for 21 stitches in 10 cm. How many do I cast on to measure that properly?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function swatch(question: Asked<SwatchQuestion, 'gauge'>): SwatchResult;

/**
 * "I cast on 120 stitches long-tail. How much yarn do I leave hanging before the slip knot?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function tail(question: Asked<TailQuestion, 'stitches'>): TailResult;

/**
 * "Does every line of this pattern come out, in every size? And where one does not, what would?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function written(question: Asked<WrittenQuestion, 'text'>): WrittenResult;

/**
 * "I am knitting this many stitches. How many balls do I buy?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function yarn(question: Asked<YarnQuestion, 'ask' | 'reserve'>): YarnResult;

/**
 * "96 stitches at the neck, 320 at the underarm, 60 rounds, shaped in 4 of them. How many in each, how are they spaced, and
 * how is the yoke divided?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function yoke(question: Asked<YokeQuestion, 'from' | 'to' | 'rounds'>): YokeResult;

/**
 * Starts: everything else is called after this. In a page the WebAssembly is fetched from beside the module, or from
 * `source`. In node it has started by itself, and this does nothing.
 */
export default function init(source?: string | URL | Request | Response | BufferSource | WebAssembly.Module): Promise<void>;

/** Starts with the bytes of the WebAssembly (`loopwright/wasm`), without waiting. */
export function initSync(source: BufferSource | WebAssembly.Module): void;
