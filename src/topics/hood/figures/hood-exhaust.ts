import { type Codes, pathOf } from '../../../plan';
import { compute, createMessages, type FigureReading, type FigureRule, type NoParams } from '../../../rules';
import { coveringHoods, type PlacedHood, type Scene } from '../../../scene';
import {
  exhaustByArea,
  exhaustByAreaRecord,
  exhaustByCapture,
  exhaustByCaptureRecord,
  exhaustByFace,
  exhaustByFaceRecord,
  exhaustByLength,
  exhaustByLengthRecord,
} from '../formulas/exhaustRules';
import {
  olderExhaustByArea,
  olderExhaustByAreaRecord,
  olderExhaustByPerimeter,
  olderExhaustByPerimeterRecord,
} from '../formulas/olderRule';
import type { ExhaustRule } from '../formulas/support/hoodExhaust';
import { deriveHoodShape, type SeenHood } from './support/hoodShape';

export const rule: FigureRule = {
  id: 'hood-exhaust',
  order: 430,
  title: 'Exhaust of the hood',
  group: 'air',
  unit: 'm3/s',
  derive: (scene) => coveringHoods(scene).flatMap((hood) => deriveHoodExhaust(scene, hood)),
};

/** What is said beside the figure of a rule, and why one of them governs. */
export interface HoodExhaustMessages {
  'hood-exhaust/rule': { rule: ExhaustRule };
  'hood-exhaust/governs': { by: 'strictest' | 'choice' };
  'hood-exhaust/ask-lip': NoParams;
}

const say = createMessages<HoodExhaustMessages>();

/** Every rule beside the others; the one that the plan goes by says that it governs. */
function deriveHoodExhaust(scene: Scene, hood: PlacedHood): FigureReading[] {
  const shape = deriveHoodShape(scene, hood);
  const readings = PARTS.map(({ part, run }) => ({ part, subjects: subjectsOf(hood), ...(run(shape) ?? askLip(scene, hood)) }));
  const choice = scene.plan.codes.exhaust;
  const governing = findGoverningExhaust(readings, choice);
  const governs = say('hood-exhaust/governs', { by: choice === 'strictest' ? 'strictest' : 'choice' });
  return readings.map((reading) => {
    const about = say('hood-exhaust/rule', { rule: reading.part });
    return reading === governing ? { ...reading, notes: [about, governs], governs: true } : { ...reading, notes: [about] };
  });
}

/**
 * The reading of the rule that the plan chose; for the strictest, the one that asks most, and null while one of them has no
 * value. The capture formula is a way of design and no code: it stands beside them and does not govern.
 */
export function findGoverningExhaust(readings: readonly FigureReading[], choice: Codes['exhaust']): FigureReading | null {
  if (choice !== 'strictest') return readings.find(({ part, value }) => part === choice && value !== null) ?? null;
  const codes = readings.filter(({ part }) => part !== 'capture');
  if (codes.some(({ value }) => value === null)) return null;
  return codes.reduce<FigureReading | null>(
    (most, row) => (most === null || (row.value ?? 0) > (most.value ?? 0) + 1e-12 ? row : most),
    null,
  );
}

/** Of the rules that the plan's choice looks at, the first that has no value. */
export const findOpenExhaust = (readings: readonly FigureReading[], choice: Codes['exhaust']): FigureReading | undefined =>
  readings.find(({ part, value }) => value === null && part !== 'capture' && (choice === 'strictest' || part === choice));

type Answer = Pick<FigureReading, 'value' | 'ask' | 'refusal' | 'how'>;

interface Part {
  part: ExhaustRule;
  /** null: the height of the lip is missing. */
  run: (hood: SeenHood) => Answer | null;
}

const PARTS: readonly Part[] = [
  {
    part: 'length',
    run: ({ lengthM }) => compute(exhaustByLengthRecord, exhaustByLength, { lengthM }),
  },
  {
    part: 'face',
    run: ({ areaM2 }) => compute(exhaustByFaceRecord, exhaustByFace, { areaM2 }),
  },
  {
    part: 'area-least',
    run: ({ areaM2 }) => compute(exhaustByAreaRecord, exhaustByArea, { areaM2, rate: 'least' }),
  },
  {
    part: 'area-most',
    run: ({ areaM2 }) => compute(exhaustByAreaRecord, exhaustByArea, { areaM2, rate: 'most' }),
  },
  {
    part: 'older-area',
    run: ({ areaM2, openSides }) => compute(olderExhaustByAreaRecord, olderExhaustByArea, { areaM2, openSides }),
  },
  {
    part: 'older-perimeter',
    run: ({ openPerimeterM, heightM }) =>
      heightM === null ? null : compute(olderExhaustByPerimeterRecord, olderExhaustByPerimeter, { openPerimeterM, heightM }),
  },
  {
    part: 'capture',
    run: ({ openPerimeterM, heightM, captureMs }) =>
      heightM === null ? null : compute(exhaustByCaptureRecord, exhaustByCapture, { openPerimeterM, heightM, captureMs }),
  },
];

const subjectsOf = ({ hood, covers }: PlacedHood) => [hood.id, ...covers.map(({ machine }) => machine)];

function askLip({ plan }: Scene, { hood }: PlacedHood): Answer {
  return { value: null, ask: { input: say('hood-exhaust/ask-lip'), path: pathOf(plan, 'hoods', hood.id, 'lipHeight') }, how: null };
}
