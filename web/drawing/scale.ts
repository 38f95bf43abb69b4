/** CSS pixels to a millimetre, nominally: true only once a screen has been set against something measured. */
export const pixelsPerMm = 96 / 25.4;

/** Scales of ISO 5455, from reduction to enlargement. */
const scales: [factor: number, name: string][] = [
  [0.05, '1:20'],
  [0.1, '1:10'],
  [0.2, '1:5'],
  [0.5, '1:2'],
  [1, '1:1'],
  [2, '2:1'],
  [5, '5:1'],
  [10, '10:1'],
  [20, '20:1'],
  [50, '50:1'],
];

export interface Scale {
  /** Pixels to a millimetre of the part. */
  k: number;
  /** As it is named beside a drawing: `5:1`. */
  name: string;
}

/** The largest scale of ISO 5455 at which `width` × `height` millimetres fit the room in pixels; else the smallest. */
export function chooseScale(width: number, height: number, roomWidth: number, roomHeight: number): Scale {
  let [factor, name] = scales[0]!;
  for (const [each, its] of scales) {
    const k = each * pixelsPerMm;
    if (width * k <= roomWidth && height * k <= roomHeight) [factor, name] = [each, its];
  }
  return { k: factor * pixelsPerMm, name };
}
