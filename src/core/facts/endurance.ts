import table from '#shared/tables/endurance.json' with { type: 'json' };

export const regions = ['general', 'ankle', 'trunk', 'elbow', 'grip', 'knee', 'shoulder'] as const;
export type Region = (typeof regions)[number];

/** The two numbers of one region's curve. */
export const enduranceOf = (region: Region): { b0: number; b1: number } => {
  const row = table.rows.find(([name]) => name === region) as [string, number, number];
  return { b0: row[1], b1: row[2] };
};
