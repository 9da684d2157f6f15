import classes from '#shared/tables/hearing-classes.json' with { type: 'json' };
import shifts from '#shared/tables/shift-additions.json' with { type: 'json' };

/** The lowest class of protector meant for a daily noise, dB(A); null above them all. */
export const classFor = (level: number): number | null => classes.rows.find((row) => level < (row[2] as number))?.[0] as number | undefined ?? null;

/** Decibels added to the daily noise for a shift of so many hours. */
export const shiftAddition = (hours: number): number => shifts.rows.filter(([from]) => hours >= (from as number)).at(-1)?.[1] as number;
