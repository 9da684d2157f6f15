/**
 * What a plan is made of, by name. A fact bears the name of the calculators' input that it feeds, so that one figure,
 * typed once, means the same everywhere; its unit, range and tolerance are that input's.
 */
import { approachDistance } from '../calculators/approach-distance.ts';
import { barLength } from '../calculators/bar-length.ts';
import { cutOrder } from '../calculators/cut-order.ts';
import { dropZone } from '../calculators/drop-zone.ts';
import { limbWeight } from '../calculators/limb-weight.ts';
import { lineClearance } from '../calculators/line-clearance.ts';
import { poleLoad } from '../calculators/pole-load.ts';
import { stance } from '../calculators/stance.ts';
import type { ChoiceInput, QuantityInput } from '../kit/calculator.ts';
import { choice } from '../kit/inputs.ts';

/** Asked before anything else. */
export const gates = ['lines', 'weight', 'height', 'wood', 'below', 'footing', 'wind', 'second'] as const;
export type Gate = (typeof gates)[number];

/** Facts of the whole plan. `mass`, `balance`: of saw and pole together. `groundSlope`: the steepest slope under the tree; which way is down is a bearing. `lineOffset`: level, from the stem. */
export const sharedFacts = {
  gripHeight: stance.inputs.gripHeight,
  poleShortest: stance.inputs.poleShortest,
  poleLongest: stance.inputs.poleLongest,
  barLength: barLength.inputs.barLength,
  groundSlope: { ...dropZone.inputs.groundSlope, min: 0 },
  platformHeight: stance.inputs.platformHeight,
  boomReach: lineClearance.inputs.boomReach,
  voltage: approachDistance.inputs.voltage,
  ownDistance: approachDistance.inputs.ownDistance,
  lineHeight: lineClearance.inputs.lineHeight,
  lineOffset: { ...lineClearance.inputs.lineOffset, min: 0 },
  movement: lineClearance.inputs.movement,
  springUp: lineClearance.inputs.springUp,
  handHeight: lineClearance.inputs.handHeight,
  barTip: lineClearance.inputs.barTip,
  stumble: lineClearance.inputs.stumble,
  margin: dropZone.inputs.margin,
  swing: dropZone.inputs.swing,
  offSquare: barLength.inputs.offSquare,
  barMargin: barLength.inputs.margin,
  undercut: cutOrder.inputs.undercut,
  strength: cutOrder.inputs.strength,
  mass: poleLoad.inputs.mass,
  balance: poleLoad.inputs.balance,
  gripSpacing: poleLoad.inputs.gripSpacing,
} as const satisfies { readonly [name: string]: QuantityInput };
export type SharedFact = keyof typeof sharedFacts;

/** Facts of one limb. `limbLength`: what comes off, from the cut to the tip. */
export const limbFacts = {
  cutHeight: stance.inputs.cutHeight,
  limbLength: dropZone.inputs.limbLength,
  limbDiameter: cutOrder.inputs.diameter,
  limbAngle: { ...dropZone.inputs.limbAngle, max: cutOrder.inputs.limbAngle.max },
  spread: dropZone.inputs.spread,
  cutToStem: dropZone.inputs.cutToStem,
} as const satisfies { readonly [name: string]: QuantityInput };
export type LimbFact = keyof typeof limbFacts;

/** Choices of the whole plan. `wires`: whether any line is near the tree. */
export const sharedChoices = {
  species: limbWeight.inputs.species,
  workingFrom: lineClearance.inputs.workingFrom,
  wires: choice(['yes', 'no'], 'yes'),
  ruleSet: approachDistance.inputs.ruleSet,
  lineKind: approachDistance.inputs.lineKind,
  toldBy: approachDistance.inputs.toldBy,
} as const satisfies { readonly [name: string]: ChoiceInput };
export type SharedChoice = keyof typeof sharedChoices;

export const limbChoices = {
  support: cutOrder.inputs.support,
  fault: cutOrder.inputs.fault,
  shape: dropZone.inputs.shape,
  release: dropZone.inputs.release,
  condition: limbWeight.inputs.condition,
} as const satisfies { readonly [name: string]: ChoiceInput };
export type LimbChoice = keyof typeof limbChoices;

/** `line`: from the stem square to the line. `downhill`: the way the ground falls. Degrees clock-wise from a mark of the reader's own. */
export const sharedBearings = ['line', 'downhill'] as const;
export type SharedBearing = (typeof sharedBearings)[number];
/** `points`: the way the limb points. `worker`: from plumb under the cut to the worker. `wayOut`, `wayOut2`: from the worker. */
export const limbBearings = ['points', 'worker', 'wayOut', 'wayOut2'] as const;
export type LimbBearing = (typeof limbBearings)[number];

/** Texts of the sheet, as the reader wrote them. */
export const siteTexts = ['address', 'position', 'date', 'tree', 'watcher', 'signals', 'crew', 'notes', 'saw'] as const;
export type SiteText = (typeof siteTexts)[number];

export const mostLimbs = 12;
export const longestText = 300;
