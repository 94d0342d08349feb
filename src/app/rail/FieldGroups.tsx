import type { Field, FieldGroup } from '../../editor';
import { FieldRow } from './FieldRow';

const TITLES: Record<FieldGroup, string> = {
  identity: 'Kind',
  place: 'Place',
  size: 'Size',
  joint: 'Joint with the machine',
  legs: 'Path',
  deck: 'Deck heights and fall',
  fittings: 'Fittings',
  points: 'Way of the run',
  fan: 'Fan',
  controls: 'Controls',
  corners: 'Corners',
  openings: 'How it opens',
  room: 'Room',
  demand: 'Demand',
  supply: 'Supply',
  order: 'Order',
  hookUp: 'Water, waste and wires',
  record: 'Temperatures at a plate',
  make: 'How it is made',
  basins: 'Bowls and boards',
  duct: 'Duct',
  waste: 'Pipe',
  air: 'Air',
  finish: 'Finishes and light',
  pipes: 'Pipes and hot water',
  tariff: 'Tariff',
  codes: 'Where rules differ',
  title: 'Title block',
  settings: 'Settings',
  sheet: 'Data sheet',
};

/** Fields under their headings, in the order in which they come. */
export function FieldGroups({ fields }: { fields: readonly Field[] }) {
  const groups = [...new Set(fields.map((f) => f.group))];
  return groups.map((group) => (
    <Group key={group} title={TITLES[group]} isFolded={FOLDED.has(group)} fields={fields.filter((f) => f.group === group)} />
  ));
}

/** Groups that are long and seldom typed into begin folded; the checks ask for what they need of them. */
const FOLDED: ReadonlySet<FieldGroup> = new Set([
  'corners',
  'title',
  'settings',
  'points',
  'hookUp',
  'make',
  'duct',
  'air',
  'pipes',
  'finish',
  'tariff',
  'codes',
]);

/** A group this short is shown whatever it is. */
const SHORT = 2;

function Group({ title, fields, isFolded }: { title: string; fields: readonly Field[]; isFolded: boolean }) {
  const parts = [...new Set(fields.map((f) => f.part))];
  const unknown = fields.filter(({ value }) => value === null).length;
  return (
    <details className="group" open={!isFolded || fields.length <= SHORT}>
      <summary>
        {title} {unknown > 0 && <span>{unknown} not known</span>}
      </summary>
      {parts.map((part) => (
        <div key={part ?? ''}>
          {part && <p className="quiet part">{part}</p>}
          {fields
            .filter((f) => f.part === part)
            .map((field) => (
              <FieldRow key={field.path.join('.')} field={field} />
            ))}
        </div>
      ))}
    </details>
  );
}
