/** Which paper sheet of which flight. */
export interface PaperAt {
  readonly [name: string]: string;
  readonly household: string;
  readonly flight: string;
  readonly sheet: string;
}
