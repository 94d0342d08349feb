import type { Settings } from '../../../../plan';
import type { Measurement, Source } from '../../../../rules';
import { AISLE_WIDTH } from '../../formulas/aisleWidth';
import { wayWidths } from '../../formulas/support/wayWidths';

type Widths = Pick<Settings, 'personWidth' | 'aisleWidth'>;

/** 36 in: what the plan review guide has. */
const GUIDE = (AISLE_WIDTH.min ?? 0) * 1000;

const GUIDE_SOURCE: Source = {
  kind: 'published',
  document: 'FDA/CFP Food Establishment Plan Review Guide, 2000',
  section: 'Section III, Part 6: aisles of 36 in between equipment',
  confidence: 'read',
};

const SETTING_SOURCE: Source = {
  kind: 'common-practice',
  text: 'The setting of this plan. A plan review guide names 36 in; 42 in for one worker, 48 in for two and 30 to 72 in by case are usual.',
};

const PERSON_SOURCE: Source = {
  kind: 'common-practice',
  text: 'The setting of this plan: what a person needs to pass. An exit access needs 28 in at all points (29 CFR 1910.36(g)(2)).',
};

/** Where the wanted aisle comes from: the guide at 36 in, else the plan's own setting. */
export const aisleSource = ({ aisleWidth }: Widths): Source => (isGuide(aisleWidth) ? GUIDE_SOURCE : SETTING_SOURCE);

/** The width that is wanted in an aisle; `isSetting` where it is the plan's own and not the guide's. */
export interface Aisle {
  wanted: number;
  isSetting: boolean;
}

export const describeAisle = ({ aisleWidth }: Widths): Aisle => ({ wanted: aisleWidth, isSetting: !isGuide(aisleWidth) });

/** A source of its own where the plan's setting is above the exit access. */
export const passSource = (widths: Widths): Pick<Measurement, 'source'> =>
  widths.personWidth > wayWidths({ ...widths, personWidth: 0 }).pass + 1e-6 ? { source: PERSON_SOURCE } : {};

/** The width that is needed to pass; `setting` is the plan's own where it is below what an exit access needs. */
export interface Pass {
  needed: number;
  setting: number | null;
}

export function describePass(widths: Widths): Pass {
  const { pass, isExit } = wayWidths(widths);
  return { needed: pass, setting: isExit ? widths.personWidth : null };
}

const isGuide = (width: number) => Math.abs(width - GUIDE) < 1e-6;
