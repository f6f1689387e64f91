import { rmSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { killCampaign } from './campaign.ts';
import { mutants, writeMutant } from './mutants.ts';

describe('killed at random moments under busy pages', () => {
  it('loses nothing that was answered or shown, keeps nothing twice, and every page saw one order', async () => {
    const outcome = await killCampaign({ kills: 6, pages: 12 });
    expect(outcome.faults).toEqual([]);
    expect(outcome.kills).toBe(6);
    // it was busy: there was something to lose
    expect(outcome.answered).toBeGreaterThan(10);
  }, 120_000);

  it.each(mutants)(
    'would find a server that $name',
    async (mutant) => {
      const script = writeMutant(mutant);
      const outcome = await killCampaign({ kills: 16, pages: 12, script, untilFault: true });
      rmSync(script);
      expect(outcome.faults.join('\n')).toMatch(mutant.found);
    },
    120_000,
  );
});
