import './theme.ts';
import './fonts.css';
import './look.css';
import './ui/table.css';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { Problem } from './problem.ts';

const client = new QueryClient({
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
