/** All fuzzers. */
import { actions } from './actions.ts';
import { csv } from './csv.ts';
import { formats } from './formats.ts';
import type { Fuzzer } from './fuzzer.ts';

export const FUZZERS: readonly Fuzzer[] = [formats, actions, csv];
