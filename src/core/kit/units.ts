/**
 * Units. Every quantity has one fixed unit for ever (the left column); imperial is a matter of showing and reading.
 * Conversion factors are exact by definition (international yard and pound agreement, 1959; SI Brochure).
 */
export type UnitSystem = 'metric' | 'imperial';
export type Unit =
  | 'm' | 'mm' | 'mm2' | 'm3' | 'deg' | 'kg' | 'kg/m' | 'kg/m3' | 'N' | 'Nm' | 'J' | 'MPa' | 'Pa' | 'kV' | 'm/s' | 'm/s2'
  | 's' | 'min' | 'h' | 'L' | 'mL' | 'dB' | 'degC' | '%' | 'points' | 'to one' | 'ratio' | 'number';
