import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, example } from '#core/registry.ts';
import { Drawing } from '#drawings/reduction/Drawing.tsx';
import { geometry, type Inputs } from '#drawings/reduction/geometry.ts';
import { anyInputs, expectDrawn, expectSvg, extremes, overlaps, pathsOf, phone, pointsOf, wide, wordsOf } from './kit.ts';

const words = wordsOf('reduction', 'side');
const { labels } = words;
const draw = (inputs: object) => {
  const all = { ...example('reduction'), ...inputs } as Inputs;
  return geometry(all, evaluate('reduction', all, 'exact'), { face: 'side', labels }, phone);
};
const angleOf = ([[ax, ay], [bx, by]]: readonly (readonly [number, number])[] & { 0: readonly [number, number]; 1: readonly [number, number] }) =>
  (Math.atan2(ay - by, bx - ax) * 180) / Math.PI;

describe('reduction, drawn', () => {
  it('holds nothing but numbers over the whole range of the inputs', () => {
    fc.assert(
      fc.property(anyInputs('reduction'), (inputs) => {
        const outcome = evaluate('reduction', inputs, 'judged');
        if (outcome.kind === 'answer') expectDrawn(geometry(inputs as Inputs, outcome, { face: 'side', labels }, phone));
      }),
      { numRuns: 400 },
    );
  });

  it('draws the cut halfway between ridge and square to the parent, from the crotch', () => {
    for (const [lateralAngle, ridgeAngle, cut] of [[10, null, 47.5], [60, null, 60], [90, null, 67.5], [45, 40, 65], [45, 80, 85]]) {
      const placed = draw({ lateralAngle, ridgeAngle });
      const [from, to] = pointsOf(pathsOf(placed, 'cut')[0]!) as unknown as [[number, number], [number, number]];
      expect(angleOf([to, from])).toBeCloseTo(cut!, 0);
      // The crotch is the origin of the frame: it lies on the cut.
      const { x0, y0 } = placed.frame;
      const off = Math.abs((to[0] - from[0]) * (from[1] - y0) - (from[0] - x0) * (to[1] - from[1])) / Math.hypot(to[0] - from[0], to[1] - from[1]);
      expect(off).toBeLessThan(0.3);
    }
  });

  it('draws lateral and parent true to each other', () => {
    const placed = draw({ parentDiameter: 90, lateralDiameter: 45, lateralAngle: 90 });
    const [parent, lateral] = pathsOf(placed, 'dim').map((d) => {
      const [[ax, ay], [bx, by]] = pointsOf(d) as unknown as [[number, number], [number, number]];
      return Math.hypot(bx - ax, by - ay);
    });
    expect(lateral! / parent!).toBeCloseTo(0.5, 2);
  });

  describe('several laterals', () => {
    const four = { parentDiameter: 60, lateralDiameter: 15, furtherLimbs: [70, 85, 95], furtherLaterals: [20, 50, 40] };
    it('cuts at the one to cut back to, and all beyond it goes', () => {
      for (const [change, from] of [[{}, 'third'], [{ lateralDiameter: 25 }, 'first'], [{ furtherLaterals: [30, 50, 40] }, 'second'], [{ furtherLaterals: [20, 20, 40] }, 'fourth']] as const) {
        const placed = draw({ ...four, ...change });
        const [[x]] = pointsOf(pathsOf(placed, 'cut')[0]!) as unknown as [[number, number]];
        const i = ['first', 'second', 'third', 'fourth'].indexOf(from);
        // Seen from the outermost crotch, in thicknesses of the widest limb: as far apart as drawn.
        expect((placed.frame.x0 - x) / placed.frame.scale / 95, from).toBeCloseTo(1.75 * i, 0);
        expect(placed.labels.filter(({ strong }) => strong).map(({ lines }) => lines.metric.join(' ')).join(' '), from).toContain(from);
      }
    });
    it('cuts nowhere when none is big enough', () => {
      const placed = draw({ ...four, furtherLaterals: [20, 20, 20] });
      expect([pathsOf(placed, 'cut'), pathsOf(placed, 'piece')]).toEqual([[], []]);
    });
    it('has every lateral, labels apart, on phone and wide page', () => {
      for (let n = 1; n <= 3; n++) for (const furtherLaterals of [[20, 50, 40], [5, 5, 5], [70, 85, 95], [20, 20, 20]]) for (const box of [phone, wide]) {
        const inputs = { ...example('reduction'), ...four, furtherLimbs: four.furtherLimbs.slice(0, n), furtherLaterals: furtherLaterals.slice(0, n) } as unknown as Inputs;
        const placed = geometry(inputs, evaluate('reduction', inputs, 'exact'), { face: 'side', labels }, box);
        expectDrawn(placed);
        expect(overlaps(placed), JSON.stringify([furtherLaterals, n, box.width])).toEqual([]);
        for (const place of ['first', 'second', 'third', 'fourth'].slice(0, n + 1)) expect(placed.labels.some(({ lines }) => lines.metric.join(' ').includes(place)), place).toBe(true);
      }
    });
  });

  it('takes its handle back to the value it was placed for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 15, max: 300 }), fc.integer({ min: 10, max: 90 }), fc.double({ min: 0, max: 1, noNaN: true }), (parentDiameter, lateralAngle, share) => {
        const lateralDiameter = Math.round(5 + (parentDiameter - 5) * share);
        const [handle] = draw({ parentDiameter, lateralDiameter, lateralAngle }).handles;
        expect(handle!.at([handle!.x, handle!.y])).toBe(lateralDiameter);
        expect(handle!.at([-1e5, -1e5])).toBeLessThanOrEqual(parentDiameter);
      }),
    );
  });

  for (const box of [phone, wide]) {
    it(`keeps labels apart and on the sheet, ${box.width} px wide`, () => {
      for (const { title, inputs, outcome } of extremes('reduction')) {
        expect(overlaps(geometry(inputs as Inputs, outcome, { face: 'side', labels }, box)), title).toEqual([]);
      }
    });
  }

  it('writes clean SVG', () => {
    for (const { inputs, outcome } of extremes('reduction')) {
      expectSvg(<Drawing id="r" face="side" inputs={inputs as Inputs} outcome={outcome} box={phone} words={words} onMove={() => {}} />, words);
    }
  });
});
