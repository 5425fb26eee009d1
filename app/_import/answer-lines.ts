import 'server-only';
import type { ImportLine } from './import-line';
import { ndjsonLine } from './ndjson';

/** The far end of an answer in lines. */
export interface Listener {
  readonly say: (line: ImportLine) => void;
  /** Whether nobody is listening any more. */
  readonly isGone: () => boolean;
}

/** Not transformed on the way: packed or gathered lines would come all at once. */
const HEADERS = {
  'content-type': 'application/x-ndjson; charset=utf-8',
  'cache-control': 'no-store, no-transform',
  'x-accel-buffering': 'no',
};

/** Answers with lines while the work goes on. What the work throws is written to the log and said in a sentence. */
export function answerLines(work: (listener: Listener) => Promise<ImportLine | undefined>): Response {
  let gone = false;
  const encoder = new TextEncoder();
  const body = new ReadableStream<Uint8Array>({
    start(controller) {
      const say = (line: ImportLine) => {
        if (!gone) controller.enqueue(encoder.encode(ndjsonLine(line)));
      };
      work({ say, isGone: () => gone })
        .catch((error: unknown) => {
          console.error('An imported file could not be dealt with:', error);
          return FAULT;
        })
        .then((last) => {
          if (last) say(last);
          if (!gone) controller.close();
        });
    },
    cancel() {
      gone = true;
    },
  });
  return new Response(body, { headers: HEADERS });
}

const FAULT: ImportLine = {
  step: 'refused',
  code: 'fault',
  sentence:
    'Something went wrong in Edgekeep; its window says what. Send the file again: each row counts once.',
};
