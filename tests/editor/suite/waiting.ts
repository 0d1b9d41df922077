/** What the tests inside an editor share: waiting and failing. */

/** Generous: a machine that is busy with other things is slow. */
const LIMIT_MS = 300_000;

/** Asks again until there is an answer: what an editor shows comes when it comes. */
export async function until<T>(what: string, ask: () => Promise<T | false | undefined | ''>): Promise<T> {
  for (const end = Date.now() + LIMIT_MS; Date.now() < end; ) {
    const answer = await ask();
    if (answer) return answer;
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
  throw new Error(`waited in vain for ${what}`);
}

/** Fails with what was expected in words. */
export function expect(holds: boolean, what: string): asserts holds {
  if (!holds) throw new Error(`expected ${what}`);
}
