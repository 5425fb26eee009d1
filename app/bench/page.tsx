import type { Metadata } from 'next';
import { currentActor } from '@/app/_server/session';
import { BenchApp } from './_parts/bench-app';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Bench' };

/** The vise: scan, see whether it lasts, count, stop, finish. Opens and works without network. */
export default async function BenchPage() {
  const actor = await currentActor();
  return (
    <div className="page bench">
      <BenchApp personName={actor?.name ?? null} />
      <noscript>
        <p>
          The bench keeps its counts on the device and needs scripts for that. Without them log what was cut
          on the page of the tool.
        </p>
      </noscript>
    </div>
  );
}
