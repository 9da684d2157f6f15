/**
 * How a line's voltage is counted. A three-phase line is named by the voltage between two of its phases; to ground each
 * has that over √3 (balanced three-phase system; 29 CFR 1910.269 Appendix B, II.A). A single wire with earth return is
 * named by its voltage to ground. All in kV.
 */
const root3 = Math.sqrt(3);

export const groundFromPhases = (betweenPhases: number): number => betweenPhases / root3;
export const phasesFromGround = (toGround: number): number => toGround * root3;
