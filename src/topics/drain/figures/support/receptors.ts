import type { Point } from '../../../../geometry';
import type { Fitting } from '../../../../plan';
import { memoizeByIdentity, type PlacedMachine, type PlacedRoom, type PlacedThing, type Scene } from '../../../../scene';
import { isWareSink } from '../../../line';
import { type CarryingPipe, floorDrainPipe, nearestDrain, outletOf } from './drains';

type FittedSink = Extract<Fitting, { kind: 'sink' }>;

/** A drawn floor drain or floor sink, and what empties into it, wherever that stands. */
export interface Receptor {
  placed: PlacedRoom['floorDrains'][number];
  /** Inside diameter of the pipe below it. */
  bore: CarryingPipe['bore'];
  machines: readonly PlacedMachine[];
  /** Ware sinks that stand by themselves. */
  sinks: readonly PlacedThing[];
  /** Sinks in tables. */
  fitted: readonly FittedSink[];
}

/**
 * The floor drains that take something: each thing empties into the nearest. What is connected directly does not; what is not known
 * to be connected either way counts.
 */
export const listReceptors = (scene: Scene): readonly Receptor[] => listFrom(scene);

const listFrom = memoizeByIdentity(({ room, machines, things, tables }: Scene): Receptor[] => {
  const takes = (drain: Receptor['placed']) => (place: Point) => nearestDrain(room, place)?.placed === drain;
  return room.floorDrains
    .map((placed, index) => {
      const isIts = takes(placed);
      return {
        placed,
        bore: floorDrainPipe(placed.drain, index).bore,
        machines: machines.filter((one) => one.machine.hookUp.waste !== 'direct' && isIts(outletOf(one) ?? one.machine)),
        sinks: things.filter(({ thing }) => isWareSink(thing) && thing.basins?.waste !== 'direct' && isIts(thing)),
        fitted: tables
          .flatMap(({ fittings }) => fittings)
          .flatMap(({ fitting, centre }) => (fitting.kind === 'sink' && fitting.waste !== 'direct' && isIts(centre) ? [fitting] : [])),
      };
    })
    .filter((receptor) => receptor.machines.length + receptor.sinks.length + receptor.fitted.length > 0);
});
