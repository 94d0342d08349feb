import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/people/checks/door-passable';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';

const door = (change: Partial<Plan['room']['openings'][number]>) =>
  linePlan({}, ({ room }) => {
    for (const opening of room.openings) Object.assign(opening, change);
  });
const width = (verdict: ExpectedFinding['verdict'], measured: number, subject = 'door'): ExpectedFinding => ({
  verdict,
  part: 'width',
  subjects: [subject],
  measured,
  limit: 812.8,
});
const height = (verdict: ExpectedFinding['verdict'], measured: number, subject = 'door'): ExpectedFinding => ({
  verdict,
  part: 'height',
  subjects: [subject],
  measured,
  limit: 2032,
});

/** ADA Standards 404.2.2, one leaf of two (memory). */
const leaf = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({ ...width(verdict, measured), part: 'leaf' });

/** 32 in and 80 in: ADA Standards 404.2.3 (read). */
describeCheck(check, [
  {
    name: 'the line’s door, 36 in less a hair by 80 in',
    plan: linePlan(),
    expect: [
      { ...width('clear', 914), says: 'The door is 3′ 0″ wide; 2′ 8″ is needed.' },
      { ...height('clear', 2032), says: 'The door is 6′ 8″ high; 6′ 8″ is needed.' },
    ],
  },
  {
    name: 'two leaves, each of 27 in, and no other door',
    plan: door({ kind: 'double-door', from: 3000, width: 1371.6 }),
    expect: [
      {
        ...leaf('watch', 685.8),
        says: 'One leaf of the door alone, of two alike, opens 2′ 3″, 5″ less than 2′ 8″. See that one of them is wider, or that both open together by themselves.',
      },
      width('clear', 1371.6),
      height('clear', 2032),
    ],
  },
  {
    name: 'two leaves of 32 in',
    plan: door({ kind: 'double-door', from: 3000, width: 1625.6 }),
    expect: [width('clear', 1625.6), leaf('clear', 812.8), height('clear', 2032)],
  },
  {
    name: 'two narrow leaves beside a door that complies',
    plan: linePlan({}, ({ room }) => {
      const [first] = room.openings;
      if (first !== undefined) room.openings.push({ ...first, id: 'side-door', kind: 'double-door', from: 3000, width: 1371.6 });
    }),
    expect: [width('clear', 914), height('clear', 2032), width('clear', 1371.6, 'side-door'), height('clear', 2032, 'side-door')],
  },
  { name: '32 in', plan: door({ width: 812.8 }), expect: [width('clear', 812.8), height('clear', 2032)] },
  {
    name: '30 in',
    plan: door({ width: 762 }),
    expect: [
      {
        ...width('stop', 762),
        says: 'The door is 2′ 6″ wide, 2″ less than 2′ 8″. Widen it; another hinge can give the last inches.',
      },
      height('clear', 2032),
    ],
  },
  {
    name: '78 in high',
    plan: door({ height: 1981.2 }),
    expect: [{ ...height('stop', 1981.2), says: 'The door is 6′ 6″ high, 2″ less than 6′ 8″. Raise its head.' }, width('clear', 914)],
  },
  {
    name: 'a narrow door beside one that complies is only looked at',
    plan: linePlan({}, ({ room }) => {
      const [first] = room.openings;
      if (first !== undefined) room.openings.push({ ...first, id: 'side-door', from: 3000, width: 700 });
    }),
    expect: [
      {
        ...width('watch', 700, 'side-door'),
        says: 'The door is 2′ 3 ⁹⁄₁₆″ wide, 4 ⁷⁄₁₆″ less than 2′ 8″: a wheelchair comes in by another one, and nobody may count on it to get out: that takes 2′ 4″.',
      },
      width('clear', 914),
      height('clear', 2032),
      height('clear', 2032, 'side-door'),
    ],
  },
  {
    name: 'a setting of 20 in makes a door of 22 in no way out',
    plan: linePlan({}, ({ room, settings }) => {
      settings.personWidth = 508;
      const [first] = room.openings;
      if (first !== undefined) room.openings.push({ ...first, id: 'side-door', from: 3000, width: 558.8 });
    }),
    expect: [
      {
        ...width('watch', 558.8, 'side-door'),
        says: 'The door is 1′ 10″ wide, 10″ less than 2′ 8″: a wheelchair comes in by another one, and nobody may count on it to get out: that takes 2′ 4″.',
      },
      width('clear', 914),
      height('clear', 2032),
      height('clear', 2032, 'side-door'),
    ],
  },
  { name: 'a window is no door', plan: door({ kind: 'window' }), expect: [] },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
