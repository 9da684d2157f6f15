/** How each mark is drawn, always: line weight (px), fill, dash. One vocabulary for every drawing. */
export type Hatch = 'landing' | 'steep' | 'piece' | 'squeezed' | 'pulled' | 'uncut' | 'liquid';
export type Fill = 'none' | 'paper' | 'ink' | Hatch;
/** `of`: the mark it is a part of, which gives its class, where that is not itself; fill: none, unless said. */
type Drawn = { weight: 0 | 1 | 2 | 3 | 7; fill?: Fill; dash?: string; of?: string; stroke?: 'paper' };

export const looks = {
  /** The ground line, and the short strokes under it. */
  ground: { weight: 2 },
  soil: { weight: 1, of: 'ground' },
  stem: { weight: 2, fill: 'paper' },
  limb: { weight: 2, fill: 'paper' },
  /** The outline of wood whose room is drawn already. */
  edgeline: { weight: 2, of: 'stem' },
  /** Strokes in the bark of a stem or limb. */
  bark: { weight: 1, of: 'limb' },
  /** Wood seen end on. */
  section: { weight: 2, fill: 'paper', of: 'limb' },
  /** The piece that goes. */
  piece: { weight: 2, fill: 'piece' },
  person: { weight: 0, fill: 'ink' },
  /** Parts of a person or tool that lie over others. */
  over: { weight: 1, fill: 'paper', of: 'person' },
  platform: { weight: 2, fill: 'paper' },
  /** Paper on both sides of a pole, to part it from what it crosses. */
  edge: { weight: 7, stroke: 'paper', of: 'gap' },
  pole: { weight: 3 },
  bar: { weight: 1, fill: 'paper', of: 'pole' },
  tool: { weight: 1, fill: 'ink', of: 'pole' },
  /** The head of the saw, drawn large. */
  head: { weight: 2, fill: 'paper', of: 'pole' },
  /** A wire. */
  line: { weight: 2 },
  fitting: { weight: 1, fill: 'paper', of: 'line' },
  landing: { weight: 1, fill: 'landing', dash: '2 3' },
  /** Where the pole would be too steep, and its edge. */
  steep: { weight: 0, fill: 'steep', of: 'limit' },
  limit: { weight: 2, dash: '7 4' },
  /** Where one may stand: on the ground, and from above. */
  stand: { weight: 3 },
  room: { weight: 2, of: 'stand' },
  cut: { weight: 3 },
  /** A cut that is shown to be compared, not made. */
  othercut: { weight: 2, dash: '7 4', of: 'cut' },
  /** Wood that the bar does not reach. */
  uncut: { weight: 1, fill: 'uncut' },
  squeezed: { weight: 0, fill: 'squeezed' },
  pulled: { weight: 0, fill: 'pulled' },
  ridge: { weight: 3 },
  collar: { weight: 1 },
  /** How much it takes: a bar, a lateral. */
  need: { weight: 2, dash: '6 4' },
  dim: { weight: 1 },
  guide: { weight: 1, dash: '3 3' },
  /** Paper over a part left out. */
  gap: { weight: 0, fill: 'paper' },
  /** An outline of what may be, or what was. */
  ghost: { weight: 1, dash: '5 4', of: 'guide' },
  /** Which way something moves. */
  arrow: { weight: 2 },
  arrowhead: { weight: 0, fill: 'ink', of: 'arrow' },
  /** An amount as a bar: so much of the day, and a fill that alternates with it. */
  amount: { weight: 2, fill: 'ink' },
  other: { weight: 2, fill: 'piece', of: 'amount' },
  /** A band of a scale, the one that warns, and where the figure stands on it. */
  band: { weight: 1, fill: 'paper' },
  warn: { weight: 1, fill: 'steep', of: 'band' },
  reached: { weight: 7, of: 'amount' },
  pin: { weight: 3, of: 'amount' },
  vessel: { weight: 2 },
  liquid: { weight: 1, fill: 'liquid', of: 'vessel' },
} as const satisfies Record<string, Drawn>;
export type Look = keyof typeof looks;
export const lookOf = (look: Look): Drawn => looks[look];
