/**
 * A pole held still in two hands and a strap: plane statics, the rear hand as origin. Lengths m along the pole, angle in
 * degrees above the horizontal, forces N. Forces across the pole: lifting is positive. No outside source is needed.
 */
import { load } from '../facts/load.ts';
import { cos, sin } from './angles.ts';

export type Held = { mass: number; balance: number; gripSpacing: number; poleAngle: number; strapShare: number; strapAt: number };

const weightOf = (mass: number): number => mass * load('gravity');
const strapForce = ({ mass, strapShare }: Held): number => (weightOf(mass) * strapShare) / 100;

/** What is left of the weight for the hands, N: the strap pulls straight up. */
export const handsWeight = (h: Held): number => weightOf(h.mass) - strapForce(h);
/** The moment the hands must balance about the rear one, N·m: (weight·balance − strap·its place)·cos angle. */
export const leverMoment = (h: Held): number => (weightOf(h.mass) * h.balance - strapForce(h) * h.strapAt) * cos(h.poleAngle);
/** Across the pole at the front hand. */
export const frontHandForce = (h: Held): number => leverMoment(h) / h.gripSpacing;
/** Across the pole at the rear hand; negative presses down. */
export const rearHandForce = (h: Held): number => handsWeight(h) * cos(h.poleAngle) - frontHandForce(h);
/** Along the pole, taken by the rear hand; the front one lets it slide. */
export const alongPoleForce = (h: Held): number => handsWeight(h) * sin(h.poleAngle);
