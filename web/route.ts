/** Where the page is, as its hash says: two pages on one address follow one session. */
export type Route =
  | { at: 'start' }
  | { at: 'session'; session: string }
  | { at: 'transcript'; session: string }
  | { at: 'learn'; page: LearnPage }
  /** `of`: session or coach; `from`: the session it was come from. */
  | { at: 'paper'; page: PaperPage; of: string; from: string | null };
export type PaperPage = 'report' | 'estimate' | 'history' | 'sheet' | 'shop';
const pages = ['report', 'estimate', 'history', 'sheet', 'shop'] as const;
/** The list, a word, or a check step by step. */
export type LearnPage = { is: 'list' } | { is: 'word' | 'check'; id: string };

const id = /^[a-z0-9-]{6,40}$/;

/** As it stands where it is no good coding: an address typed by hand must not stop the page. */
const plainly = (part: string): string => {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
};

export const routeOf = (hash: string): Route => {
  const [first, second, third] = hash.replace(/^#\/?/, '').split('/');
  if (first === 'session' && second !== undefined && id.test(second))
    return third === 'transcript' ? { at: 'transcript', session: second } : { at: 'session', session: second };
  const page = pages.find((p) => p === first);
  if (page === 'shop')
    return { at: 'paper', page, of: '', from: second !== undefined && id.test(second) ? second : null };
  if (page === 'sheet' && !second) return { at: 'paper', page, of: '', from: null };
  if (page && second !== undefined && /^[a-z0-9-]{1,40}$/.test(second))
    return { at: 'paper', page, of: second, from: third !== undefined && id.test(third) ? third : null };
  if (first === 'learn') {
    if (second === 'check' && third) return { at: 'learn', page: { is: 'check', id: plainly(third) } };
    return { at: 'learn', page: second ? { is: 'word', id: plainly(second) } : { is: 'list' } };
  }
  return { at: 'start' };
};

export const hashOf = (route: Route): string => {
  switch (route.at) {
    case 'start':
      return '#/';
    case 'session':
      return `#/session/${route.session}`;
    case 'transcript':
      return `#/session/${route.session}/transcript`;
    case 'paper':
      return `#/${[route.page, route.of, route.from].filter(Boolean).join('/')}`;
    case 'learn':
      if (route.page.is === 'list') return '#/learn';
      return `#/learn/${route.page.is === 'check' ? 'check/' : ''}${encodeURIComponent(route.page.id)}`;
  }
};
