/** Starts the page. */
import './elements/page.ts';

// opening offline: only where the browser trusts the address (https, or this machine itself)
if ('serviceWorker' in navigator && import.meta.url.includes('/assets/'))
  addEventListener('load', () => void navigator.serviceWorker.register('/sw.js').catch(() => undefined));
