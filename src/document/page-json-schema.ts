// The page format for editors, as JSON Schema (draft 2020-12).
import { pageSchema, z } from "./schema.ts";

export function pageJsonSchema(): Readonly<Record<string, unknown>> {
  const schema = z.toJSONSchema(pageSchema, { target: "draft-2020-12", io: "input" });
  return { ...schema, title: "Splitline page", description: "A page file, format version 1" };
}
