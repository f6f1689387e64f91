/** Reads a logger's file beside the page, so that a big one does not hold up what is typed meanwhile. */
import { noteOfFile } from './logger.ts';

export type Errand = { file: File; line: string; zone: string | undefined; at: number };

addEventListener('message', (event: MessageEvent<Errand>) => {
  const { file, line, zone, at } = event.data;
  void noteOfFile(file, line, zone, at).then((got) => postMessage(got));
});
