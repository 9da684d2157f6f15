/**
 * Sections of a round limb. A plane that crosses a cylinder of diameter d at an angle cuts an ellipse: short axis d,
 * long axis d ÷ sin of the angle between plane and axis. Area π/4 · short · long. Any unit; angles in degrees.
 */
import { cos, sin } from './angles.ts';

export const circleArea = (diameter: number): number => (Math.PI / 4) * diameter * diameter;

/** The long axis of the cut, the plane `offSquare` from square to the limb (0 to under 90). */
export const cutWidth = (diameter: number, offSquare: number): number => diameter / cos(offSquare);

/** The area of the cut, the plane at `toAxis` to the limb's axis (over 0 to 90). */
export const cutArea = (diameter: number, toAxis: number): number => circleArea(diameter) / sin(toAxis);
