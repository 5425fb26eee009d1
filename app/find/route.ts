import { redirect } from 'next/navigation';
import { shopDb } from '@/db/client';
import { findEnds } from '@/db/queries/find-ends';
import { findJob, findLine } from '@/db/queries/jobs';
import { findOrder } from '@/db/queries/orders';
import { findTool } from '@/db/queries/tools';
import { tidyToolId } from '@/lib/shop/tool-id';

const TYPED_MAX = 80;

/**
 * Where the find box goes: the tool that was scanned or typed, the open line of a slip, an end by its mark, place or heat, a
 * job or an order by its number; else the list searched for it.
 */
export async function GET(request: Request): Promise<never> {
  // By whole characters: half of one cannot be written into an address.
  const typed = Array.from(new URL(request.url).searchParams.get('id') ?? '')
    .slice(0, TYPED_MAX)
    .join('');
  const tool = findTool(shopDb(), typed);
  if (tool !== undefined) redirect(`/tools/${encodeURIComponent(tool.id)}`);
  const number = tidyToolId(typed);
  const line = findLine(shopDb(), number);
  if (line?.jobStatus === 'open') redirect(`/plan/lines/${encodeURIComponent(line.id)}`);
  if (findEnds(shopDb(), typed, 1).hits.length > 0) redirect(`/trace?q=${encodeURIComponent(typed)}`);
  if (line !== undefined) redirect(`/plan/lines/${encodeURIComponent(line.id)}`);
  const job = findJob(shopDb(), number);
  if (job !== undefined) redirect(`/plan/jobs/${encodeURIComponent(job.id)}`);
  const order = findOrder(shopDb(), number);
  if (order !== undefined) redirect(`/plan/orders/${encodeURIComponent(order.id)}`);
  redirect(`/tools?find=${encodeURIComponent(number)}`);
}
