import { type Check, connectionPlace, type Measurement, machineName } from '../../checks';
import { leastSlope, nominalSize } from '../../engineering';
import { type Appliance, appliancePath, type Scene } from '../../scene';
import { holdAgainst } from '../support/holdAgainst';

export const check: Check = {
  id: 'drain-slope',
  title: 'The drain falls enough for its size',
  group: 'drain',
  unit: 'ratio',
  relation: 'at-least',
  source: { kind: 'published', document: 'Chicago Plumbing Code', section: 'Table 18-29-704.1', confidence: 'read' },
  why: 'In a drain that falls too little, food and grease settle until it is stopped up and the hot waste comes back out of the floor.',
  measure: (scene) => scene.appliances.map((placed) => measureMachine(scene, placed)),
};

/** The least fall goes by the nominal size of the pipe; a bore between two sizes takes the steeper. */
function measureMachine(scene: Scene, placed: Appliance): Measurement {
  const { drainBore, drainSlope } = placed.machine.hookUp;
  const subjects = [placed.machine.id];
  const said = {
    value: drainSlope,
    input: 'fall of the drain that takes the machine’s waste',
    path: appliancePath(placed, 'hookUp', 'drainSlope'),
  };
  return holdAgainst(
    said,
    { subjects, ...leastFor(placed, drainBore) },
    {
      place: connectionPlace(placed, 'drain'),
      name: 'the least fall of the drain',
      say: (slope, least, f) =>
        slope < least - ROUNDING
          ? `The drain of ${machineName(scene, placed)} falls ${f.slope(slope)}; a pipe of ${f.length(drainBore ?? 0)} needs ${f.slope(least)}. Lay it steeper, or have a plumber take a larger one.`
          : `The drain of ${machineName(scene, placed)} falls ${f.slope(slope)}; a pipe of ${f.length(drainBore ?? 0)} needs ${f.slope(least)}.`,
    },
  );
}

const ROUNDING = 1e-9;

function leastFor(placed: Appliance, bore: number | null) {
  if (bore === null) {
    const ask = {
      input: 'inside diameter of the drain that takes the machine’s waste',
      path: appliancePath(placed, 'hookUp', 'drainBore'),
    };
    return { value: null, ask };
  }
  const size = nominalSize({ boreM: bore / 1000 });
  const least = size.ok ? leastSlope({ sizeM: size.value }) : size;
  return least.ok ? { value: least.value } : { value: null, refusal: least.reason };
}
