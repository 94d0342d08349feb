import { type Check, connectionPlace, holdAgainst, type Measurement, machineName, readingsFor, sentence } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import type { Formatter } from '../../../units';
import { rule as drainCapacityFigure } from '../figures/drain-capacity';
import { rule as drainUnitsFigure } from '../figures/drain-units';
import { carryingPipe, isPipe } from '../figures/support/drains';

export const check: Check = {
  id: 'drain-carries',
  order: 560,
  title: 'The drain carries what the machine lets out',
  group: 'drain',
  unit: 'm3/s',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'National Standard Plumbing Code 2009',
    section: 'Appendix K, drains sized half full; the flow by Manning’s equation',
    confidence: 'read',
  },
  why: 'The drain opens by itself and lets the whole tank out at once. A drain that is too small sends scalding water over the floor.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** More than the full pipe carries is a fault; more than half full a watch. A floor sink may hold what comes too fast. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const readings = readingsFor(drainCapacityFigure, scene, placed);
  const [half, full] = ['half-full', 'full'].map((name) => readings.find(({ part }) => part === name) ?? readings[0]);
  // The figure of fixture units waits for the same flow, and knows where it would be said.
  const [units] = readingsFor(drainUnitsFigure, scene, placed);
  if (half === undefined || full === undefined) return [];
  const carrying = carryingPipe(scene, placed);
  const pipe = isPipe(carrying) && carrying.drain !== null ? 'the pipe of the floor drain' : 'its drain';
  const said = { value: placed.sheet.drainFlow, input: units?.ask?.input ?? '', path: units?.ask?.path ?? [] };
  const measurement = holdAgainst(said, full, {
    place: connectionPlace(placed, 'drain'),
    severity: placed.machine.hookUp.waste === 'indirect' ? 'watch' : 'stop',
    ...(half.value === null ? {} : { watchLimit: half.value }),
    name: 'what the drain carries',
    say: (flow, most, f) => sentence(`${machineName(scene, placed)} ${sayFlow(pipe, flow, half.value ?? most, most, f)}`),
  });
  return [measurement];
}

function sayFlow(pipe: string, flow: number, half: number, full: number, f: Formatter): string {
  const lets = `lets out ${f.waterFlow(flow)}; ${pipe} carries`;
  if (flow > full) return `${lets} ${f.waterFlow(full)} brim full. Take a larger drain, more fall, or a floor sink that holds the rest.`;
  if (flow > half)
    return `${lets} ${f.waterFlow(half)} half full, as drains are sized, and ${f.waterFlow(full)} brim full. Take a larger drain.`;
  return `${lets} ${f.waterFlow(half)} half full.`;
}
