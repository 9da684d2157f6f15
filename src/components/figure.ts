/** Drawings that a text may show, drawn at build from the same geometry as in the calculators. */
import approachDistance from '#content/drawings/approach-distance.json';
import barLength from '#content/drawings/bar-length.json';
import crownShare from '#content/drawings/crown-share.json';
import finalCut from '#content/drawings/final-cut.json';
import bending from '#content/drawings/bending.json';
import fuelMix from '#content/drawings/fuel-mix.json';
import node from '#content/drawings/node.json';
import noise from '#content/drawings/noise.json';
import palm from '#content/drawings/palm.json';
import poleLoad from '#content/drawings/pole-load.json';
import lineClearance from '#content/drawings/line-clearance.json';
import reduction from '#content/drawings/reduction.json';
import stance from '#content/drawings/stance.json';
import stepVoltage from '#content/drawings/step-voltage.json';
import threeCuts from '#content/drawings/three-cuts.json';
import union from '#content/drawings/union.json';
import vibration from '#content/drawings/vibration.json';
import weather from '#content/drawings/weather.json';
import basket from '#content/drawings/basket.json';
import sawParts from '#content/drawings/saw-parts.json';
import site from '#content/drawings/site.json';
import treeSigns from '#content/drawings/tree-signs.json';
import height from '#content/drawings/height.json';
import limbWeight from '#content/drawings/limb-weight.json';
import dropZone from '#content/drawings/drop-zone.json';
import cutOrder from '#content/drawings/cut-order.json';
import type { Box, DrawingWords } from '#drawings/kit/placed.ts';

type Words = { title: string; views: Readonly<Record<string, string>>; labels: Readonly<Record<string, string>> };
/** `tall`: height as a share of the width, by view. */
const drawings: Readonly<Record<string, { words: Words; tall: Readonly<Record<string, number>> }>> = {
  'approach-distance': { words: approachDistance, tall: { side: 0.72 } },
  'bar-length': { words: barLength, tall: { section: 0.62, above: 0.5 } },
  basket: { words: basket, tall: { along: 0.84 } },
  bending: { words: bending, tall: { sides: 0.8 } },
  'fuel-mix': { words: fuelMix, tall: { cans: 0.6 } },
  node: { words: node, tall: { cuts: 0.62 } },
  palm: { words: palm, tall: { line: 0.74 } },
  noise: { words: noise, tall: { day: 0.66 } },
  'pole-load': { words: poleLoad, tall: { side: 0.72 } },
  'crown-share': { words: crownShare, tall: { section: 0.56 } },
  'final-cut': { words: finalCut, tall: { side: 0.72, section: 0.6, plan: 0.62 } },
  'line-clearance': { words: lineClearance, tall: { side: 0.8 } },
  reduction: { words: reduction, tall: { side: 0.64 } },
  'saw-parts': { words: sawParts, tall: { chain: 0.56, hoses: 0.56 } },
  site: { words: site, tall: { plan: 0.74, crew: 0.74, road: 0.7, help: 0.62, fuel: 0.54 } },
  stance: { words: stance, tall: { side: 0.72, plan: 0.55 } },
  'step-voltage': { words: stepVoltage, tall: { above: 0.66 } },
  'three-cuts': { words: threeCuts, tall: { side: 0.64 } },
  'tree-signs': { words: treeSigns, tall: { before: 0.95, after: 0.95 } },
  union: { words: union, tall: { collar: 0.72, 'no-collar': 0.72, flush: 0.72, codominant: 0.72 } },
  vibration: { words: vibration, tall: { day: 0.66 } },
  'cut-order': { words: cutOrder, tall: { side: 0.68 } },
  'drop-zone': { words: dropZone, tall: { side: 0.8, plan: 0.66 } },
  height: { words: height, tall: { side: 0.66 } },
  'limb-weight': { words: limbWeight, tall: { side: 0.64 } },
  weather: { words: weather, tall: { wind: 0.6, air: 0.6 } },
};
/** Drawn for the width of a phone's column: its letters are then never smaller than they are drawn. */
const width = 358;

/** The box and the words of a view. Throws, with what there is, for a drawing or view that is not there. */
export const figureOf = (drawing: string, view: string): { box: Box; words: DrawingWords } => {
  const found = drawings[drawing];
  if (!found) throw new Error(`<Figure drawing="${drawing}">: there is ${Object.keys(drawings).join(', ')}`);
  const tall = found.tall[view];
  const description = found.words.views[view];
  if (tall === undefined || description === undefined) {
    throw new Error(`<Figure drawing="${drawing}" view="${view}">: its views are ${Object.keys(found.tall).join(', ')}`);
  }
  return { box: { width, height: Math.round(width * tall) }, words: { title: found.words.title, description, labels: found.words.labels } };
};
