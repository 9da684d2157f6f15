/** What counts as a full day of noise, by country and rule: one place that tells limit, adding rule and ceiling apart. */
import { shiftAddition } from '../facts/hearing.ts';
import { noise } from '../facts/noise.ts';
import { levelByEnergy, levelByExchange, minutesByEnergy, minutesByExchange } from './noise.ts';

export const criteria = ['usLaw', 'niosh', 'eu', 'australia', 'canada'] as const;
export type Criterion = (typeof criteria)[number];

export type Rule = {
  /** The daily level, dB(A), that a dose of 100 % means. */
  limit: number;
  allowed: (level: number) => number;
  /** The even level over eight hours of a dose over 0, %. */
  dayLevel: (dose: number) => number;
  /** Above this level the rule's table allows no time, or ends; null where it says nothing of the kind. */
  ceiling: number | null;
  /** Decibels added for a long shift. */
  added: number;
};

const byExchange = (limit: number, exchange: number, ceiling: number | null): Rule => ({
  limit,
  allowed: (level) => minutesByExchange(level, limit, exchange),
  dayLevel: (dose) => levelByExchange(dose, limit, exchange),
  ceiling,
  added: 0,
});
const byEnergy = (limit: number, ceiling: number | null, added = 0): Rule => ({
  limit,
  allowed: (level) => minutesByEnergy(level + added, limit),
  dayLevel: (dose) => levelByEnergy(dose, limit),
  ceiling,
  added,
});

/** @param shift hours of the shift; only Australia asks */
export const ruleOf = (criterion: Criterion, shift: number): Rule => {
  if (criterion === 'usLaw') return byExchange(noise('us-limit'), noise('us-exchange'), noise('us-ceiling'));
  if (criterion === 'niosh') return byExchange(noise('niosh-limit'), noise('niosh-exchange'), null);
  if (criterion === 'eu') return byEnergy(noise('upper-action'), null);
  if (criterion === 'australia') return byEnergy(noise('au-limit'), null, shiftAddition(shift));
  return byEnergy(noise('canada-limit'), noise('canada-ceiling'));
};
