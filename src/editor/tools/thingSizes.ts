import type { Stub, Thing, ThingKind } from '../../plan';

/** Usual sizes of what is put into a room, mm; each can be changed on its card. */
export const THING_SIZES: Readonly<Record<ThingKind, Pick<Thing, 'width' | 'depth' | 'height' | 'ware'>>> = {
  'three-compartment-sink': { width: 2286, depth: 762, height: 914, ware: 'none' },
  'hand-sink': { width: 432, depth: 382, height: 864, ware: 'none' },
  shelving: { width: 1219, depth: 457, height: 1829, ware: 'clean' },
  cart: { width: 762, depth: 508, height: 965, ware: 'none' },
  bin: { width: 559, depth: 559, height: 762, ware: 'none' },
  'work-table': { width: 1524, depth: 762, height: 864, ware: 'none' },
  'panel-board': { width: 508, depth: 146, height: 1829, ware: 'none' },
  other: { width: 610, depth: 610, height: 914, ware: 'none' },
};

/** Side of a column, width of a floor drain's grate and of a floor sink, mm. */
export const COLUMN_SIZE = 305;
export const DRAIN_SIZES = { 'floor-drain': 203, 'floor-sink': 305 } as const;

/** Height of a stub above the floor where nobody has measured it, mm. */
export const STUB_HEIGHTS: Readonly<Record<Stub['kind'], number>> = { 'cold-water': 457, 'hot-water': 457, power: 1219, 'duct-exit': 2591 };

/** Things that stand with their back to a wall turn that way beside one. */
export const BACKS_TO_WALL: readonly ThingKind[] = ['three-compartment-sink', 'hand-sink', 'shelving', 'work-table', 'panel-board'];
