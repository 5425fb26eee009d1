import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { dump, must, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

const line = {
  ...{ lineNo: 1, connectionId: '9-16-high', materialId: '316', heat: '', ends: 20 },
  ...{ operations: ['cone', 'thread'], startOnDay: '2026-03-09', dueOnDay: '2026-03-13', value: 'ordinary' },
};
const job = { id: 'J-86', title: 'Manifold', lines: [line] };
let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
});

it('a job takes lines for sizes and materials that the shop has no row for', () => {
  must(
    send.plan({ ...job, lines: [line, { ...line, lineNo: 2, connectionId: '1-high', materialId: 'tin' }] }),
  );
  expect(row(db, 'job_line', 'id', 'J-86.2')).toMatchObject({ connection_id: '1-high', material_id: 'tin' });
  expect(row(db, 'job_line', 'id', 'J-86.1')).toMatchObject({ cone: 1, thread: 1, assemble: 0, ends: 20 });
});

it('planning it again replaces its lines; a closed job opens again', () => {
  must(send.plan(job));
  must(send.close('J-86', 'done'));
  expect(row(db, 'job', 'id', 'J-86')).toMatchObject({ status: 'done' });
  must(send.plan({ ...job, lines: [{ ...line, lineNo: 3 }] }));
  expect(row(db, 'job', 'id', 'J-86')).toMatchObject({ status: 'open' });
  expect(dump(db).job_line).toHaveLength(1);
});

it('taking the second plan back brings the first one again', () => {
  must(send.plan(job));
  const before = dump(db).job_line;
  const second = must(send.plan({ ...job, lines: [{ ...line, ends: 99 }] }));
  must(send.reverse(second.id));
  expect(dump(db).job_line).toEqual(before);
});

it('refuses in a sentence, and changes nothing', () => {
  must(send.plan(job));
  must(send.close('J-86', 'cancelled'));
  const before = dump(db);
  expect([
    sentence(send.plan({ ...job, lines: [line, line] })),
    sentence(send.close('J-99', 'done')),
    sentence(send.close('J-86', 'done')),
  ]).toEqual([
    'Job J-86 has the same line number twice.',
    'No job J-99 is in the record.',
    'Job J-86 is already cancelled.',
  ]);
  expect(dump(db)).toEqual(before);
});
