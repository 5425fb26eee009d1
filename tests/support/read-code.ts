import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, type ReadInputBarcodeFormat, readBarcodes } from 'zxing-wasm/reader';

const wasmPath = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
const wasm = readFileSync(wasmPath);
/** The reader's own file, from the disk: it never looks for it on the network. */
prepareZXingModule({
  overrides: { wasmBinary: wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.length) as ArrayBuffer },
});

/** What an independent reader finds in a picture (a PNG, or pixels), with the kind of each code. */
export async function readCodes(
  picture: Uint8Array | { data: Uint8ClampedArray; width: number; height: number },
  formats: ReadInputBarcodeFormat[] = [],
): Promise<{ format: string; text: string }[]> {
  const input =
    picture instanceof Uint8Array
      ? new Blob([picture.slice()])
      : ({ ...picture, colorSpace: 'srgb' } as ImageData);
  const found = await readBarcodes(input, { formats, tryHarder: true, maxNumberOfSymbols: 255 });
  return found.filter(({ isValid }) => isValid).map(({ format, text }) => ({ format, text }));
}
