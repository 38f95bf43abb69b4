import { useBench } from '../bench.tsx';
import { headingWords } from '../part/size.tsx';
import { Sheet } from '../ui/sheet.tsx';
import { SizeView } from './size-view.tsx';
import './find.css';

/** One size: drawn to scale, where it is used, what is near it and is not it. */
export function SizePage({ size }: { size: string }) {
  const { bench } = useBench();
  return (
    <Sheet
      title={headingWords(size)}
      cells={[
        { label: 'Bench', value: bench?.name },
        { label: 'Lengths', value: 'mm, first angle' },
      ]}
    >
      <SizeView size={size} />
    </Sheet>
  );
}
