/** A handle: dragged with pointer or finger, moved with arrow and Page keys; a slider to those who cannot see it. */
import { useRef } from 'preact/hooks';
import type { Handle as Placed, OnMove, Point } from '../kit/placed.ts';
import type { UnitSystem } from '#core/kit/units.ts';

type Props<Move> = {
  handle: Placed<Move>;
  /** Half the size of the target, in units of the box: 24 px as rendered. */
  reach: number;
  units: UnitSystem;
  onMove: OnMove<Move>;
  /** True while it is dragged. */
  onHold: (held: boolean) => void;
};

const steps: { readonly [key: string]: number } = {
  ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 10, PageDown: -10,
};

/** A point of the screen in units of the sheet it lies on. */
const onSheet = (target: SVGGElement, event: PointerEvent): Point => {
  const matrix = target.ownerSVGElement?.getScreenCTM()?.inverse();
  const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
  return [point.x, point.y];
};

export function Handle<Move>({ handle, reach, units, onMove, onHold }: Props<Move>) {
  /** From where it was taken hold of to its middle. */
  const grab = useRef<Point | null>(null);
  const { x, y, min, max, value, step } = handle;
  /** To the screen's right is less where the person stands on the left: the keys follow the eye. */
  const turned = handle.way === 'across' && handle.at([x + 40, y]) < handle.at([x, y]) ? -1 : 1;

  const byKey = (event: KeyboardEvent) => {
    const jump = event.key === 'Home' ? min - value : event.key === 'End' ? max - value : (steps[event.key] ?? 0) * step;
    if (jump === 0) return;
    event.preventDefault();
    const way = /Left|Right/.test(event.key) ? turned : 1;
    onMove(handle.move(Number(Math.min(Math.max(value + way * jump, min), max).toFixed(6))));
  };
  const take = (event: PointerEvent) => {
    const target = event.currentTarget as SVGGElement;
    const [px, py] = onSheet(target, event);
    grab.current = [x - px, y - py];
    target.setPointerCapture(event.pointerId);
    onHold(true);
  };
  const drag = (event: PointerEvent) => {
    if (!grab.current) return;
    const [px, py] = onSheet(event.currentTarget as SVGGElement, event);
    const to = handle.at([px + grab.current[0], py + grab.current[1]]);
    if (to !== value) onMove(handle.move(to));
  };
  const drop = () => {
    grab.current = null;
    onHold(false);
  };
  return (
    <g
      class={`mark-handle ${handle.way}`}
      role="slider"
      tabIndex={0}
      aria-label={handle.label}
      aria-orientation={handle.way === 'up' ? 'vertical' : 'horizontal'}
      aria-valuemin={min}
      aria-valuemax={max}
      aria-valuenow={value}
      aria-valuetext={handle.says[units]}
      onKeyDown={byKey}
      onPointerDown={take}
      onPointerMove={drag}
      onPointerUp={drop}
      onPointerCancel={drop}
    >
      {handle.area && <rect {...handle.area} fill="transparent" />}
      <circle cx={x} cy={y} r={reach} fill="transparent" />
      <circle class="thumb" cx={x} cy={y} r="7" fill="var(--paper, Canvas)" stroke="currentColor" stroke-width="2" />
      <path
        d={handle.way === 'up' ? `M${x - 4} ${y - 11}l4 -4l4 4M${x - 4} ${y + 11}l4 4l4 -4` : `M${x - 11} ${y - 4}l-4 4l4 4M${x + 11} ${y - 4}l4 4l-4 4`}
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        stroke-linecap="round"
        stroke-linejoin="round"
      />
    </g>
  );
}
