/**
 * Distances by rule set. Expected values are typed here from the sources named in shared/tables/rules, at both edges of
 * every published band and just below and above; they are not read from the files under test.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { approachDistance as calculator } from '#core/calculators/approach-distance.ts';
import { ruleSets } from '#core/facts/rule-sets.ts';
import { evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { readLink, writeLink } from '#core/kit/link.ts';
import { gotSets, validInputs } from '../kit/arbitrary.ts';

const base = { ruleSet: 'none', workingFrom: 'ground', lineKind: 'threePhase', toldBy: 'operator', voltage: 11, ownDistance: null } as const;
const outcome = (some: Inputs) => evaluate(calculator, { ...base, ...some }, 'exact');
const figure = (some: Inputs, name = 'distance'): number | string | null => {
  const found = outcome(some);
  if (found.kind === 'problems') throw new Error(JSON.stringify(found.problems));
  if (found.kind === 'outside') return found.limit;
  return (found.outputs[name] as Quantity | null)?.planOn ?? null;
};
const findings = (some: Inputs): string[] => {
  const found = outcome(some);
  return found.kind === 'answer' ? found.findings.map(({ id }) => id) : [];
};
const hair = 1e-6;

/** Published bands: [set, lower edge, upper edge, distance, whether the upper edge belongs to the band]. */
const bands: [string, number, number | null, number, boolean?][] = [
  ['au-sa', 0, 0.415, 3], ['au-sa', 0.415, 11, 3], ['au-sa', 11, 33, 3], ['au-sa', 33, 66, 4], ['au-sa', 66, 132, 5], ['au-sa', 132, 275, 6],
  ['au-sa-assessed', 0, 0.415, 1], ['au-sa-assessed', 0.415, 11, 2], ['au-sa-assessed', 11, 33, 3], ['au-sa-assessed', 33, 66, 4],
  ['au-sa-assessed', 66, 132, 5], ['au-sa-assessed', 132, 275, 6],
  ['au-wa', 0, 33, 3], ['au-wa', 33, 550, 6],
  ['au-vic', 66, 500, 8],
  ['au-tas', 0, 66, 3], ['au-tas', 66, 220, 8],
  ['au-act', 0, 1, 1.5], ['au-act', 1, 22, 2], ['au-act', 22, 66, 4], ['au-act', 66, 132, 4],
  ['au-qld', 0, 132, 3], ['au-qld', 132, 330, 6],
  ['nz', 0, 1, 4],
  ['ca-ab', 0, 0.75, 1], ['ca-ab', 0.75, 40, 3], ['ca-ab', 40, 72, 3.5], ['ca-ab', 72, 144, 4], ['ca-ab', 144, 260, 5], ['ca-ab', 260, 500, 7],
  ['ca-bc', 0.75, 75, 3], ['ca-bc', 75, 250, 4.5],
  ['ca-qc', 0, 125, 3, false], ['ca-qc', 125, 250, 5], ['ca-qc', 250, 550, 8], ['ca-qc', 550, null, 12],
  ['ca-qc-pruning', 0.75, 34.5, 3],
  ['de', 0, 1, 1], ['de', 1, 110, 3], ['de', 110, 220, 4], ['de', 220, 380, 5],
  ['fr', 0, 50, 3, false], ['fr', 50, 500, 5],
  ['us-california', 0.6, 50, 3.048],
];

describe.each(bands)('%s over %s up to %s kV: %s m', (ruleSet, over, upTo, distance, including = true) => {
  it('just over its lower edge and between', () => {
    expect(figure({ ruleSet, voltage: Math.max(over, 0.05) + hair })).toBeCloseTo(distance, 9);
    expect(figure({ ruleSet, voltage: (Math.max(over, 0.05) + (upTo ?? 1200)) / 2 })).toBeCloseTo(distance, 9);
  });
  it('up to its upper edge', () => {
    if (upTo === null) return expect(figure({ ruleSet, voltage: 1200 })).toBe(distance);
    expect(figure({ ruleSet, voltage: upTo - hair })).toBeCloseTo(distance, 9);
    if (including) expect(figure({ ruleSet, voltage: upTo })).toBeCloseTo(distance, 9);
    else expect(figure({ ruleSet, voltage: upTo })).toBeGreaterThan(distance);
    const beyond = figure({ ruleSet, voltage: upTo + hair });
    if (typeof beyond === 'number') expect(beyond).toBeGreaterThanOrEqual(distance);
    else expect(beyond).toBe('aboveLastBand');
  });
});

describe('Above the last band and below the first', () => {
  it.each([['au-sa', 275], ['au-wa', 550], ['au-vic', 500], ['au-tas', 220], ['au-act', 132], ['ca-ab', 500], ['ca-bc', 550], ['de', 380], ['fr', 500], ['gb', 400], ['ie', 400], ['nz', 110], ['ca-qc-pruning', 34.5], ['au-nsw', 500], ['au-qld', 500], ['eu-en-50110', 700], ['us-tree-standard', 800]])(
    '%s over %s kV is outside', (ruleSet, edge) => expect(figure({ ruleSet, voltage: edge + hair })).toBe('aboveLastBand'));
  it.each([['ca-bc', 0.75], ['us-california', 0.6], ['us-tree-standard', 1]])('%s up to %s kV is outside', (ruleSet, edge) =>
    expect(figure({ ruleSet, voltage: edge })).toBe('belowFirstBand'));
  it('where the lower edge belongs to the band', () => expect(figure({ ruleSet: 'ca-qc-pruning', voltage: 0.75 })).toBe(3));
});

describe('USA, not electrically qualified: 10 ft to 50 kV to ground, 4 in more for every started 10 kV', () => {
  const foot = 0.3048;
  // Feet for nominal three-phase lines: by hand from the paragraph, whole steps.
  it.each([[12.47, 10], [34.5, 10], [69, 10], [115, 10 + 8 / 12], [138, 11], [161, 11 + 8 / 12], [230, 13], [345, 15], [500, 18], [765, 23 + 4 / 12]])(
    '%s kV: %s ft', (voltage, feet) => expect(figure({ ruleSet: 'us-1910-333', voltage })).toBeCloseTo((feet as number) * foot, 9));
  it('exactly 50 kV to ground is still the flat distance; a hair more is a whole step', () => {
    const at = (voltage: number) => figure({ ruleSet: 'us-1910-333', lineKind: 'singleWire', voltage });
    expect(at(50)).toBeCloseTo(10 * foot, 12);
    expect(at(50 + hair)).toBeCloseTo((10 + 4 / 12) * foot, 9);
    expect(at(60)).toBeCloseTo((10 + 4 / 12) * foot, 9);
    expect(at(60 + hair)).toBeCloseTo((10 + 8 / 12) * foot, 9);
    expect(figure({ ruleSet: 'us-1910-333', voltage: 50 * Math.sqrt(3) })).toBeCloseTo(10 * foot, 9);
  });
  it('never less than the metres the paragraph prints beside the feet, to the centimetre shown', () => {
    for (const voltage of [11, 115, 230, 345, 500, 765]) {
      const steps = Math.max(0, Math.ceil((voltage / Math.sqrt(3) - 50) / 10));
      expect(Math.ceil((figure({ ruleSet: 'us-1910-333', voltage }) as number) * 100 - 1e-9)).toBeGreaterThanOrEqual(305 + 10 * steps);
    }
  });
  it('from a platform the voltage is counted between phases, which is the larger', () => {
    expect(figure({ ruleSet: 'us-1910-333', workingFrom: 'platform', voltage: 230 })).toBeCloseTo(16 * foot, 9);
    expect(findings({ ruleSet: 'us-1910-333', workingFrom: 'platform', voltage: 230 })).toContain('plantLeads');
  });
});

describe('Unknown and guessed voltage', () => {
  it.each(ruleSets.map(({ id }) => id))('%s never yields the small figure', (ruleSet) => {
    const wanted: Record<string, number> = { 'ca-ab': 7, de: 5 };
    for (const toldBy of ['look', 'nobody']) {
      for (const voltage of [null, 0.4, 11]) expect(figure({ ruleSet, toldBy, voltage })).toBe(wanted[ruleSet] ?? 'unknownVoltage');
    }
  });
  it('no set chosen: not permitted until the operator says', () => expect(figure({ toldBy: 'nobody', voltage: null })).toBe('unknownVoltage'));
  it('where a set has its own default it still stops, and says a guess is not knowing', () => {
    expect(findings({ ruleSet: 'de', toldBy: 'look', voltage: 0.4 })).toEqual(expect.arrayContaining(['unknownVoltage', 'guessedVoltage']));
  });
  it('told by the operator but not entered is a problem at its field', () =>
    expect(outcome({ voltage: null })).toEqual({ kind: 'problems', problems: [{ input: 'voltage', problem: 'voltageMissing', values: {} }] }));
  it('rail is outside whatever else is said', () => expect(figure({ lineKind: 'rail', ruleSet: 'de' })).toBe('rail'));
});

describe('The strict side wins', () => {
  const volts = [0.23, 0.4, 1, 3.3, 11, 22, 33, 50, 66, 110, 132, 220, 275, 330, 400, 500, 765];
  it.each(volts)('%s kV: no rule set chosen gives the largest of all, marked', (voltage) => {
    const each = ruleSets.map(({ id }) => figure({ ruleSet: id, voltage })).filter((x) => typeof x === 'number');
    expect(figure({ voltage })).toBeGreaterThanOrEqual(Math.max(...each));
    expect(findings({ voltage })).toContain('noSet');
  });

  /** The strictest published figure at a voltage, from the table of this test and the US paragraph. */
  const published = (voltage: number): number =>
    Math.max(
      ...bands.filter(([, over, upTo, , including = true]) => voltage > over && (upTo === null || voltage < upTo || (voltage === upTo && including))).map(([, , , d]) => d),
      (10 + (4 / 12) * Math.max(0, Math.ceil((voltage / Math.sqrt(3) - 50) / 10))) * 0.3048,
    );
  it.each(['au-nsw', 'au-wa-any-work', 'ca-on', 'eu-en-50110', 'gb', 'ie', 'it', 'us-tree-standard'])(
    '%s, not seen in its source, never yields less than the strictest published set', (ruleSet) => {
      for (const voltage of volts) {
        const found = figure({ ruleSet, voltage });
        if (typeof found !== 'number') continue;
        expect(found).toBeGreaterThanOrEqual(published(voltage) - 1e-9);
        expect(findings({ ruleSet, voltage })).toContain('unseen');
      }
    });
  it('the figure of the set itself stands beside', () => {
    expect(figure({ ruleSet: 'au-nsw', voltage: 33 }, 'setDistance')).toBe(3);
    expect(figure({ ruleSet: 'none', voltage: 33 }, 'setDistance')).toBeNull();
  });
  it('a platform takes the larger of persons and plant (South Australia: lines on towers)', () => {
    expect(figure({ ruleSet: 'au-sa', voltage: 132 })).toBe(5);
    expect(figure({ ruleSet: 'au-sa', voltage: 132, workingFrom: 'platform' })).toBe(8);
    expect(figure({ ruleSet: 'au-sa', voltage: 0.4, workingFrom: 'platform' })).toBe(3);
    expect(figure({ ruleSet: 'au-sa', voltage: 300, workingFrom: 'platform' })).toBe('aboveLastBand');
  });
});

describe('A rule that does not name platforms', () => {
  it('says so from a platform alone', () => {
    expect(findings({ ruleSet: 'au-wa', voltage: 33, workingFrom: 'platform' })).toContain('noPlatform');
    expect(findings({ ruleSet: 'au-wa', voltage: 33, workingFrom: 'ground' })).not.toContain('noPlatform');
    for (const ruleSet of ['au-sa', 'ca-bc', 'de', 'us-1910-333']) expect(findings({ ruleSet, voltage: 33, workingFrom: 'platform' })).not.toContain('noPlatform');
  });
});

describe('The operator’s own figure', () => {
  it('smaller than the set’s: a stop, and the set’s figure stays', () => {
    expect(figure({ ruleSet: 'au-sa', voltage: 33, ownDistance: 1 })).toBe(3);
    expect(findings({ ruleSet: 'au-sa', voltage: 33, ownDistance: 1 })[0]).toBe('ownSmaller');
  });
  it('larger: it leads', () => {
    expect(figure({ ruleSet: 'au-sa', voltage: 33, ownDistance: 6.4 })).toBe(6.4);
    expect(findings({ ruleSet: 'au-sa', voltage: 33, ownDistance: 6.4 })).toContain('ownFigure');
  });
  it('does not make an unknown voltage known', () => expect(figure({ ruleSet: 'au-sa', toldBy: 'nobody', voltage: null, ownDistance: 20 })).toBe('unknownVoltage'));
});

describe('A single wire with earth return', () => {
  // South Australia prints 7.6-11 kV and 19-33 kV as one row each: a wire's own voltage and the line it belongs to.
  it.each([[12.7, 22], [19.1, 33], [6.35, 11]])('%s kV to ground is counted as %s kV', (toGround, between) => {
    for (const { id } of ruleSets.filter((set) => set.persons.basis === 'between-phases')) {
      expect(figure({ ruleSet: id, lineKind: 'singleWire', voltage: toGround })).toBe(figure({ ruleSet: id, voltage: between }));
    }
  });
  it('one that is not among the usual ones is counted with √3', () =>
    expect(figure({ ruleSet: 'it', lineKind: 'singleWire', voltage: 18 }, 'setDistance')).toBe(5));
});

describe('Over the whole input box', () => {
  it('answers with finite figures, or says outside; survives JSON; comes back from its link', () => {
    fc.assert(fc.property(validInputs(calculator), gotSets(calculator), (inputs, got) => {
      const found = evaluate(calculator, inputs, got);
      expect(['answer', 'outside']).toContain(found.kind);
      expect(JSON.parse(JSON.stringify(found))).toEqual(found);
      if (found.kind === 'answer') expect((found.outputs['distance'] as Quantity).planOn).toBeGreaterThan(0);
      const link = readLink(calculator, writeLink(calculator, inputs, got));
      expect(link.kind === 'given' && link.inputs).toEqual(inputs);
    }), { numRuns: 500 });
  });
  it('a higher voltage never needs less within a set, from the ground or a platform', () => {
    const volt = fc.double({ min: 0.05, max: 1200, noNaN: true });
    fc.assert(fc.property(fc.constantFrom(...calculator.inputs.ruleSet.options), fc.constantFrom('ground', 'platform'), fc.constantFrom('threePhase', 'singleWire'), volt, volt,
      (ruleSet, workingFrom, lineKind, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)].map((voltage) => figure({ ruleSet, workingFrom, lineKind, voltage }));
        if (typeof low === 'number' && typeof high === 'number') expect(high).toBeGreaterThanOrEqual(low);
        if (low === 'aboveLastBand') expect(high).toBe('aboveLastBand');
      }), { numRuns: 2000 });
  });
});
