'use client';

import { useEffect, useState } from 'react';
import { newDeviceId } from '@/app/_shared/form/device-id';
import { tidyToolId, toolKey } from '@/lib/shop/tool-id';
import { addToOutbox } from '../_offline/bench-store';
import { registerWorker } from '../_offline/register-worker';
import { useBench } from '../_offline/use-bench';
import styles from './bench.module.css';
import { BenchScan, toolAddress } from './bench-scan';
import { LineChoice } from './line-choice';
import { SyncLine } from './sync-line';
import { WorkScreen } from './work-screen';

/** One scan: scanning the same tool again is another one. */
export interface Scanned {
  readonly toolId: string;
}

/** The bench on this device: choose the work, or scan any tool of it, and count. */
export function BenchApp({ personName }: { readonly personName: string | null }) {
  const bench = useBench();
  const [opensOffline, setOpensOffline] = useState<boolean>();
  const [lineId, setLineId] = useState<string>();
  const [scanned, setScanned] = useState<Scanned>();
  const [stranger, setStranger] = useState<string>();

  useEffect(() => {
    registerWorker().then(setOpensOffline, () => setOpensOffline(false));
    const asked = new URLSearchParams(location.search);
    setLineId(asked.get('line') ?? undefined);
    const tool = asked.get('tool');
    if (tool !== null) setScanned({ toolId: tool });
  }, []);

  const go = (line: string | undefined, tool?: string) => {
    setLineId(line);
    setScanned(tool === undefined ? undefined : { toolId: tool });
    setStranger(undefined);
    history.replaceState(null, '', line === undefined ? '/bench' : `/bench?line=${encodeURIComponent(line)}`);
    scrollTo(0, 0);
  };
  const lines = bench.state?.snapshot?.lines ?? [];
  const scan = (typed: string) => {
    const line = lines.find(
      ({ id, edges, gauges, fluids }) =>
        id === typed ||
        [...edges, ...gauges, ...fluids].some((tool) => toolKey(tool.toolId) === toolKey(typed)),
    );
    if (line !== undefined) return go(line.id, tidyToolId(typed));
    // Nothing in hand and a network: straight to the tool. With work in hand the choice to leave it is the person's.
    if (lineId === undefined && bench.last?.reached)
      return location.assign(toolAddress(tidyToolId(typed), undefined));
    setStranger(tidyToolId(typed));
  };
  const line = lines.find(({ id }) => id === lineId);
  const take = async (toolId: string, forLineId: string) => {
    const entry = { kind: 'take', toolId, jobLineId: forLineId } as const;
    const stamp = { entryId: newDeviceId(), deviceAtMs: Date.now() };
    await addToOutbox({ entry: { ...entry, ...stamp }, heldUntilMs: 0 });
    setStranger(undefined);
    await bench.sync();
  };
  const scanBox = (
    <BenchScan
      onScan={scan}
      onTake={(toolId, id) => void take(toolId, id)}
      {...{ stranger, lineId: line?.id }}
    />
  );
  return (
    <div className={line === undefined ? styles.page : `${styles.page} bench-work`}>
      {line === undefined ? <h1 className={styles.title}>Bench</h1> : null}
      <SyncLine bench={bench} opensOffline={opensOffline} personName={personName} />
      {line === undefined ? scanBox : null}
      {bench.state === undefined ? (
        <p role="status">Opening what is kept on this device…</p>
      ) : line === undefined ? (
        <LineChoice bench={bench} personName={personName} onChoose={(id) => go(id)} />
      ) : (
        <WorkScreen
          key={line.id}
          bench={bench}
          state={bench.state}
          line={line}
          scanned={scanned}
          onLeave={() => go(undefined)}
          scanBox={scanBox}
        />
      )}
    </div>
  );
}
