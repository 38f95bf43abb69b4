import { useLocation } from 'wouter';
import type { DiagramRow } from '../../../api/answers/index.ts';
import { useSay } from '../../ui/toast.tsx';
import type { Balloon } from './balloon.ts';

/** What a tap on a balloon does: opens its line and brings it into sight, or goes to the list that has it. */
export function useChosenBalloon(diagram: string, rows: DiagramRow[], onOpen: (row: string) => void) {
  const [, navigate] = useLocation();
  const say = useSay();
  return (balloon: Balloon) => {
    const line = balloon.lines.find(({ row }) => rows.some(({ id }) => id === row)) ?? balloon.lines[0];
    if (!line) return say(`No line of the list has the number ${balloon.ref}.`);
    if (line.diagram !== diagram) return navigate(`/diagrams/${line.diagram}#line-${line.row}`);
    onOpen(line.row);
    requestAnimationFrame(() =>
      document.getElementById(`line-${line.row}`)?.scrollIntoView({ block: 'start' }),
    );
  };
}
