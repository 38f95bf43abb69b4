import { useMutation } from '@tanstack/react-query';
import { orderFile } from '../api.ts';
import { saveFile } from '../save-file.ts';
import { Button } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';

/** The order as a file for a spreadsheet. */
export function Download({ jobs }: { jobs: string[] }) {
  const download = useMutation({
    mutationFn: () => orderFile(jobs),
    onSuccess: file => saveFile(file, 'order.csv'),
  });
  return (
    <>
      <Button weight="main" busy={download.isPending} onClick={() => download.mutate()}>
        Download as CSV
      </Button>
      {download.isError ? <Refused error={download.error} /> : null}
    </>
  );
}
