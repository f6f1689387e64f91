/** What the whole note says about facts already read. */
import type { Fact } from './shapes.ts';

/** "bubbles at the crimp, none at the fitting": a bag's fitting, and the line after a bag, are its own. */
export const sameLine = (facts: readonly Fact[]): void => {
  facts.forEach((f, i) => {
    const side = f.where.from === 'carried' ? /^(left|right|both) (?:fitting|line)$/.exec(f.where.v)?.[1] : undefined;
    if (side && facts.slice(0, i).some((g) => g.where.v.startsWith(`${side} bellows`)))
      f.where = { ...f.where, v: `${side} bellows line` };
  });
};

/** "tank drained, 150 ml out": water let out is a work, not a state. */
export const letOut = (facts: Fact[]): void => {
  if (!facts.some((f) => f.is === 'reading' && f.what.v === 'water drained')) return;
  facts.forEach((f, i) => {
    if (f.is !== 'condition' || f.what.v !== 'tank drained' || !f.holds) return;
    const { holds, ...rest } = f;
    facts[i] = {
      ...rest,
      is: 'work',
      what: { ...f.what, v: 'drained' },
      where: { v: 'tank', from: 'said', spans: f.what.spans },
      done: holds,
    };
  });
};

/** "200 ml drained, milky": how much water is said, so that there is water says nothing more. */
export const measuredOut = (facts: Fact[]): void => {
  if (!facts.some((f) => f.is === 'reading' && f.what.v === 'water drained' && f.amount.v.si > 0)) return;
  const bare = (f: Fact): boolean =>
    f.is === 'sign' && f.there && f.what.v === 'water' && /^(?:tank|drain)?$/.test(f.where.v) && !f.when;
  facts.splice(0, facts.length, ...facts.filter((f) => !bare(f)));
};
