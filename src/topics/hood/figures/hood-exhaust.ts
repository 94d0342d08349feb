import { type Codes, pathOf } from '../../../plan';
import { compute, type FigureReading, type FigureRule, readNote } from '../../../rules';
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

/** Every rule beside the others; the one that the plan goes by says that it governs. */
function deriveHoodExhaust(scene: Scene, hood: PlacedHood): FigureReading[] {
  const shape = deriveHoodShape(scene, hood);
  const readings = PARTS.map(({ part, note, run }) => ({ part, note, subjects: subjectsOf(hood), ...(run(shape) ?? askLip(scene, hood)) }));
  const choice = scene.plan.codes.exhaust;
  const governing = findGoverningExhaust(readings, choice);
  const why = choice === 'strictest' ? 'of the codes and manuals it asks most' : 'the plan goes by it';
  return readings.map((reading) =>
    reading === governing
      ? {
          ...reading,
          note: `${readNote(reading)} Governs: ${why}.`,
          governs: true,
        }
      : reading,
  );
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
  note: string;
  /** null: the height of the lip is missing. */
  run: (hood: SeenHood) => Answer | null;
}

const PARTS: readonly Part[] = [
  {
    part: 'length',
    note: 'Model code; the longer edge is taken as its length.',
    run: ({ lengthM }) => compute(exhaustByLengthRecord, exhaustByLength, { lengthM }),
  },
  {
    part: 'face',
    note: 'Military criteria of 2003, superseded.',
    run: ({ areaM2 }) => compute(exhaustByFaceRecord, exhaustByFace, { areaM2 }),
  },
  {
    part: 'area-least',
    note: 'Hospital manual, low end of its span.',
    run: ({ areaM2 }) => compute(exhaustByAreaRecord, exhaustByArea, { areaM2, rate: 'least' }),
  },
  {
    part: 'area-most',
    note: 'Hospital manual, high end of its span.',
    run: ({ areaM2 }) => compute(exhaustByAreaRecord, exhaustByArea, { areaM2, rate: 'most' }),
  },
  {
    part: 'older-area',
    note: 'Model code of 2000, superseded.',
    run: ({ areaM2, openSides }) => compute(olderExhaustByAreaRecord, olderExhaustByArea, { areaM2, openSides }),
  },
  {
    part: 'older-perimeter',
    note: 'Model code of 2000, superseded.',
    run: ({ openPerimeterM, heightM }) =>
      heightM === null ? null : compute(olderExhaustByPerimeterRecord, olderExhaustByPerimeter, { openPerimeterM, heightM }),
  },
  {
    part: 'capture',
    note: 'A formula of design and no code: it does not govern. Taken with 50 fpm at the edge of the source.',
    run: ({ openPerimeterM, heightM, captureMs }) =>
      heightM === null ? null : compute(exhaustByCaptureRecord, exhaustByCapture, { openPerimeterM, heightM, captureMs }),
  },
];

const subjectsOf = ({ hood, covers }: PlacedHood) => [hood.id, ...covers.map(({ machine }) => machine)];

function askLip({ plan }: Scene, { hood }: PlacedHood): Answer {
  return { value: null, ask: { input: 'height of the hood’s lip', path: pathOf(plan, 'hoods', hood.id, 'lipHeight') }, how: null };
}
