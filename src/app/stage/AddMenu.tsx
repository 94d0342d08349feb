import { Plus } from 'lucide-react';
import { FAMILIES } from '../../catalog';
import type { ThingToAdd } from '../../editor';
import type { Opening, ThingKind } from '../../plan';
import { Menu, type MenuGroup } from '../parts/Menu';
import { actions } from '../store/actions';

/** The small menu at the paper's edge: everything that is put on the paper. */
export function AddMenu() {
  return (
    <Menu
      title="Put something on the paper"
      isWide
      groups={GROUPS}
      label={
        <>
          <Plus size={16} /> Put on paper
        </>
      }
    />
  );
}

const thing = (label: string, kind: ThingKind) => ({
  label,
  run: () => actions.tool({ tool: 'add-thing', add: { kind: 'thing', thing: kind } }),
});
const part = (label: string, add: ThingToAdd) => ({ label, run: () => actions.tool({ tool: 'add-thing', add }) });
const opening = (label: string, kind: Opening['kind']) => ({ label, run: () => actions.tool({ tool: 'add-opening', kind }) });

const GROUPS: MenuGroup[] = [
  {
    title: 'Room',
    columns: 2,
    entries: [
      { label: 'Draw the walls', run: () => actions.tool({ tool: 'draw-room' }) },
      { label: 'Move walls', run: () => actions.tool({ tool: 'move-wall' }) },
      opening('Door', 'door'),
      opening('Double door', 'double-door'),
      opening('Cased opening', 'cased-opening'),
      opening('Pass window', 'pass-window'),
      opening('Window', 'window'),
      part('Column', { kind: 'column' }),
      part('Floor drain', { kind: 'floor-drain', drain: 'floor-drain' }),
      part('Floor sink', { kind: 'floor-drain', drain: 'floor-sink' }),
      part('Cold water stub', { kind: 'stub', stub: 'cold-water' }),
      part('Hot water stub', { kind: 'stub', stub: 'hot-water' }),
      part('Power stub', { kind: 'stub', stub: 'power' }),
      part('Duct exit', { kind: 'stub', stub: 'duct-exit' }),
    ],
  },
  {
    title: 'Line',
    columns: 2,
    entries: [
      { label: 'Soiled table', run: () => actions.tool({ tool: 'add-table', role: 'soiled' }) },
      { label: 'Clean table', run: () => actions.tool({ tool: 'add-table', role: 'clean' }) },
    ],
  },
  {
    title: 'Machine',
    columns: 1,
    entries: FAMILIES.map((sheet) => ({
      label: sheet.name,
      run: () => actions.tool({ tool: 'place-machine', sheet: sheet.id, line: null }),
    })),
  },
  {
    title: 'Air',
    columns: 2,
    entries: [
      { label: 'Hood', run: () => actions.tool({ tool: 'add-hood' }) },
      { label: 'Duct run', run: () => actions.tool({ tool: 'draw-run' }) },
    ],
  },
  {
    title: 'Things',
    columns: 2,
    entries: [
      thing('Three-compartment sink', 'three-compartment-sink'),
      thing('Hand sink', 'hand-sink'),
      thing('Shelving', 'shelving'),
      thing('Work table', 'work-table'),
      thing('Cart', 'cart'),
      thing('Bin', 'bin'),
      thing('Panel board', 'panel-board'),
      thing('Something else', 'other'),
    ],
  },
  { title: 'Look', columns: 2, entries: [{ label: 'Measure', run: () => actions.tool({ tool: 'measure' }) }] },
];
