/** Work groups: settings that one job moves together, so that they count as one cause. */
import { VOCABULARY } from '../vocabulary/vocabulary.ts';

/** The same name for settings, and kinds of part, that one piece of work moves (`Traits.goesWith`); any other is work of its own. */
export const workGroupOf = (name: string): string => GROUP_OF.get(name) ?? name;

const GROUP_OF: ReadonlyMap<string, string> = new Map(
  VOCABULARY.flatMap(({ name, traits }) => (traits?.goesWith ? [[name, traits.goesWith] as const] : [])),
);
