/** Long answers let whatever came meanwhile go first, and end where nobody waits for them any more. */
import type { ResponseError } from 'vscode-languageserver';
import type { Interruptible } from '../model/snapshot/interruptible.ts';

/** To be called between two steps of long work: comes back at once, or after a while, or throws since the work is not wanted. */
export type Pause = () => Promise<void>;

/** Milliseconds of work at a stretch: somebody who types waits for no more than a few of them. */
const LONGEST_STRETCH = 10;

/** `whyNot`: why the work is not wanted any more. */
export function pausing(whyNot: () => ResponseError<void> | undefined): Pause {
  let since = Date.now();
  return async () => {
    if (Date.now() - since < LONGEST_STRETCH) return;
    await yieldToEventLoop();
    since = Date.now();
    const unwanted = whyNot();
    if (unwanted) throw unwanted;
  };
}

/** For work that no request waits for: only lets others go first. */
export const pauseOnly = (): Pause => pausing(() => undefined);

/** All steps, with pauses between them. */
export async function runWithPauses<T>(steps: Interruptible<T>, pause: Pause): Promise<T> {
  let step = steps.next();
  while (!step.done) {
    await pause();
    step = steps.next();
  }
  return step.value;
}

/** Each item made into something else, with pauses between them. */
export async function mapWithPauses<From, To>(
  items: Iterable<From>,
  made: (item: From) => To,
  pause: Pause,
): Promise<To[]> {
  const all: To[] = [];
  for (const item of items) {
    all.push(made(item));
    await pause();
  }
  return all;
}

/** Lets whatever came meanwhile go first. */
export const yieldToEventLoop = () => new Promise((resolve) => setTimeout(resolve, 0));
