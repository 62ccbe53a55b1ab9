// Page and line in the address, so that a line can be pointed at: #page=pump-2-old-card&line=netTorque
export interface Address {
  readonly page: string | undefined;
  readonly line: string | undefined;
}

export function readAddress(hash: string): Address {
  const fields = new URLSearchParams(hash.replace(/^#/, ""));
  return { page: fields.get("page") ?? undefined, line: fields.get("line") ?? undefined };
}

export function address(page: string, line?: string): string {
  const fields = new URLSearchParams({ page, ...(line !== undefined && { line }) });
  return `#${fields.toString()}`;
}
