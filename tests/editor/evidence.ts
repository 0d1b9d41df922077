/** What a suite printed: proof that its tests ran to their end, which an editor's exit status alone is not. */

/** How many tests passed and failed. */
export interface Counts {
  readonly passed: number;
  readonly failed: number;
}

/** The suite marks its own lines with it, so that they can be told from the editor's. */
export const MARK = '[suite] ';
const SUMMARY = /^(\d+) passed, (\d+) failed$/;

/**
 * Reads what an editor prints while it runs a suite.
 * @param onLine gets each line of the suite but its summary.
 * @returns `take` for the output as it comes, whole lines at a time, and `counts`: undefined until the suite has closed.
 */
export function suiteReader(onLine: (line: string) => void) {
  let counts: Counts | undefined;
  const take = (output: string) => {
    for (const line of output.split('\n').filter((text) => text.includes(MARK))) {
      const said = line.slice(line.indexOf(MARK) + MARK.length);
      const summary = SUMMARY.exec(said);
      if (summary) counts = { passed: Number(summary[1]), failed: Number(summary[2]) };
      else onLine(said);
    }
  };
  return { take, counts: () => counts };
}

/** True when at least one test ran and none failed. */
export function allPassed(counts: Counts | undefined): counts is Counts {
  return counts !== undefined && counts.passed > 0 && counts.failed === 0;
}
