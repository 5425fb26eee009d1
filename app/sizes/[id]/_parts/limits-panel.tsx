import { measureText, wireText } from '@/app/_shared/format';
import { LimitsView } from '@/app/_shared/thread/limits-view';
import { gaugeWords, lookAlikeWords, threadSpelledOut } from '@/app/_shared/thread/thread-words';
import { ButtonLink, KeyValue, Panel } from '@/app/_shared/ui';
import type { Connection } from '@/lib/shop/noun';
import { type ConnectionLimits, connectionLimits } from '@/lib/thread/connection-limits';
import { threadDesignation } from '@/lib/thread/designation';
import { wireRangeMm } from '@/lib/thread/three-wire';
import { fractionAscii } from '@/lib/units/fraction-text';

/** The thread of a row: its name spelled out, its limits of size, the wires it is measured over, and what each gauge guards. */
export function LimitsPanel({ connection }: { readonly connection: Connection }) {
  const { odNum, odDen, tpi, hand, threadClass, notGoTurnsMax } = connection;
  const thread = { sizeIn: { num: odNum, den: odDen }, tpi, hand };
  const known = connectionLimits(connection);
  const designation = threadDesignation(thread).screenText;
  const query = { size: fractionAscii(thread.sizeIn), tpi: String(tpi), hand };
  return (
    <Panel title="The thread" id="thread" aside={`${designation}, class ${threadClass}`}>
      {known === undefined ? (
        <p>
          The formulas know classes 1A, 2A and 3A. For class {threadClass || 'not written down'} take the
          limits from the fitting maker’s manual.
        </p>
      ) : (
        <Known known={known} thread={thread} designation={designation} />
      )}
      <KeyValue items={[...gaugeWords(hand, notGoTurnsMax)]} />
      <p className="fine">
        {known === undefined ? '' : `${basisWords(known)} `}Class and limits by the fitting maker’s manual:
        confirm them there. A thread inside its limits is one check of several.
      </p>
      <p className="no-print">
        <ButtonLink href={`/threads?${new URLSearchParams({ ...query, class: known?.threadClass ?? '2A' })}`}>
          Work it out for other wires or another class
        </ButtonLink>
      </p>
    </Panel>
  );
}

function Known({
  known,
  thread,
  designation,
}: {
  readonly known: ConnectionLimits;
  readonly thread: Parameters<typeof threadSpelledOut>[0];
  readonly designation: string;
}) {
  const { limits, threadClass } = known;
  const lookAlike = lookAlikeWords(thread, limits.series);
  const both = (mm: number) => `${measureText(mm, 'in')} (${measureText(mm, 'mm')})`;
  const wire = (mm: number) => `${wireText(mm, 'in')} (${wireText(mm, 'mm')})`;
  const { leastMm, mostMm } = wireRangeMm(thread.tpi);
  return (
    <>
      <div className="stack-tight">
        <p>{threadSpelledOut(thread, limits.series)}.</p>
        {lookAlike ? <p className="quiet">{lookAlike}</p> : null}
      </div>
      <LimitsView limits={limits} designation={designation} threadClass={threadClass} />
      <KeyValue
        items={[
          { label: 'Best wire', value: wire(known.bestWireMm) },
          { label: 'Wires that seat', value: `from ${wire(leastMm)} to ${wire(mostMm)}` },
          {
            label: 'Over best wires',
            value: `${both(known.overWiresMinMm)} to ${both(known.overWiresMaxMm)}`,
          },
        ]}
      />
    </>
  );
}

function basisWords({ limits }: ConnectionLimits): string {
  const oneDiameter = Math.abs(limits.engagementIn - limits.basicMajorIn) < 1e-9;
  return `By the formulas of ASME B1.1 for ${oneDiameter ? 'one diameter' : 'nine pitches'} of engagement, rounded in the order of its tables.`;
}
