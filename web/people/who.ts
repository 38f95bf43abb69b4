import { createContext, useContext } from 'react';
import type { Session } from '../../api/answers/index.ts';

export interface Who {
  /** Who is signed in; null where nobody signs in at all. */
  person: Session['person'];
  /** Another is signed in from now on, or nobody: nothing that was fetched before is kept. */
  changed: () => Promise<void>;
}

export const WhoContext = createContext<Who>({ person: null, changed: async () => {} });

/** Who is signed in, for any place of the page. */
export const useWho = (): Who => useContext(WhoContext);
