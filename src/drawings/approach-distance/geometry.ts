/** The space round a line that stays empty, seen along the line, with a person and a pole saw outside it; true to scale. */
import type { approachDistance } from '#core/calculators/approach-distance.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { planOn } from '../kit/figures.ts';
import { inset } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { around, circle, polygon, polyline } from '../kit/path.ts';
import { finish, sketch, type View } from '../kit/picture.ts';
import type { Box, Placed, Point } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';
import { less } from '../kit/vector.ts';
import { dimension } from '../marks/dimension.ts';
import { ground } from '../marks/ground.ts';
import { lineEnd } from '../marks/line.ts';
import { person } from '../marks/person.ts';
import { pole } from '../marks/pole.ts';
import { showValue } from '#core/kit/show.ts';

export type Face = 'side';
export type Inputs = InputsOf<(typeof approachDistance)['inputs']>;

/** How the picture looks: the lowest the ring hangs over the ground, the person's distance from it, the pole held. */
const looks = { low: 3.2, apart: 1.2, pole: 2.6, angle: 40, hand: 1.1 };

/** Without an answer no ring can be drawn; the last good one is handed over then. */
export const geometry = (_inputs: Inputs, outcome: Outcome, view: View<Face>, box: Box): Placed<never> => {
  const distance = planOn(outcome, 'distance') ?? 0;
  const inside = outcome.kind === 'answer' && outcome.findings.some(({ id }) => id === 'aboveInside');
  const height = looks.low + distance;
  const reachOut = looks.pole * Math.cos((looks.angle * Math.PI) / 180);
  const feetAt = -(distance + looks.apart + reachOut);
  const top = height + distance + (inside ? 1.5 : 0);
  const s = sketch({ left: feetAt - 0.8, right: distance + 1, bottom: -0.2, top: top + 0.2 }, box, inset(8, { bottom: 14 }));
  const wire = s.at(0, height);
  const radius = s.px(distance);
  // A ring, or its lower half with all that is above it.
  const lid = s.at(0, top)[1];
  const lower = Array.from({ length: 37 }, (_, i): Point => [wire[0] - radius * Math.cos((i * Math.PI) / 36), wire[1] + radius * Math.sin((i * Math.PI) / 36)]);
  const open: Point[] = [[wire[0] - radius, lid], ...lower, [wire[0] + radius, lid]];
  s.draw(
    { mark: 'steep', d: inside ? polygon(open) : circle(wire, radius) },
    { mark: 'limit', d: inside ? polyline(open) : circle(wire, radius) },
    ground(s.at(feetAt - 0.8, 0), s.at(distance + 1, 0)),
    lineEnd(wire),
  );
  const measure = dimension(wire, [wire[0] + radius, wire[1]], 0);
  s.draw(measure.shapes);

  const feet = s.at(feetAt, 0);
  const rear = s.at(feetAt, looks.hand);
  const up = (looks.angle * Math.PI) / 180;
  const end: Point = s.at(feetAt + looks.pole * Math.cos(up), looks.hand + looks.pole * Math.sin(up));
  const figure = person(feet, rear, less(end, rear), s.frame.scale);
  s.draw(figure.behind, pole(rear, end, Math.max(s.px(0.25), 12)), figure.before);
  s.keepOff.push(around([feet, s.at(feetAt, 1.85)], s.px(0.3)), ...along(rear, end, 8), ...along(wire, [wire[0] + radius, wire[1]], 6), around([wire], 8));

  const shown = { unit: 'm', step: 0.01 } as const;
  const said = { metric: showValue(shown, distance, 'metric', 'up'), imperial: showValue(shown, distance, 'imperial', 'up') };
  const text = (name: string) => say(word(view.labels, name), { distance: said });
  s.asks.push(
    { text: text('distance'), at: measure.middle, places: ['above', 'below'], gap: 5, strong: true, leader: false },
    { text: text('line'), at: wire, places: ['left', 'above-left'], gap: 10, leader: false },
    { text: text('empty'), at: [wire[0] - radius * 0.95, wire[1] - radius * 0.3], places: ['left', 'above-left', 'on', 'below'], wrap: 15, gap: 8 },
  );
  if (inside) s.asks.push({ text: text('above'), at: [wire[0], lid + 24], places: ['on', 'above', 'left'], wrap: 18, leader: false });
  return { ...finish(s), handles: [] };
};
