import { number } from '@/app/_server/form-fields';
import { DEFAULT_READING_SETTINGS } from '@/lib/reading/reading-settings';
import { readingRows } from './_parts/reading-rows';

type Nested = { [key: string]: number | undefined | Nested };

/** What the form of the reading settings says, per cent turned into shares; the door judges it. */
export function readingOfForm(form: FormData): Nested {
  const settings: Nested = {};
  for (const { name, unit } of readingRows(DEFAULT_READING_SETTINGS).flatMap(({ fields }) => fields)) {
    const typed = number(form, name);
    const value = typed === undefined || unit !== '%' ? typed : Number((typed / 100).toPrecision(12));
    const [group, ...rest] = name.split('.');
    put(settings, group as string, rest, value);
  }
  return settings;
}

function put(into: Nested, key: string, rest: readonly string[], value: number | undefined): void {
  const [next, ...further] = rest;
  if (next === undefined) {
    into[key] = value;
    return;
  }
  const inner = typeof into[key] === 'object' ? into[key] : {};
  into[key] = inner;
  put(inner, next, further, value);
}
