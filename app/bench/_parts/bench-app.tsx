'use client';

import { useEffect, useState } from 'react';
import { tidyToolId, toolKey } from '@/lib/shop/tool-id';
import { registerWorker } from '../_offline/register-worker';
import { useBench } from '../_offline/use-bench';
import styles from './bench.module.css';
import { BenchScan } from './bench-scan';
import { LineChoice } from './line-choice';
import { SyncLine } from './sync-line';
import { WorkScreen } from './work-screen';

/** The bench on this device: choose the work, or scan any tool of it, and count. */
export function BenchApp({ personName }: { readonly personName: string | null }) {
  const bench = useBench();
  const [opensOffline, setOpensOffline] = useState<boolean>();
  const [lineId, setLineId] = useState<string>();
  const [toolId, setToolId] = useState<string>();
  const [stranger, setStranger] = useState<string>();

  useEffect(() => {
    registerWorker().then(setOpensOffline, () => setOpensOffline(false));
    const asked = new URLSearchParams(location.search);
    setLineId(asked.get('line') ?? undefined);
    setToolId(asked.get('tool') ?? undefined);
  }, []);

  const go = (line: string | undefined, tool?: string) => {
    setLineId(line);
    setToolId(tool);
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
    if (line === undefined) return setStranger(tidyToolId(typed));
    go(line.id, tidyToolId(typed));
  };
  const line = lines.find(({ id }) => id === lineId);
  return (
    <>
      {line === undefined ? <h1 className={styles.title}>Bench</h1> : null}
      <SyncLine bench={bench} opensOffline={opensOffline} personName={personName} />
      <BenchScan onScan={scan} stranger={stranger} />
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
          scannedId={toolId}
          onLeave={() => go(undefined)}
        />
      )}
    </>
  );
}
