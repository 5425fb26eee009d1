import { wasBench } from '@/app/bench/_offline/bench-db-name';
import type { BenchMail } from '@/app/bench/_offline/send-from-elsewhere';

export type { BenchMail };

interface Watcher {
  /** How it stands, as often as that may have changed; `sent` counts since the watch began. */
  readonly tell: (mail: BenchMail) => void;
  /** Something was sent: what the page shows may be older than that. Called also when the watch has ended meanwhile. */
  readonly onSent: () => void;
}

const AFTER_FAULT_MS = 20_000;
const NOTHING: BenchMail = { waiting: 0, sent: 0, reached: true, needsName: false, lookAgainMs: 0 };

/**
 * Sends what the bench left on this device, from any other page: when it opens, when network or person come back, and every so
 * often while something waits. On a device that was never a bench nothing is loaded. Gives back how to end it.
 */
export function watchBenchMail({ tell, onSent }: Watcher): () => void {
  let alive = true;
  let looking = false;
  let sent = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const say = (mail: BenchMail) => {
    if (alive) tell({ ...mail, sent });
  };
  const look = async () => {
    if (looking || !alive) return;
    looking = true;
    clearTimeout(timer);
    // A look that failed, the store shut or the network gone before its parts came, says nothing new.
    const mail = await lookOnce((waiting) => say({ ...NOTHING, waiting })).catch(() => undefined);
    looking = false;
    sent += mail?.sent ?? 0;
    if (mail !== undefined) say(mail);
    if (mail !== undefined && mail.sent > 0) onSent();
    if (alive && mail?.waiting !== 0) timer = setTimeout(look, mail?.lookAgainMs ?? AFTER_FAULT_MS);
  };
  const again = () => void look();
  for (const moment of ['online', 'focus']) addEventListener(moment, again);
  again();
  return () => {
    alive = false;
    clearTimeout(timer);
    for (const moment of ['online', 'focus']) removeEventListener(moment, again);
  };
}

async function lookOnce(onWaiting: (waiting: number) => void): Promise<BenchMail> {
  if (!(await wasBench())) return NOTHING;
  const { entriesWaiting, sendFromElsewhere } = await import('@/app/bench/_offline/send-from-elsewhere');
  const waiting = await entriesWaiting();
  if (waiting === 0) return NOTHING;
  onWaiting(waiting);
  return sendFromElsewhere();
}
