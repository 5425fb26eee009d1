import { randomUUID } from 'node:crypto';
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inject } from 'vitest';
import type { TestProject } from 'vitest/node';
import { createDemo } from '../../app/_start/create-demo';
import { pathOf } from '../../db/shop-files';

declare module 'vitest' {
  export interface ProvidedContext {
    /** The demo shop's database as a first start makes it, made once for all tests: to be copied. */
    demoFile: string;
  }
}

/** Makes the demo once and lets the tests know where it is. Gives back how to remove it. */
export function provideDemoFile(project: TestProject): { demoFile: string; remove: () => void } {
  const folder = mkdtempSync(join(tmpdir(), 'edgekeep-demo-'));
  createDemo(folder, { now: Date.now(), newId: () => randomUUID() });
  const demoFile = pathOf(folder, 'demo');
  project.provide('demoFile', demoFile);
  return { demoFile, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** Puts a copy of the demo into a data folder, so that the server that starts there finds it made. */
export function copyDemo(dataDir: string, demoFile = inject('demoFile')): void {
  copyFileSync(demoFile, pathOf(dataDir, 'demo'));
}
