/** Why the camera does not help, and what to do instead. `elsewhere`: it would on the shop's https address. */
export interface CameraFault {
  readonly sentence: string;
  readonly elsewhere: boolean;
}

/** The names that the W3C's Media Capture and Streams gives to what a browser refuses. */
const SENTENCES: Readonly<Record<string, string>> = {
  NotAllowedError:
    'This page may not use the camera. Allow it in the browser’s settings for this address, or type the ID.',
  NotFoundError: 'This device has no camera. Use the hand scanner, or type the ID.',
  OverconstrainedError: 'This device has no camera that fits. Use the hand scanner, or type the ID.',
  NotReadableError: 'Something else holds the camera. Close it and try again, or type the ID.',
};

/** Said of what went wrong while the camera was opened. */
export function cameraFault(error: unknown): CameraFault {
  const name = error instanceof Error ? error.name : '';
  const sentence = SENTENCES[name] ?? 'The camera did not start. Try again, or type the ID.';
  return { sentence, elsewhere: false };
}

export const NOT_SECURE: CameraFault = {
  sentence: 'Browsers lend the camera only to an https address. Type the ID, or use the hand scanner.',
  elsewhere: true,
};

export const NO_READER: CameraFault = {
  sentence: 'The code reader did not load. Try again with network, or type the ID.',
  elsewhere: false,
};

export const CAMERA_ENDED: CameraFault = {
  sentence: 'The camera stopped. Open it again, or type the ID.',
  elsewhere: false,
};
