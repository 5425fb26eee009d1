import { spawn } from 'node:child_process';
import { constants } from 'node:os';

const passedOn = ['SIGINT', 'SIGTERM', 'SIGHUP'];
const ownGroup = process.platform !== 'win32';

/**
 * Runs a command to its end and passes signals on to it and to everything it started. The child has a process group
 * of its own: `npm ci` starts compilers, which a signal to npm alone would leave running.
 * Once a signal came, this process ends with it as soon as the child is gone.
 */
export function runChild(command, args, { cwd, env, stdio = 'inherit', onSpawn } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd, env, stdio, detached: ownGroup });
    const output = { stdout: '', stderr: '' };
    for (const name of ['stdout', 'stderr']) {
      child[name]?.setEncoding('utf8').on('data', (text) => {
        output[name] += text;
      });
    }
    let received;
    const pass = (signal) => {
      received = signal;
      kill(child, signal);
    };
    for (const signal of passedOn) process.on(signal, pass);
    const done = () => {
      for (const signal of passedOn) process.off(signal, pass);
    };
    child.on('spawn', () => onSpawn?.(child.pid));
    child.on('error', (error) => {
      done();
      reject(error);
    });
    child.on('close', (code, signal) => {
      done();
      if (received) process.exit(128 + constants.signals[received]);
      resolve({ code, signal, ...output });
    });
  });
}

function kill(child, signal) {
  try {
    if (ownGroup) process.kill(-child.pid, signal);
    else child.kill(signal);
  } catch (error) {
    if (error.code !== 'ESRCH') throw error;
  }
}
