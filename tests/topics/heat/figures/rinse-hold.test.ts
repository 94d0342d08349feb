import { rule } from '../../../../src/topics/heat/figures/rinse-hold';
import { describeFigure } from '../../../support/figureCases';
import { rinseCases, tinyHeater } from '../../../support/rinseCases';

describeFigure(rule, [...rinseCases(33.12, 0), tinyHeater('boosterW is 100')]);
