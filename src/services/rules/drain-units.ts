import { type Check, connectionPlace, type Measurement, machineName } from '../../checks';
import { branchUnits, nominalSize } from '../../engineering';
import { type FigureReading, findGoverningUnits } from '../../figures';
import { type Appliance, appliancePath, type Scene } from '../../scene';
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
  measure: (scene) => scene.appliances.flatMap((placed) => measureMachine(scene, placed)),
};

/** By the code of the plan, else by the one that counts most. Whether the machine is a steady flow is open: a breach is a watch. */
function measureMachine(scene: Scene, placed: Appliance): Measurement[] {
  const readings = readingsFor(scene, 'drain-units', placed);
  const governing = findGoverningUnits(readings, scene.plan.codes.drainUnits) ?? readings[0];
  if (governing === undefined) return [];
  const branch = branchFor(placed);
  const { drainBore } = placed.machine.hookUp;
  const known: FigureReading = branch.ok || governing.value === null ? governing : { ...governing, ...branch.missing, value: null };
  return [
    holdReading(known, {
      place: connectionPlace(placed, 'drain'),
      name: 'whether the branch may take the machine’s fixture units',
      limit: branch.ok ? branch.value : null,
      severity: 'watch',
      say: (units, f) => {
        const may = branch.ok ? branch.value : 0;
        const counts = `${CODE_WORDS[governing.part ?? ''] ?? 'The code'} counts ${formatNumber(units, 1)} fixture units for ${machineName(scene, placed)}; a branch of ${f.length(drainBore ?? 0)} may take ${formatNumber(may)}`;
        return units > may
          ? `${counts}. Take a larger branch, or ask the local authority whether it counts as a steady flow.`
          : `${counts}.`;
      },
    }),
  ];
}

const CODE_WORDS: Readonly<Record<string, string>> = { ipc: 'The International code', upc: 'The Uniform code', chicago: 'Chicago’s code' };

type Branch = { ok: true; value: number } | { ok: false; missing: Pick<FigureReading, 'ask' | 'refusal'> };

function branchFor(placed: Appliance): Branch {
  const { drainBore } = placed.machine.hookUp;
  if (drainBore === null) {
    return {
      ok: false,
      missing: {
        ask: { input: 'inside diameter of the drain that takes the machine’s waste', path: appliancePath(placed, 'hookUp', 'drainBore') },
      },
    };
  }
  const size = nominalSize({ boreM: drainBore / 1000 });
  const units = size.ok ? branchUnits({ sizeM: size.value, kind: 'branch' }) : size;
  return units.ok ? units : { ok: false, missing: { refusal: units.reason } };
}
