import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readList, readQuantity } from '#core/kit/read.ts';
import { fieldText } from '#core/kit/show.ts';
import { type Unit, units, type UnitSystem } from '#core/kit/units.ts';
import { anyText } from './arbitrary.ts';

const value = (text: string, unit: Unit, system: UnitSystem = 'metric'): number => {
  const read = readQuantity(text, unit, system);
  if (read.kind === 'problem') throw new Error(`"${text}" read as problem ${read.problem}`);
  return read.value;
};
const problem = (text: string, unit: Unit, system: UnitSystem = 'metric'): string => {
  const read = readQuantity(text, unit, system);
  return read.kind === 'problem' ? read.problem : `value ${read.value}`;
};

// Expected metres are worked by hand from 1 in = 0.0254 m (exact since 1959).
describe('lengths as people write them', () => {
  it.each([
    [`16'5"`, 5.0038],
    [`16' 5"`, 5.0038],
    [`16 ft 5 in`, 5.0038],
    [`16ft5in`, 5.0038],
    [`16 feet 5 inches`, 5.0038],
    [`16’5”`, 5.0038],
    [`16′5″`, 5.0038],
    [`16'5''`, 5.0038],
    [`16' 5`, 5.0038],
    [`16' 5 1/2"`, 5.0165],
    [`16' 5½"`, 5.0165],
    [`16' 5.5 in`, 5.0165],
    [`16'`, 4.8768],
    [`16 ft`, 4.8768],
    [`16.5 ft`, 5.0292],
    [`10 in`, 0.254],
    [`10"`, 0.254],
    [`10 1/2 in`, 0.2667],
    [`10½ in`, 0.2667],
    [`½ in`, 0.0127],
    [`5.2 m`, 5.2],
    [`5,2 m`, 5.2],
    [`5.2`, 5.2],
    [`5,2`, 5.2],
    [`,5`, 0.5],
    [`0,125`, 0.125],
    [`520 cm`, 5.2],
    [`5200mm`, 5.2],
    [`  5.2   M `, 5.2],
    [`５.２ m`, 5.2],
    [`5.2\u00a0m`, 5.2],
    [`+5.2 m`, 5.2],
    [`+16 ft`, 4.8768],
    [`+16 feet`, 4.8768],
    [`+1 foot`, 0.3048],
    [`+16'`, 4.8768],
    [`-1.5 m`, -1.5],
    [`−1.5 m`, -1.5],
    [`–1.5 m`, -1.5],
    [`-1'6"`, -0.4572],
    [`5.`, 5],
  ])('%s is %f m', (text, metres) => {
    expect(value(text, 'm')).toBeCloseTo(metres, 10);
    expect(value(text, 'mm') / 1000).toBeCloseTo(/[a-z'"’′½/]/i.test(text) ? metres : metres / 1000, 10);
  });

  it('takes a bare number in the units shown', () => {
    expect(value('5', 'm', 'imperial')).toBeCloseTo(1.524, 10); // 5 ft
    expect(value('10', 'mm', 'imperial')).toBeCloseTo(254, 10); // 10 in
    expect(value('10', 'mm', 'metric')).toBe(10);
    expect(value('50', 'degC', 'imperial')).toBeCloseTo(10, 10);
    expect(value('50', 'degC', 'metric')).toBe(50);
  });
});

describe('other units', () => {
  it.each<[string, Unit, number]>([
    ['15°', 'deg', 15], ['-5 degrees', 'deg', -5],
    ['400 g', 'kg', 0.4], ['10 lb', 'kg', 4.5359237],
    ['33 kV', 'kV', 33], ['400 V', 'kV', 0.4],
    ['36 km/h', 'm/s', 10], ['10 mph', 'm/s', 4.4704], ['36 kn', 'm/s', 18.52], ['36 kt', 'm/s', 18.52], ['3.5 m/s²', 'm/s2', 3.5],
    ['1 h', 'min', 60], ['30 min', 'h', 0.5], ['1 US gal', 'L', 3.785411784], ['1 l', 'mL', 1000],
    ['85 dB(A)', 'dB', 85], ['25 %', '%', 25], ['50:1', 'to one', 50], ['50 : 1', 'to one', 50],
    ['68 °F', 'degC', 20], ['20 c', 'degC', 20], ['68f', 'degC', 20],
    ['12 kg/m', 'kg/m', 12], ['3 points', 'points', 3], ['7.5 cm²', 'mm2', 750],
  ])('%s as %s is %f', (text, unit, expected) => {
    expect(value(text, unit)).toBeCloseTo(expected, 9);
  });
});

describe('what it will not guess', () => {
  it.each([
    ['', 'missing'], ['   ', 'missing'],
    ['abc', 'notNumber'], ['NaN', 'notNumber'], ['Infinity', 'notNumber'], ['-', 'notNumber'], ['.', 'notNumber'],
    ['--5', 'notNumber'], ['m', 'notNumber'], ['1/0', 'notNumber'], [`1/0'`, 'notNumber'], ['1/', 'notNumber'], ['16 5', 'notNumber'],
    ['5.2.1', 'notNumber'], ['1,200.5', 'notNumber'], ['9'.repeat(400), 'notNumber'],
    ['1,200', 'twoWays'], [`1,200 ft`, 'twoWays'], [`1,200'`, 'twoWays'], [`1' 1,200"`, 'twoWays'],
    ['5 kg', 'wrongUnit'], ['5 ft in', 'wrongUnit'], ['10²', 'wrongUnit'], ['1e5', 'wrongUnit'], ['5 m 20', 'wrongUnit'],
    ['5 constructor', 'notNumber'],
  ])('%s: %s', (text, expected) => {
    expect(problem(text, 'm')).toBe(expected);
  });

  it('refuses a length where an angle is asked for, and the reverse', () => {
    expect(problem('5 m', 'deg')).toBe('wrongUnit');
    expect(problem(`5'6"`, 'deg')).toBe('wrongUnit');
    expect(problem('5°', 'm')).toBe('wrongUnit');
    expect(problem('5 °F', 'm')).toBe('wrongUnit');
    expect(problem('5 m', 'number')).toBe('wrongUnit');
  });

  it('never throws and never gives anything but a finite number or a known problem', () => {
    const odd = fc.oneof(
      anyText(30),
      fc.array(fc.constantFrom('1', '5', '.', ',', '/', "'", '"', ' ', '-', 'ft', 'in', 'm', '½', '²', '°', 'e', '0'), { maxLength: 12 }).map((a) => a.join('')),
    );
    fc.assert(fc.property(odd, fc.constantFrom(...(Object.keys(units) as Unit[])), fc.constantFrom<UnitSystem>('metric', 'imperial'), (text, unit, system) => {
      for (const read of [readQuantity(text, unit, system), ...readList(text, unit, system)]) {
        if (read.kind === 'value') expect(Number.isFinite(read.value)).toBe(true);
        else expect(['missing', 'notNumber', 'wrongUnit', 'twoWays']).toContain(read.problem);
      }
    }), { numRuns: 500 });
  });
});

describe('lists', () => {
  const items = (text: string, unit: Unit, system: UnitSystem = 'metric'): (number | string)[] =>
    readList(text, unit, system).map((r) => (r.kind === 'value' ? Number(r.value.toFixed(6)) : r.problem));

  it.each<[string, (number | string)[]]>([
    ['60, 45 45', [60, 45, 45]],
    ['60;45', [60, 45]],
    ['60,5 45', [60.5, 45]],
    ['60 mm 45 mm', [60, 45]],
    ['60,', [60]],
    ['', []],
    [' ; ', []],
    ['60 x', ['wrongUnit']],
    ['60; x', [60, 'notNumber']],
    ['60 + 45+45', [60, 45, 45]],
    ['60 & 45', [60, 45]],
    ['60\n45', [60, 45]],
    ['2x45, 60', [45, 45, 60]],
    ['60 3 × 45', [60, 45, 45, 45]],
    ['2 x 4.5 cm', [45, 45]],
    ['60,45,45', [60, 45, 45]],
    // One cut of 60.45 or two: the reader must say.
    ['60,45', ['twoWays']],
    ['60,450,300', ['twoWays']],
    ['60 0x45', [60, 'wrongUnit']],
    ['1,200 60', ['twoWays', 60]],
  ])('%s', (text, expected) => {
    expect(items(text, 'mm')).toEqual(expected);
  });

  it('keeps a fraction with its whole and inches with their feet', () => {
    expect(items('10 1/2 8', 'mm', 'imperial')).toEqual([266.7, 203.2]);
    expect(items('1/2 1/4', 'mm', 'imperial')).toEqual([12.7, 6.35]);
    expect(items('1 ft 2 in; 3 in', 'mm', 'imperial')).toEqual([355.6, 76.2]);
  });
});

describe('what a field shows reads back', () => {
  it.each(Object.keys(units) as Unit[])('%s', (unit) => {
    fc.assert(fc.property(fc.double({ min: -400, max: 400, noNaN: true }), (x) => {
      expect(Math.abs(value(fieldText(unit, x, 'metric'), unit, 'metric') - x)).toBeLessThanOrEqual(1e-6 * (unit === 'mm2' ? 100 : 1));
      // Imperial fields show a hundredth of their unit, lengths a tenth of an inch.
      const face = units[unit].imperial;
      const half = (face.symbol === 'ft in' ? 0.05 : 0.005) * face.per;
      expect(Math.abs(value(fieldText(unit, x, 'imperial'), unit, 'imperial') - x)).toBeLessThanOrEqual(half * (1 + 1e-9));
    }));
  });
});
