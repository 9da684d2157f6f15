/** Distances by rule set for pages, worked out at build by the calculator itself. */
import { approachDistance, noRuleSet } from '#core/calculators/approach-distance.ts';
import { ruleSets, type Band, type RuleSet, type RuleStatus } from '#core/facts/rule-sets.ts';
import { writeLink } from '#core/kit/link.ts';
import { evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { showValue } from '#core/kit/show.ts';

export type From = 'ground' | 'platform';
/** Voltages (kV) of the columns: the usual steps of low voltage, distribution and transmission. */
export const columns = [0.4, 11, 22, 33, 66, 110, 132, 220, 275, 330, 400, 500] as const;

type Text = { metric: string; imperial: string };
/** `own`: the rule's figure, where it is not the one to plan on. Null: outside. */
export type Cell = { planOn: Text; own: Text | null } | null;
export type Row = { id: string; title: string; place: string; set: RuleSet | null; cells: readonly Cell[]; unknown: Cell; link: string };

const metres = { unit: 'm', step: 0.01, imperialStep: 1 } as const;
const noZeros = (shown: string): string => shown.replace(/\.?0+(?=\u00a0)/, '');
export const distanceText = (value: number): Text => ({ metric: noZeros(showValue(metres, value, 'metric', 'up')), imperial: showValue(metres, value, 'imperial', 'up') });
/** As printed: in the source's own unit where that is not metres. */
export const printed = ({ distance, as }: Pick<Band, 'distance' | 'as'>): Text =>
  as ? { metric: distanceText(distance).metric, imperial: `${as.value}\u00a0${as.unit}` } : distanceText(distance);

export const voltText = (kV: number): string => (kV < 1 ? `${Math.round(kV * 1000)}\u00a0V` : `${kV}\u00a0kV`);

const inputsFor = (ruleSet: string, workingFrom: From, voltage: number | null): Inputs =>
  ({ ruleSet, workingFrom, lineKind: 'threePhase', toldBy: voltage === null ? 'nobody' : 'operator', voltage, ownDistance: null });

const cell = (inputs: Inputs): Cell => {
  const found = evaluate(approachDistance, inputs, 'exact');
  if (found.kind !== 'answer') return null;
  const [distance, own] = [found.outputs['distance'] as Quantity, found.outputs['setDistance'] as Quantity | null];
  return { planOn: distanceText(distance.value), own: own && own.value < distance.value ? distanceText(own.value) : null };
};

const row = (id: string, title: string, place: string, set: RuleSet | null, from: From): Row => ({
  id,
  title,
  place,
  set,
  cells: columns.map((voltage) => cell(inputsFor(id, from, voltage))),
  unknown: cell(inputsFor(id, from, null)),
  link: writeLink(approachDistance, inputsFor(id, from, approachDistance.inputs.voltage.example), 'exact'),
});

/** Every rule set by place, and last what holds with none chosen. */
export const rows = (from: From, none: string): Row[] => [
  ...ruleSets.map((set) => row(set.id, set.title, set.place, set, from)).sort((a, b) => a.title.localeCompare(b.title, 'en')),
  row(noRuleSet, none, '', null, from),
];

/** The least sure of the figures of a set. */
export const statusOf = (set: RuleSet): RuleStatus => {
  const all = [...set.persons.bands, ...(set.plant?.bands ?? [])].map(({ status }) => status);
  return all.includes('memory') ? 'memory' : all.includes('second-hand') ? 'second-hand' : 'published';
};
