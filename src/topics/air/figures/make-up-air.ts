import { compute, createMessages, type FigureReading, type FigureRule, readFigure } from '../../../rules';
import { coveringHoods, type PlacedHood, type Scene } from '../../../scene';
import { findGoverningExhaust, findOpenExhaust, hoodExhaustFigure as hoodExhaust } from '../../hood';
import { makeUpAir, makeUpAirRecord } from '../formulas/makeUpAir';

export const rule: FigureRule = {
  id: 'make-up-air',
  order: 450,
  title: 'Make-up air of the hood',
  group: 'air',
  unit: 'm3/s',
  derive: (scene) => coveringHoods(scene).map((hood) => deriveHood(scene, hood)),
};

export interface MakeUpAirMessages {
  /** `rule`: the part of the hood's exhaust that governs. */
  'make-up-air/all-of-it': { rule: string };
}

const say = createMessages<MakeUpAirMessages>();

function deriveHood(scene: Scene, hood: PlacedHood): FigureReading {
  const subjects = [hood.hood.id, ...hood.covers.map(({ machine }) => machine)];
  const exhausts = readFigure(hoodExhaust, scene).filter((reading) => reading.subjects[0] === hood.hood.id);
  const governing = findGoverningExhaust(exhausts, scene.plan.codes.exhaust);
  if (governing !== null && governing.value !== null) {
    const notes = [say('make-up-air/all-of-it', { rule: governing.part ?? '' })];
    return { subjects, ...compute(makeUpAirRecord, makeUpAir, { exhaustM3s: governing.value, deficitShare: 0 }), notes };
  }
  const open = findOpenExhaust(exhausts, scene.plan.codes.exhaust);
  const { ask, refusal } = open ?? {};
  return { subjects, value: null, ...(ask === undefined ? {} : { ask }), ...(refusal === undefined ? {} : { refusal }), how: null };
}
