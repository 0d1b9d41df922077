/** Long work cut into steps, so that whoever asked for it may see to something else between two of them, or stop. */
export type Interruptible<T> = Generator<void, T>;

/** For those who wait: all steps at once. */
export function runToEnd<T>(steps: Interruptible<T>): T {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
