import { type Formula, formula } from '../../formula';
import { pick } from '../pick';
import { machineHeat, machineLatentRecord, machineSensibleRecord } from './machineHeat';
import { vapourFlow, vapourFlowRecord } from './vapourFlow';

export { airHeat } from './airHeat';
export {
  HEAT_TABLES,
  LEAST_DOOR_DISHES,
  type MachineHeat,
  type MachineHeatInputs,
  machineHeat,
  machineLatentRecord,
  machineSensibleRecord,
  VAPOUR_WAYS,
} from './machineHeat';
export { VAPOUR_JKG, vapourFlow } from './vapourFlow';

/** Heat and vapour that come into a room. */
export const GAIN_FORMULAS: readonly Formula[] = [
  formula(machineSensibleRecord, (inputs) => pick(machineHeat(inputs), ({ sensibleW }) => sensibleW)),
  formula(machineLatentRecord, (inputs) => pick(machineHeat(inputs), ({ latentW }) => latentW)),
  formula(vapourFlowRecord, vapourFlow),
];
