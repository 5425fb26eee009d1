import { Field, Select, ToolId } from '@/app/_shared/ui';
import styles from '@/app/crib/_parts/crib.module.css';
import type { CountTool } from './count-sheet';

const OPTIONS = {
  missing: [
    { value: 'left', label: 'Leave it as it is; somebody looks for it' },
    { value: 'lost', label: 'Lost, until it is found' },
  ],
  unexpected: [
    { value: 'in-crib', label: 'It lies here: into the crib' },
    { value: 'left', label: 'Leave the record as it is' },
  ],
} as const;

/** One difference of a stock-take: what it is, what becomes of it, and why. */
export function DifferenceFields({
  tool,
  kind,
}: {
  readonly tool: CountTool;
  readonly kind: 'missing' | 'unexpected';
}) {
  return (
    <fieldset className={styles.difference}>
      <legend>
        <ToolId id={tool.id} /> {tool.label}:{' '}
        {kind === 'missing' ? 'not found' : `found here, but ${tool.stands} in the record`}
      </legend>
      <input type="hidden" name="variance" value={`${kind} ${tool.id}`} />
      <Select
        id={`outcome-${tool.id}`}
        name={`outcome ${tool.id}`}
        label="What becomes of it"
        options={OPTIONS[kind]}
        defaultValue={OPTIONS[kind][0].value}
      />
      <Field id={`reason-${tool.id}`} name={`reason ${tool.id}`} label="Why" required maxLength={200} />
    </fieldset>
  );
}
