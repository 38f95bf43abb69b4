import { useMutation } from '@tanstack/react-query';
import { useLocation } from 'wouter';
import { api, benchFile } from '../api.ts';
import { useBench } from '../bench.tsx';
import { saveFile } from '../save-file.ts';
import { Button } from '../ui/controls.tsx';
import { Section } from '../ui/sheet.tsx';
import { Refused, Waiting } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';
import { EraseForGood } from './erase-for-good.tsx';
import { Settings } from './settings.tsx';
import { useWho } from './who.ts';

/** There is no way back but the file. */
function EraseBench({ name }: { name: string }) {
  const { changed } = useWho();
  const say = useSay();
  const [, navigate] = useLocation();
  return (
    <EraseForGood
      title="Erase the bench"
      summary={`Take ${name} away for good`}
      action="Erase the bench for good"
      erase={api.eraseBench}
      onErased={async () => {
        navigate('/');
        await changed();
        say(`${name} is erased.`);
      }}
    >
      Every list, job and need goes, everybody's place here, the tokens and the trail. What people have at
      other benches stays. Save the bench as a file first: there is no other way back.
    </EraseForGood>
  );
}

/** The bench as one file, and its end. */
export function BackupPage() {
  const { bench } = useBench();
  const say = useSay();
  const take = useMutation({
    mutationFn: async () => saveFile(await benchFile(), 'bench.fettle'),
    onSuccess: () => say('The bench is saved as bench.fettle.'),
  });
  return (
    <Settings title="Backup" about="The bench as one file: to keep, or to bring to another place.">
      <Section title="Take the bench out">
        <p>
          It holds every list, part, job and need of {bench?.name ?? 'this bench'}, the documents too; not who
          works here, no tokens and no trail. That it was taken out is on the trail.
        </p>
        <div className="buttons">
          <Button weight="main" busy={take.isPending} onClick={() => take.mutate()}>
            Save the bench as a file
          </Button>
        </div>
        {take.isPending ? <Waiting title="Packing the bench" /> : null}
        {take.isError ? <Refused error={take.error} onAgain={() => take.mutate()} /> : null}
      </Section>
      <EraseBench name={bench?.name ?? 'the bench'} />
    </Settings>
  );
}
