import { Matrix, solve } from 'ml-matrix';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Loads, moment, placeOfNoMoment, type Spread, type Support } from '#core/formulas/beam.ts';

const supports: readonly Support[] = ['free', 'propped', 'hung', 'held'];
const even = (weight: number, extraLoad = 0, extraAt = 0, length = 4, spread: Spread = 'even'): Loads => ({ length, spread, weight, extraLoad, extraAt });

/**
 * The same beam by finite elements, from first principles: straight elements of two nodes, each node with a deflection
 * and a slope; loads lumped at the nodes; the moments are the elements' end moments. Nothing of the code under test.
 */
const byElements = (loads: Loads, support: Support, elements: number): ((x: number) => number) => {
  const nodes = elements + 1;
  const h = loads.length / elements;
  const element = [
    [12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h],
    [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h],
  ].map((row) => row.map((k) => k / h ** 3));
  const stiffness = Matrix.zeros(2 * nodes, 2 * nodes);
  const force = Matrix.zeros(2 * nodes, 1);
  for (let e = 0; e < elements; e++) {
    element.forEach((row, i) => row.forEach((k, j) => stiffness.set(2 * e + i, 2 * e + j, stiffness.get(2 * e + i, 2 * e + j) + k)));
  }
  const share = (x: number): number => (loads.spread === 'even' ? 1 : 3 * (1 - x / loads.length) ** 2) / loads.length;
  const put = (x: number, load: number): void => {
    const e = Math.min(elements - 1, Math.floor(x / h));
    const part = x / h - e;
    force.set(2 * e, 0, force.get(2 * e, 0) - load * (1 - part));
    force.set(2 * e + 2, 0, force.get(2 * e + 2, 0) - load * part);
  };
  const slices = elements * 8;
  for (let s = 0; s < slices; s++) {
    const x = ((s + 0.5) * loads.length) / slices;
    put(x, (loads.weight * share(x) * loads.length) / slices);
  }
  put(loads.extraAt, loads.extraLoad);
  const last = 2 * elements;
  const fixed = { free: [0, 1], propped: [0, 1, last], hung: [0, last], held: [0, 1, last, last + 1] }[support];
  for (const dof of fixed) {
    for (let j = 0; j < 2 * nodes; j++) {
      stiffness.set(dof, j, 0);
      stiffness.set(j, dof, 0);
    }
    stiffness.set(dof, dof, 1);
    force.set(dof, 0, 0);
  }
  const moved = solve(stiffness, force);
  return (x) => {
    const e = Math.min(elements - 1, Math.floor(x / h));
    const d = [0, 1, 2, 3].map((i) => moved.get(2 * e + i, 0));
    const end = (row: number): number => (element[row] as number[]).reduce((sum, k, j) => sum + k * (d[j] as number), 0);
    const part = x / h - e;
    return -end(1) * (1 - part) + end(3) * part;
  };
};

describe('against handbook tables: Civil Engineering Formulas, figure 2.2, and beam tables (even load 100 N/m, 4 m)', () => {
  it.each([
    ['free', 0, -800], ['free', 1, -450], ['free', 2, -200], ['free', 4, 0],
    ['hung', 1, 150], ['hung', 2, 200],
    ['propped', 0, -200], ['propped', 1, 0], ['propped', 4, 0],
    ['held', 0, -133.333], ['held', 2, 66.667],
  ] as const)('%s at %f m: %f N·m', (support, x, expected) => {
    expect(Math.abs(moment(even(400), support, x) - expected)).toBeLessThan(0.001);
  });
  it.each([[0, -800], [2, -400]])('a load of 200 N at the free tip, at %f m: %f N·m', (x, expected) => {
    expect(moment(even(0, 200, 4), 'free', x)).toBeCloseTo(expected, 9);
  });
  it('case 10: most sagging 9/128 of W·L, at 3/8 of the span from the prop', () => {
    expect(moment(even(128, 0, 0, 1), 'propped', 5 / 8)).toBeCloseTo(9, 9);
  });
  it('a load in the middle, both ends held: an eighth of P·L at the ends and in the middle', () => {
    expect(moment(even(0, 80, 2), 'held', 0)).toBeCloseTo(-40, 9);
    expect(moment(even(0, 80, 2), 'held', 2)).toBeCloseTo(40, 9);
    expect(placeOfNoMoment(even(0, 80, 2), 'held', 0, 2)).toBeCloseTo(1, 9);
    expect(placeOfNoMoment(even(0, 80, 2), 'held', 2, 4)).toBeCloseTo(3, 9);
  });
  it('a cone held at its base: a quarter of W·L', () => expect(moment(even(100, 0, 0, 4, 'taper'), 'free', 0)).toBeCloseTo(-100, 9));
});

describe('places of no moment', () => {
  it('propped: a quarter of the span from the stem', () => expect(placeOfNoMoment(even(400), 'propped', 0, 3)).toBeCloseTo(1, 9));
  // The tables print (√3 − 3)L for this place, which is negative: no place on the beam. Ours differs, and is on it.
  it('held at both ends: where the printed, negative place cannot be', () => {
    expect(placeOfNoMoment(even(400), 'held', 0, 2)).toBeCloseTo(0.2113 * 4, 3);
    expect(placeOfNoMoment(even(400), 'held', 2, 4)).toBeCloseTo(0.7887 * 4, 3);
    expect(Math.sqrt(3) - 3).toBeLessThan(0);
  });
  it('none where the sign never changes', () => {
    expect(placeOfNoMoment(even(400), 'free', 0, 3.9)).toBeNull();
    expect(placeOfNoMoment(even(400), 'hung', 0.1, 3.9)).toBeNull();
  });
});

/** By the unit load: how far a place sinks is the integral of the moment there is times that of one newton at the place, over E·I. */
const sinks = (length: number, at: (x: number) => number, ofOne: (x: number) => number): number => {
  const steps = 2000;
  return Array.from({ length: steps }, (_, k) => ((k + 0.5) * length) / steps).reduce((sum, x) => sum + at(x) * ofOne(x), 0) * (length / steps);
};

describe('misprints of published beam pages (source beam-tables), which our moments do not repeat', () => {
  it('resting at both ends: the middle sinks 5 w L⁴ ÷ 384 E I; an older copy of the page prints 348', () => {
    const [w, L] = [100, 4];
    const sunk = sinks(L, (x) => moment(even(w * L), 'hung', x), (x) => moment(even(0, 1, L / 2), 'hung', x));
    expect(sunk / ((5 * w * L ** 4) / 384)).toBeCloseTo(1, 5);
    expect(sunk / ((5 * w * L ** 4) / 348)).toBeLessThan(0.91);
  });
  it('a loaded overhang: its end sinks w a³ (4 L + 3 a) ÷ 24 E I; the page prints x, a place, for a, its length', () => {
    const [w, L, a] = [100, 3, 1];
    // What hangs over is a limb held at the stem alone; between the supports its moment dies away evenly.
    const over = (loads: Loads) => sinks(a, (x) => moment(loads, 'free', x), (x) => moment(even(0, 1, a, a), 'free', x));
    const between = (loads: Loads) => sinks(L, (x) => (moment(loads, 'free', 0) * x) / L, (x) => (moment(even(0, 1, a, a), 'free', 0) * x) / L);
    const loads = even(w * a, 0, 0, a);
    const sunk = over(loads) + between(loads);
    expect(sunk / ((w * a ** 3 * (4 * L + 3 * a)) / 24)).toBeCloseTo(1, 5);
    for (const x of [0.5, 0.9]) expect(sunk / ((w * x ** 3 * (4 * L + 3 * a)) / 24)).toBeGreaterThan(1.3);
  });
});

describe('against finite elements', () => {
  const loads = fc.record({
    length: fc.double({ min: 0.3, max: 10, noNaN: true }),
    spread: fc.constantFrom<Spread>('even', 'taper'),
    weight: fc.double({ min: 1, max: 5000, noNaN: true }),
    extraLoad: fc.oneof(fc.constant(0), fc.double({ min: 1, max: 2000, noNaN: true })),
    place: fc.integer({ min: 0, max: 40 }),
  });
  it.each(supports)('%s, any taper and extra load', (support) => {
    fc.assert(fc.property(loads, fc.integer({ min: 0, max: 40 }), ({ place, ...rest }, node) => {
      const all: Loads = { ...rest, extraAt: (rest.length * place) / 40 };
      const x = (rest.length * node) / 40;
      const size = rest.length * (rest.weight + rest.extraLoad);
      // Lumped loads are out by less than the square of an element's share of the length.
      expect(Math.abs(moment(all, support, x) - byElements(all, support, 40)(x)) / size).toBeLessThan(4e-4);
    }), { numRuns: 60 });
  });
});

describe('laws', () => {
  it.each(supports)('%s: loads add up', (support) => {
    const x = 1.3;
    const both = moment(even(300, 120, 2.2, 4, 'taper'), support, x);
    expect(both).toBeCloseTo(moment(even(300, 0, 0, 4, 'taper'), support, x) + moment(even(0, 120, 2.2), support, x), 9);
  });
  it.each(['hung', 'held'] as const)('%s, even load: both halves alike', (support) => {
    for (const x of [0, 0.5, 1, 1.7]) expect(moment(even(400), support, x)).toBeCloseTo(moment(even(400), support, 4 - x), 9);
  });
});
