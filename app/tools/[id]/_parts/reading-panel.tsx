import { newStamp } from '@/app/_server/entry-stamp';
import { dayText } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { findingWords } from '@/app/_shared/words/finding-words';
import type { Outlook } from '@/lib/outlook/outlook';
import type { EdgeFacts } from '@/lib/outlook/shop-facts';
import { OverWiresForm, PitchForm } from './pitch-forms';
import { pitchThread } from './pitch-thread';
import { GradeForm, LandForm, RingForm } from './reading-forms';

interface ReadingPanelProps {
  readonly outlook: Outlook;
  readonly toolId: string;
  readonly role: 'blade' | 'die';
  readonly edge: EdgeFacts;
}

/** What inspection says of the edge in service: the readings so far, and writing down another. */
export function ReadingPanel({ outlook, toolId, role, edge }: ReadingPanelProps) {
  const { today, shop } = outlook.facts;
  const about = { toolId, today };
  const unit = shop?.units ?? 'in';
  const thread = pitchThread(outlook, toolId);
  const readings = [...(edge.readings ?? [])].reverse();
  return (
    <Panel title="Looked at">
      <div className="stack">
        {readings.length === 0 ? (
          <p className="quiet">
            Nobody has written down how this edge looks. A look can lengthen its estimate as well as shorten
            it.
          </p>
        ) : (
          <ul>
            {readings.map((reading) => (
              <li key={reading.entryId}>
                {dayText(reading.onDay, today)}: {findingWords(reading.finding)}
              </li>
            ))}
          </ul>
        )}
        <details>
          <summary>Write down how it looks</summary>
          <GradeForm {...about} stamp={newStamp()} />
        </details>
        {role === 'blade' ? (
          <details>
            <summary>Measure the wear land</summary>
            <LandForm {...about} stamp={newStamp()} unit={unit} />
          </details>
        ) : (
          <>
            <details>
              <summary>Rings on the last thread</summary>
              <RingForm {...about} stamp={newStamp()} />
            </details>
            <details>
              <summary>Last thread over three wires</summary>
              <OverWiresForm {...about} stamp={newStamp()} unit={unit} thread={thread} />
            </details>
            <details>
              <summary>Pitch diameter by thread micrometer</summary>
              <PitchForm {...about} stamp={newStamp()} unit={unit} thread={thread} />
            </details>
          </>
        )}
      </div>
    </Panel>
  );
}
