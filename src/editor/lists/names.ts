import { findDataSheet, type Plan } from '../../plan';
import { optionWords } from '../../text';
import { findSubject, type Subject } from '../subject/subject';

/** What people call a thing of the plan: its own name, else what it is. */
export function nameSubject(plan: Plan, id: string): string {
  const subject = findSubject(plan, id);
  return subject === null ? id : capitalize(NAMES[subject.kind](plan, subject));
}

/** What a thing is, in the middle of a sentence: "machine", "soiled table", "hand sink". */
export function nounOf(plan: Plan, id: string): string {
  const subject = findSubject(plan, id);
  if (subject === null) return id;
  if (subject.kind === 'machine') return 'machine';
  if (subject.kind === 'thing') return optionWords(plan.things.find((thing) => thing.id === id)?.kind ?? '');
  return nameSubject(plan, id).toLowerCase();
}

/** Walls have no names of their own; they are counted along the outline. */
export function nameWall(plan: Plan, id: string): string {
  return `Wall ${plan.room.outline.findIndex((corner) => corner.id === id) + 1}`;
}

export function capitalize(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

type Naming = (plan: Plan, subject: Subject) => string;

const NAMES: Record<Subject['kind'], Naming> = {
  machine: (plan, { id }) => findDataSheet(plan, plan.machines.find((item) => item.id === id)?.sheet ?? '')?.name ?? 'machine',
  table: (plan, { id }) => `${plan.tables.find((item) => item.id === id)?.role ?? ''} table`,
  fitting: (plan, { id }) => nameFitting(plan, id),
  thing: (plan, { id }) => nameThing(plan, id),
  hood: () => 'hood',
  run: () => 'duct run',
  corner: (plan, { id }) => nameWall(plan, id),
  opening: (plan, { id }) => optionWords(plan.room.openings.find((item) => item.id === id)?.kind ?? ''),
  column: () => 'column',
  'floor-drain': (plan, { id }) => optionWords(plan.room.floorDrains.find((item) => item.id === id)?.kind ?? ''),
  stub: (plan, { id }) => optionWords(plan.room.stubs.find((item) => item.id === id)?.kind ?? ''),
};

function nameThing(plan: Plan, id: string): string {
  const thing = plan.things.find((item) => item.id === id);
  return thing?.name || optionWords(thing?.kind ?? '');
}

function nameFitting(plan: Plan, id: string): string {
  const fitting = plan.tables.flatMap((table) => table.fittings).find((item) => item.id === id);
  if (fitting?.kind === 'sink' && fitting.spray) return 'pre-rinse sink';
  return optionWords(fitting?.kind ?? '');
}
