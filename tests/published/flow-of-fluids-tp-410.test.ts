import { test } from 'vitest';
import { convergingTee, fanAirflow, fanPowerAtSpeed, fanPressure } from '../../src/engineering';
import { expectNear } from '../support/expectNear';

const equal = { flowRatio: 100 / 400, diameterRatio: 1, angleDeg: 90 };

// source: A-X12 · Flow of Fluids TP-410, problem 7.35, run 300 and branch 100, as solved in an open library · read · 1e-12
test.each([
  ['branch', convergingTee({ ...equal, leg: 'branch' }), -0.0421875],
  ['run', convergingTee({ ...equal, leg: 'run' }), 0.325],
])('equal tee, %s', (_name, computed, printed) => expectNear(computed, printed, 1e-12));

const slower = { speedRatio: 1700 / 3500 };

// The laws are ratios: feet of water and horsepower stand in as they are printed.
// source: A-N4 · Flow of Fluids TP-410, problem 7.33, 400 gpm, 126 ft, 17.5 hp, 3500 to 1700 rpm · read · 1e-4
test.each([
  ['flow', fanAirflow({ airflowM3s: 40, ...slower }), 19.42857],
  ['head', fanPressure({ pressurePa: 126, ...slower, densityRatio: 1 }), 29.7257],
  ['power', fanPowerAtSpeed({ powerW: 17.5, ...slower, densityRatio: 1 }), 2.00531],
])('affinity: %s', (_name, computed, printed) => expectNear(computed, printed, 1e-4));
