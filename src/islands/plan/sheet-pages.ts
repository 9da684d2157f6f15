/** The sheet laid out in millimetres, for the writer of PDF files: the same words and figures as in print. */
import { circleAt, moved, type Placed, rule, setWords, type Sizes } from '#core/card/place.ts';
import type { Page } from '#core/card/sheets.ts';
import { canSet, point, textWidth } from '#core/card/type.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { flattened } from '#drawings/card/flatten.ts';
import type { Placed as Drawn, Shape } from '#drawings/kit/placed.ts';
import type { SheetText } from './sheet.ts';
import type { PlanWords } from './words.ts';

export const papers = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;
export type Paper = keyof typeof papers;
const margin = 13;
const of = 'sheet';

/** Minus as the faces have it. */
const plain = (text: string): string => text.replaceAll('\u2212', '-');
/** The first sign of these that the faces do not have; null where they have all. */
export const cannotSet = (texts: readonly string[]): string | null => [...texts.map(plain).join('')].find((c) => !canSet(c)) ?? null;

/** Words longer than the room are broken where they must be. */
const broken = (text: string, width: number, size: number): string =>
  text.split(' ').map((word) => {
    let [line, done] = ['', ''];
    for (const c of word) {
      if (textWidth(line + c, size, true) > width) [line, done] = ['', `${done}${line} `];
      line += c;
    }
    return done + line;
  }).join(' ');

type Set = { placed: Placed[]; height: number };
const set = (text: string, width: number, size: number, strong = false): Set => {
  const sizes: Sizes = { word: size, figure: size, mark: size, foot: size };
  const { type, height } = setWords([{ text: broken(plain(text), width, size), as: strong ? 'strong' : 'word' }], width, sizes, of)!;
  return { placed: type, height };
};
const at = ({ placed }: Set, x: number, y: number): Placed[] => placed.map((p) => moved(p, [x, y]));

/** Each outline of a path by itself: hatched together, what lies in two of them would count as outside. */
const apart = (shapes: readonly Shape[]): Shape[] => shapes.flatMap((shape) => (shape.mark === 'landing' ? shape.d.split(/(?=M)/).map((d) => ({ ...shape, d })) : [shape]));

const picture = ({ box, shapes, labels, badges }: Pick<Drawn<unknown>, 'box' | 'shapes' | 'labels' | 'badges'>, width: number, system: UnitSystem): Set => {
  const scale = width / box.width;
  const size = (13 * scale) / point;
  const word = (text: string, x: number, y: number, anchor: 'start' | 'middle' | 'end', strong: boolean): Placed => {
    const wide = textWidth(plain(text), size, strong);
    return { kind: 'type', x: x * scale - (anchor === 'middle' ? wide / 2 : anchor === 'end' ? wide : 0), y: y * scale, text: plain(text), size, strong, width: wide, of };
  };
  const paper = (points: readonly (readonly [number, number])[], weight: number): Placed => ({ kind: 'stroke', points: points.map(([x, y]) => [x * scale, y * scale]), closed: true, weight, fill: 'paper', dash: null, of });
  return {
    height: box.height * scale,
    placed: [
      ...flattened(apart(shapes), scale).map((stroke): Placed => ({ kind: 'stroke', of, ...stroke })),
      ...badges.flatMap(({ x, y, text }) => [paper(circleAt([x, y], 11), 0.4), word(text, x, y + 5, 'middle', true)]),
      ...labels.flatMap(({ x, y, anchor, lines, rect, strong }) => [
        paper([[rect.x, rect.y], [rect.x + rect.width, rect.y], [rect.x + rect.width, rect.y + rect.height], [rect.x, rect.y + rect.height]], 0),
        ...lines[system].map((line, i) => word(line, x, y + 16 * i, anchor, strong)),
      ]),
    ],
  };
};

type Given = { title: string; invented: string; sheet: SheetText; plan: readonly { label: string; text: string }[]; drawn: Parameters<typeof picture>[0]; words: PlanWords; foot: string; system: UnitSystem };

export const sheetPages = ({ title, invented, sheet, plan, drawn, words, foot, system }: Given, paper: Paper): Page[] => {
  const { width, height } = papers[paper];
  const room = width - 2 * margin;
  const pages: Page[] = [];
  let y = 0;
  const next = (): void => {
    pages.push({ width, height, placed: [], cards: [] });
    y = margin;
  };
  next();
  /** A new page where this one has no room for what is `tall`: what belongs together is not cut in two. */
  const keep = (tall: number): void => {
    if (y > margin && y + tall > height - margin) next();
  };
  const put = (tall: number, draw: (top: number) => Placed[]): void => {
    keep(tall);
    pages.at(-1)!.placed.push(...draw(y));
    y += tall;
  };
  const line = (text: string, size: number, strong = false, after = 1): void => {
    const words = set(text, room, size, strong);
    put(words.height + after, (top) => at(words, margin, top));
  };

  line(title, 15, true);
  if (invented) line(invented, 10);
  for (const stop of [...sheet.first, ...sheet.stops.map((s) => s[system])]) {
    const text = set(stop, room - 6, 10.5, true);
    put(text.height + 4, (top) => [
      ...at(text, margin + 3, top + 1.5),
      { kind: 'stroke', points: [[margin, top], [width - margin, top], [width - margin, top + text.height + 3], [margin, top + text.height + 3]], closed: true, weight: 0.7, fill: 'none', dash: null, of },
    ]);
  }

  for (const caution of sheet.cautions) line(caution[system], 10, false, 0.6);

  const left = room * 0.5;
  const image = picture(drawn, left - 4, system);
  const fact = (size: number) => ({ label, text }: { label: string; text: string }) => {
    const name = set(label, left, 9.5);
    const used = textWidth(plain(label), 9.5) + 2;
    // Larger words stand lower: the label beside them goes down with them.
    return { name, used, value: set(text, left - used, size, true), drop: (size - 9.5) * point * 0.8 };
  };
  const facts = [...plan.map(fact(14)), ...sheet.lines.map(fact(9.5))];
  const step = ({ name, value }: (typeof facts)[number]): number => Math.max(name.height, value.height, 5) + 0.6;
  const tall = Math.max(image.height, facts.reduce((sum, fact) => sum + step(fact), 0)) + 2;
  put(tall, (top) => {
    let down = top;
    const lines = facts.flatMap((fact): Placed[] => {
      const here = down;
      down += step(fact);
      const x = margin + left;
      return [...at(fact.name, x, here + fact.drop), ...at(fact.value, x + fact.used, here), rule([x, down - 0.4], [width - margin, down - 0.4], 0.15, of)];
    });
    return [...at(image, margin, top), ...lines];
  });

  sheet.limbs.forEach((text, i) => line(`${i + 1}. ${text}`, 10, false, 0.6));
  y += 1;
  for (const { heads, rows } of sheet.tables) {
    const first = room * 0.31;
    const column = (room - first) / heads.length;
    const size = heads.length > 4 ? 10.5 : 12;
    const cut = [[words.sheet.limb, ...heads], ...rows.map((row) => [row.label, ...row.cells.map((cell) => cell?.[system] ?? words.answer.none)])].map(([label, ...cells]) => {
      const texts = [set(label as string, first - 2, 11), ...cells.map((cell) => set(cell, column - 1, size, true))];
      return { texts, high: Math.max(...texts.map((text) => text.height)) + 0.5 };
    });
    keep(cut.reduce((sum, { high }) => sum + high, 0));
    for (const { texts, high } of cut) {
      put(high, (top) => [...texts.flatMap((text, i) => at(text, margin + (i === 0 ? 0 : first + (i - 1) * column), top)), rule([margin, top + high - 0.2], [width - margin, top + high - 0.2], 0.1, of)]);
    }
    y += 1.5;
  }
  const sign = set(words.sheet.sign, room, 10);
  const [below, real, statement, last] = [set(sheet.below, room, 10), set(words.answer.real, room, 10.5, true), set(words.sheet.statement, room, 8.5), set(foot, room, 8.5)];
  const end = (text: Set): void => put(text.height + 1, (top) => at(text, margin, top));
  keep(below.height + real.height + sign.height + statement.height + last.height + 14);
  end(below);
  end(real);
  put(sign.height + 11, (top) => [
    ...at(sign, margin, top),
    ...[0, 1, 2, 3].map((k) => rule([margin + (k * room) / 4, top + sign.height + 9], [margin + ((k + 0.92) * room) / 4, top + sign.height + 9], 0.2, of)),
  ]);
  end(statement);
  end(last);
  return pages;
};
