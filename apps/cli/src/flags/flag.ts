import type { Reading } from "@partsproof/core/quantity";

export type Read<T> = (text: string) => Reading<T>;

interface Face {
  /** What stands after the flag in the help: "<volume>". */
  readonly hint: string;
  readonly says: string;
}

export interface OneFlag<T> extends Face {
  readonly takes: "one";
  readonly needed: boolean;
  readonly read: Read<T>;
  /** Name of the environment variable that stands in where the flag is not given. */
  readonly env?: string;
}
export interface NeededFlag<T> extends OneFlag<T> {
  readonly needed: true;
}
export interface ManyFlag<T> extends Face {
  readonly takes: "many";
  readonly needed: boolean;
  readonly read: Read<T>;
}
export interface YesFlag {
  readonly takes: "nothing";
  readonly says: string;
}

export type Flag = OneFlag<unknown> | ManyFlag<unknown> | YesFlag;
export type Flags = Readonly<Record<string, Flag>>;

/** What a command gets for its flags. */
export type GivenFlags<F extends Flags> = {
  readonly [K in keyof F]: F[K] extends YesFlag
    ? boolean
    : F[K] extends ManyFlag<infer T>
      ? readonly T[]
      : F[K] extends NeededFlag<infer T>
        ? T
        : F[K] extends OneFlag<infer T>
          ? T | undefined
          : never;
};

/** A flag that may be given once. */
export const one = <T>(read: Read<T>, hint: string, says: string, env?: string): OneFlag<T> => ({
  takes: "one",
  needed: false,
  read,
  hint,
  says,
  ...(env === undefined ? {} : { env }),
});

/** A flag that must be given, once. */
export const needed = <T>(read: Read<T>, hint: string, says: string): NeededFlag<T> => ({
  takes: "one",
  needed: true,
  read,
  hint,
  says,
});

/** A flag that may be given again and again. */
export const many = <T>(read: Read<T>, hint: string, says: string): ManyFlag<T> => ({
  takes: "many",
  needed: false,
  read,
  hint,
  says,
});

/** A flag that must be given at least once. */
export const some = <T>(read: Read<T>, hint: string, says: string): ManyFlag<T> => ({
  ...many(read, hint, says),
  needed: true,
});

/** A flag without a value. */
export const yes = (says: string): YesFlag => ({ takes: "nothing", says });
