/** The only clock of the server: today's date where it runs. */
import { Temporal } from 'temporal-polyfill';

/** ISO date. */
export const today = (): string => Temporal.Now.plainDateISO().toString();
