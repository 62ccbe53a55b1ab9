// The store that is on disk when it answers: one record for each page, written whole in one transaction.
import { type Kept, shaped } from "./kept.ts";

const storeName = "pages";
const patience = 3000; // ms; a page opens without its store rather than never
let opened: Promise<IDBDatabase> | undefined;

function open(): Promise<IDBDatabase> {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open("splitline", 1);
    request.addEventListener("upgradeneeded", () => request.result.createObjectStore(storeName));
    request.addEventListener("success", () => resolve(request.result));
    request.addEventListener("error", () =>
      reject(new Error("the store on disk is shut", { cause: request.error })),
    );
    setTimeout(() => reject(new Error("the store on disk does not answer")), patience);
    request.addEventListener("blocked", () => reject(new Error("the store on disk is held by another tab")));
  });
  return opened;
}

async function run<T>(mode: IDBTransactionMode, act: (store: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  const database = await open();
  return await new Promise((resolve, reject) => {
    const transaction = database.transaction(storeName, mode, { durability: "strict" });
    const request = act(transaction.objectStore(storeName));
    transaction.addEventListener("complete", () => resolve(request.result));
    transaction.addEventListener("error", () =>
      reject(new Error("not written", { cause: transaction.error })),
    );
    transaction.addEventListener("abort", () =>
      reject(new Error("not written", { cause: transaction.error })),
    );
    if (mode === "readwrite") transaction.commit(); // so that leaving the page does not abort it
  });
}

const asked = async <T>(answer: () => Promise<T>): Promise<T | undefined> => {
  try {
    return await answer();
  } catch {
    return undefined; // shut off, full, or a private window: said by whoever asked to keep
  }
};

export const readFromDisk = (id: string): Promise<Kept | undefined> =>
  asked(async () => shaped(await run<unknown>("readonly", (store) => store.get(id))));

export const keepOnDisk = async (id: string, kept: Kept): Promise<boolean> =>
  (await asked(async () => {
    await run("readwrite", (store) => store.put(kept, id));
    return true;
  })) ?? false;

export const forgetOnDisk = (id: string): Promise<unknown> =>
  asked(() => run("readwrite", (store) => store.delete(id)));
