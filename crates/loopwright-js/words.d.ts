import type {
  Asked,
  Result,
  Reading,
  CastOnResult,
  CordsResult,
  FlareResult,
  GaugeResult,
  NeedlesResult,
  RaglanResult,
  RaiseResult,
  RegaugeResult,
  RowsResult,
  ShapingResult,
  SizesInTextResult,
  SizingResult,
  SpacingResult,
  StairsResult,
  SwatchResult,
  TailResult,
  WrittenResult,
  YarnResult,
  YokeResult,
  YokeAnswer,
  YokeDivision,
  YokeRound,
  Row,
  Item,
  Varied,
  Run,
  Stitch,
  ShapingSchedule,
  ShapingBlock,
  ShapingKnitting,
  Side,
  YokeQuestion,
  YokeGrowth,
  YarnAnswer,
  YarnNote,
  YarnLine,
  Certainty,
  YarnPart,
  YarnPerYarn,
  YarnPerStitch,
  YarnFound,
  YarnStitchSum,
  YarnClose,
  YarnEstimate,
  YarnQuestion,
  YarnBall,
  YarnAsk,
  YarnPiece,
  YarnExtras,
  YarnSwatch,
  YarnRest,
  Fabric,
  YarnSection,
  YarnBindOff,
  YarnShape,
  YarnLevel,
  WrittenAnswer,
  WrittenBracketed,
  WrittenPlace,
  WrittenFault,
  WrittenFaultKind,
  WrittenFailure,
  WrittenDrawn,
  WrittenCell,
  WrittenCellKind,
  WrittenNear,
  WrittenWay,
  WrittenEdit,
  WrittenWorked,
  WrittenOtherwise,
  WrittenDoubt,
  WrittenOutcome,
  WrittenLineWorked,
  WrittenLineKind,
  WrittenQuestion,
  WrittenOwnStitch,
  Working,
  TailAnswer,
  TailRemaining,
  TailVerdict,
  TailGives,
  SpacingFraction,
  TailWhy,
  TailEstimate,
  TailPiece,
  TailWay,
  Weight,
  TailStrand,
  Range,
  TailQuestion,
  TailLeft,
  TailThickness,
  TailMethod,
  SwatchAnswer,
  SwatchNote,
  SwatchNeedles,
  GaugeCalled,
  Number,
  SwatchRows,
  SwatchQuestion,
  Multiple,
  StairsAnswer,
  StairsStair,
  StairsEdge,
  StairsQuestion,
  StairsWay,
  StairsPlace,
  StairsAsk,
  SpacingAnswer,
  SpacingStep,
  SpacingNote,
  SpacingMultiples,
  SpacingReached,
  SpacingWay,
  SpacingOrder,
  SpacingQuestion,
  SpacingFabric,
  SpacingFace,
  SpacingKnitting,
  SpacingEdge,
  SpacingIncrease,
  SpacingDecrease,
  SpacingAsk,
  SizingAnswer,
  SizingStep,
  SizingPerMille,
  SizingSpan,
  SizingNote,
  SizingMoves,
  SizingRanked,
  Fit,
  SizingWhy,
  SizingCloth,
  SizingQuestion,
  SizingGauges,
  SizingAsk,
  SizingListed,
  SizingSize,
  SizingGarment,
  SizingWrap,
  SizesInTextAnswer,
  SizesInTextHerCount,
  SizesInTextStitchCount,
  SizesInTextPart,
  SizesInTextFromLine,
  SizesInTextLinePlace,
  SizesInTextJoin,
  SizesInTextMarkedLine,
  SizesInTextForSome,
  SizesInTextAsked,
  SizesInTextVerdict,
  SizesInTextDoubtKind,
  SizesInTextPiece,
  SizesInTextPieceKind,
  SizesInTextFound,
  SizesInTextLines,
  SizesInTextList,
  SizesInTextDoubt,
  SizesInTextUnitOnce,
  SizesInTextEntry,
  SizesInTextEntryKind,
  SizesInTextStyle,
  SizesInTextSizesLine,
  SizesInTextSays,
  SizesInTextQuestion,
  SizesInTextDecision,
  SizesInTextListPlace,
  ShapingAnswer,
  ShapingPair,
  ShapingShared,
  ShapingQuestion,
  ShapingSlope,
  ShapingOrder,
  ShapingAsk,
  RowsAnswer,
  RowsNote,
  RowsCourse,
  RowsStanding,
  RowsCount,
  RowsQuestion,
  RowsTape,
  RowsAsk,
  RegaugeAnswer,
  RegaugeNote,
  RegaugeRowsWait,
  RegaugeShaped,
  RegaugePiece,
  RegaugeFollow,
  RegaugeConverted,
  RegaugeQuestion,
  CastOnKnitting,
  RegaugeShaping,
  RaiseAnswer,
  RaiseShortRow,
  RaiseQuestion,
  RaiseBegins,
  RaiseMethod,
  RaiseAcross,
  RaglanAnswer,
  ShapingTrack,
  ShapingDrift,
  RaglanQuestion,
  ShapingPace,
  NeedlesAnswer,
  NeedlesNeedle,
  NeedlesNamed,
  System,
  NeedlesQuestion,
  NeedlesSize,
  GaugeAnswer,
  GaugeNote,
  GaugeChange,
  GaugeNext,
  GaugeMeasured,
  GaugeWash,
  GaugeAgainst,
  GaugeReading,
  GaugeQuestion,
  FlareAnswer,
  FlareBindOffYarn,
  FlareShape,
  FlareHang,
  FlareQuestion,
  FlareHem,
  CordsAnswer,
  CordsEasier,
  CordsStretch,
  CordsBy,
  CordsGap,
  CordsCord,
  CordsRun,
  CordsQuestion,
  CordsAround,
  CordsStep,
  CastOnAnswer,
  CastOnNote,
  CastOnMarkerPlan,
  CastOnCount,
  CastOnQuestion,
  Gauge,
  Mass,
  Length,
  Unit,
  CountUnit,
  MassUnit,
  LengthUnit,
  Unreadable,
  Amount,
  Readings,
  Meant,
  Cause,
  Dimension,
  Problem,
  Kind,
  Unread,
  WhyUnread,
} from "./index.js";
export type * from "./index.js";

/** An answer in the words of the app. */
export interface AnswerInWords {
  /** What stands above the line: "Work this round once". */
  title: string;
  /** What is knitted, bought or done. */
  line: string;
  /** What it comes to: "132 stitches become 116." */
  outcome: string;
  /** What else is good to know. */
  notes: string[];
  /** The sum, line by line. */
  working: string[];
  /** Where the rule comes from, and how sure it is. */
  source: string;
}

/** What to type instead, for a problem of the same field. */
export interface ProblemInWords {
  field: string;
  sentence: string;
}

/** What a tool says, and beside it the words of the app. */
export type InWords<R> = R extends { answer: object } ? R & { words: AnswerInWords } : R & { words: ProblemInWords[] };

/**
 * "The hem is to be 100 cm round and my washed swatch has 21 stitches in 10 cm. How many do I cast on?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function castOn(question: Asked<CastOnQuestion, 'width' | 'gauge'>): InWords<CastOnResult>;

/**
 * "This yoke grows from 90 stitches to 300. Which circular needles do I need, and when do I change?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function cords(question: Asked<CordsQuestion, 'around'>): InWords<CordsResult>;

/**
 * "From 96 stitches at the neck to a hem of 3 m, in a depth of 30 cm. When do I increase, and how will it hang?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function flare(question: Asked<FlareQuestion, 'neck' | 'depth' | 'gauge' | 'row_gauge'>): InWords<FlareResult>;

/**
 * "I counted 21 stitches in 10 cm, and the pattern has 19. Which needle do I try next?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function gauge(question: Asked<GaugeQuestion, 'stitches'>): InWords<GaugeResult>;

/**
 * Chooses the units that sentences are written in from here on: centimetres and metres, or inches and yards.
 *
 * # Errors
 * A `TypeError` where it is neither.
 */
export function measureIn(measures: 'centimetres' | 'inches'): void;

/**
 * "The pattern says US 7. Which needle is that, and what is it called elsewhere?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function needles(question: Asked<NeedlesQuestion, 'size'>): InWords<NeedlesResult>;

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
export function raglan(question: Asked<RaglanQuestion, 'body' | 'sleeve' | 'body_to' | 'sleeve_to' | 'rounds'>): InWords<RaglanResult>;

/**
 * "My yoke is worked in the round and the back of the neck is to sit 2.5 cm higher. Where do I turn?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function raise(question: Asked<RaiseQuestion, 'across' | 'height' | 'rows'>): InWords<RaiseResult>;

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
export function regauge(question: Asked<RegaugeQuestion, 'pattern' | 'own'>): InWords<RegaugeResult>;

/**
 * "The body is to be 40 cm long and my washed swatch has 28 rows in 10 cm. How many rows is that, and am I on course?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function rows(question: Asked<RowsQuestion, 'ask' | 'gauge'>): InWords<RowsResult>;

/**
 * "I have to lose 18 stitches in the next 66 rows, one at each edge. Which rows?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function shaping(question: Asked<ShapingQuestion, 'ask' | 'rows'>): InWords<ShapingResult>;

/**
 * "My pattern is written for five sizes. Which of its numbers are mine?" A decision or a line is named by the words of its
 * line, so that it outlives what is changed elsewhere in the text. Places are bytes of the text in UTF-8.
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function sizesInText(question: Asked<SizesInTextQuestion, 'text'>): InWords<SizesInTextResult>;

/**
 * "My bust is 91 cm. Which size do I knit, and how will it sit?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function sizing(question: Asked<SizingQuestion, 'bust' | 'sizes' | 'listed'>): InWords<SizingResult>;

/**
 * "I have 132 stitches and want to lose 16 evenly in this round. What do I knit?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function spacing(question: Asked<SpacingQuestion, 'stitches' | 'ask'>): InWords<SpacingResult>;

/**
 * "27 stitches of a shoulder are to go in 4 steps. How many do I bind off, and when?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function stairs(question: Asked<StairsQuestion, 'stitches' | 'ask'>): InWords<StairsResult>;

/**
 * "I hope for 21 stitches in 10 cm. How many do I cast on to measure that properly?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function swatch(question: Asked<SwatchQuestion, 'gauge'>): InWords<SwatchResult>;

/**
 * "I cast on 120 stitches long-tail. How much yarn do I leave hanging before the slip knot?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function tail(question: Asked<TailQuestion, 'stitches'>): InWords<TailResult>;

/**
 * "Does every line of this pattern come out, in every size? And where one does not, what would?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function written(question: Asked<WrittenQuestion, 'text'>): InWords<WrittenResult>;

/**
 * "I am knitting this many stitches. How many balls do I buy?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function yarn(question: Asked<YarnQuestion, 'ask' | 'reserve'>): InWords<YarnResult>;

/**
 * "96 stitches at the neck, 320 at the underarm, 60 rounds, shaped in 4 of them. How many in each, how are they spaced, and
 * how is the yoke divided?"
 *
 * # Errors
 * A `TypeError` whose sentence names the field, when the object is no question.
 */
export function yoke(question: Asked<YokeQuestion, 'from' | 'to' | 'rounds'>): InWords<YokeResult>;

/**
 * Starts: everything else is called after this. In a page the WebAssembly is fetched from beside the module, or from
 * `source`. In node it has started by itself, and this does nothing.
 */
export default function init(source?: string | URL | Request | Response | BufferSource | WebAssembly.Module): Promise<void>;

/** Starts with the bytes of the WebAssembly (`loopwright/wasm`), without waiting. */
export function initSync(source: BufferSource | WebAssembly.Module): void;
