/** The samples are what a reader's own notebook looks like once it is laid out. In `broken/` a broken line is the point. */
import { expect, test } from 'vitest';
import { formatted } from '../harness/checks.ts';
import { projectFiles } from './files.ts';

const samples = [...projectFiles()].filter(([path]) => /^samples\/[^/]+\.tappet$/.test(path));

test('there are samples', () => expect(samples.length).toBeGreaterThan(3));

test.each(samples)('%s is laid out (node dist/cli.cjs format --write samples/*.tappet)', (_, text) =>
  expect(formatted(text)).toBe(text),
);
