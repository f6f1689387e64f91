/** Notes told to a running server, and the story of a leak with a limit given in it. */
import { leakStory } from '../report/told.ts';
import { Page } from '../start/server.ts';

export const tellNotes = async (url: string, session: string, notes: readonly string[]): Promise<void> => {
  const page = await new Page(url).opened();
  page.send({ is: 'open', session, coach: 'juniper-38', by: 'MK' });
  await page.until((f) => f.is === 'entries');
  for (const [i, text] of notes.entries()) await page.note(session, `${session}-note-${i}`, text, 1000);
  page.close();
};

export const tellLeak = (url: string, session: string): Promise<void> =>
  tellNotes(url, session, [...leakStory, 'spec rear 13 1/2 +- 1/4']);
