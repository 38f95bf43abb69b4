import './theme.ts';
import './fonts.css';
import './look.css';
import './ui/table.css';
import { MutationCache, QueryCache, QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { Problem } from './problem.ts';

/** Who is no longer signed in is asked to sign in, whatever they were about to do. */
const onError = (error: unknown) => {
  if (Problem.from(error).code === 'not-signed-in') void client.invalidateQueries({ queryKey: ['session'] });
};

const client: QueryClient = new QueryClient({
  queryCache: new QueryCache({ onError }),
  mutationCache: new MutationCache({ onError }),
  defaultOptions: {
    queries: {
      staleTime: 5_000,
      // What was refused stays refused; what was not reached may be a hiccup.
      retry: (count, error) => count < 2 && Problem.from(error).status === 0,
      refetchOnWindowFocus: true,
    },
  },
});

createRoot(document.getElementById('page')!).render(
  <StrictMode>
    <QueryClientProvider client={client}>
      <App />
    </QueryClientProvider>
  </StrictMode>,
);
