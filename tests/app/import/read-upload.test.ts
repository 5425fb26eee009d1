import { describe, expect, it } from 'vitest';
import { columnsText, type ImportLine, readColumnsText } from '@/app/_import/import-line';
import { readBody } from '@/app/_import/read-body';
import { readUpload } from '@/app/_import/read-upload';

const utf8 = new TextEncoder();

function post(body: BodyInit | null, headers: Record<string, string> = {}): Request {
  return new Request('http://shop.local/import/check', {
    method: 'POST',
    body,
    headers,
    duplex: 'half',
  } as never);
}

describe('readBody', () => {
  it('gives the bytes, in one piece or in many, and none for a missing body', async () => {
    expect(await readBody(post(null), 10)).toEqual(new Uint8Array());
    expect(await readBody(post(new Uint8Array([1, 2, 3])), 3)).toEqual(new Uint8Array([1, 2, 3]));
    const pieces = new Blob(['ab']).stream().pipeThrough(
      new TransformStream<Uint8Array, Uint8Array>({
        flush: (controller) => controller.enqueue(utf8.encode('cd')),
      }),
    );
    expect(await readBody(post(pieces), 4)).toEqual(utf8.encode('abcd'));
  });

  it('refuses a huge declared length without reading a byte', async () => {
    let pulled = 0;
    const body = new ReadableStream<Uint8Array>(
      {
        pull(controller) {
          pulled += 1;
          controller.enqueue(utf8.encode('x'));
        },
      },
      { highWaterMark: 0 },
    );
    expect(await readBody(post(body, { 'content-length': '52428801' }), 52_428_800)).toBeNull();
    expect(pulled).toBe(0);
  });

  it('stops a body that is longer than it said', async () => {
    let pulled = 0;
    const endless = new ReadableStream<Uint8Array>({
      pull(controller) {
        pulled += 1;
        controller.enqueue(new Uint8Array(1000));
      },
    });
    expect(await readBody(post(endless, { 'content-length': '5' }), 10_000)).toBeNull();
    expect(pulled).toBeLessThan(20);
  });
});

describe('readUpload', () => {
  const header = 'tool_id,cut_on,size,service,material,ends';
  const row = 'D-1,2026-03-14,9/16,high,316,12';

  async function read(text: string | Uint8Array, chosen?: string, kind: 'cuts' | 'jobs' = 'cuts') {
    const lines: ImportLine[] = [];
    const bytes = typeof text === 'string' ? utf8.encode(text) : text;
    const mapping = chosen === undefined ? null : readColumnsText(chosen);
    const listener = { say: (line: ImportLine) => void lines.push(line), isGone: () => false };
    return { file: await readUpload({ kind, bytes, mapping }, listener), lines };
  }

  it('says how the columns are read, then how far it is', async () => {
    const { file, lines } = await read([header, ...Array(2500).fill(row)].join('\n'));
    expect(lines.map((line) => (line.step === 'reading' ? line.rowsDone : line.step))).toEqual([
      'columns',
      1000,
      2000,
      2500,
    ]);
    expect(file.ok && file.value.rowsTotal).toBe(2500);
  });

  it('lets others have their turn while it reads', async () => {
    let turns = 0;
    const count = () => {
      turns += 1;
      timer = setImmediate(count);
    };
    let timer = setImmediate(count);
    await read([header, ...Array(5000).fill(row)].join('\n'));
    clearImmediate(timer);
    expect(turns).toBeGreaterThanOrEqual(4);
  });

  it('stops when nobody waits any more', async () => {
    let said = 0;
    const say = () => {
      said += 1;
    };
    const bytes = utf8.encode([header, ...Array(50_000).fill(row)].join('\n'));
    const file = await readUpload({ kind: 'cuts', bytes, mapping: null }, { say, isGone: () => said >= 3 });
    expect(file.ok).toBe(false);
    expect(said).toBe(3);
  });

  it('names what a file of the wrong kind lacks and the kind that it fits', async () => {
    const { file, lines } = await read(`${header}\n${row}`, undefined, 'jobs');
    expect(!file.ok && file.refusal.code).toBe('missing');
    const [first] = lines;
    expect(first?.step === 'columns' && first.columns.fits).toEqual(['cuts']);
  });

  it('reads the columns that were chosen, and refuses hostile choices in a sentence', async () => {
    const text = `Werkzeug,cut_on,size,service,material,ends\n${row}`;
    expect((await read(text)).file.ok).toBe(false);
    expect((await read(text, 'tool_id,cut_on,size,service,material,ends')).file.ok).toBe(true);
    const twice = await read(text, 'tool_id,cut_on,size,service,material,ends'.replace('cut_on', 'tool_id'));
    expect(!twice.file.ok && twice.file.refusal.sentence).toContain('cut_on');
    expect((await read(text, '__proto__,constructor,,,,')).file.ok).toBe(false);
    expect((await read(text, ','.repeat(100_000))).file.ok).toBe(false);
  });

  it('refuses a binary file and a missing one in a sentence', async () => {
    const binary = await read(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3, 0, 200]));
    expect(!binary.file.ok && binary.file.refusal.sentence).toContain('not a text file');
    const none = await read(new Uint8Array());
    expect(!none.file.ok && none.file.refusal.sentence).toContain('empty');
  });
});

// source: identity. What is put into the address is read back the same.
it('columns go through an address and back', () => {
  for (const mapping of [[null], ['tool_id', null, 'ends', null], [null, null, 'size']])
    expect(readColumnsText(columnsText(mapping))).toEqual(mapping);
});
