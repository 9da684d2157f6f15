/** A scale with its published bands, and where figures stand on it. */
import { inset, onStep, unplace, type Frame } from './frame.ts';
import { polygon, segment } from './path.ts';
import { finish, sketch } from './picture.ts';
import type { Box, Handle, Placed, Point } from './placed.ts';
import type { Said } from './say.ts';

/** `text` is null where the band has no room for it. */
export type Band = { from: number; to: number; text: Said | null; warn?: boolean };
/** A figure: as entered, and the range the guesses give it. */
export type Pin<Move> = {
  text: Said; at: number; low: number; high: number; strong?: boolean;
  grip?: Pick<Handle<Move>, 'id' | 'label' | 'min' | 'max' | 'step' | 'says' | 'move'>;
};
export type Line = { at: number; text: Said };

export const strip = <Move>(
  ends: readonly [number, number], bands: readonly Band[], lines: readonly Line[], pins: readonly Pin<Move>[], box: Box, held?: Frame | null,
): Placed<Move> => {
  const span = ends[1] - ends[0];
  const s = sketch({ left: ends[0], right: ends[1], bottom: 0, top: span * 1e-6 }, box, inset(14), held);
  const x = (value: number): number => s.at(value, 0)[0];
  const [top, foot] = [44, 74];
  for (const band of bands) {
    const [a, b] = [x(band.from), x(band.to)];
    const middle = (a + b) / 2;
    const struck = lines.some((line) => Math.abs(x(line.at) - middle) < 9);
    s.draw({ mark: band.warn ? 'warn' : 'band', d: polygon([[a, top], [b, top], [b, foot], [a, foot]]) });
    if (band.text) s.asks.push({ text: band.text, at: [struck ? a + (b - a) / 4 : middle, (top + foot) / 2], places: ['on'], leader: false });
  }
  for (const line of lines) {
    const [up, down]: [Point, Point] = [[x(line.at), top - 6], [x(line.at), foot + 6]];
    s.draw({ mark: 'limit', d: segment(up, down) });
    s.asks.push({ text: line.text, at: up, places: ['above', 'above-left', 'above-right'], gap: 3, leader: false, wrap: 18 });
  }
  const handles: Handle<Move>[] = [];
  const room = Math.min((box.height - foot - 20) / Math.max(pins.length, 1), 58);
  pins.forEach((pin, i) => {
    const y = foot + 18 + room * i + Math.min(room * 0.7, 40);
    if (pin.high > pin.low) s.draw({ mark: 'reached', d: segment([x(pin.low), y], [x(pin.high), y]) });
    s.draw({ mark: 'guide', d: segment([x(pin.at), foot], [x(pin.at), y]) }, { mark: 'pin', d: segment([x(pin.at), y - 8], [x(pin.at), y + 8]) });
    s.keepOff.push({ x: x(pin.low) - 4, y: y - 8, width: x(pin.high) - x(pin.low) + 8, height: 16 });
    s.asks.push({ text: pin.text, at: [x(pin.at), y], places: pins.some((other) => other.at > pin.at) ? ['left', 'right', 'below'] : ['right', 'left', 'below'], gap: pin.grip ? 26 : Math.max(14, x(pin.high) - x(pin.at) + 10), strong: pin.strong ?? false, leader: false });
    if (!pin.grip) return;
    const { grip } = pin;
    handles.push({
      ...grip, value: pin.at, way: 'across', x: x(pin.at), y,
      at: (point) => onStep(unplace(s.frame, point)[0], grip.min, grip.max, grip.step),
    });
  });
  return { ...finish(s), handles };
};
