import type { PersonRole } from '../shop/noun';

/** Who is acting. Every command knows; there is no anonymous entry. */
export interface Actor {
  readonly personId: string;
  readonly name: string;
  readonly role: PersonRole | 'set-up';
}

/** The hand that fills a shop before it has people: first set-up, demo seed. No row of the people: nothing is issued to it. */
export const SET_UP: Actor = { personId: 'set-up', name: 'Set-up', role: 'set-up' };
