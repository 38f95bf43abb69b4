import type { Attrs, CategoryName, Dims } from '../reading/reading.ts';

/** One article for comparing: what a part is by category, dimensions and attributes, as far as they are known. */
export interface Article {
  category: CategoryName;
  dims: Dims;
  implied: Dims;
  attrs: Attrs;
}

/** How much a reason weighs: it stops the substitution, it asks for care, or it is good to know. */
export type Severity = 'stops' | 'care' | 'note';

/** One reason of a verdict, with its number, in a repairer's words. `about` names the dimension or attribute. */
export interface Reason {
  about: string;
  severity: Severity;
  text: string;
}

/** A rule of a category: what to say of this candidate in place of that wanted part. Null where it has nothing to say. */
export type Rule = (candidate: Article, wanted: Article) => Reason | Reason[] | null;

/** The number under a dimension's name, stated or implied by a standard; undefined where it is open. */
export function lengthOf(article: Article, key: string): number | undefined {
  const value = article.dims[key] ?? article.implied[key];
  return typeof value === 'number' ? value : undefined;
}

/** A length in millimetres as a person writes it: no trailing zeros, at most three decimals. */
export const written = (length: number): string => String(Math.round(length * 1000) / 1000);

/** Differences below this, in millimetres, are the rounding of a printed number, not another size. */
const rounding = 0.0035;

interface LengthRule {
  key: string;
  /** As the trade says it: bore, outside diameter, width. */
  label: string;
  /** What to say when the candidate has more; the amount is put before it. */
  more: { severity: Severity; text: string };
  less: { severity: Severity; text: string };
}

/** Compares one length: equal says nothing, open asks, more and less say what follows. */
export function compareLength({ key, label, more, less }: LengthRule): Rule {
  return (candidate, wanted) => {
    const [have, want] = [lengthOf(candidate, key), lengthOf(wanted, key)];
    if (want === undefined && have === undefined) return null;
    if (want === undefined || have === undefined) {
      const whose = want === undefined ? 'the wanted part' : 'this one';
      return { about: key, severity: 'care', text: `${label} of ${whose} is not known: measure it.` };
    }
    const difference = have - want;
    if (Math.abs(difference) <= rounding) return null;
    const { severity, text } = difference > 0 ? more : less;
    return {
      about: key,
      severity,
      text: `${label} ${written(Math.abs(difference))} ${difference > 0 ? 'more' : 'less'}: ${text}`,
    };
  };
}

/** A length that must agree; any difference stops. */
export const mustAgree = (key: string, label: string, tooMuch: string, tooLittle: string): Rule =>
  compareLength({
    key,
    label,
    more: { severity: 'stops', text: tooMuch },
    less: { severity: 'stops', text: tooLittle },
  });

/** A ring on its shaft or screw: it must go on, and loose it sits off centre. */
export const goesOn: Rule = compareLength({
  key: 'id',
  label: 'Inside diameter',
  more: { severity: 'care', text: 'it can sit off centre.' },
  less: { severity: 'stops', text: 'it does not go on.' },
});

/** A thread or other text that must agree. */
export function mustMatchText(key: string, label: string, otherwise: string): Rule {
  return (candidate, wanted) => {
    const [have, want] = [candidate.dims[key], wanted.dims[key]];
    if (have === undefined && want === undefined) return null;
    if (have === undefined || want === undefined)
      return { about: key, severity: 'care', text: `${label} is not known of both: check it.` };
    return have === want
      ? null
      : { about: key, severity: 'stops', text: `${label} ${have} for ${want}: ${otherwise}` };
  };
}

interface AttributeRule {
  key: string;
  label: string;
  /** What to say of two stated values that differ. */
  differs: (have: string | boolean, want: string | boolean) => { severity: Severity; text: string } | null;
  /** Said when one of the two is not stated; left out where not stated means nothing. */
  open?: string;
}

/** Compares one attribute. Not stated is never taken for equal. */
export function compareAttribute({ key, label, differs, open }: AttributeRule): Rule {
  return (candidate, wanted) => {
    const [have, want] = [candidate.attrs[key], wanted.attrs[key]];
    if (have === want) return null;
    if (have === undefined || want === undefined)
      return open ? { about: key, severity: 'care', text: `${label} ${open}` } : null;
    const said = differs(have, want);
    return (
      said && { about: key, severity: said.severity, text: `${label} ${have} for ${want}: ${said.text}` }
    );
  };
}

/** Another material is never silently the same. */
export const materialRule: Rule = compareAttribute({
  key: 'material',
  label: 'Material',
  differs: () => ({ severity: 'care', text: 'mind wear, salt and the metal it sits in.' }),
});

/** Left-hand is never assumed and never assumed away. */
export const handRule: Rule = (candidate, wanted) => {
  const [have, want] = [candidate.attrs.hand, wanted.attrs.hand];
  if (have === want) return null;
  if (have !== undefined && want !== undefined)
    return {
      about: 'hand',
      severity: 'stops',
      text: `${have}-hand thread for ${want}-hand: it does not screw in.`,
    };
  return have === 'left' || want === 'left'
    ? {
        about: 'hand',
        severity: 'care',
        text: 'One has a left-hand thread, the other does not say: check before you turn it.',
      }
    : null;
};

/** All that the rules say, worst first. */
export function judge(rules: readonly Rule[], candidate: Article, wanted: Article): Reason[] {
  const rank: Record<Severity, number> = { stops: 0, care: 1, note: 2 };
  return rules
    .flatMap(rule => rule(candidate, wanted) ?? [])
    .sort((a, b) => rank[a.severity] - rank[b.severity]);
}
