import { type FormulaRecord, findOutOfRange, type Outcome } from '../../record';

export interface ShellInputs {
  innerDiameterM: number;
  outerDiameterM: number;
  conductivityWmK: number;
}

/** Thermal resistance in m·K/W of one metre of a round shell. */
export function shellResistance(inputs: ShellInputs): Outcome {
  const reason = findOutOfRange(shellResistanceRecord, inputs) ?? findInsideOut(inputs);
  if (reason !== null) return { ok: false, reason };
  return { ok: true, value: Math.log(inputs.outerDiameterM / inputs.innerDiameterM) / (2 * Math.PI * inputs.conductivityWmK) };
}

const also = 'the outer diameter is at least the inner one';

const findInsideOut = ({ innerDiameterM, outerDiameterM }: ShellInputs) =>
  outerDiameterM >= innerDiameterM ? null : `${also}: outerDiameterM is ${outerDiameterM}, innerDiameterM ${innerDiameterM}`;

export interface CylinderInputs {
  insideC: number;
  outsideC: number;
  insideFilmWm2K: number;
  outsideFilmWm2K: number;
  innerDiameterM: number;
  /** From the inside out; as many conductivities as thicknesses. */
  thicknessesM: readonly number[];
  conductivitiesWmK: readonly number[];
}

/** Heat in W that one metre of a round duct in its layers gives off outward. */
export function cylinderHeat(inputs: CylinderInputs): Outcome {
  const reason = findOutOfRange(cylinderHeatRecord, inputs) ?? findUnequal(inputs);
  if (reason !== null) return { ok: false, reason };
  return { ok: true, value: (inputs.insideC - inputs.outsideC) / cylinderResistances(inputs).reduce((sum, one) => sum + one, 0) };
}

/** Temperatures in °C from the inner surface outward: as many as layers, and one more. */
export function cylinderSurfaces(inputs: CylinderInputs): Outcome<number[]> {
  const heat = cylinderHeat(inputs);
  if (!heat.ok) return heat;
  let at = inputs.insideC;
  const surfaces = cylinderResistances(inputs)
    .slice(0, -1)
    .map((resistance) => {
      at -= heat.value * resistance;
      return at;
    });
  return { ok: true, value: surfaces };
}

/** Film inside, each layer, film outside: m·K/W. */
function cylinderResistances(inputs: CylinderInputs): number[] {
  let diameter = inputs.innerDiameterM;
  const resistances = [1 / (Math.PI * diameter * inputs.insideFilmWm2K)];
  for (const [i, thickness] of inputs.thicknessesM.entries()) {
    const outer = diameter + 2 * thickness;
    resistances.push(Math.log(outer / diameter) / (2 * Math.PI * (inputs.conductivitiesWmK[i] ?? Number.NaN)));
    diameter = outer;
  }
  return [...resistances, 1 / (Math.PI * diameter * inputs.outsideFilmWm2K)];
}

const LAYERS = 'each layer has a thickness and a conductivity';

const findUnequal = ({ thicknessesM, conductivitiesWmK }: CylinderInputs) =>
  thicknessesM.length === conductivitiesWmK.length ? null : `${LAYERS}: ${thicknessesM.length} and ${conductivitiesWmK.length} are given`;

const shell = 'ht library, R_cylinder (A-K11), for 10 m of it';
const pipe = 'ht library, cylindrical_heat_transfer (A-K10)';
const diameter = (text: string) => ({ text, unit: 'm', min: 0.005, max: 5 }) as const;
const conductivity = (text: string) => ({ text, unit: 'W/(m·K)', min: 0.01, max: 500 }) as const;
const film = (text: string) => ({ text, unit: 'W/(m2·K)', min: 0.1, max: 1e12 }) as const;
const temperature = (text: string) => ({ text, unit: 'C', min: -40, max: 200 }) as const;

export const shellResistanceRecord: FormulaRecord<ShellInputs> = {
  id: 'shell-resistance',
  title: 'Resistance of a round shell',
  formula: 'R = ln(D_o/D_i) / (2 π k)',
  inputs: {
    innerDiameterM: diameter('Inner diameter'),
    outerDiameterM: diameter('Outer diameter'),
    conductivityWmK: conductivity('Conductivity'),
  },
  result: { text: 'Resistance of one metre', unit: 'm·K/W', min: 0, max: 110 },
  source: [{ text: shell, confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: shell,
      inputs: { innerDiameterM: 0.9, outerDiameterM: 1, conductivityWmK: 20 },
      result: 8.38432343682705e-5 * 10,
      tolerance: 1e-12,
    },
  ],
  also,
};

export const cylinderHeatRecord: FormulaRecord<CylinderInputs> = {
  id: 'cylinder-heat',
  title: 'Heat of a round duct',
  formula: 'q = (t_i − t_o) / [ 1/(π D_i h_i) + Σ ln(D_(n+1)/D_n)/(2 π k_n) + 1/(π D_o h_o) ]',
  inputs: {
    insideC: temperature('Air inside'),
    outsideC: temperature('Air outside'),
    insideFilmWm2K: film('Film inside'),
    outsideFilmWm2K: film('Film outside'),
    innerDiameterM: diameter('Inner diameter'),
    thicknessesM: { text: 'Thickness of each layer', unit: 'm', min: 0, max: 0.5 },
    conductivitiesWmK: conductivity('Conductivity of each layer'),
  },
  result: { text: 'Heat of one metre', unit: 'W/m', min: -1e15, max: 1e15 },
  source: [{ text: pipe, confidence: 'read' }],
  examples: [
    {
      kind: 'source',
      from: pipe,
      inputs: {
        insideC: 180,
        outsideC: 28,
        insideFilmWm2K: 1e12,
        outsideFilmWm2K: 22.697193,
        innerDiameterM: 0.0779272,
        thicknessesM: [0.0054864, 0.05],
        conductivitiesWmK: [56.045, 0.0598535265],
      },
      result: 73.12000884,
      tolerance: 1e-6,
    },
  ],
  also: LAYERS,
};
