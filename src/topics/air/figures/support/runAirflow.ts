import { pathOf } from '../../../../plan';
import { askFor, type FigureReading } from '../../../../rules';
import type { PlacedMachine, PlacedRun, Scene } from '../../../../scene';

type Known<T> = { known: T } | { reading: FigureReading };

export const subjectsOf = ({ run }: PlacedRun) => [run.id, run.machine];

export const machineOf = (scene: Scene, { run }: PlacedRun): PlacedMachine | undefined =>
  scene.machines.find(({ machine }) => machine.id === run.machine);

/** The airflow that the run must carry: what the data sheet needs, or what the plan gives it where that is more. */
export function needAirflow(scene: Scene, placed: PlacedRun): Known<number> {
  const vent = machineOf(scene, placed)?.sheet.vent;
  const known = [placed.run.duct.airflow, vent?.kind === 'direct' ? vent.airflow : null].filter((airflow) => airflow !== null);
  return known.length === 0 ? ask(scene, placed, 'airflow', 'airflow of the run') : { known: Math.max(...known) };
}

type DuctField = keyof PlacedRun['run']['duct'];

const ask = (scene: Scene, placed: PlacedRun, field: DuctField, words: string): { reading: FigureReading } => ({
  reading: askFor(subjectsOf(placed), words, pathOf(scene.plan, 'runs', placed.run.id, 'duct', field)),
});
