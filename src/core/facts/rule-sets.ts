/**
 * The rule sets for approach distances, one file each in `shared/tables/rules`: for people who are not authorised by the
 * operator of the line. Voltages in kV, distances in m. Its shape is held by `ruleSet` in src/schemas.ts.
 */
import { ruleFiles } from './rule-list.ts';

export type RuleStatus = 'published' | 'second-hand' | 'memory';
/** `between-phases`: the line's nominal voltage; `to-ground`: that over √3 on three phases. */
export type Basis = 'between-phases' | 'to-ground';
export type Band = {
  /** The band's upper edge (kV), its own unless `including` is false; null: no upper edge. */
  upTo: number | null;
  including?: boolean;
  distance: number;
  status: RuleStatus;
  /** As printed in the source's own unit. */
  as?: { value: number; unit: string };
  /** The voltage as printed, where edges were filled in. */
  printed?: string;
  /** Grows by `add` for every started step of `every` kV over `from`. */
  steps?: { from: number; every: number; add: number };
  /** Between the distance and this one a registered spotter is asked for. */
  spotter?: number;
  source?: string;
  locator?: string;
  note?: string;
};
export type BandTable = {
  basis: Basis;
  /** Nothing is said for voltages up to this, its own included unless `includingOver`. */
  over?: number;
  includingOver?: boolean;
  bands: readonly Band[];
};
export type RuleSet = {
  id: string;
  title: string;
  place: string;
  rule: string;
  weight: 'law' | 'code' | 'standard' | 'guidance' | 'operator';
  edition: string;
  /** For whom it is. */
  whom: string;
  source?: string;
  locator?: string;
  /** What the rule names as kept away from the line. */
  counts: readonly ('body' | 'clothing' | 'tool' | 'heldConductor' | 'branch' | 'platform')[];
  /** Whether all above the conductors counts as inside. */
  above: 'inside' | 'not-said';
  /** Whether the line's own movement comes on top of the distance. */
  movement: 'on-top' | 'included' | 'not-said';
  /** Edges between printed voltages filled in with the next larger figure. */
  edges: 'as-printed' | 'filled';
  persons: BandTable;
  /** For a platform or other plant, where the rule has figures of its own; the larger of the two leads. */
  plant?: BandTable;
  /** The set's own distance where the voltage is not known. */
  unknown?: number;
  /** Whom to ask. */
  ask: string;
  notes: readonly string[];
};

/** All rule sets, by place and then by id. */
export const ruleSets: readonly RuleSet[] = Object.entries(ruleFiles as unknown as Record<string, Omit<RuleSet, 'id'>>)
  .map(([id, set]) => ({ ...set, id }));

/** The edition of a set's figures, as eight hexadecimal digits (FNV-1a of 32 bits): it changes when a figure does. */
export const stampOf = ({ persons, plant, unknown }: Pick<RuleSet, 'persons' | 'plant' | 'unknown'>): string => {
  let hash = 0x811c9dc5;
  for (const c of JSON.stringify([persons, plant ?? null, unknown ?? null])) hash = Math.imul(hash ^ (c.codePointAt(0) as number), 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, '0');
};

/** How a link names a set and the edition of its figures: `au-sa.1a2b3c4d`. */
export const ruleMark = (set: RuleSet): string => `${set.id}.${stampOf(set)}`;

/** What a link's mark says now: the set's id, and whether its figures have changed since; null for a set that is gone. */
export const readMark = (mark: string): { id: string; changed: boolean } | null => {
  const set = ruleSet(mark.split('.')[0] as string);
  return set ? { id: set.id, changed: mark !== ruleMark(set) } : null;
};

/** Whether the rule names all that a pole saw brings near a line; clothing goes with the body. */
export const namesAll = ({ counts }: Pick<RuleSet, 'counts'>): boolean =>
  (['body', 'tool', 'heldConductor', 'branch', 'platform'] as const).every((part) => counts.includes(part));

export const ruleSet = (id: string): RuleSet | undefined => ruleSets.find((set) => set.id === id);
