import type { Route } from 'next';
import Link from 'next/link';
import { percent } from '@/app/_shared/format';
import type { CutInHand } from './cut-in-hand';
import { SURE_PERCENTS } from './read-sure';

interface SureChoiceProps {
  readonly toolId: string;
  readonly cut: CutInHand;
  /** What is shown now, and what the work in hand asks for. */
  readonly confidence: number;
  readonly required: number;
}

/** Safe ends at another confidence, for this look only: nothing is saved. The shop's own stands under Set-up. */
export function SureChoice({ toolId, cut, confidence, required }: SureChoiceProps) {
  const work: Record<string, string> = cut.line
    ? { line: cut.line.id }
    : {
        ...{ connection: cut.connection.id, material: cut.material.id },
        ...(cut.ends === undefined ? {} : { ends: String(cut.ends) }),
      };
  const to = (sure: number): Route =>
    `/tools/${encodeURIComponent(toolId)}?${new URLSearchParams({ ...work, sure: String(sure) })}` as Route;
  return (
    <nav className="cluster no-print" aria-label="How sure safe ends are">
      <span className="fine">
        Safe means finished {percent(confidence)} of the time
        {confidence === required ? ', as the shop asks' : `; the shop asks for ${percent(required)}`} (
        <Link href="/setup">Set-up</Link>). Show it for
      </span>
      {SURE_PERCENTS.map((sure) => (
        <Link
          key={sure}
          href={to(sure)}
          className="check"
          aria-current={sure / 100 === confidence ? 'true' : undefined}
          prefetch={false}
        >
          {sure / 100 === confidence ? <b>{sure} %</b> : `${sure} %`}
        </Link>
      ))}
    </nav>
  );
}
