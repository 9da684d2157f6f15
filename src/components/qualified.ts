/** The distances of qualified electrical workers for their page: printed and by equation, and higher up. */
import { qualified } from '#core/facts/qualified.ts';
import { distanceAbove72, distanceUpTo72, upToCentimetre } from '#core/formulas/approach-qualified.ts';
import { distanceText, voltText } from './distances.ts';

type Text = { metric: string; imperial: string };
const shown = (metres: number | null): Text | null => (metres === null ? null : distanceText(metres));

export type QualifiedRow = { volts: string; ground: Text | null; phase: Text | null; spanned: Text | null };

/** Rows of Tables; with a tool in the gap by equation, from where the equation has it. */
export const qualifiedRows: readonly QualifiedRow[] = [
  ...qualified.r6.map((row) => ({ volts: `${voltText(row.over)} – ${voltText(row.upTo)}`, ground: shown(row.phaseToGround), phase: shown(row.phaseToPhase), spanned: null })),
  ...qualified.r7.map((row) => ({
    volts: `${voltText(row.over)} – ${voltText(row.upTo)}`,
    ground: shown(row.phaseToGround),
    phase: shown(row.phaseToPhase),
    spanned: shown(upToCentimetre(distanceAbove72({ highest: row.upTo, overvoltage: row.overvoltage, exposure: 'phaseToPhase', spanned: true }))),
  })),
];

/** Two rows of the tables, taken up in height: by equation and by the table's footnote. */
const examples = [qualified.r6.find(({ upTo }) => upTo === 36), qualified.r7.find(({ upTo }) => upTo === 145)].filter((row) => row !== undefined);

const atHeight = (row: (typeof examples)[number], altitude: number): { equation: Text; whole: Text } => ({
  equation: distanceText(upToCentimetre(
    'overvoltage' in row
      ? distanceAbove72({ highest: row.upTo, overvoltage: row.overvoltage as number, exposure: 'phaseToGround', altitude })
      : distanceUpTo72(row.upTo, qualified.r4.find(({ upTo }) => upTo === row.upTo)?.phaseToGround ?? 0, altitude),
  )),
  whole: distanceText(upToCentimetre((row.phaseToGround as number) * altitude)),
});

export const altitudeColumns: readonly string[] = examples.map(({ upTo }) => voltText(upTo));
export const altitudeRows = qualified.r5.map(({ to, factor }) => ({ height: { metric: `${to}\u00a0m`, imperial: distanceText(to).imperial.replace(/\u00a0\d+\u00a0in$/, '') }, factor, cells: examples.map((row) => atHeight(row, factor)) }));
