/** A session read back: tables of readings, findings, work, cautions and corrections, made of its entries. Pure. */
import type { Fact } from '../intents/shapes.ts';
import type { Finding } from '../server/findings/finding.ts';
import type { Entry } from '../server/session/entry.ts';
import { takenBack } from './exchanges.ts';

export type Row<T> = { seq: number; at: number; by: string; gone: boolean; it: T };
type ReadingFact = Extract<Fact, { is: 'reading' }>;

export type Tables = {
  readings: Row<{ fact: ReadingFact; finding: Finding | null }>[];
  findings: Row<Finding>[];
  work: Row<{ words: string; done: boolean }>[];
  cautions: {
    seq: number;
    at: number;
    words: string;
    answer: { words: string; at: number; by: string } | null;
    gated: boolean;
  }[];
  corrections: Row<{ words: string; of: string }>[];
  remarks: { about: number; by: string; at: number; text: string }[];
};

const correctionWords = { undo: 'took back', redo: 'brought back', drop: 'withdrew', put: 'changed' } as const;

export const tablesOf = (entries: readonly Entry[]): Tables => {
  const { notes: undone, facts: dropped } = takenBack(entries);
  const texts = new Map(entries.flatMap((e) => (e.is === 'note' ? [[e.id, e] as const] : [])));
  const t: Tables = { readings: [], findings: [], work: [], cautions: [], corrections: [], remarks: [] };
  const open: Tables['cautions'] = [];
  const gates = new Map<Tables['cautions'][number], string>();
  for (const e of entries) {
    if (e.is === 'remark') t.remarks.push({ about: e.about, by: e.by, at: e.kept, text: e.text });
    if (e.is === 'note') {
      const row = { seq: e.seq, at: e.at, by: e.by };
      // what a correction put in place of another stands as a reading of its own
      for (const fact of [...e.read.facts, ...e.read.amends.flatMap((a) => a.puts)]) {
        const gone = undone.has(e.id) || dropped.has(fact.id);
        if (fact.is === 'reading') t.readings.push({ ...row, at: fact.at, gone, it: { fact, finding: null } });
        if (fact.is === 'work')
          t.work.push({ ...row, gone, it: { words: `${fact.what.v} ${fact.where.v}`.trim(), done: fact.done } });
        if (fact.is === 'condition' && !gone) {
          const asked = open.findLast((c) => gates.get(c) === fact.what.v && c.answer === null);
          if (asked) asked.answer = { words: `${fact.holds ? 'yes' : 'no'}: ${fact.what.v}`, at: e.at, by: e.by };
        }
      }
      for (const amend of e.read.amends) {
        const targets = [...amend.notes, ...amend.drops.map((d) => d.split('.')[0] ?? '')];
        const of = targets.map((id) => texts.get(id)?.text ?? '').filter((x) => x !== '');
        t.corrections.push({
          ...row,
          gone: undone.has(e.id),
          it: { words: `${correctionWords[amend.do]}: ${e.text}`, of: [...new Set(of)].join('; ') },
        });
      }
    }
    if (e.is === 'reply') {
      const note = texts.get(e.to);
      const row = { seq: note?.seq ?? e.seq, at: note?.at ?? e.kept, by: note?.by ?? '' };
      const gone = undone.has(e.to);
      for (const b of e.blocks) {
        if (b.is === 'caution') {
          const c = { seq: row.seq, at: row.at, words: b.words, answer: null, gated: b.gate !== undefined };
          if (b.gate) {
            open.push(c);
            gates.set(c, b.gate.what);
          }
          t.cautions.push(c);
        }
        if (b.is !== 'findings') continue;
        for (const finding of b.list) {
          // a finding falls with the fact it rests on, whether by note or by fact
          const fell = gone || finding.because.some((id) => dropped.has(id));
          t.findings.push({ ...row, gone: fell, it: finding });
          for (const r of t.readings)
            if (finding.because.includes(r.it.fact.id) && finding.limit && r.it.finding === null)
              r.it.finding = finding;
        }
      }
    }
  }
  return t;
};
