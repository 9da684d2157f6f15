/**
 * What each block of a card says in figures, as text rounded once by `show`: each the plan-on figure of the calculator
 * that answers the same question. Words, and the order they stand in, are content's.
 */
import { approachDistance, noRuleSet } from '../calculators/approach-distance.ts';
import { barLength } from '../calculators/bar-length.ts';
import { cutOrder } from '../calculators/cut-order.ts';
import { dropZone } from '../calculators/drop-zone.ts';
import { fuelMix } from '../calculators/fuel-mix.ts';
import { reduction } from '../calculators/reduction.ts';
import { stance } from '../calculators/stance.ts';
import { vibration } from '../calculators/vibration.ts';
import { type Known, knownOf } from '../facts/known.ts';
import { lines } from '../facts/lines.ts';
import { ruleSet, ruleSets } from '../facts/rule-sets.ts';
import { standing } from '../facts/standing.ts';
import { asked, strictest } from '../formulas/approach.ts';
import type { AnyCalculator, AnyInput, GotSet, QuantityOutput } from '../kit/calculator.ts';
import { type Answer, type Choice, evaluate, type Inputs, type Outcome, type Quantity } from '../kit/outcome.ts';
import { show, showFine, showValue } from '../kit/show.ts';
import type { Unit, UnitSystem } from '../kit/units.ts';
import type { BlockId, CardInputs } from './fields.ts';

/** A figure of a card: its text, and how it is known. `given`: the reader's own, not worked out. */
export type Figure = { text: string; known: Known; given?: true };
/** `say`: words of content in a figure's place. */
export type Cell = Figure | { say: string };
/** `figures` fill the words by name; `rows` are a table's; `says` are the words that go with them, by id, in order. */
export type BlockFigures = { figures: { readonly [name: string]: Figure }; rows: readonly (readonly Cell[])[]; says: readonly string[] };

export const exampleOf = (calculator: AnyCalculator): Inputs =>
  Object.fromEntries(Object.entries(calculator.inputs as { [name: string]: AnyInput }).map(([name, input]) => [name, input.example]));
const ask = (calculator: AnyCalculator, given: Inputs, got: GotSet): Outcome => evaluate(calculator, { ...exampleOf(calculator), ...given }, got);
const figureOf = (calculator: AnyCalculator, answer: Answer, output: string, system: UnitSystem): string =>
  show(calculator.outputs[output] as QuantityOutput, answer.outputs[output] as Quantity | null, system);
/** What the reader put in, as they put it. */
const entered = (unit: Unit, value: number, system: UnitSystem): Figure => ({ text: showFine({ unit }, value, system), known: 'published', given: true });
const has = (answer: Answer, finding: string): boolean => answer.findings.some(({ id }) => id === finding);

/** The voltage in kV; below one kV in volts, as people say it. */
const voltageText = (kV: number): Figure => ({ text: kV < 1 ? `${Number((kV * 1000).toFixed(1))}\u00a0V` : `${Number(kV.toFixed(2))}\u00a0kV`, known: 'published', given: true });

const statuses = ['published', 'second-hand', 'memory'] as const;
/** The best status with which the figure of the strictest rule of all was seen. */
const strictestKnown = (voltage: number, from: CardInputs['workingFrom'], distance: number): Known =>
  statuses.find((_, worst) => strictest(ruleSets, { kind: 'threePhase', voltage }, from, ({ status }) => statuses.indexOf(status) <= worst)?.distance === distance) as Known;

const lineBlock = (i: CardInputs, system: UnitSystem): BlockFigures => {
  const set = ruleSet(i.ruleSet);
  const from = i.workingFrom;
  const says = new Set<string>();
  const row = (voltage: number, ownDistance: number | null): Cell[] => {
    const outcome = ask(approachDistance, { ruleSet: i.ruleSet, workingFrom: from, voltage, ownDistance }, 'exact');
    const head = voltageText(voltage);
    if (outcome.kind !== 'answer') return [head, { say: 'ask' }];
    for (const id of ['aboveInside', 'movementOnTop', 'ownSmaller']) if (has(outcome, id)) says.add(id);
    const band = set ? asked(set, { kind: 'threePhase', voltage }, from) : null;
    const distance = outcome.outputs['distance'] as Quantity;
    const own = has(outcome, 'ownFigure');
    const known: Known = own ? 'entered' : band && typeof band !== 'string' ? band.band.status : strictestKnown(voltage, from, distance.value);
    return [head, { text: figureOf(approachDistance, outcome, 'distance', system), known }];
  };
  const own = i.ownVoltage !== null && i.ownDistance !== null ? { voltage: i.ownVoltage, distance: i.ownDistance } : null;
  const voltages = [...new Set([...i.voltages, ...(own ? [own.voltage] : [])])].sort((a, b) => a - b);
  const rows = voltages.map((voltage) => row(voltage, own?.voltage === voltage ? own.distance : null));
  const untold = ask(approachDistance, { ruleSet: i.ruleSet, workingFrom: from, toldBy: 'nobody', voltage: null }, 'exact');
  if (untold.kind === 'answer') rows.push([{ say: 'untold' }, { text: figureOf(approachDistance, untold, 'distance', system), known: 'published' }]);
  return { figures: {}, rows, says: [from, ...(i.ruleSet === noRuleSet ? ['noSet'] : []), ...says, untold.kind === 'answer' ? 'untoldKept' : 'untoldStop'] };
};

/** Nothing lands nearer than the angle allows: the card says that more is more. */
const standingAt = (i: CardInputs, cutHeight: number): Outcome =>
  ask(stance, { cutHeight, gripHeight: i.gripHeight, poleShortest: Math.min(i.poleLongest, exampleOf(stance)['poleShortest'] as number), poleLongest: i.poleLongest, groundRise: 0, landingReach: 0 }, i.guess);

const poleBlock = (i: CardInputs, system: UnitSystem): BlockFigures => {
  const known = knownOf('standing', 'angle-limit');
  // What the pole reaches does not hang on the cut asked for.
  const highest = standingAt(i, i.gripHeight + 1) as Answer;
  return {
    figures: {
      angle: { text: showValue({ unit: 'deg' }, standing('angle-limit'), system, 'down'), known },
      back: { text: `1/${1 / standing('least-back')}`, known },
      pole: entered('m', i.poleLongest, system),
      highestCut: { text: figureOf(stance, highest, 'highestCut', system), known },
    },
    rows: [...i.cutHeights].sort((a, b) => a - b).map((height): Cell[] => {
      const outcome = standingAt(i, height);
      const head = entered('m', height, system);
      if (outcome.kind !== 'answer') return [head, { say: 'belowGrip' }];
      return [head, has(outcome, 'poleTooShort') ? { say: 'tooHigh' } : { text: figureOf(stance, outcome, 'nearestStandOff', system), known }];
    }),
    says: [],
  };
};

/** Judged by eye within ten degrees, these take in every way a limb may point. */
const ways = [-60, -40, -20, 0, 20, 40, 60, 80];
const keptOut = new Map<string, Quantity>();
/** The furthest of the keep-outs of the lowest and the highest cut, whatever way the limb points. One that points up hangs clear of the ground. */
export const furthestKeepOut = ({ piece, cutHeights }: Pick<CardInputs, 'piece' | 'cutHeights'>): Quantity => {
  const heights = [...new Set([Math.min(...cutHeights), Math.max(...cutHeights)])];
  const key = [piece, ...heights].join();
  const before = keptOut.get(key);
  if (before) return before;
  const furthest = heights.flatMap((cutHeight) => ways.flatMap((limbAngle) => {
    const outcome = ask(dropZone, { cutHeight, limbAngle, limbLength: piece, spread: Math.min(6, piece / 2) }, 'judged');
    return outcome.kind === 'answer' ? [outcome.outputs['keepOut'] as Quantity | null] : [];
  })).filter((keepOut) => keepOut !== null).reduce((most, next) => (next.high > most.high ? next : most));
  keptOut.set(key, furthest);
  return furthest;
};

const outBlock = (i: CardInputs, system: UnitSystem): BlockFigures => ({
  figures: {
    keepOut: { text: show(dropZone.outputs.keepOut, furthestKeepOut(i), system), known: knownOf('standing', 'bystander-distance') },
    piece: entered('m', i.piece, system),
    height: entered('m', Math.max(...i.cutHeights), system),
  },
  rows: [],
  says: [],
});

const barBlock = (i: CardInputs, system: UnitSystem): BlockFigures => {
  const at = (limbDiameter: number): Answer => ask(barLength, { limbDiameter, barLength: i.barLength }, i.guess) as Answer;
  return {
    figures: {
      bar: entered('mm', i.barLength, system),
      largestLimb: { text: figureOf(barLength, at(i.limbs[0] as number), 'largestLimb', system), known: knownOf('bar', 'margin') },
    },
    rows: [...i.limbs].sort((a, b) => a - b).map((limb): Cell[] => [entered('mm', limb, system), { text: figureOf(barLength, at(limb), 'weightPerMetre', system), known: 'derived' }]),
    says: [],
  };
};

const smallest = 5;
const lateralBlock = (i: CardInputs, system: UnitSystem): BlockFigures => {
  const known = knownOf('reduction', i.share === 'third' ? 'least-share' : 'half-share');
  return {
    figures: {},
    rows: [...i.parents].sort((a, b) => a - b).map((parent): Cell[] => {
      const outcome = ask(reduction, { parentDiameter: parent, lateralDiameter: smallest, rule: i.share }, i.guess) as Answer;
      return [entered('mm', parent, system), { text: figureOf(reduction, outcome, 'smallestLateral', system), known }];
    }),
    says: [],
  };
};

/** A limb free at its tip, and one hung up at both ends, cut in the middle. */
export const supports = {
  free: { support: 'free' },
  hungBoth: { support: 'hungBoth', limbAngle: 0, cutAt: 1.25 },
} as const;
export type SupportId = keyof typeof supports;
export const heldLimb = (id: SupportId): { inputs: Inputs; outcome: Outcome } => {
  const inputs = { ...exampleOf(cutOrder), ...supports[id] };
  return { inputs, outcome: evaluate(cutOrder, inputs, 'exact') };
};
const cutsBlock = (): BlockFigures => ({
  figures: {},
  rows: [],
  says: (Object.keys(supports) as SupportId[]).map((id) => `${id}-${((heldLimb(id).outcome as Answer).outputs['firstCutSide'] as Choice).value}`),
});

/** Minutes. */
const day = 24 * 60;
const handsBlock = (i: CardInputs, system: UnitSystem): BlockFigures => {
  const magnitude = i.magnitude as number;
  const k = i.uncertainty as number;
  const share = (100 * k) / magnitude;
  const nothing = { minutes1: 0, magnitude2: null, minutes2: null, magnitude3: null, minutes3: null };
  const outcome = ask(vibration, { ...nothing, magnitude1: magnitude, nextMagnitude: Math.max(magnitude, 0.5), uncertainty: share }, 'exact');
  const figures = { magnitude: entered('m/s2', magnitude, system), uncertainty: entered('m/s2', k, system) };
  if (outcome.kind !== 'answer') return { figures, rows: [], says: ['beyond'] };
  const [action, limit] = [knownOf('vibration', 'action'), knownOf('vibration', 'limit')];
  return {
    figures: {
      ...figures,
      toAction: { text: figureOf(vibration, outcome, 'minutesToAction', system), known: action },
      toLimit: { text: figureOf(vibration, outcome, 'minutesToLimit', system), known: limit },
    },
    rows: [],
    says: [(outcome.outputs['minutesToAction'] as Quantity).low > day ? 'neither' : has(outcome, 'dayEndsFirst') ? 'actionOnly' : 'minutes'],
  };
};

const mixBlock = (i: CardInputs, system: UnitSystem): BlockFigures => {
  const outcome = ask(fuelMix, { fuel: i.fuel, ratio: i.ratio, battery: null, charge: null, load: null }, 'exact') as Answer;
  return {
    figures: { fuel: entered('L', i.fuel, system), ratio: entered('to one', i.ratio as number, system), oil: { text: figureOf(fuelMix, outcome, 'oil', system), known: 'published' } },
    rows: [],
    says: [],
  };
};

const none: BlockFigures = { figures: {}, rows: [], says: [] };

/** What a block says, of choices without a problem. */
export const blockFigures = (id: BlockId, i: CardInputs, system: UnitSystem): BlockFigures => {
  switch (id) {
    case 'lines': return lineBlock(i, system);
    case 'pole': return poleBlock(i, system);
    case 'out': return outBlock(i, system);
    case 'bar': return barBlock(i, system);
    case 'lateral': return lateralBlock(i, system);
    case 'cuts': return cutsBlock();
    case 'hands': return handsBlock(i, system);
    case 'mix': return mixBlock(i, system);
    case 'touch': return { ...none, figures: { keep: { text: showValue({ unit: 'm', imperialStep: 1 }, lines('fallen-keep'), system, 'up'), known: knownOf('lines', 'fallen-keep') } } };
    default: return none;
  }
};
