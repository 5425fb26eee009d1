/** Reads the codes of our labels (QR, Data Matrix, Code 128) in what the camera shows. */
export interface CodeReader {
  /** The text of a code in the picture as it stands, or undefined when there is none to be read. */
  readonly read: (video: HTMLVideoElement) => Promise<string | undefined>;
  readonly end: () => void;
}
