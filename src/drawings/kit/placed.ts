/**
 * What a geometry gives and a drawing draws: shapes, labels and handles, placed in px of the box.
 * Nothing here is in metres any more, and nothing is left to be worked out.
 */
import type { Look } from '../marks/looks.ts';
import type { Frame } from './frame.ts';
import type { Said } from './say.ts';

export type Point = readonly [x: number, y: number];
export type Box = { width: number; height: number };
export type Rect = { x: number; y: number; width: number; height: number };

/** One path of one mark; how it looks is settled by the mark alone. */
export type Shape = { mark: Look; d: string };

/** Lines of text; `x` is the anchor, `y` the first base line. `rect` is what it covers, in either unit system. */
export type Label = {
  x: number;
  y: number;
  anchor: 'start' | 'middle' | 'end';
  lines: { metric: readonly string[]; imperial: readonly string[] };
  rect: Rect;
  strong: boolean;
  /** A thin line to what the label speaks of, where the label had to stand off from it. */
  leader: string | null;
};

/** A number in a ring: the order of the cuts. */
export type Badge = { x: number; y: number; text: string };

/** What can be dragged, and moved with the arrow keys. `Move` is what it may change: inputs, or a state of the view. */
export type Handle<Move> = {
  id: string;
  x: number;
  y: number;
  /** What else may be taken hold of: the thing itself. */
  area?: Rect;
  /** Says what it moves, for those who cannot see it. */
  label: string;
  min: number;
  max: number;
  value: number;
  step: number;
  /** The value with its unit. */
  says: Said;
  /** `across` moves left and right, `up` up and down, `round` about a point. */
  way: 'across' | 'up' | 'round';
  /** The value at a point of the box, on a step and within min and max: the inverse of placing. */
  at: (point: Point) => number;
  /** What to hand on for a value. */
  move: (value: number) => Move;
};
/** What a drawing calls when a handle has been moved. */
export type OnMove<Move> = (move: Move) => void;

export type Placed<Move = never> = {
  box: Box;
  shapes: readonly Shape[];
  labels: readonly Label[];
  badges: readonly Badge[];
  handles: readonly Handle<Move>[];
  /** Where the metres went; held still while a handle is dragged. */
  frame: Frame;
};

/** Words of a drawing, from `content/drawings/<id>.json`, its description filled in by the caller. */
export type DrawingWords = { title: string; description: string; labels: Readonly<Record<string, string>> };
