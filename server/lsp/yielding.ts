/** Runs long work in 10 ms slices; yields to the event loop between them; stops when cancelled or the text changed. */
import type { ResponseError } from 'vscode-languageserver';
import type { Interruptible } from '../model/snapshot/interruptible.ts';

/** Called between two steps of long work: returns at once while the slice lasts, else yields; throws when the work is no longer needed. */
export type Pause = () => Promise<void>;

/** Milliseconds of work in one slice: a keystroke waits for no more than a few of them. */
const LONGEST_SLICE = 10;

/** `whyStop`: the error that ends the work, or undefined to go on. */
export function pausing(whyStop: () => ResponseError<void> | undefined): Pause {
  let since = Date.now();
  return async () => {
    if (Date.now() - since < LONGEST_SLICE) return;
    await yieldToEventLoop();
    since = Date.now();
    const error = whyStop();
    if (error) throw error;
  };
}

/** For work that no request waits for: it yields and never stops. */
export const pauseOnly = (): Pause => pausing(() => undefined);

/** Runs all steps, with pauses between them. */
export async function runWithPauses<T>(steps: Interruptible<T>, pause: Pause): Promise<T> {
  let step = steps.next();
  while (!step.done) {
    await pause();
    step = steps.next();
  }
  return step.value;
}

/** Maps each item, with pauses between them. */
export async function mapWithPauses<From, To>(
  items: Iterable<From>,
  map: (item: From) => To,
  pause: Pause,
): Promise<To[]> {
  const all: To[] = [];
  for (const item of items) {
    all.push(map(item));
    await pause();
  }
  return all;
}

/** Lets requests and notifications that came meanwhile run first. */
export const yieldToEventLoop = () => new Promise((resolve) => setTimeout(resolve, 0));
