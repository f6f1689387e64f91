// npm start: installs and builds what is missing or stale, then serves. Node's own modules only until then.
import { build, checkNode, install, root } from './prepare.mjs';

checkNode();
for (let i = 2; i < process.argv.length; i += 1) {
  const [name, value = process.argv[i + 1]] = process.argv[i].split('=');
  if (name === '--data') process.env.DATA = value;
  if (name === '--port') process.env.PORT = value;
}
install();
build();
process.env.SOAPWATER_ROOT = root;
await import(new URL('../.build/server/main.js', import.meta.url).href);
