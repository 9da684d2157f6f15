/**
 * The JSON Schema (draft 2020-12) of the file that plans are written to, made from the names that a plan is made of: what
 * it takes is what `readPlansFile` takes. Units, ranges and options stand as descriptions: a figure out of its range opens
 * too, and is said at its field.
 */
import { units } from '#core/kit/units.ts';
import type { ChoiceInput, QuantityInput } from '#core/kit/calculator.ts';
import { planVersion } from '#core/plan/facts.ts';
import { fileFormat, fileVersion, mostPlans } from '#core/plan/file.ts';
import { gates, limbBearings, limbChoices, limbFacts, longestText, mostLimbs, sharedBearings, sharedChoices, sharedFacts, siteTexts } from '#core/plan/names.ts';

type Schema = { readonly [key: string]: unknown };

const object = (properties: { readonly [name: string]: Schema }, described: Schema = {}): Schema => ({ type: 'object', ...described, properties, required: Object.keys(properties) });
/** One that may hold these too. */
const also = (properties: { readonly [name: string]: Schema }, schema: Schema): Schema => ({ ...schema, properties: { ...(schema['properties'] as object), ...properties } });
const each = (names: readonly string[], schema: (name: string) => Schema): Schema => object(Object.fromEntries(names.map((name) => [name, schema(name)])));
const to = (name: string): Schema => ({ $ref: `#/$defs/${name}` });

const facts = (inputs: { readonly [name: string]: QuantityInput }): Schema =>
  each(Object.keys(inputs), (name) => {
    const { unit, min, max } = inputs[name] as QuantityInput;
    return { ...to('fact'), description: `${units[unit].metric.symbol}, ${min} to ${max}` };
  });
const choices = (inputs: { readonly [name: string]: ChoiceInput }): Schema => each(Object.keys(inputs), (name) => ({ ...to('text'), examples: inputs[name]?.options }));
const texts = (names: readonly string[]): Schema => each(names, () => to('text'));
const bearings = (names: readonly string[]): Schema => each(names, () => to('bearing'));

export const planSchema: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'plan.schema.json',
  title: 'Plans of Standing Clear',
  description: 'What a plan does not hold is passed over. A plan that is not as described here is left out, and its reader told why.',
  ...object({
    format: { const: fileFormat },
    version: { const: fileVersion },
    plans: { type: 'array', minItems: 1, maxItems: mostPlans, items: to('plan') },
  }),
  $defs: {
    plan: also({ ruleEdition: { ...to('text'), description: 'of the figures of the rule set that it was made by; where it has none, a change since cannot be told' } }, object({
      v: { const: planVersion },
      demo: { type: 'boolean', description: 'an invented one' },
      name: to('text'),
      site: texts(siteTexts),
      gate: each(gates, () => ({ enum: ['yes', 'no', null] })),
      facts: facts(sharedFacts),
      choices: choices(sharedChoices),
      bearings: bearings(sharedBearings),
      limbs: { type: 'array', description: 'in the order they are cut', minItems: 1, maxItems: mostLimbs, items: to('limb') },
    })),
    limb: object({ name: to('text'), facts: facts(limbFacts), choices: choices(limbChoices), bearings: bearings(limbBearings) }),
    fact: {
      type: 'object',
      properties: {
        value: { type: ['number', 'null'], description: 'null while there is none' },
        got: { enum: ['judged', 'measured'] },
        text: { ...to('text'), description: 'what was typed, as long as it cannot be read' },
      },
      required: ['value', 'got'],
    },
    text: { type: 'string', maxLength: longestText },
    bearing: { type: 'number', minimum: 0, maximum: 360, description: 'degrees clock-wise from a mark of the reader’s own' },
  },
};
