/**
 * Vibration of the hands over a day. Source: ISO 5349-1 and -2 (as printed by an open-source library of acoustics),
 * points: HSE hand-arm vibration ready-reckoner. Magnitudes are totals of three axes, m/s²; times in minutes of trigger
 * time. Older figures of one axis do not belong here.
 */
import { vibration } from '../facts/vibration.ts';

export type Spell = { magnitude: number; minutes: number };

const day = (): number => vibration('reference-day') * 60;

/** A(8), m/s²: √( Σ a²·t ÷ 8 h ). */
export const dailyExposure = (spells: readonly Spell[]): number =>
  Math.sqrt(spells.reduce((sum, { magnitude, minutes }) => sum + magnitude ** 2 * minutes, 0) / day());

/** Exposure points: Σ 2·a²·(t in hours). */
export const exposurePoints = (spells: readonly Spell[]): number =>
  spells.reduce((sum, { magnitude, minutes }) => sum + (vibration('points-rate') * magnitude ** 2 * minutes) / 60, 0);

/**
 * Minutes with a tool of `magnitude` (over 0) until a day that already holds `exposure` (A(8), m/s²) reaches `level`:
 * 8 h·(level² − exposure²) ÷ a². None are left where it is there already.
 */
export const minutesUntil = (level: number, exposure: number, magnitude: number): number =>
  Math.max(0, (day() * (level ** 2 - exposure ** 2)) / magnitude ** 2);

/** Years until one in ten of a group shows white fingers, on average: 31.8·A(8)^−1.06. ISO 5349-1, C.1; no limit, and nobody's own future. */
export const yearsToWhiteFinger = (exposure: number): number => 31.8 * exposure ** -1.06;
