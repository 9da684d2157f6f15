/** A calculator small enough to work by hand, bent to what a test asks of it. */
import {
  answer, defineCalculator, type Computed, type FindingDefinition, type GotSet, type Move, type Outside, outside, type Protects, type Ranges, type RawFinding,
} from '#core/kit/calculator.ts';
import { guess, quantity } from '#core/kit/inputs.ts';
import { type Answer, evaluate, type Outcome, type Quantity } from '#core/kit/outcome.ts';

/** x is 10 ± 2 by eye, ± 1 measured; y is 5 ± 1 by eye. Every expectation below is worked by hand from that. */
export type Toy = {
  value?: (x: number, y: number) => number | Outside | null;
  moves?: { x?: Move; y?: Move };
  turns?: { x?: (inputs: never) => number };
  protects?: Protects;
  outsideWhen?: (x: number, y: number) => boolean;
  finding?: FindingDefinition;
  raise?: (x: number, y: number) => RawFinding | false;
  upTo?: (x: number, y: number) => number;
  ranges?: (ends: { readonly x?: readonly [number, number] }) => Ranges;
};
export const toy = ({ value = (x) => x, moves = { x: 'up' }, turns, protects = 'up', outsideWhen = () => false, finding, raise = () => false, upTo, ranges }: Toy) =>
  defineCalculator({
    id: 'toy',
    inputs: {
      x: quantity('m', { min: 0, max: 100, step: 1, example: 10, tolerance: guess({ least: 2 }, { least: 1 }) }),
      y: quantity('m', { min: 0, max: 100, step: 1, example: 5, tolerance: guess({ least: 1 }, { least: 0 }) }),
    },
    outputs: { out: { kind: 'quantity', unit: 'm', protects, moves, ...(turns ? { turns } : {}) } },
    lead: ['out'],
    findings: finding ? { bad: finding } : {},
    limits: ['edge'],
    ...(upTo ? { upTo: { edge: { x: (i: { x: number; y: number }) => upTo(i.x, i.y) } } } : {}),
    ...(ranges ? { ranges: (_: unknown, ends: { readonly x?: readonly [number, number] }) => ranges(ends) } : {}),
    compute: ({ x, y }): Computed<'out'> =>
      outsideWhen(x, y)
        ? outside('edge', { x })
        : answer({ out: value(x, y) }, [raise(x, y)], [{ id: 'step', values: { x, y }, result: { name: 'out', value: Number(value(x, y)) || 0 } }]),
  });
export const at = { x: 10, y: 5 };
export const run = (of: Toy, got: GotSet = 'judged'): Outcome => evaluate(toy(of), at, got);
export const answered = (outcome: Outcome): Answer => {
  if (outcome.kind !== 'answer') throw new Error(`${outcome.kind}: ${JSON.stringify(outcome)}`);
  return outcome;
};
export const out = (of: Toy, got: GotSet = 'judged') => answered(run(of, got)).outputs['out'] as Quantity | null;
export const findings = (of: Toy) => answered(run(of)).findings;
