// npm run backup | restore | pack | unpack
import { build, checkNode, install, root } from './prepare.mjs';

checkNode();
install({ quiet: true });
build({ quiet: true, parts: ['server'] });
process.env.SOAPWATER_ROOT = root;
await import(new URL('../.build/server/backup.js', import.meta.url).href);
