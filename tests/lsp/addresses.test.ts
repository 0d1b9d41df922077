/** Two spellings of one file are the same; a path leads from a notebook to a file and nowhere else. */
import { describe, expect, test } from 'vitest';
import { partsBelow, pathBetween, plainAddress } from '../../server/lsp/workspace/addresses.ts';
import { createPlaces } from '../../server/lsp/workspace/places.ts';

test.each([
  ['file:///c%3A/a b/x.tappet', 'file:///C:/a%20b/x.tappet'],
  ['file:///a/%C3%A4.tappet', 'file:///a/ä.tappet'],
  ['FILE:///a//b/', 'file:///a/b'],
  ['vscode-vfs://host/a/b', 'vscode-vfs://host/a/b'],
  ['untitled:Untitled-1', 'untitled:Untitled-1'],
  ['file:///a/100%.tappet', 'file:///a/100%25.tappet'],
  ['file:///a/\uD800.jpg', 'file:///a/%EF%BF%BD.jpg'],
  ['file:///a/\uDC00🔧\uD800', 'file:///a/\uFFFD%F0%9F%94%A7\uFFFD'],
])('%s is %s', (one, other) => expect(plainAddress(one)).toBe(plainAddress(other)));

test.each([
  ['file:///a', 'file:///a/b/c.tappet', 'b/c.tappet'],
  ['file:///a/', 'file:///a/b%20c.tappet', 'b c.tappet'],
  ['file:///a', 'file:///ab/c.tappet', undefined],
  ['file:///a', 'file:///a', undefined],
  ['file:///a', 'memory:///a/c.tappet', undefined],
])('below %s: %s', (folder, uri, parts) => expect(partsBelow(folder, uri)?.join('/')).toBe(parts));

test.each([
  ['file:///a/x.tappet', 'file:///a/photos/b%20c.jpg', 'photos/b c.jpg'],
  ['file:///a/b/x.tappet', 'file:///a/c.jpg', '../c.jpg'],
  ['file:///a/b/x.tappet', 'file:///d/c.jpg', '../../d/c.jpg'],
  ['file:///a/x.tappet', 'memory:///a/c.jpg', undefined],
])('from %s to %s', (notebook, file, path) => expect(pathBetween(notebook, file)).toBe(path));

describe('what a path means', () => {
  const places = createPlaces();
  places.setRoots(['file:///shop-home', 'file:///shop-home/boats/inner/']);
  test.each([
    ['file:///shop-home/boats/x.tappet', 'a.jpg', 'file:///shop-home/boats/a.jpg'],
    ['file:///shop-home/boats/x.tappet', '../shop/a.tappet', 'file:///shop-home/shop/a.tappet'],
    ['file:///shop-home/boats/x.tappet', '../../a.tappet', undefined],
    ['file:///shop-home/boats/inner/x.tappet', '../a.tappet', undefined],
    ['file:///shop-home/x.tappet', '/etc/a.tappet', undefined],
    ['file:///shop-home/x.tappet', 'C:\\a.tappet', undefined],
    ['file:///shop-home/x.tappet', 'http://a/b.tappet', undefined],
    ['file:///alone/x.tappet', 'b/a.tappet', 'file:///alone/b/a.tappet'],
    ['file:///alone/x.tappet', '../a.tappet', undefined],
    ['file:///shop-home/x.tappet', '%2e%2e/a.tappet', 'file:///shop-home/%252e%252e/a.tappet'],
  ])('%s: %s', (notebook, path, target) => expect(places.resolve(notebook, path)).toBe(target));
});
