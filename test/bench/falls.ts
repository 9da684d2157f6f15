/** Drop zone: what one evaluation costs with tolerances on, and 2,000 falls against a rigid-body engine. */
import { dropZone } from '#core/calculators/drop-zone.ts';
import { evaluate } from '#core/kit/outcome.ts';
import { exampleOf } from '#core/registry.ts';
import { compareFalls } from '../core/formulas/fall-cases.ts';

/** Processor time, ms, of one evaluation of the example as judged, standing on each side; the dearest. */
export const evaluationCost = (): number => {
  const ways = ['free', 'mayHold', 'hangs'].flatMap((release) => ['beside', 'stemSide', 'tipSide'].map((standing) => ({ release, standing })));
  const costs = ways.map((way) => {
    const given = { ...exampleOf(dropZone), ...way, standOff: 4 };
    for (let k = 0; k < 50; k++) evaluate(dropZone, given, 'judged');
    const runs = 200;
    const before = process.cpuUsage().user;
    for (let k = 0; k < runs; k++) evaluate(dropZone, given, 'judged');
    return (process.cpuUsage().user - before) / 1000 / runs;
  });
  return Math.max(...costs);
};

/** Processor time, ms, of a hundred thousand sines: how fast this machine is just now. */
export const floorCost = (): number => {
  let sum = 0;
  const before = process.cpuUsage().user;
  for (let k = 0; k < 1e6; k++) sum += Math.sin(k + sum);
  return (process.cpuUsage().user - before) / 1e4;
};

/** The worst of 2,000: place of the first touch, share of the length; of those that graze the ground; how many lie beyond the envelope. */
export const manyFalls = (): { place: number; grazing: number; beyond: number; count: number } => {
  const falls = compareFalls(2000, 41);
  const worst = (some: typeof falls): number => Math.max(0, ...some.map((f) => f.place));
  return { place: worst(falls.filter((f) => !f.grazes)), grazing: worst(falls.filter((f) => f.grazes)), beyond: falls.filter((f) => f.beyond > 0.001).length, count: falls.length };
};
