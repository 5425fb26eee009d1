import type { Route } from 'next';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { connectionText, readConnectionKey } from '@/lib/shop/connection-text';
import type { Change } from '@/lib/what-if/change';
import { count, dayText } from '../format';
import { materialWords } from './material-words';

type Words = Pick<ShopFacts, 'today' | 'parts' | 'materials' | 'connections' | 'lines' | 'orders'>;

/** A change as a sentence: "Order PO-118 comes 21 days later". */
export function changeWords(change: Change, facts: Words): string {
  const day = (text: string) => dayText(text, facts.today);
  switch (change.kind) {
    case 'add-line': {
      const what = `${count(change.ends, 'end')} of ${sizeWords(change.connectionId, facts)} in ${materialOf(change.materialId, facts)}`;
      const spool = change.value === 'precious' ? ', cannot be remade' : '';
      return `A job comes in: ${what}, ${day(change.startOnDay)} to ${day(change.dueOnDay)}${spool}`;
    }
    case 'change-dates':
      return `Line ${change.lineId} runs ${day(change.startOnDay)} to ${day(change.dueOnDay)}`;
    case 'change-material':
      return `Line ${change.lineId} is cut in ${materialOf(change.materialId, facts)}`;
    case 'change-ends':
      return `Line ${change.lineId} has ${count(change.ends, 'end')}`;
    case 'drop-line':
      return `Line ${change.lineId} is cancelled`;
    case 'slip-order':
      return `Order ${change.orderId} comes ${count(Math.abs(change.days), 'day')} ${change.days < 0 ? 'sooner' : 'later'}`;
    case 'add-order':
      return `${change.quantity} × ${partOf(change.partId, facts)} ordered${change.supplier ? ` from ${change.supplier}` : ''}, promised for ${day(change.promisedOnDay)}`;
    case 'lose-tool':
      return `${change.toolId} is lost or broken`;
    case 'add-tool':
      return `${change.quantity} more here today: ${partOf(change.partId, facts)}`;
    case 'free-tool':
      return `${change.toolId} is back in the crib and may be used`;
    case 'calibrate-tool':
      return `${change.toolId} is calibrated, good to ${day(change.dueOnDay)}`;
    case 'regrind-tool':
      return `${change.toolId} goes for a regrind, back ${day(change.backOnDay)}`;
    case 'add-bench':
      return `${count(change.quantity, 'bench', 'benches')} more: one of each shared body and stock`;
  }
}

/** Where the change would really be entered, and what the link says. */
export function changeHref(change: Change, facts: Words): { href: Route; label: string } {
  switch (change.kind) {
    case 'add-line': {
      const {
        connectionId: size,
        materialId: material,
        ends,
        startOnDay: start,
        dueOnDay: due,
        value,
      } = change;
      const asked = new URLSearchParams({ size, material, ends: String(ends), start, due, value });
      return { href: `/plan/jobs/new?${asked}` as Route, label: 'Enter this job' };
    }
    case 'change-dates':
    case 'change-material':
    case 'change-ends':
    case 'drop-line': {
      const line = facts.lines.find(({ id }) => id === change.lineId);
      const label = change.kind === 'drop-line' ? 'Close the job' : 'Change the job';
      return { href: `/plan/jobs/${encodeURIComponent(line?.jobId ?? '')}` as Route, label };
    }
    case 'slip-order':
      return {
        href: `/plan/orders#${encodeURIComponent(change.orderId)}` as Route,
        label: 'Write the slip down',
      };
    case 'add-order':
      return {
        href: `/plan/orders/new?part=${encodeURIComponent(change.partId)}` as Route,
        label: 'Order it',
      };
    case 'add-tool':
      return {
        href: `/tools/receive?part=${encodeURIComponent(change.partId)}` as Route,
        label: 'Receive it',
      };
    case 'add-bench':
      return { href: '/tools/receive' as Route, label: 'Receive the bodies' };
    default:
      return { href: `/tools/${encodeURIComponent(change.toolId)}` as Route, label: `Open ${change.toolId}` };
  }
}

function sizeWords(connectionId: string, { connections }: Words): string {
  const size = connections.find(({ id }) => id === connectionId) ?? readConnectionKey(connectionId);
  return size === undefined ? connectionId : connectionText(size);
}

function materialOf(materialId: string, { materials }: Words): string {
  const material = materials.find(({ id }) => id === materialId);
  return material === undefined ? materialId : materialWords(material);
}

function partOf(partId: string, { parts }: Words): string {
  return parts.find(({ id }) => id === partId)?.name ?? partId;
}
