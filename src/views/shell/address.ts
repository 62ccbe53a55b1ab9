// Page and line in the address, so that a line can be pointed at: #page=pump-2-old-card&line=netTorque, and &row=18 for one row
export interface Address {
  readonly page: string | undefined;
  readonly line: string | undefined;
  readonly row: string | undefined;
}

export function readAddress(hash: string): Address {
  const fields = new URLSearchParams(hash.replace(/^#/, ""));
  return {
    page: fields.get("page") ?? undefined,
    line: fields.get("line") ?? undefined,
    row: fields.get("row") ?? undefined,
  };
}

export function address(page: string, line?: string, row?: string): string {
  const fields = new URLSearchParams({
    page,
    ...(line !== undefined && { line }),
    ...(row !== undefined && { row }),
  });
  return `#${fields.toString()}`;
}
