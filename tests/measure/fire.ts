/** The kill campaign in full: `npm run measure -- fire`; KILLS and PAGES set its size. */
import { killCampaign } from '../fire/campaign.ts';
import { line } from './clock.ts';

export const measureFire = async (): Promise<void> => {
  const kills = Number(process.env['KILLS'] ?? 200);
  const pages = Number(process.env['PAGES'] ?? 20);
  const from = Date.now();
  const outcome = await killCampaign({
    kills,
    pages,
    tell: (d) => {
      if (d.kills % 10 === 0 || d.faults > 0)
        console.log(
          `  ${d.kills} kills, ${d.answered} notes answered, ${d.entries} entries, ${d.faults} faults, ${Math.round((Date.now() - from) / 1000)} s`,
        );
    },
  });
  line(
    `${outcome.kills} kills, ${pages} pages writing`,
    `${outcome.faults.length} faults`,
    `${outcome.answered} notes answered, ${outcome.again} sent again, ${outcome.whileStarting} kills while starting`,
    'none',
  );
  for (const fault of outcome.faults) console.log(`  ${fault}`);
  if (outcome.faults.length > 0) process.exitCode = 1;
};
