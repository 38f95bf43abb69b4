/** The larger reel of the same maker, as comma-separated values: some numbers shared, some sizes a hair apart. */
export const skerry40 = {
  maker: 'Brindlow',
  model: 'Skerry 40',
  duty: 'ordinary',
  file: 'skerry-40.csv',
  mediaType: 'text/csv',
  text: `Ref,Part number,Description,Qty,Remarks
1,61-0701,Handle assembly,1,includes 2-6
2,61-0702,Knob cap,1,
3,61-0403,"Screw M2.5 x 6, pan head",1,
4,61-0704,Handle knob,1,
5,61-0705,Ball bearing 5 x 11 x 3,2,
6,61-0707,Handle arm,1,
7,61-0408,Handle screw M5 x 12,1,LH thread
8,61-0709,O-ring 10 x 2,1,
9,61-0710,Drag knob,1,not sold separately
10,61-0713,Spool assembly,1,includes 11-14
11,61-0714,Eared washer 8.2 x 22 x 1,4,
12,61-0715,"Drag washer 8.2 x 24 x 1, carbon",4,
13,61-0717,Spool,1,
14,61-0718,Click gear,1,
15,61-0419,Shim 8 x 14 x 0.1,AR,as required
16,61-0720,Ball bearing 7 x 14 x 5 2RS,1,
17,61-0423,E-clip 5,1,
18,61-0724,Rotor nut M8 x 0.75,1,left-hand thread
19,61-0725,Rotor,1,
20,61-0728,Bail spring,1,
21,61-0729,"Screw M3 x 8, countersunk",2,
22,61-0730,Line roller,1,
23,61-0731,Washer 3.2 x 7 x 0.8,2,
24,61-0732,Pinion,1,
25,61-0733,Ball bearing 6 x 13 x 5 ZZ,2,replaced by 61-0833
26,61-0734,Main shaft,1,
27,61-0736,One-way roller clutch 10 x 14 x 12,1,
28,61-0737,"Screw M2.5 x 6, countersunk",2,
29,61-0738,Side cover,1,
30,61-0739,"Screw M3 x 20, pan head",4,
31,61-0740,Body gasket,1,
32,61-0741,Body,1,
33,61-0896,Ball bearing 5 x 11 x 4 ZZ,1,
`,
} as const;
