/** The flags of a desktop editor's executable that a test run uses, carried out by the editor in a browser. */
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { MARK } from '../evidence.ts';
import { dropProfile, makeProfile } from '../host.ts';
import { runSuite } from '../run-suite.ts';

const { values, positionals } = parseArgs({
  strict: false, // a desktop editor has many more flags, of no meaning here
  allowPositionals: true,
  options: {
    extensionDevelopmentPath: { type: 'string' },
    extensionTestsPath: { type: 'string' },
    'user-data-dir': { type: 'string' },
    'extensions-dir': { type: 'string' },
  },
});
const path = (name: string) => resolve(String(values[name]));
const profile = makeProfile({}, { user: path('user-data-dir'), extensions: path('extensions-dir') });
try {
  const { ok, reason, counts } = await runSuite({
    profile,
    extension: path('extensionDevelopmentPath'),
    tests: path('extensionTestsPath'),
    folder: resolve(String(positionals[0])),
    host: 'node',
    out: 'out/editor/node',
    onLine: (line) => console.log(MARK + line),
  });
  if (counts) console.log(`${MARK}${counts.passed} passed, ${counts.failed} failed`);
  if (!ok) console.error(reason);
  process.exitCode = ok ? 0 : 1;
} finally {
  dropProfile(profile);
}
