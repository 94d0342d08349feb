import type { Appliance, Furnishing } from './types';

/** Path in the plan of a field of a machine. Rests on the machines' order alone, so what asks for the field need not read their places. */
export const appliancePath = ({ at }: Pick<Appliance, 'at'>, ...field: (string | number)[]): (string | number)[] => [
  'machines',
  at,
  ...field,
];

/** The same of a thing. */
export const furnishingPath = ({ at }: Pick<Furnishing, 'at'>, ...field: (string | number)[]): (string | number)[] => [
  'things',
  at,
  ...field,
];
