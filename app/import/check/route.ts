import { takeFile } from '@/app/_import/take-file';
import { fromOwnPages } from '@/app/_server/same-origin';
import { checkImport } from '@/db/commands/import-file';

/** Says what importing a file would do. Nothing is written and nothing is kept. */
export const POST = fromOwnPages((request) => takeFile(request, checkImport));
