/** The outside examples of each calculator, `shared/checks/<id>.json`: the same files the tests run. */
import type { z } from 'astro/zod';
import type { checks } from '../schemas.ts';

export type CheckFile = z.infer<typeof checks>;
const files = import.meta.glob<{ default: CheckFile }>('/shared/checks/*.json', { eager: true });

export const allChecks: readonly CheckFile[] = Object.values(files).map((file) => file.default);
export const checksOf = (id: string): CheckFile | undefined => allChecks.find((file) => file.calculator === id);
