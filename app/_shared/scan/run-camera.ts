import { CAMERA_ENDED, type CameraFault, cameraFault, NO_READER, NOT_SECURE } from './camera-fault';
import { freshText } from './fresh-text';
import { openCodeReader } from './open-code-reader';

const BETWEEN_LOOKS_MS = 120;

const WANTED: MediaStreamConstraints = {
  audio: false,
  video: { facingMode: { ideal: 'environment' }, width: { ideal: 1280 }, height: { ideal: 720 } },
};

interface Run {
  readonly video: HTMLVideoElement;
  /** Ends the run; the camera's light goes out. */
  readonly signal: AbortSignal;
  readonly onOpen: () => void;
  readonly onText: (text: string) => void;
}

/** Shows the camera in the video and gives each code held before it once, until told to stop. Gives back why it could not. */
export async function runCamera({ video, signal, onOpen, onText }: Run): Promise<CameraFault | undefined> {
  // Absent on plain http, whatever its type says.
  const devices = navigator.mediaDevices as MediaDevices | undefined;
  if (devices === undefined) return NOT_SECURE;
  let stream: MediaStream;
  try {
    stream = await devices.getUserMedia(WANTED);
  } catch (error) {
    return cameraFault(error);
  }
  const letGo = () => {
    for (const track of stream.getTracks()) track.stop();
  };
  signal.addEventListener('abort', letGo);
  try {
    if (signal.aborted) return undefined;
    video.srcObject = stream;
    await video.play();
    const reader = await openCodeReader().catch(() => undefined);
    if (reader === undefined) return NO_READER;
    onOpen();
    const fresh = freshText();
    while (!signal.aborted && stream.active) {
      const text = fresh(await reader.read(video).catch(() => undefined), performance.now());
      if (text !== undefined && !signal.aborted) onText(text);
      await new Promise((resolve) => setTimeout(resolve, BETWEEN_LOOKS_MS));
    }
    reader.end();
    return signal.aborted ? undefined : CAMERA_ENDED;
  } catch (error) {
    return signal.aborted ? undefined : cameraFault(error);
  } finally {
    letGo();
    // The next run may already show its own.
    if (video.srcObject === stream) video.srcObject = null;
  }
}
