import {
  areaPlace,
  type Check,
  createMessages,
  editHood,
  type FigureReading,
  holdReading,
  isUnder,
  type Measurement,
  type Message,
  type Name,
  nameHood,
  type Repair,
  readFigure,
  type Source,
  TOLERANCE,
} from '../../../rules';
import { coveringHoods, type PlacedHood, type Scene } from '../../../scene';
import { rule as hoodExhaustFigure } from '../figures/hood-exhaust';
import { rule as hoodNetExhaustFigure } from '../figures/hood-net-exhaust';
import { CAVITY_AIR } from '../formulas/hoodLimits';
import type { ExhaustRule } from '../formulas/support/hoodExhaust';
import { EXHAUST_STANDING, type ExhaustStanding } from './support/exhaustRules';

export const check: Check = {
  id: 'hood-exhaust-enough',
  order: 440,
  title: 'The hood draws enough',
  group: 'air',
  unit: 'm3/s',
  relation: 'at-least',
  source: EXHAUST_STANDING.length.source,
  why: 'A hood that draws too little lets the vapour past its edge. The rules differ by two to four times. Until the plan says which one counts, less than the model code in force is a stop; less than what superseded codes or the hospital manual ask is a watch; the one that the plan chooses counts fully. Air blown into the hood itself is taken off. Exhaust of dishwashing has a duct and a fan of its own. The local official decides.',
  measure: (scene) => coveringHoods(scene).flatMap((hood) => measureHood(scene, hood)),
};

/** What is said of what a hood draws, m³/s, and of the part of it that is blown into it. */
export interface HoodExhaustEnoughMessages {
  'hood-exhaust-enough/what': { hood: Name };
  'hood-exhaust-enough/enough': Drawn & { governing: Demand };
  /** Enough for the rule that stops, and not for the one that governs. */
  'hood-exhaust-enough/enough-for-binding': Drawn & { binding: Demand; governing: Demand };
  /** `governing`: null where it is the one that stops. */
  'hood-exhaust-enough/too-little': Drawn & { binding: Demand; governing: Demand | null };
  'hood-exhaust-enough/cavity': { hood: Name; share: number; most: number };
  'hood-exhaust-enough/too-much-cavity': { hood: Name; share: number; most: number };
  'hood-exhaust-enough/repair-draw-more': { airflow: number };
}

interface Drawn {
  hood: Name;
  net: number;
  /** What is blown into it; null where that is nothing. */
  cavityAir: number | null;
}

/** What a rule asks. */
interface Demand {
  rule: ExhaustRule;
  airflow: number;
}

const say = createMessages<HoodExhaustEnoughMessages>();

const measureHood = (scene: Scene, placed: PlacedHood): Measurement[] => [measureExhaust(scene, placed), ...measureCavity(scene, placed)];

/** What one rule asks, in m³/s, and where it stands. */
interface Asked extends Demand, ExhaustStanding {}

/** The rule that stops, and the one that governs: both the same where the plan has chosen, or where the one in force asks most. */
interface AskedOfHood {
  binding: Asked;
  governing: Asked;
}

/** The net exhaust against the rule in force, and against that which the figure says to govern. */
function measureExhaust(scene: Scene, placed: PlacedHood): Measurement {
  const { hood, polygon } = placed;
  const rules = readFigure(hoodExhaustFigure, scene).filter((reading) => reading.subjects[0] === hood.id);
  const net = netOf(scene, placed);
  const asked = findAsked(scene, rules, net.value);
  const open = asked === null ? findOpen(scene, rules) : undefined;
  const name = nameHood(scene, placed);
  const about = { subjects: net.subjects, place: areaPlace(polygon), what: say('hood-exhaust-enough/what', { hood: name }) };
  if (asked === null) return holdReading(open ?? net, { limit: null, ...about });
  const { binding, governing } = asked;
  const missed = net.value !== null && isUnder(net.value, binding.airflow) ? binding : governing;
  return holdReading(net, {
    limit: binding.airflow,
    source: missed.source,
    message: (value) => describe({ hood: name, net: value, cavityAir: cavityAirOf(placed) }, asked),
    ...(net.value === null || !isUnder(net.value, governing.airflow)
      ? {}
      : { repairs: { ids: ['draw-more'], find: () => [drawMore(placed, governing.airflow)] } }),
    ...about,
    ...(governing === binding ? {} : { watchLimit: governing.airflow }),
  });
}

/**
 * What is asked of the hood; null while a rule that the plan looks at has no value. Without a choice the rule in force stops, and it
 * does so also while the others wait for an input.
 */
function findAsked({ plan }: Scene, rules: readonly FigureReading[], net: number | null): AskedOfHood | null {
  const most = askedBy(rules.find(({ governs }) => governs === true));
  if (plan.codes.exhaust !== 'strictest') return most === null ? null : { binding: most, governing: most };
  const inForce = rules
    .filter(({ part, value }) => value !== null && standingOf(part).isInForce)
    .reduce<Asked | null>((top, reading) => ((reading.value ?? 0) > (top?.airflow ?? 0) ? askedBy(reading) : top), null);
  if (inForce === null) return null;
  if (most === null) return net !== null && isUnder(net, inForce.airflow) ? { binding: inForce, governing: inForce } : null;
  return { binding: inForce, governing: most.airflow > inForce.airflow + TOLERANCE ? most : inForce };
}

const askedBy = (reading: FigureReading | undefined): Asked | null =>
  reading?.value == null ? null : { rule: ruleOf(reading.part), airflow: reading.value, ...standingOf(reading.part) };

const ruleOf = (part: string | undefined) => (part ?? 'capture') as ExhaustRule;

const standingOf = (part: string | undefined): ExhaustStanding => {
  const rule = ruleOf(part);
  return rule === 'capture' ? NO_CODE : EXHAUST_STANDING[rule];
};

/** The capture formula stands beside the rules: a way of design that no plan can go by. */
const NO_CODE: ExhaustStanding = { ...EXHAUST_STANDING.length, isInForce: false };

/** What keeps the rule from governing: the first of those that the plan looks at which has no value. */
function findOpen({ plan }: Scene, rules: readonly FigureReading[]): FigureReading | undefined {
  const choice: ExhaustRule | 'strictest' = plan.codes.exhaust;
  return rules.find(({ part, value }) => value === null && part !== 'capture' && (choice === 'strictest' || choice === part));
}

const netOf = (scene: Scene, { hood }: PlacedHood): FigureReading => {
  const net = readFigure(hoodNetExhaustFigure, scene).find(({ subjects }) => subjects[0] === hood.id);
  return net ?? { subjects: [hood.id], value: null, how: null };
};

const cavityAirOf = ({ hood: { cavityAir } }: PlacedHood): number | null =>
  cavityAir !== null && cavityAir > TOLERANCE ? cavityAir : null;

function describe(drawn: Drawn, { binding, governing }: AskedOfHood): Message {
  const [least, most] = [demandOf(binding), demandOf(governing)];
  if (!isUnder(drawn.net, most.airflow)) return say('hood-exhaust-enough/enough', { ...drawn, governing: most });
  if (!isUnder(drawn.net, least.airflow))
    return say('hood-exhaust-enough/enough-for-binding', { ...drawn, binding: least, governing: most });
  return say('hood-exhaust-enough/too-little', { ...drawn, binding: least, governing: governing === binding ? null : most });
}

const demandOf = ({ rule, airflow }: Asked): Demand => ({ rule, airflow });

const drawMore = ({ hood }: PlacedHood, net: number): Repair => ({
  id: 'draw-more',
  label: say('hood-exhaust-enough/repair-draw-more', { airflow: net + (hood.cavityAir ?? 0) }),
  edit: (draft) =>
    editHood(draft, hood.id, (item) => {
      item.exhaust = net + (item.cavityAir ?? 0);
    }),
});

/** Air blown into the hood's own cavity, as a part of what it draws. Nothing while either is not known: the net exhaust asks. */
function measureCavity(scene: Scene, placed: PlacedHood): Measurement[] {
  const { hood, polygon } = placed;
  const { exhaust, cavityAir } = hood;
  const { value: net, subjects } = netOf(scene, placed);
  if (exhaust === null || cavityAir === null || cavityAir === 0 || net === null) return [];
  const most = CAVITY_AIR.max ?? 0;
  const share = cavityAir / exhaust;
  const blown = { hood: nameHood(scene, placed), share, most };
  return [
    {
      part: 'cavity',
      subjects,
      place: areaPlace(polygon),
      value: share,
      limit: most,
      unit: 'share',
      relation: 'at-most',
      source: CAVITY_SOURCE,
      message: say(share <= most + TOLERANCE ? 'hood-exhaust-enough/cavity' : 'hood-exhaust-enough/too-much-cavity', blown),
    },
  ];
}

const CAVITY_SOURCE: Source = {
  kind: 'published',
  document: 'Washington State Energy Code, WAC 51-11C-40377',
  section: 'C403.7.7.1: at most 10 % of a hood’s exhaust is replaced inside its cavity',
  confidence: 'read',
};
