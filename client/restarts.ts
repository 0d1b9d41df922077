/** Restarts of a server that ended, and when to give up. */
import { CloseAction, ErrorAction, type ErrorHandler } from 'vscode-languageclient';

const MOST_RESTARTS = 5;
const WITHIN_MS = 3 * 60 * 1000;
const MOST_BROKEN_MESSAGES = 3;

/** Restarts a server that ended, up to five times in three minutes; after that calls `giveUp`. */
export function restartingHandler(giveUp: () => void): ErrorHandler {
  let ends: readonly number[] = [];
  return {
    error: (_error, _message, count) => ({
      action: (count ?? 0) <= MOST_BROKEN_MESSAGES ? ErrorAction.Continue : ErrorAction.Shutdown,
    }),
    closed() {
      const now = Date.now();
      ends = [...ends.filter((end) => now - end < WITHIN_MS), now];
      if (ends.length <= MOST_RESTARTS) return { action: CloseAction.Restart, handled: true };
      giveUp();
      return { action: CloseAction.DoNotRestart, handled: true };
    },
  };
}
