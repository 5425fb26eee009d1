import { LENGTH_UNIT_SIGNS } from '@/app/_shared/form/option-lists';
import { measureText, wireText } from '@/app/_shared/format';
import { MarginWords } from '@/app/_shared/thread/margin-words';
import { Button, ButtonLink, KeyValue, NumberField, Panel } from '@/app/_shared/ui';
import type { Refusal } from '@/lib/result';
import { type ExternalLimits, externalThreadLimits } from '@/lib/thread/limits';
import { bestWireMm, overWiresMm, pitchDiameterFromWiresMm, wireRangeMm } from '@/lib/thread/three-wire';
import { inToMm } from '@/lib/units/inch-mm';
import { type ThreadQuestion, type WireQuestion, wireQuestion } from './thread-question';

type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** Measuring over three wires: which wires, what the limits measure over them, and what was read. */
export function WiresPanel({
  question,
  asked,
}: {
  readonly question: ThreadQuestion;
  readonly asked: Asked;
}) {
  const { tpi, threadClass } = question;
  const limits = externalThreadLimits(question, threadClass);
  const bestMm = bestWireMm(tpi);
  const expectedMm = overWiresMm({ pitchDiameterMm: inToMm(limits.basicPitchIn), tpi, wireMm: bestMm });
  const wires = wireQuestion(asked, { tpi, bestMm, expectedMm });
  return (
    <Panel title="Over three wires" id="wires">
      <div className="columns">
        <Figures
          tpi={tpi}
          limits={limits}
          wires={wires.ok ? wires.value : { wireMm: bestMm, overWiresMm: undefined }}
        />
        <WiresForm question={question} asked={asked} refusal={wires.ok ? undefined : wires.refusal} />
      </div>
    </Panel>
  );
}

function Figures({
  tpi,
  limits,
  wires,
}: {
  readonly tpi: number;
  readonly limits: ExternalLimits;
  readonly wires: WireQuestion;
}) {
  const { wireMm, overWiresMm: readMm } = wires;
  const both = (mm: number) => `${measureText(mm, 'in')} (${measureText(mm, 'mm')})`;
  const wire = (mm: number) => `${wireText(mm, 'in')} (${wireText(mm, 'mm')})`;
  const over = (pitchIn: number) => both(overWiresMm({ pitchDiameterMm: inToMm(pitchIn), tpi, wireMm }));
  const { leastMm, mostMm } = wireRangeMm(tpi);
  const pitchDiameterMm =
    readMm === undefined ? undefined : pitchDiameterFromWiresMm({ overWiresMm: readMm, tpi, wireMm });
  return (
    <div className="stack">
      <KeyValue
        items={[
          { label: 'Best wire', value: wire(bestWireMm(tpi)) },
          { label: 'Wires that seat', value: `from ${wire(leastMm)} to ${wire(mostMm)}` },
          { label: 'Wires here', value: wire(wireMm) },
          { label: 'Over them, most', value: over(limits.pitchMaxIn) },
          { label: 'Over them, least', value: over(limits.pitchMinIn) },
          ...(pitchDiameterMm === undefined
            ? []
            : [{ label: 'Pitch diameter read', value: both(pitchDiameterMm) }]),
        ]}
      />
      {pitchDiameterMm === undefined ? null : (
        <MarginWords
          reading={{
            pitchDiameterMm,
            minMm: inToMm(limits.pitchMinIn),
            maxMm: inToMm(limits.pitchMaxIn),
          }}
          unit="in"
        />
      )}
      <p className="fine">
        M = E − 0.86603 P + 3 W. The lead angle adds at most five hundred-thousandths of an inch on tube
        threads and is left out.
      </p>
    </div>
  );
}

function WiresForm({
  question,
  asked,
  refusal,
}: {
  readonly question: ThreadQuestion;
  readonly asked: Asked;
  readonly refusal: Refusal | undefined;
}) {
  const value = (name: string) => (typeof asked[name] === 'string' ? asked[name] : '');
  const kept = { size: value('size'), tpi: value('tpi'), class: question.threadClass, hand: question.hand };
  const fields = (['wire', 'wireUnit', 'over', 'overUnit'] as const).map(
    (name) => [name, value(name)] as const,
  );
  const meant = refusal?.meant;
  const mend =
    meant === undefined || refusal?.field === undefined
      ? undefined
      : new URLSearchParams({
          ...kept,
          ...Object.fromEntries(fields),
          [refusal.field]: meant.figure,
          [`${refusal.field}Unit`]: meant.unit,
        });
  const length = (name: 'wire' | 'over', label: string, hint: string) => (
    <NumberField
      id={`wires-${name}`}
      name={name}
      label={label}
      hint={hint}
      entry="fraction"
      units={{ name: `${name}Unit`, options: LENGTH_UNIT_SIGNS, defaultValue: value(`${name}Unit`) || 'in' }}
      defaultValue={value(name)}
      error={refusal?.field === name ? refusal.sentence : undefined}
    />
  );
  return (
    <form action="/threads#wires" className="stack" aria-label="What was read over wires">
      {Object.entries(kept).map(([name, kind]) => (
        <input key={name} type="hidden" name={name} value={kind} />
      ))}
      {length('wire', 'Wires', 'Left empty: the best wire')}
      {length('over', 'Measured over them', 'Clean thread, wires of one set')}
      <div className="cluster">
        <Button type="submit">Show</Button>
        {mend === undefined || meant === undefined ? null : (
          <ButtonLink tone="primary" href={`/threads?${mend}#wires`}>
            Yes, {meant.figure} {meant.unit}
          </ButtonLink>
        )}
      </div>
    </form>
  );
}
