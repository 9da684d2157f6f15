import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, example } from '#core/registry.ts';
import { Drawing } from '#drawings/bar-length/Drawing.tsx';
import { geometry, type Face, type Inputs } from '#drawings/bar-length/geometry.ts';
import { anyInputs, expectDrawn, expectSvg, extremes, overlaps, pathsOf, phone, pointsOf, wide, wordsOf } from './kit.ts';

const labels = wordsOf('bar-length', 'section').labels;
const faces: readonly Face[] = ['section', 'above'];
const draw = (inputs: object, face: Face) => {
  const all = { ...example('bar-length'), ...inputs } as Inputs;
  return geometry(all, evaluate('bar-length', all, 'exact'), { face, labels }, phone);
};
const said = (placed: ReturnType<typeof draw>) => placed.labels.map((l) => l.lines.metric.join(' '));

describe('bar length, drawn', () => {
  it('holds nothing but numbers over the whole range of the inputs', () => {
    fc.assert(
      fc.property(anyInputs('bar-length'), fc.constantFrom(...faces), (inputs, face) =>
        expectDrawn(geometry(inputs as Inputs, evaluate('bar-length', inputs, 'judged'), { face, labels }, phone)),
      ),
      { numRuns: 400 },
    );
  });

  it('is true to scale: a cut square to the limb is a circle, one at 60° off square twice as wide as the limb', () => {
    // cos 60° = 1/2: a special value of every table of trigonometric functions.
    for (const [offSquare, share] of [[0, 1], [60, 2]] as const) {
      const points = pointsOf(pathsOf(draw({ limbDiameter: 120, offSquare }, 'section'), 'section')[0]!);
      const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
      const [width, height] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
      expect(width / height).toBeCloseTo(share, 1);
    }
  });

  it('draws the bar off square by the angle entered, as long as entered', () => {
    for (const offSquare of [0, 15, 40, 60]) {
      const placed = draw({ offSquare, barLength: 300 }, 'above');
      const pole = pointsOf(pathsOf(placed, 'pole')[0]!);
      const [dx, dy] = [pole[0]![0] - pole[1]![0], pole[1]![1] - pole[0]![1]];
      expect(Math.abs(Math.atan2(dx, dy)) * (180 / Math.PI)).toBeCloseTo(offSquare, 0);
      const nose = placed.handles[0]!;
      const foot = pointsOf(pathsOf(placed, 'guide')[0]!)[0]!;
      expect(Math.hypot(nose.x - foot[0], nose.y - foot[1]) / placed.frame.scale).toBeCloseTo(300, -0.5);
    }
  });

  it('never shows a diameter without its weight a metre', () => {
    for (const { inputs, outcome } of extremes('bar-length')) {
      for (const face of faces) {
        const lines = said(geometry(inputs as Inputs, outcome, { face, labels }, phone)).filter((line) => /^limb/.test(line));
        expect(lines.length).toBe(1);
        for (const line of lines) expect(line).toMatch(/mm: \d+\.\d\skg\/m$/);
      }
    }
  });

  it('says a bar is too short, and shows the wood it does not reach', () => {
    const short = draw({ limbDiameter: 300, barLength: 250, offSquare: 0 }, 'section');
    expect(said(short).join()).toContain(labels.short!.slice(0, 9));
    expect(pathsOf(short, 'uncut').length).toBe(1);
    const enough = draw({ limbDiameter: 100, barLength: 250, offSquare: 0 }, 'section');
    expect(said(enough).join()).not.toContain(labels.short!.slice(0, 9));
    expect(pathsOf(enough, 'uncut')).toEqual([]);
  });

  it('takes a handle back to the value it was placed for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 400 }), fc.integer({ min: 15, max: 40 }), fc.integer({ min: 0, max: 12 }), (limbDiameter, bar, off) => {
        for (const face of faces) {
          for (const handle of draw({ limbDiameter, barLength: bar * 10, offSquare: off * 5 }, face).handles) {
            expect(handle.at([handle.x, handle.y]), handle.id).toBe(handle.value);
          }
        }
      }),
    );
  });

  for (const box of [phone, wide]) {
    it(`keeps labels apart and on the sheet, ${box.width} px wide`, () => {
      for (const { title, inputs, outcome } of extremes('bar-length')) {
        for (const face of faces) expect(overlaps(geometry(inputs as Inputs, outcome, { face, labels }, box)), `${title}, ${face}`).toEqual([]);
      }
    });
  }

  it('writes clean SVG', () => {
    for (const { inputs, outcome } of extremes('bar-length')) {
      for (const face of faces) {
        const words = wordsOf('bar-length', face);
        expectSvg(<Drawing id="b" face={face} inputs={inputs as Inputs} outcome={outcome} box={phone} words={words} onMove={() => {}} />, words);
      }
    }
  });
});
