import { Fragment } from 'react';
import { Link } from 'wouter';
import { type CategoryName, categories } from '../../indexer/index.ts';
import './size.css';

/** A size or an item as written, taken apart: `bearing 5x11x4 two-shields`. */
export interface WrittenSize {
  category: string;
  figures: string[];
  attributes: string[];
}

/** Takes a canonical size or item apart for showing. */
export function takeApart(written: string): WrittenSize {
  const [category = '', figures = '', ...attributes] = written.split(' ');
  return { category, figures: figures === '' ? [] : figures.split('x'), attributes };
}

/** What a kind of part is called at the beginning of a line: `Ball bearing`. */
export function headingOf(category: string): string {
  return categories.get(category as CategoryName)?.title ?? category.replaceAll('-', ' ');
}

/** The same in running words: `ball bearing`; an `O-ring` keeps its capital. */
export function titleOf(category: string): string {
  const title = headingOf(category);
  return /^[A-Z][a-z]/.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}

/** An attribute's value in words: `two-shields` → `two shields`, `true` → its own name, a hand → `left-hand`. */
export function attributeWords(name: string, value: string | boolean): string {
  if (value === true) return name.replaceAll('-', ' ');
  if (value === false) return `not ${name}`;
  if (name === 'hand') return `${value}-hand`;
  return valueWords(value);
}

/** A value as a person writes it; a letter that names a shape keeps its hyphen: `E-clip`, `T-nut`. */
export function valueWords(value: string): string {
  return /^[a-z]-/.test(value) ? value.charAt(0).toUpperCase() + value.slice(1) : value.replaceAll('-', ' ');
}

/** The figures of a size, crosses light: 5 × 11 × 4. */
export function Size({ size, hero = false }: { size: string; hero?: boolean }) {
  const { figures } = takeApart(size);
  return (
    <span className={hero ? 'size hero' : 'size'}>
      {figures.map((figure, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two figures of one size may be equal, their places are not
        <Fragment key={place}>
          {place > 0 ? <i> × </i> : null}
          {figure}
        </Fragment>
      ))}
    </span>
  );
}

/** A size in running words: `ball bearing 5 × 11 × 4, two shields`. */
export function sizeWords(written: string): string {
  const { category, figures, attributes } = takeApart(written);
  const article = [titleOf(category), figures.join(' × ')].filter(Boolean).join(' ');
  return [article, ...attributes.map(valueWords)].join(', ');
}

/** The same as a heading: `Ball bearing 5 × 11 × 4`. */
export const headingWords = (written: string): string => {
  const words = sizeWords(written);
  return words.charAt(0).toUpperCase() + words.slice(1);
};

export const sizePath = (size: string) => `/sizes/${encodeURIComponent(size)}`;

/** A size that leads to its page. */
export function SizeLink({ size }: { size: string }) {
  return (
    <Link href={sizePath(size)} className="size-link">
      <Size size={size} />
    </Link>
  );
}
