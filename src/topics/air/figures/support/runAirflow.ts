import { pathOf } from '../../../../plan';
import { askFor, type FigureReading, type Message } from '../../../../rules';
import type { PlacedMachine, PlacedRun, Scene } from '../../../../scene';
import { sayAirAsk } from './airAsks';

type Known<T> = { known: T } | { reading: FigureReading };

export const subjectsOf = ({ run }: PlacedRun) => [run.id, run.machine];

export const machineOf = (scene: Scene, { run }: PlacedRun): PlacedMachine | undefined =>
  scene.machines.find(({ machine }) => machine.id === run.machine);

/** The airflow that the run must carry: what the data sheet needs, or what the plan gives it where that is more. */
export function needAirflow(scene: Scene, placed: PlacedRun): Known<number> {
  const vent = machineOf(scene, placed)?.sheet.vent;
  const known = [placed.run.duct.airflow, vent?.kind === 'direct' ? vent.airflow : null].filter((airflow) => airflow !== null);
  return known.length === 0 ? ask(scene, placed, 'airflow', sayAirAsk('air/ask-run-airflow')) : { known: Math.max(...known) };
}

type DuctField = keyof PlacedRun['run']['duct'];

const ask = (scene: Scene, placed: PlacedRun, field: DuctField, input: Message): { reading: FigureReading } => ({
  reading: askFor(subjectsOf(placed), input, pathOf(scene.plan, 'runs', placed.run.id, 'duct', field)),
});
