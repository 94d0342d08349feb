import {
  askFor,
  compute,
  createMessages,
  createRefusal,
  type FigureReading,
  type FigureRule,
  type NoParams,
  notesOf,
  readFigure,
  refuse,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { liftingIndex, liftingIndexRecord } from '../formulas/liftingLimit';
import { rule as liftingLimit } from './lifting-limit';

export const rule: FigureRule = {
  id: 'lifting-index',
  order: 920,
  title: 'Lifting index of a loaded rack',
  group: 'people',
  unit: 'ratio',
  derive: (scene) => readFigure(liftingLimit, scene).map((limit) => deriveIndex(scene, limit)),
};

export interface LiftingIndexMessages {
  'lifting-index/ask-mass': NoParams;
}

const say = createMessages<LiftingIndexMessages>();

/** A limit of 0 has no index: nobody should lift so. */
function deriveIndex({ plan }: Scene, { subjects, part, value, ...limit }: FigureReading): FigureReading {
  const own = part === undefined ? {} : { part };
  if (value === null) return { subjects, value, ...limit, ...own };
  const loadKg = plan.demand.rackMass;
  if (loadKg === null) return { ...askFor(subjects, say('lifting-index/ask-mass'), ['demand', 'rackMass']), ...own };
  if (value === 0) return { ...refuse(subjects, createRefusal(rule, 'lifting-limit-zero', {})), ...own };
  return { subjects, ...compute(liftingIndexRecord, liftingIndex, { loadKg, limitKg: value }), ...own, ...notesOf(...(limit.notes ?? [])) };
}
