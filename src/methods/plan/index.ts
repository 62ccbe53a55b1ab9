// The methods of this family.

import type { AnyMethod } from "../register.ts";
import { changeSince } from "./change-since.ts";
import { passTorques } from "./pass-torques.ts";
import { recordFindings } from "./record-findings.ts";
import { tighteningOrder } from "./tightening-order.ts";

export const plan: readonly AnyMethod[] = [tighteningOrder, passTorques, recordFindings, changeSince];
