/**
 * What someone may do on a bench, each with all that stands below it: a reader looks; the counter opens jobs, picks
 * needs and hands over; a repairer does all of the work; an owner has people, tokens, the trail and erasure besides.
 */
export const roles = ['reader', 'counter', 'repairer', 'owner'] as const;
export type Role = (typeof roles)[number];

/** Whether a role holds all that another may. */
export const holds = (role: Role, least: Role): boolean => roles.indexOf(role) >= roles.indexOf(least);
