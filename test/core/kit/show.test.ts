import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Quantity } from '#core/kit/outcome.ts';
import { type Direction, fieldText, show, showFine, showRange, showValue } from '#core/kit/show.ts';

/** No-break spaces shown as spaces, for legible expectations. */
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const m = { unit: 'm' } as const;
const cm = { unit: 'm', step: 0.01 } as const;

describe('one value', () => {
  it.each<[number, Direction, string]>([
    [1.1, 'up', '1.1 m'],
    [1.1, 'down', '1.1 m'],
    [3.3 / 3, 'up', '1.1 m'], // 1.0999999999999999 in binary
    [0.1 + 0.2, 'up', '0.3 m'], // 0.30000000000000004
    [1.12, 'up', '1.2 m'],
    [1.18, 'down', '1.1 m'],
    [1.14, 'nearest', '1.1 m'],
    [1.16, 'nearest', '1.2 m'],
    [-1.12, 'up', '−1.1 m'],
    [-1.12, 'down', '−1.2 m'],
    [-0.04, 'up', '0.0 m'],
    [0, 'up', '0.0 m'],
    [1.1000001, 'up', '1.2 m'],
    [1.0999999, 'down', '1.0 m'],
  ])('%f rounded %s is %s', (value, direction, text) => {
    expect(plain(showValue(m, value, 'metric', direction))).toBe(text);
  });

  it('keeps the places of its step: 1.10 stays 1.10', () => {
    expect(plain(showValue(cm, 1.1, 'metric', 'up'))).toBe('1.10 m');
    expect(plain(showValue(cm, 1.1, 'metric', 'down'))).toBe('1.10 m');
    expect(plain(showValue({ unit: 'm', step: 0.25 }, 1.1, 'metric', 'up'))).toBe('1.25 m');
    expect(plain(showValue({ unit: 'MPa' }, 10, 'imperial', 'up'))).toBe('1460 psi'); // 10 MPa = 1450.4 psi
    expect(plain(showValue({ unit: 'm', step: 1 / 3 }, 1, 'metric'))).toBe('1.000000000 m');
  });

  it('rounds in the system shown, not in metres first', () => {
    // 1 m = 39.370 in = 3 ft 3.37 in
    expect(plain(showValue(m, 1, 'imperial', 'up'))).toBe('3 ft 4 in');
    expect(plain(showValue(m, 1, 'imperial', 'down'))).toBe('3 ft 3 in');
    expect(plain(showValue(m, 0.3048, 'imperial', 'up'))).toBe('1 ft');
    expect(plain(showValue(m, 0.3048 * 6, 'imperial', 'down'))).toBe('6 ft');
    expect(plain(showValue(m, 0.2, 'imperial', 'up'))).toBe('8 in');
    expect(plain(showValue({ unit: 'm', imperialStep: 6 }, 1, 'imperial', 'up'))).toBe('3 ft 6 in');
    expect(plain(showValue(m, 0, 'imperial'))).toBe('0 in');
    expect(plain(showValue(m, -1, 'imperial', 'up'))).toBe('−3 ft 3 in');
    expect(plain(showValue(m, -0.2, 'imperial', 'nearest'))).toBe('−8 in');
    expect(plain(showValue({ unit: 'mm' }, 254, 'imperial'))).toBe('10.0 in');
    expect(plain(showValue({ unit: 'mm', imperialStep: 0.5 }, 250, 'imperial', 'up'))).toBe('10.0 in');
    expect(plain(showValue({ unit: 'degC' }, 20, 'imperial'))).toBe('68 °F');
  });

  it('puts the unit where it belongs', () => {
    expect(showValue({ unit: 'deg' }, 60, 'metric')).toBe('60°');
    expect(showValue({ unit: '%' }, 25, 'metric')).toBe('25%');
    expect(showValue({ unit: 'ratio' }, 1 / 3, 'metric', 'down')).toBe('0.33');
    expect(showValue({ unit: 'mm2' }, 1234, 'metric', 'up')).toBe('13\u00a0cm²');
  });

  it('protects: outward by less than a step, whatever the figure', () => {
    const parsed = (text: string): number => Number(plain(text).replace('−', '-').replace(/ .*/, ''));
    fc.assert(fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), fc.constantFrom(0.01, 0.05, 0.1, 0.5, 1, 10), (x, step) => {
      const give = 1e-9 * Math.max(step, Math.abs(x)) + 1e-9;
      const up = parsed(showValue({ unit: 'm', step }, x, 'metric', 'up'));
      const down = parsed(showValue({ unit: 'm', step }, x, 'metric', 'down'));
      expect(up).toBeGreaterThanOrEqual(x - give);
      expect(up).toBeLessThan(x + step + give);
      expect(down).toBeLessThanOrEqual(x + give);
      expect(down).toBeGreaterThan(x - step - give);
    }));
  });
});

describe('a range', () => {
  it('rounds outward at both ends', () => {
    expect(plain(showRange(m, 1.18, 2.42, 'metric'))).toBe('1.1–2.5 m');
    expect(plain(showRange(m, 1.1, 1.1, 'metric'))).toBe('1.1 m');
    expect(plain(showRange({ unit: 'deg' }, -5.2, 3.1, 'metric'))).toBe('−6° … 4°');
    expect(plain(showRange(m, 1, 2, 'imperial'))).toBe('3 ft 3 in … 6 ft 7 in');
    expect(showRange({ unit: '%' }, 10, 20, 'metric')).toBe('10–20%');
  });
});

describe('an output', () => {
  const figure: Quantity = { value: 1.5, low: 1.18, high: 1.82, planOn: null, planAt: null };
  it('shows the end that protects, or both', () => {
    expect(plain(show({ unit: 'm', protects: 'up' }, figure, 'metric'))).toBe('1.9 m');
    expect(plain(show({ unit: 'm', protects: 'down' }, figure, 'metric'))).toBe('1.1 m');
    expect(plain(show({ unit: 'm', protects: 'both' }, figure, 'metric'))).toBe('1.1–1.9 m');
  });
  it('shows a dash where there is no such place', () => {
    expect(show({ unit: 'm', protects: 'up' }, null, 'metric')).toBe('–');
  });
});

describe('a field', () => {
  it.each<[number, string]>([
    [5.0038, '16 ft 5 in'], [0.254, '0 ft 10 in'], [-0.254, '-0 ft 10 in'], [-0.4572, '-1 ft 6 in'],
    [0.3047, '1 ft 0 in'], [0, '0 ft 0 in'],
  ])('%f m in feet and inches: %s', (metres, text) => {
    expect(fieldText('m', metres, 'imperial')).toBe(text);
  });
  it('metric as kept, imperial to a hundredth', () => {
    expect(fieldText('m', 3.5, 'metric')).toBe('3.5');
    expect(fieldText('m', 0.1 + 0.2, 'metric')).toBe('0.3');
    expect(fieldText('mm', 100, 'imperial')).toBe('3.94');
    expect(fieldText('degC', 20, 'imperial')).toBe('68');
  });
});

describe('a figure inside a working', () => {
  it('ten times finer, to the nearest, without idle noughts', () => {
    expect(plain(showFine(m, 1.0969655, 'metric'))).toBe('1.1 m');
    expect(plain(showFine(m, 1.0449, 'metric'))).toBe('1.04 m');
    expect(plain(showFine(m, 3, 'metric'))).toBe('3 m');
    expect(plain(showFine(m, -0.126, 'metric'))).toBe('−0.13 m');
    expect(plain(showFine({ unit: 'mm' }, 100, 'metric'))).toBe('100 mm');
    expect(plain(showFine({ unit: 'MPa' }, 10, 'metric'))).toBe('10 MPa');
    expect(plain(showFine({ unit: 'MPa' }, 10, 'imperial'))).toBe('1450 psi'); // 1450.38
    expect(plain(showFine({ unit: 'deg' }, 60, 'metric'))).toBe('60°');
    expect(plain(showFine({ unit: 'ratio' }, 1 / 3, 'metric'))).toBe('0.333');
  });
  it('in feet and tenths of an inch', () => {
    expect(plain(showFine(m, 1, 'imperial'))).toBe('3 ft 3.4 in'); // 39.370 in
    expect(plain(showFine(m, 0.3048, 'imperial'))).toBe('1 ft');
    expect(plain(showFine(m, 0.3040, 'imperial'))).toBe('1 ft'); // 11.97 in
    expect(plain(showFine({ unit: 'mm' }, 254, 'imperial'))).toBe('10 in');
  });
});
