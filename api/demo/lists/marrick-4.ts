/** A hand grinder with a German list: semicolons, decimal commas, DIN designations. */
export const marrick4 = {
  maker: 'Hestrel',
  model: 'Marrick 4',
  duty: 'ordinary',
  file: 'marrick-4-teileliste.csv',
  mediaType: 'text/csv',
  text: `Pos.;Teile-Nr.;Bezeichnung;Menge;Bemerkung
1;M4.0.001;Gehäuse;1;
2;M4.0.002;Trichter;1;
3;M4.0.003;Deckel;1;
4;M4.0.010;Antriebswelle;1;
5;M4.0.041;Kugellager 5x11x4 ZZ;2;
6;M4.0.012;Mahlkegel;1;ersetzt durch M4.1.012
7;M4.0.013;Mahlring;1;
8;M4.0.014;Passscheibe 8x14x0,1;n.B.;nach Bedarf
9;M4.0.015;Passscheibe 8x14x0,2;n.B.;nach Bedarf
10;M4.0.016;Sicherungsring DIN 471 - 8x0,8;1;
11;M4.0.017;Sicherungsscheibe 4 DIN 6799;1;
12;M4.0.018;Druckfeder 0,8x9x22;1;
13;M4.0.019;Kurbel komplett;1;bestehend aus 14-17
14;M4.0.020;Kurbelarm;1;
15;M4.0.021;Griff;1;nicht einzeln erhältlich
16;M4.0.022;Griffschraube M5x20;1;
17;M4.0.023;Scheibe 5,3x10x1;2;
18;M4.0.024;Hutmutter M6 DIN 1587;1;
19;M4.0.030;Zylinderschraube M3x8 DIN 7985;4;
20;M4.0.031;Senkschraube M3x8 ISO 7046;2;
21;M4.0.032;Scheibe 3,2x7x0,5;4;
22;M4.0.033;Gewindestift M4x6 DIN 916;1;
23;M4.0.034;O-Ring 10x1,5;1;
24;M4.0.035;Zylinderstift 3x12 ISO 2338;1;
25;M4.0.036;Einstellmutter M8x1;1;Linksgewinde
26;M4.0.037;Kugel 3,175;2;
27;M4.0.038;Fett, Tube;1;
`,
} as const;
