import { describe, expect, it } from 'vitest';
import { blockIds, cardFields, exampleIn, inputsFor, isCall, noCalls, relateCard, usualBlocks } from '#core/card/fields.ts';
import { type CardState, readCard, writeCard } from '#core/card/link.ts';
import { ruleMark, ruleSets } from '#core/facts/rule-sets.ts';
import type { AnyInput } from '#core/kit/calculator.ts';
import { randomFrom as seeded } from '../kit/random.ts';

const example: CardState = { blocks: usualBlocks, inputs: exampleIn('metric'), calls: noCalls, units: 'metric' };
const problemsOf = (query: string): string[] => {
  const read = readCard(query);
  return read.kind === 'card' ? read.problems.map(({ input, problem }) => `${input}: ${problem}`) : ['none'];
};
const without = (query: string, key: string): string => query.split('&').filter((pair) => !pair.startsWith(`${key}=`)).join('&');
const changed = (query: string, key: string, value: string): string => query.split('&').map((pair) => (pair.startsWith(`${key}=`) ? `${key}=${value}` : pair)).join('&');

describe('the link of a card', () => {
  it('holds every choice that the blocks use, whatever they are', () => {
    const random = seeded(8);
    const all = Object.entries(cardFields.inputs as { [name: string]: AnyInput });
    const between = (min: number, max: number): number => Number((min + random() * (max - min)).toFixed(3));
    for (let k = 0; k < 300; k++) {
      const blocks = blockIds.filter(() => random() < 0.5);
      const used = new Set<string>(inputsFor(blocks));
      const inputs = Object.fromEntries(all.map(([name, input]) => {
        if (!used.has(name)) return [name, input.example];
        if (input.optional && random() < 0.4) return [name, null];
        if (input.kind === 'choice') return [name, input.options[Math.floor(random() * input.options.length)]];
        if (input.kind === 'quantity') return [name, between(input.min, input.max)];
        return [name, Array.from({ length: 1 + Math.floor(random() * input.longest) }, () => between(input.min, input.max))];
      })) as CardState['inputs'];
      const calls = blocks.includes('touch') && random() < 0.7 ? { emergency: '112', operator: '+44 (0)800 40 40 90' } : noCalls;
      const state: CardState = { blocks, inputs, calls, units: random() < 0.5 ? 'metric' : 'imperial' };
      const read = readCard(`?${writeCard(state)}`);
      expect(read).toEqual({ kind: 'card', state, texts: {}, problems: [], ruleChanged: false });
    }
  });

  it('is short enough for a code that a phone reads off a card', () => {
    // ISO/IEC 18004: version 13 at level L holds 425 bytes.
    const everything = { ...example, blocks: blockIds, inputs: { ...example.inputs, magnitude: 4, uncertainty: 1.5, ratio: 50, ownDistance: 4.5, ownVoltage: 11 }, calls: { emergency: '112', operator: '0800 123 456' } };
    expect(`https://a-host-of-some-length.example/handbook/card/?${writeCard(everything)}`.length).toBeLessThan(425);
  });

  it('nothing of a card in the address is none', () => {
    for (const query of ['', '?', '?units=imperial', '?v=1&utm=x', '?frame=1']) expect(problemsOf(query)).toEqual(['none']);
  });

  const good = writeCard(example);
  it.each([
    ['without a version it is the first', without(good, 'v'), []],
    ['of a newer version', changed(good, 'v', '2'), ['v: newerLink']],
    ['version no number', changed(good, 'v', 'x'), ['v: badLink']],
    ['version nought', changed(good, 'v', '0'), ['v: badLink']],
    ['two versions', `${good}&v=1`, ['v: badLink']],
    ['shape missing', without(good, 'card'), ['card: missing']],
    ['shape cut short', changed(good, 'card', 'a6.two'), ['card: badLink']],
    ['a size that is not', changed(good, 'card', 'a5.two.plain.without.a4.year'), ['size: notChoice']],
    ['shape twice', `${good}&card=a7.two.plain.without.a4.year`, ['card: repeated']],
    ['blocks missing', without(good, 'blocks'), ['blocks: missing']],
    ['a block that is not', changed(good, 'blocks', 'lines_pole_constructor'), ['blocks: unknownBlock']],
    ['a block twice', changed(good, 'blocks', 'lines_lines'), ['blocks: repeated']],
    ['rule missing', without(good, 'rules'), ['ruleSet: missing']],
    ['a rule that is not', changed(good, 'rules', 'atlantis.00000000'), ['ruleSet: unknownRule']],
    ['a figure missing', without(good, 'pole'), ['poleLongest: missing']],
    ['a figure twice', `${good}&pole=4`, ['poleLongest: repeated']],
    ['an empty figure', changed(good, 'pole', ''), ['poleLongest: missing']],
    ['no figure', changed(good, 'pole', 'NaN'), ['poleLongest: notNumber']],
    ['a list with a hole', changed(good, 'kv', '11__33'), ['voltages: notNumber']],
    ['a choice that is not', changed(good, 'from', 'aeroplane'), ['workingFrom: notChoice']],
    ['hostile: mark-up for a number to call', `${good}&call=%3Cscript%3Ealert(1)%3C%2Fscript%3E`, ['emergency: notCall']],
    ['a number to call twice', `${good}&call=112&call=999`, ['emergency: repeated']],
    ['escapes that do not decode', changed(good, 'pole', '%E0%A4%A'), ['poleLongest: notNumber']],
  ])('%s', (_, query, problems) => expect(problemsOf(query)).toEqual(problems));

  it('keeps what could not be read, as it was', () => {
    const read = readCard(changed(good, 'cuts', '2.5_high'));
    expect(read.kind === 'card' && read.texts).toEqual({ cutHeights: '2.5 high' });
  });

  it('says where the figures of the rule have changed since', () => {
    const set = ruleSets[0]!;
    const mark = ruleMark(set);
    const read = (rules: string) => {
      const found = readCard(changed(good, 'rules', rules));
      return found.kind === 'card' && [found.state.inputs['ruleSet'], found.ruleChanged];
    };
    expect(read(mark)).toEqual([set.id, false]);
    expect(read(`${set.id}.00000000`)).toEqual([set.id, true]);
  });

  it('never throws, whatever it is given', () => {
    const random = seeded(9);
    const bits = ['v', 'card', 'blocks', 'rules', 'kv', 'pole', '=', '&', '_', '.', '%', '%00', '1', '-1', '1e999', 'lines', '__proto__', '<', '"', '\u0000', '💥', '+'];
    for (let k = 0; k < 3000; k++) {
      const query = Array.from({ length: 1 + Math.floor(random() * 12) }, () => bits[Math.floor(random() * bits.length)]).join('');
      const read = readCard(query);
      if (read.kind === 'card') writeCard(read.state);
    }
  });
});

describe('what belongs together', () => {
  const i = exampleIn('metric');
  it.each([
    [['hands'], {}, ['magnitude: missing', 'uncertainty: missing']],
    [['hands'], { magnitude: 4, uncertainty: 5 }, ['uncertainty: tooUncertain']],
    [['hands'], { magnitude: 4, uncertainty: 1 }, []],
    [['mix'], {}, ['ratio: missing']],
    [['mix'], { ratio: 50 }, []],
    [['lines'], { ownDistance: 4 }, ['ownVoltage: ownPair']],
    [['lines'], { ownVoltage: 11 }, ['ownDistance: ownPair']],
    [['lines'], { ownVoltage: 11, ownDistance: 4 }, []],
    [['stop'], { ownVoltage: 11 }, []],
  ] as const)('%j with %j: %j', (blocks, some, problems) =>
    expect(relateCard(blocks, { ...i, ...some }).map(({ input, problem }) => `${input}: ${problem}`)).toEqual(problems));

  it('numbers to call', () => {
    for (const yes of ['', '112', '000', '+1 (800) 555-0100', '0800 40 40 90']) expect(isCall(yes), yes).toBe(true);
    for (const no of ['abc', '-', '<b>1</b>', '1'.repeat(25), '112;rm', '1\n1']) expect(isCall(no), no).toBe(false);
  });

  it('round figures to begin with, in either unit system, within their fields', () => {
    for (const units of ['metric', 'imperial'] as const) {
      const read = readCard(writeCard({ ...example, blocks: blockIds.filter((id) => id !== 'hands' && id !== 'mix'), inputs: exampleIn(units), units }));
      expect(read.kind === 'card' && read.problems).toEqual([]);
    }
  });
});
