import type { DataSheet } from '../dataSheet';

interface Family {
  sheet: DataSheet;
  order: number;
}

/** The generic machine families, in the order of the catalog: each file of this folder. */
export const FAMILIES: readonly DataSheet[] = Object.values(import.meta.glob<Family>(['./*.ts', '!./index.ts'], { eager: true }))
  .toSorted((a, b) => a.order - b.order)
  .map(({ sheet }) => sheet);

/** The family with this id; undefined when there is none. */
export function findFamily(id: string): DataSheet | undefined {
  return FAMILIES.find((family) => family.id === id);
}
