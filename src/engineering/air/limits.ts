import { toSI } from '../../units';
import { feet, inches } from '../lengths';
import { forReference, type Limit, limit } from '../limit';
import type { FormulaSource } from '../record';

const read = (text: string): FormulaSource => ({ text, confidence: 'read' });
const secondary = (text: string): FormulaSource => ({ text, confidence: 'secondary' });

const city = read('NYC Mechanical Code 508.1.1 (A-U3)');
const minnesota = read('Minn. R. 1346.0508 (A-U6)');
const washington = read('Wash. WAC 51-11C-40377, C403.7.7.1 (A-H20)');
const army = read('UFC 3-410-01FA (15 May 2003), 4-10.1, superseded (A-G5)');
const outlet = secondary('IMC 506.4.2, termination of Type II exhaust, as in a code summary (A-H15)');
const noncanopy = secondary('IMC 2018 (Maryland), 507.4.2, as in a code summary (A-H10)');
const table = secondary(
  'Air Conditioning and Mechanical Ventilation System, vol. 1, p. 5-34, in a public copy: that they are least and most is inferred (A-D0a)',
);

/** Make-up air and the room: always at most the first; at most the second where it helps the heating or cooling load. */
export const MAKE_UP_DIFFERENCE = limit('make-up-difference', 'Make-up air and the room', 'K', { max: toSI(10, 'deltaF') }, city);
export const MAKE_UP_DIFFERENCE_HELPING = limit(
  'make-up-difference-helping',
  'Make-up air that helps the load, and the room',
  'K',
  { max: toSI(25, 'deltaF') },
  city,
);
export const MAKE_UP_TEMPERATURE = limit('make-up-temperature', 'Make-up air at the diffuser', 'C', { min: toSI(50, 'F') }, minnesota);
export const MAKE_UP_TEMPERED = limit('make-up-tempered', 'Tempered make-up air', 'C', { min: toSI(65, 'F') }, army);
export const DIFFUSER_DISTANCE = forReference(
  limit('diffuser-distance', 'Hood to a diffuser that blows toward it', 'm', { min: feet(12) }, minnesota),
);

export const WORK_TEMPERATURE = limit('work-temperature', 'Temperature of the work area', 'C', { max: toSI(85, 'F') }, army);

/** Where the machine wins back its own heat and vapour, the ventilation must hold this. */
export const ROOM_HUMIDITY = limit(
  'room-humidity',
  'Relative humidity of the room',
  'share',
  { max: 0.65 },
  read('Minn. R. 1346.0507 subp. 1, version of 2015-01-28 (A-H17)'),
);

export const CAVITY_AIR = limit('cavity-air', 'Part of the exhaust blown into the hood', 'share', { max: 0.1 }, washington);
export const UNLISTED_HOOD_EXHAUST = limit(
  'unlisted-hood-exhaust',
  'Type II hood free of the energy code’s listing',
  'm3/s',
  { max: toSI(1000, 'cfm') },
  washington,
);
export const ROOM_SUCTION = forReference(
  limit(
    'room-suction',
    'Pressure of the building below the outdoors',
    'Pa',
    { max: toSI(0.05, 'inH2O') },
    read('MIL-HDBK-1003/3, 3.17 and 3.18 (A-G9)'),
  ),
);

/** "About" three quarters at the machine, the rest at the ceiling. */
export const EXHAUST_AT_MACHINES = limit(
  'exhaust-at-machines',
  'Part of the exhaust drawn at the dishwashers',
  'share',
  { min: 0.75 },
  read('UFC 3-410-01FA (15 May 2003), 4-10.1, superseded (A-G4)'),
);

export const KITCHEN_CHANGES = limit(
  'kitchen-changes',
  'Air changes of a kitchen',
  '1/h',
  { min: 20, max: 30 },
  read('UFC 4-740-01NF and 4-750-01NF (16 Apr 2004), 6-2.3.2 (A-G8)'),
);
export const KITCHEN_SUPPLY_CHANGES = limit(
  'kitchen-supply-changes',
  'Air changes of a hospital kitchen',
  '1/h',
  { min: 10 },
  read('VA HVAC design manual (hospitals), 3.12.2 (A-G2)'),
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
  secondary('ASHRAE Pocket Guide (2013), Table 2.9, as reported (A-D0b)'),
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
    text: 'Usual detail, 1/4 in to a foot (A-D0c)',
    confidence: 'memory',
  },
);

export const OUTLET_OPENING = limit('outlet-opening', 'Outlet to an opening of the building', 'm', { min: feet(3) }, outlet);
export const OUTLET_PROPERTY = limit('outlet-property', 'Outlet to the property line or the next building', 'm', { min: feet(10) }, outlet);
export const OUTLET_INTAKE = limit('outlet-intake', 'Outlet to an intake of outside air', 'm', { min: feet(10) }, outlet);
export const OUTLET_GRADE = limit('outlet-grade', 'Outlet above the ground', 'm', { min: feet(10) }, outlet);
export const OUTLET_ROOF = limit('outlet-roof', 'Outlet above the roof', 'm', { min: inches(30) }, outlet);
export const OUTLET_WALL = limit('outlet-wall', 'Outlet to an outer wall', 'm', { min: inches(30) }, outlet);

export const NONCANOPY_HEIGHT = forReference(
  limit('noncanopy-height', 'Hood without a canopy above the surface', 'm', { max: feet(3) }, noncanopy),
);
export const NONCANOPY_SETBACK = forReference(
  limit('noncanopy-setback', 'Hood without a canopy behind the edge', 'm', { max: feet(1) }, noncanopy),
);

/** Every bound of the air side. */
export const AIR_LIMITS: readonly Limit[] = [
  MAKE_UP_DIFFERENCE,
  MAKE_UP_DIFFERENCE_HELPING,
  MAKE_UP_TEMPERATURE,
  MAKE_UP_TEMPERED,
  DIFFUSER_DISTANCE,
  WORK_TEMPERATURE,
  ROOM_HUMIDITY,
  CAVITY_AIR,
  UNLISTED_HOOD_EXHAUST,
  ROOM_SUCTION,
  EXHAUST_AT_MACHINES,
  KITCHEN_CHANGES,
  KITCHEN_SUPPLY_CHANGES,
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
  NONCANOPY_HEIGHT,
  NONCANOPY_SETBACK,
];
