/**
 * The only place that rounds: once, in the unit system shown, and outward, so that the rounded figure protects at least
 * as well as the exact one. A slack of one part in 10⁹ keeps what is 1.10 but for binary arithmetic at 1.10.
 */
import type { Protects } from './calculator.ts';
import type { Quantity } from './outcome.ts';
import { type Face, faceOf, isFeetAndInches, type Unit, type UnitSystem } from './units.ts';

export type Direction = 'up' | 'down' | 'nearest';
/** What to show: a unit, and the step where it is not the unit's own. */
export type Shown = { unit: Unit; step?: number | undefined; imperialStep?: number | undefined };

const slack = 1e-9;
const noBreak = '\u00a0';

/** `x` to a whole number of steps, as that number of steps. */
const steps = (x: number, step: number, direction: Direction): number => {
  const k = x / step;
  const give = slack * Math.max(1, Math.abs(k));
  if (direction === 'up') return Math.ceil(k - give);
  if (direction === 'down') return Math.floor(k + give);
  return Math.round(k);
};

const decimalsOf = (step: number): number => {
  for (let places = 0; places < 9; places++) {
    if (Math.abs(Math.round(step * 10 ** places) - step * 10 ** places) < slack) return places;
  }
  return 9;
};

const signed = (text: string, negative: boolean): string => (negative ? `\u2212${text}` : text);

const feetAndInches = (inches: number): string => {
  const whole = Math.abs(inches);
  const feet = Math.floor(whole / 12);
  const rest = Number((whole - feet * 12).toFixed(1));
  const parts = [feet > 0 ? `${feet}${noBreak}ft` : '', rest > 0 || feet === 0 ? `${rest}${noBreak}in` : ''];
  return signed(parts.filter(Boolean).join(noBreak), inches < 0);
};

const stepOf = (shown: Shown, face: Face, system: UnitSystem): number =>
  (system === 'metric' ? shown.step : shown.imperialStep) ?? face.step;

/** The number alone, without its unit (feet and inches always with). */
const number = (shown: Shown, value: number, system: UnitSystem, direction: Direction): string => {
  const face = faceOf(shown.unit, system);
  const step = stepOf(shown, face, system);
  const count = steps(value / face.per + face.shift, step, direction);
  if (isFeetAndInches(face)) return feetAndInches(count * step);
  return signed(Math.abs(count * step).toFixed(decimalsOf(step)), count < 0);
};

const withUnit = (text: string, face: Face): string => {
  if (face.symbol === '' || isFeetAndInches(face)) return text;
  return /^[°%]$/.test(face.symbol) ? `${text}${face.symbol}` : `${text}${noBreak}${face.symbol}`;
};

/** One value with its unit, rounded to its step in the direction given. */
export const showValue = (shown: Shown, value: number, system: UnitSystem, direction: Direction = 'nearest'): string =>
  withUnit(number(shown, value, system, direction), faceOf(shown.unit, system));

/** A range, rounded outward at both ends. */
export const showRange = (shown: Shown, low: number, high: number, system: UnitSystem): string => {
  const face = faceOf(shown.unit, system);
  const from = number(shown, low, system, 'down');
  const to = number(shown, high, system, 'up');
  if (from === to) return withUnit(from, face);
  return low < 0 || isFeetAndInches(face) ? `${withUnit(from, face)} … ${withUnit(to, face)}` : withUnit(`${from}–${to}`, face);
};

/**
 * The figure of an output as it is shown large: what to plan on, or the range where both ends matter.
 * A figure that does not exist there (null) is a dash.
 */
export const show = (output: Shown & { protects: Protects }, figure: Quantity | null, system: UnitSystem): string => {
  if (figure === null) return '–';
  if (output.protects === 'both') return showRange(output, figure.low, figure.high, system);
  return showValue(output, output.protects === 'up' ? figure.high : figure.low, system, output.protects);
};

/**
 * A value as plain text for an input field: no unit, a point, the shortest form that reads back as shown.
 * Metric fields show the value as it is kept; imperial ones are rounded to the nearest step of the field.
 */
export const fieldText = (unit: Unit, value: number, system: UnitSystem): string => {
  const face = faceOf(unit, system);
  if (isFeetAndInches(face)) {
    const inches = Number((value / face.per).toFixed(1));
    const feet = Math.trunc(inches / 12);
    const rest = Number((Math.abs(inches) - Math.abs(feet) * 12).toFixed(1));
    return `${inches < 0 && feet === 0 ? '-' : ''}${feet} ft ${rest} in`;
  }
  const places = system === 'metric' ? 6 : 2;
  return String(Number((value / face.per + face.shift).toFixed(places)));
};

/** A figure inside a working: ten times finer than it is shown as a result, to the nearest, with no idle noughts. */
export const showFine = (shown: Shown, value: number, system: UnitSystem): string => {
  const face = faceOf(shown.unit, system);
  const step = stepOf(shown, face, system) / 10;
  if (isFeetAndInches(face)) return feetAndInches(Number((Math.round(value / face.per / step) * step).toFixed(1)));
  const text = number({ unit: shown.unit, step, imperialStep: step }, value, system, 'nearest');
  return withUnit(text.includes('.') ? text.replace(/\.?0+$/, '') : text, face);
};
