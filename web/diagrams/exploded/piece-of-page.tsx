import { useRef } from 'react';
import type { DiagramRow } from '../../../api/answers/index.ts';
import { useExtent } from './use-extent.ts';
import { usePicture } from './use-picture.ts';

interface PieceOfPageProps {
  diagram: string;
  page: number;
  area: NonNullable<DiagramRow['area']>;
}

/** How much of the page is shown around a line, as a fraction of its height. */
const margin = 0.008;

/** The piece of the page that a line was read from, so that an eye can compare. */
export function PieceOfPage({ diagram, page, area }: PieceOfPageProps) {
  const room = useRef<HTMLDivElement>(null);
  const extent = useExtent(room);
  const width = Math.min(1, area.right - area.left + 2 * margin);
  const whole = extent ? extent.width / width : 0;
  const picture = usePicture(diagram, page, whole);
  return (
    <figure className="piece-of-page">
      <figcaption className="label">As it stands on page {page}</figcaption>
      <div ref={room} className="piece">
        {picture.address ? (
          <Cut address={picture.address} area={area} width={whole} />
        ) : picture.isError ? (
          <span className="label">This page could not be drawn.</span>
        ) : (
          <span className="label">Drawing the page …</span>
        )}
      </div>
    </figure>
  );
}

function Cut({ address, area, width }: { address: string; area: PieceOfPageProps['area']; width: number }) {
  const image = useRef<HTMLImageElement>(null);
  const frame = useRef<HTMLDivElement>(null);
  // The height of the page follows from its picture, which is known once it is there.
  const place = () => {
    const { current: picture } = image;
    if (!picture || !frame.current) return;
    const height = (width * picture.naturalHeight) / picture.naturalWidth;
    const top = Math.max(0, area.top - margin);
    frame.current.style.height = `${(Math.min(1, area.bottom + margin) - top) * height}px`;
    picture.style.transform = `translate(${-Math.max(0, area.left - margin) * width}px, ${-top * height}px)`;
  };
  return (
    <div ref={frame} className="cut">
      <img ref={image} className="picture" src={address} alt="" style={{ width }} onLoad={place} />
    </div>
  );
}
