// The planners of one thing each: the form says which one a page is.

import '../page/page.js';
import { publish } from './names.js';
import * as air from './air.js';
import * as cutting from './cutting.js';
import * as fit from './fit.js';
import * as glueUp from './glue-up.js';
import { planner } from './page.js';
import * as sanding from './sanding.js';
import * as sheen from './sheen.js';

const PAGES = {
  air: air.page,
  cutting: cutting.page,
  fit: fit.page,
  'glue-up': glueUp.page,
  sanding: sanding.page,
  sheen: sheen.page
};

publish();
planner(PAGES[document.getElementById('planner').dataset.planner]);
