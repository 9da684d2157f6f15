/**
 * Reads what someone typed into a field: a number in the units shown, or with a unit of its own (`5.2 m`, `16'5"`,
 * `16 ft 5 in`, `10 1/2 in`), with a decimal point or comma. Never guesses: what can be read two ways is a problem.
 */
import { faceOf, isFeetAndInches, type Unit, type UnitSystem } from './units.ts';

export type Read = { kind: 'value'; value: number } | { kind: 'problem'; problem: 'missing' | 'notNumber' | 'wrongUnit' | 'twoWays' };

const problem = (id: Extract<Read, { kind: 'problem' }>['problem']): Read => ({ kind: 'problem', problem: id });

const inch = 0.0254;
/** Spellings of units by what they measure; factor to the unit the quantity is kept in. */
const lengths = {
  m: 1, metre: 1, metres: 1, meter: 1, meters: 1, cm: 0.01, mm: 0.001,
  in: inch, inch: inch, inches: inch, '"': inch, ft: 12 * inch, foot: 12 * inch, feet: 12 * inch, "'": 12 * inch,
};
type Spellings = { readonly [spelling: string]: number };
const thousandth = (of: Spellings): Spellings => Object.fromEntries(Object.entries(of).map(([k, v]) => [k, v * 1000]));
const pound = 0.45359237;
const spellings: { readonly [unit in Unit]?: Spellings } = {
  m: lengths,
  mm: thousandth(lengths),
  deg: { '°': 1, deg: 1, degree: 1, degrees: 1 },
  kg: { kg: 1, g: 0.001, lb: pound, lbs: pound },
  kV: { kv: 1, v: 0.001 },
  'm/s': { 'm/s': 1, 'km/h': 1 / 3.6, kmh: 1 / 3.6, mph: 0.44704, kn: 1852 / 3600, kt: 1852 / 3600 },
  'm/s2': { 'm/s²': 1, 'm/s2': 1 },
  s: { s: 1, sec: 1 },
  min: { min: 1, mins: 1, minutes: 1, h: 60, hours: 60 },
  h: { h: 1, hours: 1, min: 1 / 60 },
  L: { l: 1, litre: 1, litres: 1, liter: 1, liters: 1, ml: 0.001, gal: 3.785411784, 'us gal': 3.785411784, 'uk gal': 4.54609, 'imp gal': 4.54609, 'fl oz': 0.0295735295625, 'us fl oz': 0.0295735295625 },
  mL: { ml: 1, l: 1000, 'fl oz': 29.5735295625 },
  dB: { db: 1, 'db(a)': 1, dba: 1 },
  'dB plain': { db: 1 },
  W: { w: 1, kw: 1000 },
  Wh: { wh: 1, kwh: 1000 },
  N: { n: 1 },
  MPa: { mpa: 1, psi: 0.006894757293168 },
  '%': { '%': 1 },
  'to one': { ':1': 1, ': 1': 1 },
};

const digits = String.raw`\d+(?:[.,]\d*)?|[.,]\d+`;
const amount = String.raw`(?:(?:\d+\s+)?\d+\/\d+|${digits})`;
const feetMarks = String.raw`(?:'|ft|feet|foot)`;
const inchMarks = String.raw`(?:"|''|in|inch|inches)`;
const feetThenInches = new RegExp(`^(-?)(${amount})\\s*${feetMarks}\\s*(?:(${amount})\\s*${inchMarks}?)?$`);
const plain = new RegExp(`^([+-]?)(${amount})\\s*(.*)$`);

/** A number or fraction without sign; its text has matched `amount`. */
const amountOf = (text: string): number => {
  const [first, second] = text.split(/\s+/);
  const fraction = (part: string): number => {
    const [over, under] = part.split('/');
    return under === undefined ? Number(part.replace(',', '.')) : Number(over) / Number(under);
  };
  return fraction(first as string) + (second === undefined ? 0 : fraction(second));
};

/** A comma before exactly three digits: a decimal, or thousands? After a nought it can only be a decimal. */
const readsTwoWays = (text: string): boolean => /^[1-9]\d{0,2},\d{3}$/.test(text);

/** One spelling for each mark. A fraction sign after a figure is a part more, not more figures; a raised figure is a power. */
const tidy = (text: string): string =>
  text.replace(/(\d)(?=[\u00bc-\u00be\u2150-\u215e])/g, '$1 ').replace(/(\d)(?=[\u00b2\u00b3\u00b9\u2070-\u2079])/g, '$1^')
    .normalize('NFKC').replaceAll('\u2044', '/').replace(/[’′]/g, "'").replace(/[”″]/g, '"').replace(/''/g, '"').replace(/[−–]/g, '-').replace(/\s+/g, ' ').trim().toLowerCase();

/**
 * @param text as typed
 * @param unit what the quantity is kept in; the value comes back in it
 * @param system how a bare number is meant: metric, or feet (for m), inches (for mm) and the like
 */
export const readQuantity = (text: string, unit: Unit, system: UnitSystem): Read => {
  const typed = tidy(text);
  if (typed === '') return problem('missing');
  const known = spellings[unit];
  const compound = (unit === 'm' || unit === 'mm') && feetThenInches.exec(typed);
  if (compound) {
    const [, sign, feet, inches] = compound as unknown as [string, string, string, string | undefined];
    if (readsTwoWays(feet) || (inches !== undefined && readsTwoWays(inches))) return problem('twoWays');
    const metres = (amountOf(feet) * 12 + (inches === undefined ? 0 : amountOf(inches))) * inch;
    const value = (sign ? -metres : metres) * (unit === 'mm' ? 1000 : 1);
    return Number.isFinite(value) ? { kind: 'value', value } : problem('notNumber');
  }
  const parts = plain.exec(typed);
  if (!parts) return problem('notNumber');
  const [, sign, number, tail] = parts as unknown as [string, string, string, string];
  if (/^[.,\d/]/.test(tail)) return problem('notNumber');
  if (readsTwoWays(number)) return problem('twoWays');
  const size = amountOf(number) * (sign === '-' ? -1 : 1);
  const face = faceOf(unit, system);
  let value: number;
  if (tail === '') {
    value = isFeetAndInches(face) ? size * 12 * inch : (size - face.shift) * face.per;
  } else if (unit === 'degC' && /^°?\s?[cf]$/.test(tail)) {
    value = tail.endsWith('f') ? (size - 32) / 1.8 : size;
  } else {
    const factor = known?.[tail] ?? (tail === tidy(face.symbol) && !isFeetAndInches(face) ? face.per : undefined);
    if (factor === undefined) return problem('wrongUnit');
    value = size * factor;
  }
  return Number.isFinite(value) ? { kind: 'value', value } : problem('notNumber');
};

/** A gap between items: not the one inside `10 1/2` or `1 ft 2 in`. */
const gap = /;|&|\+|,(?=\s)|(?<!'|ft|foot|feet)\s+(?=[\d.,])(?!\d+\/)|(?<=\/\d+)\s+(?=\d+\/)/i;

/** Figures joined by commas and nothing else: two of them may be one with a decimal, more can only be a list. */
const commasAlone = /^\s*\d+(?:,\d+)+\s*$/;
/** So many of one size: `2 x 45`. */
const times = /(\d+)\s*[x×*]\s*(?=[\d.,])/g;
const many = /^\s*([1-9]\d?)x(.+)$/;

/**
 * A list of numbers as people write them: `60, 45 45`, `60;45`, `60 + 45`, `60,45,45` or `60 2x45`. A comma between digits
 * is a decimal where a gap parts the others.
 */
export const readList = (text: string, unit: Unit, system: UnitSystem): Read[] => {
  if (commasAlone.test(text)) {
    const parts = text.trim().split(',');
    if (parts.length === 2 || parts.slice(1).every((part) => part.length === 3)) return [problem('twoWays')];
    return parts.map((part) => readQuantity(part, unit, system));
  }
  return text.replace(times, '$1x').split(gap).map((part) => part.replace(/,\s*$/, '')).filter((part) => part.trim() !== '')
    .flatMap((part) => {
      const [, count, one] = many.exec(part) ?? [];
      return one === undefined ? [readQuantity(part, unit, system)] : Array.from({ length: Number(count) }, () => readQuantity(one, unit, system));
    });
};
