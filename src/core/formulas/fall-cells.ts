/**
 * Every fall of a limb, in cells. A limb let go at angle a that has turned on to angle θ has its centre at
 * x = c (cos a + (a − θ) sin a): the speed has gone out of it. So a place of a fall is a pair (a, θ), and the energy that
 * the hinge ate, the height and the slope only say how far on θ can go before the ground. At one θ, x only grows with a.
 *
 * Lengths of the limb and with gravity one; angles in radians above the horizontal; x the way the limb points from plumb
 * under the cut.
 */
import type { Shape } from './falling-limb.ts';

export type Ends = readonly [number, number];
/** What is given: ends that are equal where it is known. `height`: of the cut; `span`: how far it may turn before it lets go. */
export type Given = { height: Ends; start: Ends; slope: Ends; span: number; shape: Shape };

/**
 * One θ of a column, ranges over the column's releases: the centre from `left` to `right`; `tall`: its height were it
 * not yet falling, most; `low`: with the lower end on the ground, least. How high each end would be over the ground
 * without the fall, and how far the centre would then have come down from where the limb was held.
 */
export type Node = {
  angle: number; cos: number; sin: number; left: number; right: number; tall: number; low: number; drop: number;
  buttLeast: number; buttMost: number; tipLeast: number; tipMost: number;
};
/** Releases from one angle up to another, and the most spin that any of them has; how far out and back no centre of their falls gets beyond. */
export type Column = { from: number; to: number; cosMost: number; spin: number; out: number; back: number };
/** Between two θ of a column; `turned`: since the release, least and most. The walk uses the same objects again and again: look, do not keep. */
export type Cell = { column: Column; above: Node; below: Node; turnedLeast: number; turnedMost: number };

const blank = (): Node => ({ angle: 0, cos: 0, sin: 0, left: 0, right: 0, tall: 0, low: 0, drop: 0, buttLeast: 0, buttMost: 0, tipLeast: 0, tipMost: 0 });

export const step = Math.PI / 36;
const around = 72;
const cosOf = Array.from({ length: around }, (_, k) => Math.cos(k * step));
const sinOf = Array.from({ length: around }, (_, k) => Math.sin(k * step));
const onTurn = (k: number): number => ((k % around) + around) % around;

/**
 * Walks all cells that a fall can be in, in the columns that are worth it, `upwards` from the lowest release or down from
 * the highest.
 * @returns whether there was one: whether any limb of these starts clear of the ground
 */
export const eachCell = ({ height: [lowest, highest], start, slope, span, shape }: Given, upwards: boolean, worth: (column: Column) => boolean, visit: (cell: Cell) => void): boolean => {
  const c = shape.centre;
  const t1 = Math.tan(slope[0]);
  const t2 = Math.tan(slope[1]);
  const drive = (2 * c) / shape.aboutButt;
  /** Spin squared at a release, nothing eaten, from the highest start that may still hold it. */
  const spin2 = (a: number): number => Math.max(0, drive * (Math.sin(Math.min(start[1], a + span)) - Math.sin(a)));
  const clear = (a: number): boolean => highest + Math.sin(a) - Math.cos(a) * t1 > 0;
  /** The lowest and the highest ground between two places. */
  const groundLeast = (x1: number, x2: number): number => Math.min(x1 * t1, x1 * t2, x2 * t1, x2 * t2);
  const groundMost = (x1: number, x2: number): number => Math.max(x1 * t1, x1 * t2, x2 * t1, x2 * t2);

  /** Centres stay over the ground: turned² ÷ 2 spin² + c turned (cos a + tan sin a) is at most height + c (sin a − tan cos a). */
  const columnOf = (from: number, to: number): Column => {
    const spin = Math.sqrt(Math.max(spin2(from), spin2(to), spin2(Math.max(from, Math.min(to, steepest)))));
    const [cos1, cos2, sin1, sin2] = [Math.cos(from), Math.cos(to), Math.sin(from), Math.sin(to)];
    const [cosLeast, cosMost] = [Math.min(cos1, cos2), Math.max(cos1, cos2)];
    const braked = c * (cosLeast + Math.min(sin1 * t1, sin1 * t2, sin2 * t1, sin2 * t2)) * spin;
    const room = Math.max(0, highest + c * (sin2 - Math.min(cosLeast * t1, cosMost * t1)));
    const turned = spin * (Math.sqrt(braked * braked + 2 * room) - braked);
    return { from, to, cosMost, spin, out: c * (cosMost + turned * Math.max(0, sin2)), back: c * (turned * Math.max(0, -sin1) - cosLeast) };
  };

  let [above, below, tried] = [blank(), blank(), blank()];
  const cell: Cell = { column: { from: 0, to: 0, cosMost: 0, spin: 0, out: 0, back: 0 }, above, below, turnedLeast: 0, turnedMost: 0 };
  const walk = (column: Column): void => {
    const { from, to, spin } = column;
    const cosFrom = Math.cos(from);
    const sinFrom = Math.sin(from);
    const cosTo = Math.cos(to);
    const sinTo = Math.sin(to);
    const place = (node: Node, angle: number, cos: number, sin: number): void => {
      // Who has turned on to here was let go no lower than here.
      const whole = angle <= from;
      const turned = to - angle;
      const left = whole ? c * (cosFrom + (from - angle) * sinFrom) : c * cos;
      const right = c * (cosTo + turned * sinTo);
      const drop1 = whole ? c * (sinFrom - (from - angle) * cosFrom) : c * sin;
      const drop2 = c * (sinTo - turned * cosTo);
      const least = lowest + Math.min(drop1, drop2);
      const tall = highest + Math.max(drop1, drop2);
      const butt = -c * cos;
      const tip = (1 - c) * cos;
      const underButt = groundLeast(left + butt, right + butt);
      const underTip = groundLeast(left + tip, right + tip);
      node.angle = angle;
      node.cos = cos;
      node.sin = sin;
      node.left = left;
      node.right = right;
      node.tall = tall;
      node.low = Math.max(underButt + c * sin, underTip - (1 - c) * sin);
      node.drop = Math.min(drop1, drop2);
      node.buttLeast = least - c * sin - groundMost(left + butt, right + butt);
      node.buttMost = tall - c * sin - underButt;
      node.tipLeast = least + (1 - c) * sin - groundMost(left + tip, right + tip);
      node.tipMost = tall + (1 - c) * sin - underTip;
    };
    /** How high over the ground the lower end still may be; under nothing it has touched, wherever in the column it was let go. */
    const over = (node: Node): number => Math.min(node.buttMost, node.tipMost) - ((from - node.angle) / spin) ** 2 / 2;
    cell.column = column;
    place(above, to, cosTo, sinTo);
    for (let k = Math.ceil(to / step) - 1; ; k--) {
      const turn = onTurn(k);
      place(below, k * step, cosOf[turn]!, sinOf[turn]!);
      const last = below.angle <= from && over(below) <= 0;
      if (last) {
        // Where between the two it touches: any place that it cannot pass will do.
        let a = Math.min(from, above.angle);
        for (let i = 0; i < 6; i++) {
          const angle = (a + below.angle) / 2;
          place(tried, angle, Math.cos(angle), Math.sin(angle));
          if (over(tried) > 0) a = angle;
          else [below, tried] = [tried, below];
        }
      }
      cell.above = above;
      cell.below = below;
      cell.turnedLeast = Math.max(0, from - above.angle);
      cell.turnedMost = to - below.angle;
      visit(cell);
      if (last) return;
      [above, below] = [below, above];
    }
  };

  const end = Math.max(start[0] - span, -Math.PI / 2);
  const steepest = -span / 2;
  const columns: Column[] = [];
  for (let to = start[1]; to > end; ) {
    const from = Math.max(end, (Math.ceil(to / step - 1e-9) - 1) * step);
    if (clear(from) || clear(to)) {
      columns.push(columnOf(from, to));
    } else if (to <= start[0]) break;
    to = from;
  }
  if (upwards) columns.reverse();
  for (const column of columns) if (worth(column)) walk(column);
  return columns.length > 0;
};
