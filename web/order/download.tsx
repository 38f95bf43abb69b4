import { useMutation } from '@tanstack/react-query';
import { orderFile } from '../api.ts';
import { Button } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';

/** The order as a file for a spreadsheet. */
export function Download({ jobs }: { jobs: string[] }) {
  const download = useMutation({
    mutationFn: () => orderFile(jobs),
    onSuccess: file => {
      const address = URL.createObjectURL(file);
      const link = document.createElement('a');
      link.href = address;
      link.download = 'order.csv';
      link.click();
      setTimeout(() => URL.revokeObjectURL(address), 10_000);
    },
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
