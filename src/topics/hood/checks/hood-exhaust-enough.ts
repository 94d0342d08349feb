import {
  areaPlace,
  type Check,
  editHood,
  type FigureReading,
  holdReading,
  hoodName,
  isUnder,
  type Measurement,
  type Repair,
  readFigure,
  type Source,
  sentence,
  TOLERANCE,
} from '../../../rules';
import { coveringHoods, type PlacedHood, type Scene } from '../../../scene';
import { type Formatter, formatNumber } from '../../../units';
import { rule as hoodExhaustFigure } from '../figures/hood-exhaust';
import { rule as hoodNetExhaustFigure } from '../figures/hood-net-exhaust';
import { CAVITY_AIR } from '../formulas/hoodLimits';
import type { ExhaustRule } from '../formulas/support/hoodExhaust';
import { EXHAUST_WORDS, type ExhaustWords } from './support/exhaustRules';

export const check: Check = {
  id: 'hood-exhaust-enough',
  order: 440,
  title: 'The hood draws enough',
  group: 'air',
  unit: 'm3/s',
  relation: 'at-least',
  source: EXHAUST_WORDS.length.source,
  why: 'A hood that draws too little lets the vapour past its edge. The rules differ by two to four times. Until the plan says which one counts, less than the model code in force is a stop; less than what superseded codes or the hospital manual ask is a watch; the one that the plan chooses counts fully. Air blown into the hood itself is taken off. Exhaust of dishwashing has a duct and a fan of its own. The local official decides.',
  measure: (scene) => coveringHoods(scene).flatMap((hood) => measureHood(scene, hood)),
};

const measureHood = (scene: Scene, placed: PlacedHood): Measurement[] => [measureExhaust(scene, placed), ...measureCavity(scene, placed)];

/** What one rule asks, in m³/s, and how it is called. */
interface Asked extends ExhaustWords {
  airflow: number;
}

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
  const name = hoodName(scene, placed);
  const about = { subjects: net.subjects, place: areaPlace(polygon), name: `whether ${name} draws enough` };
  if (asked === null) return holdReading(open ?? net, { limit: null, say: () => '', ...about });
  const { binding, governing } = asked;
  const missed = net.value !== null && isUnder(net.value, binding.airflow) ? binding : governing;
  return holdReading(net, {
    limit: binding.airflow,
    source: missed.source,
    say: (value, f) => sentence(sayExhaust(sayDrawn(name, placed, value, f), value, asked, f)),
    repairs: () => (net.value === null || !isUnder(net.value, governing.airflow) ? [] : [drawMore(placed, governing.airflow)]),
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
    .filter(({ part, value }) => value !== null && wordsOf(part).isInForce)
    .reduce<Asked | null>((top, reading) => ((reading.value ?? 0) > (top?.airflow ?? 0) ? askedBy(reading) : top), null);
  if (inForce === null) return null;
  if (most === null) return net !== null && isUnder(net, inForce.airflow) ? { binding: inForce, governing: inForce } : null;
  return { binding: inForce, governing: most.airflow > inForce.airflow + TOLERANCE ? most : inForce };
}

const askedBy = (reading: FigureReading | undefined): Asked | null =>
  reading?.value == null ? null : { airflow: reading.value, ...wordsOf(reading.part) };

const wordsOf = (part: string | undefined): ExhaustWords =>
  part === undefined || part === 'capture' ? NO_CODE : EXHAUST_WORDS[part as keyof typeof EXHAUST_WORDS];

/** The capture formula stands beside the rules: a way of design that no plan can go by. */
const NO_CODE: ExhaustWords = { ...EXHAUST_WORDS.length, name: 'the capture formula', isInForce: false };

/** What keeps the rule from governing: the first of those that the plan looks at which has no value. */
function findOpen({ plan }: Scene, rules: readonly FigureReading[]): FigureReading | undefined {
  const choice: ExhaustRule | 'strictest' = plan.codes.exhaust;
  return rules.find(({ part, value }) => value === null && part !== 'capture' && (choice === 'strictest' || choice === part));
}

const netOf = (scene: Scene, { hood }: PlacedHood): FigureReading => {
  const net = readFigure(hoodNetExhaustFigure, scene).find(({ subjects }) => subjects[0] === hood.id);
  return net ?? { subjects: [hood.id], value: null, how: null };
};

/** `the hood draws 400 cfm`, and how much of it is left of its air. */
function sayDrawn(name: string, { hood }: PlacedHood, net: number, f: Formatter): string {
  const isNet = (hood.cavityAir ?? 0) > TOLERANCE;
  return `${name} draws ${f.airflow(net)}${isNet ? ` net of the ${f.airflow(hood.cavityAir ?? 0)} blown into it` : ''}`;
}

function sayExhaust(drawn: string, value: number, { binding, governing }: AskedOfHood, f: Formatter): string {
  const more = (asked: Asked) => `${asked.name} asks ${f.airflow(asked.airflow)}`;
  if (!isUnder(value, governing.airflow)) return `${drawn}; ${more(governing)}.`;
  if (!isUnder(value, binding.airflow))
    return `${drawn}: enough for ${binding.name} with its ${f.airflow(binding.airflow)}, ${f.airflow(governing.airflow - value)} less than ${f.airflow(governing.airflow)} by ${governing.name}. Draw more, or choose in the plan the rule that counts there.`;
  const also = governing === binding ? '' : ` (${more(governing)})`;
  return `${drawn}, and ${more(binding)}: ${f.airflow(binding.airflow - value)} too little${also}. Give it a fan for that, and make-up air to match.`;
}

const drawMore = ({ hood }: PlacedHood, net: number): Repair => ({
  id: 'draw-more',
  label: (f) => `Draw ${f.airflow(net + (hood.cavityAir ?? 0))} through the hood`,
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
  const percent = (value: number) => `${formatNumber(100 * value)} %`;
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
      say: () => {
        const blown = `${percent(share)} of what ${hoodName(scene, placed)} draws is blown into it`;
        if (share <= most + TOLERANCE) return sentence(`${blown}; ${percent(most)} is the most.`);
        return sentence(
          `${blown}, more than ${percent(most)}. Bring that air into the room instead, where it carries the vapour to the hood.`,
        );
      },
    },
  ];
}

const CAVITY_SOURCE: Source = {
  kind: 'published',
  document: 'Washington State Energy Code, WAC 51-11C-40377',
  section: 'C403.7.7.1: at most 10 % of a hood’s exhaust is replaced inside its cavity',
  confidence: 'read',
};
