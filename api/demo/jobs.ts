/**
 * Three jobs on the demo bench, as a repairer would have noted them. A need names a line of the model's list by its
 * reference number, or an item by its size; a quantity of null leaves "as required" to be asked.
 */
export interface DemoJob {
  model: string;
  serial: string | null;
  owner: string;
  fault: string;
  limitMinor: number | null;
  /** Days from the day the bench is made. */
  promisedIn: number;
  needs: (
    | { ref: string; qty: number | null; note?: string }
    | { item: string; qty: number; note?: string }
  )[];
}

export const demoJobs: readonly DemoJob[] = [
  {
    model: 'Skerry 25',
    serial: '84512',
    owner: 'Slipway Angling Club',
    fault: 'Clicks when I wind it in, and the bail does not snap shut.',
    limitMinor: 4500,
    promisedIn: 9,
    needs: [
      { ref: '31', qty: 2 },
      { ref: '20', qty: 1 },
      { ref: '19', qty: null, note: 'three under the spool when it came in' },
      { ref: '26', qty: 1 },
      { ref: '27', qty: 2 },
      { ref: '17', qty: 1 },
    ],
  },
  {
    model: 'Marrick 4',
    serial: null,
    owner: 'Quayside coffee cart',
    fault: 'Crank wobbles, grounds are uneven.',
    limitMinor: 3000,
    promisedIn: 5,
    needs: [
      { ref: '5', qty: 2 },
      { ref: '19', qty: 2 },
      { ref: '15', qty: 1 },
      { ref: '11', qty: 1 },
      { item: 'washer 3.2x7x0.5', qty: 4 },
    ],
  },
  {
    model: 'Holmgate 6 winch',
    serial: 'HG6-2207',
    owner: 'Boatyard, slip 2',
    fault: 'Drum grinds under load. One pawl spring is gone.',
    limitMinor: null,
    promisedIn: 14,
    needs: [
      { ref: '3', qty: 2 },
      { ref: '7', qty: 2 },
      { ref: '11', qty: 2 },
      { ref: '18', qty: 6 },
    ],
  },
];
