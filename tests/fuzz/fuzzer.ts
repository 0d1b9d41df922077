/** What the runner and the tests know of a fuzzer: values made at random, and what must hold of each. */
import type fc from 'fast-check';

export interface Fuzzer {
  readonly name: string;
  readonly property: () => fc.IProperty<unknown> | fc.IAsyncProperty<unknown>;
  /** What one run counts for: a text with its one question is a step, a talk of twenty messages is twenty. */
  readonly stepsPerRun: number;
}
