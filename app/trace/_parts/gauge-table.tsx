import type { Route } from 'next';
import Link from 'next/link';
import { dayText } from '@/app/_shared/format';
import { Table, ToolId } from '@/app/_shared/ui';
import { turnsText } from '@/lib/acceptance/turns-text';
import { dayLabel } from '@/lib/calendar/day-text';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import type { TracedGauge, TracedLook } from '@/lib/trace/end-trace';

/** The gauges that had a say, with the certificate that was valid on the day, and the file where it is kept. */
export function GaugeTable({ look }: { readonly look: TracedLook }) {
  const used = look.gauges.filter(({ verdict }) => verdict !== 'not-used');
  return (
    <Table
      caption={`Gauges used on ${dayLabel(look.gaugedOnDay)}`}
      rows={used}
      rowKey={({ toolId, role }) => `${toolId} ${role}`}
      empty={<p>No gauge was recorded.</p>}
      columns={[
        {
          key: 'gauge',
          header: 'Gauge',
          lead: true,
          cell: ({ toolId, role }) => (
            <>
              <Link href={`/gauges/${encodeURIComponent(toolId)}` as Route} prefetch={false}>
                <ToolId id={toolId} />
              </Link>
              , {ROLE_LABEL[role]}
            </>
          ),
        },
        { key: 'said', header: 'Said', cell: said },
        { key: 'certificate', header: 'Certificate', cell: (gauge) => <CertificateWords gauge={gauge} /> },
        {
          key: 'valid',
          header: 'Valid',
          cell: ({ certificate }) => (certificate === null ? 'none that day' : validWords(certificate)),
        },
      ]}
    />
  );
}

function said({ role, verdict, turns }: TracedGauge): string {
  if (role === 'not-go-ring' && turns !== null)
    return `${verdict === 'pass' ? 'stopped' : 'ran on too far'}: ${turnsText(turns)}`;
  return verdict === 'pass' ? 'passed' : 'failed';
}

function validWords({ onDay, dueOnDay }: NonNullable<TracedGauge['certificate']>): string {
  return `${dayText(onDay)} to ${dueOnDay === null ? 'no due day' : dayText(dueOnDay)}`;
}

function CertificateWords({ gauge: { certificate } }: { readonly gauge: TracedGauge }) {
  if (certificate === null) return <>not on record</>;
  const { number, laboratory, file } = certificate;
  const words = [number === '' ? 'without a number' : number, laboratory].filter(Boolean).join(', ');
  return file ? <a href={`/gauges/files/${file.sha256}`}>{words}</a> : words;
}
