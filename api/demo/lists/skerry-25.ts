/** A hand reel, as pasted from the maker's sheet: ragged columns, remarks at the end of a line. */
export const skerry25 = {
  maker: 'Brindlow',
  model: 'Skerry 25',
  duty: 'ordinary',
  file: 'skerry-25-sheet.txt',
  mediaType: 'text/plain',
  text: `BRINDLOW  SKERRY 25   hand reel
parts list, sheet 2

KEY   PART NO    NAME                                    QTY   REMARKS
1     61-0401    HANDLE ASSEMBLY                         1     Consists of 2-8
2     61-0402    KNOB CAP                                1
3     61-0403    SCREW M2.5 x 6, pan head                1
4     61-0404    HANDLE KNOB                             1
5     61-0405    BALL BEARING 4 x 7 x 2.5 ZZ             2
6     61-0406    WASHER 4.3 x 9 x 0.8                    1
7     61-0407    HANDLE ARM                              1
8     61-0408    HANDLE SCREW M5 x 12                    1     Left-hand thread
9     61-0409    O-RING 10 x 1.5                         1
10    61-0410    DRAG KNOB                               1     Not sold separately
11    61-0411    CLICK SPRING                            1
12    61-0412    DRAG RETAINER                           1
13    61-0413    SPOOL ASSEMBLY                          1     Consists of 14-18
14    61-0414    EARED WASHER 8.2 x 22 x 1               3
15    61-0415    DRAG WASHER 8.2 x 24 x 1, felt          3
16    61-0416    KEY WASHER                              2
17    61-0417    SPOOL                                   1     Superseded, use 61-0517
18    61-0418    CLICK GEAR                              1
19    61-0419    SHIM 8 x 14 x 0.1                       AR    Select as required
19A   61-0420    SHIM 8 x 14 x 0.2                       AR    Select as required
20    61-0421    BALL BEARING 7 x 11 x 3 2RS             1     up to serial 84700
20    61-0422    BALL BEARING 7 x 11 x 3 2RS stainless   1     from serial 84701
21    61-0423    E-CLIP 5                                1
22    61-0424    ROTOR NUT M7 x 0.75                     1     Left-hand thread
23    61-0425    ROTOR                                   1
24    61-0426    BAIL ARM, LEFT                          1
25    61-0427    BAIL ARM, RIGHT                         1
26    61-0428    BAIL SPRING                             1
27    61-0429    SCREW M3 x 8, pan head                  2
28    61-0430    LINE ROLLER                             1
29    61-0431    WASHER 3.2 x 7 x 0.5                    2
30    61-0432    PINION                                  1
31    61-0896    BALL BEARING 5 x 11 x 4 ZZ              2
32    61-0434    MAIN SHAFT                              1
33    61-0435    WASHER, SHAFT 5.l x 8 x 0.5             1
34    61-0436    ONE-WAY ROLLER CLUTCH 8 x 12 x 12       1
35    61-0437    SCREW M2.6 x 6, pan head                2
36    61-0438    SIDE COVER                              1
37    61-0439    SCREW M3 x 16, pan head                 3
38    61-0440    BODY GASKET                             1
39    61-0441    BODY                                    1
40    61-0442    GREASE, TUBE                            1     Option
`,
} as const;
