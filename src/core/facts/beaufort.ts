import table from '#shared/tables/beaufort.json' with { type: 'json' };

/** The classes of the Beaufort scale, force 0 first: wind `from` (m/s). */
export const beaufort = table.rows.map((row) => ({ from: row[1] as number, name: row[3] as string }));
