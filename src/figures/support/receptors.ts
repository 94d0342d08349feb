import type { Point } from '../../geometry';
import type { PlacedFitting, PlacedMachine, PlacedRoom, PlacedThing, Scene } from '../../scene';
import { type CarryingPipe, floorDrainPipe, nearestDrain, outletOf } from './drains';
import { isWareSink } from './sinkBowls';

/** A drawn floor drain or floor sink, and what empties into it. */
export interface Receptor {
  placed: PlacedRoom['floorDrains'][number];
  /** Inside diameter of the pipe below it. */
  bore: CarryingPipe['bore'];
  machines: PlacedMachine[];
  /** Ware sinks that stand by themselves. */
  sinks: PlacedThing[];
  /** Sinks in tables. */
  fitted: PlacedFitting[];
}

/**
 * The floor drains that take something: each thing empties into the nearest. What is connected directly does not; what is not known
 * to be connected either way counts, as does every sink in a table, of which the plan does not say.
 */
export function listReceptors({ room, machines, things, tables }: Scene): Receptor[] {
  const takes = (drain: Receptor['placed']) => (place: Point) => nearestDrain(room, place)?.placed === drain;
  return room.floorDrains
    .map((placed, index) => {
      const isIts = takes(placed);
      return {
        placed,
        bore: floorDrainPipe(placed.drain, index).bore,
        machines: machines.filter((one) => one.machine.hookUp.waste !== 'direct' && isIts(outletOf(one) ?? one.machine)),
        sinks: things.filter(({ thing }) => isWareSink(thing) && thing.basins?.waste !== 'direct' && isIts(thing)),
        fitted: tables.flatMap(({ fittings }) => fittings).filter(({ fitting, centre }) => fitting.kind === 'sink' && isIts(centre)),
      };
    })
    .filter((receptor) => receptor.machines.length + receptor.sinks.length + receptor.fitted.length > 0);
}
