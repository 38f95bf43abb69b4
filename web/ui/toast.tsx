import { createContext, type ReactNode, useCallback, useContext, useMemo, useState } from 'react';
import { Button } from './controls.tsx';
import './toast.css';

interface Said {
  id: number;
  words: string;
  undo?: (() => void) | undefined;
}

type Say = (words: string, undo?: () => void) => void;

const SayContext = createContext<Say>(() => {});

/** Says what was done, with a way back where there is one. It stays until the next word or until dismissed. */
export const useSay = (): Say => useContext(SayContext);

export function Toasts({ children }: { children: ReactNode }) {
  const [said, setSaid] = useState<Said | null>(null);
  const say = useCallback<Say>(
    (words, undo) => setSaid(before => ({ id: (before?.id ?? 0) + 1, words, undo })),
    [],
  );
  const dismiss = useMemo(() => () => setSaid(null), []);
  return (
    <SayContext value={say}>
      {children}
      <div className="toast-place no-print" role="status" aria-live="polite">
        {said ? (
          <div className="toast" key={said.id}>
            <span>{said.words}</span>
            {said.undo ? (
              <Button
                onClick={() => {
                  said.undo?.();
                  dismiss();
                }}
              >
                Undo
              </Button>
            ) : null}
            <Button weight="thin" onClick={dismiss}>
              Dismiss
            </Button>
          </div>
        ) : null}
      </div>
    </SayContext>
  );
}
