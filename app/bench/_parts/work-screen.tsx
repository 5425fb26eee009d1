'use client';

import { type ReactNode, useState } from 'react';
import { Cautions } from '@/app/_shared/cautions';
import { Button } from '@/app/_shared/ui';
import type { BenchLine } from '@/lib/bench/bench-snapshot';
import { benchTallies } from '@/lib/bench/bench-tally';
import { edgeAnswer } from '@/lib/bench/edge-answer';
import { toolKey } from '@/lib/shop/tool-id';
import type { CutOperation } from '@/lib/shop/vocabulary';
import type { BenchState } from '../_offline/bench-store';
import type { Bench } from '../_offline/use-bench';
import styles from './bench.module.css';
import type { Scanned } from './bench-app';
import { CountedNow } from './counted-now';
import { EdgeCard } from './edge-card';
import { EdgeSheet, type Sheet } from './edge-sheet';
import { FinishSheet } from './finish-sheet';
import { NoEdge } from './no-edge';
import { OperationTabs } from './operation-tabs';
import { StoppedCard } from './stopped-card';
import { type StoppedTool, stopsUnderWay } from './stops-under-way';
import { UndoBar } from './undo-bar';
import { useWork } from './use-work';
import { WorkHead } from './work-head';

interface WorkScreenProps {
  readonly bench: Bench;
  readonly state: BenchState;
  readonly line: BenchLine;
  readonly scanned: Scanned | undefined;
  readonly onLeave: () => void;
  /** The box to scan into: under the thumb's own keys, so that verdict and counts stand on the first screen. */
  readonly scanBox: ReactNode;
}

/** One line at the vise: what is being cut, whether the edge lasts, the counts, and the way out of trouble. */
export function WorkScreen({ bench, state, line, scanned, onLeave, scanBox }: WorkScreenProps) {
  const work = useWork(bench, state, line);
  const inHand = line.edges.find(({ toolId }) => toolKey(toolId) === toolKey(scanned?.toolId ?? ''));
  const [operation, setOperation] = useState<CutOperation>(
    inHand?.operation ?? (line.coneEndsLeft > 0 ? 'cone' : 'thread'),
  );
  const [sheet, setSheet] = useState<Sheet>('count');
  const edges = line.edges.filter((edge) => edge.operation === operation);
  const [chosenId, setChosenId] = useState(inHand?.toolId);
  const [justStopped, setJustStopped] = useState<StoppedTool>();
  const [taken, setTaken] = useState(scanned);
  if (taken !== scanned) {
    setTaken(scanned);
    setSheet('count');
    if (inHand !== undefined) {
      setOperation(inHand.operation);
      setChosenId(inHand.toolId);
    }
  }
  const edge = edges.find(({ toolId }) => toolId === chosenId) ?? edges[0];
  const tallies = benchTallies(work.presses);
  const answered = line.edges.map((one) => ({
    edge: one,
    answer: edgeAnswer(one, work.countedOn(one.toolId), line.requiredProbability),
  }));
  const answer = answered.find((one) => one.edge === edge)?.answer;
  const waitingStop = stopsUnderWay(state).find(({ toolId }) => toolId === edge?.toolId);
  // Until a snapshot holds it, and after that as long as nothing else is in hand for this work.
  const stopped = waitingStop ?? (edge === undefined ? justStopped : undefined);
  return (
    <div className={styles.work}>
      <WorkHead line={line} />
      <OperationTabs
        operation={operation}
        onChoose={(chosen) => {
          setOperation(chosen);
          setSheet('count');
        }}
      />
      {stopped === undefined ? null : <StoppedCard stopped={stopped} />}
      {edge === undefined || answer === undefined ? (
        <NoEdge
          line={line}
          operation={operation}
          taken={state.outbox.flatMap(({ entry }) =>
            entry.kind === 'take' && entry.jobLineId === line.id ? [entry.toolId] : [],
          )}
        />
      ) : waitingStop !== undefined ? null : (
        <EdgeCard
          line={line}
          edge={edge}
          answer={answer}
          others={edges.filter(({ toolId }) => toolId !== edge.toolId)}
          onChoose={setChosenId}
        />
      )}
      <UndoBar work={work}>
        {edge === undefined ? null : (
          <CountedNow operation={operation} tally={tallies.find(({ toolId }) => toolId === edge.toolId)} />
        )}
      </UndoBar>
      {edge === undefined || waitingStop !== undefined ? null : (
        <EdgeSheet
          {...{ sheet, line, edge }}
          onSheet={setSheet}
          onPress={(press) => void work.press(press)}
          onStop={(how) => {
            setJustStopped({ toolId: edge.toolId, how });
            void work.stop(edge.toolId, how);
          }}
          onGiveBack={(condition) => void work.giveBack(edge.toolId, condition)}
        />
      )}
      {sheet === 'finish' ? (
        <FinishSheet
          tallies={tallies}
          asked={answered.map(({ edge: one, answer: { endsToCut } }) => ({ edge: one, endsToCut }))}
          onBack={() => setSheet('count')}
          onFinish={(final) => {
            void work.finish(final).then(() => setSheet('count'));
          }}
        />
      ) : sheet === 'count' ? (
        <div className={styles.foot}>
          <Button tone="primary" onClick={() => setSheet('finish')}>
            Finish
          </Button>
          <Button onClick={onLeave}>Other work</Button>
          {edge === undefined || waitingStop !== undefined ? null : (
            <Button onClick={() => setSheet('back')}>Give it back</Button>
          )}
          <a className={styles.link} href={`/accept/${encodeURIComponent(line.id)}`}>
            Gauge and accept
          </a>
        </div>
      ) : null}
      {scanBox}
      <Cautions at="bench" />
    </div>
  );
}
