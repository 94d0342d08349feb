import { type Entries, type FormulaSource, inches, type Limit, limit, type SourceKey } from '../../../rules';

const read = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'read' });

const restated = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'secondary' });

const fromMemory = (text: string, ...documents: SourceKey[]): FormulaSource => ({ text, documents, confidence: 'memory' });

/** Places for racks to dry, by what sanitises. */
export const DRYING_PLACES_HOT: Limit = limit(
  'drying-places-hot-water',
  'Places to dry after hot water',
  'count',
  { min: 3 },
  read('City of Orono MN, plan review letter, 6 Apr 2000', 'orono-letter'),
);

export const DRYING_PLACES_CHEMICAL: Limit = limit(
  'drying-places-chemical',
  'Places to dry after a chemical',
  'count',
  { min: 5 },
  read('City of Orono MN, plan review letter, 6 Apr 2000', 'orono-letter'),
);

// ---------------------------------------------------------------- tables and sinks

export const BACKSPLASH_HEIGHT: Limit = limit(
  'backsplash-height',
  'Backsplash of a dish table',
  'm',
  { min: inches(10) },
  read('UFGS 11400N 2.4.2.4', 'ufgs-11400'),
);

export const RIM_HEIGHT: Limit = limit(
  'rim-height',
  'Turned-up edge of a dish table',
  'm',
  { min: inches(3) },
  read('UFGS 11400N 2.4.2.4', 'ufgs-11400'),
);

export const PRE_RINSE_SIZE: Limit = limit(
  'pre-rinse-size',
  'Side of a pre-rinse sink',
  'm',
  { min: inches(18) },
  read('UFGS 11400A 2.4.2.6', 'ufgs-11400'),
);

/** Printed in millimetres alone. */
export const PRE_RINSE_DEPTH: Limit = limit(
  'pre-rinse-depth',
  'Depth of a pre-rinse sink',
  'm',
  { min: 0.188 },
  read('UFGS 11400A 2.4.2.6', 'ufgs-11400'),
);

/** Printed as 8 in (200 mm): either is meant. */
export const SCRAP_WIDTH: Limit = limit('scrap-width', 'Scrap trough', 'm', { min: 0.2 }, read('UFGS 11400A 2.4.2.6', 'ufgs-11400'));

/** Printed as 4 in (100 mm): either is meant. */
export const TROUGH_DEPTH: Limit = limit(
  'trough-depth',
  'Depth of a scrap trough where it is shallow',
  'm',
  { min: 0.1 },
  read('UFGS 11400A 2.4.2.6', 'ufgs-11400'),
);

/** Printed as 1 %, which it calls ⅛ in/ft: either is meant. */
export const TROUGH_FALL: Limit = limit(
  'trough-fall',
  'Fall of a scrap trough',
  'slope',
  { min: 0.01 },
  read('UFGS 11400A 2.4.2.6', 'ufgs-11400'),
);

export const TROUGH_COVER: Limit = limit(
  'trough-cover',
  'Length of scrap trough to one cover of 20 in',
  'm',
  { max: inches(36) },
  read('UFGS 11400A 2.4.2.6', 'ufgs-11400'),
);

/** From the first, at the shallow end. */
export const TROUGH_INLET: Limit = limit(
  'trough-inlet',
  'Between water inlets of a scrap trough',
  'm',
  { max: inches(48) },
  read('UFGS 11400A 2.4.2.6', 'ufgs-11400'),
);

export const MACHINE_BOARDS: Limit = limit(
  'machine-boards',
  'Drainboards of a machine, one where soiled ware goes in and one where clean ware comes out',
  'count',
  { min: 2 },
  read('California Health and Safety Code §114103(a)', 'california-health-code'),
);

const compartments = read('California Health and Safety Code §114099', 'california-health-code');

export const SINK_BOWLS: Limit = limit('sink-bowls', 'Bowls of a sink to wash by hand', 'count', { min: 3 }, compartments);

export const SINK_BOARDS: Limit = limit('sink-boards', 'Drainboards of a sink to wash by hand', 'count', { min: 2 }, compartments);

const planCheck = fromMemory('California county plan-check guides: 18 × 18 × 12 in, boards of 18 in', 'california-plan-check');

export const BOWL_SIZE: Limit = limit('bowl-size', 'Side of a bowl', 'm', { min: inches(18) }, planCheck);

export const BOWL_DEPTH: Limit = limit('bowl-depth', 'Depth of a bowl', 'm', { min: inches(12) }, planCheck);

export const BOARD_LENGTH: Limit = limit('board-length', 'Drainboard', 'm', { min: inches(18) }, planCheck);

// ---------------------------------------------------------------- floor, gaps, refuse

export const FLOOR_FALL: Limit = limit(
  'floor-fall',
  'Usual fall of a floor',
  'slope',
  { min: 1 / 96 },
  restated('Trade convention, ⅛ in/ft', 'common-practice'),
);

export const FLOOR_FALL_COUNTY: Limit = limit(
  'floor-fall-county',
  'Fall of a floor to its drain, county rule',
  'slope',
  { min: 1 / 50 },
  read('Marin County CA, General Construction and Equipment Requirements', 'marin-county'),
);

export const STANDING_SLOPE: Limit = limit(
  'standing-slope',
  'Slope across a way and of a standing place',
  'slope',
  { max: 1 / 48 },
  read('ADA Standards 403.3 and 305.3, US Access Board guide', 'ada-standards'),
);

/** What one city takes as room enough to clean in, behind a machine or beside it. */
export const CLEANING_ROOM: Limit = limit(
  'cleaning-room',
  'Room to clean behind what is fixed',
  'm',
  { min: inches(14) },
  read('Grandview Heights OH, Code 1721.12', 'grandview-heights'),
);

/** The same city: the narrower of the two, at the rear or at both sides of what is shorter than 60 in and stands on legs. */
export const CLEANING_ROOM_NARROW: Limit = limit(
  'cleaning-room-narrow',
  'Room to clean on the other sides of what is shorter than 60 in',
  'm',
  { min: inches(6) },
  read('Grandview Heights OH, Code 1721.12', 'grandview-heights'),
);

export const HAND_SINKS: Limit = limit(
  'hand-sinks',
  'Hand sinks where ware is washed',
  'count',
  { min: 1 },
  read('FDA Food Code 5-203.11 and 5-204.11; WAC 246-215-05230', 'fda-food-code', 'wac-246-215'),
);

export const REFUSE_BINS: Limit = limit(
  'refuse-bins',
  'Bins where refuse arises, and at each hand sink',
  'count',
  { min: 1 },
  read('FDA Food Code 5-501.16 as WAC 246-215-05530', 'fda-food-code', 'wac-246-215'),
);

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 740,
    group: 'air',
    limits: [
      DRYING_PLACES_HOT,
      DRYING_PLACES_CHEMICAL,
      BACKSPLASH_HEIGHT,
      RIM_HEIGHT,
      PRE_RINSE_SIZE,
      PRE_RINSE_DEPTH,
      SCRAP_WIDTH,
      TROUGH_DEPTH,
      TROUGH_FALL,
      TROUGH_COVER,
      TROUGH_INLET,
    ],
  },
  {
    order: 890,
    group: 'air',
    limits: [
      MACHINE_BOARDS,
      SINK_BOWLS,
      SINK_BOARDS,
      BOWL_SIZE,
      BOWL_DEPTH,
      BOARD_LENGTH,
      FLOOR_FALL,
      FLOOR_FALL_COUNTY,
      STANDING_SLOPE,
      CLEANING_ROOM,
      CLEANING_ROOM_NARROW,
      HAND_SINKS,
      REFUSE_BINS,
    ],
  },
];
