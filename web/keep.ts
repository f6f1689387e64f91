/** Small things kept in this browser. Where storage is denied or full, the page goes on without: nothing here may throw. */
const prefix = 'soapwater.';

export const keep = {
  get(name: string): string | null {
    try {
      return localStorage.getItem(prefix + name);
    } catch {
      return null;
    }
  },
  /** false: not kept, the caller says so where it matters. */
  set(name: string, value: string): boolean {
    try {
      localStorage.setItem(prefix + name, value);
      return true;
    } catch {
      return false;
    }
  },
  drop(name: string): void {
    try {
      localStorage.removeItem(prefix + name);
    } catch {
      // nothing was kept either
    }
  },
  /** Names under `start`, without the page's own prefix, sorted. */
  names(start: string): string[] {
    try {
      const out: string[] = [];
      for (let i = 0; i < localStorage.length; i += 1) {
        const key = localStorage.key(i);
        if (key?.startsWith(prefix + start)) out.push(key.slice(prefix.length));
      }
      return out.toSorted();
    } catch {
      return [];
    }
  },
};
