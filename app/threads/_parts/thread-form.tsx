import { HAND_OPTIONS } from '@/app/_shared/form/option-lists';
import { Button, Field, NumberField, Select } from '@/app/_shared/ui';
import type { Refusal } from '@/lib/result';

/** Which thread: size, threads per inch, class and hand. A GET form, so the address can be kept and sent. */
export function ThreadForm({
  fields,
  refusal,
}: {
  readonly fields: Readonly<Record<'size' | 'tpi' | 'class' | 'hand', string>>;
  readonly refusal: Refusal | undefined;
}) {
  const error = (name: string) => (refusal?.field === name ? refusal.sentence : undefined);
  return (
    <form action="/threads" className="stack" aria-label="Which thread">
      <div className="columns">
        <Field
          name="size"
          label="Size, inches"
          hint="9/16, 1 or 0.190"
          required
          maxLength={24}
          defaultValue={fields.size}
          error={error('size')}
        />
        <NumberField
          name="tpi"
          label="Threads per inch"
          entry="decimal"
          unit="TPI"
          required
          defaultValue={fields.tpi}
          error={error('tpi')}
        />
        <Select
          name="class"
          label="Class"
          defaultValue={fields.class}
          options={[
            { value: '1A', label: '1A, loose' },
            { value: '2A', label: '2A, the usual' },
            { value: '3A', label: '3A, close' },
          ]}
        />
        <Select name="hand" label="Hand" defaultValue={fields.hand} options={HAND_OPTIONS} />
      </div>
      <div>
        <Button type="submit" tone="primary">
          Work it out
        </Button>
      </div>
    </form>
  );
}
