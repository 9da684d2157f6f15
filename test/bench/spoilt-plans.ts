/** Reads many files of plans that were damaged on their way, or made to do harm. */
import words from '#content/interface.json' with { type: 'json' };
import { faultsOfReading, spoiltFile } from '../core/plan/spoilt.ts';

const isSaid = (problem: string): boolean => problem in words.plans.fileProblems || problem in words.plans.planProblems;

/** @returns how many were read ill, with the first of them to start from, and the longest time one took, ms */
export const readSpoiltPlans = (count: number): { ill: number; first: string; slowest: number } => {
  let [ill, first, slowest] = [0, '', 0];
  for (let seed = 1; seed <= count; seed++) {
    const text = spoiltFile(seed);
    const begun = performance.now();
    let wrong: string[];
    try {
      ({ wrong } = faultsOfReading(text, isSaid));
    } catch (error) {
      wrong = [`threw ${error}`];
    }
    slowest = Math.max(slowest, performance.now() - begun);
    if (wrong.length === 0) continue;
    ill += 1;
    first ||= `seed ${seed}: ${wrong[0]}`;
  }
  return { ill, first, slowest };
};
