import { readBody } from '@/app/_import/read-body';
import { wakeFigures } from '@/app/_server/outlook';
import { fromOwnPages } from '@/app/_server/same-origin';
import { currentActor } from '@/app/_server/session';
import { shopDb } from '@/db/client';
import { type BenchAnswer, takeBenchEntry } from '@/db/commands/take-bench-entry';
import { wallClock } from '@/db/wall-clock';
import type { Refusal } from '@/lib/result';
import { BenchBatchSchema } from '@/lib/shop/bench-input';

export const dynamic = 'force-dynamic';

const BODY_BYTES_MAX = 500_000;

/**
 * Takes what a bench entered, in the order in which it was made. Each entry is counted, known already, or kept as a
 * conflict; at the first that nobody may enter the rest is left with the bench, to be sent again.
 */
export const POST = fromOwnPages(async (request) => {
  const bytes = await readBody(request, BODY_BYTES_MAX);
  const batch = bytes === null ? undefined : BenchBatchSchema.safeParse(readJson(bytes)).data;
  if (batch === undefined)
    return answer([], { code: 'input', sentence: 'What the bench sent cannot be read.' }, 400);
  const actor = await currentActor();
  const answers: BenchAnswer[] = [];
  for (const sent of batch.entries) {
    const clock = { behindMs: batch.clockBehindMs, ...wallClock() };
    const taken = takeBenchEntry(shopDb(), actor, sent, clock);
    if (!taken.ok) return answer(answers, taken.refusal, 200);
    answers.push(taken.value);
  }
  wakeFigures();
  return answer(answers, null, 200);
});

function answer(answers: readonly BenchAnswer[], refused: Refusal | null, status: number): Response {
  return Response.json({ answers, refused }, { status, headers: { 'cache-control': 'no-store' } });
}

function readJson(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    return undefined;
  }
}
