/** Every file that is made from a table. `npm run generate` writes them; a test fails when one is stale. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { RULES } from '../../server/rules/check.ts';
import { printedChecks } from '../trade/checks-table.ts';
import { colouring } from './colouring.ts';
import { languageConfiguration, manifest } from './manifest.ts';
import { notation } from './notation.ts';

interface Generated {
  readonly path: string;
  /** The whole text of the file, from its text as it is (empty where there is none). */
  readonly make: (old: string) => string;
}

const GENERATED: readonly Generated[] = [
  { path: 'grammar/tappet.tmLanguage.json', make: colouring },
  { path: 'grammar/language-configuration.json', make: languageConfiguration },
  { path: 'grammar/NOTATION.md', make: notation },
  { path: 'package.json', make: manifest },
  { path: 'tests/trade/CHECKS.md', make: printedChecks },
  ...RULES.map(({ code, bad }) => ({ path: `samples/broken/${code}.tappet`, make: () => bad })),
];

/** The paths of the files that are not what their tables say, each with the text it should have. */
export function staleFiles(root: string): ReadonlyMap<string, string> {
  const stale = new Map<string, string>();
  for (const { path, make } of GENERATED) {
    const file = join(root, path);
    const old = existsSync(file) ? readFileSync(file, 'utf8') : '';
    const text = make(old);
    if (text !== old) stale.set(path, text);
  }
  return stale;
}

/** Writes the files that are stale. @returns their paths. */
export function writeGenerated(root: string): readonly string[] {
  const stale = staleFiles(root);
  for (const [path, text] of stale) {
    const file = join(root, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  return [...stale.keys()];
}
