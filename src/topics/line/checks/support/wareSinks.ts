import type { Point, Polygon } from '../../../../geometry';
import { pathOf } from '../../../../plan';
import { type Ask, areaPlace, createMessages, type Name, nameFitting, nameOwner, type Place } from '../../../../rules';
import { type PlacedFitting, type PlacedTable, type PlacedThing, type Scene, thingPath } from '../../../../scene';
import { isWareSink } from '../../figures/support/isWareSink';

/** What is asked of a sink while it is not known how it empties. */
export interface WareSinkMessages {
  'ware-sink/ask-bowls': { sink: Name };
  'ware-sink/ask-waste': { sink: Name; bowls: WareSink['bowls'] };
}

const say = createMessages<WareSinkMessages>();

/** A sink in which ware is washed or rinsed: by itself in the room, or in a table. */
export interface WareSink {
  id: string;
  /** What a finding of it is about. */
  subjects: string[];
  place: Place;
  bowls: 'one' | 'several';
  waste: 'indirect' | 'direct' | null;
  /** What is to be said of it while it is not known how it empties. */
  ask: Ask;
  centre: Point;
  polygon: Polygon;
}

/** The ware sinks of the plan; a sink in a table is one whatever stands over it. */
export const listWareSinks = (scene: Scene): WareSink[] => [
  ...scene.things.filter(({ thing }) => isWareSink(thing)).map((placed) => freeSink(scene, placed)),
  ...scene.tables.flatMap((placed) => placed.fittings.filter(isSink).map((fitted) => fittedSink(scene, placed, fitted))),
];

function freeSink(scene: Scene, placed: PlacedThing): WareSink {
  const { id, basins, x, y } = placed.thing;
  const sink = nameOwner(scene, id);
  return {
    id,
    subjects: [id],
    place: areaPlace(placed.polygon),
    bowls: 'several',
    waste: basins?.waste ?? null,
    ask: {
      input: basins === null ? say('ware-sink/ask-bowls', { sink }) : say('ware-sink/ask-waste', { sink, bowls: 'several' }),
      path: thingPath(placed, 'basins', ...(basins === null ? [] : ['waste'])),
    },
    centre: { x, y },
    polygon: placed.polygon,
  };
}

type PlacedSink = PlacedFitting & { fitting: { kind: 'sink' } };

const isSink = (placed: PlacedFitting): placed is PlacedSink => placed.fitting.kind === 'sink';

function fittedSink(scene: Scene, { table }: PlacedTable, { fitting, polygon, centre }: PlacedSink): WareSink {
  const index = table.fittings.findIndex(({ id }) => id === fitting.id);
  return {
    id: fitting.id,
    subjects: [fitting.id, table.id],
    place: areaPlace(polygon),
    bowls: 'one',
    waste: fitting.waste,
    ask: {
      input: say('ware-sink/ask-waste', { sink: nameFitting(fitting), bowls: 'one' }),
      path: pathOf(scene.plan, 'tables', table.id, 'fittings', index, 'waste'),
    },
    centre,
    polygon,
  };
}
