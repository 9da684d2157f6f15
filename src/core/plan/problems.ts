/** What is wrong with a plan: one that comes from outside, in its shape; one that is open, at its fields. Ids only. */
import { lineClearance } from '../calculators/line-clearance.ts';
import { stance } from '../calculators/stance.ts';
import type { ChoiceInput, InputProblem, QuantityInput, Values } from '../kit/calculator.ts';
import { type Fact, type Plan, type PlanLimb, planVersion } from './facts.ts';
import { gates, limbBearings, limbChoices, limbFacts, longestText, mostLimbs, sharedBearings, sharedChoices, sharedFacts, siteTexts } from './names.ts';

/** `at`: the way to it, as `limbs.0.facts.cutHeight`. */
export type PlanProblem = { readonly at: string; readonly problem: string; readonly values: Values };

type Found = { readonly [key: string]: unknown };
const isObject = (value: unknown): value is Found => typeof value === 'object' && value !== null && !Array.isArray(value);
const wrong = (at: string, problem: string, values: Values = {}): PlanProblem => ({ at, problem, values });

const isFact = (value: unknown): boolean =>
  isObject(value) && (value['value'] === null || Number.isFinite(value['value'])) && (value['got'] === 'judged' || value['got'] === 'measured') &&
  (value['text'] === undefined || (typeof value['text'] === 'string' && value['text'].length <= longestText));
const isText = (value: unknown): boolean => typeof value === 'string' && value.length <= longestText;
const isBearing = (value: unknown): boolean => typeof value === 'number' && value >= 0 && value <= 360;
const isAnswer = (value: unknown): boolean => value === 'yes' || value === 'no' || value === null;

/** Each of these names under `key` passes; where the whole is missing, that alone is said. */
const all = (of: Found, path: string, key: string, names: readonly string[], passes: (value: unknown) => boolean, problem: string): PlanProblem[] => {
  const found = of[key];
  if (!isObject(found)) return [wrong(`${path}${key}`, 'missing')];
  return names.filter((name) => !Object.hasOwn(found, name) || !passes(found[name])).map((name) => wrong(`${path}${key}.${name}`, Object.hasOwn(found, name) ? problem : 'missing'));
};

const limbShape = (limb: unknown, path: string): PlanProblem[] => {
  if (!isObject(limb)) return [wrong(path, 'notLimb')];
  const below = `${path}.`;
  return [
    ...(isText(limb['name']) ? [] : [wrong(`${below}name`, 'notText')]),
    ...all(limb, below, 'facts', Object.keys(limbFacts), isFact, 'notFact'),
    ...all(limb, below, 'choices', Object.keys(limbChoices), isText, 'notText'),
    ...all(limb, below, 'bearings', limbBearings, isBearing, 'notBearing'),
  ];
};

/**
 * What keeps something from being a plan at all; none: it is a `Plan` as it stands. A figure out of its range or a choice
 * that is not known is no fault of shape: it opens, and is said at its field.
 */
export const shapeProblems = (data: unknown): PlanProblem[] => {
  if (!isObject(data)) return [wrong('', 'notPlan')];
  if (data['v'] !== planVersion) return [wrong('v', typeof data['v'] === 'number' && data['v'] > planVersion ? 'newerPlan' : 'notPlan')];
  const limbs = data['limbs'];
  return [
    ...(typeof data['demo'] === 'boolean' ? [] : [wrong('demo', 'notPlan')]),
    ...(isText(data['name']) ? [] : [wrong('name', 'notText')]),
    ...all(data, '', 'site', siteTexts, isText, 'notText'),
    ...all(data, '', 'gate', gates, isAnswer, 'notAnswer'),
    ...all(data, '', 'facts', Object.keys(sharedFacts), isFact, 'notFact'),
    ...all(data, '', 'choices', Object.keys(sharedChoices), isText, 'notText'),
    ...all(data, '', 'bearings', sharedBearings, isBearing, 'notBearing'),
    ...(data['ruleEdition'] === undefined || isText(data['ruleEdition']) ? [] : [wrong('ruleEdition', 'notText')]),
    ...(!Array.isArray(limbs) || limbs.length === 0 ? [wrong('limbs', 'missing')]
      : limbs.length > mostLimbs ? [wrong('limbs', 'tooManyLimbs', { most: mostLimbs })]
      : limbs.flatMap((limb, i) => limbShape(limb, `limbs.${i}`))),
  ];
};

const pick = <K extends string, V>(names: readonly K[], from: { readonly [N in K]: V }): { readonly [N in K]: V } =>
  Object.fromEntries(names.map((name) => [name, from[name]])) as { [N in K]: V };
const factsOf = <K extends string>(names: readonly K[], from: { readonly [N in K]: Fact }) => Object.fromEntries(names.map((name) => {
  const { value, got, text } = from[name];
  return [name, text === undefined ? { value, got } : { value, got, text }];
})) as { readonly [N in K]: Fact };
const names = <T extends object>(of: T) => Object.keys(of) as (keyof T & string)[];

/** A plan out of anything, with nothing in it but what a plan holds; or what is wrong. */
export const readPlan = (data: unknown): { kind: 'plan'; plan: Plan } | { kind: 'problems'; problems: PlanProblem[] } => {
  const problems = shapeProblems(data);
  if (problems.length > 0) return { kind: 'problems', problems };
  const found = data as Plan;
  const limb = (of: PlanLimb): PlanLimb => ({
    name: of.name, facts: factsOf(names(limbFacts), of.facts), choices: pick(names(limbChoices), of.choices), bearings: pick(limbBearings, of.bearings),
  });
  return {
    kind: 'plan',
    plan: {
      v: planVersion, demo: found.demo, name: found.name, site: pick(siteTexts, found.site), gate: pick(gates, found.gate),
      facts: factsOf(names(sharedFacts), found.facts), choices: pick(names(sharedChoices), found.choices), bearings: pick(sharedBearings, found.bearings), limbs: found.limbs.map(limb),
      ...(found.ruleEdition === undefined ? {} : { ruleEdition: found.ruleEdition }),
    },
  };
};

const factProblem = (at: string, input: QuantityInput, { value, text }: Fact, needed: boolean): PlanProblem[] => {
  if (text !== undefined) return [wrong(at, 'notNumber')];
  if (value === null) return needed ? [wrong(at, 'missing')] : [];
  if (value < input.min) return [wrong(at, 'tooSmall', { min: input.min, max: input.max })];
  return value > input.max ? [wrong(at, 'tooLarge', { min: input.min, max: input.max })] : [];
};
const choiceProblem = (at: string, input: ChoiceInput, chosen: string): PlanProblem[] => (input.options.includes(chosen) ? [] : [wrong(at, 'notChoice')]);

/** Whether something is entered for what saw and pole weigh: then what goes with it is asked for. */
export const isWeighed = ({ facts: { mass } }: Plan): boolean => mass.value !== null || mass.text !== undefined;
/** Facts that nothing needs as the plan stands: those of a line where there is none, of a platform where one stands on the ground, of what the hands carry where nothing is weighed. */
const unneeded = (plan: Plan): readonly string[] => [
  ...(plan.choices.wires === 'no' ? ['lineHeight', 'lineOffset', 'movement', 'springUp', 'handHeight', 'barTip', 'stumble'] : []),
  ...(plan.choices.wires === 'no' || plan.choices.toldBy !== 'operator' ? ['voltage'] : []),
  ...(plan.choices.workingFrom === 'ground' ? ['platformHeight', 'boomReach'] : []),
  'ownDistance', 'mass',
  ...(isWeighed(plan) ? [] : ['balance', 'gripSpacing']),
];

/** What is wrong with each by itself. */
const singleProblems = (plan: Plan, spare: readonly string[]): PlanProblem[] => [
  ...names(sharedChoices).flatMap((name) => choiceProblem(`choices.${name}`, sharedChoices[name], plan.choices[name])),
  ...names(sharedFacts).flatMap((name) => factProblem(`facts.${name}`, sharedFacts[name], plan.facts[name], !spare.includes(name))),
  ...plan.limbs.flatMap((limb, i) => [
    ...names(limbFacts).flatMap((name) => factProblem(`limbs.${i}.facts.${name}`, limbFacts[name], limb.facts[name], true)),
    ...names(limbChoices).flatMap((name) => choiceProblem(`limbs.${i}.choices.${name}`, limbChoices[name], limb.choices[name])),
  ]),
];

/** Facts against one another, as the calculators know it of those that a plan holds; asked once each is a figure of its own. */
const against = ({ facts: { poleShortest, poleLongest, platformHeight }, choices: { workingFrom } }: Plan): InputProblem[] => [
  ...(poleShortest.value === null || poleLongest.value === null ? [] : stance.relate({ poleShortest: poleShortest.value, poleLongest: poleLongest.value } as Parameters<typeof stance.relate>[0])),
  ...lineClearance.relate({ workingFrom, platformHeight: platformHeight.value } as Parameters<typeof lineClearance.relate>[0]),
];

/** What keeps an open plan from being worked out, field by field; each calculator says the rest. */
export const problemsOf = (plan: Plan): PlanProblem[] => {
  const single = singleProblems(plan, unneeded(plan));
  const said = single.map(({ at }) => at);
  return [...single, ...against(plan).map(({ input, problem, values }) => wrong(`facts.${input}`, problem, values)).filter(({ at }) => !said.includes(at))];
};
