/** Work for when the browser has nothing better to do, within half a second; Safari has no such word. */
export const whenIdle = (work: () => void): void => {
  if ('requestIdleCallback' in window) requestIdleCallback(work, { timeout: 500 });
  else setTimeout(work, 60);
};
