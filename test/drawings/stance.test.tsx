import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { poleAngleFrom } from '#core/formulas/reach.ts';
import { evaluate, example } from '#core/registry.ts';
import { Drawing } from '#drawings/stance/Drawing.tsx';
import { geometry, type Face, type Inputs } from '#drawings/stance/geometry.ts';
import { limbWay } from '#drawings/stance/plan.ts';
import { anyInputs, expectDrawn, expectSvg, extremes, numbersOf, overlaps, pathsOf, phone, pointsOf, wide, wordsOf } from './kit.ts';

const labels = wordsOf('stance', 'side').labels;
const draw = (inputs: object, face: Face = 'side', standOff: number | null = null, box = phone) => {
  const all = { ...example('stance'), ...inputs } as Inputs;
  return geometry(all, evaluate('stance', all, 'measured'), { face, labels, standOff }, box);
};
/** The pole as drawn: from behind the rear hand to the head of the saw. */
const poleOf = (placed: ReturnType<typeof draw>) => pointsOf(pathsOf(placed, 'pole').at(-1)!);

describe('stance, drawn', () => {
  it('holds nothing but numbers over the whole range of the inputs, wherever the person stands', () => {
    fc.assert(
      fc.property(anyInputs('stance'), fc.option(fc.double({ min: 0, max: 20, noNaN: true })), fc.constantFrom<Face>('side', 'plan'), (inputs, standOff, face) => {
        const outcome = evaluate('stance', inputs, 'judged');
        if (outcome.kind === 'problems') return;
        expectDrawn(geometry(inputs as Inputs, outcome, { face, labels, standOff }, phone));
      }),
      { numRuns: 600 },
    );
  });

  it('draws the pole at the angle that the formula gives, to what a tenth of a px allows', () => {
    fc.assert(
      fc.property(anyInputs('stance'), fc.double({ min: 0.5, max: 5, noNaN: true }), (given, standOff) => {
        const inputs = given as Inputs;
        const outcome = evaluate('stance', given, 'measured');
        if (outcome.kind !== 'answer') return;
        const placed = geometry(inputs, outcome, { face: 'side', labels, standOff }, wide);
        const [tail, head] = poleOf(placed);
        const [dx, dy] = [head![0] - tail![0], tail![1] - head![1]];
        const long = Math.hypot(dx, dy);
        if (long < 15) return;
        const stood = placed.handles.find((h) => h.id === 'standOff')!.value;
        const rise = inputs.cutHeight - inputs.gripHeight - inputs.platformHeight;
        const drawn = (Math.atan2(dy, dx) * 180) / Math.PI;
        expect(Math.abs(drawn - poleAngleFrom(rise, inputs.groundRise, stood))).toBeLessThan((0.2 / long) * 57.3);
      }),
    );
  });

  it('is true to scale: heights and distances are the inputs, at one scale both ways', () => {
    const placed = draw({ cutHeight: 3.2 }, 'side', 2.1);
    const { scale } = placed.frame;
    const upright = pathsOf(placed, 'dim').map(numbersOf).find(([x0, y0, x1, y1]) => x0 === x1 && Math.abs(y1! - y0!) > 20)!;
    const across = placed.handles.find((h) => h.id === 'standOff')!;
    const cut = placed.handles.find((h) => h.id === 'cutHeight')!;
    expect((placed.frame.y0 - cut.y) / scale).toBeCloseTo(3.2, 6);
    expect((placed.frame.x0 - across.x) / scale).toBeCloseTo(2.1, 6);
    expect(Math.abs(upright[1]! - upright[3]!) / scale).toBeCloseTo(3.2, 1);
  });

  it('puts the cut on the limb, and the middle of the bar in the cut where the pole reaches', () => {
    for (const standing of ['beside', 'stemSide', 'tipSide']) {
      const placed = draw({ standing, cutHeight: 3 }, 'side', 2);
      const [x, y] = [placed.frame.x0, placed.frame.y0 - 3 * placed.frame.scale];
      const wood = pathsOf(placed, standing === 'beside' ? 'section' : 'limb').flatMap(pointsOf);
      const xs = wood.map((p) => p[0]);
      expect(Math.min(...xs)).toBeLessThanOrEqual(x);
      expect(Math.max(...xs)).toBeGreaterThanOrEqual(x);
      const near = wood.filter((p) => Math.abs(p[1] - y) < 30);
      expect(near.length, standing).toBeGreaterThan(0);
      const bar = pointsOf(pathsOf(placed, 'bar')[0]!);
      const foot = bar[0]!;
      expect(Math.hypot(foot[0] - x, foot[1] - y)).toBeLessThan(24);
    }
  });

  it('lets a pole that is too short end before the cut, and draws how far it would have to go on', () => {
    const near = draw({ cutHeight: 3 });
    const far = draw({ cutHeight: 6 });
    expect(pathsOf(near, 'guide').length).toBe(1);
    expect(pathsOf(far, 'guide').length).toBe(2);
    expect(far.labels.some((l) => l.lines.metric.join(' ').startsWith(labels.noPlace!.slice(0, 8)))).toBe(true);
    expect(pathsOf(far, 'stand')).toEqual([]);
  });

  it('says where the person must not stand', () => {
    const said = (standOff: number, inputs = {}) => draw({ cutHeight: 3, landingReach: 1.6, ...inputs }, 'side', standOff).labels.map((l) => l.lines.metric.join(' '));
    expect(said(1)).toContain(labels.under);
    expect(said(0.8, { landingReach: 0 })).toContain(labels.near);
    expect(said(2)).not.toContain(labels.near);
    expect(said(2)).not.toContain(labels.far);
  });

  it('keeps its frame while a handle is dragged, so that the cut follows the finger', () => {
    const before = draw({ cutHeight: 3 });
    const after = (() => {
      const all = { ...example('stance'), cutHeight: 3.7 } as Inputs;
      return geometry(all, evaluate('stance', all, 'measured'), { face: 'side', labels, held: before.frame }, phone);
    })();
    const y = (p: typeof before) => p.handles.find((h) => h.id === 'cutHeight')!.y;
    expect(y(before) - y(after)).toBeCloseTo(0.7 * before.frame.scale, 6);
  });

  it('takes a handle back to the value it was placed for', () => {
    fc.assert(
      fc.property(anyInputs('stance'), fc.integer({ min: 12, max: 150 }), fc.integer({ min: 0, max: 40 }), (given, height, off) => {
        const inputs = { ...given, cutHeight: height / 10 } as Inputs;
        const outcome = evaluate('stance', inputs, 'measured');
        if (outcome.kind === 'problems') return;
        for (const face of ['side', 'plan'] as const) {
          for (const handle of geometry(inputs, outcome, { face, labels, standOff: 0.3 + off / 10 }, phone).handles) {
            // A stand-off that the drawing chose itself may lie between two steps.
            expect(Math.abs(handle.at([handle.x, handle.y]) - handle.value), handle.id).toBeLessThanOrEqual(handle.step / 2 + 1e-9);
            expect(handle.value).toBeLessThanOrEqual(handle.max);
            expect(handle.at([-1e6, -1e6])).toBeLessThanOrEqual(handle.max + 1e-9);
            expect(handle.at([1e6, 1e6])).toBeGreaterThanOrEqual(handle.min);
          }
        }
      }),
    );
  });

  it('draws the plan with the bearings of the frame: 90° beside, 180° on the stem side, 0° on the tip side', () => {
    const bearing = ([x, y]: readonly [number, number]) => {
      // Clock-wise from the way the limb points to the worker, who stands at (−1, 0); y up.
      const turn = (Math.atan2(y, x) - Math.atan2(0, -1)) * (180 / Math.PI);
      return Math.round((turn + 720) % 360);
    };
    expect(bearing(limbWay.beside)).toBe(90);
    expect(bearing(limbWay.stemSide)).toBe(180);
    expect(bearing(limbWay.tipSide)).toBe(0);
  });

  it('mirrors the limb between stem side and tip side, and leaves worker and landing where they are', () => {
    const [stemSide, tipSide] = [draw({ standing: 'stemSide' }, 'plan', 2), draw({ standing: 'tipSide' }, 'plan', 2)];
    const limbEnds = (placed: typeof stemSide) => {
      const xs = pointsOf(pathsOf(placed, 'limb')[0]!).map((p) => (p[0] - placed.frame.x0) / placed.frame.scale);
      return [Math.min(...xs), Math.max(...xs)];
    };
    const [a, b] = [limbEnds(stemSide), limbEnds(tipSide)];
    expect(a[0]).toBeCloseTo(-b[1]!, 1);
    expect(a[1]).toBeCloseTo(-b[0]!, 1);
    const metres = (placed: typeof stemSide) => (placed.frame.x0 - placed.handles[0]!.x) / placed.frame.scale;
    expect(metres(stemSide)).toBeCloseTo(2, 9);
    expect(metres(tipSide)).toBeCloseTo(2, 9);
  });

  for (const box of [phone, wide]) {
    it(`keeps labels apart and on the sheet, ${box.width} px wide`, () => {
      for (const { title, inputs, outcome } of extremes('stance')) {
        for (const face of ['side', 'plan'] as const) {
          expect(overlaps(geometry(inputs as Inputs, outcome, { face, labels }, box)), `${title}, ${face}`).toEqual([]);
        }
      }
    });
  }

  it('writes clean SVG, quiet or not, with sliders only where something can be moved', () => {
    for (const { inputs, outcome } of extremes('stance').slice(0, 6)) {
      for (const face of ['side', 'plan'] as const) {
        const words = wordsOf('stance', face);
        const shared = { id: 'a', face, inputs: inputs as Inputs, outcome, box: phone, words };
        expect(expectSvg(<Drawing {...shared} quiet />, words)).not.toContain('role="slider"');
        const live = expectSvg(<Drawing {...shared} onMove={() => {}} />, words);
        expect(live.match(/role="slider"/g)?.length).toBe(face === 'side' ? 2 : 1);
      }
    }
  });
});
