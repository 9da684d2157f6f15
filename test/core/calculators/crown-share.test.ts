import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { crownShare } from '#core/calculators/crown-share.ts';
import { evaluate, type Answer, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { exampleOf } from '#core/registry.ts';

const example = exampleOf(crownShare);
const run = (change: Inputs, got: 'exact' | 'judged' | 'measured' = 'exact') => evaluate(crownShare, { ...example, ...change }, got);
const figure = (change: Inputs, name: string): number => ((run(change) as Answer).outputs[name] as Quantity).value;
const ids = (change: Inputs, got: 'exact' | 'judged' | 'measured' = 'exact'): string[] => (run(change, got) as Answer).findings.map((f) => f.id);

describe('against the published table', () => {
  // The table as quoted prints 3770 and 3535 cm² for 48 cuts of 50 mm and 5 of 150 mm: pi d² where pi d² / 4 is meant.
  it.each([[48, 50, 3770], [5, 150, 3535]])('%d cuts of %d mm: its area is four times too large', (n, mm, printed) => {
    const area = figure({ stemDiameter: 600, cuts: Array.from({ length: n }, () => mm) }, 'cutArea') / 100;
    expect(printed / area).toBeGreaterThan(3.998);
    expect(printed / area).toBeLessThan(4.002);
  });
});

const cuts = fc.array(fc.double({ min: 5, max: 40, noNaN: true }), { minLength: 1, maxLength: 20 });
describe('the share', () => {
  it('adds up: two lists together take what each takes', () => {
    fc.assert(fc.property(cuts, cuts, (a, b) => {
      const [one, two, both] = [a, b, [...a, ...b]].map((list) => figure({ stemDiameter: 500, cuts: list }, 'share'));
      expect(both).toBeCloseTo((one as number) + (two as number), 9);
    }));
  });
  it('does not mind the order', () => {
    fc.assert(fc.property(cuts, (list) => {
      expect(figure({ stemDiameter: 500, cuts: [...list].reverse() }, 'share')).toBeCloseTo(figure({ stemDiameter: 500, cuts: list }, 'share'), 9);
    }));
  });
  it('does not mind the scale', () => {
    fc.assert(fc.property(cuts, fc.double({ min: 1, max: 2.9, noNaN: true }), (list, k) => {
      expect(figure({ stemDiameter: 500 * k, cuts: list.map((d) => d * k) }, 'share')).toBeCloseTo(figure({ stemDiameter: 500, cuts: list }, 'share'), 9);
    }));
  });
  it('a cut as large as the largest that still fits takes just what is left', () => {
    const more = figure({}, 'largestMore');
    expect(figure({ cuts: [...(example['cuts'] as number[]), more] }, 'room')).toBeCloseTo(0, 9);
  });
  it('counts what went before', () => expect(figure({ earlier: 7 }, 'share') - figure({}, 'share')).toBeCloseTo(7, 9));
});

describe('limits side by side', () => {
  const file = JSON.parse(readFileSync('shared/values/crown.json', 'utf8')) as Record<string, { value: number; status: string }>;
  it.each([['young', 'young-a-year'], ['middle', 'middle-a-year'], ['mature', 'mature-a-year']] as const)('a %s tree: %s', (vigour, key) =>
    expect(figure({ vigour }, 'limit')).toBe(file[key]?.value));
  it('an old tree has no figure: only if necessary', () => {
    expect((run({ vigour: 'old' }) as Answer).outputs).toMatchObject({ limit: null, room: null, largestMore: null, roomAmerican: null });
    expect(ids({ vigour: 'old' })).toContain('onlyIfNecessary');
  });
  it('the stricter of those for a mature tree leads', () => {
    expect(figure({}, 'limit')).toBeLessThan(file['a-season-1995']?.value as number);
    expect(figure({}, 'roomAmerican') - figure({}, 'room')).toBeCloseTo(5, 9);
    expect((run({ vigour: 'young' }) as Answer).outputs['roomAmerican']).toBeNull();
  });
  it('over a limit: no room, and nothing more fits', () => {
    const over = { cuts: [100, 80] };
    expect(ids(over)).toContain('tooMuch');
    expect(figure(over, 'room')).toBeLessThan(0);
    expect(figure(over, 'largestMore')).toBe(0);
  });
  it('severe from a third on, by the guess too', () => {
    expect(ids({ cuts: [150] })).toContain('severe');
    expect(ids({ cuts: [125] })).not.toContain('severe');
    expect(ids({ cuts: [125] }, 'judged')).toContain('severe');
  });
  it('what is recalled and not seen is marked so', () => expect(file['a-year-2008']?.status).toBe('memory'));
});

describe('outside and problems', () => {
  it('cuts that make up more than the crown', () => expect(run({ cuts: [200, 200] })).toMatchObject({ kind: 'outside', limit: 'moreThanCrown' }));
  it('a cut wider than the stem', () =>
    expect(run({ cuts: [300] })).toMatchObject({ kind: 'problems', problems: [{ input: 'cuts', problem: 'cutLarger' }] }));
  it('no cut at all', () => expect(run({ cuts: [] })).toMatchObject({ kind: 'problems', problems: [{ input: 'cuts', problem: 'tooFew' }] }));
});
