/** One bath of a line. */
export interface LabBath {
  readonly id: string;
  /** What it does: `"developer"`, `"bleach"`, `"fixer"`, `"wash"` … */
  readonly role: string;
  readonly volumeL: number;
  readonly setTemperatureC: number;
  readonly timeMin: number;
  readonly source?: string;
}

/** The dryer at the end of a line. */
export interface LabDryer {
  readonly id: string;
  readonly setTemperatureC: number;
  readonly timeMin: number;
  readonly source?: string;
}

/** One processing line. */
export interface LabLine {
  readonly id: string;
  readonly name: string;
  /** Id of the process specification that holds for it. */
  readonly process: string;
  /** The file of its control-strip log. */
  readonly strips: string;
  /** The patches read on each strip. */
  readonly patches: readonly string[];
  /** Ids of the formats that go through it. */
  readonly formats: readonly string[];
  /** In the order in which film or paper goes through them. */
  readonly baths: readonly LabBath[];
  readonly dryer?: LabDryer;
  readonly finish?: string;
  readonly finishSource?: string;
}

/** One replenisher pump. */
export interface LabPump {
  readonly id: string;
  /** The bath it feeds. */
  readonly bath: string;
  readonly settingMlPerStroke: number;
  /** What it is meant to deliver for each square metre. */
  readonly rateMlPerM2: number;
  readonly firstCounterStrokes?: number;
}

/** A lab as it describes itself: what the logs are checked against. */
export interface LabDescription {
  readonly name: string;
  readonly note?: string;
  /** Local day for which the lab is looked at; logs must not reach beyond it. */
  readonly today?: string;
  readonly lines: readonly LabLine[];
  readonly pumps: readonly LabPump[];
  readonly operators?: readonly string[];
  /** The files of the logs, by what they hold. */
  readonly files: {
    readonly stripBatches: string;
    readonly production?: string;
    readonly pumps?: string;
    readonly temperatures?: string;
    readonly checks?: string;
    readonly work?: string;
    readonly remakes?: string;
  };
}
