import { useState } from 'react';
import { bankCardWidth, pixelsPerMillimetre } from '../../indexer/index.ts';
import { Button } from '../ui/controls.tsx';

const kept = 'fettle.pixels-per-mm';

/** Card widths that a slider reaches, in CSS pixels: small phones held close to large coarse screens. */
const [least, most] = [200, 700];
/** The same card by the CSS inch of 96 pixels. */
const nominal = Math.round((bankCardWidth * 96) / 25.4);

/** CSS pixels to a millimetre of this screen, as it was set; null where it never was. */
export function keptPixels(): number | null {
  const pixels = Number(localStorage.getItem(kept));
  return pixels > 0 ? pixels : null;
}

interface SetScreenProps {
  pixels: number | null;
  onSet: (pixels: number | null) => void;
}

/** A drawn card that is made as wide as a real one held to the glass (ISO/IEC 7810 ID-1). */
export function SetScreen({ pixels, onSet }: SetScreenProps) {
  const [width, setWidth] = useState(pixels ? Math.round(pixels * bankCardWidth) : nominal);
  const set = (next: number | null) => {
    if (next === null) localStorage.removeItem(kept);
    else localStorage.setItem(kept, String(next));
    onSet(next);
  };
  return (
    <div className="set-screen">
      <p>
        Hold a bank card to the screen, its left edge on the line, and slide until its right edge meets the
        other.
      </p>
      <div className="card-room">
        <div className="card" style={{ width }} />
      </div>
      <label className="slider">
        <span className="label">Width of the card</span>
        <input
          type="range"
          min={least}
          max={most}
          step={1}
          value={width}
          onChange={event => setWidth(Number(event.target.value))}
        />
      </label>
      <div className="buttons">
        <Button onClick={() => set(pixelsPerMillimetre(width))}>It meets the card</Button>
        {pixels ? (
          <Button weight="thin" onClick={() => set(null)}>
            Forget it
          </Button>
        ) : null}
      </div>
    </div>
  );
}
