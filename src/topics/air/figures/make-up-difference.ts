import { compute, type FigureReading, type FigureRule } from '../../../rules';
import type { Scene } from '../../../scene';
import { makeUpDifference, makeUpDifferenceRecord } from '../formulas/makeUpAir';
import { needAir } from './support/roomAir';

export const rule: FigureRule = {
  id: 'make-up-difference',
  order: 500,
  title: 'Make-up air and the room, apart',
  group: 'air',
  unit: 'K',
  derive: (scene) => (scene.machines.length === 0 || scene.plan.air.makeUp === 0 ? [] : [deriveRoom(scene)]),
};

function deriveRoom(scene: Scene): FigureReading {
  const makeUp = needAir(scene, 'makeUpC');
  if ('reading' in makeUp) return makeUp.reading;
  const room = needAir(scene, 'roomC');
  if ('reading' in room) return room.reading;
  return { subjects: [], ...compute(makeUpDifferenceRecord, makeUpDifference, { makeUpC: makeUp.known, roomC: room.known }) };
}
