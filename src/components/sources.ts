/** The sources of the handbook, by id. */
import { nearNames } from '#core/facts/door.ts';
import type { z } from 'astro/zod';
import type { source } from '../schemas.ts';

export type SourceRecord = z.infer<typeof source>;
const files = import.meta.glob<{ default: Record<string, SourceRecord> }>('/shared/sources/*.json', { eager: true });

export const sources: ReadonlyMap<string, SourceRecord & { kind: string }> = new Map(
  Object.entries(files).flatMap(([path, file]) => {
    const kind = path.replace(/^.*\/(.*)\.json$/, '$1');
    return Object.entries(file.default).map(([id, record]) => [id, { ...record, kind }] as const);
  }),
);

export const sourceOf = (id: string): SourceRecord & { kind: string } => {
  const found = sources.get(id);
  if (!found) throw new Error(`no source "${id}" in shared/sources; near: ${nearNames(id, [...sources.keys()]).join(', ') || 'none'}`);
  return found;
};
