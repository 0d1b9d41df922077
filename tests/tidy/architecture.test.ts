/** The arrows of the architecture, on the project as it is and on invented files that break each of them. */
import { expect, test } from 'vitest';
import { cycles, impurities, wrongArrows } from './architecture.ts';
import { projectFiles } from './files.ts';

const project = projectFiles();

test('imports go one way', () => expect(wrongArrows(project)).toEqual([]));
test('no file imports itself by a way round', () => expect(cycles(project)).toEqual([]));
test('nothing pure leans on Node', () => expect(impurities(project)).toEqual([]));

const WRONG: readonly (readonly [path: string, text: string])[] = [
  ['server/trade/measure/a.ts', `import { b } from '../../../grammar/b.ts';`],
  ['server/trade/vocabulary/a.ts', `import { b } from '../sums/b.ts';`],
  ['server/model/entry/a.ts', `import type { B } from '../state/b.ts';`],
  ['server/analysis/air/a.ts', `import { b } from '../evidence/b.ts';`],
  ['server/rules/lib/a.ts', `import { b } from '../fuel/b.ts';`],
  ['grammar/a.ts', `export * from '../server/trade/sums/b.ts';`],
  ['server/model/snapshot/a.ts', `import type { B } from '../../rules/b.ts';`],
  ['server/features/a.ts', `import {\n  b,\n} from "../report/b.ts";`],
  ['client/a.ts', `import { b } from '../server/model/entry/b.ts';`],
  ['server/lsp/a.ts', `const b = await import('../cli/b.ts');`],
  ['server/model/entry/a.ts', `import 'chevrotain';`],
  ['server/rules/a.ts', `import { b } from 'vscode-languageserver';`],
  ['server/main.worker.ts', `import { b } from 'node:fs';`],
];
const RIGHT: readonly (readonly [path: string, text: string])[] = [
  ['server/model/entry/a.ts', `import { b } from '../../../grammar/b.ts';`],
  ['server/lsp/a.ts', `import { b } from '../features/b.ts';\nimport 'vscode-languageserver';`],
  ['server/main.node.ts', `import { b } from './lsp/b.ts';\nimport 'node:fs';`],
  ['client/a.ts', `import 'vscode';\nimport './b.ts';`],
  ['grammar/a.ts', `// import 'node:fs';\nimport 'chevrotain';`],
];

test.each(WRONG)('wrong: %s %s', (path, text) =>
  expect(wrongArrows(new Map([[path, text]]))).toHaveLength(1),
);
test.each(RIGHT)('right: %s %s', (path, text) => expect(wrongArrows(new Map([[path, text]]))).toEqual([]));

test('a cycle is found', () => {
  const files = ['a', 'b', 'c'].map(
    (name, at, all) => [`grammar/${name}.ts`, `import './${all[(at + 1) % 3]}.ts';`] as const,
  );
  expect(cycles(new Map(files))).toEqual(['grammar/a.ts -> grammar/b.ts -> grammar/c.ts -> grammar/a.ts']);
});

test.each([
  ['server/model/entry/a.ts', 'process.exit(1);'],
  ['grammar/a.ts', `import { b } from './b';`],
])('impure: %s %s', (path, text) => expect(impurities(new Map([[path, text]]))).toHaveLength(1));
