import { rule } from '../../../../src/topics/heat/figures/rinse-heat-up';
import { describeFigure } from '../../../support/figureCases';
import { rinseCases, tinyHeater } from '../../../support/rinseCases';

describeFigure(rule, [...rinseCases(93.12, 53.21), tinyHeater('powerW is 100')]);
