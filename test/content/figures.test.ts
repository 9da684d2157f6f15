import { describe, expect, it } from 'vitest';
import { allowed } from './allowed.ts';
import { nakedFigures } from './naked.ts';
import { allPieces, documentFrom, piecesOf } from './words.ts';

const pieces = allPieces();
const withoutAllowed = (file: string, text: string): string =>
  allowed.filter((a) => a.file === file).reduce((t, { sentence }) => t.replace(sentence, ''), text);

describe('No figure of the trade stands in words by itself', () => {
  it('in chapters, calculators, terms and the words of the frame', () => {
    const found = pieces.flatMap(({ file, where, text }) =>
      nakedFigures(withoutAllowed(file, text)).map((figure) => `${file}, ${where}: "${figure}" in "${text.slice(0, 120)}"`));
    expect(found).toEqual([]);
  });

  it('reads a good many words, so that an empty folder is not a pass', () => {
    expect(pieces.length).toBeGreaterThan(300);
    expect(new Set(pieces.map((p) => p.file)).size).toBeGreaterThan(30);
  });

  it.each(allowed)('the allowed sentence "$sentence" is still there and still needs leave', ({ file, sentence }) => {
    expect(pieces.some((p) => p.file === file && p.text.includes(sentence))).toBe(true);
    expect(nakedFigures(sentence)).not.toEqual([]);
  });
});

describe('The search for naked figures', () => {
  it.each([
    'Keep the pole under 60 degrees.',
    'Keep the pole under sixty degrees.',
    'Stand at least 2.5 m back.',
    'Stand ten metres away.',
    'A bar of 10" is common.',
    'Cut a third of the way through.',
    'Cut two thirds through.',
    'Cut halfway: half the thickness.',
    'Keep twice the length away.',
    'The lateral is one-third as thick.',
    'Mix it 50:1.',
    'A load of 20 % more.',
    'Lines of 33kV hang there.',
    'Stay two branch lengths away.',
    'The cut is at right angles to the stem.',
    'About ¼ of the way.',
    'Wait three years.',
    'A finger’s width from the ridge.',
    'The risk grows tenfold.',
  ])('finds the figure in "%s"', (sentence) => expect(nakedFigures(sentence)).not.toEqual([]));

  it.each([
    'Three cuts, two sides, one person.',
    'See ISO 11680:2025, section 5.3 and Table 4-1 of 29 CFR 1910.333(c)(3)(i).',
    'The rule was changed in 1995.',
    'Keep {standing.bystander-distance} away, at least {standing.least-back} of the pole.',
    'Weight for every metre of its length.',
    'The third cut is for the stub; the second lets it go.',
    'Stand with both feet on the floor.',
  ])('lets "%s" pass', (sentence) => expect(nakedFigures(sentence)).toEqual([]));

  const naked = (body: string, front = 'title: t'): string[] =>
    piecesOf(documentFrom('content/chapters/x.mdx', `---\n${front}\n---\n${body}`)).flatMap((p) => nakedFigures(p.text));

  it('looks into titles, captions and frontmatter, and not into ids, inputs and the components of figures', () => {
    expect(naked('<Figure drawing="stance" caption="Held at 60°." />')).toEqual(['60°.', '°']);
    expect(naked('text', 'takeAway: ["No steeper than 60 degrees."]')).toHaveLength(1);
    expect(naked('<Quantity id="x.y-2" /> and <Given value={3} unit="m" /> and <Result inputs={{ a: "}", b: [1, 2] }} got="measured" />')).toEqual([]);
    expect(naked('<CalculatorLink id="stance" inputs={{ cutHeight: 5 }}>a cut 5 m up</CalculatorLink>')).toEqual(['5 m']);
  });
});
