// How a finish or an adhesive is worked, as its record says it, and what to look for.

import { heading, listOf } from '../page/dom.js';

export function bench(material) {
  const said = [material['begin'], material['put-on'], material['afterwards'], 'Look for ' + material['look-for']];
  return [heading('At the bench'), listOf(said.filter(line => line), line => line)];
}
