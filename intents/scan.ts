/** Cuts a note into tokens that partition it, UTF-16 unit for unit. */
export type Token = {
  from: number;
  to: number;
  kind: 'space' | 'line' | 'word' | 'digits' | 'mark';
  /** Lower case, without apostrophes; same meaning for every spelling of case. */
  low: string;
};

const shape =
  /(?<line>[\r\n]+)|(?<space>[^\S\r\n]+)|(?<digits>\d+)|(?<slashed>(?:[a-zA-Z]\/){1,2}[a-zA-Z](?![\p{L}\d])|[nNlLrR]\/[sShH]\/[frFR](?![\p{L}\d])|[cCoO]\/(?:out|heating|heat)(?![\p{L}])|[lLrR]\/[hH]and(?![\p{L}])|o\/heating)|(?<word>[\p{L}]+(?:['’][\p{L}]+)*)|(?<mark>[^])/gu;

/** Total on any string, lone surrogates included; linear. */
export const scan = (text: string): Token[] => {
  const out: Token[] = [];
  for (const m of text.matchAll(shape)) {
    const from = m.index;
    const to = from + m[0].length;
    const g = m.groups!;
    const kind = g['line']
      ? 'line'
      : g['space']
        ? 'space'
        : g['digits']
          ? 'digits'
          : g['word'] || g['slashed']
            ? 'word'
            : 'mark';
    const low = kind === 'word' ? m[0].toLowerCase().replace(/['’]/g, '') : m[0];
    out.push({ from, to, kind, low });
  }
  return out;
};

/** True when the tokens lie end to end over all of `text`. */
export const partitions = (tokens: readonly Token[], text: string): boolean => {
  let at = 0;
  for (const token of tokens) {
    if (token.from !== at || token.to <= at) return false;
    at = token.to;
  }
  return at === text.length;
};
