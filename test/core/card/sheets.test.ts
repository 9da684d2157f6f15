import { describe, expect, it } from 'vitest';
import type { CardInputs } from '#core/card/fields.ts';
import type { Side } from '#core/card/layout.ts';
import { type Page, pagesOf } from '#core/card/sheets.ts';
import { cardSizes, pageName, pageSizes } from '#core/card/shape.ts';

const words = { ruler: { metric: 'metric', imperial: 'imperial' }, front: 'front', back: 'back', fold: 'fold', cut: 'cut' };
// ISO 216; ANSI/ASME Y14.1 for Letter; ISO/IEC 7810 for ID-1.
const papers = { a4: [210, 297], letter: [215.9, 279.4] } as const;
const sides = (size: CardInputs['size'], count: number): Side[] => Array.from({ length: count }, () => ({ width: cardSizes[size][0], height: cardSizes[size][1], placed: [] }));
const all = (Object.keys(cardSizes) as CardInputs['size'][]).flatMap((size) => (['a4', 'letter'] as const).flatMap((paper) => (['one', 'two', 'fold'] as const).map((way) => ({ size, paper, sides: way }))));
const pages = ({ size, paper, sides: way }: (typeof all)[number], imperial = false): Page[] => pagesOf(sides(size, way === 'one' ? 1 : 2), { sides: way, paper }, words, imperial);
const strokes = (page: Page, of: string) => page.placed.filter((p) => p.kind === 'stroke').filter((p) => p.of === of);

describe.each(all)('$size, $sides, on $paper', (choice) => {
  const made = pages(choice);
  it('is on paper of its size, as many pages as there are to print', () => {
    expect(made).toHaveLength(choice.sides === 'two' ? 2 : 1);
    for (const { width, height } of made) expect([width, height].sort((a, b) => a - b)).toEqual(papers[choice.paper]);
  });
  it('its page is named, and has its size under that name; so has the card alone', () => {
    for (const page of made) expect(pageSizes[pageName(choice, page)]).toEqual([page.width, page.height]);
    const alone = { ...choice, paper: 'card' } as const;
    for (const page of pagesOf(sides(choice.size, 2), alone, words, false)) expect(pageSizes[pageName(alone, page)]).toEqual([page.width, page.height]);
  });
  it('cards of their size, clear of each other, the edge and the ruler', () => {
    const [width, height] = cardSizes[choice.size];
    for (const page of made) {
      expect(page.cards.length).toBeGreaterThan(0);
      page.cards.forEach((a, i) => {
        expect([a.width, a.height]).toEqual([choice.sides === 'fold' ? 2 * width : width, height]);
        expect(Math.min(a.x, a.y, page.width - a.x - a.width)).toBeGreaterThanOrEqual(8 - 1e-9);
        expect(a.y + a.height).toBeLessThanOrEqual(page.height - 20 + 1e-9);
        // Six millimetres at least between two, for the sealed edges of the laminate.
        for (const b of page.cards.slice(i + 1)) expect(Math.max(Math.abs(a.x - b.x) - a.width, Math.abs(a.y - b.y) - a.height)).toBeGreaterThanOrEqual(6);
      });
    }
  });
  it('cut marks at every corner, in line with its edges', () => {
    for (const page of made) {
      const marks = strokes(page, 'cut');
      expect(marks).toHaveLength(8 * page.cards.length);
      for (const { x, y, width, height } of page.cards) {
        for (const [cx, cy] of [[x, y], [x + width, y], [x, y + height], [x + width, y + height]] as const) {
          expect(marks.some(({ points: [[ax, ay], [bx, by]] }: any) => ay === by && Math.abs(ay - cy) < 1e-9 && Math.min(Math.abs(ax - cx), Math.abs(bx - cx)) < 1)).toBe(true);
          expect(marks.some(({ points: [[ax, ay], [bx, by]] }: any) => ax === bx && Math.abs(ax - cx) < 1e-9 && Math.min(Math.abs(ay - cy), Math.abs(by - cy)) < 1)).toBe(true);
        }
      }
    }
  });
  it('the backs lie behind the fronts when the sheet is turned over sideways', () => {
    for (const page of made) {
      const lefts = (xs: number[]): string[] => xs.map((x) => x.toFixed(6)).sort();
      expect(lefts(page.cards.map(({ x, width }) => page.width - x - width))).toEqual(lefts(page.cards.map(({ x }) => x)));
    }
  });
});

describe('the ruler and the notes', () => {
  it('a hundred millimetres, or four inches', () => {
    const length = (imperial: boolean): number => {
      const [line] = strokes(pages(all[0]!, imperial)[0]!, 'ruler');
      return line!.points[1]![0] - line!.points[0]![0];
    };
    expect(length(false)).toBeCloseTo(100, 9);
    expect(length(true)).toBeCloseTo(4 * 25.4, 9);
  });
  it('says what to do with the sheet', () => {
    const notes = (sidesOf: CardInputs['sides']): string[] => pages({ size: 'a7', paper: 'a4', sides: sidesOf }).map(({ placed }) => placed.flatMap((p) => (p.kind === 'type' ? [p.text] : [])).join());
    expect(notes('one')).toEqual(['metric,cut']);
    expect(notes('two')).toEqual(['metric,front', 'metric,back']);
    expect(notes('fold')).toEqual(['metric,fold']);
  });
});

describe('the card itself as the page', () => {
  it('is the card, folded ones side by side with the fold between', () => {
    const [one] = pagesOf(sides('id1', 1), { sides: 'one', paper: 'card' }, words, false);
    expect(one).toMatchObject({ width: 85.6, height: 53.98 });
    const two = pagesOf(sides('index', 2), { sides: 'two', paper: 'card' }, words, false);
    expect(two.map(({ width, height }) => [width, height])).toEqual([[76.2, 127], [76.2, 127]]);
    const [fold] = pagesOf(sides('a6', 2), { sides: 'fold', paper: 'card' }, words, false);
    expect(fold).toMatchObject({ width: 210, height: 148 });
    expect(strokes(fold!, 'fold')[0]!.points.map(([x]) => x)).toEqual([105, 105]);
  });
});
