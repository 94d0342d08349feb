export { CHECKS } from './registry';
export { deriveWorstVerdict, runChecks } from './runChecks';
export { bodyName } from './support/bodyNames';
export { fitHood, LIP_ABOVE_DECK, leastOverhang } from './support/hoods';
export { lineName, machineName, markOf, tableName } from './support/names';
export { areaPlace, pointPlace, segmentPlace, wayPlace } from './support/places';
export { count, list, numberWord, sentence, sideWords } from './support/words';
export { TOLERANCE } from './tolerance';
export * from './types';
