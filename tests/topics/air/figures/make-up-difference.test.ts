import { rule } from '../../../../src/topics/air/figures/make-up-difference';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';

const room = (makeUpF: number, roomF: number | null, makeUp = 1) =>
  linePlan({}, ({ air }) => Object.assign(air, { makeUp, makeUpC: toSI(makeUpF, 'F'), roomC: roomF === null ? null : toSI(roomF, 'F') }));

describeFigure(rule, [
  // NYC Mechanical Code 508.1.1 (read): 10 °F is the limit.
  { name: 'cooler than the room', plan: room(65, 75), expect: [{ subjects: [], value: toSI(10, 'deltaF') }] },
  { name: 'warmer than the room', plan: room(80, 75), expect: [{ subjects: [], value: toSI(5, 'deltaF') }] },
  { name: 'the room is not known', plan: room(65, null), expect: [{ subjects: [], value: null, asks: 'air.roomC' }] },
  { name: 'no make-up air', plan: room(65, 75, 0), expect: [] },
]);
