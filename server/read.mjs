// npm run --silent read: notes in, readings out. Installing and building say nothing on standard output.
import { build, checkNode, install } from './prepare.mjs';

checkNode();
install({ quiet: true });
build({ quiet: true, parts: ['server'] });
await import(new URL('../.build/server/read.js', import.meta.url).href);
