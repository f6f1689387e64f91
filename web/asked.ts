/** Questions asked by a tap, by the exchange in which their answers stand. Nothing of them is logged. */
import type { Block } from '../server/chat/reply.ts';

type Answers = ReadonlyMap<string, readonly Block[]>;

export class Asked {
  #ids: ReadonlyMap<string, readonly string[]> = new Map();

  /** `at`: where the answer is to stand; `id`: by which it will come. */
  add(at: string, id: string): void {
    this.#ids = new Map([...this.#ids, [at, [...(this.#ids.get(at) ?? []), id]]]);
  }

  forget(): void {
    this.#ids = new Map();
  }

  /** What has come so far; an answer still under way is an empty list. */
  views(answers: Answers): ReadonlyMap<string, readonly (readonly Block[])[]> {
    return new Map([...this.#ids].map(([at, ids]) => [at, ids.map((id) => answers.get(id) ?? [])]));
  }
}
