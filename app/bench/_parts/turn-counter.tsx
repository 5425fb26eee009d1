'use client';

import { useState } from 'react';
import { whole } from '@/app/_shared/format';
import { turnCue } from '@/lib/bench/turn-cue';
import styles from './bench.module.css';

interface TurnCounterProps {
  readonly turnsPerEnd: number;
  readonly onEnd: () => void;
  readonly onBack: () => void;
}

/** The thread in hand, turn by turn: when to clear the chips, when to oil, when it is long enough. */
export function TurnCounter({ turnsPerEnd, onEnd, onBack }: TurnCounterProps) {
  const [turn, setTurn] = useState(0);
  const cue = turnCue(turn, turnsPerEnd);
  return (
    <section className={styles.sheet} aria-label="Turns of the thread in hand">
      <p className={styles.turns} role="status">
        <b className="num">{whole(cue.turn)}</b> of about {whole(cue.turns)} turns
      </p>
      <p className={styles.cue}>{cueWords(cue)}</p>
      <div className={styles.causes}>
        {cue.done ? (
          <button
            type="button"
            className={styles.big}
            onClick={() => {
              onEnd();
              setTurn(0);
            }}
          >
            Thread done: +1
          </button>
        ) : (
          <button type="button" className={styles.big} onClick={() => setTurn(turn + 1)}>
            One turn forward
          </button>
        )}
        <button type="button" onClick={() => setTurn(Math.max(0, turn - 1))}>
          One less
        </button>
        <button type="button" onClick={onBack}>
          Back
        </button>
      </div>
      <p className="fine">Left hand: forward is anticlockwise. The length gauge decides, not the count.</p>
    </section>
  );
}

function cueWords({ done, clearChips, oil }: ReturnType<typeof turnCue>): string {
  if (done) return 'Long enough by the count: gauge the length.';
  const chips = clearChips ? 'Quarter turn back, clear the chips.' : 'Start square, left hand.';
  return oil ? `${chips} Oil.` : chips;
}
