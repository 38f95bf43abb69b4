import { headerRoles, type Role, type Roles } from '../reading/column-words.ts';

/** Header words of each cell, or null when the line is no header: two roles at least, and most cells must be known. */
export function headerOf(cells: readonly string[]): (Roles | null)[] | null {
  const roles = cells.map(cell => (cell.trim() ? headerRoles(cell.trim()) : null));
  const known = roles.filter(role => role !== null);
  const printed = cells.filter(cell => cell.trim());
  const strongest = new Set(known.map(role => strongestRole(role)));
  const names = printed.filter((cell, at) => !headerRoles(cell.trim()) && at > 0 && cell.trim().length <= 12);
  if (strongest.size < 2 || known.length < 2) return null;
  return known.length >= 0.6 * printed.length || known.length + names.length === printed.length
    ? roles
    : null;
}

export const strongestRole = (roles: Roles): Role =>
  (Object.entries(roles) as [Role, number][]).reduce((a, b) => (b[1] > a[1] ? b : a))[0];
