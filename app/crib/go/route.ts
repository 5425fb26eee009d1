import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { shopDb } from '@/db/client';
import { findJob, findLine, listLinesOfJob } from '@/db/queries/jobs';
import { findKit, findKitOfTool } from '@/db/queries/kits';
import { findTool } from '@/db/queries/tools';
import { tidyToolId } from '@/lib/shop/tool-id';

const SCANNED_MAX = 80;

/** Where a scan at the counter goes: a job line to its kit, a tool that is out to its return, anything else to the tool. */
export async function GET(request: Request): Promise<never> {
  const scanned = Array.from(new URL(request.url).searchParams.get('scan') ?? '')
    .slice(0, SCANNED_MAX)
    .join('')
    .trim();
  redirect(placeOf(scanned) as Route);
}

function placeOf(scanned: string): string {
  const db = shopDb();
  if (findLine(db, scanned) !== undefined) return `/crib/issue/${encodeURIComponent(scanned)}`;
  if (findKit(db, scanned) !== undefined) return `/crib/kits/${encodeURIComponent(scanned)}`;
  const job = findJob(db, scanned);
  const [line, second] = job === undefined ? [] : listLinesOfJob(db, job.id);
  if (line !== undefined)
    return second === undefined
      ? `/crib/issue/${encodeURIComponent(line.id)}`
      : `/plan/jobs/${encodeURIComponent(line.jobId)}`;
  const tool = findTool(db, scanned);
  if (tool === undefined) return `/crib?unknown=${encodeURIComponent(tidyToolId(scanned))}`;
  const kit = findKitOfTool(db, tool.id);
  if (kit !== undefined)
    return `/crib/kits/${encodeURIComponent(kit.id)}?scan=${encodeURIComponent(tool.id)}`;
  return `/tools/${encodeURIComponent(tool.id)}`;
}
