import { expect, it } from 'vitest';
import { inFormTerms, lineNumbers, readJobLines } from '@/app/plan/jobs/_parts/read-job-lines';

function form(fields: Record<string, string>): FormData {
  const data = new FormData();
  for (const [name, value] of Object.entries(fields)) data.set(name, value);
  return data;
}

function line(lineNo: number, fields: Record<string, string>): Record<string, string> {
  const blank = {
    connectionId: '',
    otherSize: '',
    otherService: 'medium',
    materialId: '',
    ends: '',
    dueOnDay: '',
  };
  return Object.fromEntries(
    Object.entries({ ...blank, startOnDay: '2026-03-02', ...fields }).map(([name, value]) => [
      `line${lineNo}-${name}`,
      value,
    ]),
  );
}

const first = line(1, {
  connectionId: '3-8-medium',
  materialId: '316-cw',
  ends: '24',
  dueOnDay: '2026-03-13',
  heat: 'H7',
  cone: 'on',
  thread: 'on',
});

// source: hand. What was typed is what must come out; a line in which nothing was typed is none.
it('reads the lines that were filled in, and leaves empty ones out', () => {
  const read = readJobLines(form({ id: 'J-1', ...first, ...line(2, { cone: 'on' }) }));
  expect(read).toEqual({
    ok: true,
    value: [
      {
        lineNo: 1,
        connectionId: '3-8-medium',
        materialId: '316-cw',
        heat: 'H7',
        ends: 24,
        operations: ['cone', 'thread'],
        startOnDay: '2026-03-02',
        dueOnDay: '2026-03-13',
        value: 'ordinary',
      },
    ],
  });
});

it('takes a typed size by its name alone, and a spool that cannot be remade', () => {
  const typed = line(3, {
    otherSize: '1',
    otherService: 'high',
    materialId: '316-cw',
    ends: '4',
    dueOnDay: '2026-03-13',
    assemble: 'on',
    precious: 'on',
  });
  const read = readJobLines(form(typed));
  expect(read).toMatchObject({
    ok: true,
    value: [{ lineNo: 3, connectionId: '1-high', operations: ['assemble'], value: 'precious' }],
  });
});

it.each([
  [line(2, { ends: '4' }), /^Line 2: choose a size/, 'line2-connectionId'],
  [line(2, { connectionId: '3-8-medium', otherSize: '1' }), /^Line 2: a size is chosen/, 'line2-otherSize'],
  [line(2, { otherSize: '3.8', materialId: '2507' }), /^Line 2: Write the tube size/, 'line2-otherSize'],
  [line(2, { connectionId: '3-8-medium' }), /^Line 2: choose the material/, 'line2-materialId'],
])('refuses with the line and the field', (fields, sentence, field) => {
  const read = readJobLines(form({ ...first, ...fields }));
  expect(read.ok).toBe(false);
  if (read.ok) return;
  expect(read.refusal.sentence).toMatch(sentence);
  expect(read.refusal.field).toBe(field);
});

it('keeps the numbers of lines, in order', () => {
  const names = {
    'line10-ends': '',
    'line2-ends': '4',
    'line2-heat': '',
    'other-ends': '',
    'line1234-ends': '',
  };
  expect(lineNumbers(form(names))).toEqual([2, 10]);
});

it('tells a refusal of the job in terms of the form', () => {
  const told = (field: string | null) => inFormTerms({ sentence: 'No.', field }, [2, 5]);
  expect(told('job.lines.1.ends')).toEqual({ sentence: 'Line 5: No.', field: 'line5-ends' });
  expect(told('job.lines.0.operations')).toEqual({ sentence: 'Line 2: No.', field: 'line2-cone' });
  expect(told('job.id')).toEqual({ sentence: 'No.', field: 'id' });
  expect(told(null)).toEqual({ sentence: 'No.', field: null });
});
