import { rule } from '../../../../src/topics/capacity/figures/real-racks-per-hour';
import { describeFigure } from '../../../support/figureCases';
import { rinseCases, tinyHeater } from '../../../support/rinseCases';

describeFigure(rule, [...rinseCases(3600 / 93.12, 60), tinyHeater('boosterW is 100')]);
