import { DAY, NIGHT, type Palette } from '../../render';
import type { AppState } from '../store/store';

/** The hues of each paper. */
export const PALETTES: Record<AppState['paper'], Palette> = { day: DAY, night: NIGHT };
