import { areaPlace, type Check, editHood, hoodName, type Measurement, type Repair, sentence, TOLERANCE } from '../../checks';
import type { ExhaustRule } from '../../engineering';
import { type FigureReading, readingsOf } from '../../figures';
import { pathOf } from '../../plan';
import type { PlacedHood, Scene } from '../../scene';
import type { Formatter } from '../../units';
import { EXHAUST_WORDS, type ExhaustWords } from '../support/exhaustRules';
import { holdReading } from '../support/holdReading';

export const check: Check = {
  id: 'hood-exhaust-enough',
  title: 'The hood draws enough',
  group: 'air',
  unit: 'm3/s',
  relation: 'at-least',
  source: EXHAUST_WORDS.length.source,
  why: 'A hood that draws too little lets the vapour past its edge. The rules differ by four times: the plan says which one counts, and the strictest does until it says so. The local official decides.',
  measure: (scene) => scene.hoods.filter(({ covers }) => covers.length > 0).map((hood) => measureHood(scene, hood)),
};

/** The exhaust drawn against that of the rule that the figure says to govern. */
function measureHood(scene: Scene, placed: PlacedHood): Measurement {
  const { hood, polygon, covers } = placed;
  const subjects = [hood.id, ...covers.map(({ machine }) => machine)];
  const rules = readingsOf(scene, 'hood-exhaust').filter((reading) => reading.subjects[0] === hood.id);
  const governing = rules.find(({ governs }) => governs === true);
  const open = governing === undefined ? findOpen(scene, rules) : undefined;
  const words = EXHAUST_WORDS[(governing?.part ?? 'length') as keyof typeof EXHAUST_WORDS];
  const limit = governing?.value ?? null;
  const name = hoodName(scene, placed);
  return holdReading(open ?? drawn(scene, placed), {
    subjects,
    place: areaPlace(polygon),
    name: `whether ${name} draws enough`,
    limit,
    source: words.source,
    say: (value, f) => sentence(sayExhaust(name, value, limit ?? 0, words, f)),
    repairs: () => (hood.exhaust === null || limit === null || hood.exhaust >= limit - TOLERANCE ? [] : [drawMore(placed, limit)]),
  });
}

/** What keeps the rule from governing: the first of those that the plan looks at which has no value. */
function findOpen({ plan }: Scene, rules: readonly FigureReading[]): FigureReading | undefined {
  const choice: ExhaustRule | 'strictest' = plan.codes.exhaust;
  return rules.find(({ part, value }) => value === null && part !== 'capture' && (choice === 'strictest' || choice === part));
}

const drawn = ({ plan }: Scene, { hood }: PlacedHood): FigureReading => ({
  subjects: [hood.id],
  value: hood.exhaust,
  ...(hood.exhaust === null ? { ask: { input: 'exhaust of the hood', path: pathOf(plan, 'hoods', hood.id, 'exhaust') } } : {}),
  how: null,
});

function sayExhaust(name: string, value: number, limit: number, words: ExhaustWords, f: Formatter): string {
  if (value >= limit - TOLERANCE) return `${name} draws ${f.airflow(value)}; ${words.name} asks ${f.airflow(limit)}.`;
  return `${name} draws ${f.airflow(value)}, and ${words.name} asks ${f.airflow(limit)}: ${f.airflow(limit - value)} too little. Give it a fan for that, and make-up air to match.`;
}

const drawMore = ({ hood }: PlacedHood, limit: number): Repair => ({
  id: 'draw-more',
  label: (f) => `Draw ${f.airflow(limit)} through the hood`,
  edit: (draft) =>
    editHood(draft, hood.id, (item) => {
      item.exhaust = limit;
    }),
});
