import type { Role } from '../../api/answers/index.ts';

/** What each role is called, and what it is for. */
export const roleWords: Record<Role, { name: string; means: string }> = {
  owner: { name: 'Owner', means: 'All of the work, and people, tokens and the trail.' },
  repairer: { name: 'Repairer', means: 'All of the work.' },
  counter: { name: 'Counter', means: 'Opens jobs, picks needs, hands over.' },
  reader: { name: 'Read only', means: 'Looks at everything, changes nothing.' },
};

/** The roles as one is chosen, the least first. */
export const rolesToChoose: Role[] = ['reader', 'counter', 'repairer', 'owner'];
