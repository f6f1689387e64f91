/** Light, dark, full sun: as the device has it, or as the person sets it. */
import { keep } from './keep.ts';

const themes = ['auto', 'light', 'dark', 'sun'] as const;
export type Theme = (typeof themes)[number];
export const themeWords: Record<Theme, string> = { auto: 'as the device', light: 'day', dark: 'dark', sun: 'full sun' };

export const theme = (): Theme => themes.find((t) => t === keep.get('theme')) ?? 'auto';

export const dress = (t: Theme): void => {
  if (t === 'auto') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = t;
};

export const nextTheme = (): Theme => {
  const next = themes[(themes.indexOf(theme()) + 1) % themes.length] ?? 'auto';
  keep.set('theme', next);
  dress(next);
  return next;
};
