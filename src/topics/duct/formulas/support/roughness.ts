import { type FormulaSource, feet } from '../../../../rules';

/** How rough the inside of a duct is, for the friction factor. */
export interface DuctRoughness {
  /** Kebab-case and permanent. */
  id: string;
  title: string;
  /** The value to reckon with, and the span that the source gives. */
  roughnessM: number;
  lowM: number;
  highM: number;
  source: FormulaSource;
}

const table = (): FormulaSource => ({ text: `Duct roughness table after Griggs 1987`, documents: ['griggs-1987'], confidence: 'read' });
const row = (id: string, title: string, value: number, [low, high]: [number, number], source: FormulaSource): DuctRoughness => ({
  id,
  title,
  roughnessM: feet(value),
  lowM: feet(low),
  highM: feet(high),
  source,
});

/** The value is the upper end of the span where the source names none: the stricter. */
export const DUCT_ROUGHNESS: readonly DuctRoughness[] = [
  row('galvanized', 'Galvanized, round, seam along it, joints every 4 ft', 0.0003, [0.000_16, 0.000_32], table()),
  row('galvanized-spiral', 'Galvanized spiral, joints every 10 ft', 0.0004, [0.0002, 0.0004], table()),
  row('galvanized-old-chart', 'Galvanized, joints every 2.5 ft: the old chart', 0.0005, [0.0005, 0.0005], table()),
  row('galvanized-rectangular', 'Galvanized, rectangular, joints every 4 ft', 0.0005, [0.000_27, 0.0005], table()),
  row('aluminum', 'Aluminum, round, crimped slip joints every 3 ft', 0.0002, [0.000_12, 0.0002], table()),
  row('commercial-steel', 'Commercial steel', 0.000_15, [0.000_15, 0.000_15], table()),
  row('pvc', 'PVC', 0.000_15, [0.000_03, 0.000_15], table()),
  row('flexible', 'Flexible, fully stretched', 0.003, [0.0003, 0.003], table()),
  row('stainless', 'Stainless, the joints decide', 0.0003, [0.000_15, 0.0003], {
    text: 'No value for ducts is published; the bare surface is 0.0015 mm',
    documents: ['griggs-1987'],
    confidence: 'memory',
  }),
];
