import Link from 'next/link';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { factorText } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { defaultBelief } from '@/lib/outlook/life-beliefs';
import type { Belief } from '@/lib/shop/belief';
import type { EdgeKind } from '@/lib/shop/vocabulary';
import { BeliefForm } from './belief-form';
import { beliefRows } from './belief-rows';

const KINDS: readonly { kind: EdgeKind; title: string }[] = [
  { kind: 'die', title: 'Dies' },
  { kind: 'blade', title: 'Blades' },
];

interface BeliefPanelProps {
  readonly beliefs: readonly Belief[];
  readonly stamps: Readonly<Record<EdgeKind, EntryStamp>>;
}

/** What is believed before the log speaks, and where it comes from: the shop itself, or this project's defaults. */
export function BeliefPanel({ beliefs, stamps }: BeliefPanelProps) {
  return (
    <Panel title="Believed before the log spoke" id="believed">
      <div className="stack">
        <p>
          Every estimate starts from these and from the{' '}
          <Link href="/setup">first guesses of how long each part lasts</Link>. The log takes over as edges
          wear out; the more of them have, the less these count.
        </p>
        {KINDS.map(({ kind, title }) => {
          const own = beliefs.find((belief) => belief.kind === kind);
          const belief = own ?? defaultBelief(kind);
          const { regrind } = belief;
          return (
            <details key={kind}>
              <summary>
                {title}:{' '}
                {own === undefined ? 'this project’s default, not set by your shop' : 'set by your shop'}
              </summary>
              <div className="stack">
                <p className="fine">
                  {own === undefined
                    ? 'These figures are this project’s default, from common practice without a source. '
                    : ''}
                  Give or take a factor: four times in five the true figure should lie within it, up or down.
                </p>
                <BeliefForm
                  kind={kind}
                  rows={beliefRows({ ...defaultBelief(kind), ...belief })}
                  unseen={
                    kind === 'die'
                      ? {
                          'regrind.typical': factorText(regrind.typical),
                          'regrind.giveOrTake': factorText(regrind.giveOrTake),
                        }
                      : {}
                  }
                  stamp={stamps[kind]}
                />
              </div>
            </details>
          );
        })}
      </div>
    </Panel>
  );
}
