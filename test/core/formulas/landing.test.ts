import { beforeAll, describe, expect, it } from 'vitest';
import { shapes } from '#core/formulas/falling-limb.ts';
import { type Box, type Ends, fallOf, lastAngle, search, startsClear } from '#core/formulas/landing.ts';
import { seeded } from '../calculators/box.ts';
import { type Compared, compareFalls } from './fall-cases.ts';

const degree = Math.PI / 180;

describe('200 seeded falls against a rigid-body engine', () => {
  let falls: Compared[] = [];
  beforeAll(() => { falls = compareFalls(200, 20_261_125); }, 120_000);

  it('all were compared', () => expect(falls).toHaveLength(200));
  it('place of the first touch within 2 % of the length', () => {
    for (const f of falls) expect(f.place, f.label).toBeLessThan(0.02);
  });
  it('time in the air within 2 %, or the engine\'s step where there is hardly any', () => {
    for (const f of falls) expect(f.flight, f.label).toBeLessThan(Math.max(0.02 * f.flightTime, 0.001));
  });
  it('time on the hinge within 5 ms', () => {
    for (const f of falls) expect(f.hinge, f.label).toBeLessThan(0.005);
  });
  it('the envelope holds where it lies at rest', () => {
    for (const f of falls) expect(f.beyond, f.label).toBeLessThanOrEqual(0.001);
  });
});

describe('the search against random falls', () => {
  it('misses hardly any, and those by little', () => {
    const next = seeded(99);
    const between = (low: number, high: number): number => low + (high - low) * next();
    let tried = 0;
    let over = 0;
    for (let k = 0; k < 60; k++) {
      const about = (value: number, way: number): Ends => [value - way, value + way];
      const height = between(2, 9);
      const length = between(0.5, 4);
      const box: Box = {
        cutHeight: about(height, 0.15 * height), length: about(length, 0.2 * length), start: about(between(-20, 70) * degree, 10 * degree),
        slope: about(between(-15, 15) * degree, 5 * degree), shape: next() < 0.5 ? shapes.whole : shapes.pole,
        span: [30 * degree, 60 * degree, Math.PI][k % 3]!, low: 0, high: 2.2,
      };
      const found = search(box);
      if (found === null) continue;
      const within = ([low, high]: Ends): number => between(low, high);
      for (let j = 0; j < 300; j++) {
        const place = { cutHeight: within(box.cutHeight), start: within(box.start), slope: within(box.slope) };
        const limb = { length: within(box.length), shape: box.shape };
        if (!startsClear(limb.length, place)) continue;
        const last = lastAngle(limb, place, box.span);
        const fall = fallOf(limb, place, place.start + (last.angle - place.start) * next(), next() ** 2, box.low, box.high);
        const floor = box.length[1];
        tried++;
        if (fall.outward > 1.03 * Math.max(floor, found.outward.value) || fall.inward > 1.03 * Math.max(floor, found.inward.value)) over++;
      }
    }
    expect(tried).toBeGreaterThan(10_000);
    expect(over / tried).toBeLessThan(5e-4);
  });
});
