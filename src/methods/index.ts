// All methods at once, for the command line and the library.
import { fits } from "./fits/index.ts";
import { margins } from "./margins/index.ts";
import { opening } from "./opening/index.ts";
import { plan } from "./plan/index.ts";
import { preload } from "./preload/index.ts";
import { addMethods } from "./register.ts";
import { shear } from "./shear/index.ts";
import { stiffness } from "./stiffness/index.ts";
import { threads } from "./threads/index.ts";
import { torque } from "./torque/index.ts";

for (const family of [threads, torque, stiffness, preload, margins, shear, fits, opening, plan])
  addMethods(family);

export { type AnyMethod, methodNamed, methods, solve } from "./register.ts";
