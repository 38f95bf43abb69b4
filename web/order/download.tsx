import { useMutation } from '@tanstack/react-query';
import { orderFile } from '../api.ts';
import { saveFile } from '../save-file.ts';
import { Button } from '../ui/controls.tsx';
import { Refused } from '../ui/states.tsx';
import { useSay } from '../ui/toast.tsx';

/** The order as a file for a spreadsheet, and as text to paste in a mail. */
export function Download({ jobs }: { jobs: string[] }) {
  const say = useSay();
  const download = useMutation({
    mutationFn: async (kind: 'csv' | 'xlsx') => saveFile(await orderFile(jobs, kind), `order.${kind}`),
  });
  const copy = useMutation({
    mutationFn: async () => {
      const text = await orderFile(jobs, 'txt');
      const copied = await writeToClipboard(await text.text());
      if (!copied) saveFile(text, 'order.txt');
      return copied;
    },
    onSuccess: copied =>
      say(
        copied ? 'The order is copied: paste it in a mail.' : 'Nothing could be copied: saved as order.txt.',
      ),
  });
  const failed = download.error ?? copy.error;
  return (
    <>
      <Button weight="main" busy={download.isPending} onClick={() => download.mutate('xlsx')}>
        Download as XLSX
      </Button>
      <Button busy={download.isPending} onClick={() => download.mutate('csv')}>
        Download as CSV
      </Button>
      <Button busy={copy.isPending} onClick={() => copy.mutate()}>
        Copy as text
      </Button>
      {failed ? <Refused error={failed} /> : null}
    </>
  );
}

/** False where the browser does not let a page write there: no secure address, or a person's no. */
async function writeToClipboard(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
