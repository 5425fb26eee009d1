import { afterEach, expect, it, vi } from 'vitest';
import { answerLines } from '@/app/_import/answer-lines';
import type { ImportLine } from '@/app/_import/import-line';
import { readNdjson } from '@/app/_import/ndjson';

afterEach(() => vi.restoreAllMocks());

async function linesOf(response: Response): Promise<ImportLine[]> {
  const lines: ImportLine[] = [];
  if (response.body) for await (const line of readNdjson<ImportLine>(response.body)) lines.push(line);
  return lines;
}

it('answers line by line while the work goes on, the outcome last', async () => {
  let finish = () => {};
  const waiting = new Promise<void>((resolve) => {
    finish = resolve;
  });
  const response = answerLines(async ({ say }) => {
    say({ step: 'reading', rowsDone: 1000, rowsTotal: 2000 });
    await waiting;
    return { step: 'refused', code: 'rows', sentence: 'No.' };
  });
  expect(response.headers.get('cache-control')).toBe('no-store, no-transform');
  const lines: string[] = [];
  if (response.body)
    for await (const line of readNdjson<ImportLine>(response.body)) {
      lines.push(line.step);
      finish();
    }
  expect(lines).toEqual(['reading', 'refused']);
});

it('says in a sentence that something went wrong, and keeps what it was for the log', async () => {
  const log = vi.spyOn(console, 'error').mockImplementation(() => {});
  const lines = await linesOf(answerLines(() => Promise.reject(new Error('disk path and all'))));
  expect(lines.map((line) => line.step === 'refused' && line.code)).toEqual(['fault']);
  expect(JSON.stringify(lines)).not.toContain('disk');
  expect(String(log.mock.calls[0]?.[1])).toContain('disk path and all');
});

it('tells the work when nobody listens any more, and never speaks into the void', async () => {
  let heard: boolean | undefined;
  let go = () => {};
  const left = new Promise<void>((resolve) => {
    go = resolve;
  });
  const response = answerLines(async ({ say, isGone }) => {
    await left;
    heard = isGone();
    say({ step: 'deciding', rowsTotal: 1 });
    return undefined;
  });
  await response.body?.cancel();
  go();
  await vi.waitFor(() => expect(heard).toBe(true));
});
