import { Plus } from 'lucide-react';
import { addPointToRun, addTableFitting, addTableLeg, type CommandResult, turnTableRound } from '../../editor';
import type { Fitting, Plan } from '../../plan';
import { Menu, type MenuGroup } from '../parts/Menu';
import { actions } from '../store/actions';

/** What is added to the chosen table or run; nothing for other things. */
export function ShapeActions({ id, plan }: { id: string; plan: Plan }) {
  const table = plan.tables.find((item) => item.id === id);
  if (table) return <AddMenuOf title="Add to the table" groups={tableGroups(id, table.place.kind === 'free')} />;
  const run = plan.runs.find((item) => item.id === id);
  return run ? <AddMenuOf title="Add to the run" groups={[{ entries: [entry('A point', (p) => addPointToRun(p, id))] }]} /> : null;
}

function AddMenuOf({ title, groups }: { title: string; groups: MenuGroup[] }) {
  return (
    <Menu
      title={title}
      groups={groups}
      label={
        <>
          <Plus size={15} /> Add
        </>
      }
    />
  );
}

const entry = (label: string, command: (plan: Plan) => CommandResult) => ({ label, run: () => actions.run(command) });

const FITTINGS: readonly (readonly [Fitting['kind'], string])[] = [
  ['drop-off', 'Drop-off'],
  ['scrap', 'Scrap opening'],
  ['sink', 'Sink bowl'],
  ['landing', 'Rack landing'],
  ['overshelf', 'Overshelf'],
];

/** Turns of a leg that goes around a corner, degrees clockwise. */
const LEGS: readonly (readonly [number, string])[] = [
  [0, 'Straight on'],
  [90, 'Around a corner, clockwise'],
  [-90, 'Around a corner, anticlockwise'],
];

function tableGroups(id: string, isFree: boolean): MenuGroup[] {
  return [
    { title: 'Fitting', entries: FITTINGS.map(([kind, label]) => entry(label, (plan) => addTableFitting(plan, id, kind))) },
    { title: 'Leg at its far end', entries: LEGS.map(([turnDeg, label]) => entry(label, (plan) => addTableLeg(plan, id, turnDeg))) },
    ...(isFree ? [{ title: 'Ends', entries: [entry('Begin at the other end', (plan) => turnTableRound(plan, id))] }] : []),
  ];
}
