/** Plans as a file: what is written is read again; what is damaged or hostile is said, at its place, and costs no other plan. */
import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { plans as words } from '#content/interface.json';
import { planSchema } from '#components/plan-schema.ts';
import { withEdition } from '#core/plan/edition.ts';
import { type Plan, planVersion } from '#core/plan/facts.ts';
import { fileFormat, fileVersion, longestFile, mostPlans, readAnyPlan, readPlansFile, writePlansFile } from '#core/plan/file.ts';
import { shapeProblems } from '#core/plan/problems.ts';
import { type Upgrade, upgraded, upgrades } from '#core/plan/upgrades.ts';
import { anyPlan } from './arbitrary.ts';
import { changed, invented } from './invented.ts';
import { faultsOfReading, spoiltFile } from './spoilt.ts';

const file = (plans: readonly unknown[], rest: object = {}): string => JSON.stringify({ format: fileFormat, version: fileVersion, plans, ...rest });
const takes = new Ajv2020({ allErrors: false, strict: true, allowUnionTypes: true }).compile(planSchema);

describe('written and read again', () => {
  it('any plans come back as they were', () => {
    fc.assert(fc.property(fc.array(anyPlan(40, 3), { minLength: 1, maxLength: 3 }), (plans) => {
      const text = writePlansFile(plans, 'abcd1234');
      expect(readPlansFile(text)).toEqual({ plans: plans.map(withEdition), faults: [] });
      expect(takes(JSON.parse(text))).toBe(true);
    }), { seed: 90, numRuns: 100, endOnFailure: true });
  });
  it('says what it is, of which edition, for whoever opens it', () => {
    expect(writePlansFile([invented], 'abcd1234')).toMatch(/^\{\n "format": "standing-clear-plans",\n "version": 1,\n "edition": "abcd1234",/);
  });
  it('a mark of byte order in front, as some programs put it, is no fault', () => {
    expect(readPlansFile(`\ufeff${file([invented])}`).plans).toEqual([invented]);
  });
  it('as many as a device may hold, each as long as may be, stay within the size that is read', () => {
    const [longest] = fc.sample(anyPlan().filter((p) => p.limbs.length > 8), { seed: 3, numRuns: 1 }) as [Plan];
    expect(writePlansFile(Array(50).fill(longest), '').length).toBeLessThan(longestFile);
    expect(writePlansFile(Array(mostPlans).fill(invented), '').length).toBeLessThan(longestFile);
  });
});

describe('the published schema', () => {
  it('takes the invented plan and is itself of draft 2020-12', () => {
    expect(takes(JSON.parse(file([invented])))).toBe(true);
    expect(new Ajv2020().validateSchema(planSchema)).toBe(true);
  });
  it('takes what the reader takes and nothing else, file by spoilt file', () => {
    const seen = { good: 0, bad: 0 };
    for (let seed = 1; seed <= 400; seed++) {
      const text = spoiltFile(seed);
      const { plans, faults } = readPlansFile(text);
      if (['notJson', 'fileCut'].includes(faults[0]?.problems[0]?.problem ?? '')) continue;
      const data: unknown = JSON.parse(text);
      const good = faults.length === 0 && plans.length > 0;
      seen[good ? 'good' : 'bad'] += 1;
      expect({ seed, takes: takes(data) }).toEqual({ seed, takes: good });
    }
    expect(seen.good).toBeGreaterThan(20);
    expect(seen.bad).toBeGreaterThan(100);
  });
});

describe('what is wrong, and where', () => {
  const fileFaults: [string, string, string, object][] = [
    ['cut on its way', file([invented]).slice(0, 400), 'fileCut', { line: 1 }],
    ['empty', '', 'fileCut', { line: 1 }],
    ['a comma too many', '{\n "format": "standing-clear-plans",\n}', 'notJson', { line: 3, column: 1 }],
    ['a picture', '\u0089PNG\r\n', 'notJson', { line: 1, column: 1 }],
    ['another program’s', '{"type":"FeatureCollection"}', 'notPlansFile', {}],
    ['a list', '[]', 'notPlansFile', {}],
    ['nothing', 'null', 'notPlansFile', {}],
    ['a version in words', file([invented], { version: '1' }), 'notPlansFile', {}],
    ['a version that never was', file([invented], { version: 0 }), 'notPlansFile', {}],
    ['of a later edition', file([invented], { version: 2 }), 'newerFile', {}],
    ['plans that are no list', file([invented], { plans: {} }), 'notPlansFile', {}],
    ['no plans', file([]), 'noPlans', {}],
    ['too many', file(Array(mostPlans + 1).fill(invented)), 'tooManyPlans', { most: mostPlans }],
    ['too large', `"${' '.repeat(longestFile)}"`, 'fileTooLarge', { most: 2 }],
  ];
  it.each(fileFaults)('%s', (_, text, problem, values) => {
    expect(readPlansFile(text)).toEqual({ plans: [], faults: [{ plan: null, name: null, problems: [{ at: '', problem, values }], more: 0 }] });
    expect(Object.keys(words.fileProblems)).toContain(problem);
  });

  it('one plan of three: the others are read, this one is named with its places', () => {
    const bad = changed((p) => {
      p.name = 'Ash at the ford';
      delete p.facts.margin;
      p.limbs[1].bearings.worker = 400;
    });
    expect(readPlansFile(file([invented, bad, invented]))).toEqual({
      plans: [invented, invented],
      faults: [{ plan: 1, name: 'Ash at the ford', more: 0, problems: [{ at: 'facts.margin', problem: 'missing', values: {} }, { at: 'limbs.1.bearings.worker', problem: 'notBearing', values: {} }] }],
    });
  });
  it('a plan of a later edition is said to be that', () => {
    expect(readPlansFile(file([changed((p) => (p.v = 3))])).faults[0]?.problems).toEqual([{ at: 'v', problem: 'newerPlan', values: {} }]);
  });
  it('enough is said of a plan that is wrong throughout', () => {
    const [fault] = readPlansFile(file([{ ...invented, name: 7, facts: {}, limbs: [1] }])).faults;
    expect(fault?.name).toBeNull();
    expect(fault?.problems).toHaveLength(5);
    expect(fault?.more).toBe(shapeProblems({ ...invented, name: 7, facts: {}, limbs: [1] }).length - 5);
  });
  it('nested deeper than an engine goes: no plans file', () => {
    const parse = vi.spyOn(JSON, 'parse').mockImplementation(() => {
      throw new RangeError('too deep');
    });
    const { faults } = readPlansFile('[[1]]');
    parse.mockRestore();
    expect(faults[0]?.problems[0]?.problem).toBe('notPlansFile');
  });
  it('what reaches for other objects reaches none', () => {
    const text = file([invented]).replace('"site":{', '"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},"site":{"__proto__":{"polluted":1},');
    expect(text).toContain('polluted');
    expect(readPlansFile(text)).toEqual({ plans: [invented], faults: [] });
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
  });
  it('500 spoilt files: never thrown, nothing run, nothing let in, every fault in words', () => {
    const isSaid = (problem: string): boolean => problem in words.fileProblems || problem in words.planProblems;
    const seen = { plans: 0, problems: new Set<string>() };
    for (let seed = 1; seed <= 500; seed++) {
      const { wrong, problems, plans } = faultsOfReading(spoiltFile(seed), isSaid);
      expect({ seed, wrong }).toEqual({ seed, wrong: [] });
      seen.plans += plans;
      problems.forEach((problem) => seen.problems.add(problem));
    }
    expect(seen.plans).toBeGreaterThan(100);
    expect(seen.problems.size).toBeGreaterThan(10);
  });
});

describe('plans of older editions', () => {
  const steps: readonly Upgrade[] = [({ title, ...rest }) => ({ ...rest, name: title }), (old) => ({ ...old, limbs: [old['limb']] })];
  it('go up one step at a time', () => {
    expect(upgraded({ v: 1, title: 'Elm', limb: 'a' }, steps, 3)).toMatchObject({ v: 3, name: 'Elm', limbs: ['a'] });
    expect(upgraded({ v: 2, name: 'Elm', limb: 'a' }, steps, 3)).toMatchObject({ v: 3, name: 'Elm', limbs: ['a'] });
  });
  it.each([[null], [[]], [7], [{}], [{ v: '1' }], [{ v: 0 }], [{ v: 1.5 }], [{ v: 3 }], [{ v: 4 }]])('%j is left as it is', (data) => {
    expect(upgraded(data, steps, 3)).toBe(data);
  });
  it('of version 1 is a plan of now, with a saw that nobody knows anything of; what is no part of one stays as it was', () => {
    const { saw: _, ...site } = invented.site;
    const { mass: __, balance: ___, gripSpacing: ____, ...facts } = invented.facts;
    const old = { ...invented, v: 1, site, facts };
    const unknown = { value: null, got: 'judged' };
    expect(readAnyPlan(old)).toEqual({ kind: 'plan', plan: { ...invented, site: { ...site, saw: '' }, facts: { ...facts, mass: unknown, balance: unknown, gripSpacing: { value: 0.8, got: 'judged' } } } });
    for (const site of [null, 'x', [1], 7]) expect(readAnyPlan({ ...old, site })).toMatchObject({ kind: 'problems' });
  });
  it('there is a step for each version left behind', () => {
    expect(upgrades).toHaveLength(planVersion - 1);
  });
});
