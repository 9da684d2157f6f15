/**
 * The gear the reader keeps: under its name the pole's ends, the bar and what it reaches past its middle, each with how it
 * was got; and of the saw what is known: what it is called, what it weighs with the pole, where that balances. On the device only, never sent anywhere. Damaged entries are left out when read.
 */
import { read, write } from './store.ts';

/** `poleShortest`, `poleLongest`, `barTip` in m, `barLength` in mm. */
export const gearParts = ['poleShortest', 'poleLongest', 'barLength', 'barTip'] as const;
export type GearPart = (typeof gearParts)[number];
/** Known of some only; lists from before have none. `mass` in kg, `balance` in m. */
export const sawParts = ['mass', 'balance'] as const;
export type SawPart = (typeof sawParts)[number];
export type GearFigure = { readonly value: number; readonly got: 'judged' | 'measured' };
export type Gear = { readonly name: string; readonly saw?: string; readonly figures: { readonly [P in GearPart]: GearFigure } & { readonly [P in SawPart]?: GearFigure } };

export const gearName = 'standing-clear.gear';
const version = 1;
export const longestGearName = 60;
export const longestSawName = 300;
export const mostGear = 50;

const isFigure = (figure: unknown): figure is GearFigure => {
  const { value, got } = (figure ?? {}) as Partial<GearFigure>;
  return typeof value === 'number' && Number.isFinite(value) && value >= 0 && (got === 'judged' || got === 'measured');
};
const isGear = (found: unknown): found is Gear => {
  const { name, saw, figures } = (found ?? {}) as Partial<Gear>;
  return (saw === undefined || (typeof saw === 'string' && saw.length <= longestSawName)) && typeof name === 'string' && name.trim() !== '' && name.length <= longestGearName && gearParts.every((part) => isFigure(figures?.[part])) &&
    sawParts.every((part) => figures?.[part] === undefined || isFigure(figures[part]));
};

/** All that is kept, by name, with nothing in it but what gear holds; of two under one name the first. */
export const gear = (): Gear[] => {
  const kept = read(gearName)['gear'];
  return (Array.isArray(kept) ? kept.filter(isGear) : [])
    .filter(({ name }, i, all) => all.findIndex((one) => one.name === name) === i)
    .slice(0, mostGear)
    .map(({ name, saw, figures }) => ({
      name,
      ...(saw === undefined ? {} : { saw }),
      figures: Object.fromEntries([...gearParts, ...sawParts].flatMap((part) => {
        const figure = figures[part];
        return figure ? [[part, { value: figure.value, got: figure.got }]] : [];
      })) as unknown as Gear['figures'],
    }))
    .sort((a, b) => a.name.localeCompare(b.name));
};

const keep = (all: readonly Gear[]): boolean => write(gearName, { ...read(gearName), gear: all, v: version });

/** Keeps it, in place of what had its name. `full`: the list holds no more; `refused`: the browser keeps nothing. */
export const keepGear = (one: Gear): 'kept' | 'full' | 'refused' => {
  const others = gear().filter(({ name }) => name !== one.name);
  if (others.length >= mostGear) return 'full';
  return keep([...others, one]) ? 'kept' : 'refused';
};

/** Takes it off the list. False where the browser keeps nothing. */
export const dropGear = (name: string): boolean => keep(gear().filter((one) => one.name !== name));
