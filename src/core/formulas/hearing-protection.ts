/**
 * What a hearing protector takes off, dB, by the name of the method. `cMinusA` is how much higher the noise reads on the
 * C weighting than on A. Every method gives what to take off the A-weighted level. Ratings as printed on the packing.
 */
import { noise } from '../facts/noise.ts';

/** NRR on a C-weighted level: L_C − NRR. 29 CFR 1910.95 Appendix B. */
export const nrrOnC = (nrr: number, cMinusA: number): number => nrr - cMinusA;
/** NRR on an A-weighted level, legal form: L_A − (NRR − 7). 29 CFR 1910.95 Appendix B. */
export const nrrOnA = (nrr: number): number => nrr - noise('nrr-a-weighted');
/** The field form of the USA's regulator: half of the legal form. From memory; not Appendix B. */
export const nrrInField = (nrr: number): number => nrrOnA(nrr) * noise('nrr-field-share');
/** NIOSH publication 98-126: a share is taken off the NRR, then seven decibels for an A-weighted level (that step from memory). */
export const nrrDerated = (nrr: number, off: number): number => nrrOnA(nrr * (1 - off));
/** SNR on a C-weighted level with four decibels for real use: L_C − SNR + 4. British practice. */
export const snr = (rating: number, cMinusA: number): number => rating - cMinusA - noise('snr-real-world');

/** HML: the predicted reduction of an A-weighted level, from the three ratings. The instrument manual's method; ISO 4869-2. */
export const hml = (h: number, m: number, l: number, cMinusA: number): number =>
  cMinusA <= 2 ? m - ((h - m) / 4) * (cMinusA - 2) : m - ((m - l) / 8) * (cMinusA - 2);
