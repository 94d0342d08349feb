import type { Fitting, Plan } from '../../../../plan';
import { createMessages, editTable, type NoParams, type Offer, type Repair } from '../../../../rules';
import type { PlacedFitting, PlacedTable } from '../../../../scene';
import { findFreeStretch } from './stretches';

/** What is done to a sink or its spray. `fromMachine` is the middle of the sink. */
export interface PreRinseMessages {
  'repair/hang-spray': NoParams;
  'repair/take-spray-off': NoParams;
  'repair/move-spray': NoParams;
  'repair/move-pre-rinse': { fromMachine: number };
}

const say = createMessages<PreRinseMessages>();

type Sink = Extract<Fitting, { kind: 'sink' }>;

/** A sink where it lies on its table. */
export type LaidSink = PlacedFitting & { fitting: Sink };

const isSink = (placed: PlacedFitting): placed is LaidSink => placed.fitting.kind === 'sink';

/** A sink with a spray hose over it. */
export const isPreRinse = (placed: PlacedFitting): placed is LaidSink => isSink(placed) && placed.fitting.spray;

/** The first sink of a table that has no spray. */
export const findPlainSink = ({ fittings }: PlacedTable) => fittings.filter(isSink).find(({ fitting }) => !fitting.spray);

/** Hangs a spray over a sink that has none. */
export const hangSpray = ({ table }: PlacedTable, { fitting }: LaidSink): Repair => ({
  id: 'hang-spray',
  label: say('repair/hang-spray'),
  edit: (draft) => setSpray(draft, table.id, fitting.id, true),
});

/** Moves the pre-rinse to the load side: the spray alone where a sink waits for it there, else the sink where there is room for it. */
export const offerToMovePreRinse = (soiled: PlacedTable, clean: PlacedTable, sink: LaidSink): Offer => ({
  ids: ['take-spray-off', 'move-spray', 'move-pre-rinse'],
  find: () => movePreRinse(soiled, clean, sink),
});

function movePreRinse(soiled: PlacedTable, clean: PlacedTable, sink: LaidSink): Repair[] {
  if (soiled.fittings.some(isPreRinse)) return [takeSprayOff(clean, sink)];
  const waiting = findPlainSink(soiled);
  if (waiting !== undefined) return [moveSpray(soiled, clean, sink, waiting)];
  const at = findFreeStretch(soiled, sink.fitting.length);
  return at === null ? [] : [moveSink(soiled, clean, sink, at)];
}

const takeSprayOff = ({ table }: PlacedTable, { fitting }: LaidSink): Repair => ({
  id: 'take-spray-off',
  label: say('repair/take-spray-off'),
  edit: (draft) => setSpray(draft, table.id, fitting.id, false),
});

const moveSpray = (soiled: PlacedTable, clean: PlacedTable, from: LaidSink, to: LaidSink): Repair => ({
  id: 'move-spray',
  label: say('repair/move-spray'),
  edit: (draft) => {
    setSpray(draft, clean.table.id, from.fitting.id, false);
    setSpray(draft, soiled.table.id, to.fitting.id, true);
  },
});

const moveSink = (soiled: PlacedTable, clean: PlacedTable, { fitting }: LaidSink, at: number): Repair => ({
  id: 'move-pre-rinse',
  label: say('repair/move-pre-rinse', { fromMachine: at }),
  edit: (draft) => {
    editTable(draft, clean.table.id, (table) => {
      table.fittings = table.fittings.filter(({ id }) => id !== fitting.id);
    });
    editTable(draft, soiled.table.id, (table) => {
      table.fittings.push({ ...fitting, at });
    });
  },
});

function setSpray(draft: Plan, table: string, sink: string, spray: boolean): void {
  editTable(draft, table, ({ fittings }) => {
    const fitting = fittings.find(({ id }) => id === sink);
    if (fitting?.kind === 'sink') fitting.spray = spray;
  });
}
