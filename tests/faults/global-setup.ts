import type { TestProject } from 'vitest/node';
import { provideDemoFile } from '../support/demo-file';

/** A demo made once, for the starts that are not about making it. */
export default function setup(project: TestProject): () => void {
  return provideDemoFile(project).remove;
}
