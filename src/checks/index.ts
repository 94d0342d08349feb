export { createMessages, type Message, type NoParams, type Param } from './message';
export type { Name } from './name';
export { CHECKS } from './registry';
export { deriveWorstVerdict, runChecks } from './runChecks';
export { hoodName, runName } from './support/airNames';
export { aisleSource, aisleWords, passSource, passWords } from './support/aisles';
export { bodyName, ownerName } from './support/bodyNames';
export { centrePinch } from './support/centrePinch';
export { editHood, editRun } from './support/drafts';
export { fittingName } from './support/fittings';
export { fitHood, isOverStand, LIP_ABOVE_DECK, leastOverhang } from './support/hoods';
export { nameBody, nameFitting, nameHood, nameLine, nameMachine, nameOwner, nameRun, nameTable, nameThing } from './support/nameItems';
export { machineName, tableName } from './support/names';
export { pinchWords } from './support/pinchWords';
export {
  areaPlace,
  connectionPlace,
  fittingPlace,
  machinePlace,
  machinesPlace,
  pointPlace,
  runPlace,
  segmentPlace,
  severalPlaces,
  tablePlace,
  thingsPlace,
  wayPlace,
} from './support/places';
export { count, list, sentence } from './support/words';
export { TOLERANCE } from './tolerance';
export * from './types';
