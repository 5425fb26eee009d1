import { Button, Field } from '@/app/_shared/ui';

/** One box for everything by which an end can be asked for. A GET form: the address can be kept. */
export function TraceSearch({ typed }: { readonly typed: string }) {
  return (
    <form action="/trace" className="stack-tight no-print" aria-label="Trace">
      <Field
        name="q"
        label="Mark of the end, job line and end number, heat, gauge or tool"
        hint="S-18 end 2, or J-057.1 end 2, or a heat, or any ID"
        required
        maxLength={80}
        autoComplete="off"
        spellCheck={false}
        enterKeyHint="search"
        defaultValue={typed}
      />
      <div>
        <Button type="submit" tone="primary">
          Trace it
        </Button>
      </div>
    </form>
  );
}
