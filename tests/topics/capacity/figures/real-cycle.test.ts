import { rule } from '../../../../src/topics/capacity/figures/real-cycle';
import { describeFigure } from '../../../support/figureCases';
import { rinseCases, tinyHeater } from '../../../support/rinseCases';

describeFigure(rule, [...rinseCases(93.12, 60), tinyHeater('boosterW is 100')]);
