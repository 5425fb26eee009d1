import { type EdgeEnd, END_CAUSES, type EndCause } from './vocabulary';

/**
 * What kind of evidence a cause is of how long edges last: worn counts as wear; an accident or an edge taken out while good
 * is censoring. For every reader of an entry that ended an edge.
 * @example evidenceOfCause('dropped') // => "incident"
 */
export function evidenceOfCause(code: EndCause): EdgeEnd {
  return END_CAUSES.find((cause) => cause.code === code)?.end ?? 'removed-working';
}
