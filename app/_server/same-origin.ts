import 'server-only';
import { type Refusal, refuse } from '@/lib/result';
import { refusalResponse } from './refusal-response';

type Handler<Context> = (request: Request, context: Context) => Promise<Response>;

/** What a page of another site cannot send without asking first. */
const BODY_TYPES = /^(?:application\/octet-stream|application\/json|text\/csv)\s*(?:;|$)/i;

/**
 * Wraps a POST route handler: only our own pages may send to it. A browser tells where a request comes from; one from
 * elsewhere is refused before its body is read. Server actions have the same check built in; route handlers have not.
 */
export function fromOwnPages<Context>(handle: Handler<Context>): Handler<Context> {
  return async (request, context) => {
    const fault = originFault(request.headers);
    return fault === undefined ? handle(request, context) : refusalResponse(fault.status, fault);
  };
}

/** Why a request with these headers is not from our own pages, or undefined where it is. */
export function originFault(headers: Headers): (Refusal & { readonly status: number }) | undefined {
  const site = headers.get('sec-fetch-site');
  const origin = headers.get('origin');
  if (
    (site !== null && site !== 'same-origin') ||
    (origin !== null && hostOf(origin) !== headers.get('host'))
  )
    return fault(403, 'origin', 'This was sent from a page of another site, so nothing was done with it.');
  if (!BODY_TYPES.test(headers.get('content-type') ?? ''))
    return fault(415, 'body-type', 'Send the bytes of the file as text/csv or application/octet-stream.');
  return undefined;
}

function fault(status: number, code: string, sentence: string) {
  return { ...refuse(code, sentence).refusal, status };
}

function hostOf(origin: string): string | null {
  return URL.canParse(origin) ? new URL(origin).host : null;
}
