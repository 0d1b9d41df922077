/** Every route once. Writes how many tests passed and failed to the file it is given. */
import { mkdirSync, writeFileSync } from 'node:fs';
import type { Counts } from './evidence.ts';
import { OUT, type Route } from './route.ts';
import { neovimRoute } from './routes/neovim.ts';
import { nodeRoute } from './routes/node.ts';
import { packagedRoute } from './routes/packaged.ts';
import { webRoute } from './routes/web.ts';

const ROUTES: readonly Route[] = [nodeRoute, webRoute, packagedRoute, neovimRoute];

mkdirSync(OUT, { recursive: true });
const wanted = process.env.EDITOR_ROUTE;
const results = await Promise.all(ROUTES.filter(({ name }) => !wanted || name === wanted).map(follow));
const total = results.reduce((sum, { passed, failed }) => ({
  passed: sum.passed + passed,
  failed: sum.failed + failed,
}));
const [, , report] = process.argv;
if (report) writeFileSync(report, JSON.stringify(total));
process.exitCode = total.failed ? 1 : 0;

/** The routes run side by side, so each keeps its lines together until its end. */
async function follow({ name, run }: Route): Promise<Counts> {
  const lines: string[] = [];
  const begun = Date.now();
  const counts = await run((line) => lines.push(line)).catch((error: unknown): Counts => {
    lines.push(`  FAILED ${error instanceof Error ? error.stack : error}`);
    return { passed: 0, failed: 1 };
  });
  const seconds = ((Date.now() - begun) / 1000).toFixed(1);
  console.log([`${name}: ${counts.passed} ok, ${counts.failed} not, ${seconds} s`, ...lines].join('\n'));
  return counts;
}
