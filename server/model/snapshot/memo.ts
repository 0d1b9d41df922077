/**
 * Memo of the latest few answers by object, for what several callers need of one line: a WeakMap would do the same but
 * cost the garbage collector more than the answers are worth.
 */
export function recently<Key extends object, Answer>(
  size: number,
  ask: (key: Key) => Answer,
): (key: Key) => Answer {
  const keys: (Key | undefined)[] = new Array(size).fill(undefined);
  const answers: Answer[] = [];
  let next = 0;
  return (key) => {
    const known = keys.indexOf(key);
    if (known >= 0) return answers[known] as Answer;
    const answer = ask(key);
    keys[next] = key;
    answers[next] = answer;
    next = (next + 1) % size;
    return answer;
  };
}
