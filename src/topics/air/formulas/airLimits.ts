import { type Entries, type FormulaSource, feet, forReference, limit, type SourceKey } from '../../../rules';
import { toSI } from '../../../units';

const read = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'read' });

const city = read('NYC Mechanical Code 508.1.1', 'nyc-mechanical-code');

const minnesota = read('Minn. R. 1346.0508', 'minnesota-1346');

const army = read('UFC 3-410-01FA (15 May 2003), 4-10.1, superseded', 'ufc-3-410-01fa');

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
  read('Minn. R. 1346.0507 subp. 1, version of 2015-01-28', 'minnesota-1346'),
);

export const ROOM_SUCTION = forReference(
  limit(
    'room-suction',
    'Pressure of the building below the outdoors',
    'Pa',
    { max: toSI(0.05, 'inH2O') },
    read('MIL-HDBK-1003/3, 3.17 and 3.18', 'mil-hdbk-1003-3'),
  ),
);

export const KITCHEN_CHANGES = limit(
  'kitchen-changes',
  'Air changes of a kitchen',
  '1/h',
  { min: 20, max: 30 },
  read('UFC 4-740-01NF and 4-750-01NF (16 Apr 2004), 6-2.3.2', 'ufc-4-750-01nf', 'ufc-4-740-01nf'),
);

export const KITCHEN_SUPPLY_CHANGES = limit(
  'kitchen-supply-changes',
  'Air changes of a hospital kitchen',
  '1/h',
  { min: 10 },
  read('VA HVAC design manual (hospitals), 3.12.2', 'va-hvac-manual'),
);

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 10,
    limits: [
      MAKE_UP_DIFFERENCE,
      MAKE_UP_DIFFERENCE_HELPING,
      MAKE_UP_TEMPERATURE,
      MAKE_UP_TEMPERED,
      DIFFUSER_DISTANCE,
      WORK_TEMPERATURE,
      ROOM_HUMIDITY,
    ],
  },
  { order: 100, limits: [ROOM_SUCTION] },
  { order: 120, limits: [KITCHEN_CHANGES, KITCHEN_SUPPLY_CHANGES] },
];
