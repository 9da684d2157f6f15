import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, example } from '#core/registry.ts';
import { Drawing } from '#drawings/final-cut/Drawing.tsx';
import { geometry, type Face, type Inputs } from '#drawings/final-cut/geometry.ts';
import { anyInputs, expectDrawn, expectSvg, extremes, numbersOf, overlaps, pathsOf, phone, pointsOf, wide, wordsOf } from './kit.ts';

const faces: readonly Face[] = ['side', 'section', 'plan'];
const { labels } = wordsOf('final-cut', 'side');
const draw = (change: object, face: Face = 'side') => {
  const all = { ...example('final-cut'), ...change } as Inputs;
  return geometry(all, evaluate('final-cut', all, 'exact'), { face, labels }, phone);
};
/** Degrees below level, to the right, of a line of two points. */
const falls = (d: string): number => {
  const [[ax, ay], [bx, by]] = pointsOf(d) as unknown as [[number, number], [number, number]];
  return (Math.atan2(by - ay, bx - ax) * 180) / Math.PI;
};

describe('final cut, drawn', () => {
  it('holds nothing but numbers over the whole range of the inputs', () => {
    fc.assert(fc.property(anyInputs('final-cut'), fc.constantFrom(...faces), (inputs, face) => {
      const outcome = evaluate('final-cut', inputs, 'judged');
      if (outcome.kind === 'answer') expectDrawn(geometry(inputs as Inputs, outcome, { face, labels }, phone));
    }), { numRuns: 400 });
  });

  it('draws the cut as steep as it says, on a leaning stem too', () => {
    for (const stemLean of [-20, 0, 15]) {
      for (const ridgeAngle of [20, 35, 50]) expect(falls(pathsOf(draw({ stemLean, ridgeAngle }), 'cut')[0]!)).toBeCloseTo(90 - ridgeAngle + stemLean, 0);
    }
  });

  it('draws the cut and the square one apart as the rules are', () => {
    const placed = draw({ branchAngle: 60, ridgeAngle: 50 });
    // Square to a branch at 60° falls at 60°; the mirrored ridge at 40°.
    expect(falls(pathsOf(placed, 'othercut')[0]!) - falls(pathsOf(placed, 'cut')[0]!)).toBeCloseTo(20, 0);
  });

  it('draws wound and flush cut to one scale', () => {
    const placed = draw({ branchAngle: 90, ridgeAngle: 30, collarSwell: 2 }, 'section');
    const tall = (d: string) => {
      const ys = numbersOf(d).filter((_, i) => i % 2 === 1);
      return Math.max(...ys) - Math.min(...ys);
    };
    // Flush: twice the branch, square to it. Wound: at 60° to it, 1 ÷ sin 60° = 1.1547 times.
    expect(tall(pathsOf(placed, 'othercut')[0]!) / tall(pathsOf(placed, 'section')[0]!)).toBeCloseTo(2 / 1.1547, 1);
  });

  it('takes its handles back to the values they were placed for', () => {
    fc.assert(fc.property(fc.integer({ min: 15, max: 90 }), fc.integer({ min: 10, max: 70 }), fc.integer({ min: -45, max: 45 }), (branchAngle, ridgeAngle, stemLean) => {
      const placed = draw({ branchAngle, ridgeAngle, stemLean });
      for (const handle of placed.handles) expect(Math.abs(handle.at([handle.x, handle.y]) - handle.value), handle.id).toBeLessThanOrEqual(1);
      expect(placed.handles.map((h) => h.id)).toEqual(['branchAngle', 'ridgeAngle', 'stemLean']);
    }));
  });

  it('says it when the bar cannot lie in the cut', () => {
    const text = (change: object) => draw(change, 'plan').labels.map((l) => l.lines.metric.join(' ')).join('; ');
    expect(text({ poleAngle: 70 })).toContain('from nowhere');
    expect(text({ poleAngle: 30 })).not.toContain('from nowhere');
  });

  for (const box of [phone, wide]) {
    it(`keeps labels apart and on the sheet, ${box.width} px wide`, () => {
      for (const { title, inputs, outcome } of extremes('final-cut')) {
        for (const face of faces) expect(overlaps(geometry(inputs as Inputs, outcome, { face, labels }, box)), `${title}, ${face}`).toEqual([]);
      }
    });
  }

  it('writes clean SVG', () => {
    for (const face of faces) {
      const words = wordsOf('final-cut', face);
      for (const { inputs, outcome } of extremes('final-cut')) {
        expectSvg(<Drawing id="f" face={face} inputs={inputs as Inputs} outcome={outcome} box={phone} words={words} onMove={() => {}} />, words);
      }
    }
  });
});
