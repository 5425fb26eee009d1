import 'server-only';
import { IMPORT_KINDS, type ImportKind } from '@/lib/import/column';

/** A CSV file as an answer that browsers save instead of showing. */
export function csvDownload(fileName: string, text: string): Response {
  return new Response(text, {
    headers: {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename="${fileName}"`,
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
    },
  });
}

/** The kind that a file name such as tools.csv asks for. */
export function kindOfFile(file: string): ImportKind | undefined {
  return IMPORT_KINDS.find((kind) => file === `${kind}.csv`);
}

/** What an address of no such file answers. */
export function noSuchFile(): Response {
  return new Response('There are tools.csv, cuts.csv and jobs.csv.\n', {
    status: 404,
    headers: { 'content-type': 'text/plain; charset=utf-8', 'x-content-type-options': 'nosniff' },
  });
}
