import type { ConnectionKind } from '../../catalog';
import { distance } from '../../geometry';
import type { Stub } from '../../plan';
import type { PlacedMachine, PlacedRoom } from '../../scene';
import type { Ink, Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen } from '../support/pen';

/** What a stub can feed. */
const FEEDS: Partial<Record<Stub['kind'], { connection: ConnectionKind; ink: Ink }>> = {
  'cold-water': { connection: 'cold-water', ink: { stroke: 'water', width: WIDTH.narrow, dash: 'short' } },
  'hot-water': { connection: 'hot-water', ink: { stroke: 'water', width: WIDTH.narrow, dash: 'short' } },
  power: { connection: 'power', ink: { stroke: 'power', width: WIDTH.narrow, dash: 'dash-dot' } },
};

/** Straight lines from each stub to the nearest machine connection that it can feed: which serves which, not the way of the pipe. */
export function drawSupplies(machines: readonly PlacedMachine[], { stubs }: PlacedRoom): Prim[] {
  return stubs.flatMap(({ stub, point }) => {
    const feed = FEEDS[stub.kind];
    if (feed === undefined) return [];
    const ends = machines.flatMap((machine) => connectionsOf(machine, feed.connection));
    const end = ends.toSorted((a, b) => distance(a, point) - distance(b, point))[0];
    return end === undefined ? [] : [createPen('floor', stub.id).line([point, end], feed.ink)];
  });
}

const connectionsOf = (machine: PlacedMachine, kind: ConnectionKind) =>
  machine.connections.filter(({ connection }) => connection.kind === kind).map(({ point }) => point);
