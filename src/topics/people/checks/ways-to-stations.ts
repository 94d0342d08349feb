import {
  areaPlace,
  type Check,
  holdReading,
  type Measurement,
  ownerName,
  pointPlace,
  readFigure,
  type Source,
  segmentPlace,
  sentence,
} from '../../../rules';
import { findStationWays, type Scene, type StationWay } from '../../../scene';
import { aisleSource, aisleWords, centrePinch, passSource, passWords, pinchWords, wayWidths } from '../../room';
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

function measureWay(scene: Scene, { kind, subject, stand, passage }: StationWay): Measurement {
  const { settings } = scene.plan;
  const { pass, aisle } = wayWidths(settings);
  const reading = readFigure(stationWayWidthFigure, scene).find(({ part, subjects }) => part === kind && subjects[0] === subject);
  const width = (reading?.value ?? 0) * 1000;
  const isPassable = width >= pass - 1e-6;
  const isWide = isPassable && width >= aisle - 1e-6;
  const pinch = isWide ? null : centrePinch(scene, passage.pinch);
  return holdReading(
    { ...(reading ?? NOTHING), value: width },
    {
      part: kind,
      subjects: [subject],
      place: pinch === null ? pointPlace(stand) : segmentPlace(pinch),
      name: `the way to ${PLACES[kind]}`,
      limit: pass,
      watchLimit: aisle,
      ...(isPassable ? (isWide ? {} : { source: aisleSource(settings) }) : passSource(settings)),
      say: (_, f) => {
        if (isWide) return sentence(`the way to ${PLACES[kind]} is at least ${f.length(width)} wide.`);
        if (width < 1e-6) return sentence(`nobody comes to ${PLACES[kind]}: ${blocker(scene, subject)}.`);
        const narrows = sentence(`the way to ${PLACES[kind]} narrows to ${f.length(width)}${pinchWords(scene, pinch, f)}`);
        return isPassable ? `${narrows}; ${aisleWords(settings, f)}.` : `${narrows}; ${passWords(settings, f)}. Make room there.`;
      },
    },
  );
}

const NOTHING = { subjects: [], value: 0, how: null };

const blocker = (scene: Scene, subject: string) =>
  scene.things.some(({ thing }) => thing.id === subject)
    ? `clear the floor before ${ownerName(scene, subject)}, or turn its front to the room`
    : 'clear the floor before it';

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
      say: (f) =>
        passage.width >= limit - 1e-6
          ? `With the carts rolled out by their depth, ${f.length(passage.width)} or more is left to pass.`
          : `With the carts rolled out by their depth, ${f.length(passage.width)} is left on the way to ${PLACES[kind]}; ${passWords(settings, f)}. Give the carts a place aside.`,
    },
  ];
}

const PLACES: Record<StationWay['kind'], string> = {
  'drop-off': 'the drop-off',
  scrap: 'the scrap opening',
  'pre-rinse': 'the pre-rinse',
  'soiled-landing': 'the soiled landing',
  machine: 'the machine',
  'clean-landing': 'the clean landing',
  storage: 'the clean storage',
  'hand-sink': 'the hand sink',
};
