/**
 * Widths of the two faces a card is set in, Helvetica and its bold: standard faces of every PDF reader, drawn on screens by
 * themselves or by faces of the same widths. Thousandths of the size of type, from the font metrics of the PDF standard
 * faces (Adobe Core 14), as printed in their metric files; test/core/card holds them to a library's copy.
 */
const regular = [
  [278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584],
  [333, 556, 556, 556, 556, 260, 556, 333, 737, 370, 556, 584, 333, 737, 333, 400, 584, 333, 333, 333, 556, 537, 278, 333, 333, 365, 556, 834, 834, 834, 611, 667, 667, 667, 667, 667, 667, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278, 722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611, 556, 556, 556, 556, 556, 556, 889, 500, 556, 556, 556, 556, 278, 278, 278, 278, 556, 556, 556, 556, 556, 556, 556, 584, 611, 556, 556, 556, 556, 500, 556, 500],
  { '–': 556, '—': 1000, '‘': 222, '’': 222, '“': 333, '”': 333, '•': 350, '…': 1000 },
] as const;
const bold = [
  [278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584],
  [333, 556, 556, 556, 556, 280, 556, 333, 737, 370, 556, 584, 333, 737, 333, 400, 584, 333, 333, 333, 611, 556, 278, 333, 333, 365, 556, 834, 834, 834, 611, 722, 722, 722, 722, 722, 722, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278, 722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611, 556, 556, 556, 556, 556, 556, 889, 556, 556, 556, 556, 556, 278, 278, 278, 278, 611, 611, 611, 611, 611, 611, 611, 584, 611, 611, 611, 611, 611, 556, 611, 556],
  { '–': 556, '—': 1000, '‘': 278, '’': 278, '“': 500, '”': 500, '•': 350, '…': 1000 },
] as const;
/** First characters of the two rows; the space that does not break is as wide as the one that does. */
const [first, second] = [32, 161];
const hardSpace = '\u00a0';

/** A point in millimetres. */
export const point = 25.4 / 72;
/** How far capitals rise over the base line, and tails hang under it, as shares of the size. */
export const rises = 0.718;
export const hangs = 0.207;

const widthOf = (c: string, strong: boolean): number | undefined => {
  const [low, high, others] = strong ? bold : regular;
  if (c === hardSpace) return low[0];
  const code = c.charCodeAt(0);
  return low[code - first] ?? high[code - second] ?? others[c as keyof typeof others];
};

/** Whether every character is one that the faces have. */
export const canSet = (text: string): boolean => [...text].every((c) => widthOf(c, false) !== undefined);

/**
 * @param size points
 * @returns mm. Throws for a character that the faces do not have: words are ours, and what the reader types is checked before.
 */
export const textWidth = (text: string, size: number, strong = false): number => {
  let thousandths = 0;
  for (const c of text) {
    const width = widthOf(c, strong);
    if (width === undefined) throw new Error(`the faces of a card have no "${c}" (in "${text}")`);
    thousandths += width;
  }
  return (thousandths / 1000) * size * point;
};
