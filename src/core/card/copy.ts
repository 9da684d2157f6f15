/** What stands on a card, before it is placed: words filled in, drawings made, nothing measured yet. Lengths in mm. */
export type Point = readonly [x: number, y: number];

/** `mark`: how the figure before it is known. */
export type Run = { text: string; as: 'word' | 'strong' | 'figure' | 'mark' };
export type Words = readonly Run[];

/** A line or an area. `weight` mm, 0 for none; `fill`: black, or paper over what lies under it. */
export type Stroke = { points: readonly Point[]; closed: boolean; weight: number; fill: 'none' | 'ink' | 'paper'; dash: readonly [number, number] | null };
/** A drawing in a box of its own, its words placed on it; `at` is the middle of a word on its base line. */
export type Picture = { width: number; height: number; strokes: readonly Stroke[]; texts: readonly { at: Point; text: string }[] };

export type Part =
  | { kind: 'text'; words: Words; number?: string }
  | { kind: 'table'; head: readonly Words[]; rows: readonly (readonly Words[])[] }
  /** Side by side where there is room, else one under the other; each over its words. */
  | { kind: 'pictures'; each: readonly { picture: Picture; words: Words }[] }
  /** A line to write on after these words. */
  | { kind: 'write'; words: Words };
export type Block = { id: string; title: Words; parts: readonly Part[] };
/** What every card carries: lines, and the code of its own address, true where a module is dark. */
export type Foot = { lines: readonly Words[]; code: readonly (readonly boolean[])[] };
