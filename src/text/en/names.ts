import type { Name } from '../../rules';

/** What something is called in the middle of a sentence: `the machine`, `soiled table 3`, `the overshelf of the clean table`. */
export function nameWords(name: Name): string {
  switch (name.kind) {
    case 'machine':
    case 'hood':
    case 'run':
      return name.mark === null ? `the ${name.kind}` : `${name.kind} ${name.mark}`;
    case 'line':
      return name.mark === null ? 'the line' : `the line of machine ${name.mark}`;
    case 'table':
      return name.mark === null ? `the ${name.role} table` : `${name.role} table ${name.mark}`;
    case 'thing':
      return thingWords(name);
    case 'fitting':
      return FITTINGS[name.fitting];
    case 'column':
      return 'a column';
    case 'wall':
      return 'the wall';
    case 'part':
      return PARTS[name.part](nameWords(name.of));
  }
}

/** Its own name, or the usual one. */
function thingWords({ name, isOwn, mark }: Extract<Name, { kind: 'thing' }>): string {
  if (mark !== null) return `${isOwn ? name : name.toLowerCase()} ${mark}`;
  return isOwn ? name : `the ${name.toLowerCase()}`;
}

const FITTINGS: Readonly<Record<Extract<Name, { kind: 'fitting' }>['fitting'], string>> = {
  'drop-off': 'the drop-off',
  scrap: 'the scrap opening',
  'pre-rinse': 'the pre-rinse',
  sink: 'the sink',
  landing: 'the rack landing',
  overshelf: 'the overshelf',
};

const PARTS: Readonly<Record<Extract<Name, { kind: 'part' }>['part'], (of: string) => string>> = {
  backsplash: (of) => `the backsplash of ${of}`,
  overshelf: (of) => `the overshelf of ${of}`,
  'door-lift': (of) => `the open doors of ${of}`,
  'recovery-box': (of) => `the heat-recovery box of ${of}`,
};
