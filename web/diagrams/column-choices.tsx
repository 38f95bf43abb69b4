import { useState } from 'react';
import type { DiagramColumns } from '../../api/answers/index.ts';
import { Button, Choice } from '../ui/controls.tsx';

type Meaning = DiagramColumns['tables'][number]['columns'][number]['meaning'];
export type Given = DiagramColumns['given'];

/** What a column can hold, in a person's words and in the order they are usually printed. */
const meanings: Record<Meaning, string> = {
  ref: 'reference number',
  partNumber: 'part number',
  description: 'description',
  size: 'size',
  qty: 'quantity',
  unit: 'unit of the quantity',
  material: 'material',
  remarks: 'remarks',
  price: 'price',
  level: 'depth in the assembly',
  model: 'quantity for one model',
  other: 'nothing we use',
};

interface ColumnChoicesProps {
  tables: DiagramColumns['tables'];
  /** What a person said of them before; null where all is as found. */
  given: Given;
  busy: boolean;
  /** Null takes back what was said. */
  onGive: (given: Given) => void;
}

/** What each column of the tables is taken for, to be put right. */
export function ColumnChoices({ tables, given, busy, onGive }: ColumnChoicesProps) {
  const [said, setSaid] = useState<Given>(null);
  if (tables.length === 0) return <p>No table was found in it, so there are no columns to tell.</p>;
  return (
    <>
      {tables.map((table, at) => (
        <fieldset key={`${table.page} ${table.place}`} className="column-meanings">
          <legend className="label">
            Page {table.page}, {table.place}
          </legend>
          {table.columns.map((column, nth) => (
            <Choice
              // biome-ignore lint/suspicious/noArrayIndexKey: a column is known by where it stands
              key={nth}
              label={column.title || `Column ${nth + 1}`}
              hint={column.cells.filter(Boolean).slice(0, 3).join(', ')}
              value={said?.[at]?.[nth] ?? column.meaning}
              disabled={busy}
              onChange={event =>
                setSaid(withColumn(tables, said ?? given, at, nth, event.target.value as Meaning))
              }
            >
              {Object.entries(meanings).map(([meaning, words]) => (
                <option key={meaning} value={meaning}>
                  {words}
                </option>
              ))}
            </Choice>
          ))}
        </fieldset>
      ))}
      <div className="buttons">
        <Button weight="main" busy={busy} disabled={said === null} onClick={() => onGive(said)}>
          Read it so
        </Button>
        {given ? (
          <Button weight="thin" busy={busy} onClick={() => onGive(null)}>
            All as found
          </Button>
        ) : null}
      </div>
    </>
  );
}

/** What is given for all tables once one column is said to hold something else. */
function withColumn(
  tables: DiagramColumns['tables'],
  said: Given,
  at: number,
  nth: number,
  meaning: Meaning,
): Given {
  return tables.map((table, place) => {
    const before = said?.[place] ?? null;
    if (place !== at) return before;
    return table.columns.map((column, other) =>
      other === nth ? meaning : (before?.[other] ?? column.meaning),
    );
  });
}
