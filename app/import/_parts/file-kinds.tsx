import { Panel } from '@/app/_shared/ui';
import { buttonClass } from '@/app/_shared/ui/button';
import { IMPORT_KINDS, type ImportKind } from '@/lib/import/column';
import { COLUMNS } from '@/lib/import/columns';
import styles from './import.module.css';
import { KIND_WORDS } from './kind-words';

/** The three files: what each is for, its columns, an empty one to fill in and one with an example. */
export function FileKinds() {
  return (
    <Panel title="The three files">
      <div className="columns">
        {IMPORT_KINDS.map((kind) => (
          <FileKind key={kind} kind={kind} />
        ))}
      </div>
    </Panel>
  );
}

function FileKind({ kind }: { readonly kind: ImportKind }) {
  const { label, use } = KIND_WORDS[kind];
  return (
    <section className="stack" aria-labelledby={`kind-${kind}`}>
      <h3 id={`kind-${kind}`}>{label}</h3>
      <p>{use}</p>
      <div className="cluster">
        <a className={buttonClass('quiet')} href={`/import/empty/${kind}.csv`} download>
          Empty {kind} file
        </a>
        <a className={buttonClass('quiet')} href={`/examples/${kind}.csv`} download>
          Example {kind} file
        </a>
      </div>
      <details className={styles.fold}>
        <summary>Its columns</summary>
        <dl className={styles.help}>
          {COLUMNS[kind].map(({ key, help, example, required }) => (
            <div key={key}>
              <dt>
                {key}
                {required ? <span className="fine"> must be there</span> : null}
              </dt>
              <dd>
                {help}
                {example === '' ? null : <span className="fine"> For example: {example}</span>}
              </dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}
