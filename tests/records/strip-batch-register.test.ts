import { describe, expect, it } from "vitest";
import { aimsOfBatch } from "wetside/control";
import { formatStripBatchRegister, parseStripBatchRegister } from "wetside/records";

const file = "batches.csv";
const HEADER = "strip_batch,process,reading,first_used,ld_r,ld_g,ld_b";
const reference = "P-7,colour-paper,reference,2026-06-01,0.80,0.81,0.79";
const correction = "P-7,colour-paper,correction,,0.01,-0.01,0";
const read = (...rows: string[]) =>
  parseStripBatchRegister(`${[HEADER, ...rows].join("\n")}\n`, { file });

describe("the register of strip batches", () => {
  it("joins the two rows of a batch, whichever comes first", () => {
    const batch = {
      id: "P-7",
      process: "colour-paper",
      firstUsed: "2026-06-01",
      reference: { ld: { red: 0.8, green: 0.81, blue: 0.79 } },
      correction: { ld: { red: 0.01, green: -0.01, blue: 0 } },
    };
    expect(read(reference, correction).rows).toEqual([batch]);
    expect(read(correction, reference).rows).toEqual([batch]);
  });

  it("gives batches from which aims can be made", () => {
    const [batch] = read(reference, correction).rows;
    if (batch === undefined) throw new Error("no batch");
    expect(aimsOfBatch(batch).patches.ld).toEqual({ red: 0.81, green: 0.8, blue: 0.79 });
  });

  it("reports a batch with half its rows, and keeps the others", () => {
    const log = read(reference, correction, reference.replace("P-7", "P-8"));
    expect(log.rows.map((batch) => batch.id)).toEqual(["P-7"]);
    expect(log.problems[0]).toMatchObject({
      line: 4,
      column: "reading",
      problem: 'the batch P-8 has no usable row "correction"',
      advice: "add its correction; write 0.00 if none is printed",
    });
    expect([log.rowsRead, log.rowsRefused]).toEqual([3, 1]);
    expect(read(correction).problems[0]?.advice).toBe("add the reading of its reference strip");
  });

  it("refuses the same reading twice", () => {
    const log = read(reference, correction, reference.replace("0.80", "0.82"));
    expect(log.problems[0]).toMatchObject({
      line: 4,
      problem: "a reading of this batch stands twice (the other is on line 2)",
    });
    expect(log.rows).toHaveLength(1);
  });

  it("lets corrections be negative and small, references neither", () => {
    const problems = (...rows: string[]) => read(...rows).problems.map((each) => each.problem);
    expect(problems(reference, correction.replace("-0.01", "-0.6"))).toContain(
      "outside the range of a batch correction",
    );
    expect(problems(reference.replace("0.81", "-0.81"), correction)).toContain(
      "a density is not negative",
    );
  });

  it("asks for reference or correction", () => {
    expect(read(reference.replace("reference", "refrence"), correction).problems[0]).toMatchObject({
      column: "reading",
      advice: "write reference",
    });
  });

  it("lets one batch number serve two processes", () => {
    const film = [reference, correction].map((row) => row.replace("paper", "negative"));
    expect(read(reference, correction, ...film).rows.map((each) => each.process)).toEqual([
      "colour-paper",
      "colour-negative",
    ]);
  });

  it("is read back as it was written, patches left out included", () => {
    const grey = (density: number) => ({ red: density, green: density, blue: density });
    const batches = [
      {
        id: "N-1",
        process: "colour-negative",
        reference: { dMin: grey(0.2), retainedSilver: grey(2.6) },
        correction: { dMin: grey(-0.01) },
      },
    ];
    const text = formatStripBatchRegister(batches);
    expect(parseStripBatchRegister(text, { file })).toMatchObject({ rows: batches, problems: [] });
  });
});
