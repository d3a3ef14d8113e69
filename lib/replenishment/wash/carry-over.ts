import washData from "../../../data/replenishment/wash.json" with { type: "json" };

/** Liquid that material carries from tank to tank. */
export interface CarryOver {
  readonly id: string;
  readonly mlPerM2: number;
  readonly what: string;
  readonly source: string;
  readonly howObtained: string;
}

/** Carry-over from good squeegees to not drained at all: weigh your own, wet and dry. */
export const carryOvers: readonly CarryOver[] = washData.carryOver;

/** Published limit of thiosulfate left in film for long keeping. */
export const thiosulfateLimit: {
  readonly gPerM2: number;
  readonly ugPerCm2: number;
  readonly source: string;
  readonly howObtained: string;
} = washData.thiosulfateLimit;
