import { csvDownload, kindOfFile, noSuchFile } from '@/app/_server/csv-download';
import { templateCsv } from '@/lib/import/template';

export const dynamic = 'force-dynamic';

/** An empty file to fill in: the names of the columns and nothing below. */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/import/empty/[file]'>,
): Promise<Response> {
  const kind = kindOfFile((await params).file);
  return kind === undefined ? noSuchFile() : csvDownload(`${kind}.csv`, templateCsv(kind));
}
