/** An intensity of 0 to 10 as somebody noted it, and by how much it may be off, one standard deviation. */
export interface NotedLevel {
  readonly mean: number;
  readonly sd: number;
}

/** One attribute of one mix: what it is made of, and what was noted of it. */
export interface NotedMix {
  /** By part, an id of `parts`: amounts in one unit, 0 or more, one above 0. */
  readonly amounts: Readonly<Record<string, number>>;
  readonly noted: NotedLevel;
}

/** One attribute: what was noted of the parts by themselves and of their mixes. */
export interface NotedMixes {
  readonly parts: Readonly<Record<string, NotedLevel>>;
  readonly mixes: readonly NotedMix[];
}

/** The mixes with places in place of ids and shares in place of amounts. */
export interface PlacedMixes {
  readonly levels: readonly NotedLevel[];
  readonly mixes: readonly {
    readonly places: readonly number[];
    readonly shares: readonly number[];
    readonly noted: NotedLevel;
  }[];
}

/** @throws RangeError for what makes no sense, naming it */
export function placed({ parts, mixes }: NotedMixes): PlacedMixes {
  const ids = [...new Set(mixes.flatMap(({ amounts }) => Object.keys(amounts)))].toSorted();
  const levels = ids.map((id) => {
    const level = parts[id];
    if (level === undefined) throw new RangeError(`a mix requires parts that were noted, got ${id}`);
    return checked(level, `the level of ${id}`);
  });
  return {
    levels,
    mixes: mixes.map(({ amounts, noted }, n) => {
      const lines = Object.entries(amounts);
      const bad = lines.find(([, amount]) => !(amount >= 0 && amount < Infinity));
      if (bad !== undefined)
        throw new RangeError(`amount of ${bad[0]} requires a number of 0 or more, got ${bad[1]}`);
      const all = lines.reduce((sum, [, amount]) => sum + amount, 0);
      if (!(all > 0)) throw new RangeError(`mix ${n + 1} requires an amount above 0, got ${all}`);
      const poured = lines.filter(([, amount]) => amount > 0);
      return {
        places: poured.map(([id]) => ids.indexOf(id)),
        shares: poured.map(([, amount]) => amount / all),
        noted: checked(noted, `the level of mix ${n + 1}`),
      };
    }),
  };
}

function checked({ mean, sd }: NotedLevel, what: string): NotedLevel {
  if (!(mean >= 0 && mean <= 10)) throw new RangeError(`${what} requires a mean of 0 to 10, got ${mean}`);
  if (!(sd > 0 && sd < Infinity)) throw new RangeError(`${what} requires a spread above 0, got ${sd}`);
  return { mean, sd };
}
