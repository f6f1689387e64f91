/** Where the page is, as its hash says: two pages on one address follow one session. */
export type Route =
  | { at: 'start' }
  | { at: 'session'; session: string }
  | { at: 'transcript'; session: string }
  | { at: 'learn'; page: LearnPage };
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
    case 'learn':
      if (route.page.is === 'list') return '#/learn';
      return `#/learn/${route.page.is === 'check' ? 'check/' : ''}${encodeURIComponent(route.page.id)}`;
  }
};
