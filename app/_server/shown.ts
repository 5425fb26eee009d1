import 'server-only';
import { shownFor } from '@/lib/outlook/shown-for';
import type { Shown } from '@/lib/shop/shown';
import { shopOutlook } from './outlook';

/** What the screens say of a tool for a job line at this moment: kept with its issue, so that it can be judged later. */
export async function shownAtIssue(toolId: string, jobLineId: string | null): Promise<Shown | undefined> {
  return jobLineId === null ? undefined : shownFor(await shopOutlook(), { toolId, jobLineId });
}
