/** Programs that are waited for without holding up the routes that run beside. */
import type { ChildProcess } from 'node:child_process';

interface Ended {
  /** Null where a signal ended it. */
  readonly status: number | null;
  /** All that it wrote, in the order it came. */
  readonly output: string;
}

/** How a program ended. Rejects where it cannot be started. */
export function ended(child: ChildProcess): Promise<Ended> {
  let output = '';
  const take = (text: Buffer) => {
    output += text;
  };
  child.stdout?.on('data', take);
  child.stderr?.on('data', take);
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (status) => resolve({ status, output }));
  });
}
