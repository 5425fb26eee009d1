import Link from 'next/link';
import { chanceWords, count, listWords, percent } from '@/app/_shared/format';
import { Panel, ToolId } from '@/app/_shared/ui';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import { type EdgePolicy, hasWay } from '@/lib/capability/value-policy';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { capital } from '@/lib/text/capital';

/** For work that cannot be remade: the two ways in which each edge may be used, and which of them is open. */
export function ValuePanel({ row }: { readonly row: PlanRow }) {
  const { valuePolicy } = row.verdict;
  if (valuePolicy === undefined || valuePolicy.length === 0 || row.endsToMake === 0) return null;
  return (
    <Panel title="Work that cannot be remade">
      <div className="stack">
        <p>
          An edge that is done in mid-line spoils an end that cannot be replaced. So one edge must cut all of
          it with {percent(row.requiredProbability)}, or a new edge is used after a practice end on scrap tube
          of the same heat
          {row.line.heat === '' ? '' : ` (${row.line.heat})`}.
        </p>
        <div className="columns">
          {valuePolicy.map((policy) => (
            <EdgeWays
              key={policy.kind}
              policy={policy}
              required={row.requiredProbability}
              lineId={row.line.id}
            />
          ))}
        </div>
        <p className="fine">
          Each edge by itself, as it stands today; lines before this one may use it first.
        </p>
      </div>
    </Panel>
  );
}

interface EdgeWaysProps {
  readonly policy: EdgePolicy;
  readonly required: number;
  readonly lineId: string;
}

function EdgeWays({ policy, required, lineId }: EdgeWaysProps) {
  const { surest, isSureEnough, newToolIds, newOnOrder } = policy;
  const fresh = [
    ...newToolIds.slice(0, 4),
    ...(newOnOrder > 0 ? [`${count(newOnOrder, 'piece')} on order, likely there by the start`] : []),
  ];
  return (
    <div className="stack-tight">
      <h3>{capital(ROLE_LABEL[policy.kind])}</h3>
      <p>
        <b>One sure edge: {isSureEnough ? 'open' : 'closed'}.</b>{' '}
        {surest === null ? (
          'None is here to use.'
        ) : (
          <>
            <Link
              href={`/tools/${encodeURIComponent(surest.toolId)}?line=${encodeURIComponent(lineId)}`}
              prefetch={false}
            >
              <ToolId id={surest.toolId} />
            </Link>{' '}
            cuts all of it with {chanceWords(surest.pFinishes)}
            {isSureEnough ? '.' : `; ${percent(required)} is asked for.`}
          </>
        )}
      </p>
      <p>
        <b>A new edge and a practice end: {fresh.length > 0 ? 'open' : 'closed'}.</b>{' '}
        {fresh.length > 0 ? `${listWords(fresh)}.` : 'No edge here is unused.'}
      </p>
      {hasWay(policy) ? null : <p>Order a new one below, or start later.</p>}
    </div>
  );
}
