import type { FieldPath } from '../../plan';
import type { QuantityKind } from '../../units';

/** How a field is typed and read; lengths are stored in mm, temperatures in °C, pressures in kPa, powers in kW, volumes in L, slopes as a ratio, a `quantity` in SI. */
export type FieldKind =
  | 'length'
  | 'coordinate'
  | 'angle'
  | 'slope'
  | 'temperature'
  | 'pressure'
  | 'voltage'
  | 'current'
  | 'power'
  | 'volume'
  | 'seconds'
  | 'quantity'
  | 'count'
  | 'choice'
  | 'toggle'
  | 'text';

export type FieldValue = number | string | boolean | null;

/** Part of a card. */
export type FieldGroup =
  | 'identity'
  | 'place'
  | 'size'
  | 'joint'
  | 'legs'
  | 'deck'
  | 'fittings'
  | 'points'
  | 'fan'
  | 'controls'
  | 'corners'
  | 'openings'
  | 'room'
  | 'demand'
  | 'supply'
  | 'order'
  | 'hookUp'
  | 'record'
  | 'make'
  | 'basins'
  | 'duct'
  | 'waste'
  | 'air'
  | 'finish'
  | 'pipes'
  | 'tariff'
  | 'codes'
  | 'title'
  | 'settings'
  | 'sheet';

export interface FieldOption {
  readonly value: FieldValue;
  readonly label: string;
}

/** One editable property of what is chosen. */
export interface Field {
  readonly path: FieldPath;
  readonly label: string;
  /** A sentence that says what is meant. */
  readonly help: string;
  readonly group: FieldGroup;
  /** Heading of its part of the group, where there are several of a kind ("Leg 2", "Sink"). */
  readonly part: string | null;
  readonly kind: FieldKind;
  /** What a `quantity` is of. */
  readonly of: QuantityKind | null;
  readonly value: FieldValue;
  readonly min: number | null;
  readonly max: number | null;
  /** Whether it may be left unknown. */
  readonly nullable: boolean;
  /** For choices and toggles. */
  readonly options: readonly FieldOption[];
}
