import type { Table } from '../../../../src/plan';
import { rule } from '../../../../src/topics/people/figures/deck-height';
import { describeFigure } from '../../../support/figureCases';
import { linePlan, tableOf } from '../../../support/linePlan';

/** The soiled table alone, with a deck of its own. */
const decked = (deck: Table['deck']) =>
  linePlan({}, (plan) => {
    plan.tables = plan.tables.filter(({ role }) => role === 'soiled');
    tableOf(plan, 'soiled').deck = deck;
  });
const atJoint = (jointHeight: number | null) => decked({ kind: 'fall', jointHeight, fall: 0.01 });
const subjects = ['soiled-table'];

/**
 * Light work: Grandjean 100 to 150 mm below the elbow with 25 mm of shoe, Bodyspace 50 to 100 mm, NIOSH
 * 97-117 34 to 37 in. Elbows of 975 and 1160 mm: Grandjean 850–900 and 1035–1085, Bodyspace 875–925
 * and 1060–1110, NIOSH 863.6–939.8 mm. A civilian elbow of 930 mm (secondary): Grandjean 805–855, Bodyspace 830–880 mm.
 * For nine in ten: light 870–1170, heavy 720–1120 mm (read).
 */
describeFigure(rule, [
  {
    name: '34 in: in the band of the short person by Grandjean, low for the tall',
    plan: atJoint(863.6),
    expect: [
      {
        subjects,
        value: 0.8636,
        notes:
          'Grandjean: high for a very short person, within for a short person, low for a tall person. Bodyspace: within for a very short person, low for a short person, low for a tall person. NIOSH bench: within. Heights that suit nine in ten: low for light work, within for heavy work.',
      },
    ],
  },
  {
    name: '1060 mm: high for the short, within for the tall, high on the bench',
    plan: atJoint(1060),
    expect: [
      {
        subjects,
        value: 1.06,
        notes:
          'Grandjean: high for a very short person, high for a short person, within for a tall person. Bodyspace: high for a very short person, high for a short person, within for a tall person. NIOSH bench: high. Heights that suit nine in ten: within for light work, within for heavy work.',
      },
    ],
  },
  { name: 'not known', plan: atJoint(null), expect: [{ subjects, value: null, asks: 'tables.0.deck.jointHeight' }] },
  {
    name: 'surveyed, the first not known',
    plan: decked({ kind: 'heights', heights: [null, 900] }),
    expect: [{ subjects, value: null, asks: 'tables.0.deck.heights.0' }],
  },
  { name: 'surveyed', plan: decked({ kind: 'heights', heights: [870, 900] }), expect: [{ subjects, value: 0.87 }] },
]);
