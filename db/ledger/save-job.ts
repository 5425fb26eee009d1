import type { Database } from 'better-sqlite3';
import type { JobRecord } from '../../lib/ledger/job-history';
import type { OrderRecord } from '../../lib/ledger/order-history';
import { jobLineId } from '../../lib/shop/job-line-id';
import { bit, clear, insert, upsert } from './statements';

/** A job and its lines; setting a job again replaces its lines. */
export function saveJob(client: Database, id: string, job: JobRecord): void {
  clear(client, 'job_line', 'job_id', id);
  upsert(client, 'job', 'id', {
    id,
    title: job.title,
    status: job.status,
    acceptance_rule: job.acceptanceRule === undefined ? null : JSON.stringify(job.acceptanceRule),
    shipped_on_day: job.shippedOnDay ?? null,
  });
  for (const line of job.lines) {
    insert(client, 'job_line', {
      id: jobLineId(id, line.lineNo),
      job_id: id,
      line_no: line.lineNo,
      connection_id: line.connectionId,
      material_id: line.materialId,
      heat: line.heat,
      ends: line.ends,
      cone: bit(line.operations.includes('cone')),
      thread: bit(line.operations.includes('thread')),
      assemble: bit(line.operations.includes('assemble')),
      start_on_day: line.startOnDay,
      due_on_day: line.dueOnDay,
      value: line.value,
      duty: line.duty ?? 'ordinary',
      cleaning: cleaningOf(job, line.lineNo),
    });
  }
}

function cleaningOf(job: JobRecord, lineNo: number): string | null {
  const last = job.cleanings.findLast((cleaning) => cleaning.lineNo === lineNo);
  return last === undefined ? null : JSON.stringify(last);
}

/** An order with what has come in of it. */
export function saveOrder(client: Database, id: string, order: OrderRecord): void {
  upsert(client, 'purchase_order', 'id', {
    id,
    part_id: order.partId,
    quantity: order.quantity,
    received_quantity: order.receivedQuantity,
    placed_on_day: order.placedOnDay,
    promised_on_day: order.promisedOnDay,
    expected_on_day: order.expectedOnDay,
    status: order.status,
    supplier: order.supplier,
    unit_price_minor: order.unitPriceMinor,
    stated_on_day: order.statedOnDay,
    first_received_on_day: order.firstReceivedOnDay,
    received_on_day: order.receivedOnDay,
    chased_on_day: order.chasedOnDay,
    why: order.why,
    shown: order.shown === undefined ? null : JSON.stringify(order.shown),
  });
}
