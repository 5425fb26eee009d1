// `npm start`. This file and node-version.mjs stay in plain, old JavaScript, so that an old Node can read them and refuse.
import { nodeVersionRefusal } from './node-version.mjs';

const refusal = nodeVersionRefusal(process.version);
if (refusal) {
  console.error(refusal);
  process.exit(1);
} else {
  import('./main.mjs').then((main) => main.main(process.argv.slice(2), process.env));
}
