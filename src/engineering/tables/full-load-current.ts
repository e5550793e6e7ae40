/** One row of a full-load current table: hp, then amps in the order of the table's voltage columns. */
export type CurrentRow = readonly [hp: number, ...amps: number[]];

export interface CurrentTable {
  readonly source: string;
  readonly columnVolts: readonly number[];
  readonly rows: readonly CurrentRow[];
}

/** Single-phase full-load current in amperes. Source: NFPA 70 (NEC) Table 430.248. */
export const singlePhaseCurrent: CurrentTable = {
  source: "NFPA 70 (NEC) Table 430.248",
  columnVolts: [115, 200, 208, 230],
  rows: [
    [1 / 6, 4.4, 2.5, 2.4, 2.2],
    [1 / 4, 5.8, 3.3, 3.2, 2.9],
    [1 / 3, 7.2, 4.1, 4.0, 3.6],
    [1 / 2, 9.8, 5.6, 5.4, 4.9],
    [3 / 4, 13.8, 7.9, 7.6, 6.9],
    [1, 16, 9.2, 8.8, 8.0],
    [1.5, 20, 11.5, 11.0, 10],
    [2, 24, 13.8, 13.2, 12],
    [3, 34, 19.6, 18.7, 17],
    [5, 56, 32.2, 30.8, 28],
    [7.5, 80, 46.0, 44.0, 40],
    [10, 100, 57.5, 55.0, 50],
  ],
};

/** Three-phase full-load current in amperes. Source: NFPA 70 (NEC) Table 430.250. */
export const threePhaseCurrent: CurrentTable = {
  source: "NFPA 70 (NEC) Table 430.250",
  columnVolts: [200, 208, 230, 460],
  rows: [
    [1 / 2, 2.5, 2.4, 2.2, 1.1],
    [3 / 4, 3.7, 3.5, 3.2, 1.6],
    [1, 4.8, 4.6, 4.2, 2.1],
    [1.5, 6.9, 6.6, 6.0, 3.0],
    [2, 7.8, 7.5, 6.8, 3.4],
    [3, 11.0, 10.6, 9.6, 4.8],
    [5, 17.5, 16.7, 15.2, 7.6],
    [7.5, 25.3, 24.2, 22, 11],
    [10, 32.2, 30.8, 28, 14],
  ],
};
