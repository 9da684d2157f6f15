import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, example } from '#core/registry.ts';
import { Drawing } from '#drawings/crown-share/Drawing.tsx';
import { geometry, type Inputs } from '#drawings/crown-share/geometry.ts';
import { anyInputs, expectDrawn, expectSvg, extremes, numbersOf, overlaps, pathsOf, phone, wide, wordsOf } from './kit.ts';

const words = wordsOf('crown-share', 'section');
const { labels } = words;
const draw = (change: object) => {
  const all = { ...example('crown-share'), ...change } as Inputs;
  return geometry(all, evaluate('crown-share', all, 'exact'), { face: 'section', labels }, phone);
};
/** Radius of a circle written from its rightmost point. */
const radius = (d: string): number => {
  const [, , right] = [0, 0, numbersOf(d)[2] as number];
  return right;
};

describe('crown share, drawn', () => {
  it('holds nothing but numbers over the whole range of the inputs', () => {
    fc.assert(fc.property(anyInputs('crown-share'), (inputs) => {
      const outcome = evaluate('crown-share', inputs, 'judged');
      if (outcome.kind === 'answer') expectDrawn(geometry(inputs as Inputs, outcome, { face: 'section', labels }, phone));
    }), { numRuns: 300 });
  });

  it('draws disc and limit true to area', () => {
    const placed = draw({ stemDiameter: 600, cuts: [300], vigour: 'middle' });
    const stem = radius(pathsOf(placed, 'section')[0]!);
    // A quarter of the section is half the radius; the limit for middle age is a quarter too.
    expect(radius(pathsOf(placed, 'piece')[0]!) / stem).toBeCloseTo(0.5, 1);
    expect(radius(pathsOf(placed, 'limit')[0]!) / stem).toBeCloseTo(0.5, 1);
  });

  it('shows every cut, and no ring where no limit is given', () => {
    expect(pathsOf(draw({ cuts: [60, 45, 45, 20] }), 'piece')).toHaveLength(1 + 4);
    expect(pathsOf(draw({ vigour: 'old' }), 'limit')).toHaveLength(0);
  });

  it('takes its handle back to the value it was placed for', () => {
    fc.assert(fc.property(fc.integer({ min: 20, max: 300 }), (k) => {
      const [handle] = draw({ stemDiameter: k * 5, cuts: [20] }).handles;
      expect(handle!.at([handle!.x, handle!.y])).toBe(k * 5);
    }));
  });

  for (const box of [phone, wide]) {
    it(`keeps labels apart and on the sheet, ${box.width} px wide`, () => {
      for (const { title, inputs, outcome } of extremes('crown-share')) {
        expect(overlaps(geometry(inputs as Inputs, outcome, { face: 'section', labels }, box)), title).toEqual([]);
      }
    });
  }

  it('writes clean SVG', () => {
    for (const { inputs, outcome } of extremes('crown-share')) {
      expectSvg(<Drawing id="c" face="section" inputs={inputs as Inputs} outcome={outcome} box={phone} words={words} onMove={() => {}} />, words);
    }
  });
});
