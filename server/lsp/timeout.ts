/** Timeout for requests from the server to the editor. */

/** Milliseconds. */
const LONGEST_WAIT = 2000;

/** The promised value if it comes in time; else what `otherwise` returns. */
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
