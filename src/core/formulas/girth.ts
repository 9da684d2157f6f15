/**
 * Diameter from girth, any unit: d = C / π. Exact for a round section. Of an oval it gives the mean width: more than the
 * circle of the same area (so weight is not under-read), less than the widest, which is what a bar has to cross.
 */
export const diameterFromGirth = (girth: number): number => girth / Math.PI;
export const girthFromDiameter = (diameter: number): number => diameter * Math.PI;
