// Reads the codes of labels in pictures of the camera, away from the page. Plain JavaScript, served as it stands, with a
// policy of its own: it alone may compile the reader (app/_start/page-policy.mjs). See app/_shared/scan/worker-reader.ts.
const folder = `/bench/scan/${new URL(self.location.href).searchParams.get('v')}`;
importScripts(`${folder}/reader.js`);

const kinds = { formats: ['QRCode', 'DataMatrix', 'Code128'], tryHarder: true, maxNumberOfSymbols: 1 };

ZXingWASM.prepareZXingModule({
  overrides: { locateFile: () => `${folder}/reader.wasm` },
  fireImmediately: true,
}).then(
  () => postMessage({ ready: true }),
  () => postMessage({ ready: false }),
);

self.addEventListener('message', async (event) => {
  const { id, pixels, width, height } = event.data;
  const picture = new ImageData(new Uint8ClampedArray(pixels), width, height);
  const found = await ZXingWASM.readBarcodes(picture, kinds).catch(() => []);
  postMessage({ id, text: found.find(({ isValid }) => isValid)?.text });
});
