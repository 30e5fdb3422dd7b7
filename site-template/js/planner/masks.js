// Masks as the engine names them, in words.

const MASKS = {
  NONE: 'none for this',
  DUST_HALF_MASK: 'half mask, particle filter',
  DUST_FULL_FACE: 'full face, particle filter',
  VAPOUR_HALF_MASK: 'half mask, organic vapour cartridges',
  VAPOUR_HALF_MASK_PREFILTER: 'half mask, organic vapour cartridges with particle prefilters',
  FULL_FACE_VAPOUR: 'full face, organic vapour cartridges',
  FULL_FACE_FORMALDEHYDE: 'full face, cartridges approved for formaldehyde and organic vapour',
  SUPPLIED_AIR: 'supplied air: not a job for a garage'
};

export function mask(respirator) {
  return MASKS[respirator.respirator] || respirator.respirator.toLowerCase().replace(/_/g, ' ');
}
