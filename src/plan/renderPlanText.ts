import { type Plan, planSchema } from './planSchema';

/** Longest line that an object or list may fill before it is broken up. */
const LINE = 120;

/**
 * The plan as JSON for a file: keys in the order of the schema, small objects on one line, a newline at the end.
 * Reading it and rendering again gives the same bytes.
 */
export function renderPlanText(plan: Plan): string {
  const ordered = planSchema.safeParse(plan);
  return `${renderJson(ordered.success ? ordered.data : plan, '', 0)}\n`;
}

/** JSON with small objects on one line. `before` is how much of the line is taken already. */
export function renderJson(value: unknown, indent: string, before: number): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const inline = renderInline(value);
  if (indent !== '' && before + inline.length <= LINE) return inline;
  const deeper = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.length === 0) return '[]';
    return `[\n${value.map((item) => deeper + renderJson(item, deeper, deeper.length)).join(',\n')}\n${indent}]`;
  }
  const lines = Object.entries(value).map(([key, item]) => {
    const head = `${deeper}${JSON.stringify(key)}: `;
    return head + renderJson(item, deeper, head.length);
  });
  return `{\n${lines.join(',\n')}\n${indent}}`;
}

function renderInline(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(renderInline).join(', ')}]`;
  const entries = Object.entries(value).map(([key, item]) => `${JSON.stringify(key)}: ${renderInline(item)}`);
  return `{ ${entries.join(', ')} }`;
}
