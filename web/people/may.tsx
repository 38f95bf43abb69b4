import type { ReactNode } from 'react';
import type { Role } from '../../api/answers/index.ts';
import { useBench } from '../bench.tsx';
import { rolesToChoose } from './role-words.ts';

/**
 * Whether one may do what takes at least this role on the bench shown; everybody may where nobody signs in. What the
 * page does not offer the service refuses all the same.
 */
export function useMay(least: Role): boolean {
  const { bench } = useBench();
  return !bench?.role || rolesToChoose.indexOf(bench.role) >= rolesToChoose.indexOf(least);
}

/** What is offered to those alone who may do it. */
export function May({ least, children }: { least: Role; children: ReactNode }) {
  return useMay(least) ? children : null;
}
