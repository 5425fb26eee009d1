import type { Route } from 'next';
import Link from 'next/link';
import { newStamp } from '@/app/_server/entry-stamp';
import type { StudyState } from '@/app/_server/study';
import { count, listWords, whole } from '@/app/_shared/format';
import { Panel, Table, ToolId, VerdictMark } from '@/app/_shared/ui';
import { LookAgain } from '@/app/_shared/ui/look-again';
import {
  againstRest,
  flagRule,
  groupName,
  holdWords,
  logRankWords,
  lowerWords,
} from '@/app/_shared/words/compare-words';
import { KIND_NOUN } from '@/app/_shared/words/wear-words';
import type { LotToHold, ShopComparisons } from '@/lib/outlook/compare-groups';
import { HoldForm } from './hold-form';

const SHOWN_AT_FIRST = 6;

/** Whether anything in it asks for a decision. */
export function asksForDecision({ found }: StudyState<ShopComparisons>): boolean {
  const flagged = found?.judged.some(({ flag }) => flag.verdict === 'flagged') ?? false;
  return flagged || (found?.holds.length ?? 0) > 0;
}

/** Lots, suppliers, heats and fluids beside the rest: what stands out, with its evidence, and what does not. */
export function ComparisonPanel({ state }: { state: StudyState<ShopComparisons> }) {
  const { found, working, failed } = state;
  return (
    <Panel title="Lots, suppliers, heats and fluids" id="lots">
      <div className="stack">
        {working ? (
          <p role="status" className="quiet">
            {found === undefined
              ? 'They are being compared. Look again in a minute; this page does so by itself.'
              : 'Something was entered since; they are being compared anew. The figures below are from before: look again in a minute.'}
            {found === undefined ? <LookAgain /> : null}
          </p>
        ) : null}
        {failed ? (
          <p role="status">
            They could not be compared this time. It is tried again after the next entry in the log.
          </p>
        ) : null}
        {found === undefined ? null : <Found found={found} />}
      </div>
    </Panel>
  );
}

function Found({ found }: { found: ShopComparisons }) {
  const { judged, tooLittle, holds } = found;
  const flagged = judged.filter(({ flag }) => flag.verdict === 'flagged');
  const few = tooLittle === 0 ? '' : ` ${count(tooLittle, 'group')} more had too little in the log to say.`;
  if (judged.length + holds.length === 0)
    return (
      <p>
        Nothing can be compared yet: no lot, supplier, heat or fluid has enough edges worn out in the log.
      </p>
    );
  return (
    <>
      {holds.map((hold) => (
        <Hold key={hold.lot} hold={hold} />
      ))}
      <p>
        {flagged.length === 0
          ? `No lot, supplier, heat or fluid stands out as dying early among ${count(judged.length, 'group')} looked at.`
          : `${listWords(flagged.map(({ flag }) => groupName(flag)))}: lasts less than the rest.`}
        {few}
      </p>
      <GroupTable
        rows={judged.slice(0, SHOWN_AT_FIRST)}
        caption="Groups that last least, with the evidence"
      />
      {judged.length > SHOWN_AT_FIRST ? (
        <details>
          <summary>The other {count(judged.length - SHOWN_AT_FIRST, 'group')}</summary>
          <GroupTable rows={judged.slice(SHOWN_AT_FIRST)} caption="The other groups" />
        </details>
      ) : null}
      <p className="fine">
        {flagRule(judged.length)} Life and chance allow for size, part, material and regrinds; the log-rank
        test holds each edge only against edges of its own part and regrind. An edge counts for the fluid that
        cut more than half of its wear, by the bottles named in the log; where none is named, for none.
      </p>
    </>
  );
}

function Hold({ hold }: { hold: LotToHold }) {
  const reason = `Lot ${hold.lot}: early deaths in it. Set aside to be looked at with a loupe.`;
  return (
    <div className="stack-tight">
      <p>
        <VerdictMark verdict="at-risk">lot {hold.lot}: hold it?</VerdictMark> {holdWords(hold)} Look at what
        is left of it with a loupe now, before it goes out.
      </p>
      {hold.leftIds.map((id) => (
        <div key={id} className="cluster">
          <Link href={`/tools/${encodeURIComponent(id)}` as Route} prefetch={false}>
            <ToolId id={id} />
          </Link>
          <HoldForm toolId={id} reason={reason} stamp={newStamp()} />
        </div>
      ))}
    </div>
  );
}

type Row = ShopComparisons['judged'][number];

function GroupTable({ rows, caption }: { rows: readonly Row[]; caption: string }) {
  return (
    <Table
      caption={caption}
      rows={rows}
      rowKey={({ kind, flag }) => `${kind} ${flag.groupedBy} ${flag.effect.groupId}`}
      empty={<p className="quiet">No group has enough in the log to be compared yet.</p>}
      columns={[
        {
          key: 'group',
          header: 'Group',
          lead: true,
          cell: ({ kind, flag }) => `${groupName(flag)}, ${KIND_NOUN[kind][1]}`,
        },
        {
          key: 'verdict',
          header: 'Verdict',
          cell: ({ flag }) =>
            flag.verdict === 'flagged' ? (
              <VerdictMark verdict="at-risk">lasts less</VerdictMark>
            ) : (
              'no clear difference'
            ),
        },
        { key: 'life', header: 'Life', cell: ({ flag }) => againstRest(flag) },
        { key: 'chance', header: 'Chance that it lasts less', cell: ({ flag }) => lowerWords(flag) },
        { key: 'p', header: 'Log-rank test', cell: ({ flag }) => logRankWords(flag) },
        { key: 'edges', header: 'Edges', numeric: true, cell: ({ flag }) => whole(flag.effect.edges) },
        { key: 'worn', header: 'Worn out', numeric: true, cell: ({ flag }) => whole(flag.effect.worn) },
        { key: 'ends', header: 'Ends', numeric: true, cell: ({ flag }) => whole(flag.effect.ends) },
      ]}
    />
  );
}
