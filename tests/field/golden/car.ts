export type Source = "stated" | "measured" | "data sheet" | "typical" | "chosen" | "solved" | "road test";
/** What may stand beside a value. */
export interface Evidence { from?: Source; plus_minus?: string | number; part?: string; note?: string }
export type Given<T> = T | ({ value: T } & Evidence);
export type Rows = [string | number, string | number][];
export type CurveGiven = Rows | ({ points: Rows } & Evidence);

export interface Car {
  /** cooling */
  cooling?: {
    /** radiator */
    radiator?: {
      /** core width: Between the tanks. */
      core_width?: Given<string>;
      /** core height */
      core_height?: Given<string>;
      /** thermostat opens */
      thermostat?: Given<string>;
      /** cap pressure */
      cap?: Given<string>;
      /** share of fins */
      fin_share?: Given<number | string>;
      /** rows of tubes */
      rows?: Given<number | string>;
      /** has a shroud */
      shrouded?: Given<boolean>;
      /** flow */
      flow?: Given<"down-flow" | "cross-flow">;
      /** colour */
      colour?: Given<string>;
      /** marks on it */
      marks?: Given<string[]>;
      /** loss of the air through it */
      airflow_loss?: CurveGiven;
      /** shelf part that gives what is not given here */
      part?: string;
      note?: string;
    };
    /** oil cooler */
    oil_cooler?: {
      /** heat taken out */
      heat?: Given<string>;
      note?: string;
    };
    note?: string;
  };
  /** wiring */
  wiring?: {
    /** wire runs */
    run?: Record<string, {
      /** wire size */
      gauge?: Given<string>;
      /** length of the run */
      length?: Given<string>;
      /** shelf part that gives what is not given here */
      part?: string;
      note?: string;
    }>;
    note?: string;
  };
  note?: string;
}
