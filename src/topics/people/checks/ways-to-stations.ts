import type { Segment } from '../../../geometry';
import {
  areaPlace,
  type Check,
  createMessages,
  type Measurement,
  type Message,
  type Name,
  nameOwner,
  pointPlace,
  readFigure,
  type Source,
  segmentPlace,
} from '../../../rules';
import { findStationWays, type Scene, type StationWay } from '../../../scene';
import {
  type Aisle,
  aisleSource,
  centrePinch,
  describeAisle,
  describePass,
  describePinch,
  type Pass,
  type Pinch,
  passSource,
  wayWidths,
} from '../../room';
import { rule as stationWayWidthFigure } from '../figures/station-way-width';
import { rule as wayWidthFigure } from '../figures/way-width';

export const check: Check = {
  id: 'ways-to-stations',
  order: 700,
  title: 'People reach every place of work',
  group: 'people',
  unit: 'mm',
  relation: 'at-least',
  source: { kind: 'published', document: '29 CFR', section: '1910.36(g)(2): 28 in at all points of an exit access', confidence: 'read' },
  why: 'Who works at the drop-off, the sinks or the shelves must come there with both hands full, and get out again. Doors stand open and carts are rolled out while they do.',
  measure: (scene) => measureWays(scene),
};

/** What is said of the ways to the places of work. Lengths in mm. */
export interface WaysToStationsMessages {
  'ways-to-stations/wide': Place & { width: number };
  'ways-to-stations/barred': Place;
  'ways-to-stations/barred-before': Place & { thing: Name };
  'ways-to-stations/below-aisle': Place & { width: number; pinch: Pinch; aisle: Aisle };
  'ways-to-stations/narrow': Place & { width: number; pinch: Pinch; pass: Pass };
  'ways-to-stations/wide-beside-carts': { width: number };
  'ways-to-stations/narrow-beside-carts': Place & { width: number; pass: Pass };
}

interface Place {
  place: StationWay['kind'];
}

const say = createMessages<WaysToStationsMessages>();

const CARTS_SOURCE: Source = { kind: 'common-practice', text: 'People still pass while a cart is rolled out before its place.' };

/** Without a door there is nothing to measure from; the operator's way asks for it. */
function measureWays(scene: Scene): Measurement[] {
  const widths = wayWidths(scene.plan.settings);
  const ways = findStationWays(scene, widths);
  if (scene.lines.length === 0 || ways === null) return [];
  const known = narrowestWayIn(scene);
  return [
    ...ways
      .filter(({ passage }) => passage.width < known || passage.width >= Math.max(widths.pass, widths.aisle) - 1e-6)
      .map((way) => measureWay(scene, way)),
    ...measureCarts(scene, ways),
  ];
}

/** Where the way to the operator is narrow that is said of it; a way as wide as that is not said to be narrow again. */
function narrowestWayIn(scene: Scene): number {
  const aisles = readFigure(wayWidthFigure, scene).filter(({ part }) => part === 'aisle');
  return Math.min(...aisles.map(({ value }) => (value ?? 0) * 1000)) - 1e-6;
}

function measureWay(scene: Scene, way: StationWay): Measurement {
  const { kind, subject, stand, passage } = way;
  const { settings } = scene.plan;
  const { pass, aisle } = wayWidths(settings);
  const reading = readFigure(stationWayWidthFigure, scene).find(({ part, subjects }) => part === kind && subjects[0] === subject);
  const width = (reading?.value ?? 0) * 1000;
  const isPassable = width >= pass - 1e-6;
  const isWide = isPassable && width >= aisle - 1e-6;
  const pinch = isWide ? null : centrePinch(scene, passage.pinch);
  return {
    part: kind,
    subjects: [subject],
    place: pinch === null ? pointPlace(stand) : segmentPlace(pinch),
    value: width,
    limit: pass,
    watchLimit: aisle,
    ...(isPassable ? (isWide ? {} : { source: aisleSource(settings) }) : passSource(settings)),
    message: isWide ? say('ways-to-stations/wide', { place: kind, width }) : sayNarrow(scene, way, width, isPassable, pinch),
  };
}

function sayNarrow(scene: Scene, { kind: place, subject }: StationWay, width: number, isPassable: boolean, pinch: Segment | null): Message {
  if (width < 1e-6) {
    return scene.things.some(({ thing }) => thing.id === subject)
      ? say('ways-to-stations/barred-before', { place, thing: nameOwner(scene, subject) })
      : say('ways-to-stations/barred', { place });
  }
  const { settings } = scene.plan;
  const common = { place, width, pinch: describePinch(scene, pinch) };
  return isPassable
    ? say('ways-to-stations/below-aisle', { ...common, aisle: describeAisle(settings) })
    : say('ways-to-stations/narrow', { ...common, pass: describePass(settings) });
}

/** All of them, while the carts are out: that passes, so it is never more than a watch. */
function measureCarts(scene: Scene, ways: readonly StationWay[]): Measurement[] {
  const past = ways.flatMap(({ kind, besideCarts }) => (besideCarts === null ? [] : [{ kind, passage: besideCarts }]));
  const [first, ...others] = past;
  if (first === undefined) return [];
  const { kind, passage } = others.reduce((least, way) => (way.passage.width < least.passage.width ? way : least), first);
  const { settings } = scene.plan;
  const { pass: limit } = wayWidths(settings);
  const carts = scene.things.filter(({ thing }) => thing.kind === 'cart');
  return [
    {
      part: 'beside-carts',
      subjects: carts.map(({ thing }) => thing.id),
      place: areaPlace(...carts.map(({ polygon }) => polygon)),
      value: passage.width,
      limit,
      severity: 'watch',
      source: CARTS_SOURCE,
      message:
        passage.width >= limit - 1e-6
          ? say('ways-to-stations/wide-beside-carts', { width: passage.width })
          : say('ways-to-stations/narrow-beside-carts', { place: kind, width: passage.width, pass: describePass(settings) }),
    },
  ];
}
