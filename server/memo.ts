/**
 * Memos of answers: the one place where an answer is stored to be returned again. It knows nothing of notebooks, and every
 * room above may use it. In all of them `make` depends on the key alone; `context` is what it needs besides to find the answer, and
 * the same key always comes with a context that leads to the same answer.
 */

/** Keeps the answer to each object as long as the object lives. */
export function once<Key extends object, Context extends unknown[], Answer>(
  make: (key: Key, ...context: Context) => Answer,
): (key: Key, ...context: Context) => Answer {
  const answers = new WeakMap<Key, Answer>();
  return (key, ...context) => {
    const known = answers.get(key);
    if (known !== undefined || answers.has(key)) return known as Answer;
    const answer = make(key, ...context);
    answers.set(key, answer);
    return answer;
  };
}

/** As `once`, where who makes one object of another may carry the answer over, cheaper than it is made anew. */
export function onceOrCarried<Key extends object, Answer>(
  make: (key: Key) => Answer,
): { readonly of: (key: Key) => Answer; readonly carry: (key: Key, answer: Answer) => void } {
  const answers = new WeakMap<Key, Answer>();
  const of = (key: Key): Answer => {
    const known = answers.get(key);
    if (known !== undefined || answers.has(key)) return known as Answer;
    const answer = make(key);
    answers.set(key, answer);
    return answer;
  };
  return { of, carry: (key, answer) => void answers.set(key, answer) };
}

/** As `once`, where the answer depends on a second thing too: for each object that of its latest second is kept. */
export function oncePerPair<Key extends object, Second, Answer>(
  make: (key: Key, second: Second) => Answer,
): (key: Key, second: Second) => Answer {
  const answers = new WeakMap<Key, { readonly second: Second; readonly answer: Answer }>();
  return (key, second) => {
    const known = answers.get(key);
    if (known && known.second === second) return known.answer;
    const answer = make(key, second);
    answers.set(key, { second, answer });
    return answer;
  };
}

/** As `once`, where the answer is made in steps: the first who takes all of them leaves it to the others. */
export function onceInSteps<Key extends object, Answer>(
  make: (key: Key) => Generator<void, Answer>,
): (key: Key) => Generator<void, Answer> {
  const answers = new WeakMap<Key, Answer>();
  return function* (key) {
    const answer = answers.get(key) ?? (yield* make(key));
    answers.set(key, answer);
    return answer;
  };
}

/**
 * Keeps the answers to the latest `size` keys, for what several callers need of one line: where keys come and go with each
 * line, `once` costs the garbage collector more than the answers are worth. A key is held strongly until as many others have come.
 */
export function latestFew<Key, Context extends unknown[], Answer>(
  size: number,
  make: (key: Key, ...context: Context) => Answer,
  isSame?: (a: Key, b: Key) => boolean,
): (key: Key, ...context: Context) => Answer {
  const keys: Key[] = [];
  const answers: Answer[] = [];
  let next = 0;
  return (key, ...context) => {
    const at = isSame ? keys.findIndex((each) => isSame(each, key)) : keys.indexOf(key);
    if (at >= 0) return answers[at] as Answer;
    const answer = make(key, ...context);
    keys[next] = key;
    answers[next] = answer;
    next = (next + 1) % size;
    return answer;
  };
}

/**
 * Keeps the answers to texts in two generations of `size`, the older dropped as a whole: what is asked again within `size` other
 * texts is still known, and no text is held longer than twice that.
 */
export function bounded<Answer extends object, Context extends unknown[]>(
  size: number,
  make: (text: string, ...context: Context) => Answer,
): (text: string, ...context: Context) => Answer {
  let young = new Map<string, Answer>();
  let old = new Map<string, Answer>();
  return (text, ...context) => {
    const known = young.get(text);
    if (known) return known;
    const answer = old.get(text) ?? make(text, ...context);
    if (young.size >= size) {
      old = young;
      young = new Map();
    }
    young.set(text, answer);
    return answer;
  };
}
