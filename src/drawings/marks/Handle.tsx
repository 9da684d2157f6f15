/** A handle: dragged with pointer or finger, moved with arrow and Page keys; a slider to those who cannot see it. */
import { useEffect, useRef } from 'preact/hooks';
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

/** Where the pointer was when it took hold, where the handle was then, and px of the screen to a unit of the box. */
type Grab = { pointer: Point; handle: Point; scale: number };

export function Handle<Move>({ handle, reach, units, onMove, onHold }: Props<Move>) {
  const grab = useRef<Grab | null>(null);
  const itself = useRef<SVGGElement>(null);
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
    const scale = target.ownerSVGElement?.getScreenCTM()?.a ?? 1;
    grab.current = { pointer: [event.clientX, event.clientY], handle: [x, y], scale };
    target.setPointerCapture(event.pointerId);
    onHold(true);
  };
  /** By how far the pointer has moved, not by where it is: the page may shift under it when a notice comes or goes. */
  const drag = (event: PointerEvent) => {
    if (!grab.current) return;
    const { pointer, handle: from, scale } = grab.current;
    const to = handle.at([from[0] + (event.clientX - pointer[0]) / scale, from[1] + (event.clientY - pointer[1]) / scale]);
    if (to !== value) onMove(handle.move(to));
  };
  const follow = useRef(drag);
  follow.current = drag;
  // A browser holds pointermove back until the next frame; where it tells of moves at once, the first is followed while it waits.
  const ahead = useRef(false);
  useEffect(() => {
    const early = (event: Event) => {
      if (ahead.current) return;
      ahead.current = true;
      follow.current(event as PointerEvent);
    };
    itself.current?.addEventListener('pointerrawupdate', early);
  }, []);
  const inFrame = (event: PointerEvent) => {
    ahead.current = false;
    drag(event);
  };
  const drop = () => {
    grab.current = null;
    onHold(false);
  };
  return (
    <g
      ref={itself}
      class={`mark-handle ${handle.way}`}
      role="slider"
      // As SVG spells it: made in the browser, `tabIndex` would be an attribute that means nothing.
      tabindex={0}
      aria-label={handle.label}
      aria-orientation={handle.way === 'up' ? 'vertical' : 'horizontal'}
      aria-valuemin={min}
      aria-valuemax={max}
      aria-valuenow={value}
      aria-valuetext={handle.says[units]}
      onKeyDown={byKey}
      onPointerDown={take}
      onPointerMove={inFrame}
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
      />
    </g>
  );
}
