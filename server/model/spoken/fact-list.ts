/** The facts of a line put together: remarks and conditions said after them, values that replace others or contradict them. */
import { findQuantity } from '../../trade/vocabulary/vocabulary.ts';
import type { Fact } from './form.ts';

/** `205 trans, 2nd gear`: a condition said after its number. */
export const withStates = (facts: readonly Fact[], states: readonly string[]): readonly Fact[] =>
  facts.map((fact, i) => (i === facts.length - 1 ? { ...fact, states: [...fact.states, ...states] } : fact));

export const withRemark = (facts: readonly Fact[], remark: string): readonly Fact[] =>
  facts.map((fact, i) =>
    i === facts.length - 1 ? { ...fact, remark: [fact.remark, remark].filter(Boolean).join(', ') } : fact,
  );

/** A setting that a line gives two values for one place has none, and neither has a reading told twice alike. */
export const contradicts = (facts: readonly Fact[]): boolean =>
  facts.some((fact, i) => {
    const isSetting = findQuantity(fact.name.split(' '))?.quantity.kind === 'setting';
    const likes = facts.filter((each, j) => j > i && each.name === fact.name && each.place === fact.place);
    // A reading may be taken again, where something says that it is another one.
    if (fact.name === 'run time') return false;
    return likes.some((each) => isSetting || (!each.isMoved && sayWhen(each) === sayWhen(fact)));
  });

const sayWhen = ({ states, remark }: Fact): string => [...states, remark].join('|');

/** What was before or is printed goes where the value of today is given too. */
export function current(facts: readonly Fact[]): readonly Fact[] {
  const isNow = (fact: Fact) =>
    fact.of === 'now' ||
    !facts.some((each) => each.of === 'now' && each.name === fact.name && each.place === fact.place);
  // `advanced 2, makes 10`: where it came to says it all.
  const isReplaced = (fact: Fact, i: number) =>
    /^(?:[+-]|in |out )/.test(fact.value) &&
    facts.some(
      (each, j) =>
        j > i &&
        each.name === fact.name &&
        each.place === fact.place &&
        !/^(?:[+-]|in |out )/.test(each.value),
    );
  return facts.filter((fact, i) => isNow(fact) && !isReplaced(fact, i));
}
