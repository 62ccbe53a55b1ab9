// The part of the reactive runtime that the engine uses; the package ships no types.
declare module "@observablehq/runtime" {
  export interface Observer {
    pending?: () => void;
    fulfilled?: (value: never, name?: string) => void;
    rejected?: (error: unknown, name?: string) => void;
  }
  export interface Variable {
    define: (name: string, inputs: readonly string[], definition: unknown) => Variable;
    delete: () => void;
  }
  export interface Module {
    variable: (observer?: Observer | boolean) => Variable;
  }
  export class Runtime {
    module: () => Module;
    dispose: () => void;
    /** Private parts of the pinned version; a test fails when they are gone. */
    _computeSoon: () => Promise<unknown>;
    _computeNow: () => Promise<unknown>;
  }
}
