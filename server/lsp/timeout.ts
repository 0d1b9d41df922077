/** How long an answer waits for an editor that is slow to answer itself. */

/** Milliseconds after which it goes on without. */
const LONGEST_WAIT = 2000;

/** What is promised, if that comes in time; else what `otherwise` says. */
export async function inTime<T>(promised: Promise<T>, otherwise: () => T): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = Symbol('late');
  const wait = new Promise<typeof late>((resolve) => {
    timer = setTimeout(resolve, LONGEST_WAIT, late);
  });
  const first = await Promise.race([promised, wait]);
  clearTimeout(timer);
  return first === late ? otherwise() : (first as T);
}
