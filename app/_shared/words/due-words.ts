import type { DueDate, DueKind } from '@/lib/due-dates/due-date';
import { readConnectionKey } from '@/lib/shop/connection-text';
import { sizeLabel } from '@/lib/shop/size';
import { ROLE_LABEL, SERVICE_LABEL } from '@/lib/shop/vocabulary';
import { count, dayText } from '../format';

/** A kind as a tick box names it. */
export const DUE_KIND_LABEL: Record<DueKind, string> = {
  'job-due': 'Jobs due',
  'order-by': 'Order by',
  calibration: 'Calibrations',
  'fluid-expiry': 'Fluid out of date',
  replacement: 'Edges to change',
  'order-arrival': 'Orders expected',
  'job-start': 'Jobs start',
};

/** What is due in a few words: "Change D-38-11", "Job J-088 due: 20 ends, 9⁄16 in high pressure". */
export function dueTitle(due: DueDate): string {
  switch (due.kind) {
    case 'job-start':
      return `Job ${due.jobId} starts: ${count(due.ends, 'end')}, ${sizeText(due.connectionId)}`;
    case 'job-due':
      return `Job ${due.jobId} due: ${count(due.ends, 'end')}, ${sizeText(due.connectionId)}`;
    case 'calibration':
      return `Calibration due: ${due.toolId}, ${ROLE_LABEL[due.role]}`;
    case 'fluid-expiry':
      return `Last day for ${due.toolId}, ${due.partName}`;
    case 'replacement':
      return due.planned
        ? `Change ${due.toolId}, ${due.partName}`
        : `${due.toolId} wears out, ${due.partName}`;
    case 'order-arrival':
      return `Order ${due.orderId} expected: ${due.quantity} × ${due.partName}`;
    case 'order-by':
      return `Last day to order ${due.quantity} × ${due.partName}`;
  }
}

/** The same in a word or two, for the square of a wall calendar. */
export function dueShort(due: DueDate): string {
  switch (due.kind) {
    case 'job-start':
      return `${due.jobId} starts`;
    case 'job-due':
      return `${due.jobId} due`;
    case 'calibration':
      return `Calibrate ${due.toolId}`;
    case 'fluid-expiry':
      return `Last day ${due.toolId}`;
    case 'replacement':
      return due.planned ? `Change ${due.toolId}` : `${due.toolId} wears out`;
    case 'order-arrival':
      return `${due.orderId} expected`;
    case 'order-by':
      return `Order ${due.partName}`;
  }
}

/** How sure the day is; empty where it is written down. */
export function dueBand({ band }: DueDate, today: string): string {
  if (band === undefined) return '';
  const high = band.highDay === null ? 'no end in sight' : dayText(band.highDay, today);
  return band.lowDay === band.highDay
    ? 'an estimate'
    : `an estimate: between ${dayText(band.lowDay, today)} and ${high}`;
}

/** The page of the thing that is due. */
export function dueHref(due: DueDate): string {
  switch (due.kind) {
    case 'job-start':
    case 'job-due':
      return `/plan/lines/${encodeURIComponent(due.lineId)}`;
    case 'calibration':
    case 'fluid-expiry':
    case 'replacement':
      return `/tools/${encodeURIComponent(due.toolId)}`;
    case 'order-arrival':
      return `/plan/orders#${encodeURIComponent(due.orderId)}`;
    case 'order-by':
      return `/plan/orders/new?part=${encodeURIComponent(due.partId)}`;
  }
}

function sizeText(connectionId: string): string {
  const size = readConnectionKey(connectionId);
  if (size === undefined) return connectionId;
  return `${sizeLabel({ num: size.odNum, den: size.odDen })} in ${SERVICE_LABEL[size.service]}`;
}
