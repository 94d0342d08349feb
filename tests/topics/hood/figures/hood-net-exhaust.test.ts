import { rule } from '../../../../src/topics/hood/figures/hood-net-exhaust';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { hoodOf } from '../../../support/roomPlan';

const subjects = ['hood', 'machine'];
const cfm = (value: number | null) => (value === null ? null : toSI(value, 'cfm'));
const hood = (exhaust: number | null, cavityAir: number | null) =>
  linePlan({}, (plan) => void Object.assign(hoodOf(plan), { exhaust: cfm(exhaust), cavityAir: cfm(cavityAir) }));

// IMC 507.3.4: exhaust less what is blown into the hood's cavity.
describeFigure(rule, [
  { name: '10 % of 400 cfm leave 360', plan: hood(400, 40), expect: [{ subjects, value: toSI(360, 'cfm') }] },
  { name: 'nothing is blown into it', plan: hood(400, 0), expect: [{ subjects, value: toSI(400, 'cfm') }] },
  // WAC 51-11C-40377, C403.7.7.1: Type II hoods over dish machines up to 1,000 cfm are free of the listing.
  { name: '1000 cfm', plan: hood(1000, 0), expect: [{ subjects, value: toSI(1000, 'cfm'), notes: null }] },
  { name: '1001 cfm', plan: hood(1001, 0), expect: [{ subjects, value: toSI(1001, 'cfm'), notes: 'energy code' }] },
  { name: 'more than it draws', plan: hood(400, 401), expect: [{ subjects, value: null, refuses: 'no more is blown into a hood' }] },
  { name: 'exhaust not known', plan: hood(null, 0), expect: [{ subjects, value: null, asks: 'hoods.0.exhaust' }] },
  { name: 'air into it not known', plan: hood(400, null), expect: [{ subjects, value: null, asks: 'hoods.0.cavityAir' }] },
  { name: 'no hood', plan: linePlan({ family: 'direct-vent' }), expect: [] },
]);
