import 'server-only';
import type { Refusal } from '@/lib/result';

/** A refusal as the answer of a route handler: one line of JSON, as the lines of a longer answer are. */
export function refusalResponse(status: number, { code, sentence }: Refusal): Response {
  return new Response(`${JSON.stringify({ step: 'refused', code, sentence })}\n`, {
    status,
    headers: { 'content-type': 'application/x-ndjson; charset=utf-8', 'cache-control': 'no-store' },
  });
}
