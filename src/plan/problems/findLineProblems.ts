import type { DataSheet } from '../../catalog';
import type { Fitting, Machine, Plan, Table } from '../planSchema';
import { findDataSheet } from '../resolveDataSheet';
import { createProblem, type PlanProblem } from './planProblem';

const SLACK = 0.01;
type Path = (string | number)[];

/** Machines, tables and runs that name what does not exist, and tables that contradict themselves. */
export function findLineProblems(plan: Plan): PlanProblem[] {
  return [
    ...plan.machines.flatMap((machine, index) => findMachineProblems(plan, machine, ['machines', index])),
    ...plan.tables.flatMap((table, index) => findTableProblems(plan, table, ['tables', index])),
    ...plan.runs.flatMap((run, index) => missingMachine(plan, run.machine, ['runs', index, 'machine'])),
    ...plan.sheets.flatMap((sheet, index) => findDataSheetProblems(sheet, ['sheets', index])),
  ];
}

function findMachineProblems(plan: Plan, machine: Machine, path: Path): PlanProblem[] {
  const sheet = findDataSheet(plan, machine.sheet);
  if (sheet === undefined) return [createProblem('no-such-sheet', [...path, 'sheet'], { id: machine.sheet })];
  const problems: PlanProblem[] = [];
  if (!has(sheet.controls, machine.controls)) {
    problems.push(
      createProblem('no-such-controls', [...path, 'controls'], { id: machine.controls, sheet: sheet.id, known: ids(sheet.controls) }),
    );
  }
  if (machine.electrical !== null && !has(sheet.electrical, machine.electrical)) {
    const facts = { id: machine.electrical, sheet: sheet.id, known: ids(sheet.electrical) };
    problems.push(createProblem('no-such-variant', [...path, 'electrical'], facts));
  }
  return problems;
}

const has = (items: readonly { id: string }[], id: string) => items.some((item) => item.id === id);
const ids = (items: readonly { id: string }[]) => items.map((item) => item.id).join(', ');

function missingMachine(plan: Plan, id: string, path: Path): PlanProblem[] {
  return has(plan.machines, id) ? [] : [createProblem('no-such-machine', path, { id })];
}

function findTableProblems(plan: Plan, table: Table, path: Path): PlanProblem[] {
  const problems = table.place.kind === 'joined' ? missingMachine(plan, table.place.machine, [...path, 'place', 'machine']) : [];
  const turnDeg = table.legs[0]?.turnDeg ?? 0;
  if (turnDeg !== 0) problems.push(createProblem('first-turn', [...path, 'legs', 0, 'turnDeg'], { turnDeg }));
  const expected = table.legs.length + 1;
  if (table.deck.kind === 'heights' && table.deck.heights.length !== expected) {
    problems.push(createProblem('deck-heights', [...path, 'deck', 'heights'], { expected, found: table.deck.heights.length }));
  }
  if (table.rackLineFromEdge > table.depth) {
    problems.push(createProblem('rack-line-off-table', [...path, 'rackLineFromEdge'], { at: table.rackLineFromEdge, depth: table.depth }));
  }
  const length = tableLength(table);
  return [...problems, ...table.fittings.flatMap((fitting, index) => findFittingProblems(fitting, length, [...path, 'fittings', index]))];
}

/** Length of a table along its rack centre line. */
export function tableLength(table: Pick<Table, 'legs'>): number {
  return table.legs.reduce((sum, leg) => sum + leg.length, 0);
}

function findFittingProblems(fitting: Fitting, length: number, path: Path): PlanProblem[] {
  const from = fitting.at - fitting.length / 2;
  const to = fitting.at + fitting.length / 2;
  if (from >= -SLACK && to <= length + SLACK) return [];
  return [createProblem('fitting-off-table', path, { from: round(from), to: round(to), length: round(length) })];
}

/** What contradicts itself on a data sheet: controls, the pressure of the rinse, the box of a heat recovery. */
function findDataSheetProblems(sheet: DataSheet, path: Path): PlanProblem[] {
  return [...findControlsProblems(sheet, path), ...findPressureProblems(sheet, path), ...findBoxProblems(sheet, path)];
}

/** Controls that lie off their side, or with their end before their start. */
function findControlsProblems(sheet: DataSheet, path: Path): PlanProblem[] {
  return sheet.controls.flatMap((controls, index) => {
    const at = [...path, 'controls', index];
    const length = controls.side === 'left' || controls.side === 'right' ? sheet.depth : sheet.width;
    if (controls.to <= controls.from) return [createProblem('upside-down', [...at, 'to'], controls)];
    if (controls.zTo <= controls.zFrom) return [createProblem('upside-down', [...at, 'zTo'], { from: controls.zFrom, to: controls.zTo })];
    return controls.to > length + SLACK ? [createProblem('controls-off-side', [...at, 'to'], { to: controls.to, length })] : [];
  });
}

/** A plate may name one pressure: least and most are then the same. */
function findPressureProblems({ rinsePressure }: DataSheet, path: Path): PlanProblem[] {
  if (rinsePressure === null || rinsePressure.least <= rinsePressure.most) return [];
  const [least, most] = [Math.round(rinsePressure.least), Math.round(rinsePressure.most)];
  return [createProblem('least-above-most', [...path, 'rinsePressure', 'least'], { least, most })];
}

function findBoxProblems({ vent }: DataSheet, path: Path): PlanProblem[] {
  if (vent.kind !== 'recovery' || vent.box.zTo > vent.box.zFrom) return [];
  return [createProblem('upside-down', [...path, 'vent', 'box', 'zTo'], { from: vent.box.zFrom, to: vent.box.zTo })];
}

const round = (value: number): number => Math.round(value * 10) / 10;
