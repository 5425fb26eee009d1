import 'server-only';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { wakeFigures } from '@/app/_server/outlook';
import { refusalResponse } from '@/app/_server/refusal-response';
import { currentActor } from '@/app/_server/session';
import { shopDb, shopName } from '@/db/client';
import type { ImportCheck, ImportRefusal } from '@/db/commands/import-file';
import type { Env } from '@/db/ledger/ledger';
import type { Db } from '@/db/open';
import { wallClock } from '@/db/wall-clock';
import { type Permit, permit } from '@/lib/access/permit';
import { IMPORT_KINDS } from '@/lib/import/column';
import { FILE_BYTES_MAX } from '@/lib/import/decode-text';
import type { ReadFile } from '@/lib/import/read-rows';
import { type Refusal, type Result, refuse } from '@/lib/result';
import { answerLines } from './answer-lines';
import { type ImportLine, readColumnsText } from './import-line';
import { readBody } from './read-body';
import { readUpload, type Upload } from './read-upload';

type Decide = (
  db: Db,
  leave: Permit<'import-file'>,
  file: ReadFile,
  env: Env,
) => Result<ImportCheck, ImportRefusal>;

/**
 * Takes a file that was sent and answers in lines: how its columns are read, how far the reading is, and what `decide`
 * makes of it. What is wrong with the sending itself is refused before anything is read.
 */
export async function takeFile(request: Request, decide: Decide): Promise<Response> {
  const leave = permit(await currentActor(), 'import-file');
  if (!leave.ok) return refusalResponse(401, leave.refusal);
  const upload = await readRequest(request);
  if (!upload.ok) return refusalResponse(upload.refusal.code === 'too-large' ? 413 : 400, upload.refusal);
  const shop = shopName();
  return answerLines(async (listener) => {
    const file = await readUpload(upload.value, listener);
    if (!file.ok) return refusedLine(file.refusal);
    listener.say({ step: 'deciding', rowsTotal: file.value.rowsTotal });
    // The decision holds this process until it is made: let the line above, and whoever waits, go first.
    for (let turn = 0; turn < 5; turn += 1) await nextTurn();
    if (listener.isGone()) return undefined;
    if (shopName() !== shop)
      return {
        step: 'refused',
        code: 'shop',
        sentence: 'Another shop was opened meanwhile: check this file again.',
      };
    const decided = decide(shopDb(), leave.value, file.value, wallClock());
    if (decided.ok) wakeFigures();
    return decided.ok ? { step: 'done', check: decided.value } : refusedLine(decided.refusal);
  });
}

async function readRequest(request: Request): Promise<Result<Upload, Refusal>> {
  const asked = new URL(request.url).searchParams;
  const kind = IMPORT_KINDS.find((name) => name === asked.get('kind'));
  if (kind === undefined) return refuse('kind', 'Say whether the file holds tools, cuts or jobs.');
  const bytes = await readBody(request, FILE_BYTES_MAX);
  if (bytes === null)
    return refuse('too-large', 'This file is larger than 50 MB. Split it into several files.');
  if (bytes.length === 0) return refuse('empty', 'This file is empty.');
  const columns = asked.get('columns');
  return { ok: true, value: { kind, bytes, mapping: columns === null ? null : readColumnsText(columns) } };
}

function refusedLine({ code, sentence, check }: ImportRefusal): ImportLine {
  return { step: 'refused', code, sentence, ...(check && { check }) };
}
