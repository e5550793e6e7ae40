import type { StockMotor } from "../matching/types.ts";
import type { Nameplate } from "../nameplate/vocabulary.ts";
import type { Cell } from "./cells.ts";
import {
  celsius,
  codes,
  count,
  horsepower,
  isoDate,
  numbers,
  oneOf,
  positive,
  price,
  speeds,
  text,
  upTo,
} from "./cells.ts";
import { type Sheet, sheetOf } from "./import-sheet.ts";
import type { Row, RowError, TableDefinition } from "./table.ts";
import { readTable, writeTable } from "./table.ts";

export type { RowError } from "./table.ts";
export { showRowError } from "./table.ts";

const phase: Cell<1 | 3> = {
  expected: "1 or 3",
  read: (cell) => {
    const digit = /^([13]) ?-?(?:ph|phase)?$/i.exec(cell)?.[1];
    return digit === "1" ? 1 : digit === "3" ? 3 : undefined;
  },
  show: String,
};

const frame: Cell<string> = {
  expected: "digits and letters, such as 56Y",
  read: (cell) => {
    const closed = cell.toUpperCase().replaceAll(/[\s-]/g, "");
    return /^[0-9]{2,3}[A-Z]{0,3}$/.test(closed) ? closed : undefined;
  },
  show: (value) => value,
};

const duty: Cell<"continuous" | number> = {
  expected: "continuous, or minutes such as 60",
  read: (cell) =>
    /^cont(?:\.|inuous)?$/i.test(cell)
      ? "continuous"
      : positive.read(cell.replace(/ ?min(?:\.|utes)?$/i, "")),
  show: String,
};

/** The stock table: header name -> how a cell of it is read and written. Empty cells are "not stated". */
const columns = {
  sku: { ...text, expected: "a stock number" },
  maker: text,
  description: text,
  hp: horsepower,
  service_factor: positive,
  total_hp: horsepower,
  volts: numbers,
  amps: numbers,
  service_factor_amps: numbers,
  rpm: speeds,
  hz: numbers,
  phase,
  frame,
  flange: oneOf(["square", "round", "through-bolt"], { throughbolt: "through-bolt" }),
  shaft: oneOf(["threaded", "keyed"]),
  speed_kind: oneOf(["single", "two", "variable"], {
    "single speed": "single",
    "1 speed": "single",
    "two speed": "two",
    "2 speed": "two",
    "dual speed": "two",
    dual: "two",
    "variable speed": "variable",
  }),
  duty,
  ambient_c: celsius,
  efficiency_pct: upTo(100),
  power_factor: upTo(1),
  made_on: isoDate,
  price_usd: price,
  in_stock: count,
  replaces: codes,
} as const;

const table: TableDefinition<typeof columns> = {
  columns,
  key: "sku",
  required: ["volts", "phase", "frame"],
};

export interface MotorsReading {
  /** The rows without a fault. */
  readonly motors: readonly StockMotor[];
  readonly errors: readonly RowError[];
}

/** Reads the stock table. Never throws on its text: whether to import beside `errors` is the caller's choice. */
export function parseMotors(csvText: string): MotorsReading {
  const { rows, errors } = readTable(csvText, table);
  return { motors: rows.map(({ values }) => toMotor(values)), errors };
}

/** Writes motors as the table `parseMotors` reads. */
export function formatMotors(motors: Iterable<StockMotor>): string {
  return writeTable(columns, Array.from(motors, toRow));
}

/** The table for imports and exports. */
export const motorSheet: Sheet<StockMotor> = sheetOf(table, toMotor, toRow);

function toMotor(row: Row<typeof columns>): StockMotor {
  return {
    sku: row.sku ?? "",
    maker: row.maker ?? "",
    description: row.description ?? "",
    label: stated({
      hp: row.hp,
      serviceFactor: row.service_factor,
      totalHp: row.total_hp,
      volts: row.volts,
      amps: row.amps,
      serviceFactorAmps: row.service_factor_amps,
      rpm: row.rpm,
      hz: row.hz,
      phase: row.phase,
      frame: row.frame,
      flange: row.flange,
      shaft: row.shaft,
      speedKind: row.speed_kind,
      duty: row.duty,
      ambientC: row.ambient_c,
    }),
    ...stated({
      efficiencyPct: row.efficiency_pct,
      powerFactor: row.power_factor,
      madeOn: row.made_on,
      priceUsd: row.price_usd,
    }),
    inStock: row.in_stock ?? 0,
    replaces: row.replaces ?? [],
  };
}

function toRow(motor: StockMotor): Row<typeof columns> {
  const { label } = motor;
  return {
    sku: motor.sku,
    maker: motor.maker,
    description: motor.description,
    hp: label.hp,
    service_factor: label.serviceFactor,
    total_hp: label.totalHp,
    volts: label.volts,
    amps: label.amps,
    service_factor_amps: label.serviceFactorAmps,
    rpm: label.rpm,
    hz: label.hz,
    phase: label.phase,
    frame: label.frame,
    flange: label.flange,
    shaft: label.shaft,
    speed_kind: label.speedKind,
    duty: label.duty,
    ambient_c: label.ambientC,
    efficiency_pct: motor.efficiencyPct,
    power_factor: motor.powerFactor,
    made_on: motor.madeOn,
    price_usd: motor.priceUsd,
    in_stock: motor.inStock,
    replaces: [...motor.replaces],
  };
}

/** The same object without its undefined entries: a key that is there is stated. */
function stated<Values extends Partial<StockMotor> | Nameplate>(values: Values): Values {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Values;
}
