// A plan file as the request the engine takes: the engine reads the file as the command line does, the page
// adds the records it has.

import * as engine from '../planner/engine.js';
import { labelled } from '../planner/label.js';
import { data } from '../planner/records.js';
import * as finishFields from './finish-fields.js';
import * as planFile from './plan-file.js';
import * as suits from './suits.js';

/** @return {!PlanAsked} */
export function request(file) {
  const finishes = finishFields.ofFile(file).map(f => data.finish(f.record));
  const layers = finishes.map(f => ({ title: f.title, finish: f.finish, solvents: f.shares }));
  const materials = {
    wood: data.species(file.species).wood,
    adhesive: labelled(data.adhesive(file.adhesive).adhesive, planFile.labelOf(file)),
    layers: layers,
    suits: suits.of(file, finishes)
  };
  const read = engine.planFile({ plan: file, shop: planFile.ownShop(), materials });
  const coats = read.request ? read.request.coats : [];
  const laid = layers.map((layer, i) => Object.assign({}, layer, { coats: coats[i] }));
  return /** @type {!PlanAsked} */ (
    Object.assign({}, read.request, { materials: Object.assign({}, materials, { layers: laid }) })
  );
}
