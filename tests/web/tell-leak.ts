/** A session with the story of a leak and a limit given in it, told to a running server. */
import { leakStory } from '../report/told.ts';
import { Page } from '../start/server.ts';

export const tellLeak = async (url: string, session: string): Promise<void> => {
  const page = await new Page(url).opened();
  page.send({ is: 'open', session, coach: 'juniper-38', by: 'MK' });
  await page.until((f) => f.is === 'entries');
  for (const [i, text] of [...leakStory, 'spec rear 13 1/2 +- 1/4'].entries())
    await page.note(session, `${session}-note-${i}`, text, 1000);
  page.close();
};
