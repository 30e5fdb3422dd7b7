// A plan file as the request the engine takes: the engine reads the file as the command line does, the page
// adds the records it has.

import * as engine from '../planner/engine.js';
import { labelled } from '../planner/label.js';
import { data } from '../planner/records.js';
import * as planFile from './plan-file.js';

/** @return {!PlanAsked} */
export function request(file) {
  const finish = data.finish(file.finish.record);
  const materials = {
    wood: data.species(file.species).wood,
    adhesive: labelled(data.adhesive(file.adhesive).adhesive, planFile.labelOf(file)),
    finish: finish.finish,
    solvents: finish.shares
  };
  const read = engine.planFile({ plan: file, shop: planFile.ownShop(), materials });
  return /** @type {!PlanAsked} */ (Object.assign({ materials }, read.request));
}
