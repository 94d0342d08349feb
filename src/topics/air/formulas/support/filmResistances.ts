import { toSI } from '../../../../units';

/** One h·ft²·°F/Btu in m²·K/W. */
const IMPERIAL_R = toSI(1, 'ft2') / (toSI(1, 'Btu/h') * 1.8);

/** Thermal resistance in m²·K/W of so many h·ft²·°F/Btu, the R on a roll of insulation. */
export const rValue = (imperial: number): number => IMPERIAL_R * imperial;

/** The film of air that clings to a surface, as a resistance. */
export const FILM_RESISTANCES = {
  'still-air': rValue(0.68),
  'still-air-upward': rValue(0.61),
  'wind-15-mph': rValue(0.17),
  'inside-duct': rValue(0.2),
} as const;

/** An insulation and how well it conducts. */
export interface Insulation {
  /** Kebab-case and permanent. */
  id: string;
  title: string;
  conductivityWmK: number;
}

/** Read in the ht library. */
export const INSULATIONS = [
  { id: 'mineral-fiber', title: 'Mineral fiber', conductivityWmK: 0.036 },
  { id: 'glass-fiber-board', title: 'Glass-fiber board', conductivityWmK: 0.036 },
  { id: 'cellular-glass', title: 'Cellular glass', conductivityWmK: 0.048 },
  { id: 'elastomeric-foam', title: 'Flexible elastomeric foam', conductivityWmK: 0.05 },
] as const satisfies readonly Insulation[];
