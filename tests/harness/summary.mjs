/** What `npm test` and `npm run test:quick` print at their end. */
import { relative } from 'node:path';

/** Prints what each part came to, and all failures once more. */
export function summarize(parts) {
  console.log('\n== Summary');
  for (const part of parts)
    console.log(
      `${part.failed ? 'FAILED' : 'ok    '} ${part.name}: ${part.passed} of ${part.passed + part.failed}`,
    );
  for (const failure of parts.flatMap(({ failures = [] }) => failures)) console.log(`\n${failure}`);
  const total = (key) => parts.reduce((sum, part) => sum + part[key], 0);
  console.log(`${total('passed')} passed, ${total('failed')} failed`);
  process.exitCode = total('failed') ? 1 : 0;
}

/** Repeated at the end: of a long log often only the end is kept. */
export function failuresIn(testResults, root) {
  return testResults.flatMap(({ name: file, message, assertionResults }) => {
    const failed = assertionResults.filter(({ status }) => status === 'failed');
    // A file that could not be read at all has a message and no tests.
    if (assertionResults.length === 0 && message) return [`${relative(root, file)}: ${message}`];
    return failed.map(
      ({ fullName, failureMessages }) =>
        `${relative(root, file)}: ${fullName}\n${failureMessages.join('\n')}`,
    );
  });
}
