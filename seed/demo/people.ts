import type { Actor } from '../../lib/access/actor';
import { invariant } from '../../lib/invariant';
import type { Person } from '../../lib/shop/noun';

/** The invented crew, by role. Tech-5 joins in month 7. */
export const PEOPLE = [
  { id: 'crib-1', name: 'Crib-1', role: 'attendant' },
  { id: 'crib-2', name: 'Crib-2', role: 'attendant' },
  { id: 'lead-1', name: 'Lead-1', role: 'lead' },
  { id: 'tech-1', name: 'Tech-1', role: 'technician' },
  { id: 'tech-2', name: 'Tech-2', role: 'technician' },
  { id: 'tech-3', name: 'Tech-3', role: 'technician' },
  { id: 'tech-4', name: 'Tech-4', role: 'technician' },
  { id: 'tech-5', name: 'Tech-5', role: 'technician' },
  { id: 'quality-1', name: 'Quality-1', role: 'quality' },
] as const satisfies readonly Person[];
export type PersonId = (typeof PEOPLE)[number]['id'];

/** The month in which the newest technician starts. */
export const TECH_5_JOINS_MONTH = 7;

/** One of the crew as the one who acts. */
export function actorOf(id: PersonId): Actor {
  const person = PEOPLE.find((row) => row.id === id);
  invariant(person !== undefined, 'the crew has everyone it names');
  return { personId: person.id, name: person.name, role: person.role };
}

/** The technicians at work in a month of the story. */
export function techniciansIn(monthsAgo: number): PersonId[] {
  const crew: PersonId[] = ['tech-1', 'tech-2', 'tech-3', 'tech-4'];
  return monthsAgo < TECH_5_JOINS_MONTH ? [...crew, 'tech-5'] : crew;
}
