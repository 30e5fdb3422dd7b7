// An adhesive as the label of the one at hand has it: its least temperature decides over the record's.

/** 0 stands for nothing said: no label asks for less. */
export function labelled(adhesive, celsius) {
  if (!(celsius > 0)) {
    return adhesive;
  }
  const from = { kind: 'INPUT', title: '', where: '' };
  return Object.assign({}, adhesive, {
    'minimum-temperature': { low: celsius, high: celsius, unit: 'CELSIUS', from }
  });
}
