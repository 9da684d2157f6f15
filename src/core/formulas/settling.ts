/**
 * From the first touch to lying still, in lengths of the limb and with gravity one. The end that touches is held (no
 * slide, no bounce) and the limb topples over it: a length to the side it leans to; a length to the other side as well
 * where it stands nearly upright or has the energy to go over. Fast, it leaves the ground again and glides on, or goes
 * over once more where the ground falls away: what that adds has no published source. It is an upper edge drawn over
 * 9,700 falls in a rigid-body engine (whole and pole, either end, all leans, energies and slopes), and the tests hold it
 * over others.
 *
 * Towards the side that is asked about: a lean is from upright, radians, over nothing to that side, half π flat; an
 * energy is that of turning that way after the touch, as a share of m g L; `down` is how the ground falls away, radians.
 */

type Over = { readonly adds: number; readonly energy: readonly [number, number]; readonly down: readonly [number, number] };
/** `glide`: how much further at the most, on the level and for each radian of `down`, from `soon` of energy on; `always`: on top; `over`: each more going over, with its ramps. */
type After = { readonly glide: readonly [number, number]; readonly soon: number; readonly rest: number; readonly always: number; readonly over: readonly Over[] };

const degree = Math.PI / 180;
const degrees = (from: number, to: number) => [from * degree, to * degree] as const;
const even: After = { glide: [0.39, 0.42], soon: 0.36, rest: 0.16, always: 0.02, over: [{ adds: 1.5, energy: [0.7, 1], down: degrees(16, 19.5) }] };
const thickDown: After = { glide: [0.18, 0.2], soon: 0.16, rest: 0.16, always: 0.02, over: [] };
const thinDown: After = {
  glide: [0.66, 0.72], soon: 0.36, rest: 0.2, always: 0.04,
  over: [{ adds: 1.3, energy: [0.6, 0.95], down: degrees(9, 14) }, { adds: 1.45, energy: [0.8, 1.2], down: degrees(14, 17.5) }],
};
/** By where the centre lies, seen from the end that touches. */
export const afterTouch = (arm: number): After => (arm === 0.5 ? even : arm < 0.5 ? thickDown : thinDown);

const ramp = (value: number, [none, full]: readonly [number, number]): number => Math.min(1, Math.max(0, (value - none) / (full - none)));

/** From leaning away as much as the first it is thrown on as far as from upright, and not before. */
const throws = degrees(-15, 0);
/** Up to the first lean it may go over again, and not from the second on. */
const goesOver = degrees(45, 50);
/** Within the first of upright the ground decides, not the sum; faded out to the second. A judgement, on the safe side. */
const upright = degrees(30, 60);
/** The share of the energy that it takes to go over: from the first on it may, from the second it does. Likewise. */
const enough = [0.3, 0.5] as const;

/** What going on adds to a length. Grows with the energy and with `down`; smooth between leans of five degrees. */
export const thrownOn = ({ glide, soon, rest, always, over }: After, lean: number, energy: number, down: number): number => {
  if (lean <= throws[0]) return 0;
  // The rod over the ground: flat on a slope it has more or less than a quarter to go.
  const level = Math.cos(Math.min(Math.PI / 2, Math.max(0, Math.max(lean, 0) - down)));
  let adds = always + (glide[0] + glide[1] * down) * level * level * Math.min(1, rest + energy / soon);
  for (const one of over) adds += (1 - ramp(lean, goesOver)) * one.adds * ramp(energy, one.energy) * ramp(down, one.down);
  return ramp(lean, throws) * adds;
};

/** How much of a length it may topple to a side: all of it to where it leans. `arm`: from the end that touches to the centre. */
export const topples = (arm: number, lean: number, energy: number): number => {
  if (lean >= 0) return 1;
  const needed = arm * (1 - Math.cos(lean)) + 1e-12;
  return Math.max(1 - ramp(-lean, upright), ramp(energy, [enough[0] * needed, enough[1] * needed]));
};
