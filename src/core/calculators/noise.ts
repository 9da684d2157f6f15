/** How long in this noise, and behind which protector? */
import { classFor } from '../facts/hearing.ts';
import { noise as fact } from '../facts/noise.ts';
import { nrrDerated, nrrInField, nrrOnA, nrrOnC, snr } from '../formulas/hearing-protection.ts';
import { dose as doseOf, type Noise } from '../formulas/noise.ts';
import { criteria, type Rule, ruleOf } from '../formulas/noise-criteria.ts';
import { answer, defineCalculator, type InputProblem, type InputsOf, outside, type RawStep } from '../kit/calculator.ts';
import { choice, guess, optionalQuantity, quantity } from '../kit/inputs.ts';
import { pairProblems, timeProblem } from '../kit/spells.ts';

const loud = { min: 70, max: 120, step: 1, tolerance: guess({ least: 3 }, { least: 1 }) };
const time = { min: 0, max: 720, step: 5 };
const methods = ['none', 'nrrA', 'nrrC', 'nrrField', 'nioshMuffs', 'nioshFormable', 'nioshPlugs', 'snr', 'class'] as const;
const onC: readonly string[] = ['nrrC', 'snr'];
const classes = [1, 2, 3, 4, 5];

const louder = { level1: 'up', level2: 'up', level3: 'up' } as const;
const longer = { minutes1: 'up', minutes2: 'up', minutes3: 'up' } as const;

const inputs = {
  level1: quantity('dB', { ...loud, example: 95 }),
  minutes1: quantity('min', { ...time, example: 60 }),
  level2: optionalQuantity('dB', { ...loud, example: 88 }),
  minutes2: optionalQuantity('min', { ...time, example: 120 }),
  level3: optionalQuantity('dB', { ...loud, example: 100 }),
  minutes3: optionalQuantity('min', { ...time, example: 15 }),
  criterion: choice(criteria, 'eu'),
  shift: optionalQuantity('h', { min: 1, max: 24, step: 0.5, example: 8 }),
  protector: choice(methods, 'snr'),
  rating: optionalQuantity('dB plain', { min: 0, max: 45, step: 1, example: 25 }),
  cMinusA: optionalQuantity('dB plain', { min: -5, max: 15, step: 1, example: 1 }),
};
type Given = InputsOf<typeof inputs>;

/** What the protector takes off the A-weighted level; null where none is worn or the method does not say. */
const takenOff = ({ protector, rating, cMinusA }: Given): number | null => {
  if (protector === 'none' || protector === 'class' || rating === null) return null;
  if (protector === 'nrrA') return nrrOnA(rating);
  if (protector === 'nrrField') return nrrInField(rating);
  if (protector === 'nioshMuffs') return nrrDerated(rating, fact('niosh-muffs'));
  if (protector === 'nioshFormable') return nrrDerated(rating, fact('niosh-formable'));
  if (protector === 'nioshPlugs') return nrrDerated(rating, fact('niosh-plugs'));
  return protector === 'nrrC' ? nrrOnC(rating, cMinusA as number) : snr(rating, cMinusA as number);
};

const noisesOf = (i: Given): (Noise & { n: number })[] =>
  ([[i.level1, i.minutes1], [i.level2, i.minutes2], [i.level3, i.minutes3]] as const)
    .flatMap(([level, minutes], at) => (level === null || minutes === null ? [] : [{ n: at + 1, level, minutes }]));

/** Tool by tool: the minutes allowed at its level alone, and the share of the dose it takes. */
const toolSteps = (noises: ReturnType<typeof noisesOf>, rule: Rule): RawStep[] =>
  noises.flatMap(({ n, level, minutes }): RawStep[] => {
    const allowed = rule.allowed(level);
    return [
      { id: `allowed${n}`, values: { [`level${n}`]: level, limit: rule.limit, added: rule.added }, result: { name: `allowed${n}`, value: allowed } },
      { id: `share${n}`, values: { [`minutes${n}`]: minutes, [`allowed${n}`]: allowed }, result: { name: `share${n}`, value: (100 * minutes) / allowed } },
    ];
  });

export const noise = defineCalculator({
  id: 'noise',
  inputs,
  outputs: {
    dose: { kind: 'quantity', unit: '%', protects: 'up', moves: { ...louder, ...longer, shift: 'up' } },
    dayLevel: { kind: 'quantity', unit: 'dB', protects: 'up', moves: { ...louder, ...longer, shift: 'up' } },
    minutesAllowed: { kind: 'quantity', unit: 'min', protects: 'down', moves: { level1: 'down', shift: 'down' } },
    minutesLeft: { kind: 'quantity', unit: 'min', protects: 'down', moves: { level1: 'down', level2: 'down', level3: 'down', minutes1: 'down', minutes2: 'down', minutes3: 'down', shift: 'down' } },
    atEar: { kind: 'quantity', unit: 'dB', protects: 'up', moves: { ...louder, rating: 'down', cMinusA: 'up' } },
    dayAtEar: { kind: 'quantity', unit: 'dB', protects: 'up', moves: { ...louder, ...longer, shift: 'up', rating: 'down', cMinusA: 'up' } },
    classNeeded: { kind: 'quantity', unit: 'number', protects: 'up', moves: { ...louder, ...longer, shift: 'up' } },
  },
  lead: ['dayLevel', 'minutesLeft', 'atEar'],
  exampleGot: 'measured',
  middle: {
    allowed1: 'min', allowed2: 'min', allowed3: 'min', share1: '%', share2: '%', share3: '%',
    limit: 'dB', takenOff: 'dB plain', loudest: 'dB', aim: 'dB', added: 'dB plain', ceiling: 'dB',
  },
  findings: {
    overLimit: { level: 'caution', at: 'dayLevel' },
    aboveCeiling: { level: 'stop', at: 'atEar' },
    notEnough: { level: 'stop', at: 'dayAtEar' },
    classTooLow: { level: 'stop', at: 'dayLevel' },
    overProtected: { level: 'caution', at: { level1: 'down', level2: 'down', level3: 'down' } },
    fromLowerAction: { level: 'note', at: 'dayLevel' },
    dayEndsFirst: { level: 'note', at: 'minutesAllowed' },
  },
  limits: ['noTime', 'noCredit', 'beyondClasses'],
  relate: (i): InputProblem[] => {
    const { protector, rating, cMinusA, criterion, shift } = i;
    const missing = (input: string, problem: string): InputProblem => ({ input, problem, values: {} });
    return [
      ...pairProblems(i, 'level', 'minutes'),
      ...timeProblem(i),
      ...(protector !== 'none' && rating === null ? [missing('rating', 'needsRating')] : []),
      ...(protector === 'class' && rating !== null && !classes.includes(rating) ? [missing('rating', 'notClass')] : []),
      ...(onC.includes(protector) && cMinusA === null ? [missing('cMinusA', 'needsC')] : []),
      ...(criterion === 'australia' && shift === null ? [missing('shift', 'needsShift')] : []),
    ];
  },
  compute: (i) => {
    const rule = ruleOf(i.criterion, i.shift ?? fact('reference-day'));
    const { limit, ceiling } = rule;
    const noises = noisesOf(i);
    const loudest = Math.max(...noises.map((n) => n.level));
    if (i.criterion === 'canada' && loudest > (ceiling as number)) return outside('noTime', { loudest, ceiling: ceiling as number });
    const off = takenOff(i);
    if (off !== null && off <= 0) return outside('noCredit', { rating: i.rating as number, takenOff: off });

    const dose = doseOf(noises, rule.allowed);
    // As the share of a day that the level is worked from: a dose may be so small that there is none.
    const dayLevel = dose / 100 > 0 ? rule.dayLevel(dose) : null;
    const classNeeded = dayLevel === null ? null : classFor(dayLevel);
    if (i.protector === 'class' && dayLevel !== null && classNeeded === null) return outside('beyondClasses', { dayLevel });
    const minutesAllowed = rule.allowed(i.level1);
    const minutesLeft = Math.max(0, (minutesAllowed * (100 - dose)) / 100);
    const atEar = off === null ? null : loudest - off;
    const dayAtEar = off === null || dayLevel === null ? null : dayLevel - off;
    const earLimit = i.criterion === 'eu' ? fact('ear-limit') : limit;
    const tools = toolSteps(noises, rule);
    const shareOf = (n: number): number => tools.find((step) => step.result.name === `share${n}`)?.result.value ?? 0;
    const working: RawStep[] = [
      ...tools,
      { id: 'dose', values: { share1: shareOf(1), share2: shareOf(2), share3: shareOf(3) }, result: { name: 'dose', value: dose } },
      ...(dayLevel === null ? [] : [{ id: 'dayLevel', values: { dose, limit }, result: { name: 'dayLevel', value: dayLevel } }]),
      { id: 'minutesLeft', values: { dose, minutesAllowed }, result: { name: 'minutesLeft', value: minutesLeft } },
      ...(off === null || atEar === null ? [] : [
        { id: 'takenOff', values: { rating: i.rating as number, cMinusA: i.cMinusA ?? 0 }, result: { name: 'takenOff', value: off } },
        { id: 'atEar', values: { loudest, takenOff: off }, result: { name: 'atEar', value: atEar } },
      ]),
    ];
    return answer(
      { dose, dayLevel, minutesAllowed, minutesLeft, atEar, dayAtEar, classNeeded: dayLevel === null ? null : classNeeded ?? outside('beyondClasses', { dayLevel }) },
      [
        dayLevel !== null && dayLevel > limit && { id: 'overLimit', values: { dayLevel, limit } },
        ceiling !== null && loudest > ceiling && { id: 'aboveCeiling', values: { loudest, ceiling } },
        dayAtEar !== null && dayAtEar > earLimit && { id: 'notEnough', values: { dayAtEar, limit: earLimit } },
        i.protector === 'class' && classNeeded !== null && classNeeded > (i.rating as number) && { id: 'classTooLow', values: { dayLevel: dayLevel as number, classNeeded } },
        atEar !== null && atEar < fact('over-protected') && { id: 'overProtected', values: { atEar, aim: fact('over-protected') } },
        i.criterion === 'eu' && dayLevel !== null && dayLevel <= limit && dayLevel > fact('lower-action') && { id: 'fromLowerAction', values: { dayLevel, limit: fact('lower-action') } },
        minutesAllowed > 24 * 60 && { id: 'dayEndsFirst', values: { minutesAllowed } },
      ],
      working,
    );
  },
});
