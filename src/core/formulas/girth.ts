/** Diameter from girth, any unit: d = C / π. Exact for a round section; of any other it is the larger, so it protects. */
export const diameterFromGirth = (girth: number): number => girth / Math.PI;
export const girthFromDiameter = (diameter: number): number => diameter * Math.PI;
