/** A person with both hands on a pole, seen from the side (facing right) and from above; true to size. */
import type { Point, Shape } from '../kit/placed.ts';
import { circle, pen, polygon, rod } from '../kit/path.ts';
import { add, apart, between, leftOf, less, long, times, unit } from '../kit/vector.ts';

/** Lengths of an adult's parts, m; only how the figure looks hangs on them. */
const body = { hip: 0.93, shoulder: 1.43, head: 1.66, upperArm: 0.31, foreArm: 0.3, hands: 0.75 };

/** The elbow between shoulder and hand, on the lower side; an arm that is too short is drawn straight. */
const elbow = (shoulder: Point, hand: Point, upper: number, fore: number): Point => {
  const d = apart(shoulder, hand);
  if (d >= upper + fore) return between(shoulder, hand, upper / (upper + fore));
  const a = (upper * upper - fore * fore + d * d) / (2 * d);
  const out = Math.sqrt(Math.max(upper * upper - a * a, 0));
  const along = unit(less(hand, shoulder));
  const side = leftOf(along);
  return add(add(shoulder, times(along, a)), times(side, side[1] > 0 ? out : -out));
};

/** How far up the pole the front hand can be held, px from the rear hand: as far as wished, or as the arm reaches. */
const frontHand = (shoulder: Point, rear: Point, way: Point, wish: number, arm: number): Point => {
  for (let k = wish; k > wish * 0.3; k -= wish / 40) {
    const hand = add(rear, times(way, k));
    if (apart(shoulder, hand) <= arm) return hand;
  }
  return add(rear, times(way, wish * 0.3));
};

/** `feet` and `rear` (the rear hand) in px, `way` along the pole, `scale` px a metre. What lies behind the pole, and before it. */
export const person = (feet: Point, rear: Point, way: Point, scale: number): { behind: Shape[]; before: Shape[] } => {
  const at = (x: number, y: number): Point => [feet[0] + x * scale, feet[1] - y * scale];
  const m = (length: number) => length * scale;
  const hip = at(-0.1, body.hip);
  const shoulder = at(-0.12, body.shoulder);
  const front = frontHand(shoulder, rear, unit(way), m(body.hands), m(body.upperArm + body.foreArm));
  const arm = (hand: Point, bend = elbow(shoulder, hand, m(body.upperArm), m(body.foreArm))) =>
    rod(shoulder, bend, m(0.065), m(0.05)) + rod(bend, hand, m(0.05), m(0.045));
  const leg = (knee: Point, ankle: Point) =>
    rod(hip, knee, m(0.1), m(0.07)) + rod(knee, ankle, m(0.07), m(0.055)) + rod(ankle, add(ankle, [m(0.14), m(0.015)]), m(0.055), m(0.04));
  const head = at(-0.06, body.head);
  const helmet = pen();
  helmet.arc(head[0], head[1] - m(0.03), m(0.145), Math.PI, 2 * Math.PI);
  helmet.lineTo(head[0] + m(0.22), head[1] - m(0.03));
  helmet.lineTo(head[0] + m(0.22), head[1]);
  helmet.lineTo(head[0] - m(0.145), head[1]);
  helmet.closePath();
  const behind: Shape[] = [
    {
      mark: 'person',
      d: [
        leg(at(-0.2, 0.5), at(-0.27, 0.055)),
        leg(at(0.07, 0.51), at(0.1, 0.055)),
        rod(hip, shoulder, m(0.135), m(0.155)),
        rod(shoulder, at(-0.07, 1.58), m(0.06), m(0.06)),
        arm(rear),
        circle(add(head, [m(0.005), m(0.02)]), m(0.1)),
      ].join(''),
    },
    { mark: 'over', d: helmet.toString() },
  ];
  return { behind, before: [{ mark: 'person', d: arm(front) }] };
};

/** From above: shoulders, arms to the pole, helmet. `way` along the pole as seen from above. */
export const personAbove = (feet: Point, rear: Point, way: Point, scale: number): Shape[] => {
  const m = (length: number) => length * scale;
  const ahead = unit(way);
  const side = leftOf(ahead);
  const shoulder = (s: 1 | -1) => add(add(feet, times(ahead, m(-0.12))), times(side, s * m(0.2)));
  const flat = Math.min(long(way), 1);
  const front = add(rear, times(ahead, m(body.hands) * flat * 0.8));
  const brim = add(feet, times(ahead, m(0.06)));
  const helmet = circle(add(feet, times(ahead, m(-0.06))), m(0.14));
  return [
    {
      mark: 'person',
      d: rod(shoulder(1), shoulder(-1), m(0.11), m(0.11)) + rod(shoulder(1), front, m(0.06), m(0.045)) + rod(shoulder(-1), rear, m(0.06), m(0.045)),
    },
    {
      mark: 'over',
      d: helmet + polygon([add(brim, times(side, m(0.09))), add(add(brim, times(ahead, m(0.1))), times(side, m(0.06))), add(add(brim, times(ahead, m(0.1))), times(side, m(-0.06))), add(brim, times(side, m(-0.09)))]),
    },
  ];
};
