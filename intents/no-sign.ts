/**
 * Words of signs that report none where they stand: they colour another sign, say what was wanted or asked, repeat a
 * number, or belong to a thing nobody asked about. One row a case under such a note; the first that fits counts.
 */
import { changeOf, isDuration } from './changes.ts';
import { nextReal } from './near.ts';
import type { PlaceItem, Settled } from './settled.ts';
import type { Sign } from './shapes.ts';
import { phraseOf, skippable, type Clause, type Walk } from './walk.ts';

export type SignItem = Extract<Settled, { k: 'sign' }>;

export type SignAt = {
  readonly w: Walk;
  readonly c: Clause;
  readonly index: number;
  readonly item: SignItem;
  /** What denies it. */
  readonly neg: Settled | null;
};

type Case = {
  readonly fits: (s: SignAt) => boolean;
  /** The word stays unread: it says something, but not of anything known. */
  readonly unread?: true;
};

/** Signs that can be gone again. */
export const fleeting: readonly Sign[] = [
  'bubbles',
  'hiss',
  'leaks',
  'water',
  'noisy',
  'bangs',
  'puffs',
  'exhausts',
  'hums',
  'clicks',
];

const next = (s: SignAt, by = 1): Settled | undefined => s.c.items[s.index + by];
const ahead = (s: SignAt): Settled | undefined => s.c.items[nextReal(s.c, s.index)];
const adjoins = (s: SignAt): boolean => nextReal(s.c, s.index) === s.index + 1;
const before = (s: SignAt): string => s.w.text.slice(Math.max(0, s.item.span[0] - 40), s.item.span[0]);
const after = (s: SignAt, length: number): string => s.w.text.slice(s.item.span[1], s.item.span[1] + length);
const placedBefore = (s: SignAt): boolean => s.c.places.some((i) => i < s.index);
/** The sign just read in this clause, which this word may colour. */
const coloured = (s: SignAt): SignItem | null => {
  const last = s.c.items.slice(0, s.index).findLast((it) => !skippable(it));
  return last?.k === 'sign' && last !== s.item && s.w.used.has(last) ? last : null;
};
const stateBefore = (s: SignAt): boolean => s.c.items.slice(0, s.index).findLast((it) => !skippable(it))?.k === 'cond';
const partBefore = (s: SignAt): string | undefined => {
  const at = s.c.places.filter((i) => i < s.index).at(-1);
  return at === undefined ? undefined : ((s.c.items[at] as PlaceItem).p.part ?? '');
};
const isSign = (item: Settled | undefined): item is SignItem => item?.k === 'sign';

export const noSign: readonly Case[] = [
  // "when i push lower": the key on the panel
  {
    fits: (s) =>
      /^(?:lower|raise|down|up)$/.test(s.item.phrase) &&
      /\b(?:push|pushed|press|pressed|hit|hold|held|select|selected|put it in|switch to) (?:the |on )?$/i.test(
        before(s),
      ),
  },
  // "thawed it with warm rags": what it was done with
  {
    fits: (s) =>
      /^(?:warm|hot|cold)$/.test(s.item.phrase) &&
      /\b(?:with|using|in) (?:some |a )?$/i.test(before(s)) &&
      next(s)?.k === 'unknown',
  },
  // "freed with penetrating oil": what it was done with
  {
    fits: (s) =>
      s.item.v === 'oily' &&
      /\b(?:with|w\/|w|penetrating|some|of|add|added|adding|put) ?(?:\w+ )?$/i.test(before(s)) &&
      /^(?:oil|grease)$/.test(s.item.phrase),
  },
  // "dryer purges nonstop": what nobody knows does
  {
    fits: (s) =>
      s.item.v === 'runs constantly' && !/run|pump|comp/.test(s.item.phrase) && s.c.items[s.index - 1]?.k === 'unknown',
    unread: true,
  },
  // "top nuts 40 Nm, lower 70": which of them
  {
    fits: (s) => /^(?:lower|upper|lowers)$/.test(s.item.phrase) && next(s)?.k === 'num' && s.w.lastMeasure === 'torque',
  },
  // "aired up 0-120 in 14 min": said by the figures
  {
    fits: (s) =>
      s.item.v === 'fills' && /^(?:aired|pumped|charged|filled) /.test(s.item.phrase) && next(s)?.k === 'num',
  },
  // "on flat its ok": the ground
  {
    fits: (s) =>
      s.item.v === 'flat' &&
      /\bon (?:the )?$/i.test(before(s)) &&
      next(s)?.k !== 'place' &&
      !s.w.text.slice(s.item.span[1]).match(/^ (?:left|right|lh|rh|bag|tyre|tire)/i),
  },
  // "wheels wont come off": what cannot be done
  {
    fits: (s) =>
      /^comes? off$/.test(s.item.phrase) &&
      /\b(?:wont|won't|cant|can't|cannot|doesnt|doesn't|will not|not) $/i.test(before(s)),
    unread: true,
  },
  // "sounds like by the valve": heard there, and not sound
  {
    fits: (s) =>
      s.item.v === 'ok' && /^sounds?$/.test(s.item.phrase) && /^ (?:like|as if|to be|as though)\b/i.test(after(s, 14)),
  },
  // "comes on at start up": when
  {
    fits: (s) =>
      s.item.v === 'starts' &&
      /^start ?up$/.test(s.item.phrase) &&
      /\b(?:at|on|during|after|before|cold) $/i.test(before(s)),
  },
  // "held arm level": by hand
  {
    fits: (s) => {
      const thing = ahead(s);
      return (
        /^(?:held|hold|holding|holds)$/.test(s.item.phrase) &&
        ((thing?.k === 'cond' && /^arm /.test(thing.v)) ||
          (thing?.k === 'place' && /^(?:arm|link|gauge)$/.test(thing.p.part ?? '')))
      );
    },
  },
  // "aired it up slow": how it was done
  { fits: (s) => s.item.phrase === 'slow' && s.c.items[s.index - 1]?.k === 'work' },
  {
    // hold for parts: the job waits
    fits: (s) =>
      /^holds?$/.test(s.item.phrase) &&
      /^ for (?:(?:a |the |new )?(?:parts?|bags?|valves?|shocks?|links?|pump|comp)|the customer|customer|pickup|approval|now|estimate)\b/i.test(
        after(s, 20),
      ),
    unread: true,
  },
  {
    // to hold it up while i look: by hand, or by air
    fits: (s) =>
      /^(?:hold|holding|held|holds)$/.test(s.item.phrase) &&
      /^ (?:it|her|him|the (?:coach|bus|back|rear)) up\b/i.test(after(s, 18)),
    unread: true,
  },
  {
    // im bleeding the tank: somebody does, and no leak
    fits: (s) =>
      /^bleed/.test(s.item.phrase) &&
      /\b(?:im|i['’]m|i am|we are|were|we['’]re|hes|he is) (?:just |now |still )?$/i.test(before(s)),
    unread: true,
  },
  {
    // right down 1/4: the side, and by how much
    fits: (s) => s.item.phrase === 'right down' && next(s)?.k === 'num',
    unread: true,
  },
  {
    // if i hold the arm up it stops: by hand
    fits: (s) =>
      /^(?:hold|holding|held)$/.test(s.item.phrase) &&
      /\b(?:i|we|you|he|she|they|someone|somebody|when|while|by) $/i.test(before(s)) &&
      /^(?:place|cond)$/.test(ahead(s)?.k ?? ''),
  },
  {
    // done for today: who goes home, and no part that failed
    fits: (s) =>
      /^done for$/.test(s.item.phrase) && /^ (?:today|the day|now|tonight|the night|lunch)\b/i.test(after(s, 12)),
    unread: true,
  },
  {
    // pinched the line off: shut, and still on
    fits: (s) =>
      s.item.phrase === 'off' &&
      /\b(?:pinch\w*|clamp\w*|clos\w*|shut\w*|isolat\w*|cap|capped|capping|plug\w*|seal\w*|block\w*|blank\w*|valv\w*|crimp\w*|teed?|turn\w*|switch\w*) (?:the |that |this |his |its )?(?:\S+ ){1,3}$/i.test(
        before(s),
      ),
    unread: true,
  },
  {
    // air comes out of a small hole: a port, and no puncture
    fits: (s) =>
      /^holes?$/.test(s.item.phrase) &&
      /\b(?:from|out of|at|in|over|on) (?:an? |the )?(?:small |little |tiny )?$/i.test(before(s)),
  },
  {
    // was fine until we had new bags put in: of another time
    fits: (s) =>
      s.item.v === 'ok' &&
      /\b(?:was|were|been|ran|rode|worked) (?:all |just |perfectly )?$/i.test(before(s)) &&
      /^ (?:up )?(?:until|till|til|before)\b/i.test(after(s, 12)),
    unread: true,
  },
  {
    // a light that says low air
    fits: (s) =>
      s.item.v === 'low' &&
      /^ (?:air|pressure)\b/i.test(after(s, 10)) &&
      /\b(?:light|lamp|buzzer|warning|alarm|message)\b/i.test(s.w.text),
    unread: true,
  },
  {
    // leans like an old man: how, and nothing that has aged
    fits: (s) =>
      s.item.v === 'aged' &&
      /^ (?:man|men|lady|woman|guy|girl|boy|timer|dog|mule|horse|barge|boat)\b/i.test(after(s, 8)),
  },
  {
    // dont start the engine pls: an order
    fits: (s) =>
      /^(?:dont|do not|never) (?:start|run)$/.test(s.item.phrase) &&
      /^ (?:the |that |this |her |him )?(?:engine|motor|coach|bus|her|up)\b/i.test(after(s, 14)),
    unread: true,
  },
  {
    // we stayed at 7200 feet: people did
    fits: (s) =>
      s.item.v === 'holds' && /\b(?:we|i|they|he|she|folks) (?:had |just |all )?$/i.test(before(s).slice(-12)),
    unread: true,
  },
  {
    // to find the hole: looked for
    fits: (s) =>
      /^holes?$/.test(s.item.phrase) &&
      /\b(?:find|finding|look(?:ing)? for|hunt(?:ing)? for|search(?:ing)? for) (?:the |a |any )?$/i.test(before(s)),
  },
  {
    // arm moves 1/4 in before air starts: what it was timed by
    fits: (s) => s.item.v === 'starts' && /\b(?:air|flow|it hiss|hiss|hissing|leak|leaking|exhaust) $/i.test(before(s)),
    unread: true,
  },
  {
    // first quick then slow: how it went, and of no pump
    fits: (s) => s.item.phrase === 'slow' && /\b(?:quick|quickly|fast)\W+(?:and |but )?then $/i.test(before(s)),
    unread: true,
  },
  {
    // lower bag mount bolt sheared: which, not how high
    fits: (s) => {
      const thing = next(s);
      return s.item.phrase === 'lower' && thing?.k === 'place' && thing.p.part !== undefined && !thing.p.side;
    },
  },
  {
    // wet with soap: by the one who looks
    fits: (s) => s.item.v === 'wet' && /^ (?:w|with) (?:soap|suds|leak)/i.test(after(s, 12)),
  },
  {
    // starts dropping: begins to
    fits: (s) => {
      const what = next(s);
      return (
        /^(?:starts|started|start)$/.test(s.item.phrase) && isSign(what) && /ing$/.test(s.w.text.slice(...what.span))
      );
    },
  },
  {
    // comes up from flat: where it began
    fits: (s) =>
      s.item.v === 'flat' && /\b(?:from|up from) (?:dead |completely |all the way )?$/i.test(before(s).slice(-30)),
  },
  {
    // mine reads lower: one gauge against another
    fits: (s) =>
      (s.item.v === 'low' || s.item.v === 'high') &&
      /\b(?:mine|his|hers|theirs|yours) (?:reads|shows|is|says) (?:a bit |slightly |a little )?$/i.test(before(s)),
    unread: true,
  },
  {
    // ran 20 min straight: without a stop
    fits: (s) => s.item.phrase === 'straight' && s.c.items[s.index - 1]?.k === 'num',
  },
  {
    // thrust is off to the left 0.2: by how much it is
    fits: (s) =>
      /^(?:is )?off$/.test(s.item.phrase) && s.c.measure !== null && /^(?:thrust|toe|camber)$/.test(s.c.measure.v),
  },
  {
    // blows the fuse when she starts: when, and no sign of its own
    fits: (s) =>
      (s.item.v === 'starts' || s.item.v === 'stops') &&
      /\b(?:when|whenever|as|once|every time|each time|before|after|until|till|while|if|just as|soon as)(?: ever)? (?:it|she|he|they|the (?:pump|comp\w*|motor)|(?:pump|comp\w*|motor)) $/i.test(
        before(s),
      ),
  },
  {
    // nobody is touching it
    fits: (s) => /\b(?:nobody|no one|noone|nobodys)(?:['’]s)? (?:is |was )?$/i.test(before(s).slice(-16)),
  },
  {
    // hear air hissing at the left: said twice, placed once
    fits: (s) => {
      const twin = next(s);
      return isSign(twin) && twin.v === s.item.v && !placedBefore(s);
    },
  },
  {
    // holds fine, bound tight, worn bad: how much, not that it is well
    fits: (s) =>
      !s.neg &&
      ((coloured(s) !== null && (s.item.v === 'ok' || s.item.v === 'binding' || s.item.phrase === 'bad')) ||
        (stateBefore(s) && s.item.v === 'ok')),
  },
  {
    // burnt black
    fits: (s) => !s.neg && s.item.phrase === 'black' && coloured(s) !== null,
  },
  {
    // loud bang, big leak, old worn bushing: the sign after it is meant
    fits: (s) => {
      const other = ahead(s);
      return (
        !s.neg &&
        isSign(other) &&
        adjoins(s) &&
        other.v !== s.item.v &&
        ['noisy', 'dirty', 'aged', 'stuck'].includes(s.item.v) &&
        /^(?:loud|big|bad|stuck|old|dirty|black)$/.test(s.item.phrase)
      );
    },
  },
  {
    // bad link bent: named so, and what is bad said after
    fits: (s) =>
      !s.neg &&
      s.item.phrase === 'bad' &&
      ahead(s)?.k === 'place' &&
      s.c.items.some((it) => it.k === 'sign' && it !== s.item),
  },
  {
    // quits after ten minutes, works again once it cools: part of what it does when hot
    fits: (s) => s.item.v === 'works' && s.w.lastSign === 'quits hot' && /^ again\b/i.test(after(s, 6)),
  },
  {
    // bad leaking
    fits: (s) => s.item.phrase === 'bad' && isSign(ahead(s)) && adjoins(s),
  },
  {
    // cords hanging out
    fits: (s) =>
      s.item.v === 'disconnected' &&
      s.item.phrase.startsWith('hang') &&
      s.c.items.some((it) => it.k === 'sign' && it.v === 'cords showing'),
  },
  {
    // stayed cold: how it is, not that it holds
    fits: (s) => {
      const other = ahead(s);
      return (
        s.item.v === 'holds' &&
        /^(?:stay|stays|stayed|keeps|kept)$/.test(s.item.phrase) &&
        isSign(other) &&
        other.v !== 'holds'
      );
    },
  },
  {
    // i am filthy: the person, not the coach
    fits: (s) =>
      /\b(?:i am|im|i['’]m|we are|were|me) (?:all |so |bloody |well )?$/i.test(before(s).slice(-22)) &&
      ['dirty', 'wet', 'hot', 'cold', 'soaked'].includes(s.item.v),
  },
  {
    // down on the stops
    fits: (s) => {
      const other = ahead(s);
      return s.item.v === 'low' && isSign(other) && other.v === 'on stops';
    },
  },
  {
    // to see if it leaks: not known yet
    fits: (s) =>
      /\b(?:see|check|test|look|know|tell|find out|listen|wonder|wondering|feel|watch)(?:ing)? (?:if|whether|for|weather) (?:\S+ ){0,4}$/i.test(
        before(s),
      ),
  },
  {
    // blew crud all over
    fits: (s) =>
      s.item.v === 'dirty' &&
      /\b(?:blew|blown|blows|spat|spits) (?:some |a lot of |all the )?$/i.test(before(s).slice(-20)),
  },
  {
    // it jumps around, 18 to 20: the needle of the gauge asked about
    fits: (s) => s.item.v === 'bounces' && s.item.phrase.startsWith('jump') && s.w.context.open?.what !== undefined,
  },
  {
    // nothing has been capped or plugged
    fits: (s) =>
      phraseOf(s.c.items.find((it) => !skippable(it))) === 'nothing' &&
      ['plugged', 'kinked', 'loose', 'broken', 'missing', 'bent', 'worn'].includes(s.item.v),
  },
  {
    // steering wheel straight: of a thing nobody here knows
    unread: true,
    fits: (s) => s.item.phrase === 'straight' && /\bsteering wheel (?:is |was |sits )?$/i.test(before(s).slice(-24)),
  },
  {
    // cleaned with an old toothbrush
    fits: (s) => {
      const thing = next(s);
      return (
        /^(?:old|bad|dirty|big|worn|loose|new|rusty|hot|cold)$/.test(s.item.phrase) &&
        thing?.k === 'unknown' &&
        /^[a-z]{4,}$/.test(thing.low)
      );
    },
  },
  {
    // told the driver dont move it: an order
    fits: (s) => s.item.v === 'does not move' && /^(?:dont|do not) move$/.test(s.item.phrase),
  },
  {
    // so it would quit popping: what was wanted
    fits: (s) =>
      /\b(?:so|so that) (?:it|they|she|he) (?:would|will|wont|wouldnt|wouldn['’]t|won['’]t|cant|can['’]t|doesnt|doesn['’]t|can|could) (?:\S+ ){0,2}$|\b(?:to stop|to keep) (?:it|them) (?:from )?$/i.test(
        before(s),
      ),
  },
  {
    // steady bubbles; hissing, steady: how, not that it holds
    fits: (s) => {
      const other = ahead(s);
      return (
        s.item.phrase === 'steady' &&
        ((isSign(other) && fleeting.includes(other.v)) ||
          (s.w.lastSign !== null &&
            fleeting.includes(s.w.lastSign) &&
            s.c.items.every((it) => it === s.item || skippable(it) || s.w.used.has(it))))
      );
    },
  },
  {
    // slow leak; left valve is slow
    fits: (s) => {
      const part = partBefore(s);
      return (
        s.item.phrase === 'slow' && (isSign(ahead(s)) || (part !== undefined && part !== 'pump' && part !== 'tank'))
      );
    },
  },
  {
    // drops 0.4 V: read with its number
    unread: true,
    fits: (s) => {
      const volts = ahead(s);
      return s.item.v === 'drops' && volts?.k === 'num' && (volts.unit === 'V' || volts.unit === 'mV');
    },
  },
  {
    // dropped from 120 to 85: the numbers say it
    fits: (s) => {
      if (!changeOf(s.item)) return false;
      const { items } = s.c;
      const to = items.findIndex(
        (it, j) => j > s.index && phraseOf(it) === 'to' && items[nextReal(s.c, j)]?.k === 'num',
      );
      return (
        (to > 0 && (to <= s.index + 2 || items.slice(s.index, to).some((it) => it.k === 'num'))) ||
        (items.slice(s.index, s.index + 3).some((it) => phraseOf(it) === 'from') && ahead(s)?.k === 'num')
      );
    },
  },
  {
    // half a cup of water: the volume was read
    fits: (s) => {
      const prev = next(s, -1);
      return (
        ['water', 'wet', 'corroded'].includes(s.item.v) &&
        s.w.facts.at(-1)?.is === 'reading' &&
        s.w.lastMeasure === 'water drained' &&
        prev !== undefined &&
        !/^(?:was|is|looked|looks|came out)$/.test(phraseOf(prev)) &&
        !s.neg
      );
    },
  },
  {
    // left shock cold, others warm: which others, nobody said
    unread: true,
    fits: (s) =>
      /\b(?:others|the rest|remaining|other (?:one|three|two)s?)\b/i.test(
        s.w.text.slice(s.c.items[0]!.span[0], s.item.span[0]),
      ) && !placedBefore(s),
  },
  {
    // hear air leaking: one sign
    fits: (s) => {
      const second = next(s);
      return s.item.v === 'hiss' && isSign(second) && ['leaks', 'exhausts'].includes(second.v);
    },
  },
];

/** The case in which the word at `s` is no sign; undefined when it is one. */
export const noSignAt = (s: SignAt): Case | undefined => noSign.find((one) => one.fits(s));
export const holdTest = (s: SignAt): boolean => {
  const prev = next(s, -1);
  return s.item.phrase === 'hold' && isDuration(prev);
};
