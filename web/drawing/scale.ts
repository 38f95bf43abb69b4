/** CSS pixels to a millimetre, nominally: true only once a screen has been set against something measured. */
export const pixelsPerMm = 96 / 25.4;

export interface Scale {
  /** As it is named beside a drawing: `5:1`. */
  name: string;
  factor: number;
}

/** Scales of ISO 5455, largest enlargement first. */
export const scales: readonly Scale[] = [
  { name: '50:1', factor: 50 },
  { name: '20:1', factor: 20 },
  { name: '10:1', factor: 10 },
  { name: '5:1', factor: 5 },
  { name: '2:1', factor: 2 },
  { name: '1:1', factor: 1 },
  { name: '1:2', factor: 1 / 2 },
  { name: '1:5', factor: 1 / 5 },
  { name: '1:10', factor: 1 / 10 },
  { name: '1:20', factor: 1 / 20 },
];
