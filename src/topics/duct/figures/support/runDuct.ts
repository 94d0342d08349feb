import { pathOf } from '../../../../plan';
import { askFor, type FigureReading, type FormulaResult, type Message, refuse } from '../../../../rules';
import { memoizeByIdentity, type PlacedRun, type Scene } from '../../../../scene';
import { humidityRatioOfRelative, moistDensity, needAirflow, needPressure, saturationPressure, subjectsOf } from '../../../air';
import { airViscosity } from '../../formulas/airViscosity';
import { equivalentDiameter } from '../../formulas/equivalentDiameter';
import { type SectionInputs, type SectionLoss, sectionLoss } from '../../formulas/sectionLoss';
import { DUCT_ENTRIES } from '../../formulas/support/ductEntry';
import { DUCT_ROUGHNESS } from '../../formulas/support/roughness';
import { weatherCap } from '../../formulas/weatherCap';
import { sayDuctAsk } from './ductAsks';
import { sumBends } from './runBends';

/** A run as the formulas of ducts see it, at an airflow. */
export interface RunDuct {
  /** Diameter, or that of the round duct of equal loss. */
  diameterM: number;
  areaM2: number;
  lengthM: number;
  roughnessM: number;
  densityKgM3: number;
  viscosityPas: number;
  /** Coefficients on the velocity pressure. */
  bends: number;
  entry: number;
  exit: number;
  /** What had to be assumed of the bends. */
  bendNotes: readonly Message[];
  /** Of the run without its fittings, at the airflow. */
  straight: SectionLoss;
  airflowM3s: number;
}

/** How the run begins: the collar's edge is counted as flush and sharp, by the stricter of two values. */
const ENTRY = 'flush-sharp-stricter';

type Known<T> = { known: T } | { reading: FigureReading };

/** Area and diameter of the run's inside. */
export function measureSize({ run }: PlacedRun): FormulaResult<Pick<RunDuct, 'diameterM' | 'areaM2'>> {
  if (run.duct.sides === null) {
    const diameterM = run.diameter / 1000;
    return { ok: true, value: { diameterM, areaM2: (Math.PI / 4) * diameterM ** 2 } };
  }
  const [widthM, heightM] = [run.duct.sides.width / 1000, run.duct.sides.height / 1000];
  const diameter = equivalentDiameter({ widthM, heightM });
  return diameter.ok ? { ok: true, value: { diameterM: diameter.value, areaM2: widthM * heightM } } : diameter;
}

interface ExhaustState {
  temperatureC: number;
  relativeHumidity: number;
  pressurePa: number;
}

/** What the machine sends into the run: temperature, humidity and pressure. */
function needState(scene: Scene, placed: PlacedRun): Known<ExhaustState> {
  const { exhaustC, exhaustHumidity } = placed.run.duct;
  if (exhaustC === null) return ask(scene, placed, 'exhaustC', sayDuctAsk('duct/ask-exhaust-temperature'));
  if (exhaustHumidity === null) return ask(scene, placed, 'exhaustHumidity', sayDuctAsk('duct/ask-exhaust-humidity'));
  const pressure = needPressure(scene, subjectsOf(placed));
  if ('reading' in pressure) return pressure;
  return { known: { temperatureC: exhaustC, relativeHumidity: exhaustHumidity, pressurePa: pressure.known } };
}

/** Temperature of the air in the run, and the pressure of the vapour in it. */
export function needExhaust(scene: Scene, placed: PlacedRun): Known<{ temperatureC: number; vapourPa: number }> {
  const state = needState(scene, placed);
  if ('reading' in state) return state;
  const saturated = saturationPressure(state.known);
  if (!saturated.ok) return { reading: refuse(subjectsOf(placed), saturated.refusal) };
  const { temperatureC, relativeHumidity } = state.known;
  return { known: { temperatureC, vapourPa: relativeHumidity * saturated.value } };
}

/** All that the loss of a run depends on, or the reading that asks for what is missing. Several figures rest on it; it is worked out once. */
export const needRunDuct = (scene: Scene, placed: PlacedRun): Known<RunDuct> =>
  listRunDucts(scene).get(placed.run.id) ?? deriveRunDuct(scene, placed);

const listRunDucts = memoizeByIdentity(
  (scene: Scene) => new Map(scene.runs.map((placed) => [placed.run.id, deriveRunDuct(scene, placed)])),
);

function deriveRunDuct(scene: Scene, placed: PlacedRun): Known<RunDuct> {
  const airflow = needAirflow(scene, placed);
  if ('reading' in airflow) return airflow;
  const { material, bendRadius, cap, sides } = placed.run.duct;
  if (material === null) return ask(scene, placed, 'material', sayDuctAsk('duct/ask-material'));
  if (bendRadius === null && placed.bends.length > 0) return ask(scene, placed, 'bendRadius', sayDuctAsk('duct/ask-bend-radius'));
  if (cap === null) return ask(scene, placed, 'cap', sayDuctAsk('duct/ask-cap'));
  const state = needState(scene, placed);
  if ('reading' in state) return state;
  const id = material === 'galvanized' && sides !== null ? 'galvanized-rectangular' : material;
  const roughnessM = DUCT_ROUGHNESS.find((row) => row.id === id)?.roughnessM ?? Number.NaN;
  const duct = assemble(placed, { airflowM3s: airflow.known, roughnessM, bendRadius: bendRadius ?? 0, cap, state: state.known });
  return duct.ok ? { known: duct.value } : { reading: refuse(subjectsOf(placed), duct.refusal) };
}

interface Parts {
  airflowM3s: number;
  roughnessM: number;
  bendRadius: number;
  cap: NonNullable<PlacedRun['run']['duct']['cap']>;
  state: ExhaustState;
}

function assemble(placed: PlacedRun, { airflowM3s, roughnessM, bendRadius, cap, state }: Parts): FormulaResult<RunDuct> {
  const size = measureSize(placed);
  if (!size.ok) return size;
  const humidityRatio = humidityRatioOfRelative(state);
  if (!humidityRatio.ok) return humidityRatio;
  const density = moistDensity({ humidityRatio: humidityRatio.value, ...state });
  if (!density.ok) return density;
  const viscosity = airViscosity(state);
  if (!viscosity.ok) return viscosity;
  const exit = weatherCap({ cap });
  if (!exit.ok) return exit;
  const lengthM = placed.length / 1000;
  const base = { lengthM, roughnessM, densityKgM3: density.value, viscosityPas: viscosity.value, airflowM3s, ...size.value };
  const straight = sectionLoss({ coefficient: 0, method: 'colebrook', ...base });
  if (!straight.ok) return straight;
  const bends = sumBends(placed, { radiusRatio: bendRadius, ...straight.value });
  if (!bends.ok) return bends;
  const { coefficient, notes: bendNotes } = bends.value;
  const fittings = { bends: coefficient, bendNotes, entry: DUCT_ENTRIES[ENTRY].coefficient, exit: exit.value };
  return { ok: true, value: { straight: straight.value, ...base, ...fittings } };
}

/** Inputs of the loss of the whole run as one section. */
export const sectionOf = (duct: RunDuct, airflowM3s = duct.airflowM3s): SectionInputs => ({
  airflowM3s,
  diameterM: duct.diameterM,
  areaM2: duct.areaM2,
  lengthM: duct.lengthM,
  roughnessM: duct.roughnessM,
  coefficient: duct.bends + duct.entry + duct.exit,
  densityKgM3: duct.densityKgM3,
  viscosityPas: duct.viscosityPas,
  method: 'colebrook',
});

type DuctField = keyof PlacedRun['run']['duct'];

const ask = (scene: Scene, placed: PlacedRun, field: DuctField, input: Message): { reading: FigureReading } => ({
  reading: askFor(subjectsOf(placed), input, pathOf(scene.plan, 'runs', placed.run.id, 'duct', field)),
});
