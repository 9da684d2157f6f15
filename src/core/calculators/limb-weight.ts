/** What does it weigh, and how hard does it land? */
import { everyday } from '../facts/everyday.ts';
import { allSpecies, species as speciesOf, type Species } from '../facts/species.ts';
import { wood } from '../facts/wood.ts';
import { massPerMetre } from '../formulas/density.ts';
import { fallEnergy, fallSpeed } from '../formulas/gravity.ts';
import { deadDensities, type Densities, greenDensities } from '../formulas/green-wood.ts';
import { huber, newton, smalian } from '../formulas/log-volume.ts';
import { answer, defineCalculator, type InputProblem, type RawStep } from '../kit/calculator.ts';
import { choice, guess, optionalQuantity, quantity } from '../kit/inputs.ts';

const unknown = 'unknown';
/** A species that is not known is taken for the densest on file. */
const heaviest = (): Species => ({
  id: unknown, common: '', botanical: '', basic: wood('heaviest-basic-density'), green: null, heart: null, sap: null, source: '', status: '',
});

const diameter = (example: number | null) =>
  optionalQuantity('mm', { min: 10, max: 500, step: 1, example, tolerance: guess({ share: 0.15 }, { least: 3 }), girth: true });

type Diameters = { buttDiameter: number | null; midDiameter: number | null; tipDiameter: number | null };
type Measured = { id: 'quick' | 'smalian' | 'newton' | 'huber'; volume: number; values: { [name: string]: number } };

/** Which of the three formulas the diameters allow, and the volume by it. A limb measured to its end has no tip. */
const volumeOf = ({ buttDiameter: butt, midDiameter: mid, tipDiameter: tip }: Diameters, length: number): Measured => {
  if (butt === null) return { id: 'huber', volume: huber(mid!, length), values: { midDiameter: mid!, length } };
  if (mid !== null) {
    return { id: 'newton', volume: newton(butt, mid, tip ?? 0, length), values: { buttDiameter: butt, midDiameter: mid, tipDiameter: tip ?? 0, length } };
  }
  if (tip !== null) return { id: 'smalian', volume: smalian(butt, tip, length), values: { buttDiameter: butt, tipDiameter: tip, length } };
  return { id: 'quick', volume: smalian(butt, 0, length), values: { buttDiameter: butt, length } };
};

const larger = (input: string, a: number | null, problem: string, than: { [name: string]: number | null }): InputProblem[] => {
  const [[name, b]] = Object.entries(than) as [[string, number | null]];
  return a !== null && b !== null && a > b ? [{ input, problem, values: { [name]: b } }] : [];
};

export const limbWeight = defineCalculator({
  id: 'limb-weight',
  inputs: {
    species: choice([unknown, ...allSpecies.map((s) => s.id)], 'northern-red-oak'),
    condition: choice(['liveWhole', 'liveBare', 'deadWet', 'deadDry'], 'liveWhole'),
    buttDiameter: diameter(100),
    midDiameter: diameter(null),
    tipDiameter: diameter(null),
    length: quantity('m', { min: 0.3, max: 10, step: 0.1, example: 2.5, tolerance: guess({ share: 0.2 }, { least: 0.1 }) }),
    cutHeight: quantity('m', { min: 0, max: 15, step: 0.1, example: 3.5, tolerance: guess({ share: 0.15, least: 0.3 }, { least: 0.1 }) }),
  },
  outputs: {
    weight: { kind: 'quantity', unit: 'kg', protects: 'up', moves: { buttDiameter: 'up', midDiameter: 'up', tipDiameter: 'up', length: 'up' } },
    perMetre: { kind: 'quantity', unit: 'kg/m', protects: 'up', moves: { buttDiameter: 'up', midDiameter: 'up' } },
    volume: { kind: 'quantity', unit: 'm3', protects: 'up', moves: { buttDiameter: 'up', midDiameter: 'up', tipDiameter: 'up', length: 'up' } },
    dropEnergy: { kind: 'quantity', unit: 'J', protects: 'up', step: 10, imperialStep: 10, moves: { buttDiameter: 'up', midDiameter: 'up', tipDiameter: 'up', length: 'up', cutHeight: 'up' } },
    landingSpeed: { kind: 'quantity', unit: 'm/s', protects: 'up', moves: { cutHeight: 'up' } },
  },
  lead: ['weight', 'perMetre'],
  middle: { density: 'kg/m3', lightDensity: 'kg/m3', wetDensity: 'kg/m3', twigs: 'number', bags: 'number', bag: 'kg', dropMass: 'kg' },
  findings: {
    unknownSpecies: { level: 'caution' },
    dryButWet: { level: 'caution' },
    basicOnly: { level: 'note' },
    densityRange: { level: 'note' },
    smallSample: { level: 'note' },
    compare: { level: 'note', at: 'weight' },
    landing: { level: 'note', at: 'dropEnergy' },
  },
  relate: ({ buttDiameter, midDiameter, tipDiameter }): InputProblem[] => {
    if (buttDiameter === null && tipDiameter !== null) return [{ input: 'buttDiameter', problem: 'buttForTip', values: {} }];
    if (buttDiameter === null && midDiameter === null) return [{ input: 'buttDiameter', problem: 'diameterNeeded', values: {} }];
    return [
      ...larger('midDiameter', midDiameter, 'midLarger', { buttDiameter }),
      ...larger('tipDiameter', tipDiameter, 'tipLarger', { buttDiameter }),
      ...larger('tipDiameter', tipDiameter, 'tipLargerThanMid', { midDiameter }),
    ].slice(0, 1);
  },
  compute: (i) => {
    const known = i.species === unknown ? heaviest() : speciesOf(i.species);
    const living = i.condition === 'liveWhole' || i.condition === 'liveBare';
    const range: Densities = living ? greenDensities(known) : deadDensities(known);
    const density = i.condition === 'deadDry' ? range.light : range.heavy;
    const { id, volume: axis, values } = volumeOf(i, i.length);
    // Half a cylinder is what whole branches weighed: the twigs are in it already.
    const twigs = id === 'quick' || i.condition === 'liveBare' ? 1 : wood('twigs-factor');
    const volume = axis * twigs;
    const weight = volume * density;
    const perMetre = massPerMetre((i.buttDiameter ?? i.midDiameter)!, density);
    const dropEnergy = fallEnergy(weight, i.cutHeight);
    const bag = everyday('cement-bag');
    const working: RawStep[] = [
      { id, values: { ...values, twigs }, result: { name: 'volume', value: volume } },
      { id: 'weight', values: { volume, density }, result: { name: 'weight', value: weight } },
      { id: 'perMetre', values: { density }, result: { name: 'perMetre', value: perMetre } },
      { id: 'dropEnergy', values: { weight, cutHeight: i.cutHeight }, result: { name: 'dropEnergy', value: dropEnergy } },
    ];
    return answer(
      { weight, perMetre, volume, dropEnergy, landingSpeed: fallSpeed(i.cutHeight) },
      [
        known.id === unknown && { id: 'unknownSpecies', values: { density } },
        i.condition === 'deadDry' && { id: 'dryButWet', values: { density, wetDensity: range.heavy } },
        living && known.id !== unknown && known.green === null && { id: 'basicOnly', values: { density } },
        living && range.light < range.heavy && { id: 'densityRange', values: { lightDensity: range.light, density } },
        (id === 'quick' || twigs !== 1) && { id: 'smallSample', values: { twigs: wood('twigs-factor') } },
        { id: 'compare', values: { bags: weight / bag, bag } },
        i.cutHeight > 0 && { id: 'landing', values: { dropMass: weight * i.cutHeight, landingSpeed: fallSpeed(i.cutHeight) } },
      ],
      working,
    );
  },
});
