import type { AskAnswer } from '../../api/answers/index.ts';
import { sizeWords } from '../part/size.tsx';
import { useMay } from '../people/may.tsx';
import { Button } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';
import { useTakenAs } from './use-taken-as.ts';

/** Answers whether an article of which something is not stated is the one that states it; nothing where it is not asked. */
export function AnswerOpen({ ask }: { ask: AskAnswer }) {
  const word = useTakenAs();
  const mayAnswer = useMay('counter');
  const { needs, takeAs = [], own } = ask;
  if (!mayAnswer || own === undefined || takeAs.length === 0) return null;
  const is = (item: string) =>
    word.mutate({
      needs,
      takenAs: item,
      before: null,
      words: `${sizeWords(own)} is ${item === own ? 'kept apart' : `ordered as ${sizeWords(item)}`}.`,
    });
  return (
    <>
      <p className="buttons no-print">
        {takeAs.map(item => (
          <Button key={item} busy={word.isPending} onClick={() => is(item)}>
            {takeAs.length === 1 ? 'Yes, the same' : `It is ${sizeWords(item)}`}
          </Button>
        ))}
        <Button weight="thin" busy={word.isPending} onClick={() => is(own)}>
          No, keep it apart
        </Button>
      </p>
      {word.isError ? <Refused error={word.error} /> : null}
    </>
  );
}
