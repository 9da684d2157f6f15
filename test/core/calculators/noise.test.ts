import { describe, expect, it } from 'vitest';
import { noise } from '#core/calculators/noise.ts';
import { type Answer, evaluate, type Inputs, type Quantity } from '#core/kit/outcome.ts';
import { checkRows, expectCheck } from './box.ts';

const one: Inputs = {
  level1: 95, minutes1: 60, level2: null, minutes2: null, level3: null, minutes3: null, criterion: 'eu', shift: null,
  protector: 'none', rating: null, cMinusA: null,
};
const run = (given: Inputs, got: 'exact' | 'judged' = 'exact') => evaluate(noise, { ...one, ...given }, got);
const figure = (given: Inputs, name: string) => (run(given) as Answer).outputs[name] as Quantity;
const ids = (given: Inputs, got: 'exact' | 'judged' = 'exact') => (run(given, got) as Answer).findings.map((f) => f.id);

describe('Noise against worked examples from outside', () => {
  it.each(checkRows('noise'))('$title', (row) => expectCheck(noise, row));
});

describe('Noise', () => {
  it('adds up tools in any order', () => {
    const there = figure({ level2: 88, minutes2: 120, level3: 100, minutes3: 15 }, 'dose').value;
    expect(figure({ level1: 100, minutes1: 15, level2: 95, minutes2: 60, level3: 88, minutes3: 120 }, 'dose').value).toBeCloseTo(there, 9);
  });
  it('leaves the rest of the dose in minutes at the first level, and none beyond it', () => {
    // 85 dB(A) over eight hours; at 95 that is 48 min by energy, so 18 are left after 30.
    expect(figure({ minutes1: 30 }, 'minutesLeft').value).toBeCloseTo(18, 6);
    expect(figure({ minutes1: 90 }, 'minutesLeft').value).toBe(0);
  });
  it('has no level of the day where there is no noise', () => {
    expect(figure({ minutes1: 0 }, 'dose').value).toBe(0);
    for (const name of ['dayLevel', 'classNeeded', 'atEar', 'dayAtEar']) expect(figure({ minutes1: 0 }, name)).toBeNull();
    expect(figure({ minutes1: 0, protector: 'nrrA', rating: 20 }, 'atEar').value).toBe(82);
  });
  it('tells the three actions of the European Union apart', () => {
    expect(ids({ level1: 82, minutes1: 480 })).toContain('fromLowerAction');
    expect(ids({ level1: 88, minutes1: 480 })).toContain('overLimit');
    expect(ids({ level1: 105, minutes1: 480, protector: 'snr', rating: 20, cMinusA: 0 })).toContain('notEnough');
    expect(ids({ level1: 100, minutes1: 480, protector: 'snr', rating: 20, cMinusA: 0 })).not.toContain('notEnough');
  });
  it('says where warnings are missed: below 70 dB at the ear', () => {
    expect(ids({ level1: 90, protector: 'snr', rating: 30, cMinusA: 0 })).toContain('overProtected');
    expect(ids({ level1: 100, protector: 'snr', rating: 30, cMinusA: 0 })).not.toContain('overProtected');
    expect(ids({ level1: 98, protector: 'snr', rating: 30, cMinusA: 0 }, 'judged')).toContain('overProtected');
  });
  it('stops at the loudest level the USA’s table of limits allows', () => {
    expect(ids({ criterion: 'usLaw', level1: 116, minutes1: 1 })).toContain('aboveCeiling');
    expect(ids({ criterion: 'usLaw', level1: 115, minutes1: 1 })).not.toContain('aboveCeiling');
    expect(ids({ criterion: 'usLaw', level1: 113, minutes1: 1 }, 'judged')).toContain('aboveCeiling');
  });
  it('is outside above 102 dB(A) under Canada’s federal rules, from the guess too', () => {
    expect(run({ criterion: 'canada', level1: 103 })).toEqual({ kind: 'outside', limit: 'noTime', values: { loudest: 103, ceiling: 102 } });
    expect(run({ criterion: 'canada', level1: 100 }, 'judged').kind).toBe('outside');
    expect(run({ criterion: 'canada', level1: 102 }).kind).toBe('answer');
  });
  it('gives each protector method its own figure', () => {
    const ear = (protector: string, cMinusA: number | null = null) => figure({ level1: 100, protector, rating: 25, cMinusA }, 'atEar').value;
    expect(ear('nrrA')).toBe(82);
    expect(ear('nrrC', 2)).toBe(77);
    expect(ear('nrrField')).toBe(91);
    expect(ear('nioshMuffs')).toBeCloseTo(88.25, 9);
    expect(ear('nioshFormable')).toBeCloseTo(94.5, 9);
    expect(ear('nioshPlugs')).toBeCloseTo(99.5, 9);
    expect(ear('snr', 2)).toBe(81);
  });
  it('is outside where the method leaves nothing of a rating', () => {
    expect(run({ protector: 'nioshPlugs', rating: 20 })).toMatchObject({ kind: 'outside', limit: 'noCredit' });
    expect(run({ protector: 'nrrA', rating: 7 })).toMatchObject({ kind: 'outside', limit: 'noCredit' });
  });
  it('holds a class of protector against the day', () => {
    expect(ids({ level1: 102, minutes1: 480, protector: 'class', rating: 3 })).toContain('classTooLow');
    expect(ids({ level1: 102, minutes1: 480, protector: 'class', rating: 4 })).not.toContain('classTooLow');
    expect(run({ level1: 115, minutes1: 480, protector: 'class', rating: 5 })).toMatchObject({ kind: 'outside', limit: 'beyondClasses' });
    expect(run({ level1: 115, minutes1: 480 })).toMatchObject({ outputs: { classNeeded: null }, outside: { classNeeded: { limit: 'beyondClasses' } } });
    expect((run({ minutes1: 0 }) as Answer).outside).toEqual({});
  });
  it('asks for what the method needs, at its field', () => {
    const problems = (given: Inputs) => (run(given) as { problems: { input: string; problem: string }[] }).problems.map((p) => [p.input, p.problem]);
    expect(problems({ protector: 'snr' })).toEqual([['rating', 'needsRating'], ['cMinusA', 'needsC']]);
    expect(problems({ protector: 'nrrC', rating: 20 })).toEqual([['cMinusA', 'needsC']]);
    expect(problems({ protector: 'class', rating: 2.5 })).toEqual([['rating', 'notClass']]);
    expect(problems({ criterion: 'australia' })).toEqual([['shift', 'needsShift']]);
    expect(problems({ level2: 90 })).toEqual([['minutes2', 'needsPair']]);
  });
  it('adds for a long shift in Australia', () =>
    expect(figure({ criterion: 'australia', shift: 12 }, 'dayLevel').value - figure({ criterion: 'australia', shift: 8 }, 'dayLevel').value).toBeCloseTo(1, 9));
});

describe('next to nothing', () => {
  it('a time too short for any dose has no level, and no fault', () => {
    for (const criterion of ['eu', 'usLaw', 'canada']) {
      expect(run({ level1: 88, minutes1: 1.5e-323, criterion })).toMatchObject({ kind: 'answer', outputs: { dayLevel: null } });
    }
  });
});
