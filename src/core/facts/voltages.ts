import table from '#shared/tables/usual-voltages.json' with { type: 'json' };

/** Voltages (kV) to choose from, in rising order: low voltage, between phases, and the usual steps of the USA. */
export const usualVoltages: readonly number[] = [...new Set([...table.lowVoltage, ...table.betweenPhases, ...table.usBetweenPhases])].sort((a, b) => a - b);

/** Single-wire earth return: the voltage to ground, and the three-phase voltage the same line is counted with. */
export const singleWires: readonly { toGround: number; betweenPhases: number }[] = table.singleWire;
