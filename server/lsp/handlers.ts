/** Every request an editor may send, a row each. The server's capabilities are the sum of the rows. */
import type { Handler } from './request.ts';
import { FINDING_REQUESTS } from './requests/findings.ts';
import { MEANING_REQUESTS } from './requests/meanings.ts';
import { NAVIGATION_REQUESTS } from './requests/navigation.ts';
import { OUTLINE_REQUESTS } from './requests/outline.ts';
import { RENAME_REQUESTS } from './requests/renaming.ts';
import { TYPING_REQUESTS } from './requests/typing.ts';
import { WRITING_REQUESTS } from './requests/writing.ts';

export const HANDLERS: readonly Handler[] = [
  ...TYPING_REQUESTS,
  ...NAVIGATION_REQUESTS,
  ...OUTLINE_REQUESTS,
  ...RENAME_REQUESTS,
  ...WRITING_REQUESTS,
  ...MEANING_REQUESTS,
  ...FINDING_REQUESTS,
];
