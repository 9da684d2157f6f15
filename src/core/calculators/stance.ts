/** Where do I stand, at what angle, with how much pole? */
import { standing as fact } from '../facts/standing.ts';
import { angleUp, tan } from '../formulas/angles.ts';
import {
  cutHeightAt, poleAngleFrom, standOffAtLength, standOffAtLowest, standOffAtSteepest,
} from '../formulas/reach.ts';
import { answer, defineCalculator, type InputProblem, outside, type RawStep } from '../kit/calculator.ts';
import { choice, guess, label, optionalQuantity, quantity } from '../kit/inputs.ts';

const pole = (example: number) =>
  quantity('m', { min: 1.2, max: 6, step: 0.1, example, tolerance: label({ least: 0.05 }) });

/** How the height between grip and cut moves a distance that turns where the two are level. */
const turning = { cutHeight: 'bends', gripHeight: 'bends', platformHeight: 'bends', groundRise: 'bends' } as const;
type Heights = { cutHeight: number; gripHeight: number; platformHeight: number };
/** Turning points where the cut would stand `rise` (m) above the grip; the slope, `slope` (degrees). */
const turnsAt = <I extends Heights>(rise: (inputs: I) => number, slope: (inputs: I) => number) => ({
  cutHeight: (i: I) => i.gripHeight + i.platformHeight + rise(i),
  gripHeight: (i: I) => i.cutHeight - i.platformHeight - rise(i),
  platformHeight: (i: I) => i.cutHeight - i.gripHeight - rise(i),
  groundRise: slope,
});
/** Nearest: least where cut and grip are level. With the rise given, one way with the slope. */
const nearestTurns = turnsAt<Heights>(() => 0, () => Number.NaN);
/** A pole's reach: greatest where the pole lies level, at its full length from plumb. */
const reachTurns = (pole: 'poleLongest' | 'poleShortest') => {
  type I = Heights & { groundRise: number; poleLongest: number; poleShortest: number };
  return turnsAt<I>(
    (i) => -i[pole] * tan(i.groundRise),
    (i) => angleUp(i.gripHeight + i.platformHeight - i.cutHeight, i[pole]),
  );
};

/** Above the grip by this much (m), the cut is above it. */
const hair = 1e-9;
/**
 * Where a guess puts the cut at the grip or below it, the pole is put away for a tool in the hand, from any stand-off: what
 * is told goes as far as there. Nor is it too mild for one who held on to the pole, the cut less than half a metre down:
 * - nearestStandOff, angleAtNearest: the pole lies level or points down, never near the limit; what is left is the landing.
 *   They are worst where the cut is highest over the grip, which is inside.
 * - furthestStandOff, clearance: a reach, least where the cut is highest or, where the ground falls towards it, at the
 *   limit, and past it shorter by under 0.3 m. Who then does not reach comes in, up to the nearest, which holds.
 * - angleAtFurthest: steeper the higher the cut. highestCut: not of this cut at all.
 * - shortestReach: past the limit longer by as little, and never more than the pole; it makes a note, never a danger.
 * Not so `belowPlatform`: towards it the nearest moves out until no place is left, so a guess that reaches it has no answer.
 */
const backAbove = {
  cutHeight: (i: Heights) => i.gripHeight + i.platformHeight + hair,
  gripHeight: (i: Heights) => i.cutHeight - i.platformHeight - hair,
};

/**
 * How it moves the pole's angle. A longer pole held to the same cut lies nearer to the slope: the sine of the angle
 * between them is as one to its length. So it flattens to a cut above the slope, rises to one below, and never turns.
 */
const steepening = { cutHeight: 'up', gripHeight: 'down', platformHeight: 'down', groundRise: 'up' } as const;

export const stance = defineCalculator({
  id: 'stance',
  inputs: {
    cutHeight: quantity('m', { min: 1.2, max: 15, step: 0.1, example: 3.5, tolerance: guess({ share: 0.15, least: 0.3 }, { least: 0.1 }) }),
    gripHeight: quantity('m', { min: 0.7, max: 1.6, step: 0.05, example: 1.1, tolerance: guess({ least: 0.15 }, { least: 0.05 }) }),
    poleShortest: pole(2.3),
    poleLongest: pole(3.4),
    groundRise: quantity('deg', { min: -25, max: 25, step: 1, example: 0, tolerance: guess({ least: 5 }, { least: 1 }) }),
    platformHeight: quantity('m', { min: 0, max: 20, step: 0.1, example: 0, tolerance: guess({ least: 0.5, sureAtZero: true }, { least: 0.1, sureAtZero: true }) }),
    standing: choice(['beside', 'stemSide', 'tipSide'], 'beside'),
    landingReach: quantity('m', { min: 0, max: 15, step: 0.1, example: 1.8 }),
    // Carried from the drop zone for the drawing alone: how far it lands either way, margin and all, and how far it may turn.
    landingOut: optionalQuantity('m', { min: 0, max: 100, step: 0.1, example: null }),
    landingBack: optionalQuantity('m', { min: 0, max: 100, step: 0.1, example: null }),
    landingSwing: optionalQuantity('deg', { min: 0, max: 90, step: 5, example: null }),
  },
  outputs: {
    nearestStandOff: { kind: 'quantity', unit: 'm', protects: 'up', moves: { ...turning, landingReach: 'up' }, turns: nearestTurns },
    furthestStandOff: { kind: 'quantity', unit: 'm', protects: 'down', moves: { ...turning, poleLongest: 'up' }, turns: reachTurns('poleLongest') },
    angleAtNearest: { kind: 'quantity', unit: 'deg', protects: 'up', moves: { ...steepening, landingReach: 'bends' } },
    angleAtFurthest: { kind: 'quantity', unit: 'deg', protects: 'up', moves: { ...steepening, poleLongest: 'bends' }, turns: { poleLongest: () => Number.NaN } },
    highestCut: { kind: 'quantity', unit: 'm', protects: 'down', moves: { gripHeight: 'up', platformHeight: 'up', poleLongest: 'up', groundRise: 'down' } },
    clearance: { kind: 'quantity', unit: 'm', protects: 'down', moves: { ...turning, poleLongest: 'up', landingReach: 'down' }, turns: reachTurns('poleLongest') },
    shortestReach: { kind: 'quantity', unit: 'm', protects: 'up', moves: { ...turning, poleShortest: 'up' }, turns: reachTurns('poleShortest') },
  },
  lead: ['nearestStandOff', 'furthestStandOff', 'angleAtNearest'],
  exampleGot: 'measured',
  middle: { rise: 'm', limitDistance: 'm', limitAngle: 'deg', lowestAngle: 'deg' },
  findings: {
    tipSide: { level: 'stop' },
    poleTooShort: { level: 'stop', at: { ...steepening, poleLongest: 'down' } },
    underIt: { level: 'stop', at: 'clearance' },
    stemSide: { level: 'caution' },
    shortestTooLong: { level: 'note' },
    heavy: { level: 'note' },
  },
  limits: ['belowGrip', 'belowPlatform'],
  upTo: { belowGrip: backAbove },
  relate: ({ poleShortest, poleLongest }): InputProblem[] =>
    poleShortest > poleLongest ? [{ input: 'poleShortest', problem: 'poleOrder', values: { poleLongest } }] : [],
  compute: (i) => {
    const limitAngle = fact('angle-limit');
    const lowestAngle = fact('platform-angle-low');
    const { cutHeight, gripHeight, platformHeight, groundRise, poleLongest, landingReach } = i;
    const onPlatform = platformHeight > 0;
    const grip = gripHeight + platformHeight;
    const rise = cutHeight - grip;
    if (rise <= 0 && !onPlatform) return outside('belowGrip', { cutHeight, gripHeight });

    const limitDistance = Math.max(
      standOffAtSteepest(rise, groundRise, limitAngle),
      standOffAtLowest(rise, groundRise, lowestAngle),
    );
    const nearest = Math.max(limitDistance, landingReach);
    const furthest = standOffAtLength(rise, groundRise, poleLongest);
    const reaches = furthest !== null && furthest >= limitDistance;
    if (rise < 0 && !reaches) return outside('belowPlatform', { lowestAngle });
    const angleAtNearest = poleAngleFrom(rise, groundRise, nearest);
    const shortestReach = standOffAtLength(rise, groundRise, i.poleShortest) ?? 0;
    const highestCut = cutHeightAt(grip, groundRise, poleLongest, limitAngle);
    const working: RawStep[] = [
      { id: 'rise', values: { cutHeight, gripHeight, platformHeight }, result: { name: 'rise', value: rise } },
      { id: 'limitDistance', values: { rise, limitAngle, groundRise }, result: { name: 'limitDistance', value: limitDistance } },
      { id: 'nearestStandOff', values: { limitDistance, landingReach }, result: { name: 'nearestStandOff', value: nearest } },
      ...(furthest === null
        ? []
        : [{ id: 'furthestStandOff', values: { poleLongest, rise, groundRise }, result: { name: 'furthestStandOff', value: furthest } }]),
      { id: 'angleAtNearest', values: { rise, groundRise, nearestStandOff: nearest }, result: { name: 'angleAtNearest', value: angleAtNearest } },
    ];
    return answer(
      {
        nearestStandOff: nearest,
        furthestStandOff: furthest,
        angleAtNearest,
        angleAtFurthest: furthest === null ? null : poleAngleFrom(rise, groundRise, furthest),
        highestCut,
        clearance: furthest === null ? null : furthest - landingReach,
        shortestReach,
      },
      [
        i.standing === 'tipSide' && { id: 'tipSide' },
        i.standing === 'stemSide' && { id: 'stemSide' },
        !reaches && { id: 'poleTooShort', values: { highestCut, cutHeight, limitAngle } },
        reaches && furthest < landingReach && { id: 'underIt', values: { furthestStandOff: furthest, landingReach } },
        shortestReach > nearest && { id: 'shortestTooLong', values: { shortestReach, nearestStandOff: nearest } },
        !onPlatform && angleAtNearest < fact('heavy-below') && { id: 'heavy', values: { angleAtNearest } },
      ],
      working,
    );
  },
});
