import { gather, gatherFound, isSameList, type Point } from '../../geometry';
import type { Fitting } from '../../plan';
import { type Appliance, type Furnishing, type PlacedRoom, readDerived, type Scene } from '../../scene';
import { type CarryingPipe, floorDrainPipe, nearestDrain, outletOf } from './drains';
import { isWareSink } from './sinkBowls';

type FittedSink = Extract<Fitting, { kind: 'sink' }>;

/** A drawn floor drain or floor sink, and what empties into it, wherever that stands. */
export interface Receptor {
  placed: PlacedRoom['floorDrains'][number];
  /** Inside diameter of the pipe below it. */
  bore: CarryingPipe['bore'];
  machines: readonly Appliance[];
  /** Ware sinks that stand by themselves. */
  sinks: readonly Furnishing[];
  /** Sinks in tables. */
  fitted: readonly FittedSink[];
}

/**
 * The floor drains that take something: each thing empties into the nearest. What is connected directly does not; what is not known
 * to be connected either way counts.
 */
export const listReceptors = (scene: Scene): readonly Receptor[] => readDerived(scene, deriveReceptors, areSameReceptors);

function deriveReceptors({ room, machines, appliances, things, furnishings, tables }: Scene): Receptor[] {
  const takes = (drain: Receptor['placed']) => (place: Point) => nearestDrain(room, place)?.placed === drain;
  return room.floorDrains
    .map((placed, index) => {
      const isIts = takes(placed);
      return {
        placed,
        bore: floorDrainPipe(placed.drain, index).bore,
        machines: gatherFound(
          machines.filter((one) => one.machine.hookUp.waste !== 'direct' && isIts(outletOf(one) ?? one.machine)),
          ({ at }) => appliances[at],
        ),
        sinks: gatherFound(
          things.filter(({ thing }) => isWareSink(thing) && thing.basins?.waste !== 'direct' && isIts(thing)),
          ({ at }) => furnishings[at],
        ),
        fitted: gather(
          gather(tables, ({ fittings }) => fittings),
          ({ fitting, centre }) => (fitting.kind === 'sink' && fitting.waste !== 'direct' && isIts(centre) ? [fitting] : []),
        ),
      };
    })
    .filter((receptor) => receptor.machines.length + receptor.sinks.length + receptor.fitted.length > 0);
}

const areSameReceptors = (one: readonly Receptor[], other: readonly Receptor[]) =>
  isSameList(
    one,
    other,
    (a, b) => a.placed === b.placed && isSameList(a.machines, b.machines) && isSameList(a.sinks, b.sinks) && isSameList(a.fitted, b.fitted),
  );
