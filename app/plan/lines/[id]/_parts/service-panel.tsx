import Link from 'next/link';
import { newStamp } from '@/app/_server/entry-stamp';
import { Cautions } from '@/app/_shared/cautions';
import { dayText } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import type { LineRow } from '@/db/queries/jobs';
import { serviceCautionPlaces } from '@/lib/cautions';
import { fluidWork } from '@/lib/outlook/fluid-facts';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { DUTY_LABEL, HELD_FOR_CLEANING } from '@/lib/shop/duty';
import { CleaningForm } from './cleaning-form';

interface ServicePanelProps {
  readonly line: LineRow;
  readonly facts: ShopFacts;
}

/** What the material or the service asks beside the usual: the fluid, separate brushes, the cleaning step and its hold. */
export function ServicePanel({ line, facts }: ServicePanelProps) {
  const work = fluidWork(facts, line);
  const places = serviceCautionPlaces(work);
  const assembles = line.operations.includes('assemble');
  if (places.length === 0 && work.duty === 'ordinary' && !assembles) return null;
  const query = `material=${encodeURIComponent(line.materialId)}&duty=${work.duty}`;
  return (
    <Panel title={work.duty === 'ordinary' ? 'Mind' : `For ${DUTY_LABEL[work.duty]}`}>
      <div className="stack">
        {places.map((place) => (
          <Cautions key={place} at={place} />
        ))}
        {places.length === 0 && work.duty === 'ordinary' ? null : (
          <p>
            <Link href={`/fluid?${query}`}>Which fluid may be used, and which bottle first</Link>
          </p>
        )}
        {HELD_FOR_CLEANING.includes(work.duty) ? <Cleaning line={line} today={facts.today} /> : null}
        {assembles ? <Cautions at="assembly" signals="hidden" /> : null}
      </div>
    </Panel>
  );
}

/** The cleaning step: held until somebody has written it down. Nothing here says that anything is clean. */
function Cleaning({ line, today }: { readonly line: LineRow; readonly today: string }) {
  const { cleanedOnDay } = line;
  return (
    <>
      {cleanedOnDay ? (
        <p>
          <strong>A cleaning is written down for {dayText(cleanedOnDay, today)}.</strong> What it is worth is
          for the procedure and for whoever checks it to say.
        </p>
      ) : (
        <p>
          <strong>On hold until its cleaning is written down.</strong> After the last cut: clean by the
          approved procedure, check as it says, cap, then write it down here. The job cannot be closed as done
          before.
        </p>
      )}
      <details open={!cleanedOnDay}>
        <summary>{cleanedOnDay ? 'Write another cleaning down' : 'Write the cleaning down'}</summary>
        <CleaningForm
          jobId={line.jobId}
          lineId={line.id}
          lineNo={line.lineNo}
          stamp={newStamp()}
          today={today}
        />
      </details>
    </>
  );
}
