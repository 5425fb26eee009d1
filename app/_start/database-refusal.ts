const bySqliteCode: Record<string, (dir: string) => string> = {
  READONLY: (dir) =>
    `The database in ${dir} is read-only: make its files and folder writable, or choose another folder with --data DIR.`,
  CANTOPEN: (dir) =>
    `The database in ${dir} cannot be opened: check the rights on its files, or choose another folder with --data DIR.`,
  NOTADB: (dir) =>
    `A database file in ${dir} is not an SQLite database: put a copy of the right one back, or choose another folder with --data DIR.`,
  CORRUPT: (dir) =>
    `A database file in ${dir} is damaged: put the last good copy back, or choose another folder with --data DIR.`,
  BUSY: (dir) => `Another program holds the database in ${dir} locked: stop it and start again.`,
  FULL: (dir) => `The disk holding the data folder ${dir} is full.`,
  IOERR: (dir) => `The disk holding the data folder ${dir} fails to read or write.`,
};

/** The sentence for what a database may expectedly refuse, or undefined when the error is a fault of the program. */
export function databaseRefusal(error: unknown, dir: string): string | undefined {
  if (!(error instanceof Error)) return undefined;
  if (error.name === 'DatabaseTooNewError' || error.name === 'UnknownShopError') return error.message;
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  const sqlite = /^SQLITE_([A-Z]+)/.exec(code)?.[1];
  if (sqlite) return bySqliteCode[sqlite]?.(dir);
  if (code === 'ENOSPC') return bySqliteCode.FULL?.(dir);
  if (code === 'EACCES' || code === 'EROFS' || code === 'EPERM') return bySqliteCode.READONLY?.(dir);
  return undefined;
}
