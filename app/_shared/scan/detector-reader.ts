import type { CodeReader } from './code-reader';

/** As the W3C's Shape Detection draft names them. */
const FORMATS = ['qr_code', 'data_matrix', 'code_128'];

interface Detector {
  detect(source: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}

interface DetectorMaker {
  new (options: { formats: readonly string[] }): Detector;
  getSupportedFormats(): Promise<readonly string[]>;
}

/** The browser's own reader of codes, or undefined where it has none or lacks one of the three. */
export async function openDetectorReader(): Promise<CodeReader | undefined> {
  const maker: DetectorMaker | undefined = Reflect.get(globalThis, 'BarcodeDetector');
  if (maker === undefined) return undefined;
  const known = await maker.getSupportedFormats().catch((): readonly string[] => []);
  if (!FORMATS.every((format) => known.includes(format))) return undefined;
  const detector = new maker({ formats: FORMATS });
  return {
    read: async (video) => (await detector.detect(video))[0]?.rawValue,
    end: () => undefined,
  };
}
