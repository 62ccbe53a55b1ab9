// A first word that is neither a command nor a flag of its own.
import { nearest } from "../../nearest.ts";
import { problem } from "../../problem.ts";
import { type Outcome, refused } from "../outcome.ts";

export function unknownWord(got: string, commands: readonly string[], json: boolean): Outcome {
  return refused(got.startsWith("-") ? unknownFlag(got) : unknownCommand(got, commands), json);
}

function unknownCommand(got: string, commands: readonly string[]) {
  const near = nearest(got, commands, 1);
  return problem({
    code: "unknown-command",
    where: "splitline",
    what: "command",
    got,
    must: `be one of ${commands.join(", ")}`,
    hint: near[0] ? `did you mean splitline ${near[0]}?` : "splitline help shows more",
    suggestions: near,
  });
}

const unknownFlag = (got: string) =>
  problem({
    code: "unknown-flag",
    where: "splitline",
    what: got,
    got: "a flag before any command",
    must: "be --help or --version, or follow its command",
    suggestions: nearest(got, ["--help", "--version"], 1),
  });
