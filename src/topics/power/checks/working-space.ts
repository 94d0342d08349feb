import { floorBefore } from '../../../geometry';
import {
  areaPlace,
  type Check,
  createMessages,
  type FigureReading,
  holdAgainst,
  lengthOf,
  type Measurement,
  type Name,
  nameBody,
  nameMachine,
  readFigure,
} from '../../../rules';
import { type PlacedMachine, type PlacedThing, type Scene, thingsOf } from '../../../scene';
import { type Before, type Body, frontFace, measureFreeDepth } from '../../room';
import { versionAsk } from '../figures/support/power';
import { depthsNeeded, TO_GROUND, toGroundOf } from '../figures/support/toGround';
import { rule as workingDepthFigure } from '../figures/working-depth';
import { WORKING_PROJECTION, type WorkingCondition, workingDepth, workingHeight, workingWidth } from '../formulas/workingSpace';

export const check: Check = {
  id: 'working-space',
  order: 690,
  title: 'Room to work on live parts',
  group: 'power',
  unit: 'm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: '29 CFR 1910.303(g)(1)',
    section: 'Table S-1, width, doors and what projects, as WAC 296-24-95703 and WAC 296-800-28027 copy it',
    confidence: 'read',
  },
  why: 'Whoever opens a panel under voltage must be able to step back. The space is not for storage, not even of a cart. What hangs above or stands below may reach out 6 in. The voltage to ground counts: a 120/208 V supply from a star point is 120 V to ground. A licensed electrician and local code decide.',
  measure: (scene) => [
    ...thingsOf(scene, 'panel-board').flatMap((panel) => measureAtPanel(scene, panel)),
    ...scene.machines.flatMap((placed) => measureControls(scene, placed)),
  ],
};

/** What is said of the room to work. Lengths in mm. */
export interface WorkingSpaceMessages {
  'working-space/room': Parts;
  'working-space/enough': Depth;
  'working-space/short': Depth & { by: Name; missing: number };
  'working-space/door-opens': { width: number };
  'working-space/door-short': { by: Name; free: number; width: number };
}

/** The controls of a machine; null for the panel board. */
interface Parts {
  machine: Name | null;
}

interface Depth extends Parts {
  free: number;
  needed: number;
  width: number;
}

const say = createMessages<WorkingSpaceMessages>();

const measureAtPanel = (scene: Scene, panel: PlacedThing) => [measurePanel(scene, panel), measureDoor(scene, panel)];

function measurePanel(scene: Scene, { thing, front }: PlacedThing): Measurement {
  const face = frontFace(thing, front, thing.width, thing.depth);
  const body = bodyOf(thing.clearBelow ?? 0, thing.height);
  const before = measureFreeDepth(scene, {
    face,
    normal: front,
    width: widthOf(thing.width),
    height: heightOf(thing.height),
    counts: ({ owner }) => owner !== thing.id,
    body,
  });
  const condition = conditionOf(scene, before);
  const readings = readFigure(workingDepthFigure, scene).filter(({ subjects }) => subjects[0] === thing.id);
  const reading = readings.find(({ part }) => part === condition) ?? readings[0] ?? { subjects: [thing.id], value: null };
  const needed = settle(scene, reading, scene.plan.supply.voltage, condition, before);
  return hold(scene, before, needed, { part: 'panel', machine: null, front, severity: 'stop' });
}

const bodyOf = (zFrom: number, zTo: number): Body => ({ zFrom, zTo, projection: lengthOf(WORKING_PROJECTION) });

/** Opened by 90° a door stands as far out as it is wide. How many leaves it has is not known: a watch, as of one. */
function measureDoor(scene: Scene, { thing, front }: PlacedThing): Measurement {
  const face = frontFace(thing, front, thing.width, thing.depth);
  const body = { ...bodyOf(thing.clearBelow ?? 0, thing.height), projection: Number.POSITIVE_INFINITY };
  const { depth, solid } = measureFreeDepth(scene, {
    face,
    normal: front,
    width: thing.width,
    height: thing.height,
    counts: ({ owner }) => owner !== thing.id,
    body,
  });
  const isShort = depth < thing.width - 1000 * ROUNDING;
  return {
    part: 'door',
    subjects: [thing.id, ...(isShort && solid !== null ? [solid.owner] : [])],
    place: areaPlace(floorBefore(face, front, thing.width)),
    value: depth / 1000,
    limit: thing.width / 1000,
    severity: 'watch',
    message: isShort
      ? say('working-space/door-short', { by: nameObstacle(scene, solid), free: depth, width: thing.width })
      : say('working-space/door-opens', { width: thing.width }),
  };
}

/**
 * Before the machine’s own controls, behind which its wires end. It is an appliance and no panel board: a watch. Where something
 * covers them whole, the checks of the controls and of service say so.
 */
function measureControls(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { controls, machine, sheet } = placed;
  if (controls === null) return [];
  const width = controls.position.to - controls.position.from;
  const before = measureFreeDepth(scene, {
    face: controls.face,
    normal: controls.normal,
    width: widthOf(width),
    height: heightOf(controls.position.zTo),
    counts: ({ owner }) => owner !== machine.id,
    body: bodyOf(controls.position.zFrom, controls.position.zTo),
  });
  if (before.depth <= COVERED) return [];
  const voltage = sheet.electrical.find(({ id }) => id === machine.electrical)?.voltage ?? null;
  const subjects = [machine.id];
  const condition = conditionOf(scene, before);
  const needed =
    voltage === null
      ? { subjects, value: null, ask: versionAsk(placed) }
      : settle(scene, { subjects, value: null }, voltage, condition, before);
  const name = nameMachine(scene, placed);
  return [hold(scene, before, needed, { part: 'controls', machine: name, front: controls.normal, severity: 'watch' })];
}

interface Held extends Parts {
  part: string;
  front: PlacedThing['front'];
  severity: 'stop' | 'watch';
}

type Needed = Pick<FigureReading, 'subjects' | 'value' | 'ask' | 'refusal'>;

function hold(scene: Scene, before: Before, needed: Needed, { part, machine, front, severity }: Held): Measurement {
  const what = say('working-space/room', { machine });
  const depth = before.depth / 1000;
  const limit = needed.value ?? Number.POSITIVE_INFINITY;
  const isShort = needed.value !== null && depth < limit - ROUNDING;
  return holdAgainst({ value: depth, input: what, path: [] }, needed, {
    part,
    subjects: [...needed.subjects, ...(isShort && before.solid !== null ? [before.solid.owner] : [])],
    place: areaPlace(floorBefore(before.face, front, needed.value === null ? before.depth : needed.value * 1000)),
    what,
    severity,
    message: (free, least) => {
      const measured = { machine, free: free * 1000, needed: least * 1000, width: widthOf(0) };
      if (!isShort) return say('working-space/enough', measured);
      return say('working-space/short', { ...measured, by: nameObstacle(scene, before.solid), missing: (least - free) * 1000 });
    },
  });
}

const nameObstacle = (scene: Scene, solid: Before['solid']): Name => (solid === null ? { kind: 'wall' } : nameBody(scene, solid));

const ROUNDING = 1e-6;
/** Drawn flush to the controls. */
const COVERED = 1;

/** Opposite stands what is earthed, as walls, metal and tile count, or another panel board; nothing where it is farther than any condition asks. */
function conditionOf({ things }: Scene, { depth, solid }: Before): WorkingCondition {
  if (things.some(({ thing }) => thing.id === solid?.owner && thing.kind === 'panel-board')) return 'C';
  return depth <= deepest() ? 'B' : 'A';
}

const deepest = () => valueOr(workingDepth({ voltsToGround: 600, condition: 'C' })) * 1000;

/**
 * What is needed where a reading does not say. Where the voltage to ground would decide and is not known, the free depth may
 * settle it all the same: it is more than any earthing asks, or less than each.
 */
function settle(scene: Scene, reading: Needed, voltage: number | null, condition: WorkingCondition, { depth }: Before): Needed {
  if (reading.value !== null || voltage === null) return reading;
  const volts = toGroundOf(scene.plan, voltage);
  const depths = volts.ok ? depthsNeeded(volts.value, condition) : volts;
  if (!depths.ok) return { subjects: reading.subjects, value: null, refusal: depths.refusal };
  const { least, most } = depths.value;
  if (least === most || depth / 1000 >= most - ROUNDING) return { subjects: reading.subjects, value: most };
  if (depth / 1000 < least - ROUNDING) return { subjects: reading.subjects, value: least };
  return { subjects: reading.subjects, value: null, ask: TO_GROUND };
}

const widthOf = (mm: number) => valueOr(workingWidth({ equipmentM: mm / 1000 })) * 1000;
const heightOf = (mm: number) => valueOr(workingHeight({ equipmentM: mm / 1000 })) * 1000;
const valueOr = (outcome: ReturnType<typeof workingDepth>) => (outcome.ok ? outcome.value : Number.POSITIVE_INFINITY);
