/** The union from beside: stem and branch as one outline, ridge, collar, the cut, the other cut to compare. True to scale. */
import { said } from '../kit/figures.ts';
import { inset, onStep, unplace } from '../kit/frame.ts';
import { along } from '../kit/labels.ts';
import { arc, around, pen, polygon, segment, smooth } from '../kit/path.ts';
import { sketch, type Sketch, type View } from '../kit/picture.ts';
import type { Box, Handle, Point } from '../kit/placed.ts';
import { say, word } from '../kit/say.ts';
import { add, between, less, times, unit } from '../kit/vector.ts';
import { ridge } from '../marks/ridge.ts';
import type { Face, Move } from './geometry.ts';
import type { Scene } from './scene.ts';

/** The swelling: its outline from a point down the stem to one out on the branch's lower edge. */
const bulge = ({ inputs, out, up, across, joint, cut }: Scene): Point[] => {
  const { branchDiameter: d, collarSwell, union } = inputs;
  if (union === 'noCollar' || union === 'codominant') return [joint];
  const swell = (d * (collarSwell - 1)) / 2 + d * 0.05;
  const onBranch = (t: number, off: number): Point => add(add(times(across, d + off), times(out, t)), [0, 0]);
  const start = joint[0] * out[0] + joint[1] * out[1];
  // It ends before the cut.
  const cutEnds = cut[1][0] * out[0] + cut[1][1] * out[1];
  const reach = union === 'dead' ? d * 1.15 - Math.min(0, start) : Math.min(d * 0.42, Math.max(d * 0.12, cutEnds - start - d * 0.05));
  const first = add(joint, times(up, -d * 0.4));
  if (union === 'dead') return [first, onBranch(start + d * 0.28, swell * 1.2), onBranch(start + reach * 0.7, swell), onBranch(start + reach, 0)];
  return [first, onBranch(start + reach * 0.35, swell * 0.9), onBranch(start + reach, 0)];
};

const edges = (scene: Scene) => {
  const { inputs, up, out, across, stemShown, reach, ridgeFoot } = scene;
  const d = inputs.branchDiameter;
  const lower = bulge(scene);
  const left: Point = [-up[1] * stemShown, up[0] * stemShown];
  const depth = Math.max(-(lower[0]![0] * up[0] + lower[0]![1] * up[1]), -(ridgeFoot[0] * up[0] + ridgeFoot[1] * up[1])) + d * 0.35;
  const height = d * 0.6;
  return {
    lower, left,
    top: times(up, height), bottom: times(up, -depth),
    tip: times(out, reach), tipUnder: add(times(out, reach), times(across, d)),
  };
};

const wave = (s: Sketch, path: ReturnType<typeof pen>, a: Point, b: Point) => {
  const [p, q] = [s.at(...a), s.at(...b)];
  const off = times(unit([q[1] - p[1], p[0] - q[0]]), 6);
  path.bezierCurveTo(...add(between(p, q, 0.3), off), ...less(between(p, q, 0.65), off), ...q);
};

const wood = (s: Sketch, scene: Scene, e: ReturnType<typeof edges>) => {
  const path = pen();
  const to = (p: Point) => path.lineTo(...s.at(...p));
  path.moveTo(...s.at(...e.top));
  to([0, 0]);
  to(e.tip);
  wave(s, path, e.tip, e.tipUnder);
  const back = [...e.lower].reverse();
  to(back[0]!);
  // The swelling as a smooth line through its points.
  const on = (i: number): Point => s.at(...back[Math.min(Math.max(i, 0), back.length - 1)]!);
  for (let i = 0; i < back.length - 1; i += 1) {
    path.bezierCurveTo(...add(on(i), times(less(on(i + 1), on(i - 1)), 1 / 6)), ...add(on(i + 1), times(less(on(i), on(i + 2)), 1 / 6)), ...on(i + 1));
  }
  to(e.bottom);
  wave(s, path, e.bottom, add(e.bottom, e.left));
  if (scene.stemShown < scene.stemWidth) wave(s, path, add(e.bottom, e.left), add(e.top, e.left));
  else to(add(e.top, e.left));
  wave(s, path, add(e.top, e.left), e.top);
  path.closePath();
  s.draw({ mark: 'stem', d: path.toString() });
  const [cutTop, cutEnd] = scene.cut;
  s.draw({ mark: 'piece', d: polygon([cutTop, e.tip, e.tipUnder, cutEnd].map((p) => s.at(...p))) });
  if (scene.inputs.union === 'dead') {
    // Where the living wood ends on the dead branch.
    const end = e.lower.at(-1)!;
    const over = add(end, times(scene.across, -scene.inputs.branchDiameter));
    s.draw({ mark: 'collar', d: smooth([end, add(between(end, over, 0.5), times(scene.out, -scene.inputs.branchDiameter * 0.12)), over].map((p) => s.at(...p))) });
  }
  if (e.lower.length > 1) {
    const d = scene.inputs.branchDiameter;
    for (const k of [0.16, 0.32]) {
      const line = e.lower.map((p) => add(p, times(scene.across, -d * k)));
      s.draw({ mark: 'collar', d: smooth([line[0]!, between(line[0]!, line.at(-1)!, 0.55), line.at(-1)!].map((p) => s.at(...p))) });
    }
  }
};

const through = (s: Sketch, [a, b]: [Point, Point], more: number): [Point, Point] => {
  const [p, q] = [s.at(...a), s.at(...b)];
  const by = times(unit(less(q, p)), more);
  return [less(p, by), add(q, by)];
};

const angleHandles = (s: Sketch, scene: Scene, e: ReturnType<typeof edges>, labels: View<Face>['labels']): Handle<Move>[] => {
  const { inputs, ridgeFoot } = scene;
  /** Degrees clockwise from upright of a point of the sheet, seen from the top of the ridge: −180 to 180. */
  const turned = (point: Point): number => {
    const [x, y] = unplace(s.frame, point);
    return (Math.atan2(x, y) * 180) / Math.PI;
  };
  const wrapped = (degrees: number): number => ((degrees + 540) % 360) - 180;
  const handle = (id: 'branchAngle' | 'ridgeAngle' | 'stemLean', [x, y]: Point, way: 'across' | 'up', min: number, max: number, at: (point: Point) => number): Handle<Move> => ({
    id, label: word(labels, id), way, x, y, min, max, step: 1, value: inputs[id], says: said('deg', inputs[id]),
    at: (point) => onStep(at(point), min, max, 1),
    move: (value) => ({ [id]: value }) as Move,
  });
  const tip = s.at(...times(scene.out, scene.reach * 0.86));
  const foot = s.at(...ridgeFoot);
  const lean = s.at(...e.top);
  return [
    handle('branchAngle', tip, 'up', 15, 120, (p) => wrapped(turned(p) - inputs.stemLean)),
    handle('ridgeAngle', foot, 'across', 10, 80, (p) => wrapped(turned(p) - 180 - inputs.stemLean)),
    handle('stemLean', lean, 'across', -45, 45, (p) => turned(p)),
  ];
};

export const side = (scene: Scene, view: View<Face>, box: Box) => {
  const { inputs, ridgeFoot, cut, other, up } = scene;
  const e = edges(scene);
  const all = [e.top, add(e.top, e.left), e.bottom, add(e.bottom, e.left), e.tip, e.tipUnder, cut[1], ...(other ? [other[1]] : []), ridgeFoot];
  const r = around(all);
  const s = sketch({ left: r.x, right: r.x + r.width, bottom: r.y, top: r.y + r.height }, box, inset(10, { left: box.width * 0.19, right: box.width * 0.19, bottom: e.lower.length > 1 ? 30 : 14, top: 16 }), view.held);
  wood(s, scene, e);
  s.draw(ridge(s.at(...times(ridgeFoot, 0.02)), s.at(...ridgeFoot)));
  const text = (name: string) => say(word(view.labels, name), scene.figures);
  const [from, to] = through(s, cut, 12);
  const mirrored = inputs.union === 'collar' || inputs.union === 'noCollar';
  if (mirrored) {
    const [head, foot] = [s.at(...times(up, inputs.branchDiameter * 0.5)), s.at(...e.bottom)];
    s.draw({ mark: 'guide', d: segment(head, foot) });
    const radius = Math.max(18, s.px(Math.min(inputs.ridgeLength, inputs.branchDiameter) * 0.45));
    const straight = 270 - inputs.stemLean;
    s.draw({ mark: 'dim', d: arc(s.at(0, 0), radius, straight - inputs.ridgeAngle, straight) + arc(s.at(0, 0), radius + 4, straight, straight + inputs.ridgeAngle) });
  }
  const [joint, under, low] = [s.at(...scene.joint), s.at(...e.tipUnder), s.at(...e.bottom)];
  s.keepOff.push(...along(from, to, 5), ...along(s.at(0, 0), s.at(...ridgeFoot), 5), ...along(joint, under), ...along(joint, low), ...along(s.at(...e.bottom), s.at(...add(e.bottom, e.left))));
  if (other) {
    const [a, b] = through(s, other, 16);
    s.draw({ mark: 'othercut', d: segment(a, b) });
    s.keepOff.push(...along(a, b, 4));
    s.asks.push({ text: text(mirrored ? 'square' : 'level'), at: b, places: ['below-right', 'below', 'right'], wrap: 13 });
  }
  s.draw({ mark: 'cut', d: segment(from, to) });
  // How steep: level through the outer end of the cut.
  const level = add(to, [46, 0]);
  s.draw({ mark: 'guide', d: segment(to, level) });
  s.asks.unshift(
    { text: text('cut' in view.labels && 'cutFromHorizontal' in scene.figures ? 'cut' : 'cutOnly'), at: level, places: ['right', 'below-right', 'below', 'above-right', 'below-left'], strong: true, wrap: 13, gap: 4 },
    { text: text('ridge'), at: s.at(...between([0, 0], ridgeFoot, 0.6)), places: ['left', 'above-left', 'below-left'], gap: 14, wrap: 11 },
  );
  if (e.lower.length > 1) {
    s.asks.push({ text: text(inputs.union === 'dead' ? 'sleeve' : 'collar'), at: s.at(...e.lower[1]!), places: ['below-right', 'right', 'below', 'below-left'], gap: 12, wrap: 12 });
  }
  s.asks.push({ text: text('goes'), at: s.at(...add(times(scene.out, scene.reach * 0.72), times(scene.across, inputs.branchDiameter / 2))), places: ['on'], leader: false });
  return { s, handles: angleHandles(s, scene, e, view.labels) };
};
