// npm start [-- --open --port N --data FOLDER ...]: installs and builds what is missing or stale, then serves. Node's
// own modules only until then.
import { build, checkNode, fail, install, root } from './prepare.mjs';

checkNode();
const settings = {
  '--port': 'PORT',
  '--data': 'DATA',
  '--shop-port': 'SHOP_PORT',
  '--name': 'SHOP_NAME',
  '--cert': 'CERT',
  '--key': 'KEY',
  '--pictures': 'PICTURES',
};
const given = process.argv.slice(2);
while (given.length > 0) {
  const word = given.shift();
  const at = word.indexOf('=');
  const name = at < 0 ? word : word.slice(0, at);
  if (name === '--open') process.env.OPEN = '1';
  else if (settings[name]) {
    const value = at < 0 ? given.shift() : word.slice(at + 1);
    if (!value) fail(`${name} needs a value`);
    process.env[settings[name]] = value;
  } else fail(`${word} is not known: ${['--open', ...Object.keys(settings)].join(', ')} are`);
}
install();
build();
process.env.SOAPWATER_ROOT = root;
await import(new URL('../.build/server/main.js', import.meta.url).href);
