'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/app/_shared/ui';
import styles from './crib.module.css';

interface StopScreenProps {
  readonly headline: string;
  readonly sentence: string;
  readonly onSeen: () => void;
  /** What its button says. */
  readonly seenText?: string;
}

/**
 * The whole screen says that a scanned thing must not go. A scanner's Enter does not close it: the focus rests on the
 * words, and a press on the button, or Escape, is needed.
 */
export function StopScreen({
  headline,
  sentence,
  onSeen,
  seenText = 'Put it aside, go on',
}: StopScreenProps) {
  const words = useRef<HTMLDivElement>(null);
  useEffect(() => words.current?.focus(), []);
  return (
    <div
      className={styles.stop}
      role="alertdialog"
      aria-modal="true"
      aria-labelledby="stop-headline"
      aria-describedby="stop-sentence"
      onKeyDown={(event) => {
        if (event.key === 'Escape') onSeen();
      }}
    >
      <div ref={words} tabIndex={-1} className={styles.stopWords}>
        <p id="stop-headline" className={styles.stopHeadline}>
          {headline}
        </p>
        <p id="stop-sentence" className={styles.stopSentence}>
          <Whole words={sentence} />
        </p>
      </div>
      <Button onClick={onSeen}>{seenText}</Button>
    </div>
  );
}

/** Words in which nothing is torn at a dash: an ID is looked for on the shelf as it is marked. */
function Whole({ words }: { readonly words: string }) {
  const dashed = /\S*-\S*/.exec(words);
  if (dashed === null) return words;
  const [id] = dashed;
  return (
    <>
      {words.slice(0, dashed.index)}
      <span className={styles.whole}>{id}</span>
      <Whole words={words.slice(dashed.index + id.length)} />
    </>
  );
}
