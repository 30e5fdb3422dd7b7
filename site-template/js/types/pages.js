/**
 * @fileoverview What stands outside our modules: the classic scripts a page loads before them, and who writes each.
 * @externs
 */

/**
 * The engine, compiled to JavaScript: js/engine.js.
 * @type {!Object<string, function(...*): ?>}
 */
Window.prototype.EngineEntry;

/**
 * The records as the planners take them: js/planner-data.js, by export.PlannerData.
 * @type {!PackedData}
 */
Window.prototype.benchlorePlanner;

/**
 * Plans that came with the site: js/plan-files.js, by site.Site.
 * @type {!Array<{id: string, title: string, text: string}>|undefined}
 */
Window.prototype.benchlorePlanFiles;

/**
 * What the finder searches: js/finder-data.js, by search.FinderData.
 * @type {!FinderData}
 */
Window.prototype.benchloreFinder;

/**
 * Records to stand side by side: js/compare-KIND.js, by site.ComparePages.
 * @type {!Array<!Compared>}
 */
Window.prototype.benchloreCompare;

/**
 * What page/names.js gives to other scripts.
 * @type {!Object<string, *>|undefined}
 */
Window.prototype.benchlore;

/**
 * The stem of a word: vendor/stemmer.js.
 * @type {function(string): string}
 */
Window.prototype.stemmer;

/**
 * Reads and writes YAML: vendor/js-yaml.js.
 * @type {{
 *   dump: function(*, !Object): string,
 *   load: function(string, !Object): ?,
 *   CORE_SCHEMA: !Object,
 *   JSON_SCHEMA: !Object
 * }}
 */
Window.prototype.jsyaml;

/**
 * A code that a phone reads: vendor/qrcode.js.
 * @type {function(number, string): {
 *   addData: function(string),
 *   make: function(),
 *   getModuleCount: function(): number,
 *   isDark: function(number, number): boolean
 * }}
 */
Window.prototype.qrcode;

/**
 * One record in the finder's data.
 * @typedef {{
 *   id: string, kind: string, one: string, title: string, url: string, does: string, looks: string, picture: boolean,
 *   names: !Array<string>, misspelt: !Array<string>, lay: !Array<string>, near: !Array<!Array<string>>
 * }}
 */
var FinderRecord;

/**
 * The finder's data: words and places are one index, the rest says how words are meant.
 * @typedef {{
 *   fields: !Array<string>, documents: !Array<!FinderRecord>, words: string, places: string,
 *   lexicon: !Array<{say: !Array<string>, means: !Array<string>}>,
 *   hints: !Array<{say: !Array<string>, kind: string}>, elsewhere: !Array<string>
 * }}
 */
var FinderData;

/**
 * One thing asked for, as finder/asked.js reads it.
 * @typedef {{
 *   at: number, typed: !Array<string>, means: !Array<string>, spoken: number, known: boolean, elsewhere: boolean,
 *   measure: boolean, unfinished: boolean, rarity: number, hits: number, matches: !Map<number, number>,
 *   instead: !Array<{stem: string, quality: number}>
 * }}
 */
var Concept;

/**
 * One record of a page that compares.
 * @typedef {{
 *   id: string, title: string, url: string, picture: (string|undefined), side: (number|undefined),
 *   rows: !Array<!Array<string>>, tell: !Object<string, string>
 * }}
 */
var Compared;

/**
 * Rows of records under keys they share.
 * @typedef {{keys: !Array<string>, rows: !Array<!Array<?>>}}
 */
var PackedTable;

/**
 * Records of a kind: {id, title, url} of each in heads, and what the engine takes of it.
 * @typedef {{
 *   heads: !Array<!Array<string>>, data: !PackedTable, sanding: !PackedTable, shares: !Array<!Array<?>>,
 *   sanded: !Array<boolean>, usual: !Array<?>
 * }}
 */
var PackedRecords;

/**
 * Words after each title and a cell a record; where the tables say nothing, no cells.
 * @typedef {{after: string, cells: !Array<?>}}
 */
var PackedSuits;

/**
 * The planners' data, folded small.
 * @typedef {{
 *   sources: !Array<!Array<string>>, units: !Array<string>, solvents: !PackedRecords, species: !PackedRecords,
 *   finishes: !PackedRecords, adhesives: !PackedRecords, bits: !PackedRecords,
 *   pace: ?, shop: ?, places: !Array<?>, grades: !Array<?>, trim: ?, tapes: !PackedTable,
 *   suits: {
 *     atPlace: !Object<string, !PackedSuits>, inUse: !Object<string, !PackedSuits>, onWood: !Array<!PackedSuits>,
 *     said: !Array<?>, over: !PackedTable, barriers: !PackedTable
 *   },
 *   planWords: {hours: !Array<string>, ignition: !Array<string>, sanders: !Array<string>}
 * }}
 */
var PackedData;
