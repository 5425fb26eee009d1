import { Button, Field } from '@/app/_shared/ui';

/** Which gauge it is; the next page asks what was found. */
export function FindForm() {
  return (
    <form action="/recalls/new" method="get" className="stack" aria-label="Which gauge">
      <Field
        name="gauge"
        label="Gauge"
        hint="Scan or type its mark"
        required
        maxLength={40}
        autoComplete="off"
        autoCapitalize="characters"
      />
      <div>
        <Button type="submit">See what was accepted with it</Button>
      </div>
    </form>
  );
}
