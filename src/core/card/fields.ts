/** What the reader chooses for a pocket card: its shape, its blocks, and the figures that those blocks are worked from. */
import { noRuleSet } from '../calculators/approach-distance.ts';
import { ruleSets } from '../facts/rule-sets.ts';
import { answer, defineCalculator, type InputProblem, type InputsOf } from '../kit/calculator.ts';
import { choice, list, optionalQuantity, quantity } from '../kit/inputs.ts';
import type { UnitSystem } from '../kit/units.ts';

/** In the order they are offered. */
export const blockIds = ['lines', 'pole', 'plan', 'out', 'bar', 'lateral', 'cuts', 'last', 'touch', 'stop', 'hands', 'mix'] as const;
export type BlockId = (typeof blockIds)[number];
/** `hands` and `mix` need figures off the reader's own saw, so nobody starts with them. */
export const usualBlocks: readonly BlockId[] = blockIds.filter((id) => id !== 'hands' && id !== 'mix');

const inputs = {
  size: choice(['a6', 'a7', 'id1', 'index'], 'a6'),
  sides: choice(['one', 'two', 'fold'], 'two'),
  type: choice(['plain', 'small'], 'plain'),
  hole: choice(['without', 'punched'], 'without'),
  paper: choice(['a4', 'letter', 'card'], 'a4'),
  check: choice(['quarter', 'half', 'year'], 'year'),
  guess: choice(['judged', 'measured'], 'judged'),
  ruleSet: choice([noRuleSet, ...ruleSets.map(({ id }) => id)], noRuleSet),
  workingFrom: choice(['ground', 'platform'], 'ground'),
  voltages: list('kV', { min: 0.05, max: 1200, shortest: 1, longest: 6, example: [0.4, 11, 33, 132] }),
  ownDistance: optionalQuantity('m', { min: 0.1, max: 100, step: 0.01, example: null }),
  ownVoltage: optionalQuantity('kV', { min: 0.05, max: 1200, step: 0.01, example: null }),
  poleLongest: quantity('m', { min: 1.2, max: 6, step: 0.1, example: 3.4 }),
  gripHeight: quantity('m', { min: 0.7, max: 1.6, step: 0.05, example: 1.1 }),
  cutHeights: list('m', { min: 1.2, max: 15, shortest: 1, longest: 6, example: [2.5, 3, 3.5] }),
  piece: quantity('m', { min: 0.3, max: 8, step: 0.1, example: 2 }),
  barLength: quantity('mm', { min: 150, max: 400, step: 10, example: 250 }),
  limbs: list('mm', { min: 10, max: 400, shortest: 1, longest: 6, example: [50, 100, 150] }),
  parents: list('mm', { min: 15, max: 300, shortest: 1, longest: 6, example: [40, 60, 80] }),
  share: choice(['third', 'half'], 'third'),
  magnitude: optionalQuantity('m/s2', { min: 0.1, max: 30, step: 0.1, example: null }),
  uncertainty: optionalQuantity('m/s2', { min: 0, max: 30, step: 0.1, example: null }),
  fuel: quantity('L', { min: 0.1, max: 50, step: 0.1, example: 5 }),
  ratio: optionalQuantity('to one', { min: 20, max: 100, step: 1, example: null }),
};

/** Defined as a calculator is, so that fields, units and problems are those of every other page; it has no outputs. */
export const cardFields = defineCalculator({ id: 'card', inputs, outputs: {}, lead: [], compute: () => answer({}) });
export type CardInputs = InputsOf<typeof inputs>;
export type InputName = keyof typeof inputs;

const foot = 0.3048;
const inch = 25.4;
/** Figures to begin with: round ones in the units shown. */
export const exampleIn = (units: UnitSystem): CardInputs => ({
  ...(Object.fromEntries(Object.entries(inputs).map(([name, { example }]) => [name, example])) as CardInputs),
  ...(units === 'metric' ? {} : {
    paper: 'letter', poleLongest: 11 * foot, gripHeight: 3.5 * foot, cutHeights: [8, 9, 10].map((n) => n * foot), piece: 6 * foot, barLength: 10 * inch,
    limbs: [2, 4, 6].map((n) => n * inch), parents: [1.5, 2, 3].map((n) => n * inch), fuel: 3.785411784, voltages: [0.24, 12.47, 34.5, 138],
  }),
});

/** What the card is made like, whatever stands on it. */
export const shapeInputs = ['size', 'sides', 'type', 'hole', 'paper', 'check'] as const satisfies readonly InputName[];

const uses: { readonly [B in BlockId]: readonly InputName[] } = {
  lines: ['workingFrom', 'voltages', 'ownDistance', 'ownVoltage'],
  pole: ['poleLongest', 'gripHeight', 'cutHeights', 'guess'],
  plan: [],
  out: ['piece', 'cutHeights'],
  bar: ['barLength', 'limbs', 'guess'],
  lateral: ['parents', 'share', 'guess'],
  cuts: [],
  last: [],
  touch: [],
  stop: [],
  hands: ['magnitude', 'uncertainty'],
  mix: ['fuel', 'ratio'],
};

/** The inputs that these blocks are worked from, in the order of definition. The rule set stands on every card. */
export const inputsFor = (blocks: readonly BlockId[]): InputName[] => {
  const used = new Set<string>([...shapeInputs, 'ruleSet', ...blocks.flatMap((id) => uses[id])]);
  return (Object.keys(inputs) as InputName[]).filter((name) => used.has(name));
};

/** What telephone numbers a card may carry: whom to call, and the operator of the line. */
export const callNames = ['emergency', 'operator'] as const;
export type Calls = { readonly [C in (typeof callNames)[number]]: string };
export const noCalls: Calls = { emergency: '', operator: '' };
const longestCall = 24;
/** Digits, with the marks that people write between them; nothing is a number too: it is left as a line to write on. */
export const isCall = (text: string): boolean => text === '' || (text.length <= longestCall && /^\+?[\d ()/.-]*\d[\d ()/.-]*$/.test(text));

/** All of a card's choices. */
export type CardChoices = { blocks: readonly BlockId[]; inputs: CardInputs; calls: Calls };

/** What the blocks chosen cannot do without, or what two choices make of each other. */
export const relateCard = (blocks: readonly BlockId[], i: Partial<CardInputs>): InputProblem[] => {
  const problems: InputProblem[] = [];
  const need = (block: BlockId, ...names: InputName[]): void => {
    if (!blocks.includes(block)) return;
    for (const input of names) if (i[input] === null) problems.push({ input, problem: 'missing', values: {} });
  };
  need('hands', 'magnitude', 'uncertainty');
  need('mix', 'ratio');
  if (blocks.includes('lines') && (i.ownDistance === null) !== (i.ownVoltage === null)) {
    problems.push({ input: i.ownDistance === null ? 'ownDistance' : 'ownVoltage', problem: 'ownPair', values: {} });
  }
  if (blocks.includes('hands') && typeof i.magnitude === 'number' && typeof i.uncertainty === 'number' && i.uncertainty > i.magnitude) {
    problems.push({ input: 'uncertainty', problem: 'tooUncertain', values: {} });
  }
  return problems;
};
