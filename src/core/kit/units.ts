/**
 * Units. Every quantity has one fixed unit for ever (the keys below); imperial is a matter of showing and reading.
 * Factors follow from the international yard and pound agreement of 1959 and the SI Brochure; they are exact by
 * definition or a product of exact ones. Step: what a figure is shown to, unless its output says otherwise.
 */
export type UnitSystem = 'metric' | 'imperial';

/** How a unit is shown: `shown = value / per + shift`. `ft in` is feet and inches, counted in inches. */
export type Face = { symbol: string; per: number; shift: number; step: number };

const face = (symbol: string, per: number, step: number, shift = 0): Face => ({ symbol, per, step, shift });
const same = (symbol: string, step: number) => ({ metric: face(symbol, 1, step), imperial: face(symbol, 1, step) });

const inch = 0.0254;
const foot = 12 * inch;
const pound = 0.45359237;
const poundForce = pound * 9.80665;
const gallon = 231 * inch ** 3 * 1000;

export const units = {
  m: { metric: face('m', 1, 0.1), imperial: face('ft in', inch, 1) },
  mm: { metric: face('mm', 1, 1), imperial: face('in', 1000 * inch, 0.1) },
  mm2: { metric: face('cm²', 100, 1), imperial: face('in²', (1000 * inch) ** 2, 0.1) },
  m3: { metric: face('m³', 1, 0.001), imperial: face('ft³', foot ** 3, 0.01) },
  deg: same('°', 1),
  kg: { metric: face('kg', 1, 1), imperial: face('lb', pound, 1) },
  'kg/m': { metric: face('kg/m', 1, 0.1), imperial: face('lb/ft', pound / foot, 0.1) },
  'kg/m3': { metric: face('kg/m³', 1, 1), imperial: face('lb/ft³', pound / foot ** 3, 0.1) },
  N: { metric: face('N', 1, 1), imperial: face('lbf', poundForce, 1) },
  Nm: { metric: face('N·m', 1, 1), imperial: face('lbf·ft', poundForce * foot, 1) },
  J: { metric: face('J', 1, 1), imperial: face('ft·lbf', poundForce * foot, 1) },
  MPa: { metric: face('MPa', 1, 1), imperial: face('psi', poundForce / (1000 * inch) ** 2, 10) },
  Pa: { metric: face('Pa', 1, 1), imperial: face('lbf/ft²', poundForce / foot ** 2, 0.1) },
  kV: same('kV', 0.1),
  W: same('W', 1),
  Wh: same('Wh', 1),
  'm/s': { metric: face('m/s', 1, 0.1), imperial: face('mph', (5280 * foot) / 3600, 1) },
  'm/s2': same('m/s²', 0.1),
  s: same('s', 0.1),
  min: same('min', 1),
  h: same('h', 0.1),
  years: same('years', 1),
  L: { metric: face('L', 1, 0.1), imperial: face('US gal', gallon, 0.1) },
  mL: { metric: face('mL', 1, 1), imperial: face('US fl oz', (gallon * 1000) / 128, 0.1) },
  dB: same('dB(A)', 0.1),
  /** A protector's rating, or the difference of two levels: decibels with no weighting. */
  'dB plain': same('dB', 1),
  degC: { metric: face('°C', 1, 1), imperial: face('°F', 5 / 9, 1, 32) },
  '%': same('%', 1),
  points: same('points', 1),
  'to one': same(': 1', 1),
  ratio: same('', 0.01),
  number: same('', 1),
} satisfies Record<string, { metric: Face; imperial: Face }>;

export type Unit = keyof typeof units;

export const faceOf = (unit: Unit, system: UnitSystem): Face => units[unit][system];

/** Shown as feet and inches. */
export const isFeetAndInches = (f: Face): boolean => f.symbol === 'ft in';
