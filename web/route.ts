/** Where the page is, as its hash says: two pages on one address follow one session. */
export type Route =
  | { at: 'start' }
  | { at: 'session'; session: string }
  | { at: 'transcript'; session: string }
  | { at: 'learn'; term: string | null };

const id = /^[a-z0-9-]{6,40}$/;

export const routeOf = (hash: string): Route => {
  const [first, second, third] = hash.replace(/^#\/?/, '').split('/');
  if (first === 'session' && second !== undefined && id.test(second))
    return third === 'transcript' ? { at: 'transcript', session: second } : { at: 'session', session: second };
  if (first === 'learn') return { at: 'learn', term: second ? decodeURIComponent(second) : null };
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
      return route.term === null ? '#/learn' : `#/learn/${encodeURIComponent(route.term)}`;
  }
};
