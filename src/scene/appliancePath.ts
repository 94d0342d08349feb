import type { Appliance } from './types';

/** Path in the plan of a field of a machine. Rests on the machines' order alone, so what asks for the field need not read their places. */
export const appliancePath = ({ at }: Pick<Appliance, 'at'>, ...field: (string | number)[]): (string | number)[] => [
  'machines',
  at,
  ...field,
];
