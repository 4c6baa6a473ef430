// Thousandths of an inch, as the standard states them. Sizes follow each other without a gap inside a run; an inside
// diameter is `size/tolerance` where the tolerance changes, then the size alone.
// Source: SAE AS568 (the same sizes as ISO 3601-1 class A), read in five transcriptions of which one is in millimetres
// and independent of the others; the standard itself was not opened.

/** Sizes that follow each other with one cross section. */
export interface SizeRun {
  readonly from: number;
  readonly crossSection: number;
  readonly tolerance: number;
  readonly insideDiameters: string;
}

/** AS568 -001 to -475. */
export const sizeRuns: readonly SizeRun[] = [
  {
    from: 1,
    crossSection: 40,
    tolerance: 3,
    insideDiameters: `29/4`,
  },
  {
    from: 2,
    crossSection: 50,
    tolerance: 3,
    insideDiameters: `42/4`,
  },
  {
    from: 3,
    crossSection: 60,
    tolerance: 3,
    insideDiameters: `56/4`,
  },
  {
    from: 4,
    crossSection: 70,
    tolerance: 3,
    insideDiameters: `70/5 101 114 145 176 208 239 301 364 426 489 551/7 614/9 676 739 801 864 926 989/10 1051 1114
1176/11 1239 1301 1364/13 1489 1614 1739/15 1864 1989/18 2114 2239 2364 2489 2614/20 2739 2864
2989/24 3239 3489 3739/27 3989 4239/30 4489 4739 4989/37 5239`,
  },
  {
    from: 102,
    crossSection: 103,
    tolerance: 3,
    insideDiameters: `49/5 81 112 143 174 206 237 299 362 424 487 549/7 612/9 674 737 799/10 862 924 987 1049 1112 1174/12
1237 1299 1362 1424 1487 1549/15 1612 1674 1737 1799 1862 1925/17 1987 2050 2112 2175 2237 2300/20
2362 2425 2487 2550 2612 2675/22 2737 2800 2862 2987/24 3237 3487 3737/28 3987 4237/30 4487 4737
4987/35 5237 5487 5737 5987 6237/40 6487 6737 6987 7237/45 7487 7737 7987 8237/50 8487 8737 8987
9237/55 9487 9737`,
  },
  {
    from: 201,
    crossSection: 139,
    tolerance: 4,
    insideDiameters: `171/5 234 296 359 421 484 546/7 609/9 671 734/10 796 859 921 984 1046 1109/12 1171 1234 1296 1359
1421 1484/15 1609 1734 1859/18 1984 2109 2234/20 2359 2484 2609 2734/24 2859 2984 3109 3234 3359
3484 3609/28 3734 3859 3984 4109 4234/30 4359 4484 4609 4734 4859/35 4984 5109 5234 5359 5484 5609
5734 5859 5984 6234/40 6484 6734 6984 7234/45 7484 7734 7984 8234/50 8484 8734 8984 9234/55 9484
9734 9984 10484 10984/65 11484 11984 12984 13984 14984 15955/75 16955/80 17955/85`,
  },
  {
    from: 309,
    crossSection: 210,
    tolerance: 5,
    insideDiameters: `412/5 475 537/7 600/9 662 725/10 787 850 912 975 1037 1100/12 1162 1225 1287 1350 1475/15 1600 1725
1850 1975/18 2100 2225 2350 2475/20 2600 2725 2850 2975/24 3100 3225 3350 3475 3600/28 3725 3850
3975 4100 4225/30 4350 4475 4600 4725 4850 4975/37 5100 5225 5350 5475 5600 5725 5850 5975 6225/40
6475 6725 6975 7225/45 7475 7725 7975 8225/50 8475 8725 8975 9225/55 9475 9725 9975 10475/60 10975
11475/65 11975 12975 13975/70 14975 15955/75 16955/80 17955/85 18955/90 19955/95 20955 21955/100
22940/105 23940/110 24940/115 25940/120`,
  },
  {
    from: 425,
    crossSection: 275,
    tolerance: 6,
    insideDiameters: `4475/33 4600 4725 4850 4975/37 5100 5225 5350 5475 5600 5725 5850 5975 6225/40 6475 6725 6975
7225/45 7475 7725 7975 8475/55 8975 9475 9975 10475/60 10975 11475 11975 12475 12975 13475/70 13975
14475 14975 15475 15955/75 16455 16955/80 17455/85 17955 18455 18955/90 19455 19955/95 20955
21955/100 22940/105 23940/110 24940/115 25940/120`,
  },
];

/** Where the transcriptions disagree, by size; the majority is kept. */
export const disagreements: Readonly<Record<number, string>> = {
  225: 'tolerance of the inside diameter: two gland tables print 0.015 in, the size list and ISO 3601-1 class A 0.018 in',
  228: 'tolerance of the inside diameter: one transcription of ISO 3601-1 gives 0.61 mm instead of 0.51 mm',
  229: 'tolerance of the inside diameter: one transcription of ISO 3601-1 gives 0.61 mm instead of 0.51 mm',
  230: 'tolerance of the inside diameter: one transcription of ISO 3601-1 gives 0.61 mm instead of 0.51 mm',
  231: 'tolerance of the inside diameter: one transcription of ISO 3601-1 gives 0.61 mm instead of 0.51 mm',
  239: 'tolerance of the inside diameter: one size list prints 0.024 in, the others 0.028 in',
  319: 'inside diameter: one transcription prints 1.034 in, four print 1.037 in',
  386: 'tolerance of the inside diameter: one size list prints 0.075 in, the others 0.080 in',
};
