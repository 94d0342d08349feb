import { type DataSheet, FAMILIES, SIDES, type Side } from '../../catalog';
import { type FieldPath, type Plan, type Recipe, setField } from '../../plan';
import { whyCollarStays, whyDoorStays } from '../sheet/inUse';
import type { FieldValue } from './field';

type Conversion = (plan: Plan, path: FieldPath, value: FieldValue) => Recipe | string | null;

/** What the fields of a data sheet need beside their own value, by the pattern of their path. */
export const SHEET_CONVERSIONS: Readonly<Record<string, Conversion>> = {
  ...Object.fromEntries(
    SIDES.map((side) => [`sheets.doors.${side}`, (plan: Plan, path: FieldPath, value: FieldValue) => changeDoor(plan, path, side, value)]),
  ),
  'sheets.name': (_plan, _path, value) => (value === '' ? 'A data sheet needs a name.' : null),
  'sheets.connections.kind': (plan, path, value) =>
    value === 'collar' ? null : sheetAt(plan, path, (sheet) => whyCollarStays(plan, sheet, Number(path[3]))),
  'sheets.vent.kind': (plan, path, value) =>
    sheetAt(plan, path, ({ vent }) =>
      vent.kind === value
        ? null
        : setField(
            path.slice(0, -1),
            usual((sheet) => (sheet.vent.kind === value ? sheet.vent : null)),
          ),
    ),
  'sheets.tank': (_plan, path, value) => changePart(path, value, ({ tank }) => tank),
  'sheets.rinsePressure': (_plan, path, value) => changePart(path, value, ({ rinsePressure }) => rinsePressure),
};

function sheetAt<T>(plan: Plan, path: FieldPath, then: (sheet: DataSheet) => T): T | null {
  const sheet = plan.sheets[Number(path[1])];
  return sheet === undefined ? null : then(sheet);
}

/** Doors stand in the order of the sides. */
function changeDoor(plan: Plan, path: FieldPath, side: Side, value: FieldValue): Recipe | string | null {
  return sheetAt(plan, path, (sheet) => {
    const doors = SIDES.filter((one) => (one === side ? value === true : sheet.doors.includes(one)));
    const stays = value === true ? null : whyDoorStays(plan, sheet, side);
    return stays ?? setField(path.slice(0, -1), doors);
  });
}

/** A part that was not known begins as a generic family has it. */
function changePart(path: FieldPath, value: FieldValue, of: (sheet: DataSheet) => object | null): Recipe {
  return (draft) => {
    const sheet = draft.sheets[Number(path[1])];
    if (sheet !== undefined && (of(sheet) !== null) !== value) setField(path, value === true ? usual(of) : null)(draft);
  };
}

/** What the first family says that says anything. */
const usual = <T>(of: (sheet: DataSheet) => T | null): T | null => FAMILIES.map(of).find((part) => part !== null) ?? null;
