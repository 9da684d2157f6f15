/** What the tests of drawings share: inputs over the whole box, numbers out of paths, a drawing as its SVG. */
import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { expect } from 'vitest';
import { calculator, evaluate, example } from '#core/registry.ts';
import type { AnyInput } from '#core/kit/calculator.ts';
import type { Inputs, Outcome } from '#core/kit/outcome.ts';
import type { Box, DrawingWords, Placed, Point } from '#drawings/kit/placed.ts';

export const phone: Box = { width: 358, height: 236 };
export const wide: Box = { width: 620, height: 360 };

type Words = { title: string; views: Record<string, string>; labels: Record<string, string> };
export const wordsOf = (id: string, view: string): DrawingWords => {
  const { title, views, labels } = JSON.parse(readFileSync(`content/drawings/${id}.json`, 'utf8')) as Words;
  return { title, description: views[view] ?? '', labels };
};

const inputsOf = (id: string) => Object.entries(calculator(id)!.inputs as Record<string, AnyInput>);

const within = ({ min, max }: { min: number; max: number }) => fc.integer({ min: 0, max: 1000 }).map((k) => min + ((max - min) * k) / 1000);

/** Any inputs within their ranges, in steps of a thousandth of the range. */
export const anyInputs = (id: string): fc.Arbitrary<Inputs> =>
  fc.record(
    Object.fromEntries(
      inputsOf(id).map(([name, input]) => [
        name,
        input.kind === 'choice'
          ? fc.constantFrom(...input.options)
          : input.kind === 'list'
            ? (input.optional ? fc.constant(null) : fc.array(within(input), { minLength: input.shortest, maxLength: input.longest }))
            : within(input),
      ]),
    ),
  ) as fc.Arbitrary<Inputs>;

export type Case = { title: string; inputs: Inputs; outcome: Outcome };
const caseOf = (id: string, title: string, change: Inputs): Case[] => {
  const inputs = { ...example(id), ...change };
  const outcome = evaluate(id, inputs, 'measured');
  return outcome.kind === 'problems' ? [] : [{ title, inputs, outcome }];
};
/** The example, and the example with each input at each end of its range; what is a problem there is not drawn. */
export const extremes = (id: string): Case[] => [
  ...caseOf(id, 'the example', {}),
  ...inputsOf(id).flatMap(([name, input]) =>
    (input.kind === 'choice' ? input.options : input.kind === 'list' ? [input.example] : [input.min, input.max]).flatMap((value) => caseOf(id, `${name} ${String(value)}`, { [name]: value })),
  ),
];

/** Every number of a path, in order. */
export const numbersOf = (d: string): number[] => (d.match(/-?\d*\.?\d+(?:e-?\d+)?/g) ?? []).map(Number);
/** The points of a path made of straight lines. */
export const pointsOf = (d: string): Point[] => {
  const numbers = numbersOf(d);
  return Array.from({ length: numbers.length / 2 }, (_, i): Point => [numbers[2 * i]!, numbers[2 * i + 1]!]);
};
export const pathsOf = (placed: Pick<Placed, 'shapes'>, mark: string): string[] => placed.shapes.filter((s) => s.mark === mark).map((s) => s.d);

/** All paths hold numbers and nothing else; all labels stand in the box and none on another. */
export const expectDrawn = (placed: Pick<Placed<unknown>, 'shapes' | 'labels' | 'badges' | 'handles' | 'box'>) => {
  expect(placed.shapes.length).toBeGreaterThan(3);
  for (const { mark, d } of placed.shapes) {
    expect(d, mark).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(d, mark).toMatch(/^M/);
  }
  for (const { x, y } of [...placed.badges, ...placed.handles, ...placed.labels]) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
};
export const overlaps = (placed: Pick<Placed<unknown>, 'labels' | 'box'>): string[] => {
  const text = (i: number) => placed.labels[i]!.lines.metric.join(' ');
  const found: string[] = [];
  placed.labels.forEach(({ rect: a }, i) => {
    if (a.x < 0 || a.y < 0 || a.x + a.width > placed.box.width || a.y + a.height > placed.box.height) found.push(`"${text(i)}" leaves the sheet`);
    placed.labels.slice(i + 1).forEach(({ rect: b }, j) => {
      const meet = a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
      if (meet) found.push(`"${text(i)}" on "${text(i + 1 + j)}"`);
    });
  });
  return found;
};

/** The SVG as the server writes it: no script, no style, no number that is none, each id once. */
export const expectSvg = (node: VNode, words: DrawingWords) => {
  const svg = render(node);
  expect(svg).not.toMatch(/NaN|Infinity|undefined|\bstyle=/);
  expect(svg).toContain(words.title);
  expect(svg).toContain(words.description.slice(0, 30));
  const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map((m) => m[1]);
  expect(new Set(ids).size).toBe(ids.length);
  for (const [, asked] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(asked);
  for (const [, asked] of svg.matchAll(/aria-(?:labelledby|describedby)="([^"]+)"/g)) expect(ids).toContain(asked);
  return svg;
};
