import { type Entries, type FormulaSource, feet, inches, limit, type SourceKey } from '../../../rules';
import { toSI } from '../../../units';

const secondary = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'secondary' });

const outlet = secondary('IMC 506.4.2, termination of Type II exhaust, as in a code summary', 'imc');

const table = secondary(
  'Air Conditioning and Mechanical Ventilation System, vol. 1, p. 5-34, in a public copy: that they are least and most is inferred',
  'ac-and-ventilation-vol-1',
);

export const DUCT_VELOCITY = limit(
  'duct-velocity',
  'Velocity in a dishwasher duct',
  'm/s',
  { min: toSI(1500, 'fpm'), max: toSI(2200, 'fpm') },
  table,
);

export const VAPOUR_VELOCITY = limit(
  'vapour-velocity',
  'Velocity that carries vapour',
  'm/s',
  { min: toSI(1000, 'fpm'), max: toSI(2000, 'fpm') },
  secondary('ASHRAE Pocket Guide (2013), Table 2.9, as reported', 'ashrae-pocket-guide'),
);

export const DUCT_FRICTION = limit(
  'duct-friction',
  'Friction in a dishwasher duct',
  'Pa/m',
  { max: toSI(0.15, 'inH2O') / feet(100) },
  table,
);

export const DUCT_SLOPE = limit(
  'duct-slope',
  'Fall of a moist duct toward its drain or hood',
  'slope',
  { min: inches(0.25) / feet(1) },
  {
    text: 'Usual detail, 1/4 in to a foot',
    documents: ['duct-details'],
    confidence: 'memory',
  },
);

export const OUTLET_OPENING = limit('outlet-opening', 'Outlet to an opening of the building', 'm', { min: feet(3) }, outlet);

export const OUTLET_PROPERTY = limit('outlet-property', 'Outlet to the property line or the next building', 'm', { min: feet(10) }, outlet);

export const OUTLET_INTAKE = limit('outlet-intake', 'Outlet to an intake of outside air', 'm', { min: feet(10) }, outlet);

export const OUTLET_GRADE = limit('outlet-grade', 'Outlet above the ground', 'm', { min: feet(10) }, outlet);

export const OUTLET_ROOF = limit('outlet-roof', 'Outlet above the roof', 'm', { min: inches(30) }, outlet);

export const OUTLET_WALL = limit('outlet-wall', 'Outlet to an outer wall', 'm', { min: inches(30) }, outlet);

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 140,
    limits: [
      DUCT_VELOCITY,
      VAPOUR_VELOCITY,
      DUCT_FRICTION,
      DUCT_SLOPE,
      OUTLET_OPENING,
      OUTLET_PROPERTY,
      OUTLET_INTAKE,
      OUTLET_GRADE,
      OUTLET_ROOF,
      OUTLET_WALL,
    ],
  },
];
