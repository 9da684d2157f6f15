/** A side or a sheet as SVG, true to size: the layout's own points, each run of type held to the width it was measured. */
import type { Placed } from '#core/card/place.ts';
import { point } from '#core/card/type.ts';

const mm = (n: number): string => String(Number(n.toFixed(2)));
export const faces = "Helvetica, Arial, 'Liberation Sans', sans-serif";
const colours = { none: 'none', ink: '#000', paper: '#fff' } as const;

const Mark = ({ placed: p }: { placed: Placed }) =>
  p.kind === 'type' ? (
    <text x={mm(p.x)} y={mm(p.y)} font-size={mm(p.size * point)} font-weight={p.strong ? 700 : undefined} textLength={mm(p.width)} lengthAdjust="spacingAndGlyphs">{p.text}</text>
  ) : (
    <path
      d={`M${p.points.map(([x, y]) => `${mm(x)} ${mm(y)}`).join('L')}${p.closed ? 'Z' : ''}`}
      fill={colours[p.fill]}
      stroke={p.weight > 0 ? '#000' : undefined}
      stroke-width={p.weight > 0 ? mm(p.weight) : undefined}
      stroke-dasharray={p.dash ? p.dash.map(mm).join(' ') : undefined}
    />
  );

type Props = { page: { width: number; height: number; placed: readonly Placed[] }; label: string };

export const Svg = ({ page, label }: Props) => (
  <svg viewBox={`0 0 ${mm(page.width)} ${mm(page.height)}`} width={`${mm(page.width)}mm`} height={`${mm(page.height)}mm`} role="img" aria-label={label} font-family={faces} stroke-linejoin="round">
    <rect width={mm(page.width)} height={mm(page.height)} fill="#fff" />
    {page.placed.map((placed, i) => <Mark key={i} placed={placed} />)}
  </svg>
);
