import type { CodeReader } from './code-reader';
import { SCAN_WORKER } from './scan-parts';

/** Wide enough for a small Data Matrix a hand's breadth away, small enough to be read several times a second. */
const SIDE_MAX_PX = 1280;

interface Answer {
  readonly ready?: boolean;
  readonly id?: number;
  readonly text?: string;
}

/** Our own reader, in a worker so that the picture goes on while it looks. */
export async function openWorkerReader(): Promise<CodeReader> {
  const worker = new Worker(SCAN_WORKER);
  try {
    await ready(worker);
  } catch (error) {
    worker.terminate();
    throw error;
  }
  const canvas = document.createElement('canvas');
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  let asked = 0;
  return {
    read: async (video) => {
      if (pen === null || video.videoWidth === 0) return undefined;
      asked += 1;
      const { data, width, height } = pictureOf(video, canvas, pen);
      const answer = answerTo(worker, asked);
      worker.postMessage({ id: asked, pixels: data.buffer, width, height }, [data.buffer]);
      return answer;
    },
    end: () => worker.terminate(),
  };
}

function pictureOf(video: HTMLVideoElement, canvas: HTMLCanvasElement, pen: CanvasRenderingContext2D) {
  const scale = Math.min(1, SIDE_MAX_PX / Math.max(video.videoWidth, video.videoHeight));
  canvas.width = Math.round(video.videoWidth * scale);
  canvas.height = Math.round(video.videoHeight * scale);
  pen.drawImage(video, 0, 0, canvas.width, canvas.height);
  return pen.getImageData(0, 0, canvas.width, canvas.height);
}

function ready(worker: Worker): Promise<void> {
  return new Promise((resolve, reject) => {
    worker.onerror = () => reject(new Error('The code reader did not load.'));
    worker.onmessage = ({ data }: MessageEvent<Answer>) =>
      data.ready ? resolve() : reject(new Error('The code reader did not start.'));
  });
}

function answerTo(worker: Worker, id: number): Promise<string | undefined> {
  return new Promise((resolve) => {
    worker.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (data.id === id) resolve(data.text);
    };
  });
}
