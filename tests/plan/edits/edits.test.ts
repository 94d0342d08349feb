import { describe, expect, it } from 'vitest';
import { findFamily } from '../../../src/catalog';
import {
  addColumn,
  addCorner,
  addFitting,
  addFloorDrain,
  addHood,
  addLeg,
  addMachine,
  addOpening,
  addRun,
  addRunPoint,
  addSheet,
  addStub,
  addTable,
  addThing,
  createId,
  createLinePlan,
  createPlan,
  duplicateItems,
  duplicateSheet,
  findItem,
  flipTable,
  freeTable,
  joinTable,
  moveCorner,
  moveItems,
  moveRunPoint,
  moveWall,
  ownDataSheet,
  type Plan,
  placeItem,
  type Recipe,
  removeCorner,
  removeItems,
  removeLeg,
  removeRunPoint,
  reverseHand,
  rotateItems,
  setConfiguration,
  setControls,
  setField,
  setLegLength,
  setSheet,
  slopeDeck,
  surveyDeck,
  takeSheet,
  together,
  UNKNOWN_FLOOR_WASTE,
} from '../../../src/plan';
import { proveEdit } from './proveEdit';

const line = createLinePlan({ family: 'direct-vent', configuration: 'left-front', hand: 'left-to-right' });
const hooded = createLinePlan({ family: 'recirculating-hot-water', configuration: 'straight', hand: 'left-to-right' });
const thing = { ...item(line.things[0]), id: 'cart-1' };
const by = { x: -30, y: 20 };

/** Every edit, on a plan that it changes. */
const EDITS: { name: string; plan?: Plan; recipe: Recipe }[] = [
  { name: 'addMachine', recipe: addMachine({ ...item(line.machines[0]), id: 'machine-2' }) },
  { name: 'addTable joined', recipe: addTable({ ...bare(item(line.tables[0])), id: 'table-3' }) },
  {
    name: 'addTable free',
    recipe: addTable({ ...bare(item(line.tables[0])), id: 'table-3', place: { kind: 'free', x: 0, y: 0, headingDeg: 30 } }),
  },
  { name: 'addThing', recipe: addThing(thing) },
  { name: 'addHood', recipe: addHood({ ...item(hooded.hoods[0]), id: 'hood-2' }) },
  { name: 'addRun', recipe: addRun({ ...item(line.runs[0]), id: 'run-2' }) },
  {
    name: 'addOpening',
    recipe: addOpening({
      ...item(line.room.openings[0]),
      id: 'hatch',
      wall: 'wall-left',
      from: 300,
      kind: 'pass-window',
      sill: 900,
      height: 600,
    }),
  },
  { name: 'addColumn', recipe: addColumn({ id: 'column-1', x: 0, y: 0, width: 300, depth: 300, rotationDeg: 0 }) },
  {
    name: 'addFloorDrain',
    recipe: addFloorDrain({ id: 'drain-2', kind: 'floor-drain', x: 0, y: 0, size: 200, waste: UNKNOWN_FLOOR_WASTE }),
  },
  { name: 'addStub', recipe: addStub({ id: 'stub-2', kind: 'power', x: 0, y: 0, z: 1000 }) },
  {
    name: 'addFitting',
    recipe: addFitting('clean-table', { id: 'shelf-1', kind: 'overshelf', at: 800, length: 900, depth: 300, height: 1400 }),
  },
  { name: 'addSheet', recipe: addSheet({ ...family('tall-door'), id: 'own-1' }) },
  { name: 'moveItems', recipe: moveItems(['machine', 'clean-shelving', 'floor-drain', 'power-stub', 'door'], by) },
  {
    name: 'moveItems of the whole room',
    recipe: moveItems(
      line.room.outline.map(({ id }) => id),
      by,
    ),
  },
  { name: 'rotateItems', recipe: rotateItems(['machine', 'clean-shelving'], 33) },
  {
    name: 'rotateItems about a point',
    recipe: rotateItems(['machine', 'wall-back', 'wall-left', 'wall-front', 'wall-right'], 90, { x: 0, y: 0 }),
  },
  { name: 'placeItem', recipe: placeItem('machine', { x: 2000, y: 2000, rotationDeg: -90 }) },
  { name: 'setControls', recipe: setControls('machine', 'front-right') },
  { name: 'setConfiguration', recipe: setConfiguration('machine', 'right-front') },
  { name: 'reverseHand', recipe: reverseHand('machine') },
  { name: 'flipTable', recipe: flipTable('clean-table') },
  { name: 'joinTable', recipe: joinTable('clean-table', 'machine', 'right', { gap: 12, offset: -4, skewDeg: 1 }) },
  { name: 'freeTable', recipe: freeTable('clean-table') },
  { name: 'setField', recipe: setField(['room', 'ceilingHeight'], null) },
  { name: 'setSheet', recipe: setSheet('machine', 'tall-door') },
  { name: 'ownDataSheet', recipe: ownDataSheet(['machine']) },
  { name: 'duplicateSheet', recipe: duplicateSheet('tall-door', ['machine']) },
  { name: 'takeSheet', recipe: takeSheet({ ...family('tall-door'), id: 'own-1' }, ['machine']) },
  { name: 'addLeg', recipe: addLeg('soiled-table', { length: 700, turnDeg: 90 }) },
  {
    name: 'addLeg on a surveyed deck',
    recipe: together([surveyDeck('soiled-table'), addLeg('soiled-table', { length: 700, turnDeg: 90 })]),
  },
  { name: 'removeLeg', plan: bent(), recipe: removeLeg('clean-table', 0) },
  { name: 'removeLeg of a surveyed deck', plan: bent(), recipe: together([surveyDeck('clean-table'), removeLeg('clean-table', 1)]) },
  { name: 'setLegLength', recipe: setLegLength('soiled-table', 0, 1200) },
  { name: 'surveyDeck', recipe: surveyDeck('soiled-table') },
  {
    name: 'slopeDeck',
    recipe: together([surveyDeck('soiled-table'), setField(['tables', 0, 'deck', 'heights', 1], 900), slopeDeck('soiled-table')]),
  },
  { name: 'addRunPoint', recipe: addRunPoint('run', 1, { x: 4000, y: 500, z: 2600 }) },
  { name: 'moveRunPoint', recipe: moveRunPoint('run', 0, { z: 2700 }) },
  { name: 'removeRunPoint', recipe: removeRunPoint('run', 0) },
  { name: 'addCorner', recipe: addCorner('wall-front', { id: 'corner-1', x: 3000, y: 5000 }) },
  { name: 'moveCorner', recipe: moveCorner('wall-front', { x: 4900, y: 4300 }) },
  { name: 'moveWall', recipe: moveWall('wall-front', { x: 0, y: 250 }) },
  { name: 'removeCorner', recipe: removeCorner('wall-left') },
  {
    name: 'removeItems: everything',
    recipe: removeItems([...line.machines, ...line.tables, ...line.things, ...line.runs, ...line.room.openings].map(({ id }) => id)),
  },
  { name: 'removeItems: a machine', recipe: removeItems(['machine']) },
  { name: 'removeItems: a fitting, a stub, a drain', recipe: removeItems(['scrap', 'power-stub', 'floor-drain']) },
  { name: 'duplicateItems: a line', recipe: duplicateItems(['machine', 'soiled-table', 'clean-table', 'clean-shelving'], by) },
  { name: 'duplicateItems: a table, a run, a fitting', recipe: duplicateItems(['clean-table', 'run', 'scrap'], by) },
  { name: 'duplicateItems: under a hood', plan: hooded, recipe: duplicateItems(['hood', 'machine'], by) },
];

describe('every edit gives a sound plan, its inverse, and patches that replay', () => {
  it.each(EDITS)('$name', ({ plan = line, recipe }) => expect(proveEdit(plan, recipe)).not.toBe(plan));
});

describe('an edit of what is gone changes nothing', () => {
  const none = 'no-such-thing';
  const rows: [string, Recipe][] = [
    ['moveItems', moveItems([none], by)],
    ['rotateItems', rotateItems([none], 90)],
    ['placeItem', placeItem(none, { x: 0, y: 0 })],
    ['setControls', setControls(none, 'front-left')],
    ['setConfiguration', setConfiguration(none, 'straight')],
    ['reverseHand', reverseHand(none)],
    ['flipTable', flipTable(none)],
    ['joinTable', joinTable(none, 'machine', 'left')],
    ['freeTable', freeTable(none)],
    ['setField', setField(['machines', 7, 'x'], 1)],
    ['setField of an unknown key', setField(['machines', 0, 'colour'], 'red')],
    ['setField through a prototype', setField(['machines', 0, '__proto__', 'x'], 1)],
    ['setSheet', setSheet('machine', none)],
    ['ownDataSheet', ownDataSheet([none])],
    ['duplicateSheet', duplicateSheet(none, ['machine'])],
    ['addLeg', addLeg(none, { length: 100, turnDeg: 0 })],
    ['removeLeg of the last', removeLeg('clean-table', 0)],
    ['addFitting', addFitting(none, { id: 'landing-9', kind: 'landing', at: 1, length: 10 })],
    ['moveRunPoint', moveRunPoint(none, 0, {})],
    ['addCorner', addCorner(none, { id: 'corner-1', x: 0, y: 0 })],
    ['removeCorner', removeCorner(none)],
    ['removeItems', removeItems([none])],
    ['duplicateItems', duplicateItems([none], by)],
  ];
  it.each(rows)('%s', (_name, recipe) => expect(proveEdit(line, recipe)).toBe(line));
});

describe('createId', () => {
  it.each([
    [createPlan(), 'table', 'table-1'],
    [createPlan(), 'door', 'door-2'],
    [proveEdit(line, addThing(thing)), 'cart', 'cart-2'],
  ])('%#', (plan, prefix, id) => expect(createId(plan, prefix)).toBe(id));

  it('is free among fittings too, and gives the same for the same plan', () => {
    const plan = proveEdit(line, duplicateItems(['scrap'], by));
    expect(findItem(plan, 'scrap-1')?.kind).toBe('fitting');
    expect(createId(plan, 'scrap')).toBe('scrap-2');
  });
});

/** A table without fittings, so that its copy brings no id twice. */
function bare(table: Plan['tables'][number]): Plan['tables'][number] {
  return { ...table, fittings: [] };
}

function bent(): Plan {
  return proveEdit(line, addLeg('clean-table', { length: 900, turnDeg: -90 }));
}

function family(id: string) {
  return item(findFamily(id));
}

function item<T>(found: T | undefined): T {
  if (found === undefined) throw new Error('nothing there');
  return found;
}
