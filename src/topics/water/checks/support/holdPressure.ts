import type { Codes } from '../../../../plan';
import {
  type Bound,
  type FigureReading,
  governing,
  holdReading,
  isOver,
  isUnder,
  type Limit,
  type Measurement,
  machineName,
  machinePlace,
  type Source,
  strictest,
} from '../../../../rules';
import { type PlacedMachine, type Scene, sheetPath } from '../../../../scene';
import type { Formatter } from '../../../../units';
import { FOOD_CODE_RINSE_PRESSURE, OLDER_RINSE_PRESSURE } from '../../formulas/rinsePressure';

/** Where the pressure is: `at the stub`. */
type Where = 'at the stub' | 'at the machine';

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
  const isUnknownPlate =
    where === 'at the machine' && sheet.rinsePressure === null && reading.value !== null && holds(bound, reading.value);
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
      name: `whether the flow pressure ${where} is right`,
      limit: bound.value,
      relation: bound.relation,
      ...(where === 'at the stub' ? { severity: 'watch' as const } : {}),
      source: bound.source,
      say: (value, f) => sayPressure(machineName(scene, placed), where, bounds, bound, value, f),
    }),
  ];
}

const holds = ({ value, relation }: Bound, pressure: number) =>
  relation === 'at-least' ? !isUnder(pressure, value) : !isOver(pressure, value);

const askPlate = (scene: Scene, placed: PlacedMachine) => ({
  input: 'flow pressure of the rinse on the data plate',
  path: sheetPath(scene, placed, 'rinsePressure'),
});

function plateBounds({ sheet }: PlacedMachine): Bound[] {
  if (sheet.rinsePressure === null) return [];
  const { least, most } = sheet.rinsePressure;
  const source: Source = { kind: 'data-sheet', text: `${sheet.name}: flow pressure of the rinse` };
  const by = 'its data plate';
  return [
    { value: least, relation: 'at-least', by, source },
    { value: most, relation: 'at-most', by, source },
  ];
}

/** Every code that may count; the strictest of them is found on each side. */
function codeBounds(code: Codes['rinsePressure']): Bound[] {
  const food = boundsOf(FOOD_CODE_RINSE_PRESSURE, 'the food code', {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-501.113, as WAC 246-215-04560',
    confidence: 'read',
  });
  const older = boundsOf(OLDER_RINSE_PRESSURE, 'the older codes', {
    kind: 'published',
    document: 'A city ordinance; Minnesota Rules',
    section: '4630.3000 (2015 copy)',
    confidence: 'read',
  });
  return { strictest: [...food, ...older], 'food-code': food, older }[code];
}

const boundsOf = ({ min, max }: Limit, by: string, source: Source): Bound[] => [
  ...(min === null ? [] : [{ value: min, relation: 'at-least' as const, by, source }]),
  ...(max === null ? [] : [{ value: max, relation: 'at-most' as const, by, source }]),
];

function sayPressure(machine: string, where: Where, bounds: readonly Bound[], bound: Bound, value: number, f: Formatter): string {
  const is = `The rinse of ${machine} has ${f.pressure(value)} of flow pressure ${where}`;
  const [least, most] = [strictest(bounds, 'at-least'), strictest(bounds, 'at-most')];
  const between = `${f.pressure(least?.value ?? 0)} to ${f.pressure(most?.value ?? 0)}`;
  if (holds(bound, value))
    return `${is}, within ${between}${where === 'at the stub' ? '; what its line leaves at the machine counts' : ''}.`;
  const asked =
    bound.relation === 'at-most'
      ? `${verb(bound, 'allow')} ${f.pressure(bound.value)} at most`
      : `${verb(bound, 'ask')} for ${f.pressure(bound.value)}`;
  if (where === 'at the stub')
    return `${is} and ${bound.by} ${asked} at the rinse valve: find out what the line takes, and hold what is left against ${between}.`;
  const cure =
    bound.relation === 'at-most'
      ? 'have a pressure-reducing valve fitted before it, set to'
      : 'have the pressure set higher or the pipe made wider, to';
  return `${is} and ${bound.by} ${asked}: ${cure} ${between}.`;
}

const verb = ({ by }: Bound, one: string) => (by.endsWith('codes') ? one : `${one}s`);
