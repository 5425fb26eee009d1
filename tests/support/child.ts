import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { root } from './server';

/** A program of the tests running in a process of its own, with the lines that it has printed and will print. */
export interface Child {
  readonly process: ChildProcessWithoutNullStreams;
  /** The next line; rejects with what it said on its error output when it ends first. */
  readonly nextLine: () => Promise<string>;
  readonly say: (line: string) => void;
  /** Kills it outright, as a power cut would, and gives back the lines that nobody has read. */
  readonly kill: () => Promise<string[]>;
}

/** Runs a TypeScript file of the tests in another process. */
export function startChild(script: string, args: readonly string[]): Child {
  const child = spawn(process.execPath, ['--import', 'tsx', script, ...args], { cwd: root });
  let errors = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    errors += text;
  });
  const lines: string[] = [];
  const waiting: { resolve: (line: string) => void; reject: (error: Error) => void }[] = [];
  const reader = createInterface({ input: child.stdout });
  reader.on('line', (line) => {
    const next = waiting.shift();
    if (next) next.resolve(line);
    else lines.push(line);
  });
  const closed = new Promise<void>((resolve) => {
    child.on('close', () => {
      for (const { reject } of waiting.splice(0)) reject(new Error(`${script} ended: ${errors}`));
      resolve();
    });
  });
  const drained = new Promise<void>((resolve) => {
    reader.on('close', resolve);
  });
  return {
    process: child,
    nextLine: () => {
      const line = lines.shift();
      return line === undefined
        ? new Promise((resolve, reject) => waiting.push({ resolve, reject }))
        : Promise.resolve(line);
    },
    say: (line) => child.stdin.write(`${line}\n`),
    kill: async () => {
      child.kill('SIGKILL');
      await Promise.all([closed, drained]);
      return lines.splice(0);
    },
  };
}
