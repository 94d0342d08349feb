import { describe, expect, it } from 'vitest';
import { OWN_CHECKS } from '../../src/app/store/ownChecks';
import { FAMILIES, findFamily } from '../../src/catalog';
import { createLinePlan, LINE_CONFIGURATIONS, type LineHand, type Plan } from '../../src/plan';
import { type Finding, runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { sayIt } from '../support/cases';
import { joinBy, linePlan, tableOf } from '../support/linePlan';

// Trade facts of dish rooms. All of them are common practice: there is no published source.

const findingsOf = (plan: Plan): Finding[] => runChecks(deriveScene(plan), OWN_CHECKS);
const find = (plan: Plan, check: string, part: string | null = null) =>
  findingsOf(plan).find((finding) => finding.check === check && finding.part === part);
const HANDS: readonly LineHand[] = ['left-to-right', 'right-to-left'];
const families = FAMILIES.map(({ id }) => id);

describe('tables meet the machine flush and are never tilted away', () => {
  it.each(['soiled', 'clean'] as const)('a %s table a finger’s width off the machine stops the order', (role) => {
    const plan = linePlan({}, (draft) => joinBy(draft, role, { gap: 15 }));
    expect(
      findingsOf(plan)
        .filter(({ verdict }) => verdict === 'stop')
        .map(({ check, part }) => [check, part]),
    ).toEqual([['joint-flush', 'gap']]);
  });

  it('front and rear corners of the joint are sealed with silicone', () => {
    const source = OWN_CHECKS.find(({ id }) => id === 'joint-flush')?.source;
    expect(source).toMatchObject({ text: expect.stringMatching(/silicone at the front and rear corners/) });
  });
});

describe('both load and unload tables fall toward the machine', () => {
  const tilted = (role: 'soiled' | 'clean', fall: number) =>
    linePlan({}, (plan) => void (tableOf(plan, role).deck = { kind: 'fall', jointHeight: 863.6, fall }));

  it.each(['soiled', 'clean'] as const)('%s: toward it is good, level and away are not', (role) => {
    const verdicts = [1 / 48, 0, -1 / 48].map(
      (fall) => findingsOf(tilted(role, fall)).find((f) => f.check === 'table-falls' && f.subjects[0] === `${role}-table`)?.verdict,
    );
    expect(verdicts).toEqual(['clear', 'stop', 'stop']);
  });

  it('a table lower at its far end holds its water there', () => {
    const stop = findingsOf(tilted('clean', -1 / 96)).find(({ verdict }) => verdict === 'stop');
    expect(stop && sayIt(stop, 'metric')).toBe(
      'The clean table falls 17 mm away from the machine; water stands at the far end. Raise the far end 50 mm.',
    );
  });
});

describe('controls sit on the inside of the turn of a corner line', () => {
  const corners = families.flatMap((family) =>
    (['left-front', 'right-front'] as const).flatMap((configuration) => HANDS.map((hand) => ({ family, configuration, hand }))),
  );

  it.each(corners)('$family, $configuration, $hand', ({ family, configuration, hand }) => {
    const right = createLinePlan({ family, configuration, hand });
    expect(find(right, 'controls-inside-turn')?.verdict).toBe('clear');
    const wrong = linePlan({ family, configuration, hand }, ({ machines }) => {
      for (const machine of machines) machine.controls = configuration === 'left-front' ? 'front-right' : 'front-left';
    });
    expect(find(wrong, 'controls-inside-turn')?.verdict).toBe('stop');
  });

  it.each(families.filter((family) => isLow(family)))('%s: turned the other way they end up under the table', (family) => {
    const plan = linePlan({ family }, ({ machines }) => {
      for (const machine of machines) machine.controls = 'front-right';
    });
    const controls = findFamily(family)?.controls.find(({ id }) => id === 'front-right');
    const covered = find(plan, 'controls-reachable', 'cover');
    expect(covered?.verdict).toBe('stop');
    expect(covered?.measured).toBeCloseTo((controls?.to ?? 0) - (controls?.from ?? 0), 6);
  });

  it('and behind: the operator’s side of the machine is not the one they are on', () => {
    const plan = linePlan({}, ({ machines }) => {
      for (const machine of machines) machine.controls = 'front-right';
    });
    const { lines } = deriveScene(plan);
    const { machine, inside, stand } = lines[0]!;
    const away = (p: { x: number; y: number }) => Math.hypot(p.x - inside!.corner.x, p.y - inside!.corner.y);
    expect(away(machine.controls!.centre)).toBeGreaterThan(machine.sheet.width * 0.9);
    expect(stand!.reach).toBeGreaterThan(677);
  });
});

/** Controls below the deck. */
const isLow = (family: string) => {
  const sheet = findFamily(family);
  return sheet?.controls.every(({ zTo }) => zTo < sheet.deckHeight) === true;
};

describe('straight to corner is a conversion done on site', () => {
  it.each(families)('%s: the front track piece moves to the closed side', (family) => {
    const steps = findFamily(family)?.conversion.toCorner.join(' ') ?? '';
    expect(steps).toMatch(/front track piece/);
    expect(steps).toMatch(/side that will have no table/);
  });

  it('on some families, not all, the link comes off and its holes are plugged', () => {
    const linked = FAMILIES.filter(({ conversion }) => /link.*plug its holes/.test(conversion.toCorner.join(' ')));
    expect(linked.length).toBeGreaterThan(0);
    expect(linked.length).toBeLessThan(FAMILIES.length);
  });

  it.each(families)('%s: an order for the other configuration names the number of steps', (family) => {
    const plan = linePlan({ family }, ({ order }) => void (order.configuration = 'straight'));
    const steps = findFamily(family)?.conversion.toCorner.length;
    expect(sayIt(find(plan, 'order-fits-line', 'configuration') as Finding)).toContain(`${steps} steps`);
  });

  it('no conversion turns the hand, the voltage or the vent', () => {
    const plan = linePlan({}, ({ order }) => Object.assign(order, { hand: 'right-to-left', voltage: 480, vent: 'direct' }));
    const stops = findingsOf(plan).filter(({ verdict }) => verdict === 'stop');
    expect(new Set(stops.map(({ part }) => part))).toEqual(new Set(['hand', 'vent', 'voltage']));
  });
});

describe('a sink with a spray hose belongs on the load side', () => {
  it.each(LINE_CONFIGURATIONS.flatMap((configuration) => HANDS.map((hand) => ({ configuration, hand }))))(
    '$configuration, $hand',
    (line) => {
      const right = linePlan(line);
      const wrong = linePlan(line, (plan) => {
        const [soiled, clean] = [tableOf(plan, 'soiled'), tableOf(plan, 'clean')];
        clean.fittings = soiled.fittings.filter(({ kind }) => kind === 'sink').map((sink) => ({ ...sink, at: 800 }));
        soiled.fittings = soiled.fittings.filter(({ kind }) => kind !== 'sink');
      });
      expect(find(right, 'pre-rinse-side')?.verdict).toBe('clear');
      expect(find(wrong, 'pre-rinse-side')?.verdict).toBe('stop');
    },
  );
});

describe('about 27 in of opening pass an 18 × 26 in sheet pan', () => {
  const INCH = 25.4;

  it('only the tall door passes it on edge', () => {
    const passing = FAMILIES.filter(({ clearOpening }) => clearOpening >= 26 * INCH).map(({ id }) => id);
    expect(passing).toEqual(['tall-door']);
  });

  it('an order with the standard opening stops a tall-door drawing', () => {
    const plan = linePlan({ family: 'tall-door' }, ({ order }) => void (order.clearOpening = 17 * INCH));
    expect(find(plan, 'order-fits-machine', 'clear-opening')?.verdict).toBe('stop');
  });
});
