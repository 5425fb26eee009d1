/** One value as a line of an answer that is read while it is still being written. */
export function ndjsonLine(value: unknown): string {
  return `${JSON.stringify(value)}\n`;
}

/**
 * The values of such an answer as they come in, however the network cuts the lines. A last line without its end was cut
 * off on the way and is not given.
 */
export async function* readNdjson<Value>(body: ReadableStream<Uint8Array>): AsyncGenerator<Value> {
  const reader = body.getReader();
  const decoder = new TextDecoder();
  let rest = '';
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      const lines = (rest + decoder.decode(value, { stream: true })).split('\n');
      rest = lines.pop() ?? '';
      for (const line of lines) if (line.trim() !== '') yield JSON.parse(line) as Value;
    }
  } finally {
    await reader.cancel().catch(() => undefined);
  }
}
