/** Notebooks on the command line with those that they use: inside the folder that `placeOf` allows, each read once. */

import type { Shared } from '../model/snapshot/look-up.ts';
import { type FileText, partsWithin } from '../model/snapshot/named-files.ts';
import type { Snapshot } from '../model/snapshot/snapshot.ts';
import { findingCircles, usedFirst } from '../model/snapshot/use-circles.ts';
import {
  LARGEST_USED,
  type NotebookTexts,
  sharedFor,
  stateGiven,
  usesIn,
} from '../model/snapshot/used-notebooks.ts';
import type { Absent } from '../model/state/lookup.ts';
import type { State } from '../model/state/state.ts';
import { openNotebook } from '../rules/check.ts';
import type { Terminal } from './terminal.ts';

/** What the notebook at a path gets from others. */
type SharedAt = (path: string) => Shared;

/** Opens the text of the notebook at a path. */
type OpenText = (path: string, text: string) => Snapshot;

export function openingWith(terminal: Terminal): OpenText {
  const sharedAt = sharingWith(terminal);
  return (path, text) => openNotebook(text, sharedAt(path));
}

export function sharingWith(terminal: Terminal): SharedAt {
  const files = cached((name: string) => read(name, terminal));
  const targetsOf = cached((name: string): readonly string[] =>
    usesIn(textIn(files(name))).flatMap((path) => resolve(name, path) ?? []),
  );
  const isCircle = findingCircles(targetsOf);
  const given = new Map<string, State>();
  const texts: NotebookTexts = {
    resolve,
    isCircle,
    stateOf: (name) => {
      const file = files(name);
      return 'problem' in file ? file : stateOf(name);
    },
    missing: cached((name: string) => missingAt(name, terminal)),
  };

  /** What a notebook uses is read before it, not while it is: a chain may be longer than calls can be nested. */
  function stateOf(name: string): State {
    for (const each of usedFirst([name], unreadOf))
      if (!given.has(each))
        given.set(each, stateGiven(openNotebook(textIn(files(each)), sharedFor(each, texts))));
    return given.get(name) as State;
  }
  const unreadOf = (name: string) => (given.has(name) ? [] : targetsOf(name));

  return (path) => {
    const { root, parts } = terminal.placeOf(path);
    return sharedFor(nameOf(root, [...parts, path.split(/[/\\]/).at(-1) as string]), texts);
  };
}

function resolve(notebook: string, path: string): string | undefined {
  const { root, parts } = JSON.parse(notebook);
  const target = partsWithin(path, parts.slice(0, -1));
  return target && nameOf(root, target);
}

/** Two notebooks have the same name only where they are the same file. */
const nameOf = (root: string, parts: readonly string[]): string => JSON.stringify({ root, parts });

/** A file of any size is larger than nothing, and so it is not read. */
function missingAt(name: string, terminal: Terminal): Absent | undefined {
  const file = fileAt(name, terminal, 0);
  const { parts } = JSON.parse(name);
  return 'problem' in file && file.problem === 'missing' ? { ...file, lookedAt: parts.join('/') } : undefined;
}

function fileAt(name: string, { readBeside }: Terminal, largest?: number): FileText {
  const { root, parts } = JSON.parse(name);
  return readBeside(root === '' ? '-' : `${root}/-`, parts, largest);
}

function read(name: string, terminal: Terminal): FileText {
  const file = fileAt(name, terminal);
  return 'text' in file && file.text.length > LARGEST_USED ? { problem: 'too large' } : file;
}

const textIn = (file: FileText): string => ('text' in file ? file.text : '');

function cached<T>(make: (key: string) => T): (key: string) => T {
  const values = new Map<string, T>();
  return (key) => {
    if (!values.has(key)) values.set(key, make(key));
    return values.get(key) as T;
  };
}
