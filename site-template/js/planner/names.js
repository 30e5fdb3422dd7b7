// What every planner's page gives by name.

import { offer } from '../page/names.js';
import * as engine from './engine.js';
import { data } from './records.js';
import * as dates from './dates.js';
import * as view from './view.js';

export function publish() {
  offer({
    plan: engine.plan,
    sanding: engine.sanding,
    machineOrSand: engine.machineOrSand,
    sheen: engine.sheen,
    glueUp: engine.glueUp,
    air: engine.air,
    fit: engine.fit,
    cutting: engine.cutting,
    surfacing: engine.surfacing,
    data,
    view: { usualCoats: view.usualCoats, minute: dates.minute }
  });
}
