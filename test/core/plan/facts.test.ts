/** The shape of a plan: what a new one holds, what a file may bring, what is said at which field. */
import { describe, expect, it } from 'vitest';
import demo from '#content/plan/demo.json';
import { newLimb, newPlan, type Plan, turnedBy } from '#core/plan/facts.ts';
import { problemsOf, readPlan, shapeProblems } from '#core/plan/problems.ts';
import { evaluate, example } from '#core/registry.ts';

const given = (change: (plan: any) => void): unknown => {
  const plan = structuredClone(demo);
  change(plan);
  return plan;
};
const read = (data: unknown): Plan => {
  const found = readPlan(data);
  if (found.kind !== 'plan') throw new Error(JSON.stringify(found.problems));
  return found.plan;
};

describe('a plan', () => {
  it('new, has the shape of one, and says which figures it wants', () => {
    const plan = newPlan('a', 'b');
    expect(shapeProblems(plan)).toEqual([]);
    expect(new Set(problemsOf(plan).map((p) => p.problem))).toEqual(new Set(['missing']));
    expect(problemsOf(plan).map((p) => p.at)).toEqual(expect.arrayContaining(['facts.poleLongest', 'facts.lineHeight', 'limbs.0.facts.cutHeight']));
    expect(problemsOf(plan).map((p) => p.at)).not.toContain('facts.ownDistance');
    // Nobody has told the voltage until the reader says so; then it is wanted.
    expect(problemsOf(plan).map((p) => p.at)).not.toContain('facts.voltage');
    expect(problemsOf({ ...plan, choices: { ...plan.choices, toldBy: 'operator' } }).map((p) => p.at)).toContain('facts.voltage');
  });
  it('with no wires and on the ground wants no figure of either', () => {
    const plan = newPlan('a', 'b');
    const at = problemsOf({ ...plan, choices: { ...plan.choices, wires: 'no' } }).map((p) => p.at);
    expect(at.filter((path) => /line|voltage|movement|boom/.test(path))).toEqual([]);
    const high = { ...plan, choices: { ...plan.choices, workingFrom: 'platform' }, facts: { ...plan.facts, boomReach: { value: null, got: 'judged' as const } } };
    expect(problemsOf(high).map((p) => p.at)).toContain('facts.boomReach');
  });
  it('the invented one is whole, survives JSON, and can be worked out', () => {
    expect(read(JSON.parse(JSON.stringify(demo)))).toEqual(demo);
    expect(problemsOf(read(demo))).toEqual([]);
  });
  it('keeps what was typed and cannot be read, and says it at its field', () => {
    const plan = read(given((p) => (p.limbs[1].facts.cutHeight = { value: null, got: 'judged', text: 'three or so' })));
    expect(plan.limbs[1]?.facts.cutHeight.text).toBe('three or so');
    expect(problemsOf(plan)).toEqual([{ at: 'limbs.1.facts.cutHeight', problem: 'notNumber', values: {} }]);
  });
  it('says what is out of range, or no option', () => {
    const plan = read(given((p) => {
      p.facts.lineHeight.value = 61;
      p.limbs[0].facts.limbLength.value = 0.1;
      p.choices.ruleSet = 'nowhere';
      p.limbs[2].choices.support = 'glued';
    }));
    expect(problemsOf(plan).map(({ at, problem }) => [at, problem])).toEqual([
      ['choices.ruleSet', 'notChoice'], ['facts.lineHeight', 'tooLarge'], ['limbs.0.facts.limbLength', 'tooSmall'], ['limbs.2.choices.support', 'notChoice'],
    ]);
  });
  it('says one fact against another at its field, as the calculator does; one that is wrong by itself once', () => {
    const swapped = read(given((p) => Object.assign(p.facts, { poleShortest: { value: 4.3, got: 'judged' }, poleLongest: { value: 4.2, got: 'judged' } })));
    expect(problemsOf(swapped)).toEqual([{ at: 'facts.poleShortest', problem: 'poleOrder', values: { poleLongest: 4.2 } }]);
    expect(evaluate('stance', { ...example('stance'), poleShortest: 4.3, poleLongest: 4.2 }, 'measured')).toMatchObject({ kind: 'problems', problems: [{ input: 'poleShortest', problem: 'poleOrder' }] });
    const endless = read(given((p) => Object.assign(p.facts, { poleShortest: { value: 7, got: 'judged' } })));
    expect(problemsOf(endless)).toEqual([{ at: 'facts.poleShortest', problem: 'tooLarge', values: { min: 1.2, max: 6 } }]);
    const open = read(given((p) => Object.assign(p.facts, { poleLongest: { value: null, got: 'judged' } })));
    expect(problemsOf(open).map(({ at, problem }) => [at, problem])).toEqual([['facts.poleLongest', 'missing']]);
    const floorless = read(given((p) => (p.choices.workingFrom = 'platform')));
    expect(problemsOf(floorless).map(({ at, problem }) => [at, problem])).toEqual([['facts.platformHeight', 'noPlatform']]);
  });
  it('asks for the balance and the grips only where the saw was weighed', () => {
    const light = (mass: unknown) => problemsOf(read(given((p) => Object.assign(p.facts, { mass, balance: { value: null, got: 'judged' } })))).map(({ at }) => at);
    expect(light({ value: null, got: 'judged' })).toEqual([]);
    expect(light({ value: 6.4, got: 'judged' })).toEqual(['facts.balance']);
    expect(light({ value: null, got: 'judged', text: 'heavy' })).toEqual(['facts.mass', 'facts.balance']);
  });
  it('drops what a plan does not hold', () => {
    expect(read(given((p) => {
      p.extra = 1;
      p.site.extra = 'x';
      p.limbs[0].extra = {};
      p.facts.margin.extra = [];
    }))).toEqual(demo);
  });
  it('is turned, whole turns and backwards too', () => {
    const plan = read(demo);
    expect(turnedBy(plan, 30).bearings).toEqual({ line: 30, downhill: 225 });
    expect(turnedBy(turnedBy(plan, -250), 250)).toEqual(plan);
    expect(newLimb('x', 300).bearings).toEqual({ points: 300, worker: 30, wayOut: 345, wayOut2: 75 });
  });
});

describe('what is no plan', () => {
  const cases: [string, unknown, string, string][] = [
    ['nothing', null, '', 'notPlan'],
    ['a list', [], '', 'notPlan'],
    ['another file', { v: 'x' }, 'v', 'notPlan'],
    ['a newer one', { v: 3 }, 'v', 'newerPlan'],
    ['no mark of a demo', given((p) => delete p.demo), 'demo', 'notPlan'],
    ['a name of numbers', given((p) => (p.name = 3)), 'name', 'notText'],
    ['no facts', given((p) => delete p.facts), 'facts', 'missing'],
    ['one fact gone', given((p) => delete p.facts.margin), 'facts.margin', 'missing'],
    ['a fact that is text', given((p) => (p.facts.margin = '1')), 'facts.margin', 'notFact'],
    ['a figure that is text', given((p) => (p.facts.margin.value = '1')), 'facts.margin', 'notFact'],
    ['got from nowhere', given((p) => (p.facts.margin.got = 'dreamt')), 'facts.margin', 'notFact'],
    ['a typed text that is none', given((p) => (p.facts.margin.text = 1)), 'facts.margin', 'notFact'],
    ['a text without end', given((p) => (p.site.notes = 'x'.repeat(301))), 'site.notes', 'notText'],
    ['a bearing past the turn', given((p) => (p.bearings.line = 361)), 'bearings.line', 'notBearing'],
    ['an answer neither way', given((p) => (p.gate.wind = 'perhaps')), 'gate.wind', 'notAnswer'],
    ['no limbs', given((p) => (p.limbs = [])), 'limbs', 'missing'],
    ['too many limbs', given((p) => (p.limbs = Array(13).fill(p.limbs[0]))), 'limbs', 'tooManyLimbs'],
    ['a limb that is none', given((p) => (p.limbs[1] = 7)), 'limbs.1', 'notLimb'],
    ['a limb with no name', given((p) => delete p.limbs[1].name), 'limbs.1.name', 'notText'],
    ['a bearing of a limb', given((p) => (p.limbs[0].bearings.worker = null)), 'limbs.0.bearings.worker', 'notBearing'],
    ['an inherited key', given((p) => (p.choices = Object.create(p.choices))), 'choices.species', 'missing'],
  ];
  it.each(cases)('%s', (_, data, at, problem) => {
    const found = readPlan(data);
    expect(found.kind === 'problems' && found.problems[0]).toMatchObject({ at, problem });
  });
});
