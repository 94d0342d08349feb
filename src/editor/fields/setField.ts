import { type FieldPath, type Plan, type PlanProblem, type Recipe, setField as setValue, type Transaction, tryEdit } from '../../plan';
import { deriveScene } from '../../scene';
import { formatLength, type Units } from '../../units';
import { problemText } from '../tools/commitPreview';
import { convertField } from './convertField';
import type { Field, FieldValue } from './field';
import { fieldAt } from './fieldsFor';
import { formatField, readFieldText } from './fieldText';

/** A change to keep, or why not; a refusal changes nothing. */
export type FieldResult = { readonly ok: true; readonly transaction: Transaction } | { readonly ok: false; readonly problem: string };

const refusal = (problem: string): FieldResult => ({ ok: false, problem });

/** Sets one property of the plan. What hangs on it comes along: a machine takes its tables, a shorter table keeps its fittings. A refusal speaks in `units`. */
export function setField(plan: Plan, path: FieldPath, value: FieldValue, units: Units = plan.settings.units): FieldResult {
  const field = fieldAt(plan, deriveScene(plan), path);
  if (field === null) return refusal('There is no such field any more.');
  const problem = whyNot(field, value, units);
  if (problem !== null) return refusal(problem);
  const recipe = convertField(plan, path, value) ?? setValue(path, value);
  if (typeof recipe === 'string') return refusal(recipe);
  return carryOut(plan, field, recipe, units);
}

/** As `setField`, from what a person typed, in the units that they read. */
export function setFieldText(plan: Plan, path: FieldPath, text: string, units: Units): FieldResult {
  const field = fieldAt(plan, deriveScene(plan), path);
  if (field === null) return refusal('There is no such field any more.');
  const read = readFieldText(field, text, units);
  return read.ok ? setField(plan, path, read.value, units) : refusal(read.problem);
}

function carryOut(plan: Plan, field: Field, recipe: Recipe, units: Units): FieldResult {
  const result = tryEdit(plan, `Change ${uncapital(field.label)}`, recipe);
  return result.ok ? { ok: true, transaction: result.transaction } : refusal(sayProblem(plan, result.problem, units));
}

/** A data sheet is long: what is wrong in it is said with its place there. */
function sayProblem(plan: Plan, { path, reason }: PlanProblem, units: Units): string {
  const at = path[0] === 'sheets' ? fieldAt(plan, deriveScene(plan), path) : null;
  const place = at?.part ? `${at.part}, ${uncapital(at.label)}: ` : '';
  const words = reason.replace(/(-?[\d.]+) mm/g, (_, mm: string) => formatLength(Number(mm), units));
  return place === '' ? problemText({ reason: words }) : `${place}${words}.`;
}

const uncapital = (label: string) => label.charAt(0).toLowerCase() + label.slice(1);

/** Why a value does not fit its field, in the units that people read; null where it fits. */
function whyNot(field: Field, value: FieldValue, units: Units): string | null {
  if (value === null) return field.nullable ? null : `${field.label} can’t be left unknown.`;
  if (field.kind === 'choice' || field.kind === 'toggle')
    return isOption(field, value) ? null : `${field.label} can’t be ${String(value)}.`;
  if (field.kind === 'text') return typeof value === 'string' ? tooLong(field, value) : `${field.label} is a text.`;
  return typeof value === 'number' && Number.isFinite(value) ? outOfRange(field, value, units) : `${field.label} is a number.`;
}

const isOption = ({ options }: Field, value: FieldValue) => options.some((option) => option.value === value);

const tooLong = ({ label, max }: Field, text: string) =>
  max !== null && text.length > max ? `${label} has ${text.length} characters; ${max} fit.` : null;

function outOfRange(field: Field, value: number, units: Units): string | null {
  const show = (limit: number) => formatField({ ...field, value: limit }, units);
  if (field.min !== null && value < field.min) return `${field.label} must be at least ${show(field.min)}.`;
  if (field.max !== null && value > field.max) return `${field.label} must be at most ${show(field.max)}.`;
  return null;
}
