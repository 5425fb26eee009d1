import { ok, type Refusal, type Result, refuse } from '../result';
import { type Change, type ChangeKind, changeSchema, isChangeKind } from './change';

/** The fields of each kind in the order in which an address carries them. */
const FIELDS: Record<ChangeKind, readonly string[]> = {
  'add-line': ['connectionId', 'materialId', 'ends', 'startOnDay', 'dueOnDay', 'value'],
  'change-dates': ['lineId', 'startOnDay', 'dueOnDay'],
  'change-material': ['lineId', 'materialId'],
  'change-ends': ['lineId', 'ends'],
  'drop-line': ['lineId'],
  'slip-order': ['orderId', 'days'],
  'add-order': ['partId', 'quantity', 'promisedOnDay', 'supplier'],
  'lose-tool': ['toolId'],
  'add-tool': ['partId', 'quantity'],
  'free-tool': ['toolId'],
  'calibrate-tool': ['toolId', 'dueOnDay'],
  'regrind-tool': ['toolId', 'backOnDay'],
  'add-bench': ['quantity'],
};
/** Fields that may be left out; they stand last. */
const OPTIONAL: readonly string[] = ['supplier'];
const NUMBERS: readonly string[] = ['ends', 'days', 'quantity'];
const WHOLE = /^-?\d{1,7}$/;

/**
 * A change as an address carries it: its kind and fields with a tilde between.
 * @example changeText({ kind: 'slip-order', orderId: 'PO-114', days: 21 }) // => "slip-order~PO-114~21"
 */
export function changeText(change: Change): string {
  const fields = change as Readonly<Record<string, unknown>>;
  const said = FIELDS[change.kind].filter((name) => fields[name] !== undefined);
  return [change.kind, ...said.map((name) => String(fields[name]))].join('~');
}

/** The inverse of `changeText`, for what a person may have typed into an address. Refuses what is no change, and says why. */
export function readChange(text: string): Result<Change> {
  const [kind = '', ...values] = text.split('~');
  if (!isChangeKind(kind))
    return refuse('unknown-change', `“${kind.slice(0, 40)}” is not a change that can be tried.`);
  return changeOf(kind, Object.fromEntries(FIELDS[kind].map((name, i) => [name, values[i] ?? ''])));
}

/** A change from the fields of a form, all text. */
export function changeOf(kind: ChangeKind, typed: Readonly<Record<string, string>>): Result<Change> {
  const fields = FIELDS[kind].flatMap((name) => {
    const text = (typed[name] ?? '').trim();
    return text === '' && OPTIONAL.includes(name) ? [] : [[name, readField(name, text)] as const];
  });
  const parsed = changeSchema(kind).safeParse({ kind, ...Object.fromEntries(fields) });
  return parsed.success ? ok(parsed.data) : { ok: false, refusal: firstIssue(parsed.error.issues) };
}

function readField(name: string, text: string): string | number {
  if (!NUMBERS.includes(name)) return text;
  return WHOLE.test(text) ? Number(text) : Number.NaN;
}

function firstIssue(issues: readonly { message: string; path: readonly PropertyKey[] }[]): Refusal {
  const [issue] = issues;
  return {
    code: 'invalid-change',
    sentence: issue?.message ?? 'The change is not complete.',
    field: String(issue?.path[0] ?? ''),
  };
}
