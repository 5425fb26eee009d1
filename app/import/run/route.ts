import { randomUUID } from 'node:crypto';
import { takeFile } from '@/app/_import/take-file';
import { fromOwnPages } from '@/app/_server/same-origin';
import { importFile } from '@/db/commands/import-file';

/** Imports a file: all of it or none of it. Sent twice it counts once. */
export const POST = fromOwnPages((request) =>
  takeFile(request, (db, leave, file, env) => importFile(db, leave, file, { ...env, batchId: randomUUID() })),
);
