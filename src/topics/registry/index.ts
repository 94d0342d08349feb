export { CHECKS } from './checks';
export { FIGURES } from './figures';
export { FORMULAS, groupOf, LIMITS, RULES } from './formulas';
