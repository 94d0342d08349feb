import { expect, it } from 'vitest';
import type { Plan } from '../../../../src/plan';
import type { Figure } from '../../../../src/rules';
import { notesWords } from '../../../../src/text';
import { rule } from '../../../../src/topics/hood/figures/hood-exhaust';
import { formatterFor } from '../../../../src/units';
import { describeFigure, figuresOf } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf, setWalls } from '../../../support/roomPlan';

/** One cubic foot a minute, by definition of the foot. */
const CFM = 0.3048 ** 3 / 60;
const PARTS = ['length', 'face', 'area-least', 'area-most', 'older-area', 'older-perimeter', 'capture'];
const subjects = ['hood', 'machine'];
const of = (cfm: readonly number[]) => cfm.map((value, i) => ({ part: PARTS[i] as string, subjects, value: value * CFM }));

/** A hood of 4 × 4 ft with its lip 3 ft above the deck, far from every wall. */
const island = (change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    setWalls(
      plan,
      [
        [-3000, -3000],
        [9000, -3000],
        [9000, 9000],
        [-3000, 9000],
      ],
      { wall: 'wall-0', from: 1000 },
    );
    Object.assign(hoodOf(plan), { x: 4318.5, y: 494, width: 1219.2, depth: 1219.2, lipHeight: DECK + 914.4 });
    change(plan);
  });

const DECK = 863.6;

/** A wall behind the hood, this far from its edge at y −115.6. */
const wallBehind = (gap: number) => (plan: Plan) => {
  for (const corner of plan.room.outline) if (corner.y < 0) corner.y = 494 - 609.6 - gap;
};

describeFigure(rule, [
  {
    // IMC 507.3.4.2, UFC 3-410-01FA, VA manual, IMC 2000 507.13, ACGIH: 4 × 4 ft, 3 ft.
    name: '4 × 4 ft and 3 ft, four open sides: as printed',
    plan: island(),
    expect: of([400, 800, 800, 1600, 1200, 2400, 3360]),
  },
  {
    name: 'a wall an inch behind it closes a side of 4 ft',
    plan: island(wallBehind(25)),
    expect: of([400, 800, 800, 1600, 800, 1800, 2520]),
  },
  {
    name: 'a wall farther off does not',
    plan: island(wallBehind(30)),
    expect: of([400, 800, 800, 1600, 1200, 2400, 3360]),
  },
  {
    name: 'the longer edge is its length, either way',
    plan: island((plan) => Object.assign(hoodOf(plan), { width: 914.4, depth: 1524 })),
    expect: of([500, 750, 750, 1500, 1125, 2400, 3360]),
  },
  {
    name: 'a lip that is not known: the rules by height ask, the others stand, none governs',
    plan: island((plan) => Object.assign(hoodOf(plan), { lipHeight: null })),
    expect: [
      ...of([400, 800, 800]),
      { part: 'area-most', subjects, value: 1600 * CFM, notes: /^(?!.*Governs)/ },
      { part: 'older-area', subjects, value: 1200 * CFM },
      { part: 'older-perimeter', subjects, value: null, asks: 'hoods.0.lipHeight' },
      { part: 'capture', subjects, value: null, asks: 'hoods.0.lipHeight' },
    ],
  },
  {
    name: 'a lip below the deck is no hood of these rules',
    plan: island((plan) => Object.assign(hoodOf(plan), { lipHeight: DECK })),
    expect: [
      ...of([400, 800, 800]),
      { part: 'area-most', subjects, value: 1600 * CFM },
      { part: 'older-area', subjects, value: 1200 * CFM },
      { part: 'older-perimeter', subjects, value: null, refuses: 'heightM is 0' },
      { part: 'capture', subjects, value: null, refuses: 'heightM is 0' },
    ],
  },
  { name: 'a hood over nothing', plan: island((plan) => Object.assign(hoodOf(plan), { y: 6000 })), expect: [] },
  { name: 'no hood', plan: linePlan({ family: 'direct-vent' }), expect: [] },
]);

const says = (figure: Figure, words: string) => notesWords(figure, formatterFor('us'))?.includes(words) === true;

it('one alone governs: of the codes, the one that asks most', () => {
  const governing = figuresOf(rule, island()).filter((figure) => says(figure, 'Governs'));
  expect(governing.map(({ part }) => part)).toEqual(['older-perimeter']);
});

it.each(['length', 'face', 'area-least', 'older-area'] as const)(
  '%s governs where the plan goes by it, also while the lip is not known',
  (exhaust) => {
    const plan = island((draft) => {
      draft.codes = { ...draft.codes, exhaust };
      Object.assign(hoodOf(draft), { lipHeight: null });
    });
    const governing = figuresOf(rule, plan).filter((figure) => says(figure, 'Governs: the plan goes by it'));
    expect(governing.map(({ part }) => part)).toEqual([exhaust]);
  },
);
