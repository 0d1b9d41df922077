/**
 * Addresses of files (URIs), split into names and put together again, so that two spellings of one file are the same. Our own:
 * `vscode-uri` 3.2.0 throws on half a surrogate pair and on `file:////a`, reads `%2F` inside a name as a separator, and spells
 * `FILE:///a//b/` and `file:///a/b` differently.
 */

/** An address: the text before the path, and the names in the path, decoded. */
interface Address {
  readonly start: string;
  readonly parts: readonly string[];
}

const cache = new Map<string, Address>();
const MOST_CACHED = 20_000;

function addressOf(uri: string): Address {
  let address = cache.get(uri);
  if (!address) {
    if (cache.size >= MOST_CACHED) cache.clear();
    address = parseAddress(uri);
    cache.set(uri, address);
  }
  return address;
}

function parseAddress(uri: string): Address {
  const [, scheme = '', authority = '', path = ''] =
    /^([a-z][a-z0-9+.-]*:)?(\/\/[^/]*)?(.*)$/is.exec(uri) ?? [];
  const [first = '', ...rest] = path.split('/').filter(Boolean).map(decoded);
  const parts = /^[A-Z]:$/.test(first) ? [first.toLowerCase(), ...rest] : [first, ...rest];
  return { start: `${scheme.toLowerCase()}${authority}`, parts: parts.filter(Boolean) };
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** Half of a surrogate pair, which no URI can hold; a disk reads it as the replacement character too. */
const HALF = /\p{Surrogate}/gu;

const encoded = (part: string): string => encodeURIComponent(part.replace(HALF, '\uFFFD'));

const joinAddress = (start: string, parts: readonly string[]): string =>
  `${start}/${parts.map(encoded).join('/')}`;

/** The one spelling of an address. */
export function plainAddress(uri: string): string {
  const { start, parts } = addressOf(uri);
  return joinAddress(start, parts);
}

/** The names from a folder down to a file in it; undefined where it is not below that folder. */
export function partsBelow(folder: string, uri: string): readonly string[] | undefined {
  const [above, below] = [addressOf(folder), addressOf(uri)];
  const isBelow =
    above.start === below.start &&
    above.parts.length < below.parts.length &&
    above.parts.every((part, i) => part === below.parts[i]);
  return isBelow ? below.parts.slice(above.parts.length) : undefined;
}

/** `parts`: names as a person reads them, not as a URI writes them. */
export function addressBelow(folder: string, parts: readonly string[]): string {
  const { start, parts: above } = addressOf(folder);
  return joinAddress(start, [...above, ...parts]);
}

/** Without an ending slash. */
export function folderOf(uri: string): string {
  const { start, parts } = addressOf(uri);
  return joinAddress(start, parts.slice(0, -1));
}

/** The path from a notebook's folder to a file; undefined where there is none. */
export function pathBetween(notebook: string, file: string): string | undefined {
  const [from, to] = [addressOf(folderOf(notebook)), addressOf(file)];
  if (from.start !== to.start) return undefined;
  let shared = 0;
  while (shared < from.parts.length && from.parts[shared] === to.parts[shared]) shared++;
  return [...from.parts.slice(shared).map(() => '..'), ...to.parts.slice(shared)].join('/');
}
