import { redirect } from 'next/navigation';
import { shopDb } from '@/db/client';
import { findEnds } from '@/db/queries/find-ends';
import { findTool } from '@/db/queries/tools';
import { tidyToolId } from '@/lib/shop/tool-id';

const TYPED_MAX = 80;

/** Where the find box goes: the tool that was scanned or typed, an end by its mark, place or heat, or the list searched for it. */
export async function GET(request: Request): Promise<never> {
  // By whole characters: half of one cannot be written into an address.
  const typed = Array.from(new URL(request.url).searchParams.get('id') ?? '')
    .slice(0, TYPED_MAX)
    .join('');
  const tool = findTool(shopDb(), typed);
  if (tool !== undefined) redirect(`/tools/${encodeURIComponent(tool.id)}`);
  if (findEnds(shopDb(), typed, 1).hits.length > 0) redirect(`/trace?q=${encodeURIComponent(typed)}`);
  redirect(`/tools?find=${encodeURIComponent(tidyToolId(typed))}`);
}
