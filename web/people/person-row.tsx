import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import type { PersonChange, PersonHere, PersonLink, Role } from '../../api/answers/index.ts';
import { api } from '../api.ts';
import { Button, Choice, Field } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';
import { dayOf } from './moment-words.ts';
import { rolesToChoose, roleWords } from './role-words.ts';

interface PersonRowProps {
  person: PersonHere;
  you: boolean;
  onLink: (link: PersonLink) => void;
}

/** Somebody at the bench: their role, and what an owner can do. */
export function PersonRow({ person, you, onLink }: PersonRowProps) {
  const client = useQueryClient();
  const say = useSay();
  const name = person.name ?? 'Somebody whose name was erased';
  const again = () => void client.invalidateQueries({ queryKey: ['people'] });
  const change = useMutation({
    mutationFn: (to: PersonChange) => api.changePerson(person.id, to),
    onSuccess: () => {
      again();
      // Their own role may be another now.
      if (you) void client.invalidateQueries({ queryKey: ['benches'] });
    },
  });
  const link = useMutation({ mutationFn: () => api.linkFor(person.id), onSuccess: onLink });
  const remove = useMutation({
    mutationFn: () => api.removePerson(person.id),
    onSuccess: () => {
      again();
      say(`${name} no longer works here. To have them back, bring them in anew.`);
    },
  });
  const erase = useMutation({
    mutationFn: () => api.erasePerson(person.id),
    onSuccess: () => {
      again();
      say('The name is erased.');
    },
  });
  const setRole = (role: Role) =>
    change.mutate(
      { role },
      {
        onSuccess: () => say(`${name}: ${roleWords[role].name}.`, () => change.mutate({ role: person.role })),
      },
    );
  const [renaming, setRenaming] = useState(false);
  const rename = (next: string) => {
    setRenaming(false);
    if (next !== name)
      change.mutate(
        { name: next },
        {
          onSuccess: () => say(`${next} is the name now.`, () => change.mutate({ name })),
        },
      );
  };
  const failed = [change, link, remove, erase].find(one => one.isError);
  return (
    <li className="person">
      <div>
        <b>{name}</b>
        {you ? ' (you)' : ''}
        <p className="label">{standing(person)}</p>
      </div>
      {person.state === 'left' ? (
        person.name === null ? null : (
          <div className="buttons">
            <Button weight="thin" busy={erase.isPending} onClick={() => erase.mutate()}>
              Erase the name of {name}
            </Button>
          </div>
        )
      ) : (
        <>
          <Choice
            label={`What ${name} may do`}
            value={person.role}
            disabled={change.isPending}
            onChange={event => setRole(event.target.value as Role)}
          >
            {rolesToChoose.map(role => (
              <option key={role} value={role}>
                {roleWords[role].name}
              </option>
            ))}
          </Choice>
          <div className="buttons">
            <Button weight="thin" aria-expanded={renaming} onClick={() => setRenaming(!renaming)}>
              Rename<span className="only-heard"> {name}</span>
            </Button>
            {you ? null : (
              <>
                <Button weight="thin" busy={link.isPending} onClick={() => link.mutate()}>
                  {person.state === 'invited' ? 'New link' : 'Forgot the password'}
                  <span className="only-heard"> for {name}</span>
                </Button>
                <Button weight="thin" busy={remove.isPending} onClick={() => remove.mutate()}>
                  Remove<span className="only-heard"> {name}</span>
                </Button>
              </>
            )}
          </div>
        </>
      )}
      {renaming ? <Rename name={name} onRename={rename} /> : null}
      {failed ? <Refused error={failed.error} /> : null}
    </li>
  );
}

/** Another name for somebody: what this bench calls them. */
function Rename({ name, onRename }: { name: string; onRename: (name: string) => void }) {
  const [typed, setTyped] = useState(name);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (typed.trim()) onRename(typed.trim());
  };
  return (
    <form className="start-form" onSubmit={submit} aria-label={`Another name for ${name}`}>
      <Field
        label={`Another name for ${name}`}
        required
        maxLength={80}
        autoFocus
        value={typed}
        onChange={event => setTyped(event.target.value)}
      />
      <Button type="submit">Keep the name</Button>
    </form>
  );
}

function standing({ state, since, invitedUntil }: PersonHere): string {
  if (state === 'left') return `Was here from ${dayOf(since)}.`;
  if (state === 'here') return `Since ${dayOf(since)}.`;
  if (invitedUntil && new Date(invitedUntil) > new Date())
    return `Invited; the link holds until ${dayOf(invitedUntil)}.`;
  return 'Invited; the link has run out. Make a new one.';
}
