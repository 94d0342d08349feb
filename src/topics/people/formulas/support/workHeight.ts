import { type Band, type FormulaSource, inches } from '../../../../rules';

const grandjean: FormulaSource = {
  text: 'Grandjean, as a handbook in a public file restates it: shoe 25 mm, h = E + 25 − d',
  documents: ['grandjean'],
  confidence: 'secondary',
};

export const WORK_TASKS = ['precision', 'light', 'heavy'] as const;
export type WorkTask = (typeof WORK_TASKS)[number];

/** Rules for the height of work, one beside the other: they disagree, and none is law. */
export const WORK_HEIGHT_RULES = ['grandjean', 'bodyspace', 'niosh-bench'] as const;
export type WorkHeightRule = (typeof WORK_HEIGHT_RULES)[number];

/** How far below the elbow with its shoe; `niosh-bench` is above the floor for everybody. In metres. */
const BELOW: Readonly<Record<'grandjean' | 'bodyspace', Readonly<Record<WorkTask, readonly [least: number, most: number]>>>> = {
  grandjean: { precision: [-0.1, -0.05], light: [0.1, 0.15], heavy: [0.15, 0.4] },
  bodyspace: { precision: [-0.1, -0.05], light: [0.05, 0.1], heavy: [0.1, 0.25] },
};
const BENCH: Readonly<Record<WorkTask, readonly [min: number, max: number]>> = { precision: [37, 43], light: [34, 37], heavy: [28, 35] };

const SHOE_M = 0.025;

/** Heights of the hands that a rule allows a person with such an elbow, in metres above the floor. */
export function workHeightBand(rule: WorkHeightRule, task: WorkTask, elbowM: number): Band {
  if (rule === 'niosh-bench') return { min: inches(BENCH[task][0]), max: inches(BENCH[task][1]) };
  const [least, most] = BELOW[rule][task];
  const shoe = rule === 'grandjean' ? SHOE_M : 0;
  return { min: elbowM + shoe - most, max: elbowM + shoe - least };
}

/** Heights of the hands to which work should be made to adjust, so that they suit 90 % of workers, in metres above the floor. */
export const WORK_HEIGHT_RANGES: Readonly<Record<WorkTask, Band>> = {
  precision: { min: 1.02, max: 1.32 },
  light: { min: 0.87, max: 1.17 },
  heavy: { min: 0.72, max: 1.12 },
};

export const WORK_HEIGHT_RANGES_SOURCE: FormulaSource = {
  text: 'Pheasant and Haslegrave, Bodyspace, 3rd ed. 2006, in the Ontario MSD prevention guide: ranges for 90 % of workers',
  documents: ['bodyspace'],
  confidence: 'read',
};

export const WORK_HEIGHT_SOURCES: Readonly<Record<WorkHeightRule, FormulaSource>> = {
  grandjean,
  bodyspace: {
    text: 'Pheasant and Haslegrave, Bodyspace, 3rd ed. 2006, in the Ontario MSD prevention guide',
    documents: ['bodyspace'],
    confidence: 'read',
  },
  'niosh-bench': {
    text: 'NIOSH 97-117, Elements of Ergonomics Programs, figure restated',
    documents: ['niosh-97-117'],
    confidence: 'secondary',
  },
};
