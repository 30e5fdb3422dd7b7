// What every page has: the units switch, the reader's own dates, the row of kinds scrolled to this page's kind.

import { localTimes } from './local-times.js';
import { offer } from './names.js';
import { showRow } from './row.js';
import * as units from './units.js';

localTimes();
units.ready();
showRow();
offer({ units: { set: units.set, system: units.system } });
