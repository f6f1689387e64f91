/**
 * What stands in the note line of one session: text, taps that can be taken back, pad, pictures, and the draft that
 * outlives a reload. All taps of the page come through here: the one door.
 */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Board } from '../server/chat/protocol.ts';
import type { Key } from '../server/chat/reply.ts';
import type { Entry } from '../server/session/entry.ts';
import type { Chip } from './chips.ts';
import type { LineDid } from './elements/line.ts';
import type { PageEvents } from './events.ts';
import { keep } from './keep.ts';
import * as line from './note-line.ts';
import type { ReadBack } from './read-back.ts';
import { reader, readerComes } from './reader.ts';
import { whenIdle } from './when-idle.ts';
import { Works } from './works.ts';

/** As the protocol has it: a longer note is not cut, it is sent back to be split. */
export const mostText = 4000;

export type LineHost = ReactiveControllerHost & {
  /** Sends a whole note. */
  send: (text: string, pictures: readonly string[]) => void;
  /** Takes back what was last sent. */
  undoSent: () => void;
  /** Where the caret belongs after a tap. */
  toLine: () => void;
  /** The caret, keyboard and all, whatever the device. */
  backToLine: () => void;
  trouble: string;
  /** What was made of a file, in words. */
  told: string;
  /** Of the coach; undefined: not known yet. */
  readonly zone: string | undefined;
};

export class LineController implements ReactiveController {
  readonly #host: LineHost;
  #session = '';
  state = line.emptyLine;
  pad = false;
  pictures: readonly string[] = [];
  back: ReadBack | null = null;
  /** Files being read and pictures being shrunk. */
  readonly works: Works;

  constructor(host: LineHost) {
    this.#host = host;
    this.works = new Works(host);
    host.addController(this);
  }

  hostConnected(): void {
    // the sheet first: the reader's words outweigh all the rest of the page
    whenIdle(() => void readerComes().then(() => this.#host.requestUpdate()));
  }

  get text(): string {
    return this.state.text;
  }

  /** Something stands in the line that a tap on undo takes back. */
  get inLine(): boolean {
    return this.state.back.length > 0 || this.state.text !== '';
  }

  /** Another session: its own draft comes back. */
  follow(session: string): void {
    if (session === this.#session) return;
    this.#session = session;
    const draft = keep.get(`draft.${session}`);
    this.state = draft === null ? line.emptyLine : line.replaceText(line.emptyLine, draft);
    this.pictures = [];
    this.pad = false;
  }

  read(board: Board | null, entries: readonly Entry[]): void {
    const here = reader();
    this.back =
      here === null || this.text.trim() === '' || this.text.length > mostText
        ? null
        : here.readBack(this.text, here.contextFor(board, entries, Date.now()));
  }

  #set(state: line.LineState): void {
    this.state = state;
    const name = `draft.${this.#session}`;
    if (state.text === '') keep.drop(name);
    else keep.set(name, state.text.slice(0, 200_000));
    this.#host.requestUpdate();
  }

  /** A tap somewhere on the page. `glass`: no real keyboard at hand, so the pad comes with a place. */
  write({ text, whole, pad, instead }: PageEvents['write'], glass: boolean): void {
    if (whole === true && this.text.trim() === '') {
      this.#host.send(text, []);
      return;
    }
    if (instead === true) this.#set(line.replaceText(this.state, text));
    else this.#set(pad === true ? line.tapPlace(this.state, text) : line.tapWords(this.state, text));
    if (pad === true && glass) this.pad = true;
    this.#host.toLine();
  }

  /** What was done at the line itself. */
  did(d: LineDid): void {
    switch (d.did) {
      case 'typed':
        return this.type(d.text);
      case 'sent':
        return this.add();
      case 'undo':
        return this.undo();
      case 'chip':
        return this.chip(d.chip);
      case 'mend':
        return this.mend(d.key, d.index);
      case 'pad':
        this.openPad(d.open);
        if (!d.open) this.#host.backToLine();
        return;
      case 'photos':
        void this.addFiles(d.files);
        return;
      case 'drop picture':
        return this.dropPicture(d.key);
    }
  }

  type(text: string): void {
    this.#set(line.typed(this.state, text));
  }

  append(text: string): void {
    this.#set(line.tapWords(this.state, text));
  }

  tap(tap: 'digit' | 'fraction' | 'word' | 'rub', text: string): void {
    switch (tap) {
      case 'digit':
        return this.#set(line.tapDigit(this.state, text));
      case 'fraction':
        return this.#set(line.tapFraction(this.state, text));
      case 'word':
        return this.#set(line.tapWords(this.state, text));
      case 'rub':
        return this.#set(line.rubOut(this.state));
    }
  }

  chip(chip: Chip): void {
    if (chip.whole && this.text.trim() === '') this.#host.send(chip.text, []);
    else this.append(chip.text);
    this.#host.toLine();
  }

  mend(key: Key, index: number): void {
    if (this.back === null) return;
    const text = reader()?.mended(this.text, this.back, index, key);
    if (text !== undefined) this.#set(line.replaceText(this.state, text));
  }

  add(): void {
    const text = this.text.trim();
    if ((text === '' && this.pictures.length === 0) || text.length > mostText) return;
    this.#host.send(text === '' ? 'picture' : text, this.pictures);
    this.pictures = [];
    this.pad = false;
    this.#set(line.emptyLine);
  }

  /** First what stands in the line, then what was sent. */
  undo(): void {
    const back = line.takeBackTap(this.state);
    if (back === null) this.#host.undoSent();
    else this.#set(back);
  }

  openPad(open: boolean): void {
    this.pad = open;
    this.#host.requestUpdate();
  }

  async addPictures(files: readonly File[]): Promise<void> {
    const words = (i: number): string =>
      `shrinking ${files[i]?.name ?? ''}${files.length > 1 ? `, ${i + 1} of ${files.length}` : ''}…`;
    await this.works.run(words(0), async (signal, say) => {
      const { takePicture } = await import('./photos.ts');
      for (const [i, file] of files.entries()) {
        say(words(i), files.length > 1 ? i / files.length : null);
        const took = await takePicture(file, signal);
        if (took === null) return;
        if ('words' in took) this.#host.trouble = took.words;
        else this.pictures = [...this.pictures, took.key];
        this.#host.requestUpdate();
      }
    });
  }

  /** Pictures go with the note; any other file is taken for a logger's, and its note stands in the line to be sent. */
  async addFiles(files: readonly File[]): Promise<void> {
    const pictures = files.filter((f) => f.type.startsWith('image/'));
    if (pictures.length > 0) await this.addPictures(pictures);
    for (const file of files) if (!pictures.includes(file)) await this.#addLogger(file);
  }

  async #addLogger(file: File): Promise<void> {
    const line0 = this.text;
    const session = this.#session;
    this.#host.told = '';
    await this.works.run(`reading ${file.name}…`, async (signal) => {
      const { readLogger } = await import('./logger-errand.ts');
      const got = await readLogger({ file, line: line0, zone: this.#host.zone, at: Date.now() }, signal);
      if (signal.aborted || session !== this.#session) return;
      if ('trouble' in got) {
        this.#host.trouble = got.trouble;
        return;
      }
      this.#host.told = got.said.join(' ');
      // what stood in the line told what the file leaves open and gives way; what was typed since is kept, and who
      // types on does so on a line of its own
      const since = this.text === line0 ? '' : `${this.text.trim()}\n`;
      this.#set(line.replaceText(this.state, `${since}${got.text}\n`));
    });
  }

  dropPicture(key: string): void {
    this.pictures = this.pictures.filter((k) => k !== key);
    this.#host.requestUpdate();
  }
}
