import type { DataSheet } from '../../catalog';
import type { Recipe } from '../edit';
import { FLUSH } from '../jointFrame';
import { LINE_CONFIGURATIONS, type LineConfiguration, type LineHand, type LineSide, lineSides } from '../line/lineSides';
import type { Plan, Table } from '../planSchema';
import { findDataSheet } from '../resolveDataSheet';

/** Fits the controls at another position of the machine's data sheet. */
export function setControls(machine: string, controls: string): Recipe {
  return (draft) => {
    const item = draft.machines.find(({ id }) => id === machine);
    if (item !== undefined) item.controls = controls;
  };
}

/**
 * Joins the machine's tables as a configuration asks, in the hand that the line has (left-to-right when it has none), and
 * fits the controls inside the turn. Each table keeps its gap, offset and skew, and its operator's edge looks into the turn.
 */
export function setConfiguration(machine: string, configuration: LineConfiguration): Recipe {
  return (draft) => arrange(draft, machine, configuration, handOf(draft, machine) ?? 'left-to-right');
}

/** Lets the soiled and the clean table of a machine change places, so that the line runs the other way. */
export function reverseHand(machine: string): Recipe {
  return (draft) => {
    const configuration = configurationOf(draft, machine);
    const hand = handOf(draft, machine);
    if (configuration === null || hand === null) return;
    arrange(draft, machine, configuration, hand === 'left-to-right' ? 'right-to-left' : 'left-to-right');
  };
}

/** The position nearest to the corner of the turn; for a straight line the first one on the front. Undefined when the sheet has none. */
export function controlsInside(sheet: DataSheet, configuration: LineConfiguration): string | undefined {
  const onFront = sheet.controls.filter((position) => position.side === 'front');
  const side = configuration === 'right-front' ? 'right' : 'left';
  const onSide = configuration === 'straight' ? [] : sheet.controls.filter((position) => position.side === side);
  const fromCorner = (position: DataSheet['controls'][number]) => (side === 'left' ? position.from : sheet.width - position.to);
  const nearest = [...onFront].sort((a, b) => fromCorner(a) - fromCorner(b));
  return [...nearest, ...onSide, ...sheet.controls][0]?.id;
}

/** The configuration that the joined sides make; null for none. */
function configurationOf(draft: Plan, machine: string): LineConfiguration | null {
  const sides = tablesOf(draft, machine).flatMap(({ place }) => (place.kind === 'joined' ? [place.side] : []));
  return (
    LINE_CONFIGURATIONS.find((configuration) => {
      const { soiled, clean } = lineSides(configuration, 'left-to-right');
      return sides.length === 2 && sides.includes(soiled.side) && sides.includes(clean.side);
    }) ?? null
  );
}

function handOf(draft: Plan, machine: string): LineHand | null {
  const configuration = configurationOf(draft, machine);
  const soiled = tablesOf(draft, machine).find(({ role }) => role === 'soiled');
  if (configuration === null || soiled === undefined || soiled.place.kind !== 'joined') return null;
  return lineSides(configuration, 'left-to-right').soiled.side === soiled.place.side ? 'left-to-right' : 'right-to-left';
}

const tablesOf = (draft: Plan, machine: string): Table[] =>
  draft.tables.filter(({ place }) => place.kind === 'joined' && place.machine === machine);

function arrange(draft: Plan, machine: string, configuration: LineConfiguration, hand: LineHand): void {
  const sides = lineSides(configuration, hand);
  for (const table of tablesOf(draft, machine)) rejoin(table, machine, sides[table.role]);
  const item = draft.machines.find(({ id }) => id === machine);
  const sheet = item && findDataSheet(draft, item.sheet);
  if (item === undefined || sheet === undefined) return;
  if (configuration !== 'straight') item.controls = controlsInside(sheet, configuration) ?? item.controls;
}

/** A table that gets its people on the other side becomes its own mirror image. */
function rejoin(table: Table, machine: string, { side, operatorSide }: LineSide): void {
  const joint = table.place.kind === 'joined' ? table.place : FLUSH;
  const isFlipped = table.operatorSide !== operatorSide;
  if (isFlipped) flip(table);
  const offset = isFlipped ? 0 - joint.offset : joint.offset;
  const skewDeg = isFlipped ? 0 - joint.skewDeg : joint.skewDeg;
  table.place = { kind: 'joined', machine, side, gap: joint.gap, offset, skewDeg };
}

/** Lets people stand on the other side of a table; its turns go the other way, so that it stays its own mirror image. */
export function flipTable(table: string): Recipe {
  return (draft) => {
    const item = draft.tables.find(({ id }) => id === table);
    if (item !== undefined) flip(item);
  };
}

function flip(table: Table): void {
  table.operatorSide = table.operatorSide === 'left' ? 'right' : 'left';
  for (const leg of table.legs) leg.turnDeg = 0 - leg.turnDeg;
}
