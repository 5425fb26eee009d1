import { Cautions } from '@/app/_shared/cautions';
import { ToolId } from '@/app/_shared/ui';
import styles from './bench.module.css';
import { toolAddress } from './bench-scan';
import { losesPieces, type StoppedTool } from './stops-under-way';

/** A tool that was just stopped: no verdict and nothing to count with, and what is to be found before anything goes on. */
export function StoppedCard({ stopped }: { readonly stopped: StoppedTool }) {
  const { toolId } = stopped;
  const pieces = losesPieces(stopped);
  return (
    <section className={styles.card} aria-label={`${toolId} is stopped`}>
      <p className={styles.tool}>
        <ToolId id={toolId} />
      </p>
      <p className={styles.figures}>
        Stopped: do not cut with it. {pieces ? 'Its pieces are to be found.' : 'It waits for a look.'}
      </p>
      {pieces ? (
        <>
          <Cautions at="broken" />
          {stopped.waiting ? null : (
            <a className={styles.link} href={toolAddress(toolId, undefined)}>
              Pieces found?
            </a>
          )}
        </>
      ) : null}
    </section>
  );
}
