/** A long computation as a generator: it yields between pages so that the caller can serve other requests, or cancel. */
export type Interruptible<T> = Generator<void, T>;

/** Runs all steps at once, for callers that wait. */
export function runToEnd<T>(steps: Interruptible<T>): T {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
