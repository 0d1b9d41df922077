/** `npm run bench`: what it costs to open, to type and to ask. Times depend on the machine; ratios and growth do not. */
import { benchAnswers } from './answers.ts';
import { benchOpening } from './opening.ts';

await benchOpening();
console.log();
benchAnswers();
