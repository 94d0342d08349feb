import { areaPlace, bodyName, type Check, type Measurement, machineName, sentence } from '../../checks';
import { voltsToGround, type WorkingCondition, workingDepth, workingHeight, workingWidth } from '../../engineering';
import { type FigureReading, readingsOf } from '../../figures';
import { pathOf } from '../../plan';
import type { PlacedMachine, PlacedThing, Scene } from '../../scene';
import { type Before, floorBefore, frontFace, measureFreeDepth } from '../support/freeDepth';
import { holdAgainst } from '../support/holdAgainst';

export const check: Check = {
  id: 'working-space',
  title: 'Room to work on live parts',
  group: 'power',
  unit: 'm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: '29 CFR 1910.303(g)(1)',
    section: 'Table S-1 and width, as WAC 296-24-95703 and WAC 296-800-28027 copy it',
    confidence: 'read',
  },
  why: 'Whoever opens a panel under voltage must be able to step back. The space is not for storage, not even of a cart. How the supply is earthed is not known, so its whole voltage counts; a licensed electrician and local code decide.',
  measure: (scene) => [
    ...scene.things.filter(({ thing }) => thing.kind === 'panel-board').map((panel) => measurePanel(scene, panel)),
    ...scene.machines.flatMap((placed) => measureControls(scene, placed)),
  ],
};

function measurePanel(scene: Scene, { thing, front }: PlacedThing): Measurement {
  const face = frontFace(thing, front, thing.width, thing.depth);
  const before = measureFreeDepth(scene, face, front, thing.id, widthOf(thing.width), heightOf(thing.height));
  const condition = conditionOf(scene, before);
  const readings = readingsOf(scene, 'working-depth').filter(({ subjects }) => subjects[0] === thing.id);
  const needed = readings.find(({ part }) => part === condition) ?? readings[0] ?? { subjects: [thing.id], value: null };
  return hold(scene, before, needed, { part: 'panel', name: 'the panel board', front, severity: 'stop' });
}

/**
 * Before the machine’s own controls, behind which its wires end. It is an appliance and no panel board: a watch. Where something
 * covers them whole, the checks of the controls and of service say so.
 */
function measureControls(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { controls, machine, sheet } = placed;
  if (controls === null) return [];
  const width = controls.position.to - controls.position.from;
  const before = measureFreeDepth(scene, controls.face, controls.normal, machine.id, widthOf(width), heightOf(controls.position.zTo));
  if (before.depth <= COVERED) return [];
  const voltage = sheet.electrical.find(({ id }) => id === machine.electrical)?.voltage;
  const needed = {
    subjects: [machine.id],
    ...(voltage === undefined
      ? { value: null, ask: { input: 'electrical version of the machine', path: pathOf(scene.plan, 'machines', machine.id, 'electrical') } }
      : depthFor(voltage, conditionOf(scene, before))),
  };
  const name = `the controls of ${machineName(scene, placed)}`;
  return [hold(scene, before, needed, { part: 'controls', name, front: controls.normal, severity: 'watch' })];
}

interface Words {
  part: string;
  name: string;
  front: PlacedThing['front'];
  severity: 'stop' | 'watch';
}

type Needed = Pick<FigureReading, 'subjects' | 'value' | 'ask' | 'refusal'>;

function hold(scene: Scene, before: Before, needed: Needed, { part, name, front, severity }: Words): Measurement {
  const depth = before.depth / 1000;
  const limit = needed.value ?? Number.POSITIVE_INFINITY;
  const isShort = needed.value !== null && depth < limit - ROUNDING;
  return holdAgainst({ value: depth, input: '', path: [] }, needed, {
    part,
    subjects: [...needed.subjects, ...(isShort && before.solid !== null ? [before.solid.owner] : [])],
    place: areaPlace(floorBefore(before.face, front, needed.value === null ? before.depth : needed.value * 1000)),
    name: `the room to work before ${name}`,
    severity,
    say: (free, least, f) => {
      const [has, must, width] = [f.length(free * 1000), f.length(least * 1000), f.length(widthOf(0))];
      if (!isShort) return sentence(`${has} is free before ${name}; ${must} is needed, ${width} wide.`);
      return sentence(
        `${before.solid === null ? 'the wall' : bodyName(scene, before.solid)} leaves ${has} before ${name}; ${must} is needed, ${width} wide and not for storage. Make ${f.length((least - free) * 1000)} more room.`,
      );
    },
  });
}

const ROUNDING = 1e-6;
/** Drawn flush to the controls. */
const COVERED = 1;

/** Opposite stands what is earthed, as walls, metal and tile count, or another panel board; nothing where it is farther than any condition asks. */
function conditionOf({ things }: Scene, { depth, solid }: Before): WorkingCondition {
  if (things.some(({ thing }) => thing.id === solid?.owner && thing.kind === 'panel-board')) return 'C';
  return depth <= deepest() ? 'B' : 'A';
}

const deepest = () => valueOr(workingDepth({ voltsToGround: 600, condition: 'C' })) * 1000;

function depthFor(voltage: number, condition: WorkingCondition): Pick<FigureReading, 'value' | 'refusal'> {
  const volts = voltsToGround({ voltageV: voltage, supply: 'other' });
  const depth = volts.ok ? workingDepth({ voltsToGround: volts.value, condition }) : volts;
  return depth.ok ? { value: depth.value } : { value: null, refusal: depth.reason };
}

const widthOf = (mm: number) => valueOr(workingWidth({ equipmentM: mm / 1000 })) * 1000;
const heightOf = (mm: number) => valueOr(workingHeight({ equipmentM: mm / 1000 })) * 1000;
const valueOr = (outcome: ReturnType<typeof workingDepth>) => (outcome.ok ? outcome.value : Number.POSITIVE_INFINITY);
