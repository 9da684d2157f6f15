/** The figures of a piece as they are shown: each by the output of the calculator it is from, rounded by `show` alone. */
import type { AnyCalculator, AnyOutput } from '#core/kit/calculator.ts';
import type { Choice, Quantity } from '#core/kit/outcome.ts';
import { show, showValue } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { parts, type Run } from '#core/plan/feed.ts';
import type { LimbWork, PieceWork, PlanWork } from '#core/plan/work.ts';
import { type PlanProps, type PlanWords, speakerOf } from './words.ts';

export type Shown = { readonly metric: string; readonly imperial: string };
export type Row = { readonly label: string; readonly text: Shown };

const both = (text: (system: UnitSystem) => string): Shown => ({ metric: text('metric'), imperial: text('imperial') });

/** An output as it is shown large; null where there is no answer. `called`: shorter names of a choice's options. */
export const output = (props: PlanProps, run: Run, name: string, called?: { readonly [option: string]: string }): Shown | null => {
  if (run.outcome.kind !== 'answer') return null;
  const definition = (parts[run.part] as AnyCalculator).outputs[name] as AnyOutput;
  const figure = run.outcome.outputs[name] ?? null;
  if (definition.kind === 'quantity') return both((system) => show(definition, figure as Quantity | null, system));
  const words = called ?? speakerOf(props, run.part).words.outputs[name]?.choices ?? {};
  if (figure === null) return null;
  const { value, also } = figure as Choice;
  const text = [value, ...also].map((option) => words[option] ?? option).join(` ${props.words.answer.or} `);
  return { metric: text, imperial: text };
};
const metres = (value: number, direction: 'up' | 'down'): Shown => both((system) => showValue({ unit: 'm' }, value, system, direction));

type Name = keyof PlanWords['answer'];
const rows = (props: PlanProps, some: readonly (readonly [Name, Shown | null])[]): Row[] =>
  some.flatMap(([name, text]) => (text === null ? [] : [{ label: props.words.answer[name], text }]));

/** How near the limb comes to the line where there is no place to stand. */
export const limbGapRows = (props: PlanProps, { limbGap }: PieceWork): Row[] => rows(props, [['limbGap', limbGap === null ? null : metres(limbGap, 'down')]]);

/** Where to stand for a piece, how long it is, which side first. */
export const pieceRows = (props: PlanProps, piece: PieceWork): Row[] => {
  const { stand, landing, order } = piece;
  return rows(props, [
    ['stand', stand && metres(stand.standOff, 'up')],
    ['room', stand && metres(stand.furthest, 'down')],
    ['angle', stand && both((system) => showValue({ unit: 'deg' }, stand.poleAngle, system, 'up'))],
    ['pole', stand && metres(stand.pole, 'up')],
    ['length', both((system) => showValue({ unit: 'm' }, piece.piece.length, system))],
    ['height', both((system) => showValue({ unit: 'm' }, piece.height, system))],
    ['weight', piece.weight === null ? null : both((system) => showValue({ unit: 'kg' }, piece.weight as number, system, 'up'))],
    ['towards', landing && metres(landing.towards, 'up')],
    ['outward', landing && output(props, piece.dropZone, 'outward')],
    ['inward', landing && output(props, piece.dropZone, 'inward')],
    ['first', order && output(props, order, 'firstCutSide')],
    ['sequence', order && output(props, order, 'sequence', props.words.sheet.sequence)],
    ['depth', order && output(props, order, 'firstCutDepth')],
    ['step', order && output(props, order, 'stepOffset')],
    ['ready', order && output(props, order, 'readyAt')],
    ['margin', piece.margin === null ? null : metres(piece.margin, 'down')],
  ]).concat(limbGapRows(props, piece));
};

/** What the hands carry; not for the sheet, where it changes nothing at the tree. */
export const loadRows = (props: PlanProps, { load }: PieceWork): Row[] =>
  rows(props, load ? [['frontHand', output(props, load, 'frontHand')], ['rearHand', output(props, load, 'alongPole')]] : []);

/** Of the whole limb. */
export const limbRows = (props: PlanProps, { weight, bar }: LimbWork): Row[] => rows(props, [
  ['total', output(props, weight, 'weight')],
  ['perMetre', output(props, weight, 'perMetre')],
  ['bar', output(props, bar, 'barNeeded')],
]);

/** Of the whole plan. `movement`: the line’s own, in metres; the picture keeps it clear as well. */
export const planRows = (props: PlanProps, { distance, required, limbs }: PlanWork, movement: number | null): Row[] => {
  const keepOut = Math.max(0, ...limbs.flatMap(({ pieces }) => pieces.map(({ landing }) => landing?.keepOut ?? 0)));
  return rows(props, [
    ['keepOut', keepOut > 0 ? metres(keepOut, 'up') : null],
    ['required', distance && output(props, distance, 'distance')],
    ['needed', required !== null && movement ? metres(required + movement, 'up') : null],
  ]);
};
