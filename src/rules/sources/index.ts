import { AIR_TEXTS } from './airTexts';
import { CODES } from './codes';
import { LOCAL_RULES } from './localRules';
import { NO_DOCUMENTS } from './noDocuments';
import { PEOPLE_TEXTS } from './peopleTexts';
import { POWER_TEXTS } from './powerTexts';
import type { SourceDocument } from './sourceDocument';
import { WATER_TEXTS } from './waterTexts';

export type { SourceDocument } from './sourceDocument';

/** The bibliography: every document on which a formula, a limit, a rule or a check rests, by its key. Keys are permanent. */
export const SOURCES = {
  ...CODES,
  ...LOCAL_RULES,
  ...AIR_TEXTS,
  ...WATER_TEXTS,
  ...PEOPLE_TEXTS,
  ...POWER_TEXTS,
  ...NO_DOCUMENTS,
} as const satisfies Record<string, SourceDocument>;

export type SourceKey = keyof typeof SOURCES;
