export { rule as racksNeededInPeakFigure } from './figures/racks-needed-in-peak';
export { rule as racksOnLandingFigure } from './figures/racks-on-landing';
export { peakBacklog, peakClearing, peakLongestWait } from './formulas/peak';
export { type QueueCount, queueLength } from './formulas/queue';
export { racksNeeded } from './formulas/racksNeeded';
export { racksOnTable } from './formulas/racksOnTable';
export { twoStationRate } from './formulas/twoStations';
