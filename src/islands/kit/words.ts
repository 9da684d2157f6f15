/** The words an island is handed: frontmatter of its page, facts filled in as tokens (see components/words.ts). */
import type { CalculatorWords } from '../../schemas.ts';

export type IslandWords = Pick<
  CalculatorWords,
  'inputs' | 'outputs' | 'middle' | 'findings' | 'outside' | 'problems' | 'working' | 'drawing' | 'carries'
>;
/** Titles of the calculators that results carry on to. */
export type IslandProps = { words: IslandWords; titles?: Readonly<Record<string, string>>; base: string };
