/** A server that ends is started again, but not for ever. */
import { beforeEach, expect, test, vi } from 'vitest';
import { restartingHandler } from '../../client/restarts.ts';

// The package itself loads only inside an editor; these are its numbers (vscode-languageclient, common/client).
vi.mock('vscode-languageclient', () => ({
  CloseAction: { DoNotRestart: 1, Restart: 2 },
  ErrorAction: { Continue: 1, Shutdown: 2 },
}));

const MINUTE = 60_000;
beforeEach(() => void vi.useFakeTimers());

test.each([
  ['five at once are started again', [0, 0, 0, 0, 0], [2, 2, 2, 2, 2], 0],
  ['the sixth within three minutes is not', [0, 0, 0, 0, 0, 2], [2, 2, 2, 2, 2, 1], 1],
  ['one a minute goes on for ever', [0, 1, 1, 1, 1, 1, 1, 1, 1], [2, 2, 2, 2, 2, 2, 2, 2, 2], 0],
  ['a sixth after three minutes counts afresh', [0, 0, 0, 0, 0, 3], [2, 2, 2, 2, 2, 2], 0],
])('%s', async (_, minutesBetween, actions, timesGivenUp) => {
  const giveUp = vi.fn();
  const handler = restartingHandler(giveUp);
  const taken: number[] = [];
  for (const minutes of minutesBetween) {
    vi.advanceTimersByTime(minutes * MINUTE);
    taken.push((await handler.closed()).action);
  }
  expect(taken).toEqual(actions);
  expect(giveUp).toHaveBeenCalledTimes(timesGivenUp);
});

test('a few broken messages are borne', async () => {
  const handler = restartingHandler(() => undefined);
  const actions = [1, 3, 4].map(
    async (count) => (await handler.error(new Error('broken'), undefined, count)).action,
  );
  expect(await Promise.all(actions)).toEqual([1, 1, 2]);
});
