/**
 * What comes how near to a line, in the upright plane square to it. Frame: x level from plumb under the cut, away from
 * the worker; z up from the ground. Lengths in m, angles in degrees. Every part is taken with the space under it
 * (plane-gap.ts), so a part over the line is as near as it is level.
 */
import { cos, sin } from './angles.ts';
import { gapToLimb } from './limb-reach.ts';
import { gapToReach, gapUnder, type Point } from './plane-gap.ts';

export type Setting = {
  /** Height of the line, and its level distance from plumb under the cut: beyond the cut positive, on your side negative. */
  lineHeight: number;
  lineOffset: number;
  /** Across the way your pole points, along it to one side, or any way between. */
  lineRuns: 'across' | 'along' | 'aslant';
  floor: number;
  handHeight: number;
  /** Pole and bar together. */
  reach: number;
  poleAngle: number;
  standOff: number;
  stumble: number;
  /** Height of the cut with what the parent limb may spring up. */
  cutHeight: number;
  limbLength: number;
  limbAngle: number;
  /** The platform, or null from the ground. */
  platform: { boomReach: number; halfLength: number; rail: number; machineHeight: number } | null;
};

/** Where the feet are, seen along the line, from left to right: a line aslant may see them anywhere between. */
export const feetBetween = ({ lineRuns, standOff }: Pick<Setting, 'lineRuns' | 'standOff'>): [number, number] =>
  [lineRuns === 'along' ? 0 : 0 - standOff, lineRuns === 'across' ? 0 - standOff : 0];

const lineOf = ({ lineOffset, lineHeight }: Setting): Point => ({ x: lineOffset, z: lineHeight });

/** The outline over body and pole as held, whichever way a line aslant sees them: from plumb under the cut to square on. */
export const heldOutline = (s: Setting): [Point, ...Point[]] => {
  const [x] = feetBetween(s);
  const hands = s.floor + s.handHeight;
  const tip = { x: x + s.reach * cos(s.poleAngle), z: hands + s.reach * sin(s.poleAngle) };
  const top = Math.max(hands, tip.z);
  if (s.lineRuns === 'along') return [{ x, z: top }, { x, z: top }];
  if (s.lineRuns === 'across') return [{ x, z: hands }, tip];
  // Seen less than square on, hands and tip move level towards plumb; so what is short of it fills up to it.
  if (tip.x <= 0) return tip.z > hands ? [{ x, z: hands }, tip, { x: 0, z: tip.z }] : [{ x, z: hands }, { x: 0, z: hands }];
  const plumb = hands + ((tip.z - hands) * (0 - x)) / (tip.x - x);
  const beyond: Point[] = tip.z > hands ? [{ x: 0, z: plumb }, { x: 0, z: tip.z }, tip] : [{ x: 0, z: hands }, { x: 0, z: plumb }, tip];
  return [{ x, z: hands }, ...beyond];
};

/** The outline over basket and boom; the boom may stand to either side. */
export const platformOutline = (s: Setting): [Point, ...Point[]] | null => {
  if (!s.platform) return null;
  const { boomReach, halfLength, rail, machineHeight } = s.platform;
  const [left, right] = feetBetween(s);
  const top = s.floor + rail;
  const foot = Math.min(machineHeight, top);
  const out = halfLength + boomReach;
  return [{ x: left - out, z: foot }, { x: left - halfLength, z: top }, { x: right + halfLength, z: top }, { x: right + out, z: foot }];
};

const platformGap = (s: Setting): number => {
  const outline = platformOutline(s);
  return outline ? gapUnder(lineOf(s), outline) : Infinity;
};

/** Body, pole and platform as held. */
export const workingGap = (s: Setting): number => Math.min(gapUnder(lineOf(s), heldOutline(s)), platformGap(s));

/** The strip that raised hands can be in after a stumbling step; the pole turns and topples about any point of it. */
export const handStrip = (s: Setting): { x: number; halfWidth: number; top: number } => {
  const [left, right] = feetBetween(s);
  return { x: (left + right) / 2, halfWidth: s.stumble + (right - left) / 2, top: s.floor + s.handHeight };
};

/** Body, pole and platform with a stumbling step in any direction and the pole toppling at its full length. */
export const reachGap = (s: Setting): number => Math.min(gapToReach(lineOf(s), handStrip(s), s.reach), platformGap(s));

/** The limb before the cut, turning and falling, whichever way it points. */
export const limbGap = (s: Setting): number => gapToLimb(s.lineOffset, s.lineHeight - s.cutHeight, s.limbLength, s.limbAngle);

/** Whether anything could be over the line with less than `needed` between them level. */
export const comesOver = (s: Setting, needed: number): boolean => {
  const level = (top: number, gap: (at: Setting) => number): boolean => top > s.lineHeight && gap(s) < needed;
  return level(s.floor + s.handHeight + s.reach, reachGap) || level(s.cutHeight + s.limbLength * Math.max(0, sin(s.limbAngle)), limbGap);
};

/** Offsets of the line at which the least of all gaps turns: over the feet, over the cut, and between them. */
export const turningOffsets = (s: Setting): number[] => {
  const [left, right] = feetBetween(s);
  if (right === 0) return [left, 0];
  let [a, b] = [left, 0];
  const nearerToYou = (x: number): boolean => reachGap({ ...s, lineOffset: x }) < limbGap({ ...s, lineOffset: x });
  for (let i = 0; i < 30; i++) {
    const middle = (a + b) / 2;
    if (nearerToYou(middle)) a = middle;
    else b = middle;
  }
  return [left, (a + b) / 2, 0];
};
