import type { FitOf } from '../../indexer/index.ts';
import { chanceWords } from '../measure/chance.ts';
import { fitWords } from './fit-words.ts';

/** Both ways from line to line, in millimetres: what lies beyond is drawn to the edge. */
const reach = 0.1;

const percent = (clearance: number) => `${50 + (50 * Math.max(-reach, Math.min(reach, clearance))) / reach}%`;

/** From the most interference to the most clearance, on a line whose middle is neither. */
export function FitPicture({ where, of }: { where: string; of: FitOf }) {
  const least = of.interferenceMax > 0 ? -of.interferenceMax : of.clearanceMin;
  const most = of.clearanceMax > 0 ? of.clearanceMax : -of.interferenceMin;
  const [from, to] = [Number.parseFloat(percent(least)), Number.parseFloat(percent(most))];
  return (
    <div className="fit-picture">
      <p>
        <b>{where}</b>: {fitWords(of)}; clearance {chanceWords(of.clearanceProbability)}
      </p>
      <svg width="100%" height="34" aria-hidden="true">
        <line className="base" x1="0" x2="100%" y1="17" y2="17" />
        <rect x={`${from}%`} width={`${Math.max(0.6, to - from)}%`} y="10" height="14" />
        <line className="nought" x1="50%" x2="50%" y1="2" y2="32" />
      </svg>
      <p className="label ends">
        <span>press 0.1</span>
        <span>0</span>
        <span>loose 0.1</span>
      </p>
    </div>
  );
}
