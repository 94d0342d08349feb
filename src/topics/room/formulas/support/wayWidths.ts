import { EXIT_WIDTH, ROUTE_WIDTH } from '../route';

/** Widths that the ways of a plan are held against, mm. */
export interface WayWidths {
  /** Below it nobody gets through, or out: what a person needs by the plan's setting, and never less than an exit access. */
  pass: number;
  /** The exit access governs, since the plan's setting is below it. */
  isExit: boolean;
  /** Wanted between equipment, by the plan's setting. */
  aisle: number;
  /** From here on ways are not told apart: wide enough for either, and for an accessible route. */
  enough: number;
}

const EXIT = (EXIT_WIDTH.min ?? 0) * 1000;
const ROUTE = (ROUTE_WIDTH.min ?? 0) * 1000;

/** The settings in millimetres, as a plan holds them; 28 in of an exit access count whatever the setting says. */
export const wayWidths = ({ personWidth, aisleWidth }: { personWidth: number; aisleWidth: number }): WayWidths => {
  const pass = Math.max(EXIT, personWidth);
  return { pass, isExit: personWidth < EXIT - 1e-6, aisle: aisleWidth, enough: Math.max(pass, aisleWidth, ROUTE) };
};
