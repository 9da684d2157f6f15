/** Reads what lies in `shared/`. A file that is not JSON throws with its name. */
import { readFileSync } from 'node:fs';
import { filesIn } from '../content/words.ts';
import { checks, type Fact, facts, sources } from '#src/schemas.ts';

export const json = (file: string): unknown => {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch (error) {
    throw new Error(`${file}: ${String(error)}`);
  }
};

export const topicOf = (file: string): string => file.replace(/^.*\/|\.json$/g, '');

export const sourceFiles = filesIn('shared/sources', '.json');
export const valueFiles = filesIn('shared/values', '.json');
export const checkFiles = filesIn('shared/checks', '.json');

/** Source id -> the files that hold it. */
export const sourceHomes = (): Map<string, string[]> => {
  const homes = new Map<string, string[]>();
  for (const file of sourceFiles) for (const id of Object.keys(sources.parse(json(file)))) homes.set(id, [...(homes.get(id) ?? []), file]);
  return homes;
};

/** Full fact id (`topic.key`) -> fact. */
export const allFacts = (): Map<string, Fact> =>
  new Map(valueFiles.flatMap((file) => Object.entries(facts.parse(json(file))).map(([key, fact]) => [`${topicOf(file)}.${key}`, fact] as const)));

export const allChecks = () => checkFiles.map((file) => checks.parse(json(file)));
