/** Degrees in and out: the trigonometry every geometry here uses. */
const perDegree = Math.PI / 180;

export const radians = (degrees: number): number => degrees * perDegree;
export const degrees = (angle: number): number => angle / perDegree;
export const sin = (deg: number): number => Math.sin(radians(deg));
export const cos = (deg: number): number => Math.cos(radians(deg));
export const tan = (deg: number): number => Math.tan(radians(deg));
/** The angle above the horizontal, degrees, of a line that goes `along` level and `up` (same unit). */
export const angleUp = (up: number, along: number): number => degrees(Math.atan2(up, along));
