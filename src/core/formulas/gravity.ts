/** Standard acceleration of free fall, m/s². Exact by definition: 3rd General Conference on Weights and Measures, 1901. */
export const gravity = 9.80665;

/** Energy (J) of a mass (kg) that comes down a height (m): m g h. */
export const fallEnergy = (mass: number, height: number): number => mass * gravity * height;
/** Speed (m/s) after a free fall from rest through a height (m), no air: √(2 g h). */
export const fallSpeed = (height: number): number => Math.sqrt(2 * gravity * height);
/** Time (s) of a free fall from rest through a height (m), no air: √(2 h ÷ g). */
export const fallDuration = (height: number): number => Math.sqrt((2 * height) / gravity);
