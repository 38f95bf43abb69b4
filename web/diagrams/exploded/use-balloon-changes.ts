import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { BalloonChange, BalloonChanged, DrawingAnswer, NewBalloon } from '../../../api/answers/index.ts';
import { api } from '../../api.ts';
import { useBench } from '../../bench.tsx';
import { useSay } from '../../ui/toast.tsx';
import type { Balloon } from './balloon.ts';

export const drawingKey = (bench: string | undefined, diagram: string) => ['drawing', bench, diagram];

/** A person's word on balloons; each change says what it did and can be undone. */
export function useBalloonChanges(diagram: string) {
  const { bench } = useBench();
  const client = useQueryClient();
  const say = useSay();
  const show = (drawing: DrawingAnswer) => client.setQueryData(drawingKey(bench?.id, diagram), drawing);
  const done = ({ correction, drawing }: BalloonChanged, words: string) => {
    show(drawing);
    say(words, () => {
      void api
        .undoBalloon(diagram, correction)
        .then(show)
        .catch(() => say('It could not be put back. Change it again.'));
    });
  };
  const change = useMutation({
    mutationFn: ({ balloon, to }: { balloon: Balloon; to: BalloonChange }) =>
      api.changeBalloon(diagram, balloon.id, to),
    onSuccess: (answer, { balloon, to }) =>
      done(answer, to.ref ? `Balloon ${balloon.ref} is ${to.ref}.` : `Balloon ${balloon.ref} is moved.`),
  });
  const remove = useMutation({
    mutationFn: (balloon: Balloon) => api.removeBalloon(diagram, balloon.id),
    onSuccess: (answer, balloon) => done(answer, `Balloon ${balloon.ref} is taken out.`),
  });
  const place = useMutation({
    mutationFn: (spot: NewBalloon) => api.placeBalloon(diagram, spot),
    onSuccess: (answer, { ref }) => done(answer, `Balloon ${ref} is put there.`),
  });
  const all = [change, remove, place];
  return {
    change,
    remove,
    place,
    busy: all.some(each => each.isPending),
    error: all.find(each => each.isError)?.error ?? null,
  };
}
