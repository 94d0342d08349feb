import type { Fitting, Table } from '../plan';

/**
 * What something is called in a sentence, as data. `mark` is its item mark where the plan has several of its kind, null where it is
 * the only one.
 */
export type Name =
  | { readonly kind: 'machine' | 'line' | 'hood' | 'run'; readonly mark: string | null }
  | { readonly kind: 'table'; readonly role: Table['role']; readonly mark: string | null }
  /** A thing by its own name, or by the usual one. */
  | { readonly kind: 'thing'; readonly name: string; readonly isOwn: boolean; readonly mark: string | null }
  /** A sink with a spray is the pre-rinse. */
  | { readonly kind: 'fitting'; readonly fitting: Fitting['kind'] | 'pre-rinse' }
  | { readonly kind: 'column' | 'wall' }
  /** A part that bears no name of its own, by what it belongs to. */
  | { readonly kind: 'part'; readonly part: 'backsplash' | 'overshelf' | 'door-lift' | 'recovery-box'; readonly of: Name };
