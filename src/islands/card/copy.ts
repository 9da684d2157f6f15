/** A card's blocks and foot in words: figures of core filled into content's, each with how it is known. */
import cutLabels from '#content/drawings/cut-order.json';
import lastLabels from '#content/drawings/final-cut.json';
import planLabels from '#content/drawings/stance.json';
import words from '#content/cards/card.json';
import { shares, site } from '#content/interface.json';
import { finalCut } from '#core/calculators/final-cut.ts';
import { stance } from '#core/calculators/stance.ts';
import type { Block, Foot, Part, Picture, Run, Words } from '#core/card/copy.ts';
import type { BlockId, CardChoices, CardInputs } from '#core/card/fields.ts';
import { blockFigures, type BlockFigures, type Cell, exampleOf, type Figure, heldLimb, type SupportId, supports } from '#core/card/figures.ts';
import { ruleSet } from '#core/facts/rule-sets.ts';
import { evaluate } from '#core/kit/outcome.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { cutPicture, lastCutPicture, planPicture } from '#drawings/card/pictures.ts';
import type { Inputs as CutOrderInputs } from '#drawings/cut-order/geometry.ts';
import type { Inputs as FinalCutInputs } from '#drawings/final-cut/geometry.ts';
import type { Inputs as StanceInputs } from '#drawings/stance/geometry.ts';

type Mark = keyof typeof words.marks;
const isMark = (known: string): known is Mark => known in words.marks;
const hardSpace = '\u00a0';
const markRun = (known: Mark): Run => ({ text: `${hardSpace}(${words.marks[known].mark})`, as: 'mark' });
const figureRuns = ({ text, known, given }: Figure): Run[] => [
  { text: ((shares as Record<string, string>)[text] ?? text).replaceAll(' ', hardSpace), as: given ? 'strong' : 'figure' },
  ...(isMark(known) ? [markRun(known)] : []),
];

/** Fills `{name}` with a figure and `{practice}` with its mark. A name without a figure is a mistake in the words. */
export const filled = (template: string, figures: BlockFigures['figures'] = {}, as: 'word' | 'strong' = 'word'): Words =>
  template.split(/(\{\w+\})/).flatMap((part, i): Run[] => {
    if (i % 2 === 0) return part === '' ? [] : [{ text: part, as }];
    const name = part.slice(1, -1);
    // The space before a mark is the mark's own.
    if (isMark(name)) return [{ ...markRun(name), text: markRun(name).text.trimStart() }];
    const figure = figures[name];
    if (!figure) throw new Error(`The card's words ask for {${name}}; there is ${Object.keys(figures).join(', ') || 'nothing'}`);
    return figureRuns(figure);
  });

const text = (template: string, figures?: BlockFigures['figures']): Part => ({ kind: 'text', words: filled(template, figures) });
const said = (ids: readonly string[], from: { readonly [id: string]: string }, figures?: BlockFigures['figures']): Part[] =>
  ids.filter((id) => from[id]).map((id) => text(from[id] as string, figures));

/** Figures head a row in the type of words; what is worked out stands large. */
const table = (head: readonly string[], rows: BlockFigures['rows'], others: { readonly [say: string]: string } = {}): Part => ({
  kind: 'table',
  head: head.map((h) => filled(h)),
  rows: rows.map((row) => row.map((cell: Cell, k): Words => ('say' in cell ? filled(others[cell.say] as string) : k === 0 ? filled(cell.text) : figureRuns(cell)))),
});

const w = words.blocks;
const plan = (): Picture => {
  const inputs = { ...exampleOf(stance), cutHeight: 3, landingReach: 0, standing: 'beside' } as StanceInputs;
  return planPicture({ inputs, outcome: evaluate(stance, inputs, 'exact') }, planLabels.labels);
};
const lastCut = (): Picture => {
  const inputs = { ...exampleOf(finalCut), union: 'collar', branchAngle: 60, ridgeAngle: 30 } as FinalCutInputs;
  return lastCutPicture({ inputs, outcome: evaluate(finalCut, inputs, 'exact') }, { ...lastLabels.labels, ...w.last.labels });
};
const held = (id: SupportId): Picture => {
  const { inputs, outcome } = heldLimb(id);
  return cutPicture({ inputs: inputs as CutOrderInputs, outcome }, cutLabels.labels);
};

type Make = (figures: BlockFigures, choices: CardChoices) => Part[];
const parts: { readonly [B in BlockId]: Make } = {
  lines: ({ rows, says }) => [table(w.lines.head, rows, { ask: w.lines.ask, untold: w.lines.untold }), ...said(says, w.lines.says)],
  pole: ({ figures, rows }) => [...w.pole.lines.map((l) => text(l, figures)), table(w.pole.head, rows, { tooHigh: w.pole.tooHigh, belowGrip: w.pole.belowGrip }), ...w.pole.after.map((l) => text(l, figures))],
  plan: () => [{ kind: 'pictures', each: [{ picture: plan(), words: filled(w.plan.lines[0] as string) }] }],
  out: ({ figures }) => w.out.lines.map((l) => text(l, figures)),
  bar: ({ figures, rows }) => [...w.bar.lines.map((l) => text(l, figures)), table(w.bar.head, rows)],
  lateral: ({ rows }) => [table(w.lateral.head, rows)],
  cuts: ({ says }) => [
    { kind: 'pictures', each: (Object.keys(supports) as SupportId[]).map((id, i) => ({ picture: held(id), words: filled((w.cuts.captions as Record<string, string>)[says[i] as string] as string) })) },
    ...w.cuts.after.map((l) => text(l)),
  ],
  last: () => [{ kind: 'pictures', each: [{ picture: lastCut(), words: filled(w.last.lines[0] as string) }] }],
  touch: ({ figures }, { calls }) => [
    ...w.touch.steps.map((step, i): Part => ({ kind: 'text', number: String(i + 1), words: filled(step, figures) })),
    ...(['emergency', 'operator'] as const).map((name): Part =>
      calls[name] === '' ? { kind: 'write', words: filled(w.touch[name]) } : { kind: 'text', words: [{ text: `${w.touch[name]} `, as: 'word' }, { text: calls[name].replaceAll(' ', hardSpace), as: 'figure' }] }),
    { kind: 'write', words: filled(w.touch.place) },
  ],
  stop: () => w.stop.lines.map((l) => text(l)),
  hands: ({ figures, says }) => [...w.hands.lines.map((l) => text(l, figures)), ...said(says, w.hands.says, figures)],
  mix: ({ figures }) => w.mix.lines.map((l) => text(l, figures)),
};

export const blocksOf = (choices: CardChoices, units: UnitSystem): Block[] =>
  choices.blocks.map((id): Block => ({ id, title: filled(w[id].title, {}, 'strong'), parts: parts[id](blockFigures(id, choices.inputs, units), choices) }));

const wordsIn = (part: Part): readonly Words[] => {
  switch (part.kind) {
    case 'table': return [...part.head, ...part.rows.flat()];
    case 'pictures': return part.each.map((e) => e.words);
    default: return [part.words];
  }
};
/** What the foot has to explain. */
const marksOn = (blocks: readonly Block[]): Mark[] => {
  const on = new Set(blocks.flatMap(({ title, parts: all }) => [title, ...all.flatMap(wordsIn)]).flat().filter(({ as }) => as === 'mark').map(({ text: mark }) => mark.trim()));
  return (Object.keys(words.marks) as Mark[]).filter((known) => on.has(`(${words.marks[known].mark})`));
};

/** What stands on every card. `edition`, the dates and the code come with the page it is open on. */
export type Printed = { edition: string; printed: string; check: string; code: readonly (readonly boolean[])[] };

export const footOf = (blocks: readonly Block[], inputs: CardInputs, { edition, printed, check, code }: Printed): Foot => {
  const set = ruleSet(inputs.ruleSet);
  const fill = (template: string, values: { readonly [name: string]: string } = {}): string => template.replace(/\{(\w+)\}/g, (_, name: string) => values[name] ?? '');
  const f = words.foot;
  const guesses = blocks.some(({ id }) => ['pole', 'bar', 'lateral'].includes(id));
  const lines: string[][] = [
    [fill(f.edition, { site: site.name, edition }), ...(printed === '' ? [] : [fill(f.dates, { printed: printed.replaceAll(' ', hardSpace), check: check.replaceAll(' ', hardSpace) })])],
    [set ? fill(f.rule, { title: set.title, edition: set.edition }) : f.noRule],
    [...(guesses ? [f[inputs.guess]] : []), ...marksOn(blocks).map((known) => `(${words.marks[known].mark})${hardSpace}${words.marks[known].says}.`)],
    [f.caution],
  ];
  return { code, lines: lines.filter((line) => line.length > 0).map((line): Words => [{ text: line.join(' '), as: 'word' }]) };
};
