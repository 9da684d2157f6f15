/**
 * Noise over a day. Levels in dB(A), times in minutes. Two ways of adding: the USA's law trades time for level by five
 * decibels (29 CFR 1910.95 Appendix A; WAC 296-307-63415), everyone else by energy (ISO 1999 and the laws that use it).
 */
import { noise } from '../facts/noise.ts';

export type Noise = { level: number; minutes: number };

const day = (): number => noise('reference-day') * 60;

/** Minutes a day at `level` where `exchange` decibels halve the time from `limit` over eight hours. */
export const minutesByExchange = (level: number, limit: number, exchange: number): number => day() / 2 ** ((level - limit) / exchange);

/** Minutes a day at `level` with the energy of eight hours at `limit`. */
export const minutesByEnergy = (level: number, limit: number): number => day() / 10 ** ((level - limit) / 10);

/** Dose, %, of noises whose allowed minutes are told by `allowed`: 100·Σ C ÷ T. */
export const dose = (noises: readonly Noise[], allowed: (level: number) => number): number =>
  noises.reduce((sum, { level, minutes }) => sum + (100 * minutes) / allowed(level), 0);

/** The even level over eight hours that gives this dose (over 0): limit + exchange·log₂(dose ÷ 100). The law prints 16.61·log₁₀ for five decibels. */
export const levelByExchange = (percent: number, limit: number, exchange: number): number => limit + exchange * Math.log2(percent / 100);

/** L_EX,8h from the dose (over 0) by energy. */
export const levelByEnergy = (percent: number, limit: number): number => limit + 10 * Math.log10(percent / 100);

/** Noise points of a day, Great Britain: 100 for the upper action value over eight hours. HSE weekly reckoner. */
export const noisePoints = (level: number): number => 100 * 10 ** ((level - noise('upper-action')) / 10);

/** The daily average over a week from the sum of its points: 500 points are five days at the upper action value. */
export const weekLevel = (points: number): number => noise('upper-action') + 10 * Math.log10(points / 500);
