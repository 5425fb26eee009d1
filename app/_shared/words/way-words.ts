import type { Route } from 'next';
import type { WayOut } from '@/lib/outlook/ways-out';
import { readConnectionKey } from '@/lib/shop/connection-text';
import { sizeKey } from '@/lib/shop/size';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { inDays } from '../format';

/** A way out as a link: where it leads and what it says. */
export interface WayLink {
  readonly href: Route;
  readonly label: string;
}

/** What can be done about a blocker, as a link in shop words. */
export function wayLink(way: WayOut, today: string): WayLink {
  switch (way.kind) {
    case 'add-size':
      return { href: newSizeHref(way.connectionId), label: 'Add this size to the table' };
    case 'add-material':
      return { href: '/sizes/materials/new' as Route, label: 'Add the material' };
    case 'add-part':
      return {
        href: `/parts/new?kind=${way.role}` as Route,
        label: `Add a ${ROLE_LABEL[way.role]} for this size to the parts`,
      };
    case 'place-order':
      return {
        href: `/plan/orders/new?part=${encodeURIComponent(way.part.id)}` as Route,
        label: `Order: ${way.part.name}`,
      };
    case 'see-order': {
      const { id, expectedOnDay } = way.order;
      const when = way.late ? 'overdue, was expected' : 'expected';
      return {
        href: `/plan/orders#${encodeURIComponent(id)}` as Route,
        label: `Order ${id}: ${when} ${inDays(expectedOnDay, today)}`,
      };
    }
    case 'receive':
      return way.orderId === null
        ? {
            href: `/tools/receive?part=${encodeURIComponent(way.part.id)}` as Route,
            label: 'Receive one now',
          }
        : {
            href: `/tools/receive?order=${encodeURIComponent(way.orderId)}` as Route,
            label: `Receive it on order ${way.orderId}`,
          };
    case 'see-tool':
      return { href: `/tools/${encodeURIComponent(way.toolId)}` as Route, label: `Open ${way.toolId}` };
    case 'change-dates':
      return { href: `/plan/jobs/${encodeURIComponent(way.jobId)}` as Route, label: 'Change the dates' };
  }
}

/** The empty row of the size table, with the size and service that the plan asked for. */
function newSizeHref(connectionId: string): Route {
  const size = readConnectionKey(connectionId);
  if (size === undefined) return '/sizes/new' as Route;
  const { odNum, odDen, service } = size;
  return `/sizes/new?${new URLSearchParams({ size: sizeKey({ num: odNum, den: odDen }), service })}` as Route;
}
