/** "33 kV" answered with the distance: by the reader's own rule set, else the strictest of all. */
import { approachDistance, noRuleSet } from '#core/calculators/approach-distance.ts';
import { ruleSet } from '#core/facts/rule-sets.ts';
import { writeLink } from '#core/kit/link.ts';
import { evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { show } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import type { Kept, Quick } from './quick.ts';

/** The voltage in a question, in kV: "33 kV", "11kv line", "230/400 V" (the larger). Null where there is none. */
export const voltageAsked = (query: string): number | null => {
  const text = query.normalize('NFKC').toLowerCase();
  const found = /(?:(\d+(?:[.,]\d+)?)\s*\/\s*)?(\d+(?:[.,]\d+)?)\s*-?\s*(kv|kilovolts?|v|volts?)\b/.exec(text);
  if (!found) return null;
  const [, first, second = '', unit = ''] = found;
  const figures = [first, second].flatMap((figure) => (figure === undefined ? [] : [Number(figure.replace(',', '.'))]));
  const kV = Math.max(...figures) / (unit.startsWith('k') ? 1 : 1000);
  return Number.isFinite(kV) && kV > 0 ? kV : null;
};

const shown = (kV: number): string => (kV < 1 ? `${Number((kV * 1000).toFixed(3))}\u00a0V` : `${Number(kV.toFixed(6))}\u00a0kV`);

/** A question about a line of which the voltage is not known. */
const unknownAsked = /\b(?:unknown|don.?t know|not know|no idea|what)\b.*\b(?:voltage|volts|kv)\b|\bvoltage\b.*\b(?:unknown|not known)\b/i;

/** By the rule kept, else no figure at all: a guess is no voltage. */
export const unknownVoltage = (query: string, system: UnitSystem, kept: Kept): Quick | null => {
  if (!unknownAsked.test(query.normalize('NFKC').replace(/[’]/g, "'"))) return null;
  const set = kept.ruleSet === null ? undefined : ruleSet(kept.ruleSet);
  const inputs: Inputs = {
    ruleSet: set?.id ?? noRuleSet, workingFrom: 'ground', lineKind: 'threePhase', toldBy: 'nobody', voltage: null, ownDistance: kept.ownDistance,
  };
  const found = evaluate(approachDistance, inputs, 'exact');
  const asked = { calculator: approachDistance.id, query: writeLink(approachDistance, inputs, 'exact') };
  if (found.kind !== 'answer') return { ...asked, id: 'lineUnknown', values: {} };
  const distance = show(approachDistance.outputs.distance, found.outputs['distance'] as Quantity, system);
  return { ...asked, id: 'lineUnknownKept', values: { distance, rule: set?.title ?? '' } };
};

export const lineDistance = (query: string, system: UnitSystem, kept: Kept): Quick | null => {
  const asked = voltageAsked(query);
  if (asked === null) return null;
  const set = kept.ruleSet === null ? undefined : ruleSet(kept.ruleSet);
  const inputs: Inputs = {
    ruleSet: set?.id ?? noRuleSet, workingFrom: 'ground', lineKind: 'threePhase', toldBy: 'operator', voltage: asked, ownDistance: kept.ownDistance,
  };
  const found = evaluate(approachDistance, inputs, 'exact');
  const voltage = shown(asked);
  const calculator = approachDistance.id;
  if (found.kind !== 'answer') return { id: 'lineOutside', calculator, query: '', values: { voltage, rule: set?.title ?? '' } };
  const entered = kept.ownDistance !== null && found.findings.some(({ id }) => id === 'ownFigure');
  const unseen = found.findings.some(({ id }) => id === 'unseen');
  return {
    id: set === undefined ? 'lineNoRule' : entered ? 'lineEntered' : unseen ? 'lineUnseen' : 'line',
    calculator,
    query: writeLink(approachDistance, inputs, 'exact'),
    values: {
      voltage,
      distance: show(approachDistance.outputs.distance, found.outputs['distance'] as Quantity, system),
      rule: set?.title ?? '',
    },
  };
};
