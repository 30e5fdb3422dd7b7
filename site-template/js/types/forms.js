/**
 * @fileoverview The page's own shapes: what its forms, its plan files and what it keeps look like.
 * @externs
 */

/** Values of a form by the names of its fields. @typedef {!Object<string, ?>} */
var FormValues;

/**
 * Fields a page's forms have that its scripts read by name.
 * @typedef {{
 *   species: string, ends: number, pieces: number, sheen: string, figured: boolean, dust: string, capture: string, celsius: number,
 *   finish: string, adhesive: string, record: string, place: string, surface: string, method: string,
 *   saw: string, sanded: string, torn: number, film: number, fate: string, pores: boolean, weight: string, ball: number,
 *   stepover: number, label: number, transfer: number, changes: number, mixing: number, volume: number, rounds: number, rings: string, fits: boolean,
 *   fixed: boolean, hanging: boolean, slip: number, wet: number, openingCoats: number, humidity: number, low: number,
 *   high: number, slowest: number, fastest: number, marked: number, stock: string, side: string, machine: string,
 *   inside: boolean, air: number, damp: number, target: number, airs: string, gun: string, bearing: string, overlap: number, existing: string, wanted: string, beside: string, today: string, last: string, nights: string, heated: boolean
 * }}
 */
var PlannerFields;

/** Steps that are done. @typedef {{done: !Array<{step: string, slots: !Array<!Slot>}>}} */
var Run;

/** A plan kept in this browser. @typedef {{name: string, address: string, run: (!Run|undefined)}} */
var KeptPlan;

/** Data attributes that the pages' elements carry. @record */
function DataAttributes() {}

/** @type {string} */
DataAttributes.prototype.unitOf;

/** @type {string} */
DataAttributes.prototype.when;

/** @type {string} */
DataAttributes.prototype.metric;

/** @type {string} */
DataAttributes.prototype.imperial;
