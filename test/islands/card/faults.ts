/** What is wrong with a card as it is laid out. */
import type { CardChoices } from '#core/card/fields.ts';
import { type CardLayout, layOut } from '#core/card/layout.ts';
import { type Placed, type Rect, rectOf } from '#core/card/place.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { blocksOf, footOf } from '#islands/card/copy.ts';

/** As large as that of a long address. */
export const code = Array.from({ length: 65 }, (_, y) => Array.from({ length: 65 }, (__, x) => (x * y) % 3 === 0));
export const printed = { edition: '0123abcd', printed: '25 Nov 2026', check: '25 Nov 2027', code };

export const madeOf = (choices: CardChoices, units: UnitSystem): CardLayout => {
  const blocks = blocksOf(choices, units);
  return layOut(choices.inputs, blocks, footOf(blocks, choices.inputs, printed));
};

const rects = (p: Placed): Rect => {
  if (p.kind === 'type') return rectOf(p);
  const [xs, ys] = [p.points.map(([x]) => x), p.points.map(([, y]) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
};
const meet = (a: Rect, b: Rect): boolean => a.x < b.x + b.width - 0.01 && b.x < a.x + a.width - 0.01 && a.y < b.y + b.height - 0.01 && b.y < a.y + a.height - 0.01;
const around = (all: readonly Rect[]): Rect => {
  const [x, y] = [Math.min(...all.map((r) => r.x)), Math.min(...all.map((r) => r.y))];
  return { x, y, width: Math.max(...all.map((r) => r.x + r.width)) - x, height: Math.max(...all.map((r) => r.y + r.height)) - y };
};

/** Nearest that anything but a hole comes to an edge, mm. */
const edge = 2.9;

/** In words; none for a card as it should be. */
export const faults = (choices: CardChoices, units: UnitSystem): string[] => {
  const { sides, over, footOver } = madeOf(choices, units);
  const found: string[] = footOver ? ['the foot found no room'] : [];
  for (const { width, height, placed } of sides) {
    const type = placed.filter((p) => p.kind === 'type');
    for (const t of type) if (t.size < 7.5) found.push(`"${t.text}" is at ${t.size} pt`);
    type.forEach((a, i) => type.slice(i + 1).forEach((b) => {
      if (meet(rectOf(a), rectOf(b))) found.push(`"${a.text}" meets "${b.text}"`);
    }));
    for (const p of placed) {
      const r = rects(p);
      if (r.x < edge || r.y < edge || r.x + r.width > width - edge || r.y + r.height > height - edge) found.push(`${p.kind === 'type' ? `"${p.text}"` : 'a line'} of ${p.of} runs into the edge`);
      if (![r.x, r.y, r.width, r.height].every(Number.isFinite)) found.push(`${p.of} is nowhere`);
    }
    const blocks = [...new Set(placed.map(({ of }) => of))].map((of) => ({ of, rect: around(placed.filter((p) => p.of === of).map(rects)) }));
    blocks.forEach((a, i) => blocks.slice(i + 1).forEach((b) => {
      if (meet(a.rect, b.rect)) found.push(`${a.of} meets ${b.of}`);
    }));
  }
  const on = new Set(sides.flatMap(({ placed }) => placed.map(({ of }) => of)));
  for (const id of choices.blocks) if (on.has(id) === over.includes(id)) found.push(`${id} is ${on.has(id) ? 'on the card and said not to be' : 'left out without a word'}`);
  if (!on.has('foot') && !footOver) found.push('no foot');
  return found;
};
