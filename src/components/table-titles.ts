/** Every table that has a page of its own, by id. */
import { tables } from '#content/interface.json';
import { tablePages } from './reckoner/pages.ts';

export const tableTitles: ReadonlyMap<string, string> = new Map([
  ['approach-distances', tables.approach.title],
  ['qualified-workers', tables.qualified.title],
  ...tablePages.map(({ id, title }): [string, string] => [id, title]),
]);
