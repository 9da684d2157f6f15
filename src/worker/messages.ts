/** What pages and the service worker say to each other. */
export type ToWorker =
  /** Let the edition that waits take over from the one in use. */
  | { type: 'take' }
  /** Say what the device holds; answered with `Holds` through the port that comes along. */
  | { type: 'look' }
  /** Fetch again what the browser has cleared away; answered with `Progress` on the way and `Holds` when done. */
  | { type: 'mend' };

/** Sent to every open page while an edition is fetched for the first time. */
export type Progress = { type: 'progress'; edition: string; done: number; total: number };

/** What the device holds. `folders`: files in each folder at the top of the handbook; `''` stands for what is in none. */
export type Holds = {
  type: 'holds';
  edition: string;
  files: { held: number; of: number };
  /** Size before packing, in bytes, of what is held. */
  bytes: number;
  folders: Record<string, [held: number, of: number]>;
};

/** One file of an edition: address relative to the worker, `integrity` as in W3C Subresource Integrity, size in bytes. */
export type ListedFile = [url: string, integrity: string, bytes: number];
