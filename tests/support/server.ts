import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));

export interface RunningServer {
  readonly address: string;
  readonly pid: number;
  /** All it has printed so far. */
  readonly output: () => string;
  /** Ends it with a signal and gives back how it ended. */
  readonly stop: (signal?: NodeJS.Signals) => Promise<Ended>;
}

export interface Ended {
  readonly code: number | null;
  readonly output: string;
  readonly errors: string;
}

interface StartWith {
  readonly dataDir: string;
  readonly flags?: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
}

/** Starts the real program on any free port and waits for its address line. Throws with its output when it ends instead. */
export async function startServer(given: StartWith): Promise<RunningServer> {
  const run = launch(given);
  const address = await new Promise<string>((resolve, reject) => {
    run.child.stdout?.on('data', () => {
      const line = /^Edgekeep is at (http:\S+)$/m.exec(run.output());
      if (line?.[1]) resolve(line[1]);
    });
    run.ended.then(
      (ended) => reject(new Error(`The server did not start:\n${ended.output}${ended.errors}`)),
      reject,
    );
  });
  return {
    address,
    pid: run.child.pid ?? 0,
    output: run.output,
    stop: async (signal = 'SIGTERM') => {
      run.child.kill(signal);
      const timer = setTimeout(() => run.child.kill('SIGKILL'), 15_000);
      const ended = await run.ended;
      clearTimeout(timer);
      return ended;
    },
  };
}

/** Runs `npm start` with these flags to its end: for starts that are refused. */
export function runStart(given: StartWith): Promise<Ended> {
  return launch(given).ended;
}

const running = new Set<ChildProcess>();

/** Ends what a failed test left running. */
export async function endLeftovers(): Promise<void> {
  const left = [...running];
  await Promise.all(
    left.map((child) => {
      const closed = once(child, 'close');
      child.kill('SIGKILL');
      return closed;
    }),
  );
}

function launch({ dataDir, flags = [], env = {} }: StartWith) {
  const port = flags.includes('--port') ? [] : ['--port', '0'];
  const args = ['app/_start/start.mjs', '--data', dataDir, ...port, ...flags];
  const child = spawn(process.execPath, args, {
    cwd: root,
    env: { ...cleanEnv(), ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  running.add(child);
  const killAtExit = () => child.kill('SIGKILL');
  process.on('exit', killAtExit);
  const texts = collect(child);
  const ended = new Promise<Ended>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => {
      running.delete(child);
      process.off('exit', killAtExit);
      resolve({ code, output: texts.output(), errors: texts.errors() });
    });
  });
  return { child, ended, output: texts.output };
}

function collect(child: ChildProcess) {
  let output = '';
  let errors = '';
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    output += text;
  });
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    errors += text;
  });
  return { output: () => output, errors: () => errors };
}

/** Without what the test tools set for themselves. */
function cleanEnv(): NodeJS.ProcessEnv {
  const {
    NODE_ENV: _env,
    VITEST: _vitest,
    EDGEKEEP_DATA: _data,
    PORT: _port,
    NODE_OPTIONS: _options,
    ...rest
  } = process.env;
  return { ...rest, NODE_ENV: 'production' };
}
