import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { beforeAll, expect, it } from 'vitest';
import { SCAN_WORKER } from '@/app/_shared/scan/scan-parts';
import { GET } from '@/app/bench/scan/[version]/[part]/route';
import { CODE_KINDS } from '@/lib/labels/code-kind';
import { cameraFilm } from '../../support/fake-camera';

const WIDTH = 640;
const HEIGHT = 480;

interface Told {
  readonly ready?: boolean;
  readonly id?: number;
  readonly text?: string;
}

/** The served worker, run as it stands in a room of its own, with the parts that the program serves. */
function startWorker() {
  const told: Told[] = [];
  let wake: () => void = () => undefined;
  let onMessage: (event: { data: object }) => void = () => undefined;
  const part = async (url: string) => {
    const [version = '', name = ''] = url.split('/').slice(-2);
    return GET(new Request('http://shop/'), { params: Promise.resolve({ version, part: name }) });
  };
  const room: Record<string, unknown> = {
    ...{ console, URL, WebAssembly, Uint8ClampedArray, TextDecoder, TextEncoder, setTimeout },
    WorkerGlobalScope: class {},
    ImageData: class {
      constructor(
        readonly data: Uint8ClampedArray,
        readonly width: number,
        readonly height: number,
      ) {}
    },
    Blob,
    fetch: part,
    location: { href: `http://shop${SCAN_WORKER}` },
    importScripts: () =>
      runInContext(readFileSync('node_modules/zxing-wasm/dist/iife/reader/index.js', 'utf8'), context),
    addEventListener: (_type: string, listener: typeof onMessage) => {
      onMessage = listener;
    },
    postMessage: (message: Told) => {
      told.push(message);
      wake();
    },
  };
  room.self = room;
  const context = createContext(room);
  const next = async (): Promise<Told> => {
    while (told.length === 0)
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
    return told.shift() ?? {};
  };
  runInContext(readFileSync('public/bench/scan-worker.js', 'utf8'), context);
  return { next, send: (data: object) => onMessage({ data }) };
}

let worker: ReturnType<typeof startWorker>;
beforeAll(async () => {
  worker = startWorker();
  expect(await worker.next()).toEqual({ ready: true });
});

/** The first picture of the film, as a canvas gives it. */
function pixelsOf(film: Buffer): ArrayBuffer {
  const from = film.indexOf('FRAME\n') + 6;
  const pixels = new Uint8ClampedArray(WIDTH * HEIGHT * 4).fill(255);
  film.subarray(from, from + WIDTH * HEIGHT).forEach((grey, at) => {
    pixels.fill(grey, at * 4, at * 4 + 3);
  });
  return pixels.buffer;
}

// source: other-software. The reader is another program than the one that draws our codes.
it.each(CODE_KINDS)('reads a label of ours: %s', async (kind) => {
  worker.send({ id: 7, pixels: pixelsOf(cameraFilm(kind, 'D-38-11')), width: WIDTH, height: HEIGHT });
  expect(await worker.next()).toEqual({ id: 7, text: 'D-38-11' });
});

it('says that there is nothing to read, and goes on', async () => {
  const empty = new Uint8ClampedArray(WIDTH * HEIGHT * 4).fill(140).buffer;
  worker.send({ id: 8, pixels: empty, width: WIDTH, height: HEIGHT });
  expect(await worker.next()).toEqual({ id: 8, text: undefined });
});
