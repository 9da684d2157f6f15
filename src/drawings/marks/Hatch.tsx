/** The hatchings, as patterns; a drawing carries only those it uses. Told apart by line work alone, so that print keeps them. */
import type { Hatch as Name } from './looks.ts';

/** Size of the repeat in px, turn in degrees, lines in it, and whether what lies under it shows through. */
const hatches: { readonly [K in Name]: { size: number; turn: number; d: string; weight: number; dash?: string; clear?: boolean } } = {
  landing: { size: 8, turn: 45, d: 'M0 4H8', weight: 1.2, clear: true },
  steep: { size: 7, turn: 0, d: 'M2 2h1.6M5.5 5.5h1.6', weight: 1.6, clear: true },
  piece: { size: 9, turn: -45, d: 'M0 4.5H9', weight: 1 },
  uncut: { size: 4, turn: 0, d: 'M0 2H4', weight: 1 },
  squeezed: { size: 6, turn: 45, d: 'M0 3H6M3 0V6', weight: 1.1, clear: true },
  liquid: { size: 5, turn: 0, d: 'M0 2.5H5', weight: 1, clear: true },
  pulled: { size: 5, turn: 90, d: 'M0 2.5H5', weight: 1, clear: true },
};

export const Hatch = ({ name, id }: { name: Name; id: string }) => {
  const { size, turn, d, weight, clear } = hatches[name];
  return (
    <pattern id={id} width={size} height={size} patternUnits="userSpaceOnUse" patternTransform={`rotate(${turn})`}>
      {!clear && <rect class="paper" width={size} height={size} fill="var(--paper, Canvas)" />}
      <path d={d} fill="none" stroke="currentColor" stroke-width={weight} />
    </pattern>
  );
};
