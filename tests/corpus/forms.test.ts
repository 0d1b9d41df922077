/** Every row of the table of spoken forms proves itself by its examples. */
import { describe, expect, test } from 'vitest';
import { readSpoken } from '../../server/model/spoken/read.ts';
import { FORMS } from '../../server/model/spoken/table.ts';

const AROUND = { section: 'session', words: new Map(), specs: new Map(), inConflict: false } as const;

describe.each(FORMS.map((form) => [form.name, form] as const))('%s', (_, form) => {
  test.each(form.examples.map(([text, lines, habits]) => [text, lines, habits ?? {}] as const))(
    '%s',
    (text, lines, habits) =>
      expect(readSpoken(text, AROUND, habits)).toMatchObject({
        status: 'spoken',
        as: lines.split(' | '),
      }),
  );
  test('has one', () => expect(form.examples.length).toBeGreaterThan(0));
});
