/**
 * @fileoverview What the engine answers, as schedules.exchange writes it. Figures are SI but for what their names say.
 * @externs
 */

/**
 * An answer, or why there is none.
 * @typedef {{
 *   given: boolean, value: ?, working: !Array<!WorkingLine>, cautions: !Array<!Caution>,
 *   reasons: !Array<{problem: !Note, remedy: !Note}>, broken: (string|undefined)
 * }}
 */
var Answer;

/** @typedef {{value: number, unit: string}} */
var Quantity;

/** @typedef {{low: number, high: number, unit: string, from: !Provenance}} */
var Datum;

/** @typedef {{kind: string, title: (?string|undefined), where: (?string|undefined)}} */
var Provenance;

/**
 * A sentence: {0} stands for the first quantity.
 * @typedef {{pattern: string, quantities: !Array<!Quantity>}}
 */
var Note;

/** @typedef {{code: string, name: string, again: boolean, severity: string, what: !Note, measure: !Note}} */
var Caution;

/**
 * A figure of the working: a bare quantity has its value and unit beside its name.
 * @typedef {{name: string, quantity: (!Quantity|undefined), value: number, unit: string, from: ?}}
 */
var WorkingFigure;

/** @typedef {{result: !WorkingFigure, formula: string, rule: !Provenance, inputs: !Array<!WorkingFigure>}} */
var WorkingLine;

/** @typedef {{start: string, end: string}} */
var Slot;

/**
 * A step of a plan.
 * @typedef {{
 *   id: string, task: string, number: number, title: string, kind: string, slots: !Array<!Slot>, notes: !Array<!Note>,
 *   window: ?{opens: string, closes: (?string|undefined)}, isByTheDay: boolean, cautions: !Array<!Caution>, working: !Array<!WorkingLine>
 * }}
 */
var Step;

/** @typedef {{start: string, stages: !Array<{stage: string, planned: number}>}} */
var Drying;

/**
 * A whole project's plan.
 * @typedef {{
 *   steps: !Array<!Step>, days: !Array<!DayRow>, layers: !Array<{title: string, before: number, coats: ?, air: ?}>,
 *   shopping: !Array<{
 *     item: {kind: string}, what: string, detail: string, amount: !Quantity, remark: (?string|undefined)
 *   }>
 * }}
 */
var Plan;

/**
 * What a table says of two things a plan brings together.
 * @typedef {{subject: string, pair: string, verdict: string, why: !Array<!Note>, instead: !Array<string>}}
 */
var Pairing;

/**
 * What the tables say of a plan.
 * @typedef {{glue: !Array<!Pairing>, finishes: !Array<!Pairing>, over: !Array<?>, barriers: !Array<?>}}
 */
var Suits;

/**
 * What the engine reads of a plan file.
 * @typedef {{start: string, shop: {week: ?, climate: ?, room: ?}, parts: !Array<?>, coats: !Array<?>}}
 */
var PlanAsked;

/**
 * Something wrong in a plan file.
 * @typedef {{path: !Array<string>, what: string, todo: string, isOutOfBounds: boolean}}
 */
var FileProblem;

/**
 * A piece of a sentence.
 * @typedef {{metric: string, imperial: string, isFigure: boolean}}
 */
var SentencePart;

/** @typedef {{kind: string, fromMinute: number, toMinute: number, label: string, figure: ?Quantity}} */
var DayBar;

/**
 * A day to draw.
 * @typedef {{date: string, daysPassed: number, bars: !Array<!DayBar>}}
 */
var DayRow;

/**
 * What the air planner shows.
 * @typedef {{
 *   flow: {governing: number, governs: string, changesPerHour: number, healthEightHour: number, healthShort: number},
 *   respirator: {words: string}, eightHour: {index: ?number},
 *   peaks: {quarterHour: ?Quantity, percentLowerExplosive: ?Quantity}, brushedIndex: ?number,
 *   reEntries: !Array<{verdict: string, second: ?number}>, curve: !Array<{second: number, index: ?number}>
 * }}
 */
var AirPlan;

/**
 * What the cutting planner shows.
 * @typedef {{
 *   speed: {rpm: number, highestRpm: number, rimMetrePerSecond: number},
 *   feed: {lowMetrePerSecond: number, highMetrePerSecond: number, lowChipMetre: number, highChipMetre: number},
 *   passes: {depthPasses: number, depthMetre: number, trimPasses: number, biteMetre: number},
 *   direction: {how: !Note}
 * }}
 */
var CutPlan;

/** @typedef {{dewPointCelsius: number, marginCelsius: number, leastSurfaceCelsius: number, sound: boolean}} */
var DewMargin;

/** @typedef {{stage: string, soonest: number, planned: number}} */
var DryStage;

/** @typedef {{grit: {system: string, number: number}, ratio: number}} */
var GradeMatch;

/**
 * Whether a bit can make a cut.
 * @typedef {{
 *   reaches: boolean, stickOutMetre: number, gripMetre: number, neededGripMetre: number, problems: !Array<!Note>
 * }}
 */
var Reach;

/**
 * Tabs that hold a part.
 * @typedef {{
 *   count: number, programmedWidthMetre: number, widthMetre: number, heightMetre: number, spacingMetre: number,
 *   order: !Array<!Note>
 * }}
 */
var Tabs;

/** @typedef {{strokes: number, stepMetre: number, layers: number, layerMetre: number, seconds: number, highestRpm: number}} */
var Flattening;

/** @typedef {{outwardMetre: number, inwardMetre: number, distanceMetre: number, lengthMetre: number}} */
var ScrewSlot;

/** @typedef {{layers: number, gapMicron: number, tape: {name: string}}} */
var TapeStack;

/**
 * What the fit planner shows.
 * @typedef {{
 *   movement: {yearMetre: number, swellMetre: number, shrinkMetre: number},
 *   settling: {lowSecond: number, highSecond: number},
 *   moisture: {dryPercent: number, dampPercent: number, shopPercent: number},
 *   clearance: ?{
 *     gapMetre: number, openingMinusPartMetre: number, drySeasonGapMetre: number, stacks: !Array<!TapeStack>
 *   },
 *   fixing: ?{rigidAllowed: boolean, slots: !Array<!ScrewSlot>}
 * }}
 */
var FitPlan;

/**
 * A round of gluing.
 * @typedef {{
 *   start: string, tight: string, clampsOff: string, clamps: number, spreadSecond: number, closeSecond: number,
 *   shares: !Array<{count: number}>
 * }}
 */
var Batch;

/** @typedef {{forceEachNewton: number, positions: !Array<{alongMetre: number, under: boolean}>}} */
var ClampRow;

/**
 * What the glue-up planner shows.
 * @typedef {{
 *   assembly: {totalSecond: number}, batches: !Array<!Batch>, rows: !Array<!ClampRow>, clampsOff: {at: string},
 *   machine: {at: string}, fullLoad: {at: string}, glue: {volumeCubicMetre: number}
 * }}
 */
var GluePlan;

/** @typedef {{grit: {system: string, number: number}, tool: string, seconds: number, discs: number, removedMicron: number}} */
var Pass;

/**
 * What the sanding planner shows.
 * @typedef {{
 *   startDepthMicron: number, passes: !Array<!Pass>,
 *   totals: {seconds: number, discs: number, dustKilogram: number},
 *   extras: {
 *     endGrain: ?Pass, grainRaising: ?{knockOff: !Pass}, poreFilling: ?{level: !Pass},
 *     betweenCoats: ?{times: number, each: !Pass}
 *   }
 * }}
 */
var SandingPlan;

/**
 * Dust in the air.
 * @typedef {{
 *   peakKilogramPerCubicMetre: number, limitKilogramPerCubicMetre: number, limitFrom: !Provenance, peakIndex: number,
 *   eightHourIndex: number, flowNeeded: number, clearSecond: ?number, respirator: {words: string}
 * }}
 */
var DustPlan;

/** @typedef {{mistKilogram: number, peakIndex: number, clearSecond: number}} */
var MistEstimate;

/** @typedef {{nowSeconds: ?number, offers: !Array<{grit: ?, thenSeconds: number}>}} */
var ShelfAdvice;

/** @typedef {{stepoverMetre: number, machineSeconds: number, sandingSeconds: number}} */
var StepoverPoint;

/** @typedef {{best: !StepoverPoint, points: !Array<!StepoverPoint>}} */
var StepoverPlan;

/** @typedef {{liquidCubicMetre: number, sheets: number, compoundKilogram: number}} */
var SheenSupplies;

/**
 * What the sheen planner shows.
 * @typedef {{
 *   glossUnits: !Datum,
 *   ways: !Array<{kind: string, from: string, steps: !Array<{
 *     what: string, seconds: number, grade: ?number, sheen: ?string, supplies: !SheenSupplies
 *   }>}>
 * }}
 */
var SheenPlan;

/**
 * A record with the objects that go into a request: what of these its kind has.
 * @typedef {{
 *   id: string, title: string, url: string, number: number, usual: ?, wood: ?Wood, sanding: ?, finish: ?Finish, shares: !Array<?>, between: ?,
 *   adhesive: ?, bit: ?Bit, seasons: ?, share: ?
 * }}
 */
var RecordEntry;

/**
 * The keys are those of the record, hyphens and all: `wood['specific-gravity']`.
 * @typedef {{oily: boolean}}
 */
var Wood;

/**
 * @typedef {{
 *   family: string, role: string, voc: !Datum, coats: !Datum, isocyanate: boolean,
 *   formaldehyde: boolean,
 *   methods: !Array<string>, sheens: !Array<string>
 * }}
 */
var Finish;

/**
 * @typedef {{
 *   diameterMetre: number, flutes: number, cuttingLengthMetre: number, shankDiameterMetre: number,
 *   shankLengthMetre: ?, bearing: ?
 * }}
 */
var Bit;
