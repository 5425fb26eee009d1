'use client';

/**
 * <CameraScan onScan={take} />            a button that opens the camera; the first code read is taken and the camera closed
 * <CameraScan onScan={take} keepOpen />   stays open for one label after the other
 * What is read goes where a hand scanner's typing goes. The picture never leaves the device.
 */
import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
import { Button } from '../ui/button';
import type { CameraFault } from './camera-fault';
import { runCamera } from './run-camera';
import styles from './scan.module.css';

interface CameraScanProps {
  readonly onScan: (text: string) => void;
  readonly keepOpen?: boolean;
  readonly label?: string;
  /** Where several stand on one page: what this one is for, after its label. */
  readonly purpose?: string;
}

export function CameraScan({ onScan, keepOpen = false, label = 'Use the camera', purpose }: CameraScanProps) {
  const hasScript = useSyncExternalStore(never, yes, no);
  const [isOpen, setIsOpen] = useState(false);
  const [fault, setFault] = useState<CameraFault>();
  if (!hasScript) return null;
  return (
    <div className={styles.camera}>
      {isOpen ? (
        <Viewer
          keepOpen={keepOpen}
          onScan={onScan}
          onEnd={(why) => {
            setIsOpen(false);
            setFault(why);
          }}
        />
      ) : (
        <div>
          <Button
            aria-label={purpose === undefined ? undefined : `${label} ${purpose}`}
            onClick={() => {
              setFault(undefined);
              setIsOpen(true);
            }}
          >
            {label}
          </Button>
        </div>
      )}
      {fault === undefined ? null : (
        <p role="alert">
          {fault.sentence} {fault.elsewhere ? <a href="/trust">How to open that address</a> : null}
        </p>
      )}
    </div>
  );
}

interface ViewerProps {
  readonly keepOpen: boolean;
  readonly onScan: (text: string) => void;
  readonly onEnd: (why: CameraFault | undefined) => void;
}

/** The camera's picture while it is open. It closes when it goes out of sight: with the page, or with what it stands in. */
function Viewer({ keepOpen, onScan, onEnd }: ViewerProps) {
  const video = useRef<HTMLVideoElement>(null);
  const [said, setSaid] = useState('Opening the camera…');
  const latest = useRef({ keepOpen, onScan, onEnd });
  useEffect(() => {
    latest.current = { keepOpen, onScan, onEnd };
  });

  useEffect(() => {
    if (video.current === null) return;
    const stop = new AbortController();
    const onText = (text: string) => {
      navigator.vibrate?.(60);
      setSaid(`Read ${text}.`);
      latest.current.onScan(text);
      if (!latest.current.keepOpen) latest.current.onEnd(undefined);
    };
    const onOpen = () => setSaid('Hold the code before the camera.');
    runCamera({ video: video.current, signal: stop.signal, onOpen, onText }).then((why) => {
      if (!stop.signal.aborted) latest.current.onEnd(why);
    });
    const closeWhenHidden = () => {
      if (document.hidden) latest.current.onEnd(undefined);
    };
    document.addEventListener('visibilitychange', closeWhenHidden);
    return () => {
      document.removeEventListener('visibilitychange', closeWhenHidden);
      stop.abort();
    };
  }, []);

  return (
    <>
      <video ref={video} className={styles.video} muted playsInline aria-label="What the camera sees" />
      <p role="status">{said}</p>
      <div>
        <Button onClick={() => onEnd(undefined)}>Stop the camera</Button>
      </div>
    </>
  );
}

const never = () => () => undefined;
const yes = () => true;
const no = () => false;
