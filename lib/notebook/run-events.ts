import type { Bundle } from "./notebook-file.ts";

/** What the process that runs a notebook's cells tells the one that started it. */
export type RunEvent =
  | { readonly type: "begin"; readonly cell: number }
  | { readonly type: "stream"; readonly name: "stdout" | "stderr"; readonly text: string }
  | { readonly type: "display"; readonly data: Bundle }
  | { readonly type: "result"; readonly data: Bundle }
  | { readonly type: "caught"; readonly name: string; readonly message: string }
  | { readonly type: "announce"; readonly text: string }
  | { readonly type: "read"; readonly path: string }
  | { readonly type: "save"; readonly name: string; readonly text: string }
  | { readonly type: "failed"; readonly failure: Failure }
  | { readonly type: "end" }
  | { readonly type: "done" };

/** An error that ended a run. */
export interface Failure {
  readonly name: string;
  readonly message: string;
  readonly stack: string;
  /** How the error came out of the cells. */
  readonly way: "thrown" | "rejected" | "not-thrown";
}
