import type { Codes } from '../../../../plan';
import {
  type Bound,
  createMessages,
  type FigureReading,
  governing,
  holdReading,
  isOver,
  isUnder,
  type Limit,
  type Measurement,
  type Message,
  machinePlace,
  type Name,
  type NoParams,
  nameMachine,
  type Source,
  strictest,
} from '../../../../rules';
import { dataSheetPath, type PlacedMachine, type Scene } from '../../../../scene';
import { FOOD_CODE_RINSE_PRESSURE, OLDER_RINSE_PRESSURE } from '../../formulas/rinsePressure';

/** What is said of the flow pressure, in Pa. */
export interface HoldPressureMessages {
  'rinse-pressure/what': NoParams;
  'rinse-pressure/within': Pressure & Range;
  'rinse-pressure/below': Pressure & Range & Broken;
  'rinse-pressure/above': Pressure & Range & Broken;
  'pressure-at-machine/ask-plate': NoParams;
  'pressure-at-machine/what': NoParams;
  'pressure-at-machine/within': Pressure & Range;
  'pressure-at-machine/below': Pressure & Range & Broken;
  'pressure-at-machine/above': Pressure & Range & Broken;
}

interface Pressure {
  machine: Name;
  pressure: number;
}

/** What all that counts leaves of the range. */
interface Range {
  least: number;
  most: number;
}

/** The bound that does not hold, and who sets it. */
interface Broken {
  bound: number;
  by: By;
}

type By = 'data-plate' | 'food-code' | 'older-codes';

interface PressureBound extends Bound {
  by: By;
}

const message = createMessages<HoldPressureMessages>();

/** Where the pressure is. */
type Where = 'stub' | 'machine';

const CHECKS = { stub: 'rinse-pressure', machine: 'pressure-at-machine' } as const;

/**
 * Holds a flow pressure of the rinse against the machine's data plate and the codes that count. A chemical rinse has no bound in
 * the codes; of a hot one whose plate is not known, a pressure that the codes allow is still asked about. The range counts at the
 * machine: outside of it at the stub is a watch, and nothing is asked there.
 */
export function holdPressure(scene: Scene, placed: PlacedMachine, reading: FigureReading, where: Where): Measurement[] {
  const { machine, sheet } = placed;
  const bounds = [...plateBounds(placed), ...(sheet.sanitizing === 'hot-water' ? codeBounds(scene.plan.codes.rinsePressure) : [])];
  const bound = governing(bounds, reading.value);
  if (bound === undefined) return [];
  const isUnknownPlate = where === 'machine' && sheet.rinsePressure === null && reading.value !== null && holds(bound, reading.value);
  const seen = isUnknownPlate
    ? {
        ...reading,
        value: null,
        ask: askPlate(scene, placed),
      }
    : reading;
  return [
    holdReading(seen, {
      subjects: [machine.id],
      place: machinePlace(placed),
      what: message(`${CHECKS[where]}/what`),
      limit: bound.value,
      relation: bound.relation,
      ...(where === 'stub' ? { severity: 'watch' as const } : {}),
      source: bound.source,
      message: (pressure) => messageOf(where, { machine: nameMachine(scene, placed), pressure }, bounds, bound),
    }),
  ];
}

const holds = ({ value, relation }: Bound, pressure: number) =>
  relation === 'at-least' ? !isUnder(pressure, value) : !isOver(pressure, value);

const askPlate = (scene: Scene, placed: PlacedMachine) => ({
  input: message('pressure-at-machine/ask-plate'),
  path: dataSheetPath(scene, placed, 'rinsePressure'),
});

function plateBounds({ sheet }: PlacedMachine): PressureBound[] {
  if (sheet.rinsePressure === null) return [];
  const { least, most } = sheet.rinsePressure;
  const source: Source = { kind: 'data-sheet', text: `${sheet.name}: flow pressure of the rinse` };
  const by = 'data-plate';
  return [
    { value: least, relation: 'at-least', by, source },
    { value: most, relation: 'at-most', by, source },
  ];
}

/** Every code that may count; the strictest of them is found on each side. */
function codeBounds(code: Codes['rinsePressure']): PressureBound[] {
  const food = boundsOf(FOOD_CODE_RINSE_PRESSURE, 'food-code', {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-501.113, as WAC 246-215-04560',
    confidence: 'read',
  });
  const older = boundsOf(OLDER_RINSE_PRESSURE, 'older-codes', {
    kind: 'published',
    document: 'A city ordinance; Minnesota Rules',
    section: '4630.3000 (2015 copy)',
    confidence: 'read',
  });
  return { strictest: [...food, ...older], 'food-code': food, older }[code];
}

const boundsOf = ({ min, max }: Limit, by: By, source: Source): PressureBound[] => [
  ...(min === null ? [] : [{ value: min, relation: 'at-least' as const, by, source }]),
  ...(max === null ? [] : [{ value: max, relation: 'at-most' as const, by, source }]),
];

function messageOf(where: Where, of: Pressure, bounds: readonly Bound[], bound: PressureBound): Message {
  const [least, most] = [strictest(bounds, 'at-least'), strictest(bounds, 'at-most')];
  const within = { ...of, least: least?.value ?? 0, most: most?.value ?? 0 };
  if (holds(bound, of.pressure)) return message(`${CHECKS[where]}/within`, within);
  return message(`${CHECKS[where]}/${bound.relation === 'at-most' ? 'above' : 'below'}`, { ...within, bound: bound.value, by: bound.by });
}
