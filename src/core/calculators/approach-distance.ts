/** How far from this line? */
import { type RuleSet, ruleSets } from '../facts/rule-sets.ts';
import { asked, isPublished, type Line, strictest } from '../formulas/approach.ts';
import { answer, defineCalculator, type InputProblem, outside, type RawStep } from '../kit/calculator.ts';
import { choice, optionalQuantity } from '../kit/inputs.ts';

/** No rule set chosen: the strictest of all. */
export const noRuleSet = 'none';

/** In threes: which set, at which voltage, and what it says. */
type Found = { distance: number; setDistance: number | null; set: RuleSet | null; working: RawStep[]; seen: boolean };

const metres = { kind: 'quantity', unit: 'm', step: 0.01, imperialStep: 1, protects: 'up' } as const;

export const approachDistance = defineCalculator({
  id: 'approach-distance',
  inputs: {
    ruleSet: choice([noRuleSet, ...ruleSets.map((set) => set.id)], noRuleSet),
    workingFrom: choice(['ground', 'platform'], 'ground'),
    lineKind: choice(['threePhase', 'singleWire', 'rail'], 'threePhase'),
    toldBy: choice(['operator', 'look', 'nobody'], 'operator'),
    voltage: optionalQuantity('kV', { min: 0.05, max: 1200, step: 0.01, example: 11 }),
    ownDistance: optionalQuantity('m', { min: 0.1, max: 100, step: 0.01, example: null }),
  },
  outputs: {
    distance: { ...metres, moves: { voltage: 'up', ownDistance: 'up' } },
    setDistance: { ...metres, moves: { voltage: 'up' } },
  },
  lead: ['distance'],
  exampleGot: 'exact',
  middle: { countedVoltage: 'kV', strictestDistance: { unit: 'm', protects: 'up' }, spotterDistance: { unit: 'm', protects: 'up' } },
  findings: {
    unknownVoltage: { level: 'stop' },
    ownSmaller: { level: 'stop' },
    noSet: { level: 'caution' },
    guessedVoltage: { level: 'caution' },
    unseen: { level: 'caution' },
    aboveInside: { level: 'caution' },
    movementOnTop: { level: 'caution' },
    noPlatform: { level: 'caution' },
    spotter: { level: 'caution' },
    ownFigure: { level: 'note' },
    plantLeads: { level: 'note' },
    filledEdges: { level: 'note' },
  },
  limits: ['rail', 'unknownVoltage', 'aboveLastBand', 'belowFirstBand'],
  relate: ({ toldBy, voltage }): InputProblem[] =>
    toldBy === 'operator' && voltage === null ? [{ input: 'voltage', problem: 'voltageMissing', values: {} }] : [],
  compute: (i) => {
    if (i.lineKind === 'rail') return outside('rail');
    const set = ruleSets.find(({ id }) => id === i.ruleSet) ?? null;
    const known = i.toldBy === 'operator' ? (i.voltage as number) : null;
    const from = i.workingFrom;

    let found: Found;
    let plantLeads = false;
    let filled = false;
    let spotter: number | undefined;
    if (known === null) {
      if (set?.unknown === undefined) return outside('unknownVoltage');
      found = {
        distance: set.unknown, setDistance: set.unknown, set, seen: true,
        working: [{ id: 'unknownDefault', values: {}, result: { name: 'setDistance', value: set.unknown } }],
      };
    } else {
      const line: Line = { kind: i.lineKind, voltage: known };
      if (set === null) {
        const most = strictest(ruleSets, line, from) as { set: RuleSet; distance: number };
        found = {
          distance: most.distance, setDistance: null, set: null, seen: true,
          working: [{ id: 'strictestOfAll', values: { voltage: known }, result: { name: 'strictestDistance', value: most.distance } }],
        };
      } else {
        const own = asked(set, line, from);
        if (own === 'below') return outside('belowFirstBand', { voltage: known });
        if (own === 'above') return outside('aboveLastBand', { voltage: known });
        const seen = isPublished(own.band);
        const most = seen ? null : strictest(ruleSets, line, from, isPublished);
        const floor = most?.distance ?? 0;
        found = {
          distance: Math.max(own.distance, floor), setDistance: own.distance, set, seen,
          working: [
            { id: set[own.table]?.basis === 'to-ground' ? 'toGround' : 'betweenPhases', values: { voltage: known }, result: { name: 'countedVoltage', value: own.voltage } },
            { id: 'setDistance', values: { countedVoltage: own.voltage }, result: { name: 'setDistance', value: own.distance } },
            ...(most ? [{ id: 'strictestPublished', values: { setDistance: own.distance, strictestDistance: floor }, result: { name: 'distance', value: Math.max(own.distance, floor) } }] : []),
          ],
        };
        plantLeads = own.table === 'plant';
        filled = set.edges === 'filled';
        spotter = own.band.spotter;
      }
    }

    const own = i.ownDistance;
    const distance = Math.max(found.distance, own ?? 0);
    return answer(
      { distance, setDistance: found.setDistance },
      [
        known === null && { id: 'unknownVoltage', values: { distance } },
        own !== null && own < found.distance && { id: 'ownSmaller', values: { ownDistance: own, distance } },
        set === null && { id: 'noSet', values: { distance } },
        i.toldBy === 'look' && { id: 'guessedVoltage' },
        !found.seen && { id: 'unseen', values: { setDistance: found.setDistance as number, distance } },
        set?.above === 'inside' && { id: 'aboveInside', values: { distance } },
        set?.movement === 'on-top' && { id: 'movementOnTop', values: { distance } },
        known !== null && set !== null && from === 'platform' && !set.plant && !set.counts.includes('platform') && { id: 'noPlatform', values: { distance } },
        spotter !== undefined && { id: 'spotter', values: { distance, spotterDistance: spotter } },
        own !== null && own >= found.distance && { id: 'ownFigure', values: { ownDistance: own } },
        plantLeads && { id: 'plantLeads', values: { distance } },
        filled && { id: 'filledEdges' },
      ],
      [
        ...found.working,
        ...(own === null ? [] : [{ id: 'ownDistance', values: { ownDistance: own }, result: { name: 'distance', value: distance } }]),
      ],
    );
  },
});
