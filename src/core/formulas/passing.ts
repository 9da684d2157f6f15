/** What passes between two heights while a limb falls: the furthest of it on one side, in the cells of fall-cells.ts. */

/**
 * @param way 1: the tip side, −1: the stem side
 * @param centre the furthest that the centre is on that side
 * @param low the lowest that the centre may be
 * @param tall the highest
 * @param band the two heights
 * @returns how far that side the limb passes between them; −∞ where it cannot be
 */
export const passes = (
  way: 1 | -1, centre: number, low: number, tall: number, cos: number, sin: number, c: number, band: readonly [number, number],
): number => {
  // The end on that side: its arm, and how it rises along the limb towards it.
  const tipFirst = cos * way >= 0;
  const [arm, other] = tipFirst ? [1 - c, c] : [c, 1 - c];
  const rise = tipFirst ? sin : -sin;
  // Along the limb, u from the centre, some of its heights from low to tall must lie in the band.
  let [least, most] = [-other, arm];
  if (rise > 1e-9) [least, most] = [Math.max(least, (band[0] - tall) / rise), Math.min(most, (band[1] - low) / rise)];
  else if (rise < -1e-9) [least, most] = [Math.max(least, (band[1] - low) / rise), Math.min(most, (band[0] - tall) / rise)];
  else if (low > band[1] || tall < band[0]) return -Infinity;
  return least > most ? -Infinity : centre + most * Math.abs(cos);
};
