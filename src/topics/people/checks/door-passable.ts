import { type Check, createMessages, lengthOf, type Measurement, type Message, type Source, segmentPlace } from '../../../rules';
import type { PlacedOpening, Scene } from '../../../scene';
import { DOOR_HEIGHT, DOOR_WIDTH, wayWidths } from '../../room';

const WIDTH = lengthOf(DOOR_WIDTH);
const HEIGHT = lengthOf(DOOR_HEIGHT);

export const check: Check = {
  id: 'door-passable',
  order: 720,
  title: 'Doors are wide and high enough',
  group: 'people',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'ADA Standards',
    section: '404.2.3, US Access Board guide: 32 in clear at 90°, 80 in high',
    confidence: 'read',
  },
  why: 'Also a work room that needs no accessible route inside needs a door that a wheelchair comes through. A way out takes 28 in at all points (29 CFR 1910.36(g)(2)), whatever the plan’s setting. Carts and the machine itself come through it too.',
  measure: ({ room, machines, plan }: Scene) => {
    const { pass } = wayWidths(plan.settings);
    const doors = machines.length === 0 ? [] : room.openings.filter(({ isWay }) => isWay);
    const widest = Math.max(...doors.map(({ opening }) => opening.width));
    const widestSingle = Math.max(0, ...doors.filter((door) => !hasTwoLeaves(door)).map(({ opening }) => opening.width));
    return doors.flatMap((door) => [measureWidth(door, widest, pass), ...measureLeaf(door, widestSingle), measureHeight(door)]);
  },
};

/** What is said of a door. Lengths in mm. */
export interface DoorPassableMessages {
  'door-passable/wide': { width: number; needed: number };
  'door-passable/narrow': Narrow;
  /** Another door is wide enough. */
  'door-passable/second': Narrow;
  /** Another is, and this one is no way out; `exit` is what one takes. */
  'door-passable/second-no-exit': Narrow & { exit: number };
  'door-passable/leaf-wide': { leaf: number; needed: number };
  'door-passable/leaf-narrow': { leaf: number; missing: number; needed: number };
  'door-passable/high': { height: number; needed: number };
  'door-passable/low': { height: number; missing: number; needed: number };
}

interface Narrow {
  width: number;
  missing: number;
  needed: number;
}

const say = createMessages<DoorPassableMessages>();

const ONE_IS_ENOUGH: Source = {
  kind: 'common-practice',
  text: 'One door of the room complies; a narrower one beside it is for people on foot.',
};

/** One door must comply; what is narrower beside it is only looked at. Below `pass` it is no way out at all. */
function measureWidth({ opening, segment }: PlacedOpening, widest: number, pass: number): Measurement {
  const isSecond = widest >= WIDTH - 1e-6;
  return {
    part: 'width',
    subjects: [opening.id],
    place: segmentPlace(segment),
    value: opening.width,
    limit: WIDTH,
    ...(isSecond && opening.width < WIDTH - 1e-6 ? { severity: 'watch' as const, source: ONE_IS_ENOUGH } : {}),
    message: sayWidth(opening.width, isSecond, pass),
  };
}

function sayWidth(width: number, isSecond: boolean, exit: number): Message {
  if (width >= WIDTH - 1e-6) return say('door-passable/wide', { width, needed: WIDTH });
  const narrow: Narrow = { width, missing: WIDTH - width, needed: WIDTH };
  if (!isSecond) return say('door-passable/narrow', narrow);
  return width < exit - 1e-6 ? say('door-passable/second-no-exit', { ...narrow, exit }) : say('door-passable/second', narrow);
}

const hasTwoLeaves = ({ opening }: PlacedOpening) => opening.kind === 'double-door';

const ONE_LEAF: Source = {
  kind: 'published',
  document: 'ADA Standards',
  section: '404.2.2: of a door with two leaves one active leaf alone is as wide as a door must be',
  confidence: 'memory',
};

/** Of two leaves one alone must comply, where no other door does. Both are taken to be equal: a watch. */
function measureLeaf(door: PlacedOpening, widestSingle: number): Measurement[] {
  const { opening, segment } = door;
  if (!hasTwoLeaves(door) || opening.width < WIDTH - 1e-6 || widestSingle >= WIDTH - 1e-6) return [];
  const leaf = opening.width / 2;
  return [
    {
      part: 'leaf',
      subjects: [opening.id],
      place: segmentPlace(segment),
      value: leaf,
      limit: WIDTH,
      severity: 'watch',
      source: ONE_LEAF,
      message:
        leaf >= WIDTH - 1e-6
          ? say('door-passable/leaf-wide', { leaf, needed: WIDTH })
          : say('door-passable/leaf-narrow', { leaf, missing: WIDTH - leaf, needed: WIDTH }),
    },
  ];
}

function measureHeight({ opening, segment }: PlacedOpening): Measurement {
  return {
    part: 'height',
    subjects: [opening.id],
    place: segmentPlace(segment),
    value: opening.height,
    limit: HEIGHT,
    message:
      opening.height >= HEIGHT - 1e-6
        ? say('door-passable/high', { height: opening.height, needed: HEIGHT })
        : say('door-passable/low', { height: opening.height, missing: HEIGHT - opening.height, needed: HEIGHT }),
  };
}
