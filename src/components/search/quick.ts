/** Questions that search answers itself, with the calculators' own figures. */
import { barLength } from '#core/calculators/bar-length.ts';
import { writeLink } from '#core/kit/link.ts';
import { evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { readQuantity } from '#core/kit/read.ts';
import { show, showValue } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { lineDistance, unknownVoltage } from './quick-line.ts';

/** `id` names the words in content/interface.json, `values` fills them; `query` opens the calculator so. */
export type Quick = { id: string; calculator: string; query: string; values: { [name: string]: string } };

const other = (system: UnitSystem): UnitSystem => (system === 'metric' ? 'imperial' : 'metric');

/** A bar's length as shown, and in the other system too, since bars are sold by both: whole mm, whole inches. */
const both = (value: number, system: UnitSystem): string => {
  const whole = { unit: 'mm', imperialStep: 1 } as const;
  return `${showValue(whole, value, system)} (${showValue(whole, value, other(system))})`;
};

/** The length of a bar in a question, in mm: "12 inch bar", `bar 10"`, "250 mm bar". A bare number under 50 is inches. */
export const barAsked = (query: string): number | null => {
  const text = query.normalize('NFKC').toLowerCase();
  if (!/\b(guide[ -]?)?bars?\b/.test(text)) return null;
  const found = /(\d+(?:[.,]\d+)?)\s*-?\s*(mm|cm|m\b|inch(?:es)?|in\b|"|”|″|''|ft|feet|foot|')?/.exec(text);
  if (!found) return null;
  const [, number = '', unit] = found;
  const read = readQuantity(`${number} ${unit ?? (Number(number.replace(',', '.')) < 50 ? 'in' : 'mm')}`, 'mm', 'metric');
  return read.kind === 'value' ? read.value : null;
};

const largestLimb = (query: string, system: UnitSystem): Quick | null => {
  const asked = barAsked(query);
  if (asked === null) return null;
  const { inputs, outputs, id } = barLength;
  const bar = Number(asked.toFixed(1));
  const given: Inputs = {
    limbDiameter: inputs.limbDiameter.example,
    barLength: bar,
    offSquare: inputs.offSquare.example,
    margin: inputs.margin.example,
  };
  const outcome = evaluate(barLength, given, barLength.exampleGot);
  if (outcome.kind !== 'answer') {
    const from = showValue({ unit: 'mm' }, inputs.barLength.min, system);
    return { id: 'barOutside', calculator: id, query: '', values: { bar: both(bar, system), from, to: showValue({ unit: 'mm' }, inputs.barLength.max, system) } };
  }
  const limb = outcome.outputs['largestLimb'] as Quantity;
  const thickest = { ...given, limbDiameter: limb.planOn };
  const heavy = evaluate(barLength, thickest, { limbDiameter: 'exact', offSquare: 'judged' });
  if (heavy.kind !== 'answer') return null;
  return {
    id: 'bar',
    calculator: id,
    query: writeLink(barLength, given, barLength.exampleGot),
    values: {
      bar: both(bar, system),
      limb: show(outputs.largestLimb, limb, system),
      weight: show(outputs.weightPerMetre, heavy.outputs['weightPerMetre'] as Quantity, system),
      offSquare: showValue(inputs.offSquare, inputs.offSquare.example, system),
      margin: showValue(inputs.margin, inputs.margin.example, system),
    },
  };
};

/** What the reader keeps on the device: a rule set, and a distance the operator gave. */
export type Kept = { ruleSet: string | null; ownDistance: number | null };
const nothing: Kept = { ruleSet: null, ownDistance: null };

const answers = [largestLimb, lineDistance, unknownVoltage];

/** The first question recognised in what was typed, answered; null where there is none. */
export const quickAnswer = (query: string, system: UnitSystem, kept: Kept = nothing): Quick | null => {
  for (const answer of answers) {
    const found = answer(query, system, kept);
    if (found) return found;
  }
  return null;
};
