import { compute, type FigureReading, type FigureRule, partWords, readFigure } from '../../../rules';
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

function deriveHood(scene: Scene, hood: PlacedHood): FigureReading {
  const subjects = [hood.hood.id, ...hood.covers.map(({ machine }) => machine)];
  const exhausts = readFigure(hoodExhaust, scene).filter((reading) => reading.subjects[0] === hood.hood.id);
  const governing = findGoverningExhaust(exhausts, scene.plan.codes.exhaust);
  if (governing !== null && governing.value !== null) {
    const note = `For the exhaust that governs (${partWords(governing.part ?? '')}); all of it as make-up air, none of it from other rooms.`;
    return { subjects, ...compute(makeUpAirRecord, makeUpAir, { exhaustM3s: governing.value, deficitShare: 0 }), note };
  }
  const open = findOpenExhaust(exhausts, scene.plan.codes.exhaust);
  const { ask, refusal } = open ?? {};
  return { subjects, value: null, ...(ask === undefined ? {} : { ask }), ...(refusal === undefined ? {} : { refusal }), how: null };
}
