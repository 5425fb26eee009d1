'use client';

import { useState } from 'react';
import { Cautions } from '@/app/_shared/cautions';
import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { Button, HandText, SizeText } from '@/app/_shared/ui';
import type { BenchLine } from '@/lib/bench/bench-snapshot';
import { type BenchPress, benchTallies } from '@/lib/bench/bench-tally';
import { edgeAnswer } from '@/lib/bench/edge-answer';
import { toolKey } from '@/lib/shop/tool-id';
import type { CutOperation } from '@/lib/shop/vocabulary';
import type { BenchState } from '../_offline/bench-store';
import type { Bench } from '../_offline/use-bench';
import styles from './bench.module.css';
import { CountPad } from './count-pad';
import { EdgeCard } from './edge-card';
import { FinishSheet } from './finish-sheet';
import { RejectSheet } from './reject-sheet';
import { StopSheet } from './stop-sheet';
import { TurnCounter } from './turn-counter';
import { UndoBar } from './undo-bar';
import { useWork } from './use-work';

interface WorkScreenProps {
  readonly bench: Bench;
  readonly state: BenchState;
  readonly line: BenchLine;
  readonly scannedId: string | undefined;
  readonly onLeave: () => void;
}

type Sheet = 'count' | 'reject' | 'stop' | 'turns' | 'finish';

/** One line at the vise: what is being cut, whether the edge lasts, the counts, and the way out of trouble. */
export function WorkScreen({ bench, state, line, scannedId, onLeave }: WorkScreenProps) {
  const work = useWork(bench, state, line);
  const scanned = line.edges.find(({ toolId }) => toolKey(toolId) === toolKey(scannedId ?? ''));
  const [operation, setOperation] = useState<CutOperation>(
    scanned?.operation ?? (line.coneEndsLeft > 0 ? 'cone' : 'thread'),
  );
  const [sheet, setSheet] = useState<Sheet>('count');
  const edges = line.edges.filter((edge) => edge.operation === operation);
  const [chosenId, setChosenId] = useState(scanned?.toolId);
  const edge = edges.find(({ toolId }) => toolId === chosenId) ?? edges[0];
  const tallies = benchTallies(work.presses);
  const press = (added: BenchPress) => void work.press(added);
  const answer =
    edge === undefined ? undefined : edgeAnswer(edge, work.countedOn(edge.toolId), line.requiredProbability);
  return (
    <div className="stack">
      <header className={styles.head}>
        <ConnectionEnd connection={line.connection} pxPerIn={64} decorative />
        <div>
          <h1>
            <SizeText
              odIn={line.connection.odNum / line.connection.odDen}
              service={line.connection.service}
              unit
            />
            , <HandText hand={line.connection.hand} />
          </h1>
          <p>
            {line.materialName}
            {line.heat === '' ? '' : `, heat ${line.heat}`} · {line.id}
          </p>
        </div>
      </header>
      <fieldset className={styles.tabs}>
        <legend className="vh">What is being cut</legend>
        {(['cone', 'thread'] as const).map((known) => (
          <button
            key={known}
            type="button"
            aria-pressed={operation === known}
            onClick={() => {
              setOperation(known);
              setSheet('count');
            }}
          >
            {known === 'cone' ? 'Cone' : 'Thread'}
          </button>
        ))}
      </fieldset>
      {edge === undefined || answer === undefined ? (
        <p role="alert" className={styles.none}>
          No {operation === 'cone' ? 'blade' : 'die'} is out for this line.{' '}
          <a href={`/crib/issue/${encodeURIComponent(line.id)}`}>Make the kit</a>
        </p>
      ) : (
        <>
          <EdgeCard
            line={line}
            edge={edge}
            answer={answer}
            others={edges.filter(({ toolId }) => toolId !== edge.toolId)}
            onChoose={setChosenId}
          />
          {sheet === 'count' ? (
            <CountPad
              edge={edge}
              tally={tallies.find(({ toolId }) => toolId === edge.toolId)}
              onPress={press}
              onSheet={setSheet}
            />
          ) : null}
          {sheet === 'reject' ? (
            <RejectSheet
              operation={operation}
              onBack={() => setSheet('count')}
              onCause={(cause) => {
                press({ kind: 'reject', toolId: edge.toolId, operation, cause });
                setSheet('count');
              }}
            />
          ) : null}
          {sheet === 'stop' ? (
            <StopSheet
              toolId={edge.toolId}
              onBack={() => setSheet('count')}
              onStop={(how) => {
                void work.stop(edge.toolId, how);
                setSheet('count');
              }}
            />
          ) : null}
          {sheet === 'turns' ? (
            <TurnCounter
              turnsPerEnd={line.turnsPerEnd}
              onBack={() => setSheet('count')}
              onEnd={() => press({ kind: 'ends', toolId: edge.toolId, operation, ends: 1 })}
            />
          ) : null}
        </>
      )}
      <UndoBar work={work} />
      {sheet === 'finish' ? (
        <FinishSheet
          tallies={tallies}
          asked={line.edges.map((one) => ({
            edge: one,
            ...edgeAnswer(one, work.countedOn(one.toolId), line.requiredProbability),
          }))}
          onBack={() => setSheet('count')}
          onFinish={(final) => {
            void work.finish(final).then(() => setSheet('count'));
          }}
        />
      ) : (
        <div className={styles.foot}>
          <Button tone="primary" onClick={() => setSheet('finish')}>
            Finish
          </Button>
          <Button onClick={onLeave}>Other work</Button>
          <a className={styles.accept} href={`/accept/${encodeURIComponent(line.id)}`}>
            Gauge and accept
          </a>
        </div>
      )}
      <Cautions at="bench" />
    </div>
  );
}
