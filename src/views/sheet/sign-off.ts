// Boxes for ink: who prepared, checked and signed. Nothing is signed on the screen here.
import type { SignOffItem, SignOffRole } from "../../document/item.ts";
import type { Line } from "../../engine/line.ts";
import { el } from "../dom.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { row } from "./row.ts";

const roles: readonly SignOffRole[] = ["prepared", "checked", "signed"];

export function signOffView(context: PageContext, line: Line): ItemView {
  const { item, name } = line;
  const { element, body } = row(context, name, item, { wide: true });
  if (item.kind === "sign-off")
    body.append(
      el("div", { class: "boxes" }, ...roles.map((role) => box(item, role))),
      el(
        "p",
        { class: "quiet" },
        "Three different people. A signature is for the content named in the title block; any change of content afterwards takes it away.",
      ),
    );
  return { element, update: () => undefined };
}

function box(item: SignOffItem, role: SignOffRole): HTMLElement {
  const record = item.records[role];
  const who = record?.who ?? item[role];
  return el(
    "div",
    { class: "box" },
    el("span", { class: "tiny" }, role),
    field("name", who),
    field("date", record?.date),
    field("signature", undefined),
  );
}

const field = (label: string, text: string | undefined): HTMLElement =>
  el(
    "div",
    { class: "ink" },
    el("span", { class: "tiny" }, label),
    el("span", { class: "ink-text" }, text ?? "\u00a0"),
  );
