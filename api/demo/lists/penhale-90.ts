/** A sewing machine with an inch list, comma-inverted names. */
export const penhale90 = {
  maker: 'Pellworth',
  model: 'Penhale 90',
  duty: 'ordinary',
  file: 'penhale-90.txt',
  mediaType: 'text/plain',
  text: `PELLWORTH PENHALE 90
NO.\tPART NO.\tDESCRIPTION\tREQ\tREMARKS
1\tPW 51801\tCOVER, FACE\t1\t
2\tPW 51802\tSCREW, COVER, 6-32 x 3/8, pan head\t2\t
3\tPW 51803\tBAR, NEEDLE\t1\t
4\tPW 51804\tSCREW, SET, 8-32 x 1/4, cup point\t3\t
5\tPW 51805\tSPRING, TENSION\t1\t
6\tPW 51806\tDISC, TENSION\t2\t
7\tPW 51807\tSTUD, TENSION\t1\t
8\tPW 51808\tNUT, 10-32\t1\t
9\tPW 51809\tWASHER, 0.203 x 0.438 x 0.032\t2\t
10\tPW 51810\tSHAFT, ARM\t1\t
11\tPW 51811\tBUSHING, ARM SHAFT, 5/16 x 1/2 x 3/4, bronze\t2\t
12\tPW 51812\tHANDWHEEL ASSEMBLY\t1\tincludes 13-15
13\tPW 51813\tHANDWHEEL\t1\t
14\tPW 51814\tBEARING, BALL, 685ZZ\t2\t
15\tPW 51815\tSCREW, STOP MOTION, 10-32 x 1/2\t1\t
16\tPW 51816\tGEAR, HOOK DRIVE\t1\t
17\tPW 51817\tPIN, TAPER, 1/8 x 3/4\t1\t
18\tPW 51818\tPIN, SPRING, 1/16 x 3/8\t2\t
19\tPW 51819\tHOOK, ROTARY\t1\treplaced by PW 52819
20\tPW 51820\tBEARING, BALL, R4ZZ\t1\t
21\tPW 51821\tE-RING, 5/16\t1\t
22\tPW 51822\tO-RING, AS568-012\t1\t
23\tPW 51823\tPLATE, THROAT\t1\t
24\tPW 51824\tSCREW, THROAT PLATE, 8-32 x 5/16, flat head\t2\t
25\tPW 51825\tBELT\t1\t
26\tPW 51826\tOIL, BOTTLE\t1\toption
`,
} as const;
