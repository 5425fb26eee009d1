import { Panel } from '@/app/_shared/ui';
import { buttonClass } from '@/app/_shared/ui/button';

/** Everything back out again, in the columns that are imported. */
export function CsvOut() {
  return (
    <Panel title="CSV out">
      <p>What the record holds now, in the same columns. Importing such a file again changes nothing.</p>
      <div className="cluster">
        <a className={buttonClass('quiet')} href="/export/tools.csv" download>
          All tools
        </a>
        <a className={buttonClass('quiet')} href="/export/cuts.csv" download>
          The whole cut log
        </a>
        <a className={buttonClass('quiet')} href="/export/jobs.csv" download>
          All jobs
        </a>
      </div>
    </Panel>
  );
}
