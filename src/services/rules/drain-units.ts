import { type Check, connectionPlace, type Measurement, machineName } from '../../checks';
import { branchUnits, nominalSize } from '../../engineering';
import { carryingPipe, type FigureReading, findGoverningUnits, isPipe } from '../../figures';
import type { PlacedMachine, PlacedRoom, Scene } from '../../scene';
import { formatNumber } from '../../units';
import { holdReading } from '../support/holdReading';
import { readingsFor } from '../support/machines';

export const check: Check = {
  id: 'drain-units',
  title: 'The branch may take the machine’s fixture units',
  group: 'drain',
  unit: 'count',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'International Plumbing Code',
    section: '710.1, horizontal branch, single values as quoted',
    confidence: 'secondary',
  },
  why: 'Codes size drains by fixture units, and count a steady flow of a machine differently. The inspector asks for them; local code and a plumber decide.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** By the code of the plan, else by the one that counts most. Whether the machine is a steady flow is open: a breach is a watch. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const readings = readingsFor(scene, 'drain-units', placed);
  const governing = findGoverningUnits(readings, scene.plan.codes.drainUnits) ?? readings[0];
  if (governing === undefined) return [];
  const branch = branchFor(scene.room, placed);
  const { subjects } = branch;
  const known: FigureReading =
    branch.ok || governing.value === null ? { ...governing, subjects } : { ...governing, subjects, ...branch.missing, value: null };
  return [
    holdReading(known, {
      place: connectionPlace(placed, 'drain'),
      name: 'whether the branch may take the machine’s fixture units',
      limit: branch.ok ? branch.value : null,
      severity: 'watch',
      say: (units, f) => {
        const may = branch.ok ? branch.value : 0;
        const counts = `${CODE_WORDS[governing.part ?? ''] ?? 'The code'} counts ${formatNumber(units, 1)} fixture units for ${machineName(scene, placed)}; a branch of ${f.length(branch.ok ? branch.bore : 0)} may take ${formatNumber(may)}`;
        return units > may
          ? `${counts}. Take a larger branch, or ask the local authority whether it counts as a steady flow.`
          : `${counts}.`;
      },
    }),
  ];
}

const CODE_WORDS: Readonly<Record<string, string>> = { ipc: 'The International code', upc: 'The Uniform code', chicago: 'Chicago’s code' };

type Branch = { subjects: string[] } & (
  | { ok: true; bore: number; value: number }
  | { ok: false; missing: Pick<FigureReading, 'ask' | 'refusal'> }
);

/** What the pipe that carries the waste on may take, by its nominal size. */
function branchFor(room: PlacedRoom, placed: PlacedMachine): Branch {
  const pipe = carryingPipe(room, placed);
  if (!isPipe(pipe)) return { subjects: [placed.machine.id], ok: false, missing: { ask: pipe } };
  const { subjects, bore } = pipe;
  if (bore.value === null) return { subjects, ok: false, missing: { ask: { input: bore.input, path: bore.path } } };
  const size = nominalSize({ boreM: bore.value / 1000 });
  const units = size.ok ? branchUnits({ sizeM: size.value, kind: 'branch' }) : size;
  return units.ok
    ? { subjects, ok: true, bore: bore.value, value: units.value }
    : { subjects, ok: false, missing: { refusal: units.reason } };
}
