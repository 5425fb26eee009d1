import { checked, number, text } from '@/app/_server/form-fields';
import { ok, type Refusal, type Result, refuse } from '@/lib/result';
import { typedConnectionKey } from '@/lib/shop/typed-connection';
import { OPERATIONS, SERVICES } from '@/lib/shop/vocabulary';

/** Name of a field of one line of the job form: "line2-ends". */
export function lineField(lineNo: number, name: string): string {
  return `line${lineNo}-${name}`;
}

/** Reads the lines of the job form, in order of their numbers; a line in which nothing was chosen or typed is left out. */
export function readJobLines(form: FormData): Result<object[], Refusal> {
  const lines: object[] = [];
  for (const lineNo of lineNumbers(form)) {
    if (isBlank(form, lineNo)) continue;
    const line = readLine(form, lineNo);
    if (!line.ok) return line;
    lines.push(line.value);
  }
  return ok(lines);
}

/** The numbers of the lines that a form carries. */
export function lineNumbers(form: FormData): number[] {
  const numbers = [...form.keys()].flatMap((name) => {
    const match = /^line(\d{1,3})-ends$/.exec(name);
    return match === null ? [] : [Number(match[1])];
  });
  return [...new Set(numbers)].sort((a, b) => a - b);
}

function isBlank(form: FormData, lineNo: number): boolean {
  return ['connectionId', 'otherSize', 'materialId', 'ends', 'dueOnDay', 'heat'].every(
    (name) => text(form, lineField(lineNo, name)) === '',
  );
}

function readLine(form: FormData, lineNo: number): Result<object, Refusal> {
  const field = (name: string) => text(form, lineField(lineNo, name));
  const connectionId = readConnection(field);
  if (!connectionId.ok) {
    const { code, sentence, field: at } = connectionId.refusal;
    return refuse(code, `Line ${lineNo}: ${sentence}`, lineField(lineNo, at ?? 'otherSize'));
  }
  if (field('materialId') === '')
    return refuse('material', `Line ${lineNo}: choose the material.`, lineField(lineNo, 'materialId'));
  return ok({
    lineNo,
    connectionId: connectionId.value,
    materialId: field('materialId'),
    heat: field('heat'),
    ends: number(form, lineField(lineNo, 'ends')),
    operations: OPERATIONS.filter((operation) => checked(form, lineField(lineNo, operation))),
    startOnDay: field('startOnDay'),
    dueOnDay: field('dueOnDay'),
    value: checked(form, lineField(lineNo, 'precious')) ? 'precious' : 'ordinary',
    ...(field('duty') === '' || field('duty') === 'ordinary' ? {} : { duty: field('duty') }),
  });
}

function readConnection(field: (name: string) => string): Result<string, Refusal> {
  const [chosen, typed] = [field('connectionId'), field('otherSize')];
  if (chosen !== '' && typed !== '')
    return refuse(
      'size-twice',
      'a size is chosen and another is typed. Leave one of them empty.',
      'otherSize',
    );
  if (chosen !== '') return ok(chosen);
  if (typed === '')
    return refuse('size', 'choose a size from the table, or type another below it.', 'connectionId');
  const service = SERVICES.find((known) => known === field('otherService')) ?? 'medium';
  return typedConnectionKey(typed, service);
}

/**
 * A refusal of the job's own rules, told in terms of the form: "job.lines.1.ends" becomes the field of the line in that
 * place, and the sentence says which line it is about.
 */
export function inFormTerms(
  refusal: { readonly sentence: string; readonly field: string | null },
  lineNos: readonly number[],
): { sentence: string; field: string | null } {
  const { sentence, field } = refusal;
  const match = /^job\.lines\.(\d+)\.(\w+)/.exec(field ?? '');
  const lineNo = match === null ? undefined : lineNos[Number(match[1])];
  if (match === null || lineNo === undefined)
    return { sentence, field: field === null ? null : field.replace(/^job\./, '') };
  const name = match[2] === 'operations' ? 'cone' : (match[2] ?? '');
  return { sentence: `Line ${lineNo}: ${sentence}`, field: lineField(lineNo, name) };
}
