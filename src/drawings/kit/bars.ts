/** Amounts of a day as bars on one scale, one under the other, against the marks they are held to. */
import { along } from './labels.ts';
import { onStep, unplace, inset, type Frame } from './frame.ts';
import { polygon, segment } from './path.ts';
import { finish, sketch } from './picture.ts';
import type { Box, Handle, Placed, Point } from './placed.ts';
import type { Said } from './say.ts';

/** Drag and keys for a bar: `toValue` says what the input is for a length. */
export type Grip<Move> = Pick<Handle<Move>, 'id' | 'label' | 'min' | 'max' | 'step' | 'value' | 'says' | 'move'> & { toValue: (length: number) => number };
/** `parts`: lengths that lie end to end; `high`: how long the guesses let it be. */
export type Bar<Move> = { text: Said; parts: readonly number[]; high: number; strong?: boolean; grip?: Grip<Move> };
export type Mark = { at: number; text: Said; look: 'limit' | 'need' };

const rect = ([x, y]: Point, width: number, height: number): string => polygon([[x, y], [x + width, y], [x + width, y + height], [x, y + height]]);

export const bars = <Move>(rows: readonly Bar<Move>[], marks: readonly Mark[], box: Box, held?: Frame | null): Placed<Move> => {
  const longest = Math.max(...marks.map((m) => m.at * 1.12), ...rows.map((r) => r.high * 1.06));
  const s = sketch({ left: 0, right: longest, bottom: 0, top: longest * 1e-6 }, box, inset(14), held);
  const head = 40;
  const pitch = (box.height - head - 6) / rows.length;
  const thick = Math.min(18, pitch * 0.36);
  const x = (length: number): number => s.at(length, 0)[0];
  const handles: Handle<Move>[] = [];
  rows.forEach((row, i) => {
    const y = head + pitch * (i + 1) - thick - 4;
    let from = 0;
    row.parts.forEach((part, n) => {
      s.draw({ mark: n % 2 === 0 ? 'amount' : 'other', d: rect([x(from), y], Math.max(x(from + part) - x(from), 0.5), thick) });
      from += part;
    });
    if (row.high > from) s.draw({ mark: 'ghost', d: rect([x(from), y], x(row.high) - x(from), thick) });
    s.keepOff.push({ x: x(0), y, width: Math.max(x(row.high) - x(0), 1), height: thick });
    s.asks.push({ text: row.text, at: [x(0), y - 11], places: ['right'], gap: 0, leader: false, wrap: 60, strong: row.strong ?? false });
    if (!row.grip) return;
    const { toValue, ...grip } = row.grip;
    handles.push({
      ...grip, way: 'across', x: x(from), y: y + thick / 2,
      at: (point) => onStep(toValue(unplace(s.frame, point)[0]), grip.min, grip.max, grip.step),
    });
  });
  s.draw({ mark: 'guide', d: segment([x(0), head - 4], [x(0), box.height - 3]) });
  for (const mark of marks) {
    const [top, bottom]: [Point, Point] = [[x(mark.at), head - 8], [x(mark.at), box.height - 3]];
    s.draw({ mark: mark.look, d: segment(top, bottom) });
    s.asks.unshift({ text: mark.text, at: top, places: ['above', 'above-left', 'above-right'], gap: 3, leader: false, wrap: 16 });
    s.keepOff.push(...along(top, [top[0], top[1] + 12], 3));
  }
  return { ...finish(s), handles };
};
