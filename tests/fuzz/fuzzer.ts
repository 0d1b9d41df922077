/** What a fuzz run holds: a property, drawn many times. */
import type fc from 'fast-check';

export interface Fuzzer {
  readonly name: string;
  readonly property: () => fc.IProperty<unknown> | fc.IAsyncProperty<unknown>;
  /** About how many inputs one run of the property tries. */
  readonly stepsPerRun: number;
}
