import {
  type Check,
  connectionPlace,
  type FigureReading,
  holdReading,
  list,
  type Measurement,
  machineName,
  pointPlace,
  readFigure,
  readingsFor,
} from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { formatNumber } from '../../../units';
import { rule as branchFixtureUnitsFigure } from '../figures/branch-fixture-units';
import { rule as drainUnitsFigure, findGoverningUnits } from '../figures/drain-units';
import { type CarryingPipe, carryingPipe, isPipe } from '../figures/support/drains';
import { listReceptors, type Receptor } from '../figures/support/receptors';
import { branchUnits } from '../formulas/branchUnits';
import { nominalSize } from '../formulas/nominalSize';

export const check: Check = {
  id: 'drain-units',
  order: 590,
  title: 'The branch may take the fixture units of what empties into it',
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
  measure: (scene) => [
    ...scene.machines.flatMap((placed) => measureMachine(scene, placed)),
    ...listReceptors(scene).flatMap((receptor) => measureReceptor(scene, receptor)),
  ],
};

/** What empties into one branch: the place, and how it is called in a sentence. */
interface Load extends Pick<Measurement, 'subjects' | 'place'> {
  what: () => string;
  hasMachine: boolean;
  hasSinks: boolean;
}

/** On a pipe of its own; over an air gap it counts with all that empties into its floor drain. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const pipe = carryingPipe(scene, placed);
  if (isPipe(pipe) && pipe.drain !== null) return [];
  return holdUnits(scene, readingsFor(drainUnitsFigure, scene, placed), isPipe(pipe) ? branchOf(pipe.bore) : { ok: false, ask: pipe }, {
    subjects: [placed.machine.id],
    place: connectionPlace(placed, 'drain'),
    what: () => machineName(scene, placed),
    hasMachine: true,
    hasSinks: false,
  });
}

/** All that empties into one floor drain. While it is not known of a machine whether it does, that machine’s own finding asks. */
function measureReceptor(scene: Scene, { placed: { drain, centre }, bore, machines, sinks, fitted }: Receptor): Measurement[] {
  if (machines.some(({ machine }) => machine.hookUp.waste === null)) return [];
  const readings = readFigure(branchFixtureUnitsFigure, scene).filter(({ subjects }) => subjects[0] === drain.id);
  const [first] = machines;
  const rest = sinks.length + fitted.length > 0 ? ['what else empties into the floor drain'] : [];
  return holdUnits(scene, readings, branchOf(bore), {
    subjects: [...machines.map(({ machine }) => machine.id), drain.id],
    place: first === undefined ? pointPlace(centre) : connectionPlace(first, 'drain'),
    what: () =>
      first === undefined
        ? 'the sinks that empty into the floor drain'
        : list([...machines.map((placed) => machineName(scene, placed)), ...rest]),
    hasMachine: first !== undefined,
    hasSinks: rest.length > 0,
  });
}

/** By the code of the plan, else by the one that counts most. Whether a machine is a steady flow is open: a breach is a watch. */
function holdUnits(
  scene: Scene,
  readings: readonly FigureReading[],
  branch: Branch,
  { what, hasMachine, hasSinks, subjects, place }: Load,
): Measurement[] {
  const governing = findGoverningUnits(readings, scene.plan.codes.drainUnits) ?? readings[0];
  if (governing === undefined) return [];
  const { ok, ...missing } = branch;
  const known: FigureReading = { ...governing, ...(ok || governing.value === null ? { subjects } : { ...missing, subjects, value: null }) };
  return [
    holdReading(known, {
      place,
      name: 'whether the branch may take what empties into it',
      limit: branch.ok ? branch.value : null,
      severity: 'watch',
      say: (units, f) => {
        const may = branch.ok ? branch.value : 0;
        const counts = `${codeWords(governing.part, hasSinks)} counts ${formatNumber(units, 1)} fixture units for ${what()}; a branch of ${f.length(branch.ok ? branch.bore : 0)} may take ${formatNumber(may)}`;
        if (units <= may) return `${counts}.`;
        const asks =
          hasMachine && governing.part !== 'municipal-old'
            ? ', or ask the local authority whether the machine counts as a steady flow'
            : '';
        return `${counts}. Take a larger branch${asks}.`;
      },
    }),
  ];
}

const CODE_WORDS: Readonly<Record<string, string>> = {
  ipc: 'The International code',
  upc: 'The Uniform code',
  chicago: 'Chicago’s code',
  'municipal-old': 'An old city code',
};

/** Chicago’s own table of sinks is not at hand. */
const codeWords = (part: string | undefined, hasSinks: boolean) =>
  `${CODE_WORDS[part ?? ''] ?? 'The code'}${part === 'chicago' && hasSinks ? ', for sinks that of an old city,' : ''}`;

type Branch = { ok: true; bore: number; value: number } | ({ ok: false } & Pick<FigureReading, 'ask' | 'refusal'>);

/** What a pipe may take, by its nominal size. */
function branchOf({ value, input, path }: CarryingPipe['bore']): Branch {
  if (value === null) return { ok: false, ask: { input, path } };
  const size = nominalSize({ boreM: value / 1000 });
  const units = size.ok ? branchUnits({ sizeM: size.value, kind: 'branch' }) : size;
  return units.ok ? { ok: true, bore: value, value: units.value } : { ok: false, refusal: units.refusal };
}
