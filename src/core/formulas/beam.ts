/**
 * Bending moments of a limb as a beam, N·m; positive where it sags (top squeezed), negative where it hogs (underside
 * squeezed). Even load: Civil Engineering Formulas, figure 2.2, cases 5, 7 and 10 (source `beam-handbook`); the tapering
 * load and the single load follow from the same theory. Stiffness is taken as even along the limb.
 *
 * x runs from the stem (0) to the far end (length). Supports: `free`, held at the stem alone; `propped`, the far end on a
 * prop; `hung`, resting at both ends; `held`, built in at both ends.
 */
export type Support = 'free' | 'propped' | 'hung' | 'held';
/** What the weight does along the limb: `even`, or `taper` as the square of the distance to the tip (a cone). */
export type Spread = 'even' | 'taper';

/** A load as the beam held at the stem alone feels it: the moment at a share u of the length, and what the supports need. */
type Load = {
  /** Moment at u for a unit of load times length. */
  cantilever: (u: number) => number;
  /** Reaction of a prop at the far end, share of the load. */
  prop: number;
  /** ∫M du and ∫M·u du of the cantilever moment, signs turned. */
  first: number;
  second: number;
};

const power = { even: 0, taper: 2 } as const;

/** All the weight, spread out. */
const spreadLoad = (spread: Spread): Load => {
  const n = power[spread];
  return {
    cantilever: (u) => -((1 - u) ** (n + 2)) / (n + 2),
    prop: 3 / ((n + 2) * (n + 4)),
    first: 1 / ((n + 2) * (n + 3)),
    second: 1 / ((n + 2) * (n + 3) * (n + 4)),
  };
};

/** One load at the share c of the length. */
const pointLoad = (c: number): Load => ({
  cantilever: (u) => -Math.max(0, c - u),
  prop: (c * c * (3 - c)) / 2,
  first: (c * c) / 2,
  second: (c * c * c) / 6,
});

const momentUnder = ({ cantilever, prop, first, second }: Load, support: Support, u: number): number => {
  const free = cantilever(u);
  if (support === 'free') return free;
  if (support === 'propped') return free + prop * (1 - u);
  if (support === 'hung') return free - cantilever(0) * (1 - u);
  // Built in at both ends: no turning of the far end and no sinking of it.
  return free + 4 * first - 6 * second + (12 * second - 6 * first) * u;
};

export type Loads = { length: number; spread: Spread; weight: number; extraLoad: number; extraAt: number };

/** Moment (N·m) at x (m, 0 to length) of loads in N that act square to the limb. */
export const moment = ({ length, spread, weight, extraLoad, extraAt }: Loads, support: Support, x: number): number => {
  const u = x / length;
  return length * (weight * momentUnder(spreadLoad(spread), support, u) + extraLoad * momentUnder(pointLoad(extraAt / length), support, u));
};

const halvings = 40;

/**
 * The place (m) where the moment turns over between two places on the limb; null where it has the same sense at both.
 * Two such places so near each other that both lie between are not seen.
 */
export const placeOfNoMoment = (loads: Loads, support: Support, from: number, to: number): number | null => {
  let [a, b] = [from, to];
  const left = moment(loads, support, a) < 0;
  if (left === moment(loads, support, b) < 0) return null;
  for (let k = 0; k < halvings; k++) {
    const middle = (a + b) / 2;
    if (left === moment(loads, support, middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
};
