import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import type { PersonHere, PersonLink, Role } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { useBench } from '../bench.tsx';
import { Button, Choice, Field } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Asked, Empty, Refused } from '../ui/states.tsx';
import { PersonRow } from './person-row.tsx';
import { rolesToChoose, roleWords } from './role-words.ts';
import { Settings } from './settings.tsx';
import { ShownOnce } from './shown-once.tsx';
import '../start/start.css';

/** Who works at the bench, and the way to bring somebody in. */
export function PeoplePage() {
  const { bench } = useBench();
  const client = useQueryClient();
  const query = useQuery({ queryKey: ['people', bench?.id], queryFn: api.people });
  const [made, setMade] = useState<PersonLink | null>(null);
  const shown = (link: PersonLink) => {
    setMade(link);
    void client.invalidateQueries({ queryKey: ['people'] });
  };
  return (
    <Settings title="People" about="Who works at this bench, and what each may do.">
      <div className="stack">
        {made ? (
          <ShownOnce
            label={`Link for ${made.person.name ?? 'them'}`}
            value={made.link}
            onDone={() => setMade(null)}
          >
            Hand it over yourself: nothing is mailed. It lets one person in, once, within a week, and is not
            shown again.
          </ShownOnce>
        ) : null}
        <Asked query={query} waiting="Fetching the people">
          {({ people, you }) => <List people={people} you={you} onLink={shown} />}
        </Asked>
        <Invite onMade={shown} />
      </div>
    </Settings>
  );
}

interface ListProps {
  people: PersonHere[];
  you: string | null;
  onLink: (link: PersonLink) => void;
}

function List({ people, you, onLink }: ListProps) {
  const here = people.filter(person => person.state !== 'left');
  const left = people.filter(person => person.state === 'left');
  return (
    <>
      <Section title="At this bench" aside={`${here.length} ${here.length === 1 ? 'person' : 'people'}`}>
        <ul className="rows">
          {here.map(person => (
            <PersonRow key={person.id} person={person} you={person.id === you} onLink={onLink} />
          ))}
        </ul>
        {here.length === 1 ? (
          <Empty title="Nobody else yet.">
            <p>Invite whoever works with you; each signs in as themselves.</p>
          </Empty>
        ) : null}
      </Section>
      {left.length > 0 ? (
        <Section title="No longer here">
          <ul className="rows">
            {left.map(person => (
              <PersonRow key={person.id} person={person} you={false} onLink={onLink} />
            ))}
          </ul>
        </Section>
      ) : null}
    </>
  );
}

function Invite({ onMade }: { onMade: (link: PersonLink) => void }) {
  const [name, setName] = useState('');
  const [role, setRole] = useState<Role>('repairer');
  const invite = useMutation({
    mutationFn: () => api.invite({ name: name.trim(), role }),
    onSuccess: made => {
      setName('');
      onMade(made);
      scrollTo(0, 0);
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (name.trim()) invite.mutate();
  };
  return (
    <Section title="Bring somebody in">
      <form className="keep" onSubmit={submit} aria-label="Bring somebody in">
        <Field
          label="Their name"
          required
          maxLength={80}
          value={name}
          onChange={event => setName(event.target.value)}
        />
        <Choice
          label="What they may do"
          hint={roleWords[role].means}
          value={role}
          onChange={event => setRole(event.target.value as Role)}
        >
          {rolesToChoose.map(each => (
            <option key={each} value={each}>
              {roleWords[each].name}
            </option>
          ))}
        </Choice>
        <div className="buttons">
          <Button weight="main" type="submit" busy={invite.isPending}>
            Make a link for them
          </Button>
        </div>
        {invite.isError ? (
          <Refused error={invite.error}>
            <p>What you typed is still here.</p>
          </Refused>
        ) : null}
      </form>
    </Section>
  );
}
