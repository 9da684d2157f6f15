import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defineCalculator, answer, type Got, type GotSet, type Pairs } from '#core/kit/calculator.ts';
import { choice, list, optionalQuantity, quantity } from '#core/kit/inputs.ts';
import { readLink, reserved, writeLink } from '#core/kit/link.ts';
import { calculators, exampleOf } from '#core/registry.ts';
import { anyText, gotSets, inputsOf, validInputs } from './arbitrary.ts';

/** A calculator of our own with every kind of input. */
const toy = defineCalculator({
  id: 'toy',
  inputs: {
    height: quantity('m', { min: -5, max: 5, step: 0.1, example: 1 }),
    side: choice(['left', 'right'], 'left'),
    load: optionalQuantity('kg', { min: 0, max: 100, step: 1, example: 10 }),
    cuts: list('mm', { min: 1, max: 400, shortest: 0, longest: 4, example: [60, 45] }),
  },
  outputs: { twice: { kind: 'quantity', unit: 'm', protects: 'up', moves: { height: 'up' } } },
  lead: ['twice'],
  compute: ({ height }) => answer({ twice: 2 * height }),
});
/** The toy, whose height was once called `up` and in millimetres, and whose side came later. */
const rename = (text: string): string => text.split('_').map((name) => (name === 'up' ? 'height' : name)).join('_');
const changed = {
  ...toy,
  id: 'changed',
  upgrades: [
    (pairs: Pairs): Pairs => pairs.map(([key, value]) => [rename(key), key === 'measured' || key === 'exact' ? rename(value) : key === 'up' ? String(Number(value) / 1000) : value]),
    (pairs: Pairs): Pairs => (pairs.some(([key]) => key === 'side') ? pairs : [...pairs, ['side', 'left']]),
  ],
};
const given = (query: string) => {
  const read = readLink(toy, query);
  if (read.kind === 'example') throw new Error('read as the example');
  return read;
};
const problemsOf = (query: string) => given(query).problems.map((p) => `${p.input}: ${p.problem}`);
const full = 'v=1&got=judged&height=2&side=right&load=5&cuts=60_45';

describe('writing', () => {
  it('writes everything, in the order of the definition, in the shortest form', () => {
    expect(writeLink(toy, { height: 0.5, side: 'right', load: null, cuts: [60, 45.5] }, 'judged'))
      .toBe('v=1&got=judged&height=0.5&side=right&load=&cuts=60_45.5');
  });
  it('names what was got otherwise', () => {
    expect(writeLink(toy, { height: -2, side: 'left', load: 5, cuts: [] }, { height: 'measured', load: 'exact', cuts: 'exact' }))
      .toBe('v=1&got=judged&measured=height&exact=load_cuts&height=-2&side=left&load=5&cuts=');
    expect(writeLink(toy, exampleOf(toy), 'measured')).toContain('got=measured&height=');
  });
  it('adds units and rule set', () => {
    expect(writeLink(toy, exampleOf(toy), 'exact', { units: 'imperial', rules: 'nz-2024.1' })).toMatch(/&units=imperial&rules=nz-2024\.1$/);
  });
  it('writes an input that is not there as empty', () => {
    expect(writeLink(toy, { height: 2 }, 'judged')).toContain('side=&load=&cuts=');
  });
});

describe('reading', () => {
  it('no input named: the example, whatever else stands there', () => {
    for (const query of ['', '?', 'v=1', '?got=exact&measured=height', 'utm=1&other', 'units=imperial', 'v=7']) {
      expect(readLink(toy, query).kind).toBe('example');
    }
    expect(readLink(toy, '?units=imperial&rules=nz')).toEqual({ kind: 'example', extras: { units: 'imperial', rules: 'nz' } });
  });
  it('a whole link', () => {
    expect(given(`?${full}`)).toEqual({
      kind: 'given', problems: [], got: 'judged', extras: {},
      inputs: { height: 2, side: 'right', load: 5, cuts: [60, 45] },
      texts: { height: '2', side: 'right', load: '5', cuts: '60_45' },
    });
  });
  it('unknown parameters are ignored', () => {
    expect(problemsOf(`${full}&utm_source=x&__proto__=1&constructor=2&height2=9`)).toEqual([]);
  });
  it('a missing input is a problem at its field; an optional one is not entered', () => {
    expect(problemsOf('height=2')).toEqual(['side: missing', 'cuts: missing']);
    expect(given('height=2').inputs).toEqual({ height: 2, load: null });
    expect(problemsOf('height=&side=left&load=&cuts=')).toEqual(['height: missing']);
  });
  it('a list may be empty where none are asked for', () => {
    expect(given('height=1&side=left&cuts=').inputs['cuts']).toEqual([]);
  });
  it('one that asks for at least one item is missing when empty', () => {
    const asked = { ...toy, inputs: { ...toy.inputs, cuts: { ...toy.inputs.cuts, shortest: 1 } } };
    const read = readLink(asked, 'height=1&side=left&cuts=');
    expect(read.kind === 'given' && read.problems).toEqual([{ input: 'cuts', problem: 'missing', values: {} }]);
  });
  it.each(['abc', '1,5', '1.5m', ' 1', '0x10', '1e', '--1', 'NaN', 'Infinity', '１', '.5', '5.'])('malformed number %s', (text) => {
    expect(problemsOf(`height=${encodeURIComponent(text)}&side=left&cuts=1`)).toEqual(['height: notNumber']);
    expect(problemsOf(`height=1&side=left&cuts=1_${encodeURIComponent(text)}`)).toEqual(['cuts: notNumber']);
  });
  it('keeps what stood there, for the field', () => {
    expect(given('height=abc&side=left&cuts=1').texts['height']).toBe('abc');
    expect(given('height=%E0%A4&side=left&cuts=1').texts['height']).toBe('%E0%A4');
    expect(given('height=1+2').texts['height']).toBe('1 2');
  });
  it('a repeated input is a problem, also when both say the same', () => {
    expect(problemsOf('height=1&height=1&side=left&cuts=1')).toEqual(['height: repeated']);
    expect(given('height=1&height=2&side=left&cuts=1').texts['height']).toBe('1 2');
    expect(given('height=1&height=2&side=left&cuts=1').inputs).not.toHaveProperty('height');
  });
  it('a parameter without = is there, and empty', () => {
    expect(problemsOf('height&side=left&cuts=1')).toEqual(['height: missing']);
  });
  it('a choice is handed on as it is; whether there is such an option is checked with the other inputs', () => {
    expect(given('height=1&side=sideways&cuts=1').inputs['side']).toBe('sideways');
  });

  it.each([
    ['2', 'newerLink'], ['9999', 'newerLink'], ['0', 'badLink'], ['-1', 'badLink'], ['x', 'badLink'], ['', 'badLink'],
    ['1.5', 'badLink'], ['1&v=1', 'badLink'], ['99999999999999999999', 'badLink'],
  ])('version %s: %s', (v, problem) => {
    expect(problemsOf(`v=${v}&height=1&side=left&cuts=1`)).toEqual([`v: ${problem}`]);
  });
  it('no version is the first', () => {
    expect(problemsOf('height=1&side=left&cuts=1')).toEqual([]);
  });

  it.each<[string, GotSet]>([
    ['', 'judged'], ['got=exact', 'exact'], ['got=measured', 'measured'], ['got=guessed', 'judged'], ['measured=nothing', 'judged'],
    ['got=judged&measured=height', { height: 'measured', side: 'judged', load: 'judged', cuts: 'judged' }],
    ['got=measured&exact=height_load', { height: 'exact', side: 'measured', load: 'exact', cuts: 'measured' }],
    ['measured=height&exact=height', { height: 'exact', side: 'judged', load: 'judged', cuts: 'judged' }],
  ])('how the figures were got: %s', (query, got) => {
    expect(given(`height=1&side=left&cuts=1&${query}`).got).toEqual(got);
  });

  it.each([['units=metric', { units: 'metric' }], ['units=furlongs', {}], ['rules=nz-2024', { rules: 'nz-2024' }], ['rules=<script>', {}], [`rules=${'a'.repeat(81)}`, {}]])(
    'units and rules that it knows: %s', (query, extras) => {
      expect(given(`height=1&${query}`).extras).toEqual(extras);
    });
});

describe('a link of an older version', () => {
  const upgraded = (query: string) => readLink(changed, query);

  it('opens with what it meant, through every version since', () => {
    expect(upgraded('v=1&got=judged&measured=up&up=1500&load=5&cuts=60_45')).toEqual({
      kind: 'given', inputs: { height: 1.5, side: 'left', load: 5, cuts: [60, 45] }, texts: { height: '1.5', side: 'left', load: '5', cuts: '60_45' },
      got: { height: 'measured', side: 'judged', load: 'judged', cuts: 'judged' }, problems: [], extras: {},
    });
    expect(upgraded('v=2&height=1.5&load=5&cuts=60')).toMatchObject({ inputs: { height: 1.5, side: 'left' }, problems: [] });
  });
  it('one without a version is of the first; one whose every name is old is not the example', () => {
    expect(upgraded('up=1500')).toMatchObject({ kind: 'given', inputs: { height: 1.5, side: 'left' }, problems: [{ input: 'cuts', problem: 'missing' }] });
  });
  it('one of now is left alone, and is what is written', () => {
    const link = writeLink(changed, { height: 0.5, side: 'right', load: null, cuts: [60] }, 'judged');
    expect(link).toBe('v=3&got=judged&height=0.5&side=right&load=&cuts=60');
    expect(upgraded(link)).toMatchObject({ inputs: { height: 0.5, side: 'right' }, problems: [] });
    // An old name means nothing now.
    expect(upgraded('v=3&up=1500&side=left&cuts=60')).toMatchObject({ problems: [{ input: 'height', problem: 'missing' }] });
  });
  it('what it cannot say any more, or never could, is a problem at its field', () => {
    expect(upgraded('v=1&up=high&cuts=60')).toMatchObject({ problems: [{ input: 'height', problem: 'notNumber' }] });
    expect(upgraded('v=1&up=1&up=2&cuts=60')).toMatchObject({ problems: [{ input: 'height', problem: 'repeated' }] });
  });
  it('newer than is known, or no version at all: not upgraded, and said', () => {
    expect(upgraded('v=4&height=1&side=left&cuts=60')).toMatchObject({ problems: [{ input: 'v', problem: 'newerLink' }] });
    expect(upgraded('v=x&up=1500&cuts=60')).toMatchObject({ problems: [{ input: 'v', problem: 'badLink' }, { input: 'height' }, { input: 'side' }] });
    expect(upgraded('v=0&up=1500&cuts=60')).toMatchObject({ problems: [{ input: 'v', problem: 'badLink' }, { input: 'height' }, { input: 'side' }] });
  });
});

describe.each([...calculators, toy, changed])('$id', (calculator) => {
  const names = inputsOf(calculator).map(([name]) => name);

  it('uses no reserved name', () => {
    expect(names.filter((n) => (reserved as readonly string[]).includes(n))).toEqual([]);
  });

  it('comes back as it went out', () => {
    fc.assert(fc.property(validInputs(calculator), gotSets(calculator), (inputs, got) => {
      const read = readLink(calculator, `?${writeLink(calculator, inputs, got, { units: 'imperial', rules: 'us-1' })}`);
      if (read.kind === 'example') throw new Error('read as the example');
      const of = (set: GotSet, name: string): Got => (typeof set === 'string' ? set : (set[name] ?? 'judged'));
      expect(read.problems).toEqual([]);
      // −0 is written 0.
      expect(JSON.stringify(read.inputs)).toBe(JSON.stringify(inputs));
      expect(names.map((n) => of(read.got, n))).toEqual(names.map((n) => of(got, n)));
      expect(read.extras).toEqual({ units: 'imperial', rules: 'us-1' });
    }));
  });

  it('figures far outside the field come back too, so that the field can say which', () => {
    const number = names.find((n) => calculator.inputs[n].kind === 'quantity') as string;
    for (const x of [1e21, -1e21, 1e-9, 123456789.125, 5e-324, 1.7976931348623157e308]) {
      const read = readLink(calculator, writeLink(calculator, { ...exampleOf(calculator), [number]: x }, 'judged'));
      expect(read.kind === 'given' && read.inputs[number]).toBe(x);
    }
  });

  it('a hostile link never throws, and what it cannot read has a problem', () => {
    const key = fc.oneof(fc.constantFrom(...names, ...reserved, '__proto__', 'constructor', 'toString'), anyText(8));
    const value = fc.oneof(fc.constantFrom('1', '-1', '0', '', 'NaN', '1e999', '%', '%00', '%ff', '_', '__', 'javascript:alert(1)', '<img onerror=x>'), anyText(12), fc.double().map(String));
    const query = fc.array(fc.tuple(key, value).map(([k, v]) => `${k}=${v}`), { maxLength: 14 }).map((a) => a.join('&'));
    fc.assert(fc.property(query, (text) => {
      const read = readLink(calculator, text);
      if (read.kind === 'example') return;
      for (const [name, input] of inputsOf(calculator)) {
        const there = Object.hasOwn(read.inputs, name);
        expect(there).toBe(!read.problems.some((p) => p.input === name));
        if (there && input.kind === 'quantity' && read.inputs[name] !== null) expect(typeof read.inputs[name]).toBe('number');
      }
    }), { numRuns: 300 });
  });
});
