// `npm test`. As start.mjs: readable by an old Node, so that it can refuse.
import { nodeVersionRefusal } from '../../app/_start/node-version.mjs';

const refusal = nodeVersionRefusal(process.version);
if (refusal) {
  console.error(refusal);
  process.exit(1);
} else {
  import('./main.mjs').then((main) => main.main(process.argv.slice(2), process.env));
}
