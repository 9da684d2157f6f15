/** What a card says in figures is what the calculators say: asked for again here, one by one, by the list of all. */
import { describe, expect, it } from 'vitest';
import { blockFigures, type Cell, furthestKeepOut } from '#core/card/figures.ts';
import { blockIds, type BlockId, type CardInputs, exampleIn } from '#core/card/fields.ts';
import { ruleSets } from '#core/facts/rule-sets.ts';
import type { GotSet, QuantityOutput } from '#core/kit/calculator.ts';
import type { Answer, Inputs, Quantity } from '#core/kit/outcome.ts';
import { show } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { calculator, evaluate, example } from '#core/registry.ts';
import { anyChoices } from '../../islands/card/choices.ts';
import { randomFrom } from '../kit/random.ts';

const says = (id: string, given: Inputs, got: GotSet, output: string, system: UnitSystem): string => {
  const outcome = evaluate(id, { ...example(id), ...given }, got);
  return outcome.kind === 'answer' ? show(calculator(id)!.outputs[output] as QuantityOutput, outcome.outputs[output] as Quantity | null, system) : outcome.kind;
};
const texts = (rows: readonly (readonly Cell[])[]): string[] => rows.map((row) => ('say' in row[1]! ? row[1].say : row[1]!.text));
const at = (id: BlockId, some: Partial<CardInputs> = {}, system: UnitSystem = 'metric') => blockFigures(id, { ...exampleIn('metric'), ...some }, system);
const rising = (all: readonly number[]): number[] => [...all].sort((a, b) => a - b);

describe.each(['metric', 'imperial'] as const)('the figures of a card, %s', (system) => {
  const cards = Array.from({ length: 40 }, (_, k) => anyChoices(randomFrom(k + 1), { blocks: blockIds }).inputs);

  it('distances from lines, of the rule chosen', () => {
    for (const i of cards) {
      const shown = blockFigures('lines', i, system);
      const voltages = rising([...new Set([...i.voltages, ...(i.ownVoltage === null ? [] : [i.ownVoltage])])]);
      const expected = voltages.map((voltage) => says('approach-distance', { ruleSet: i.ruleSet, workingFrom: i.workingFrom, voltage, ownDistance: i.ownVoltage === voltage ? i.ownDistance : null }, 'exact', 'distance', system));
      expect(texts(shown.rows).slice(0, voltages.length).map((text) => (text === 'ask' ? 'outside' : text))).toEqual(expected);
    }
  });
  it('stand-off and highest cut', () => {
    for (const i of cards) {
      const { rows, figures } = blockFigures('pole', i, system);
      const given = { gripHeight: i.gripHeight, poleShortest: Math.min(2.3, i.poleLongest), poleLongest: i.poleLongest, landingReach: 0 };
      rising(i.cutHeights).forEach((cutHeight, k) => {
        const outcome = evaluate('stance', { ...example('stance'), ...given, cutHeight }, i.guess);
        const expected = outcome.kind !== 'answer' ? 'belowGrip' : outcome.findings.some(({ id }) => id === 'poleTooShort') ? 'tooHigh' : says('stance', { ...given, cutHeight }, i.guess, 'nearestStandOff', system);
        expect(texts(rows)[k]).toBe(expected);
      });
      expect(figures['highestCut']?.text).toBe(says('stance', { ...given, cutHeight: i.gripHeight + 2 }, i.guess, 'highestCut', system));
    }
  });
  it('bar, limbs, laterals', () => {
    for (const i of cards) {
      const bar = blockFigures('bar', i, system);
      expect(bar.figures['largestLimb']?.text).toBe(says('bar-length', { barLength: i.barLength }, i.guess, 'largestLimb', system));
      expect(texts(bar.rows)).toEqual(rising(i.limbs).map((limbDiameter) => says('bar-length', { limbDiameter }, i.guess, 'weightPerMetre', system)));
      expect(texts(blockFigures('lateral', i, system).rows)).toEqual(rising(i.parents).map((parentDiameter) => says('reduction', { parentDiameter, lateralDiameter: 10, rule: i.share }, i.guess, 'smallestLateral', system)));
    }
  });
  it('vibration and mix', () => {
    for (const i of cards) {
      const hands = blockFigures('hands', i, system);
      const given = { magnitude1: i.magnitude, minutes1: 0, magnitude2: null, minutes2: null, magnitude3: null, minutes3: null, nextMagnitude: Math.max(0.5, i.magnitude!), uncertainty: (100 * i.uncertainty!) / i.magnitude! };
      const expected = says('vibration', given, 'exact', 'minutesToLimit', system);
      if (expected === 'outside') expect(hands.says).toEqual(['beyond']);
      else expect([hands.figures['toAction']?.text, hands.figures['toLimit']?.text]).toEqual([says('vibration', given, 'exact', 'minutesToAction', system), expected]);
      expect(blockFigures('mix', i, system).figures['oil']?.text).toBe(says('fuel-mix', { fuel: i.fuel, ratio: i.ratio, battery: null, charge: null, load: null }, 'exact', 'oil', system));
    }
  });
});

describe('the keep-out of a card', () => {
  it('is no nearer than that of any limb of the list, whatever way it points', () => {
    const random = randomFrom(3);
    for (let k = 0; k < 12; k++) {
      const piece = 0.3 + random() * 7.7;
      const cutHeights = [1.2 + random() * 8, 1.2 + random() * 8];
      const shown = furthestKeepOut({ piece, cutHeights });
      for (const cutHeight of cutHeights) {
        const outcome = evaluate('drop-zone', { ...example('drop-zone'), cutHeight, limbLength: piece, spread: piece / 2, limbAngle: -60 + random() * 140 }, 'exact');
        if (outcome.kind === 'answer') expect(shown.high).toBeGreaterThanOrEqual((outcome.outputs['keepOut'] as Quantity).value - 1e-9);
      }
      expect(furthestKeepOut({ piece, cutHeights })).toBe(shown);
    }
  });
  it('a short piece from a low cut: the distance for bystanders', () => expect(at('out').figures['keepOut']?.text).toBe('15.0\u00a0m'));
});

describe('what goes with a figure', () => {
  it('a figure that was not seen in its source carries how it is known', () => {
    for (const set of ruleSets) {
      for (const [k, row] of at('lines', { ruleSet: set.id, voltages: [0.4, 11, 33, 132] }).rows.entries()) {
        const cell = row[1]!;
        if ('say' in cell || k >= 4) continue;
        const band = evaluate('approach-distance', { ...example('approach-distance'), ruleSet: set.id, voltage: [0.4, 11, 33, 132][k]! }, 'exact') as Answer;
        expect(cell.known === 'published', `${set.id} ${k}`).toBe(!band.findings.some(({ id }) => id === 'unseen'));
      }
    }
  });
  it('no rule: the strictest, and whether any source of it was seen', () => {
    const { rows, says: said } = at('lines', { voltages: [11] });
    expect(said).toContain('noSet');
    const asked = (ruleSet: string): Answer => evaluate('approach-distance', { ...example('approach-distance'), ruleSet, voltage: 11 }, 'exact') as Answer;
    const { value } = asked('none').outputs['distance'] as Quantity;
    const seen = ruleSets.map(({ id }) => asked(id)).some(({ outputs, findings }) => (outputs['setDistance'] as Quantity).value === value && !findings.some(({ id }) => id === 'unseen'));
    expect((rows[0]![1] as { known: string }).known === 'published').toBe(seen);
  });
  it('the operator’s own figure is marked where it leads, and said where it does not', () => {
    const larger = at('lines', { ruleSet: 'us-1910-333', voltages: [11], ownVoltage: 11, ownDistance: 5 });
    expect(larger.rows).toEqual([[expect.objectContaining({ text: '11\u00a0kV' }), { text: '5.00\u00a0m', known: 'entered' }]]);
    const smaller = at('lines', { ruleSet: 'us-1910-333', voltages: [11], ownVoltage: 33, ownDistance: 1 });
    expect(smaller.rows).toHaveLength(2);
    expect(smaller.says).toContain('ownSmaller');
    expect((smaller.rows[1]![1] as { known: string }).known).toBe('published');
  });
  it('a voltage beyond the rule, and one that nobody told', () => {
    const beyond = ruleSets.find(({ persons }) => persons.bands.at(-1)!.upTo !== null)!;
    expect(texts(at('lines', { ruleSet: beyond.id, voltages: [1200] }).rows)[0]).toBe('ask');
    const kept = ruleSets.find(({ unknown }) => unknown !== undefined);
    if (kept) expect(at('lines', { ruleSet: kept.id }).says).toContain('untoldKept');
    expect(at('lines').says).toContain('untoldStop');
    expect(at('lines', { workingFrom: 'platform' }).says[0]).toBe('platform');
    expect(ruleSets.some(({ unknown }) => unknown !== undefined)).toBe(true);
  });
  it('which face first: from below where the tip is free, from above where both ends hang', () => {
    // Common practice: the first cut goes into the squeezed side.
    expect(at('cuts').says).toEqual(['free-bottom', 'hungBoth-top']);
  });
  it('the angle in words and degrees, and a cut below the hand', () => {
    expect(at('pole').figures['back']?.text).toBe('1/2');
    expect(at('pole').figures['angle']?.text).toBe('60°');
    expect(texts(at('pole', { gripHeight: 1.6, cutHeights: [1.2], guess: 'measured' }).rows)).toEqual(['belowGrip']);
  });
  it('a saw that fills no day, one that fills only the action value, and one beyond the method', () => {
    const hands = (magnitude: number): readonly string[] => at('hands', { magnitude, uncertainty: magnitude === 30 ? 10 : 0 }).says;
    expect([0.4, 2, 4, 30].map((m) => hands(m)[0])).toEqual(['neither', 'actionOnly', 'minutes', 'beyond']);
  });
  it('how far from a fallen line; nothing for blocks without figures', () => {
    expect(at('touch').figures['keep']?.text).toBe('10.0\u00a0m');
    for (const id of ['plan', 'last', 'stop'] as const) expect(at(id)).toEqual({ figures: {}, rows: [], says: [] });
  });
});
