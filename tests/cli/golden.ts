/** Answers kept in tests/golden: compared, or with UPDATE=1 written anew and to be looked at in the diff. */
/// <reference types="node" />
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';

const FOLDER = join(import.meta.dirname, '../golden');

export function expectGolden(name: string, answer: string): void {
  const path = join(FOLDER, name);
  if (process.env.UPDATE) writeFileSync(path, answer);
  expect(answer, `${name}: UPDATE=1 writes it anew`).toBe(readFileSync(path, 'utf8'));
}
