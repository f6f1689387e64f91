/** What stands at the foot of the sheet: a gate before a question, a question before a step, a step before the next check. Pure. */
import type { Board } from '../server/chat/protocol.ts';
import type { Block } from '../server/chat/reply.ts';
import type { Exchange } from './exchanges.ts';

export type WhatNext = {
  block: Block | null;
  /** Answered gates, as cautions are drawn by them. */
  gates: ReadonlyMap<string, boolean>;
  /** The newest reply holds an open gate: its keys stand in the sheet, and nothing goes on before it is answered. */
  gateWaits: boolean;
  /** The newest reply holds a stop, answered before or not. */
  stops: boolean;
  /** The newest reply asks: where there is little room its keys are the ones to tap. */
  asks: boolean;
};

/** A gate that was talked past: it takes the place of the next check until it is answered. */
const passedGate = (exchanges: readonly Exchange[], board: Board | null): Block | null => {
  const open = (board?.gates ?? []).filter((g) => !g.answered).map((g) => g.what);
  if (open.length === 0) return null;
  for (const x of exchanges.toReversed()) {
    if (x.is !== 'note' || x.voided) continue;
    const caution = x.reply?.blocks.find((b) => b.is === 'caution' && b.gate && open.includes(b.gate.what));
    if (caution) return caution;
  }
  return null;
};

export const whatNext = (exchanges: readonly Exchange[], board: Board | null): WhatNext => {
  const gates = new Map((board?.gates ?? []).filter((g) => g.answered).map((g) => [g.what, true]));
  const newest = exchanges.findLast((x) => x.is === 'note');
  const blocks = newest?.is === 'note' ? (newest.reply?.blocks ?? []) : [];
  const gateWaits = blocks.some((b) => b.is === 'caution' && b.gate !== undefined && !gates.has(b.gate.what));
  const voided = newest?.is === 'note' && newest.voided;
  // a guide goes step by step: its keys stand where the keys of checks stand
  const step = blocks.find((b) => b.is === 'step');
  return {
    block: (gateWaits ? null : passedGate(exchanges, board)) ?? step ?? board?.next ?? null,
    gates,
    gateWaits,
    stops: blocks.some((b) => b.is === 'caution'),
    asks: !voided && blocks.some((b) => b.is === 'question' && b.keys.length > 0),
  };
};
