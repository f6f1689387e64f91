/**
 * The reader on the command line: notes on standard input, one a line (`\n` inside a note stands for a line break), one
 * JSON reading a line on standard output. Set by the environment: AT (ISO time of the notes, default now), ZONE (IANA,
 * default the machine's), TRAFFIC (right, left or none; default right). A coach in psi and inches, no labels.
 */
import { blankContext, read } from '../intents/read.ts';
import type { Context } from '../intents/shapes.ts';

/** Says what is wrong with a setting, in one line, and ends with code 2. */
const refuse = (line: string): never => {
  process.stderr.write(`read: ${line}\n`);
  process.exit(2);
};

const timeFrom = (text: string | undefined): number | null => {
  if (text === undefined || text === '') return null;
  const at = Date.parse(text);
  return Number.isNaN(at) ? refuse(`AT is "${text}": it must be an ISO time, such as 2026-10-06T09:30:00Z`) : at;
};
const zoneFrom = (text: string | undefined): string => {
  const zone = text === undefined || text === '' ? Intl.DateTimeFormat().resolvedOptions().timeZone : text;
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone;
  } catch {
    return refuse(`ZONE is "${zone}": it must be an IANA zone, such as America/Denver`);
  }
};
const trafficFrom = (text: string | undefined): Context['traffic'] => {
  if (text === undefined || text === '' || text === 'right') return 'right';
  if (text === 'left') return 'left';
  return text === 'none' ? null : refuse(`TRAFFIC is "${text}": it must be right, left or none`);
};

const at = timeFrom(process.env['AT']);
const zone = zoneFrom(process.env['ZONE']);
const traffic = trafficFrom(process.env['TRAFFIC']);
let count = 0;

const answer = (line: string): string => {
  const text = line.replace(/\r$/, '').replaceAll('\\n', '\n');
  count += 1;
  const reading = read(text, blankContext(`note-${count}`, { at: at ?? Date.now(), zone, traffic }));
  return `${JSON.stringify({ text, ...reading })}\n`;
};

// whoever reads us may stop early ("| head"): that is no error of ours
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 1);
});
const print = (text: string): Promise<void> =>
  new Promise((resolve) => {
    if (process.stdout.write(text)) resolve();
    else process.stdout.once('drain', resolve);
  });

// split at line feeds only: a note may hold other line separators, which a line reader would cut at
let rest = '';
process.stdin.setEncoding('utf8');
for await (const chunk of process.stdin) {
  const lines = (rest + String(chunk)).split('\n');
  rest = lines.pop() ?? '';
  for (const line of lines) await print(answer(line));
}
if (rest !== '') await print(answer(rest));
