import type { PlacedMachine, PlacedThing } from '../types';

/** Path in the plan of a field of a machine. */
export const machinePath = ({ at }: Pick<PlacedMachine, 'at'>, ...field: (string | number)[]): (string | number)[] => [
  'machines',
  at,
  ...field,
];

/** Path in the plan of a field of a thing. */
export const thingPath = ({ at }: Pick<PlacedThing, 'at'>, ...field: (string | number)[]): (string | number)[] => ['things', at, ...field];
