import { categories } from './categories/index.ts';
import {
  type Article,
  judge,
  materialRule,
  mustAgree,
  mustMatchText,
  type Reason,
  type Rule,
} from './categories/judge.ts';
import { type Duty, isCritical } from './duty.ts';
import { writeSize } from './size.ts';

/** Can one part replace another. Always with reasons where it is not plainly `fits`, and one-way. */
export interface Verdict {
  verdict: 'fits' | 'fits-with-care' | 'does-not-fit';
  /** Worst first. */
  reasons: Reason[];
}

export interface Circumstances {
  /** What depends on the wanted part where it sits. */
  duty: Duty;
  /** True when the candidate is the maker's own part of the wanted number. */
  samePart: boolean;
}

/** What the page and every answer say of a size that agrees where someone could be hurt. */
export const notAnApproval = "Same size; not an approval: maker's part only.";

/**
 * Whether `candidate` can replace `wanted`: hard gates first, then what asks for care.
 *
 * Agreement of sizes is a suggestion; makers' instructions and licensed practice come first. For a critical duty the
 * answer is never `fits` unless it is the maker's own part.
 */
export function verdict(candidate: Article, wanted: Article, { duty, samePart }: Circumstances): Verdict {
  if (samePart)
    return { verdict: 'fits', reasons: [{ about: 'part', severity: 'note', text: "The maker's own part." }] };
  const reasons = compare(candidate, wanted);
  if (isCritical(duty)) {
    const text = sameSize(candidate, wanted) ? notAnApproval : "Maker's part only.";
    return { verdict: 'does-not-fit', reasons: [{ about: 'duty', severity: 'stops', text }, ...reasons] };
  }
  if (reasons.some(reason => reason.severity === 'stops')) return { verdict: 'does-not-fit', reasons };
  if (reasons.some(reason => reason.severity === 'care')) return { verdict: 'fits-with-care', reasons };
  return {
    verdict: 'fits',
    reasons:
      reasons.length > 0
        ? reasons
        : [{ about: 'size', severity: 'note', text: 'Same size, nothing stated that differs.' }],
  };
}

function compare(candidate: Article, wanted: Article): Reason[] {
  if (candidate.category !== wanted.category) return [otherKind(candidate, wanted)];
  const definition = categories.get(wanted.category);
  if (!definition || definition.dims.length === 0)
    return [
      {
        about: 'category',
        severity: 'stops',
        text: 'It has no size to compare: only the same part number will do.',
      },
    ];
  const reasons = judge(definition.rules ?? plainRules(definition), candidate, wanted);
  const known = definition.dims.some(
    ({ key }) => candidate.dims[key] !== undefined && wanted.dims[key] !== undefined,
  );
  return known
    ? reasons
    : [{ about: 'size', severity: 'stops', text: 'No size is known of both: measure one.' }, ...reasons];
}

/** Whether both are of one category and one size, as far as it is known. */
function sameSize(candidate: Article, wanted: Article): boolean {
  if (candidate.category !== wanted.category) return false;
  const size = ({ category, dims, implied }: Article) => writeSize(category, dims, implied);
  return size(candidate) !== null && size(candidate) === size(wanted);
}

function otherKind(candidate: Article, wanted: Article): Reason {
  const clutch = [candidate.category, wanted.category].includes('roller-clutch');
  const title = (article: Article) => categories.get(article.category)?.title ?? article.category;
  const text = clutch
    ? 'A one-way clutch is no bearing: equal bore, outside and width prove nothing.'
    : `${title(candidate)} for ${title(wanted)}: another kind of part.`;
  return { about: 'category', severity: 'stops', text };
}

/** For a category without rules of its own: every dimension must agree. */
function plainRules(definition: { dims: readonly { key: string; label: string }[] }): Rule[] {
  return [
    ...definition.dims.map(({ key, label }) =>
      key === 'thread'
        ? mustMatchText(key, 'Thread', 'it does not screw in.')
        : mustAgree(key, label, 'too much.', 'too little.'),
    ),
    materialRule,
  ];
}
