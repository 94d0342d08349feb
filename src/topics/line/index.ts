export { moveControls, SHORT_REACH } from './checks/support/controls';
export { measureCover } from './checks/support/cover';
export { listWareSinks, type WareSink } from './checks/support/wareSinks';
export { isWareSink } from './figures/support/isWareSink';
export { cornerNote, cycleInputs, cycleLength, RACKS_PER_CYCLE, ratedRate } from './figures/support/rackCycle';
export { rackRate, rackRateRecord } from './formulas/rackRate';
export { racksOfWare } from './formulas/racksOfWare';
export { COVE_RADIUS, RACK_CLEARANCE, RACK_SLIDE, RIM_ROLL } from './formulas/tableEdges';
