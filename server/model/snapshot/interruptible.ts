/** Long work cut into steps, so that whoever asked for it may see to something else between two of them, or stop. */
export type Steps<T> = Generator<void, T>;

/** For those who wait: all steps at once. */
export function finished<T>(steps: Steps<T>): T {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
