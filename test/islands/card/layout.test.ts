/** Cards of every kind, laid out: nothing overlaps, nothing is cut off, nothing is small, and what does not fit is named. */
import { describe, expect, it } from 'vitest';
import words from '#content/cards/card.json' with { type: 'json' };
import { type CardChoices, exampleIn, noCalls, usualBlocks } from '#core/card/fields.ts';
import { layOut } from '#core/card/layout.ts';
import { cardSizes } from '#core/card/shape.ts';
import { canSet } from '#core/card/type.ts';
import { ruleSets } from '#core/facts/rule-sets.ts';
import { blocksOf, footOf } from '#islands/card/copy.ts';
import { randomFrom } from '../../core/kit/random.ts';
import { strings } from '../../content/words.ts';
import { anyChoices } from './choices.ts';
import { code, faults, madeOf, printed } from './faults.ts';

describe('forty cards', () => {
  const cards = Array.from({ length: 40 }, (_, k) => ({ k, units: k % 2 === 0 ? ('metric' as const) : ('imperial' as const), choices: anyChoices(randomFrom(1000 + k)) }));
  it.each(cards)('$k: nothing overlaps, is clipped, small, or left out without a word', ({ choices, units }) => expect(faults(choices, units)).toEqual([]));
  it('some fit and some do not, so that both were seen', () => {
    const over = cards.map(({ choices, units }) => madeOf(choices, units).over.length);
    expect(over.some((n) => n > 0)).toBe(true);
    expect(over.filter((n) => n === 0).length).toBeGreaterThan(5);
  });
});

const usual = (some: Partial<CardChoices['inputs']> = {}, blocks: CardChoices['blocks'] = usualBlocks): CardChoices => ({ blocks, inputs: { ...exampleIn('metric'), ...some }, calls: noCalls });

describe('the card one begins with', () => {
  it.each(['metric', 'imperial'] as const)('fits, %s, with the longest-named rule', (units) => {
    for (const { id } of [...ruleSets].sort((a, b) => b.title.length + b.edition.length - a.title.length - a.edition.length).slice(0, 6)) {
      const choices = { ...usual(), inputs: { ...exampleIn(units), ruleSet: id } };
      expect(madeOf(choices, units).over, id).toEqual([]);
      expect(faults(choices, units)).toEqual([]);
    }
  });
  it('fits on one side no longer, and the blocks that do not are named', () => {
    const { over, sides } = madeOf(usual({ sides: 'one' }), 'metric');
    expect(sides).toHaveLength(1);
    expect(over.length).toBeGreaterThan(0);
    expect(over.every((id) => usualBlocks.includes(id as never))).toBe(true);
  });
  it('every size holds one short block with its foot, on one side', () => {
    for (const size of Object.keys(cardSizes) as (keyof typeof cardSizes)[]) {
      const made = madeOf(usual({ size, sides: 'one', ruleSet: 'us-1910-333' }, ['out']), 'metric');
      expect([size, made.over, made.footOver]).toEqual([size, [], false]);
    }
  });
  it('room for a hole: nothing comes near it', () => {
    const { sides } = madeOf(usual({ size: 'index', hole: 'punched' }, ['lines', 'pole', 'out']), 'metric');
    for (const { width, placed } of sides) {
      expect(placed.some(({ of }) => of === 'hole')).toBe(true);
      const near = placed.filter((p) => p.of !== 'hole' && p.kind === 'type' && p.y - 4 < 8.5 && p.x < width / 2 + 3 && p.x + p.width > width / 2 - 3);
      expect(near).toEqual([]);
    }
  });
  it('words are at nine points and figures at eleven; small ones at seven and a half and nine', () => {
    const sizes = (type: 'plain' | 'small'): number[] => [...new Set(madeOf(usual({ type }), 'metric').sides.flatMap(({ placed }) => placed.flatMap((p) => (p.kind === 'type' ? [p.size] : []))))].sort((a, b) => a - b);
    expect(sizes('plain')).toEqual([7.5, 9, 11]);
    expect(sizes('small')).toEqual([7.5, 9]);
  });
  it('a foot that does not fit is said', () => {
    const blocks = blocksOf(usual(), 'metric');
    const foot = footOf(blocks, usual().inputs, printed);
    const many = { ...foot, lines: Array.from({ length: 40 }, () => foot.lines[0]!) };
    expect(layOut({ size: 'id1', sides: 'one', type: 'plain', hole: 'without' }, [], many).footOver).toBe(true);
    const wide = { code, lines: [[{ text: 'x'.repeat(200), as: 'word' as const }]] };
    expect(layOut({ size: 'id1', sides: 'one', type: 'plain', hole: 'without' }, [], wide).footOver).toBe(true);
  });
  it('a word, a column, a picture or a line to write on too wide for the card makes its block one that does not fit', () => {
    const long = [{ text: 'x'.repeat(80), as: 'word' as const }];
    const short = [{ text: 'x', as: 'word' as const }];
    const foot = { code: [], lines: [short] };
    const over = (part: Parameters<typeof layOut>[1][number]['parts'][number]) =>
      layOut({ size: 'a7', sides: 'one', type: 'plain', hole: 'without' }, [{ id: 'b', title: short, parts: [part] }], foot).over;
    const picture = { width: 90, height: 10, strokes: [], texts: [] };
    expect(over({ kind: 'text', words: long })).toEqual(['b']);
    expect(over({ kind: 'text', words: long, number: '1' })).toEqual(['b']);
    expect(over({ kind: 'table', head: [short, short], rows: [[long, short]] })).toEqual(['b']);
    expect(over({ kind: 'table', head: [long, short], rows: [[short, short]] })).toEqual(['b']);
    expect(over({ kind: 'pictures', each: [{ picture, words: short }] })).toEqual(['b']);
    expect(over({ kind: 'write', words: [{ text: 'x '.repeat(30), as: 'word' }] })).toEqual(['b']);
    expect(over({ kind: 'write', words: long })).toEqual(['b']);
    expect(over({ kind: 'text', words: short })).toEqual([]);
  });
});

describe('the words of a card', () => {
  const said = [...strings(words.blocks), ...strings(words.foot), ...strings(words.marks), ...strings(words.sheetWords)].map(([, text]) => text.replace(/\{\w+\}/g, ''));
  it('are set in faces that have every character of theirs, and of every rule', () =>
    expect([...said, ...ruleSets.flatMap(({ title, edition }) => [title, edition])].filter((text) => !canSet(text))).toEqual([]));
  it('are short', () => expect(said.filter((text) => text.length > 110)).toEqual([]));
  it('promise nothing', () => expect(said.filter((text) => /\bsafe/i.test(text))).toEqual([]));
  it('ask for no figure that is not there', () => {
    for (let k = 0; k < 30; k++) blocksOf(anyChoices(randomFrom(k)), 'metric');
    const hands = (magnitude: number): string => JSON.stringify(blocksOf(usual({ magnitude, uncertainty: magnitude / 3 }, ['hands']), 'metric'));
    expect([hands(0.3), hands(2), hands(4), hands(30)].every((text) => text.length > 50)).toBe(true);
  });
});
