/** Counts the steps of a piece of work, so that how it grows can be told without a clock, and is the same at every run. */

/** What goes over a whole array, however it ends. */
const WHOLE =
  'map flatMap filter forEach reduce concat flat join sort toSorted reverse includes indexOf lastIndexOf'.split(
    ' ',
  );
/** What goes over an array until it has an answer. */
const UNTIL = 'some every find findIndex findLast findLastIndex'.split(' ');

type Method = (...args: unknown[]) => unknown;
type Methods = Record<string, Method>;

/**
 * Steps of `work`: items that arrays, maps and sets give out, one by one or in a copy. Calls and sums between them are
 * not counted; where something grows too fast, it goes over something.
 */
export function stepsOf(work: () => unknown): number {
  let steps = 0;
  const restore: (() => void)[] = [];
  const replace = (on: object, name: string, by: (own: Method) => Method): void => {
    const methods = on as Methods;
    const own = methods[name] as Method;
    methods[name] = by(own);
    restore.push(() => {
      methods[name] = own;
    });
  };
  for (const empty of [[], new Map(), new Set()])
    replace(Object.getPrototypeOf(empty[Symbol.iterator]()), 'next', (own) => {
      return function (this: unknown) {
        steps++;
        return own.call(this);
      };
    });
  for (const name of WHOLE)
    replace(Array.prototype, name, (own) => {
      return function (this: unknown, ...args) {
        steps += (this as unknown[]).length;
        return own.apply(this, args);
      };
    });
  replace(Array.prototype, 'slice', (own) => {
    return function (this: unknown, ...args) {
      const part = own.apply(this, args) as unknown[];
      steps += part.length;
      return part;
    };
  });
  for (const name of UNTIL)
    replace(Array.prototype, name, (own) => {
      return function (this: unknown, ask, ...args) {
        return own.call(
          this,
          (...given: unknown[]) => {
            steps++;
            return (ask as Method)(...given);
          },
          ...args,
        );
      };
    });
  try {
    steps = 0;
    work();
    return steps;
  } finally {
    for (const each of restore.reverse()) each();
  }
}
