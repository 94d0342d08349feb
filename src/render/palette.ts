import type { Hue } from '../drawing';

/** A colour for each ink, as `#rrggbb`. */
export type Palette = Record<Hue, string>;

/** Drawing paper by day: the look of the screen. */
export const DAY: Palette = {
  paper: '#faf8f3',
  ink: '#1d2733',
  second: '#55606c',
  hairline: '#cfc9bc',
  soiled: '#a8471f',
  clean: '#0f6e63',
  water: '#1e6fa8',
  air: '#6b4fa0',
  power: '#806200',
  chosen: '#3342b0',
  stop: '#b3261e',
  watch: '#8a5a00',
  ask: '#3a5a8c',
  clear: '#2f6b3a',
};

/** The same inks on night paper, each lightened until it reads as well. */
export const NIGHT: Palette = {
  paper: '#15191e',
  ink: '#e4e7ea',
  second: '#a3adb8',
  hairline: '#3a434d',
  soiled: '#e8926a',
  clean: '#4fc0b1',
  water: '#6ab4ea',
  air: '#b59fe6',
  power: '#d0ac45',
  chosen: '#97a3ff',
  stop: '#ff8a80',
  watch: '#e2a94f',
  ask: '#92b3e4',
  clear: '#7cc48b',
};

/** White paper, for what is printed or sent: the day's inks. */
export const PRINT: Palette = { ...DAY, paper: '#ffffff' };

/** The papers by name. */
export const palettes = { day: DAY, night: NIGHT, print: PRINT };
