import type { Scene } from '../../scene';
import { fitHood, leastOverhang } from '../../topics/hood';
import { type Box, createBox } from './box';

/** The least hood over each machine: its overhang on open sides, up to the wall on closed ones. These edges a hood keeps to. */
export function hoodLimits({ machines }: Scene): Box[] {
  return machines.map((machine) => {
    const fitted = fitHood(machine, leastOverhang(machine));
    return createBox(machine.machine.id, fitted, fitted.rotationDeg, fitted.width, fitted.depth);
  });
}
