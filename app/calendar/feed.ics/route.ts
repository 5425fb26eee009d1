import { shopDueDates } from '@/app/_server/due-dates';
import { shopView } from '@/app/_server/outlook';
import { shopName } from '@/db/client';
import { dataVersion, listEntries } from '@/db/queries/entries';
import { askedKinds } from '../_parts/asked-kinds';
import { feedText } from '../_parts/feed-text';

export const dynamic = 'force-dynamic';

/** The due dates for calendar programs to subscribe to: read only. ?kind=… as on the page. */
export async function GET(request: Request): Promise<Response> {
  const { outlook, db } = await shopView();
  const url = new URL(request.url);
  const kinds = askedKinds(url.searchParams.getAll('kind'));
  const [last] = listEntries(db, { limit: 1 });
  const text = feedText({
    dues: shopDueDates(outlook).filter(({ kind }) => kinds.includes(kind)),
    today: outlook.facts.today,
    shop: shopName(),
    version: dataVersion(db),
    versionAtMs: last?.serverAtMs ?? 0,
    origin: originOf(request, url),
  });
  return new Response(text, {
    headers: {
      'content-type': 'text/calendar; charset=utf-8',
      'content-disposition': 'inline; filename="edgekeep.ics"',
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
    },
  });
}

/** The address that the reader asked, host and port as it wrote them. */
function originOf(request: Request, url: URL): string {
  const host = request.headers.get('host');
  return host === null ? url.origin : `${url.protocol}//${host}`;
}
