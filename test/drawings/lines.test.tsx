/** The drawings on lines: true to scale, clean over the whole range of the inputs, labels apart. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, example } from '#core/registry.ts';
import { Drawing as Approach } from '#drawings/approach-distance/Drawing.tsx';
import { geometry as approach, type Inputs as ApproachInputs } from '#drawings/approach-distance/geometry.ts';
import { Drawing as Clearance } from '#drawings/line-clearance/Drawing.tsx';
import { geometry as clearance, type Inputs as ClearanceInputs } from '#drawings/line-clearance/geometry.ts';
import { Drawing as Step } from '#drawings/step-voltage/Drawing.tsx';
import { geometry as step } from '#drawings/step-voltage/geometry.ts';
import { anyInputs, expectDrawn, expectSvg, extremes, numbersOf, overlaps, pathsOf, phone, pointsOf, wide, wordsOf } from './kit.ts';

const wordsFor = (id: string, view = 'side') => wordsOf(id, view);
const viewOf = (id: string) => ({ face: 'side' as const, labels: wordsFor(id).labels });
const drawApproach = (inputs: object, box = phone) => {
  const all = { ...example('approach-distance'), ...inputs } as ApproachInputs;
  return approach(all, evaluate('approach-distance', all, 'exact'), viewOf('approach-distance'), box);
};
const drawClearance = (inputs: object, box = phone) => {
  const all = { ...example('line-clearance'), ...inputs } as ClearanceInputs;
  return clearance(all, evaluate('line-clearance', all, 'exact'), viewOf('line-clearance'), box);
};
/** Width of a path, px. */
const wideOf = (d: string): number => {
  const xs = pointsOf(d.replace(/A[^MLZ]*/g, '')).map(([x]) => x);
  return Math.max(...xs) - Math.min(...xs);
};
/** Radius of the first arc of a path, px. */
const radiusOf = (d: string): number => numbersOf(d.slice(d.indexOf('A')))[0] as number;

describe('the space round a line, drawn', () => {
  it('is a ring of the distance to plan on, true to scale', () => {
    for (const [ruleSet, metres] of [['fr', 5], ['ca-ab', 4]] as const) {
      const placed = drawApproach({ ruleSet, voltage: 138 });
      expect(radiusOf(pathsOf(placed, 'limit')[0]!) / placed.frame.scale).toBeCloseTo(metres, 1);
    }
    const open = drawApproach({ ruleSet: 'au-wa', voltage: 138 });
    expect(wideOf(pathsOf(open, 'limit')[0]!) / open.frame.scale).toBeCloseTo(12, 1);
  });
  it('goes on upward where all above counts as inside, and only there', () => {
    const highest = (ruleSet: string, metres: number): number => {
      const placed = drawApproach({ ruleSet, voltage: 66 });
      const path = pathsOf(placed, 'steep')[0]!;
      const wire = pointsOf(pathsOf(placed, 'dim')[0]!)[0]!;
      const top = path.includes('A') ? wire[1] - radiusOf(path) : Math.min(...pointsOf(path).map(([, y]) => y));
      return (wire[1] - top) / placed.frame.scale - metres;
    };
    expect(highest('au-wa', 6)).toBeGreaterThan(1);
    expect(highest('ca-ab', 3.5)).toBeCloseTo(0, 1);
  });
  it('keeps the person and the saw outside the ring', () => {
    const placed = drawApproach({ ruleSet: 'de', voltage: 110 });
    const ring = pointsOf(pathsOf(placed, 'limit')[0]!.split('A')[0]!)[0]!;
    const radius = radiusOf(pathsOf(placed, 'limit')[0]!);
    const left = ring[0] - 2 * radius;
    for (const d of pathsOf(placed, 'bar')) for (const [x] of pointsOf(d.replace(/A[^MLZ]*/g, ''))) expect(x).toBeLessThan(left);
  });
});

describe('line clearance, drawn', () => {
  it('has the ring as wide as distance and movement, and the reach as wide as pole, bar and step', () => {
    const figures = { requiredDistance: 4, movement: 1.5, poleLength: 3, barTip: 0.2, stumble: 1, standOff: 2 };
    const placed = drawClearance({ ...figures, lineRuns: 'across' });
    expect(radiusOf(pathsOf(placed, 'limit')[0]!) / placed.frame.scale).toBeCloseTo(5.5, 1);
    expect(wideOf(pathsOf(placed, 'ghost')[0]!) / placed.frame.scale).toBeCloseTo(2 * (3 + 0.2 + 1), 1);
    // Aslant, the feet may be seen anywhere from square on to plumb under the cut.
    const aslant = drawClearance({ ...figures, lineRuns: 'aslant' });
    expect(wideOf(pathsOf(aslant, 'ghost')[0]!) / aslant.frame.scale).toBeCloseTo(2 * (3 + 0.2 + 1) + 2, 1);
  });
  it('takes a handle back to the value it was placed for', () => {
    fc.assert(fc.property(fc.integer({ min: 30, max: 600 }), fc.integer({ min: -600, max: 600 }), (height, offset) => {
      for (const handle of drawClearance({ lineHeight: height / 10, lineOffset: offset / 10 }).handles) expect(handle.at([handle.x, handle.y]), handle.id).toBe(handle.value);
    }), { numRuns: 100 });
  });
  it('shows basket and boom from a platform alone', () => {
    expect(pathsOf(drawClearance({}), 'platform')).toEqual([]);
    expect(pathsOf(drawClearance({ workingFrom: 'platform', platformHeight: 6 }), 'platform').length).toBeGreaterThan(0);
  });
});

describe.each([
  ['approach-distance', approach, Approach],
  ['line-clearance', clearance, Clearance],
] as const)('%s, drawn', (id, geometry, Drawing) => {
  const draw = geometry as unknown as (inputs: object, outcome: object, view: object, box: object) => ReturnType<typeof clearance>;
  const View = Drawing as unknown as typeof Clearance;
  it('holds nothing but numbers over the whole range of the inputs', () => {
    fc.assert(fc.property(anyInputs(id), (inputs) => {
      const outcome = evaluate(id, inputs, 'judged');
      if (outcome.kind === 'answer') expectDrawn(draw(inputs, outcome, viewOf(id), phone));
    }), { numRuns: 300 });
  });
  for (const box of [phone, wide]) {
    it(`keeps labels apart and on the sheet, ${box.width} px wide`, () => {
      for (const { title, inputs, outcome } of extremes(id)) if (outcome.kind === 'answer') expect(overlaps(draw(inputs, outcome, viewOf(id), box)), title).toEqual([]);
    });
  }
  it('writes clean SVG', () => {
    for (const { inputs, outcome } of extremes(id)) {
      if (outcome.kind === 'answer') expectSvg(<View id="x" face="side" inputs={inputs as never} outcome={outcome} box={phone} words={wordsFor(id)} />, wordsFor(id));
    }
  });
});

describe('step voltage, drawn', () => {
  const words = wordsFor('step-voltage', 'above');
  const boxes = [358, 480, 620].map((width) => ({ width, height: Math.round(width * 0.66) }));
  it('is clean, its labels apart', () => {
    for (const box of boxes) {
      expectDrawn(step({ face: 'above', labels: words.labels }, box));
      expect(overlaps(step({ face: 'above', labels: words.labels }, box)), String(box.width)).toEqual([]);
    }
    expectSvg(<Step id="s" face="above" box={boxes[0]!} words={words} />, words);
  });
  it('has the close feet on one ring, and those of the stride on two', () => {
    const placed = step({ face: 'above', labels: words.labels }, boxes[0]!);
    const [close, stride] = pathsOf(placed, 'person').map((d) => d.split('M').filter(Boolean).map((part) => pointsOf(`M${part.split('C')[0]}`)[0]!));
    const centre = placed.frame;
    const ringOf = ([x, y]: readonly [number, number]) => Math.round(Math.hypot(x - centre.x0, y - centre.y0) / (0.65 * centre.scale));
    expect(new Set(close!.map(ringOf)).size).toBe(1);
    expect(new Set(stride!.map(ringOf)).size).toBe(2);
  });
});
