/** A camera slider, tab-separated, with the quantity before the name. */
export const dunscarS = {
  maker: 'Wyke & Calder',
  model: 'Dunscar S',
  duty: 'ordinary',
  file: 'dunscar-s.tsv',
  mediaType: 'text/tab-separated-values',
  text: `Pos\tQty\tPart number\tName\tNotes
1\t1\tDS 3301\tRail 600\t
2\t1\tDS 3302\tCarriage\t
3\t4\tDS 3303\tRoller\t
4\t8\tDS 3307\tBall bearing MR115ZZ\t
5\t4\tDS 3308\tRoller axle 5x28\t
6\t8\tDS 3309\tWasher 5.3x10x1\t
7\t4\tDS 3310\tE-clip 4\t
8\t8\tDS 3311\tPan head screw M3x8\t
9\t8\tDS 3312\tWasher 3.2x7x0.5\t
10\t2\tDS 3313\tEnd plate\t
11\t4\tDS 3314\tSocket cap screw M4x16\t
12\t4\tDS 3315\tSocket countersunk screw M3x8\t
13\t1\tDS 3316\tLock knob assembly\tincludes 14-16
14\t1\tDS 3317\tKnob\tnot sold separately
15\t1\tDS 3318\tCompression spring 0.8x9x22\t
16\t1\tDS 3319\tSteel ball 3.175\t
17\t2\tDS 3320\tO-ring 10x1.5\t
18\t4\tDS 3321\tSet screw M3x4 cup point\t
19\t2\tDS 3322\tDowel pin 3x12\t
20\t1\tDS 3323\tHex key 2.5\toption
`,
} as const;
