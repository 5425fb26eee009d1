import type { Route } from 'next';
import { type Refusal, refuse } from '@/lib/result';
import { type Change, isChangeKind } from '@/lib/what-if/change';
import { changeOf, changeText, readChange } from '@/lib/what-if/change-text';

type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** No address needs more than this; more would only be a slow page. */
const CHANGES_MAX = 20;
const TOO_MANY = refuse('too-many', `Only the first ${CHANGES_MAX} changes are tried at once.`);

/** What an address asks for: the changes that stand in it, and what in it is no change. */
export interface AskedChanges {
  readonly changes: readonly Change[];
  readonly refusals: readonly Refusal[];
}

/** Reads the changes of an address: `c` once for each. */
export function askedChanges(asked: Asked): AskedChanges {
  const texts = listOf(asked.c);
  const read = texts.slice(0, CHANGES_MAX).map(readChange);
  const more = texts.length > CHANGES_MAX ? [TOO_MANY.refusal] : [];
  return {
    changes: read.flatMap((one) => (one.ok ? [one.value] : [])),
    refusals: [...more, ...read.flatMap((one) => (one.ok ? [] : [one.refusal]))],
  };
}

/** The change that a form has just asked to add: undefined when none. */
export function addedChange(asked: Asked): ReturnType<typeof changeOf> | undefined {
  const kind = firstOf(asked.add);
  if (kind === undefined || !isChangeKind(kind)) return undefined;
  const typed = Object.fromEntries(
    Object.entries(asked).map(([name, value]) => [name, firstOf(value) ?? '']),
  );
  return changeOf(kind, typed);
}

/** The address of a question: to be kept, sent to somebody, printed. */
export function whatIfHref(changes: readonly Change[]): Route {
  const query = new URLSearchParams(changes.map((change) => ['c', changeText(change)]));
  return (changes.length === 0 ? '/plan/what-if' : `/plan/what-if?${query}`) as Route;
}

export function firstOf(value: string | string[] | undefined): string | undefined {
  return Array.isArray(value) ? value[0] : value;
}

function listOf(value: string | string[] | undefined): string[] {
  return value === undefined ? [] : Array.isArray(value) ? value : [value];
}
