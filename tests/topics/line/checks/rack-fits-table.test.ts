import { createPlan, type Fitting, type Plan, type Table } from '../../../../src/plan';
import { check } from '../../../../src/topics/line/checks/rack-fits-table';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, tableOf } from '../../../support/linePlan';

/** The soiled table alone, changed: 762 deep, its rack line at 273, racks of 508. */
const alone = (change: Partial<Table>, fitting: Partial<Fitting> = {}, settings: Partial<Plan['settings']> = {}) =>
  linePlan({}, (plan) => {
    plan.tables = plan.tables.filter(({ role }) => role === 'soiled');
    Object.assign(tableOf(plan, 'soiled'), change);
    for (const item of tableOf(plan, 'soiled').fittings) if (item.kind === 'sink') Object.assign(item, fitting);
    Object.assign(plan.settings, settings);
  });
const of = (part: string, verdict: ExpectedFinding['verdict'], measured: number, subject?: string): ExpectedFinding => ({
  part,
  verdict,
  subjects: [...(subject === undefined ? [] : [subject]), 'soiled-table'],
  measured,
  limit: 0,
});
const front = of('front', 'clear', 19);
const back = of('back', 'clear', 235);
const bowl = of('bowl', 'clear', 18, 'pre-rinse');
const opening = of('opening', 'clear', 43, 'scrap');

/**
 * 20¼ in between rims (memory: a watch), cove of 15 mm (read), rim of 1¾ in (read); a rack over the edge is
 * geometry. Tables of 30 in (read, memory).
 */
describeCheck(check, [
  {
    name: 'a table of 30 in',
    plan: alone({}),
    expect: [
      {
        ...front,
        says: 'The soiled table leaves ¾″ before a rack. Have its rim rolled outward: over the deck it would take 1 ¾″.',
      },
      { ...back, says: 'The soiled table leaves 9 ¼″ between a rack and its backsplash.' },
      { ...bowl, says: 'The pre-rinse lies ¹¹⁄₁₆″ within the edge of its table.' },
      opening,
    ],
  },
  {
    name: 'no rim: nothing is rolled',
    plan: alone({ make: { rim: 0, scupper: true, clearBelow: 254, sealed: true } }),
    expect: [{ ...front, says: 'The soiled table leaves ¾″ before a rack.' }, back, bowl, opening],
  },
  {
    name: 'its edge 10 in from the rack’s line: just a rack',
    plan: alone({ rackLineFromEdge: 254 }, { width: 480 }),
    expect: [of('front', 'watch', 0), of('back', 'clear', 254), of('bowl', 'clear', 14, 'pre-rinse'), of('opening', 'clear', 24, 'scrap')],
  },
  {
    name: '20¼ in between the rims',
    plan: alone({ rackLineFromEdge: 254 + 3.175 }),
    expect: [
      of('front', 'clear', 3.175),
      of('back', 'clear', 250.825),
      of('bowl', 'clear', 2.175, 'pre-rinse'),
      of('opening', 'clear', 27.175, 'scrap'),
    ],
  },
  {
    name: 'a rack over the front edge, and with it the bowl',
    plan: alone({ rackLineFromEdge: 241.3 }),
    expect: [
      {
        ...of('front', 'stop', -12.7),
        says: 'A rack on the soiled table reaches ½″ over its front edge. Set that edge farther from the rack’s line.',
      },
      { ...of('bowl', 'stop', -13.7, 'pre-rinse') },
      of('back', 'clear', 266.7),
      of('opening', 'clear', 11.3, 'scrap'),
    ],
  },
  {
    name: 'a rack into the backsplash',
    plan: alone({ depth: 520 }),
    expect: [
      { ...of('back', 'stop', -7), says: 'A rack on the soiled table reaches ¼″ beyond its backsplash. Make the table deeper.' },
      of('bowl', 'stop', -8, 'pre-rinse'),
      front,
      of('opening', 'clear', 17, 'scrap'),
    ],
  },
  {
    name: 'a rack that rides up the cove',
    plan: alone({ depth: 541 }),
    expect: [of('back', 'watch', 14), front, of('bowl', 'clear', 13, 'pre-rinse'), of('opening', 'clear', 38, 'scrap')],
  },
  {
    name: 'no backsplash, no cove',
    plan: alone({ depth: 541, backsplash: 0 }),
    expect: [front, of('back', 'clear', 14), of('bowl', 'clear', 13, 'pre-rinse'), of('opening', 'clear', 38, 'scrap')],
  },
  {
    name: 'a bowl of 560 across',
    plan: alone({}, { width: 560 }),
    expect: [
      {
        ...of('bowl', 'stop', -7, 'pre-rinse'),
        says: 'The pre-rinse reaches ¼″ over the edge of its table. Take one of 1′ 9 ½″ across at most.',
      },
      front,
      back,
      opening,
    ],
  },
  {
    name: 'racks of 500',
    plan: alone({}, {}, { rackSize: 500 }),
    expect: [of('front', 'clear', 23), of('back', 'clear', 239), bowl, opening],
  },
  { name: 'a free table is no dish table', plan: alone({ place: FREE, depth: 300 }), expect: [] },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
