import { readFileSync } from 'node:fs';

/**
 * When a process began, in the ticks the kernel counts, or undefined where that cannot be asked.
 * Together with its number it names a process for good: numbers are given out again.
 */
export function startTicks(pid) {
  return kernelFields(pid)?.[19];
}

/** True when the process with this number runs, and is the one that began at `ticks` where that is known. */
export function isAlive(pid, ticks) {
  if (!Number.isInteger(pid) || pid <= 0) return false;
  try {
    process.kill(pid, 0);
  } catch (error) {
    if (error.code !== 'EPERM') return false;
  }
  const fields = kernelFields(pid);
  if (fields?.[0] === 'Z') return false;
  return ticks === undefined || fields?.[19] === ticks;
}

/** What the kernel tells of a process from its state on; undefined where there is no /proc. */
function kernelFields(pid) {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  } catch {
    return undefined;
  }
}
