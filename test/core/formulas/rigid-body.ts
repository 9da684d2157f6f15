/**
 * The fall of a limb in a general-purpose rigid-body engine (planck): hinge, letting go, first touch, lying still. Nothing
 * of the code under test. Ends are small discs that grip (no slide) and do not bounce.
 */
import { Circle, Edge, RevoluteJoint, Settings, Vec2, World } from 'planck';

Settings.linearSlop = 0.0002;
Settings.velocityThreshold = 100; // below this approach speed nothing bounces: nothing does
const radius = 0.001;

export type Case = { length: number; centre: number; aboutButt: number; cutHeight: number; start: number; slope: number; release: number; kept: number };
export type Fallen = { hingeTime: number; flight: number; x: number; end: 'butt' | 'tip'; spin: number; rest: [number, number] };

/** @param step s; semi-implicit Euler: place and time are out by about its size times the speed */
export const simulate = (c: Case, step = 1 / 3000): Fallen => {
  const world = new World({ gravity: new Vec2(0, -9.80665), allowSleep: false });
  const ground = world.createBody();
  const far = 200;
  ground.createFixture({
    shape: new Edge(new Vec2(-far * Math.cos(c.slope), -far * Math.sin(c.slope)), new Vec2(far * Math.cos(c.slope), far * Math.sin(c.slope))),
    friction: 1e4, restitution: 0,
  });
  const limb = world.createBody({ type: 'dynamic', position: new Vec2(0, c.cutHeight), angle: c.start, bullet: true });
  const ends = [0, c.length].map((x) => limb.createFixture({ shape: new Circle(new Vec2(x, 0), radius), density: 1, friction: 1e4, restitution: 0 }));
  limb.setMassData({ mass: 1, center: new Vec2(c.centre * c.length, 0), I: c.aboutButt * c.length ** 2 });
  const post = world.createBody({ position: new Vec2(0, c.cutHeight) });
  const hinge = world.createJoint(new RevoluteJoint({}, post, limb, new Vec2(0, c.cutHeight)))!;
  let hingeTime = 0;
  while (limb.getAngle() > c.release) {
    world.step(step, 20, 10);
    hingeTime += step;
  }
  world.destroyJoint(hinge);
  const keep = Math.sqrt(c.kept);
  limb.setLinearVelocity(limb.getLinearVelocity().clone().mul(keep));
  limb.setAngularVelocity(limb.getAngularVelocity() * keep);
  const spin = -limb.getAngularVelocity();

  let flight = 0;
  let touched: number | null = null;
  let count = 0;
  world.on('begin-contact', (contact) => {
    if (touched === null) touched = ends.findIndex((f) => f === contact.getFixtureA() || f === contact.getFixtureB());
  });
  const endX = (i: number): number => limb.getWorldPoint(new Vec2(i === 0 ? 0 : c.length, 0)).x;
  while (touched === null && flight < 10) {
    world.step(step, 20, 10);
    flight += step;
  }
  const end = touched ?? 0;
  const x = endX(end);
  for (let t = 0; t < 20 && count < 200; t += step * 4) {
    world.step(step * 4, 20, 10);
    count = Math.abs(limb.getAngularVelocity()) < 0.01 && limb.getLinearVelocity().length() < 0.01 ? count + 1 : 0;
  }
  return { hingeTime, flight, x, end: end === 0 ? 'butt' : 'tip', spin, rest: [endX(0), endX(1)] };
};
