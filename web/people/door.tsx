import { useQuery, useQueryClient } from '@tanstack/react-query';
import { type ReactNode, useMemo } from 'react';
import { useLocation } from 'wouter';
import { api } from '../api.ts';
import { Sheet } from '../ui/sheet.tsx';
import { Refused, Waiting } from '../ui/states.tsx';
import '../top.css';
import { JoinPage } from './join-page.tsx';
import { NewPasswordPage } from './new-password-page.tsx';
import { SignInPage } from './sign-in-page.tsx';
import { type Who, WhoContext } from './who.ts';

/** Where people sign in, the page is shown to one who has; to any other, the way in. */
export function WhoProvider({ children }: { children: ReactNode }) {
  const client = useQueryClient();
  const [place] = useLocation();
  const query = useQuery({ queryKey: ['session'], queryFn: api.session, staleTime: 60_000 });
  const person = query.data?.person ?? null;
  const who = useMemo<Who>(
    () => ({
      person,
      changed: async () => {
        const stays = ['session', 'invitation'];
        client.removeQueries({ predicate: ({ queryKey }) => !stays.includes(String(queryKey[0])) });
        await client.refetchQueries({ queryKey: ['session'] });
      },
    }),
    [person, client],
  );
  return <WhoContext value={who}>{view()}</WhoContext>;

  function view(): ReactNode {
    if (!query.data)
      return (
        <Sheet title="Fettlebench">
          <h1 className="only-heard">Fettlebench</h1>
          {query.isError ? (
            <Refused error={query.error} onAgain={() => query.refetch()} />
          ) : (
            <Waiting title="Opening the door" />
          )}
        </Sheet>
      );
    if (query.data.accounts && place === '/join') return <Door page={<JoinPage />} />;
    if (query.data.accounts && place === '/new-password') return <Door page={<NewPasswordPage />} />;
    if (query.data.accounts && !person) return <Door page={<SignInPage />} />;
    return <div key={person?.id}>{children}</div>;
  }
}

/** What is seen before one is in: the name of the house, and one sheet. */
const Door = ({ page }: { page: ReactNode }) => (
  <>
    <header className="top no-print">
      <span className="name">Fettlebench</span>
    </header>
    {page}
  </>
);
