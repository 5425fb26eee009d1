import Link from 'next/link';
import { count, dayText } from '@/app/_shared/format';
import { Panel, Table, VerdictMark } from '@/app/_shared/ui';
import { blockerSentences } from '@/app/plan/_parts/blocker-sentences';
import { chanceSentence, endsSentence } from '@/app/plan/_parts/life-words';
import type { LineVerdict } from '@/lib/capability/line-verdict';
import { endsToMake } from '@/lib/outlook/plan-facts';
import type { LineFacts, ShopFacts } from '@/lib/outlook/shop-facts';
import { capital } from '@/lib/text/capital';
import type { LineMove, MovedLines } from '@/lib/what-if/moved-lines';
import { lineWords, plainTools, sizeOfLine } from './move-words';
import styles from './what-if.module.css';

interface LineMovesProps {
  readonly moved: MovedLines;
  readonly before: ShopFacts;
  readonly after: ShopFacts;
}

/** Before and after side by side: first the lines whose answer moves, then those whose chance does, then how many stay. */
export function LineMoves({ moved, before, after }: LineMovesProps) {
  const { answers, chances, unmoved } = moved;
  const rest =
    unmoved === 0
      ? 'No other line is on the plan.'
      : `${count(unmoved, 'line stays', 'lines stay')} exactly as ${unmoved === 1 ? 'it is' : 'they are'}.`;
  return (
    <Panel title="Lines, before and after" aside={count(answers.length, 'answer moves', 'answers move')}>
      <div className={`stack ${styles.moves}`}>
        {answers.length === 0 ? (
          <p>No answer moves.</p>
        ) : (
          <MoveTable caption="Lines whose answer moves" moves={answers} before={before} after={after} full />
        )}
        {chances.length > 0 ? (
          <MoveTable
            caption="Lines whose chance moves, not their answer"
            captionShown
            moves={chances}
            before={before}
            after={after}
          />
        ) : null}
        <p className="quiet">{rest}</p>
      </div>
    </Panel>
  );
}

interface MoveTableProps {
  readonly caption: string;
  readonly captionShown?: boolean;
  readonly moves: readonly LineMove[];
  readonly before: ShopFacts;
  readonly after: ShopFacts;
  /** With what is in the way. */
  readonly full?: boolean;
}

function MoveTable({ caption, captionShown = false, moves, before, after, full = false }: MoveTableProps) {
  const lineOf = (facts: ShopFacts, lineId: string) => facts.lines.find(({ id }) => id === lineId);
  return (
    <Table
      caption={caption}
      captionShown={captionShown}
      rows={moves}
      rowKey={({ lineId }) => lineId}
      columns={[
        {
          key: 'line',
          header: 'Line',
          lead: true,
          cell: ({ lineId }) => (
            <LineCell lineId={lineId} line={lineOf(after, lineId) ?? lineOf(before, lineId)} facts={after} />
          ),
        },
        {
          key: 'before',
          header: 'As it stands',
          cell: (move) => <Answer verdict={move.before} facts={before} full={full} none="not on the plan" />,
        },
        {
          key: 'after',
          header: 'If it were so',
          cell: (move) => <Answer verdict={move.after} facts={after} full={full} none="off the plan" />,
        },
      ]}
    />
  );
}

function LineCell({
  lineId,
  line,
  facts,
}: {
  readonly lineId: string;
  readonly line: LineFacts | undefined;
  readonly facts: ShopFacts;
}) {
  const name = capital(lineWords(lineId, facts.lines));
  return (
    <div className="stack-tight">
      {lineId.startsWith('~') ? (
        <span>{name}</span>
      ) : (
        <Link href={`/plan/lines/${encodeURIComponent(lineId)}`} prefetch={false}>
          {name}
        </Link>
      )}
      <span className={styles.sub}>
        {line
          ? `${count(endsToMake(line), 'end')}, ${sizeOfLine(line, facts)}, ${dayText(line.startOnDay, facts.today)} to ${dayText(line.dueOnDay, facts.today)}`
          : null}
      </span>
    </div>
  );
}

interface AnswerProps {
  readonly verdict: LineVerdict | undefined;
  readonly facts: ShopFacts;
  readonly full: boolean;
  readonly none: string;
}

function Answer({ verdict, facts, full, none }: AnswerProps) {
  if (verdict === undefined) return <span className="quiet">{none}</span>;
  const chance = chanceSentence(verdict);
  const sentences = full ? blockerSentences(verdict.blockers, (id) => lineWords(id, facts.lines)) : [];
  return (
    <div className="stack-tight">
      <VerdictMark verdict={verdict.verdict} />
      {chance === '' ? null : (
        <span className="quiet">
          {chance}; {endsSentence(verdict)}
        </span>
      )}
      {sentences.map((sentence) => (
        <span key={sentence} className={styles.sub}>
          {plainTools(sentence)}
        </span>
      ))}
    </div>
  );
}
