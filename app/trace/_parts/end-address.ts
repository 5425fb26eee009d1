import type { Route } from 'next';
import type { EndHit } from '@/db/queries/find-ends';
import type { EndAsked } from '@/db/queries/trace';

type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** The address of one end's page. A refused end, or one without mark and number, is found by its look. */
export function endAddress(hit: EndHit): Route {
  const { mark, jobLineId, endNo, decision, endCount, acceptanceId } = hit;
  const line: Record<string, string> = jobLineId === null ? {} : { line: jobLineId };
  if (decision === 'accepted' && mark !== null) return addressOf({ mark, ...line });
  if (decision === 'accepted' && jobLineId !== null && endNo !== null && endCount === 1)
    return addressOf({ ...line, end: String(endNo) });
  return addressOf({ look: acceptanceId });
}

/** The end that an address names; undefined where it names none. */
export function endOfAddress({ mark, line, end, look }: Asked): EndAsked | undefined {
  if (typeof look === 'string') return { acceptanceId: look };
  if (typeof mark === 'string') return typeof line === 'string' ? { mark, jobLineId: line } : { mark };
  const endNo = Number(end);
  if (typeof line !== 'string' || !Number.isInteger(endNo) || endNo < 1) return undefined;
  return { jobLineId: line, endNo };
}

function addressOf(asked: Record<string, string>): Route {
  return `/trace?${new URLSearchParams(asked)}` as Route;
}
