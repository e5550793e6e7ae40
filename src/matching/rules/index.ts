import type { Rule } from "../types.ts";
import { ambient } from "./ambient.ts";
import { current } from "./current.ts";
import { duty } from "./duty.ts";
import { frequency } from "./frequency.ts";
import { mount } from "./mount.ts";
import { phase } from "./phase.ts";
import { recordRule } from "./record.ts";
import { sale } from "./sale.ts";
import { shaft } from "./shaft.ts";
import { speed } from "./speed.ts";
import { supply } from "./supply.ts";
import { totalHorsepower } from "./total-horsepower.ts";

const ratingRules: readonly Rule[] = [
  mount,
  shaft,
  totalHorsepower,
  supply,
  phase,
  frequency,
  speed,
  current,
  duty,
  ambient,
  sale,
];

/** Every rule, in the order findings are given. Bot, command line and desk judge by this one list. */
export const rules: readonly Rule[] = [...ratingRules, recordRule(ratingRules)];
