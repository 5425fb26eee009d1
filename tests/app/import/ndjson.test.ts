import fc from 'fast-check';
import { expect, it } from 'vitest';
import { ndjsonLine, readNdjson } from '@/app/_import/ndjson';

/** A body that arrives in pieces of these sizes, over and over. */
function bodyOf(text: string, sizes: readonly number[]): ReadableStream<Uint8Array> {
  const bytes = new TextEncoder().encode(text);
  let [at, turn] = [0, 0];
  return new ReadableStream({
    pull(controller) {
      if (at >= bytes.length) return controller.close();
      const size = sizes[turn % sizes.length] ?? 1;
      controller.enqueue(bytes.slice(at, at + size));
      at += size;
      turn += 1;
    },
  });
}

async function valuesOf(body: ReadableStream<Uint8Array>): Promise<unknown[]> {
  const values: unknown[] = [];
  for await (const value of readNdjson(body)) values.push(value);
  return values;
}

// source: identity. What is written as lines is read back the same, however the bytes are cut.
it('reads what it wrote, however the network cuts it', async () => {
  const values = fc.array(fc.jsonValue({ maxDepth: 2 }), { maxLength: 12 });
  const sizes = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 6 });
  await fc.assert(
    fc.asyncProperty(values, sizes, async (written, cuts) => {
      const read = await valuesOf(bodyOf(written.map(ndjsonLine).join(''), cuts));
      expect(JSON.stringify(read)).toBe(JSON.stringify(written));
    }),
    { numRuns: 200 },
  );
});

it('keeps line breaks and fractions inside a value on one line', async () => {
  const sentence = 'row 17,\nends: “9⁄16” is not a whole number';
  // source: published. RFC 8259, section 7: control characters in a string are escaped.
  expect(ndjsonLine({ sentence }).indexOf('\n')).toBe(ndjsonLine({ sentence }).length - 1);
  expect(await valuesOf(bodyOf(ndjsonLine({ sentence }), [1]))).toEqual([{ sentence }]);
});

it('does not give a last line that was cut off on the way', async () => {
  expect(await valuesOf(bodyOf('{"step":"reading"}\n{"step":"do', [5]))).toEqual([{ step: 'reading' }]);
});

it('passes on that the connection broke', async () => {
  const body = new ReadableStream<Uint8Array>({
    start(controller) {
      controller.error(new TypeError('network'));
    },
  });
  await expect(valuesOf(body)).rejects.toThrow('network');
});

it('lets go of the connection when nobody reads on', async () => {
  let cancelled = false;
  const body = new ReadableStream<Uint8Array>({
    pull: (controller) => controller.enqueue(new TextEncoder().encode('1\n')),
    cancel: () => {
      cancelled = true;
    },
  });
  for await (const value of readNdjson(body)) {
    expect(value).toBe(1);
    break;
  }
  expect(cancelled).toBe(true);
});
