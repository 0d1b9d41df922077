/** All fuzzers. */
import { actions } from './actions.ts';
import { csv } from './csv.ts';
import { edits } from './edits.ts';
import { formats } from './formats.ts';
import type { Fuzzer } from './fuzzer.ts';
import { names } from './names.ts';
import { requests } from './requests.ts';

export const FUZZERS: readonly Fuzzer[] = [edits, requests, formats, actions, names, csv];
