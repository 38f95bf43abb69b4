import { readXmlMember } from '../markup.ts';
import type { Zip } from '../zip.ts';

/** What a workbook says of itself (ECMA-376 part 1, 18.2). */
export interface Workbook {
  sheets: { name: string; hidden: boolean; member: string }[];
  /** Days are counted from 1904, as on old Macs, not from 1900. */
  from1904: boolean;
  strings: string;
  styles: string;
}

const home = 'xl/workbook.xml';

/** The workbook's sheets in the order of their tabs, and where its parts stand; null where there is none. */
export function readWorkbook(zip: Zip): Workbook | null {
  const main = mainMember(zip);
  const sheets: { name: string; hidden: boolean; id: string }[] = [];
  let from1904 = false;
  const found = readXmlMember(zip, main, {
    open(name, attributes) {
      if (name === 'sheet')
        sheets.push({
          name: attributes['name'] ?? '',
          hidden: /hidden/i.test(attributes['state'] ?? ''),
          id: idOf(attributes),
        });
      else if (name === 'workbookPr') from1904 = /^(?:1|true)$/.test(attributes['date1904'] ?? '');
    },
    close() {},
    text() {},
  });
  if (!found) return null;
  const related = relationsOf(zip, main);
  const ofType = (type: string) => related.find(target => target.type === type)?.member ?? '';
  return {
    sheets: sheets.flatMap(({ name, hidden, id }) => {
      const target = related.find(one => one.id === id && one.type === 'worksheet');
      return target ? [{ name, hidden, member: target.member }] : [];
    }),
    from1904,
    strings: ofType('sharedStrings'),
    styles: ofType('styles'),
  };
}

/** The prefix of `r:id` is the writer's choice. */
const idOf = (attributes: Readonly<Record<string, string>>): string =>
  Object.entries(attributes).find(([key]) => key.endsWith(':id'))?.[1] ?? '';

function mainMember(zip: Zip): string {
  return relationsOf(zip, '').find(({ type }) => type === 'officeDocument')?.member ?? home;
}

/** Members that a member names, by id (ECMA-376 part 2, 9.3); those outside the document are left out. */
function relationsOf(zip: Zip, member: string): { id: string; type: string; member: string }[] {
  const slash = member.lastIndexOf('/');
  const folder = member.slice(0, slash + 1);
  const found: { id: string; type: string; member: string }[] = [];
  readXmlMember(zip, `${folder}_rels/${member.slice(slash + 1)}.rels`, {
    open(name, attributes) {
      const { Id = '', Type = '', Target = '', TargetMode } = attributes;
      if (name === 'Relationship' && TargetMode !== 'External')
        found.push({ id: Id, type: Type.slice(Type.lastIndexOf('/') + 1), member: resolve(folder, Target) });
    },
    close() {},
    text() {},
  });
  return found;
}

function resolve(folder: string, target: string): string {
  const path = target.startsWith('/') ? target : folder + target;
  const steps: string[] = [];
  for (const step of path.split('/')) {
    if (step === '..') steps.pop();
    else if (step && step !== '.') steps.push(step);
  }
  return steps.join('/');
}
