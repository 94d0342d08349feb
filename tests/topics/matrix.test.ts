import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../src/catalog';
import { createLinePlan, LINE_CONFIGURATIONS, type LineHand, type Plan } from '../../src/plan';
import { type Finding, runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { CHECKS } from '../../src/topics/registry';
import { headline } from '../support/cases';
import { FAULTS, type Fault, faultedPlan, isExpected } from '../support/faults';
import { movedPlan, PLAN_MOTIONS, type PlanMotion, wordIn } from '../support/planMotions';

const HANDS: readonly LineHand[] = ['left-to-right', 'right-to-left'];
const ROTATIONS = [0, 90, 211.5];

/** As it stands, a quarter turn and an odd angle, seen straight and in a mirror, somewhere else. */
const EVERYWHERE: PlanMotion[] = [false, true].flatMap((mirror) =>
  ROTATIONS.map((rotateDeg) => ({
    name: `${mirror ? 'in a mirror, ' : ''}turned ${rotateDeg}°`,
    mirror,
    rotateDeg,
    move: { x: -7000, y: 12_345 },
  })),
);

const lines = LINE_CONFIGURATIONS.flatMap((configuration) => HANDS.map((hand) => ({ configuration, hand })));
const findingsOf = (plan: Plan): Finding[] => runChecks(deriveScene(plan), CHECKS);
const headlineOf = ({ verdict, id }: Finding) => `${verdict} ${id}`;

/** A fault of some families befalls each of them. */
const familiesOf = ({ families }: Fault): { family?: string }[] => families?.map((family) => ({ family })) ?? [{}];

/** Measured lengths may differ by rounding, and by the grid of a search for a place. */
const ROUNDING = 1e-3;

describe.each(FAMILIES.map(({ id }) => id))('%s', (family) => {
  describe.each(lines)('$configuration, $hand', (line) => {
    const plan = createLinePlan({ family, ...line });
    const asDrawn = findingsOf(plan);

    it('is clear', () => {
      expect(asDrawn.length).toBeGreaterThan(CHECKS.length);
      expect(asDrawn.filter(({ verdict }) => verdict !== 'clear').map(headline)).toEqual([]);
    });

    it('is the same, turned, moved and in a mirror', () => {
      const differences = EVERYWHERE.flatMap((motion) => differencesOf(asDrawn, findingsOf(movedPlan(plan, motion)), motion));
      expect(differences).toEqual([]);
    });
  });
});

describe('one fault gives its findings and no other', () => {
  const rows = lines.flatMap((line) =>
    FAULTS.filter(({ cornerOnly }) => cornerOnly !== true || line.configuration !== 'straight').flatMap((fault) =>
      familiesOf(fault).map((family) => ({ ...line, ...family, fault, name: [fault.name, ...Object.values(family)].join(', ') })),
    ),
  );
  // As drawn, and in one motion: the cases of each check go through all of them, and over the lines so does each fault here.
  it.each(rows.map((row, i) => ({ ...row, motion: PLAN_MOTIONS[1 + (i % (PLAN_MOTIONS.length - 1))] as PlanMotion })))(
    '$configuration, $hand: $name',
    ({ fault, motion, name: _name, ...line }) => {
      const plan = faultedPlan(line, fault);
      const motions = [...PLAN_MOTIONS.slice(0, 1), motion];
      expect(motions.flatMap((one) => surprisesIn(fault, movedPlan(plan, one), one))).toEqual([]);
    },
  );
});

/** Findings that are not expected of a faulted line, and expected ones that are missing. */
function surprisesIn(fault: Fault, plan: Plan, { name }: PlanMotion): string[] {
  const found = findingsOf(plan).filter(({ verdict }) => verdict !== 'clear');
  const others = found.filter((finding) => !isExpected(fault, headlineOf(finding))).map((finding) => `${name}: ${headline(finding)}`);
  const missing = fault.expect.length - (found.length - others.length);
  return missing === 0 ? others : [...others, `${name}: ${missing} of ${fault.expect.join(', ')} missing`];
}

/** What differs between the findings of a plan and of the same plan elsewhere. */
function differencesOf(asDrawn: readonly Finding[], elsewhere: readonly Finding[], motion: PlanMotion): string[] {
  const wanted = new Map(asDrawn.map((finding) => [finding.id, finding]));
  const found = new Map(elsewhere.map((finding) => [wordIn(motion, finding.id), finding]));
  const lost = [...wanted.keys()].filter((id) => !found.has(id)).map((id) => `${motion.name}: ${id} is lost`);
  const others = [...found].filter(([id, finding]) => !isSame(wanted.get(id), finding, motion));
  return [
    ...lost,
    ...others.map(([id, finding]) => `${motion.name}: ${id} measures ${finding.measured}, as drawn ${wanted.get(id)?.measured}`),
  ];
}

function isSame(one: Finding | undefined, other: Finding, motion: PlanMotion): boolean {
  if (one === undefined || one.verdict !== other.verdict) return false;
  if (typeof one.measured === 'number') return typeof other.measured === 'number' && Math.abs(one.measured - other.measured) <= ROUNDING;
  return one.measured === (typeof other.measured === 'string' ? wordIn(motion, other.measured) : other.measured);
}
