/** The widths a card is laid out by are those of the faces it is printed in: held to the metrics of a general-purpose library. */
import { PDFDocument, StandardFonts } from 'pdf-lib';
import { expect, test } from 'vitest';
import { canSet, point, textWidth } from '#core/card/type.ts';

const others = [...'–—‘’“”•…'];
const characters = [
  ...Array.from({ length: 127 - 32 }, (_, i) => String.fromCharCode(32 + i)),
  ...Array.from({ length: 256 - 161 }, (_, i) => String.fromCharCode(161 + i)),
  ...others,
];

test.for([[StandardFonts.Helvetica, false], [StandardFonts.HelveticaBold, true]] as const)('%s, every character', async ([name, strong]) => {
  const font = await (await PDFDocument.create()).embedFont(name);
  // The soft hyphen is drawn as nothing or as a hyphen, as readers please; no words of ours have it.
  const wrong = characters.filter((c) => c !== '\u00ad' && Math.abs(textWidth(c, 1000, strong) - font.widthOfTextAtSize(c, 1000) * point) > 1e-9);
  expect(wrong).toEqual([]);
});

test('a hard space is as wide as a soft one; what the faces have not is refused', () => {
  expect(textWidth('a\u00a0b', 9)).toBe(textWidth('a b', 9));
  expect(canSet('Québec – 60°')).toBe(true);
  expect(canSet('≥')).toBe(false);
  expect(() => textWidth('x ≥ y', 9)).toThrow(/no "≥"/);
});
