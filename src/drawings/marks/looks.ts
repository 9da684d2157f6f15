/** How each mark is drawn, always: line weight (px), fill, dash. One vocabulary for every drawing. */
export type Hatch = 'landing' | 'steep' | 'piece' | 'squeezed' | 'pulled';
export type Fill = 'none' | 'paper' | 'ink' | Hatch;
type Drawn = { weight: 0 | 1 | 2 | 3 | 7; fill: Fill; dash?: string; of: string; stroke?: 'paper' };

/** `of`: the name of its class, `mark-…`; several looks may be parts of one mark. */
export const looks = {
  /** The ground line, and the short strokes under it. */
  ground: { weight: 2, fill: 'none', of: 'ground' },
  soil: { weight: 1, fill: 'none', of: 'ground' },
  stem: { weight: 2, fill: 'paper', of: 'stem' },
  limb: { weight: 2, fill: 'paper', of: 'limb' },
  /** Strokes in the bark of a stem or limb. */
  bark: { weight: 1, fill: 'none', of: 'limb' },
  /** Wood seen end on. */
  section: { weight: 2, fill: 'paper', of: 'limb' },
  /** The piece that goes. */
  piece: { weight: 2, fill: 'piece', of: 'piece' },
  person: { weight: 0, fill: 'ink', of: 'person' },
  /** Parts of a person or tool that lie over others. */
  over: { weight: 1, fill: 'paper', of: 'person' },
  platform: { weight: 2, fill: 'paper', of: 'platform' },
  /** Paper on both sides of a pole, to part it from what it crosses. */
  edge: { weight: 7, fill: 'none', stroke: 'paper', of: 'gap' },
  pole: { weight: 3, fill: 'none', of: 'pole' },
  bar: { weight: 1, fill: 'paper', of: 'pole' },
  tool: { weight: 1, fill: 'ink', of: 'pole' },
  /** The head of the saw, drawn large. */
  head: { weight: 2, fill: 'paper', of: 'pole' },
  /** A wire. */
  line: { weight: 2, fill: 'none', of: 'line' },
  fitting: { weight: 1, fill: 'paper', of: 'line' },
  landing: { weight: 1, fill: 'landing', dash: '2 3', of: 'landing' },
  /** Where the pole would be too steep, and its edge. */
  steep: { weight: 0, fill: 'steep', of: 'limit' },
  limit: { weight: 2, fill: 'none', dash: '7 4', of: 'limit' },
  /** Where one may stand: on the ground, and from above. */
  stand: { weight: 3, fill: 'none', of: 'stand' },
  room: { weight: 2, fill: 'none', of: 'stand' },
  cut: { weight: 3, fill: 'none', of: 'cut' },
  /** A cut that is shown to be compared, not made. */
  othercut: { weight: 2, fill: 'none', dash: '7 4', of: 'cut' },
  squeezed: { weight: 0, fill: 'squeezed', of: 'squeezed' },
  pulled: { weight: 0, fill: 'pulled', of: 'pulled' },
  ridge: { weight: 3, fill: 'none', of: 'ridge' },
  collar: { weight: 1, fill: 'none', of: 'collar' },
  /** How much it takes: a bar, a lateral. */
  need: { weight: 2, fill: 'none', dash: '6 4', of: 'need' },
  dim: { weight: 1, fill: 'none', of: 'dim' },
  guide: { weight: 1, fill: 'none', dash: '3 3', of: 'guide' },
  /** Paper over a part left out. */
  gap: { weight: 0, fill: 'paper', of: 'gap' },
  /** An outline of what may be, or what was. */
  ghost: { weight: 1, fill: 'none', dash: '5 4', of: 'guide' },
  /** Which way something moves. */
  arrow: { weight: 2, fill: 'none', of: 'arrow' },
  arrowhead: { weight: 0, fill: 'ink', of: 'arrow' },
} as const satisfies Record<string, Drawn>;
export type Look = keyof typeof looks;
export const lookOf = (look: Look): Drawn => looks[look];
