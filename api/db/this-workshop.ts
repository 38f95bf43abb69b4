import { type SQL, sql } from 'drizzle-orm';

/** The workshop that the transaction was opened for, as the value of an inserted row's `workshop`. */
export const thisWorkshop: SQL<string> = sql`this_workshop()`;

/** The person that the transaction was opened for, as the value of an inserted row's `person`. */
export const thisPerson: SQL<string> = sql`this_person()`;
