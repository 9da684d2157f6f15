/** Tables for qualified electrical workers, 29 CFR 1910.269: a reference, never the reader's distance. kV between phases, m. */
import byOvervoltage from '#shared/tables/approach-by-overvoltage.json' with { type: 'json' };
import tables from '#shared/tables/approach-qualified.json' with { type: 'json' };

export type Exposure = 'phaseToGround' | 'phaseToPhase';
export const qualified = tables;
export const publishedByOvervoltage = byOvervoltage;
