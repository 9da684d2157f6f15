/**
 * One plan, as plain JSON: what is kept on the device, written to a file and worked out. Values in the units of the
 * calculators' inputs that they feed (names.ts), bearings in degrees clock-wise from a mark of the reader's own, 0 to 360.
 */
import {
  type Gate, gates, type LimbBearing, limbBearings, limbChoices, type LimbChoice, type LimbFact, limbFacts, type SharedBearing, sharedBearings,
  type SharedChoice, sharedChoices, type SharedFact, sharedFacts, type SiteText, siteTexts,
} from './names.ts';

export const planVersion = 2;

/** One figure of the reader: null while there is none. `text`: what was typed, kept as long as it cannot be read. */
export type Fact = { readonly value: number | null; readonly got: 'judged' | 'measured'; readonly text?: string };
export type Answered = 'yes' | 'no' | null;

export type PlanLimb = {
  readonly name: string;
  readonly facts: { readonly [K in LimbFact]: Fact };
  readonly choices: { readonly [K in LimbChoice]: string };
  readonly bearings: { readonly [K in LimbBearing]: number };
};

export type Plan = {
  readonly v: typeof planVersion;
  /** An invented one, to look at. */
  readonly demo: boolean;
  readonly name: string;
  readonly site: { readonly [K in SiteText]: string };
  readonly gate: { readonly [K in Gate]: Answered };
  readonly facts: { readonly [K in SharedFact]: Fact };
  readonly choices: { readonly [K in SharedChoice]: string };
  readonly bearings: { readonly [K in SharedBearing]: number };
  /** In the order they are cut, at least one. */
  readonly limbs: readonly PlanLimb[];
  /** Of the rule set's figures that it was made by (edition.ts). */
  readonly ruleEdition?: string;
};

const each = <K extends string, V>(names: readonly K[], value: (name: K) => V): { readonly [N in K]: V } =>
  Object.fromEntries(names.map((name) => [name, value(name)])) as { [N in K]: V };
const keys = <T extends object>(of: T): (keyof T & string)[] => Object.keys(of) as (keyof T & string)[];

/** Figures that a new plan starts with: what the calculators take until the reader says otherwise. */
const usual: readonly SharedFact[] = ['gripHeight', 'platformHeight', 'boomReach', 'springUp', 'handHeight', 'barTip', 'stumble', 'margin', 'swing', 'offSquare', 'barMargin', 'undercut', 'strength', 'gripSpacing'];
const usualOfLimb: readonly LimbFact[] = ['cutToStem'];
const empty: Fact = { value: null, got: 'judged' };

/** Square beside the limb, the ways out back from there to both sides. */
export const newLimb = (name: string, points: number): PlanLimb => {
  const turned = (by: number): number => (points + by) % 360;
  return {
    name,
    facts: each(keys(limbFacts), (fact) => (usualOfLimb.includes(fact) ? { value: limbFacts[fact].example, got: 'judged' } : empty)),
    choices: each(keys(limbChoices), (choice) => limbChoices[choice].example),
    bearings: { points, worker: turned(90), wayOut: turned(45), wayOut2: turned(135) },
  };
};

/** A plan with nothing known yet but what is usual: nobody has told the voltage. */
export const newPlan = (name: string, limb: string): Plan => ({
  v: planVersion,
  demo: false,
  name,
  site: each(siteTexts, () => ''),
  gate: each(gates, () => null),
  facts: each(keys(sharedFacts), (fact) => (usual.includes(fact) ? { value: sharedFacts[fact].example, got: 'judged' } : empty)),
  choices: { ...each(keys(sharedChoices), (choice) => sharedChoices[choice].example), species: 'unknown', toldBy: 'nobody' },
  bearings: each(sharedBearings, (bearing) => (bearing === 'line' ? 0 : 180)),
  limbs: [newLimb(limb, 90)],
});

/** The same plan with every bearing turned: nothing that is worked out may change by it. */
export const turnedBy = (plan: Plan, by: number): Plan => {
  const turn = (bearing: number): number => (((bearing + by) % 360) + 360) % 360;
  return {
    ...plan,
    bearings: each(sharedBearings, (name) => turn(plan.bearings[name])),
    limbs: plan.limbs.map((limb) => ({ ...limb, bearings: each(limbBearings, (name) => turn(limb.bearings[name])) })),
  };
};
