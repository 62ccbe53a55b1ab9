import { expect, test } from "vitest";
import { pageJsonSchema } from "../../src/document/page-json-schema.ts";

test("pageJsonSchema() is plain JSON of draft 2020-12 that refuses unknown keys", () => {
  const schema = pageJsonSchema();
  expect(schema["$schema"]).toBe("https://json-schema.org/draft/2020-12/schema");
  expect(schema).toMatchObject({
    type: "object",
    additionalProperties: false,
    required: ["splitline", "title", "page"],
  });
  expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
});

test("pageJsonSchema() lists every kind of item", () => {
  const text = JSON.stringify(pageJsonSchema());
  for (const kind of ["note", "given", "working", "check", "reading", "picture", "caution", "sign-off"])
    expect(text).toContain(`"required":["${kind}"`);
});
