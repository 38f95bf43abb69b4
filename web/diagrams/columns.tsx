import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { DiagramColumns } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button, Choice } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked, Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';

type Meaning = DiagramColumns['tables'][number]['columns'][number]['meaning'];
type Given = DiagramColumns['given'];

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

/** What the columns of a document are taken for, to be put right; its rows are then read anew. */
export function Columns({ diagram }: { diagram: string }) {
  const [open, setOpen] = useState(false);
  return (
    <Section title="Its columns">
      {open ? (
        <Tables diagram={diagram} />
      ) : (
        <>
          <p>A quantity read as a part number, a column left out? Say what each column holds.</p>
          <div className="buttons">
            <Button weight="thin" onClick={() => setOpen(true)}>
              Look at the columns
            </Button>
          </div>
        </>
      )}
    </Section>
  );
}

function Tables({ diagram }: { diagram: string }) {
  const { bench } = useBench();
  const query = useQuery({
    queryKey: ['columns', bench?.id, diagram],
    queryFn: () => api.columns(diagram),
  });
  return (
    <Asked query={query} waiting="Fetching the columns">
      {answer => <Ready answer={answer} />}
    </Asked>
  );
}

function Ready({ answer }: { answer: DiagramColumns }) {
  const { id, name } = answer.diagram;
  const client = useQueryClient();
  const say = useSay();
  const [said, setSaid] = useState<Given>(null);
  const put = useMutation({
    mutationFn: (given: Given) => api.setColumns(id, given),
    onSuccess: () => client.invalidateQueries(),
  });
  const change = (given: Given) =>
    put.mutate(given, {
      onSuccess: () =>
        say(`${name} is read again with its columns so.`, () =>
          put.mutate(answer.given, { onSuccess: () => say('Its columns are as they were.') }),
        ),
    });
  if (answer.tables.length === 0) return <p>No table was found in it, so there are no columns to tell.</p>;
  return (
    <>
      {answer.tables.map((table, at) => (
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
              disabled={put.isPending}
              onChange={event => setSaid(withColumn(answer, said, at, nth, event.target.value as Meaning))}
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
        <Button weight="main" busy={put.isPending} disabled={said === null} onClick={() => change(said)}>
          Read it so
        </Button>
        {answer.given ? (
          <Button weight="thin" busy={put.isPending} onClick={() => change(null)}>
            All as found
          </Button>
        ) : null}
      </div>
      {put.isError ? <Refused error={put.error} /> : null}
    </>
  );
}

/** What is given for all tables once one column is said to hold something else. */
function withColumn(
  { tables, given }: DiagramColumns,
  said: Given,
  at: number,
  nth: number,
  meaning: Meaning,
): Given {
  return tables.map((table, place) => {
    const before = said?.[place] ?? given?.[place] ?? null;
    if (place !== at) return before;
    return table.columns.map((column, other) =>
      other === nth ? meaning : (before?.[other] ?? column.meaning),
    );
  });
}
