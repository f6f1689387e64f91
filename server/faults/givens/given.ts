/**
 * What can be observed beside the air side, with how likely each outcome is: the healthy distribution, and a row for each
 * fault that changes it. All chances are estimates of ours (common practice, no source), each with its reason.
 */
export type GivenRow = {
  readonly faults: readonly string[];
  readonly chance: readonly number[];
  readonly because: string;
};

export type Given = {
  readonly see: string;
  readonly sided?: true;
  /** From healthy to worst; where there is no such order, `nominal`. */
  readonly outcomes: readonly string[];
  readonly nominal?: true;
  readonly state: string;
  readonly healthy: readonly number[];
  readonly because: string;
  readonly rows: readonly GivenRow[];
};

export const row = (faults: readonly string[], chance: readonly number[], because: string): GivenRow => ({
  faults,
  chance,
  because,
});
