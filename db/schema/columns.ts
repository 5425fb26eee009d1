import { integer } from 'drizzle-orm/sqlite-core';

/** A yes or no, kept as 0 or 1 under a CHECK. */
export const yesNo = (name: string) => integer(name, { mode: 'boolean' }).notNull();
