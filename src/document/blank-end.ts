// Where the blank lines at the end of a text begin. Read from the end, one character at a time: a pattern for
// it begins anew at each line end and takes seconds for a long run of them.
export function blankEnd(text: string, isBlank: (character: string) => boolean = () => false): number {
  let end = text.length;
  for (;;) {
    let at = end;
    while (at > 0 && isBlank(text.charAt(at - 1))) at -= 1;
    if (text[at - 1] !== "\n") return end;
    end = text[at - 2] === "\r" ? at - 2 : at - 1;
  }
}

export const isSpaceOrTab = (character: string): boolean => character === " " || character === "\t";
