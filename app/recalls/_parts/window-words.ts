import { dayText } from '@/app/_shared/format';
import type { RecallWindow } from '@/lib/recall/recall-window';

type Window = Pick<RecallWindow, 'evidence' | 'evidenceOnDay'>;

/** What the window opens at, and why: never the due date. */
export function windowWords({ evidence, evidenceOnDay }: Window, today?: string): string {
  const day = evidenceOnDay === null ? '' : dayText(evidenceOnDay, today);
  switch (evidence) {
    case 'as-found':
      return `since ${day}, when a calibration found it good`;
    case 'interim':
      return `since ${day}, when a documented check found it good`;
    case 'as-left':
      return `since ${day}, when a laboratory left it good; the certificate after that did not say how it was found`;
    case 'none':
      return 'since its first use: nothing shows that it was ever good';
  }
}
