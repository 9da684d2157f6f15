/**
 * What `final-cut` draws, in mm: origin at the top of the ridge, y up, the branch on the right. Turned by the stem's lean
 * as a whole, so that level is level.
 */
import type { finalCut } from '#core/calculators/final-cut.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import { showFine } from '#core/kit/show.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { planOn, quantityOf, said } from '../kit/figures.ts';
import type { Point } from '../kit/placed.ts';
import type { Figures } from '../kit/say.ts';
import { add, times } from '../kit/vector.ts';

export type Inputs = InputsOf<(typeof finalCut)['inputs']>;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
/** The way at an angle clockwise from upright. */
export const from = (upright: number): Point => [Math.sin(radians(upright)), Math.cos(radians(upright))];

export type Scene = {
  inputs: Inputs;
  /** Ways: along the stem upwards, along the branch, down the ridge, down the cut, down the other cut. */
  up: Point;
  out: Point;
  /** Square to the branch, from its upper to its lower edge. */
  across: Point;
  ridgeFoot: Point;
  cut: [Point, Point];
  other: [Point, Point] | null;
  /** Where the branch's lower edge leaves the stem. */
  joint: Point;
  stemWidth: number;
  /** As much of the stem as is drawn from beside; less than its width, it runs on. */
  stemShown: number;
  reach: number;
  woundLength: number;
  flushLength: number;
  figures: Figures;
};

/** As entered; an outcome without an answer draws nothing of the cut but its place. */
export const sceneOf = (inputs: Inputs, outcome: Outcome): Scene => {
  const { branchAngle, ridgeAngle, ridgeLength, stemLean, branchDiameter: d, stemDiameter, collarSwell, union } = inputs;
  const value = (name: string): number | null => quantityOf(outcome, name)?.value ?? null;
  const [up, out] = [from(stemLean), from(stemLean + branchAngle)];
  const across: Point = [out[1], -out[0]];
  const down = (angle: number): Point => from(stemLean + 180 - angle);
  const ridgeReach = ridgeLength * Math.sin(radians(ridgeAngle)) * 1.2;
  const stemWidth = Math.max(stemDiameter ?? d * 2, ridgeReach, d);
  // A dead branch is cut outside the sleeve of living wood, well out from the ridge.
  const sleeve = union === 'dead' ? times(out, d * (0.95 + Math.max(0, 1 / Math.tan(radians(branchAngle))))) : ([0, 0] as Point);
  const line = (angle: number, start: Point): [Point, Point] => {
    const toBranch = 180 - angle - branchAngle;
    return [start, add(start, times(down(angle), d / Math.sin(radians(toBranch))))];
  };
  const cutAngle = value('cutAngle') ?? 90 - branchAngle;
  const otherAngle = value('otherAngle');
  const figures: Figures = {
    ridgeAngle: said('deg', ridgeAngle),
    branchAngle: said('deg', branchAngle),
    stemLean: said('deg', stemLean),
    branchDiameter: said('mm', d),
    ...(value('cutFromHorizontal') === null ? {} : { cutFromHorizontal: said('deg', value('cutFromHorizontal')!) }),
    ...(value('cutToBranch') === null ? {} : { cutToBranch: said('deg', value('cutToBranch')!) }),
    ...(planOn(outcome, 'woundLength') === null ? {} : {
      woundLength: said('mm', planOn(outcome, 'woundLength')!, 'up'),
      woundWidth: said('mm', planOn(outcome, 'woundWidth')!, 'up'),
      woundArea: said('mm2', planOn(outcome, 'woundArea')!, 'up'),
      flushArea: said('mm2', planOn(outcome, 'flushArea')!, 'up'),
    }),
    ...(value('shiftAlong') === null ? {} : {
      shiftAlong: { metric: showFine({ unit: 'm', step: 1 }, Math.abs(value('shiftAlong')!), 'metric'), imperial: said('m', Math.abs(value('shiftAlong')!)).imperial },
    }),
  };
  return {
    inputs, up, out, across, stemWidth,
    stemShown: Math.min(stemWidth, Math.max(d * 1.3, ridgeReach)),
    ridgeFoot: times(down(-ridgeAngle), ridgeLength),
    cut: line(cutAngle, sleeve),
    other: otherAngle === null || Math.abs(otherAngle - cutAngle) < 0.5 ? null : line(otherAngle, sleeve),
    joint: times(up, -d / Math.sin(radians(branchAngle))),
    reach: d * 1.3 + (union === 'dead' ? d * 1.4 : 0) + Math.max(0, d / Math.tan(radians(branchAngle))),
    woundLength: value('woundLength') ?? d,
    flushLength: (collarSwell * d) / Math.sin(radians(branchAngle)),
    figures,
  };
};
