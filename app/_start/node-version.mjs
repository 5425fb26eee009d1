/**
 * Which Node Edgekeep runs on, as a sentence when it does not: `undefined` when the version is fine.
 * Below 20.9 Next does not run. From 24.19 on the headers of Node make the SQLite addon abort the process.
 */
export function nodeVersionRefusal(version) {
  const parts = version.replace(/^v/, '').split('.').map(Number);
  const major = parts[0];
  const minor = parts[1];
  const tooOld = major < 20 || (major === 20 && minor < 9);
  const tooNew = major > 24 || (major === 24 && minor >= 19);
  if (!tooOld && !tooNew) return undefined;
  return (
    'Edgekeep does not run on Node ' +
    version +
    ': use Node 20.9 or newer and below 24.19, for example the latest Node 20 or 22.'
  );
}
