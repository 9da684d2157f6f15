import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fit, inset, onStep, place, unplace } from '#drawings/kit/frame.ts';
import { placeLabels, textWidth, wrap, type Ask } from '#drawings/kit/labels.ts';
import { same, say, word } from '#drawings/kit/say.ts';
import { line } from '#drawings/marks/line.ts';
import { looks } from '#drawings/marks/looks.ts';
import { numbersOf, overlaps } from './kit.ts';

describe('frame', () => {
  const extents = fc.record({ left: fc.double({ min: -50, max: 0, noNaN: true }), right: fc.double({ min: 0.5, max: 50, noNaN: true }), bottom: fc.double({ min: -50, max: 0, noNaN: true }), top: fc.double({ min: 0.5, max: 50, noNaN: true }) });
  const box = { width: 358, height: 236 };

  it('fits the extent in the box less its inset, and goes back to where it came from', () => {
    fc.assert(
      fc.property(extents, fc.double({ min: -60, max: 60, noNaN: true }), fc.double({ min: -60, max: 60, noNaN: true }), (extent, x, y) => {
        const frame = fit(extent, box, inset(10));
        const [left, top] = place(frame, extent.left, extent.top);
        const [right, bottom] = place(frame, extent.right, extent.bottom);
        for (const px of [left, top]) expect(px).toBeGreaterThanOrEqual(10 - 1e-6);
        expect(right).toBeLessThanOrEqual(348 + 1e-6);
        expect(bottom).toBeLessThanOrEqual(226 + 1e-6);
        const [bx, by] = unplace(frame, place(frame, x, y));
        expect(bx).toBeCloseTo(x, 6);
        expect(by).toBeCloseTo(y, 6);
      }),
    );
  });

  it('puts a value on a step and within its bounds', () => {
    expect(onStep(3.449, 1.2, 15, 0.1)).toBe(3.4);
    expect(onStep(0, 1.2, 15, 0.1)).toBe(1.2);
    expect(onStep(99, 1.2, 15, 0.1)).toBe(15);
    expect(onStep(7, 0, 10, 4)).toBe(8);
  });
});

describe('labels', () => {
  it('stand in the box and not on each other, however they crowd', () => {
    const asks = fc.array(fc.record({ x: fc.integer({ min: -20, max: 640 }), y: fc.integer({ min: -20, max: 380 }), words: fc.constantFrom('limit', 'stand here', 'as far as it lands', 'stem') }), { maxLength: 9 });
    fc.assert(
      fc.property(asks, fc.constantFrom(358, 620), (list, width) => {
        const box = { width, height: Math.round(width * 0.62) };
        const labels = placeLabels(list.map(({ x, y, words }): Ask => ({ text: same(words), at: [x, y] })), box);
        expect(labels.length).toBe(list.length);
        expect(overlaps({ labels, box })).toEqual([]);
      }),
    );
  });

  it('take the room of the longer of both unit systems', () => {
    const [label] = placeLabels([{ text: { metric: '3 m', imperial: '9 ft 10 in' }, at: [100, 100] }], { width: 358, height: 200 });
    expect(label!.rect.width).toBeCloseTo(textWidth('9 ft 10 in'), 6);
  });

  it('break between words only', () => {
    expect(wrap('line of the stem', 10)).toEqual(['line of', 'the stem']);
    expect(wrap('stem', 2)).toEqual(['stem']);
  });
});

describe('words', () => {
  it('fill their figures, and refuse a figure or word that is not there', () => {
    expect(say('to {far}', { far: same('2 m') })).toEqual(same('to 2 m'));
    expect(() => say('to {fair}', { far: same('2 m') })).toThrow(/fair.*far/);
    expect(() => word({ stem: 'stem' }, 'limb')).toThrow(/limb.*stem/);
  });
});

describe('marks', () => {
  it('keep to the line weights 1, 2 and 3; more only in paper, to part one thing from another, and for a range on a scale', () => {
    for (const [name, look] of Object.entries(looks)) {
      if (look.weight > 3 && name !== 'reached') expect('stroke' in look && look.stroke, name).toBe('paper');
      expect([0, 1, 2, 3, 7], name).toContain(look.weight);
    }
  });

  it('hang a wire by its sag at the middle of the span', () => {
    const [wire] = line([10, 20], [110, 40], 12);
    const [x0, y0, cx, cy, x1, y1] = numbersOf(wire!.d) as [number, number, number, number, number, number];
    expect((x0 + 2 * cx + x1) / 4).toBeCloseTo(60, 1);
    expect((y0 + 2 * cy + y1) / 4 - 30).toBeCloseTo(12, 1);
  });
});
