/** Any plan: whole range of each field and beyond, texts of any signs, one limb or many. */
import fc from 'fast-check';
import type { ChoiceInput } from '#core/kit/calculator.ts';
import { type Plan, planVersion } from '#core/plan/facts.ts';
import { gates, limbBearings, limbChoices, limbFacts, longestText, mostLimbs, sharedBearings, sharedChoices, sharedFacts, siteTexts } from '#core/plan/names.ts';

const plain = { noNullPrototype: true } as const;
const each = <V>(names: readonly string[], value: (name: string) => fc.Arbitrary<V>) => fc.record(Object.fromEntries(names.map((name) => [name, value(name)])), plain);
const anyText = (longest = longestText): fc.Arbitrary<string> => fc.oneof(fc.string({ maxLength: Math.min(longest, 20) }), fc.string({ unit: 'grapheme', maxLength: Math.min(longest, 20) }), fc.constant('ä ~_'.repeat(longest / 4)))
  .map((text) => text.slice(0, longest).toWellFormed());
const number = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer({ min: -500, max: 5000 }).map((n) => n / 10)).map((n) => n + 0);
const fact = fc.record({ value: fc.oneof(number, fc.constant(null)), got: fc.constantFrom('judged', 'measured'), text: anyText(20) }, { ...plain, requiredKeys: ['value', 'got'] });
const option = (of: { readonly [name: string]: ChoiceInput }) => (name: string) => fc.oneof(fc.constantFrom(...(of[name] as ChoiceInput).options), anyText(12));
const bearing = () => fc.double({ min: 0, max: 360, noNaN: true }).map((n) => n + 0);
const limb = (longest: number) => fc.record({
  name: anyText(longest), facts: each(Object.keys(limbFacts), () => fact), choices: each(Object.keys(limbChoices), option(limbChoices)), bearings: each(limbBearings, bearing),
}, plain);

/** @param longest of its texts, in UTF-16 units */
export const anyPlan = (longest = longestText, limbs = mostLimbs): fc.Arbitrary<Plan> => fc.record({
  v: fc.constant(planVersion), demo: fc.boolean(), name: anyText(longest), site: each(siteTexts, () => anyText(longest)), gate: each(gates, () => fc.constantFrom('yes', 'no', null)),
  facts: each(Object.keys(sharedFacts), () => fact), choices: each(Object.keys(sharedChoices), option(sharedChoices)), bearings: each(sharedBearings, bearing),
  limbs: fc.array(limb(longest), { minLength: 1, maxLength: limbs }), ruleEdition: anyText(12),
}, { ...plain, requiredKeys: ['v', 'demo', 'name', 'site', 'gate', 'facts', 'choices', 'bearings', 'limbs'] }) as unknown as fc.Arbitrary<Plan>;
