import type { Route } from 'next';
import Link from 'next/link';
import { dayText } from '@/app/_shared/format';
import { EmptyState, Panel, Table, ToolId } from '@/app/_shared/ui';
import type { GaugeEvidence } from '@/lib/gauge/evidence';
import { CertificateUpload } from './certificate-upload';
import { conformityWords, errorWords, limitWords, resultWords, uncertaintyWords } from './evidence-words';

interface EvidencePanelProps {
  readonly toolId: string;
  readonly evidence: readonly GaugeEvidence[];
  readonly today: string;
}

/** As many as are looked at; the rest is folded away. */
const SHOWN = 6;

/** Every certificate and every check, newest first. */
export function EvidencePanel({ toolId, evidence, today }: EvidencePanelProps) {
  const newest = evidence.toReversed();
  const latest = evidence.findLast(({ kind }) => kind === 'calibration');
  return (
    <Panel title="Certificates and checks">
      <div className="stack">
        <EvidenceTable rows={newest.slice(0, SHOWN)} today={today} />
        {newest.length > SHOWN ? (
          <details>
            <summary>Earlier: {newest.length - SHOWN}</summary>
            <EvidenceTable rows={newest.slice(SHOWN)} today={today} />
          </details>
        ) : null}
        {latest !== undefined && latest.file === null ? (
          <CertificateUpload toolId={toolId} calibrationId={latest.entryId} />
        ) : null}
      </div>
    </Panel>
  );
}

function EvidenceTable({ rows, today }: { readonly rows: readonly GaugeEvidence[]; readonly today: string }) {
  return (
    <Table
      caption="Certificates and checks, newest first"
      rows={rows}
      rowKey={({ entryId }) => entryId}
      empty={
        <EmptyState title="Nothing on record yet">
          Record its last certificate: the verdict and the due day are enough.
        </EmptyState>
      }
      columns={[
        { key: 'day', header: 'On', lead: true, cell: ({ onDay }) => dayText(onDay, today) },
        { key: 'what', header: 'What', cell: (one) => <What one={one} /> },
        { key: 'result', header: 'Result', cell: (one) => <Result one={one} /> },
        { key: 'figures', header: 'Figures', cell: (one) => <Figures one={one} /> },
        { key: 'file', header: 'File', cell: (one) => <File one={one} /> },
      ]}
    />
  );
}

function What({ one }: { readonly one: GaugeEvidence }) {
  if (one.kind === 'interim')
    return one.againstToolId === null ? (
      <>check in the shop</>
    ) : (
      <>
        check on{' '}
        <Link href={`/gauges/${encodeURIComponent(one.againstToolId)}` as Route} prefetch={false}>
          <ToolId id={one.againstToolId} />
        </Link>
      </>
    );
  const { certificate = '', laboratory = '' } = one.calibration ?? {};
  return <>{[certificate === '' ? 'calibration' : certificate, laboratory].filter(Boolean).join(', ')}</>;
}

function Result({ one }: { readonly one: GaugeEvidence }) {
  const sure = conformityWords(one);
  return (
    <>
      {resultWords(one)}
      {sure === '' ? null : <div className="fine">{sure}</div>}
    </>
  );
}

function Figures({ one }: { readonly one: GaugeEvidence }) {
  const [row] = one.calibration?.features ?? [];
  if (row === undefined) return <>none</>;
  const same = row.asLeftError === row.asFoundError || row.asLeftError === null;
  return (
    <>
      {row.feature}: {errorWords(row, row.asFoundError)}
      {same ? '' : `, left ${errorWords(row, row.asLeftError)}`}
      <span className="fine">
        {' '}
        {limitWords(row)}, {uncertaintyWords(row)}
      </span>
    </>
  );
}

function File({ one }: { readonly one: GaugeEvidence }) {
  if (one.file === null) return <>none</>;
  const name = one.file.name === '' ? 'certificate' : one.file.name;
  return (
    <a href={`/gauges/files/${one.file.sha256}`} download>
      {name}
    </a>
  );
}
