import { today } from '@/app/_server/clock';
import { csvDownload, kindOfFile, noSuchFile } from '@/app/_server/csv-download';
import { shopDb } from '@/db/client';
import { exportCsv } from '@/db/queries/export-csv';

export const dynamic = 'force-dynamic';

/** CSV out: all tools, the whole cut log or all jobs, in the columns that are imported. */
export async function GET(_request: Request, { params }: RouteContext<'/export/[file]'>): Promise<Response> {
  const kind = kindOfFile((await params).file);
  return kind === undefined ? noSuchFile() : csvDownload(`${kind}-${today()}.csv`, exportCsv(shopDb(), kind));
}
