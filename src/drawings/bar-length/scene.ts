/** What `bar-length` draws, in mm: the limb as entered, as large as the guess allows, and the bar over it. */
import type { barLength } from '#core/calculators/bar-length.ts';
import type { InputsOf } from '#core/kit/calculator.ts';
import type { Outcome } from '#core/kit/outcome.ts';
import { planOn, quantityOf, said } from '../kit/figures.ts';
import type { Figures } from '../kit/say.ts';

export type Inputs = InputsOf<(typeof barLength)['inputs']>;

export type Scene = {
  diameter: number;
  offSquare: number;
  bar: number;
  /** Across the cut, as entered. */
  width: number;
  /** The same at the figures to plan on. */
  most: { diameter: number; offSquare: number; width: number };
  needed: number;
  crosses: boolean;
  figures: Figures;
};

const perDegree = Math.PI / 180;

/** An outcome without an answer draws the figures as entered. */
export const sceneOf = (inputs: Inputs, outcome: Outcome): Scene => {
  const { limbDiameter, offSquare, barLength: bar, margin } = inputs;
  const width = limbDiameter / Math.cos(offSquare * perDegree);
  const most = quantityOf(outcome, 'cutWidth');
  const at = most?.planAt;
  const needed = planOn(outcome, 'barNeeded') ?? width + margin;
  const weight = planOn(outcome, 'weightPerMetre');
  return {
    diameter: limbDiameter,
    offSquare,
    bar,
    width,
    most: {
      diameter: typeof at?.limbDiameter === 'number' ? at.limbDiameter : limbDiameter,
      offSquare: typeof at?.offSquare === 'number' ? at.offSquare : offSquare,
      width: most?.planOn ?? width,
    },
    needed,
    crosses: needed <= bar * (1 + 1e-9),
    figures: {
      limbDiameter: said('mm', limbDiameter),
      barLength: said('mm', bar),
      barNeeded: said('mm', needed, 'up'),
      cutWidth: said('mm', most?.planOn ?? width, 'up'),
      offSquare: said('deg', offSquare),
      ...(weight === null ? {} : { weightPerMetre: said('kg/m', weight, 'up') }),
    },
  };
};

/** The limb's diameter never stands without its weight a metre. */
export const limbWord = (scene: Scene): string => ('weightPerMetre' in scene.figures ? 'limb' : 'limbOnly');
export const head = 70;
