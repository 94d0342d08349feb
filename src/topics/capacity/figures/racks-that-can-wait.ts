import { createMessages, type FigureReading, type FigureRule, measured } from '../../../rules';
import type { Line, PlacedThing, Scene } from '../../../scene';

export const rule: FigureRule = {
  id: 'racks-that-can-wait',
  order: 70,
  title: 'Soiled racks that find room to wait',
  group: 'capacity',
  unit: 'count',
  derive: (scene) => (scene.lines.length === 0 ? [] : [deriveReading(scene)]),
};

/** What is said beside the racks: where they find room. */
export interface RacksThatCanWaitMessages {
  'racks-that-can-wait/where': { landings: number; dropOffs: number; carts: number };
}

const say = createMessages<RacksThatCanWaitMessages>();

/** On the landings before the machines, at the drop-offs, and on what holds soiled ware. */
function deriveReading(scene: Scene): FigureReading {
  const landings = sum(scene.lines.map((line) => racksAt(line, 'soiled-landing')));
  const dropOffs = sum(scene.lines.map((line) => racksAt(line, 'drop-off')));
  const carts = sum(scene.things.filter(isForSoiled).map(({ thing }) => racksOn(thing, scene.plan.settings.rackPitch)));
  return {
    subjects: [],
    value: landings + dropOffs + carts,
    how: HOW,
    notes: [say('racks-that-can-wait/where', { landings, dropOffs, carts })],
  };
}

type Thing = PlacedThing['thing'];

const HOLDERS: ReadonlySet<Thing['kind']> = new Set<Thing['kind']>(['cart', 'shelving', 'work-table']);
const isForSoiled = ({ thing: { kind, ware } }: PlacedThing) => ware === 'soiled' && HOLDERS.has(kind);

const racksAt = ({ stations }: Line, wanted: Line['stations'][number]['kind']) => stations.find(({ kind }) => kind === wanted)?.racks ?? 0;

/** One layer of racks side by side; no plan says how many shelves there are, or how high racks are stacked. */
const racksOn = ({ width, depth }: Thing, pitch: number) => whole(width / pitch) * whole(depth / pitch);
const whole = (ratio: number) => Math.floor(ratio + 1e-9);
const sum = (counts: readonly number[]) => counts.reduce((a, b) => a + b, 0);

const HOW = measured('N = whole racks on the landing + at the drop-off + on carts, shelves and tables for soiled ware', {
  text: 'FDA Food Code 4-301.13, room for all soiled ware that gathers',
  documents: ['fda-food-code'],
  confidence: 'read',
});
