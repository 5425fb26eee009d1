import 'server-only';
import { type ChildProcess, spawn } from 'node:child_process';
import type { FiguresAnswer, FiguresAsk } from '@/db/figures-channel';
import { newestSourceMs } from './newest-source';

/** The process that works figures out, and who waits for it. Started when first asked, and again when it has died. */
export interface FiguresProcess {
  ask(question: Omit<FiguresAsk, 'id'>): Promise<FiguresAnswer>;
  /** The number of the process while it runs. */
  pid(): number | undefined;
  end(): Promise<void>;
}

interface Running {
  readonly child: ChildProcess;
  readonly startedAtMs: number;
  readonly waiting: Map<number, { done(answer: FiguresAnswer): void; failed(error: Error): void }>;
}

export function figuresProcess(): FiguresProcess {
  let running: Running | undefined;
  let lastId = 0;
  const fresh = (): Running => {
    // While the program is being worked on, figures come from the sources as they are now.
    if (process.env.NODE_ENV === 'development' && running && newestSourceMs() > running.startedAtMs) {
      running.child.kill('SIGKILL');
      running = undefined;
    }
    if (running?.child.connected === false) running = undefined;
    running ??= start((ended) => {
      if (running === ended) running = undefined;
    });
    return running;
  };
  return {
    ask: (question) =>
      new Promise((done, failed) => {
        const asked = fresh();
        const { child, waiting } = asked;
        const id = ++lastId;
        waiting.set(id, { done, failed });
        child.send({ ...question, id }, (error) => {
          if (error === null) return;
          // It is dead, though its end has not been heard of yet: the next to ask starts another.
          if (running === asked) running = undefined;
          if (waiting.delete(id)) failed(error);
        });
      }),
    pid: () => running?.child.pid,
    end: async () => {
      const child = running?.child;
      running = undefined;
      if (child === undefined || child.exitCode !== null || child.signalCode !== null) return;
      await new Promise((gone) => {
        child.once('exit', gone);
        child.kill('SIGKILL');
      });
    },
  };
}

function start(onEnd: (ended: Running) => void): Running {
  const child = spawn(/* turbopackIgnore: true */ process.execPath, ['--import', 'tsx', 'db/figures.ts'], {
    cwd: process.cwd(),
    env: { ...process.env, NODE_OPTIONS: '' },
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    serialization: 'advanced',
  });
  const running: Running = { child, startedAtMs: Date.now(), waiting: new Map() };
  const stop = () => child.kill('SIGKILL');
  process.once('exit', stop);
  const ended = (error: Error) => {
    process.off('exit', stop);
    onEnd(running);
    for (const { failed } of running.waiting.values()) failed(error);
    running.waiting.clear();
  };
  child.on('message', (answer: FiguresAnswer) => {
    const asked = running.waiting.get(answer.id);
    running.waiting.delete(answer.id);
    asked?.done(answer);
  });
  child.on('error', ended);
  child.on('exit', (code, signal) => ended(new Error(`the figures process ended: ${signal ?? code}`)));
  // It must not keep a server that wants to end from ending.
  child.unref();
  child.channel?.unref();
  return running;
}
