import { cutList, doubtful, wrong, type Finding, type Job, type Part, type PlannedOpening } from "../drawer";
import { Fault, greaterOf, less, orElse, subtract, writeLength, ZERO, type Unit } from "../length";
import { halvingsOf, isQuarter, matchStock, planing, type SheetGroup, type SolidGroup } from "../sheets";
import { costed, toCut, unpricedOf, type Costing, type PlannedPart } from "./costed";
import { quoteOf } from "./quote";
import type { RateName, Rates } from "./rates";
import { isSolid, type AnyStock, type SolidStock } from "./solid-stock";

/**
 * What keeps a job from being cut from its stock, and from being priced: everything at once, where a quote fails for
 * the first thing.
 * @param usesOf lays a group of parts out
 */
export function checkCosts(
  job: Job,
  plan: readonly PlannedOpening[],
  { stock, rates }: { stock?: readonly AnyStock[] | undefined; rates?: Rates | undefined },
  usesOf: Costing["usesOf"],
): Finding[] {
  const parts = cutList(plan, true);
  const found = stock ? checkStock(job, parts, stock, rates !== undefined, usesOf) : [];
  return rates ? [...found, ...checkRates(job, plan, parts, stock, rates, usesOf)] : found;
}

function checkStock(
  job: Job,
  parts: readonly Part[],
  stock: readonly AnyStock[],
  priced: boolean,
  usesOf: Costing["usesOf"],
): Finding[] {
  const all = parts.map(toCut);
  const faults = all.map((part) => faultOf(() => matchStock([part], stock, isSolid, job.unit)));
  const { sheets, solid } = matchStock(
    all.filter((_, i) => !faults[i]),
    stock,
    isSolid,
    job.unit,
  );
  const halvings = halvingsOf(sheets);
  const forgotten = priced
    ? [
        ...sheets.flatMap((group) => unpricedOf(group, stock) ?? []),
        ...solid.flatMap((group) => (group.stock.price ? [] : [group.stock])),
      ]
    : [];
  return [
    ...unmatched(all, faults),
    ...sheets.flatMap((group, i) => checkGroup(job, group, halvings[i]!, usesOf)),
    ...solid.flatMap((group) => checkSolid(group, job.unit)),
    ...forgotten.map(({ name }) => asFinding("stock", new Fault("stock.priceMissing", { stock: name }))),
  ];
}

/** Boards of which nobody knows how thick they are sold, or that leave nothing to plane. */
function checkSolid({ stock, parts }: SolidGroup<SolidStock>, unit: Unit): Finding[] {
  const { soldBy, thickness: rough } = stock;
  const material = stock.material || parts[0]!.material;
  if (!rough) {
    return soldBy === "board foot" ? [{ where: "stock", ...doubtful("stock.roughUnknown", { material }) }] : [];
  }
  if (!isQuarter(rough, unit)) return [];
  const thin = parts.find(({ thickness }) => thickness && less(subtract(rough, thickness), planing(unit)));
  if (!thin?.thickness) return [];
  const { thickness } = thin;
  const left = greaterOf(ZERO, subtract(rough, thickness));
  return [{ where: "stock", ...doubtful("stock.roughThin", { material, rough, thickness, left }) }];
}

/** Parts without stock: those of one material and thickness stand together. */
function unmatched(parts: readonly PlannedPart[], faults: readonly (Fault | undefined)[]): Finding[] {
  const missing = new Map<string, { first: PlannedPart; names: Set<string>; drawers: Set<string> }>();
  const others: Finding[] = [];
  parts.forEach((part, i) => {
    const fault = faults[i];
    if (!fault) return;
    const drawers = part.drawer.split(", ");
    if (fault.code !== "sheets.noStockFor") others.push(asFinding(part.drawer, fault));
    else {
      const key = `${part.material} ${writeLength(part.thickness, "in")}`;
      const like = missing.get(key) ?? { first: part, names: new Set<string>(), drawers: new Set<string>() };
      missing.set(key, like);
      like.names.add(part.name);
      for (const drawer of drawers) like.drawers.add(drawer);
    }
  });
  const rows = [...missing.values()].map(({ first: { material, thickness }, names, drawers }) => ({
    where: [...drawers].join(", "),
    ...wrong("stock.none", { parts: [...names], material, thickness }),
  }));
  return [...rows, ...others];
}

/** What cannot be laid out on its stock; each part that is found is left out, so that the next one is. */
function checkGroup(job: Job, group: SheetGroup, halvings: number, usesOf: Costing["usesOf"]): Finding[] {
  const { kerf, "sheet trim": trim, "sheet effort": effort } = job.standards;
  let { parts, stock } = group;
  const found: Finding[] = [];
  while (parts.length > 0) {
    const fault = faultOf(() => usesOf({ parts, stock }, { kerf, trim, effort, halvings }));
    if (!fault) break;
    const part = "index" in fault.data ? parts[fault.data.index] : undefined;
    if (part) {
      found.push(asFinding(part.drawer!, fault));
      parts = parts.filter((other) => other !== part && !(part.grainGroup && other.grainGroup === part.grainGroup));
    } else if (fault.is("sheets.priceMissing")) {
      const { stock: unpriced } = fault.data;
      found.push(asFinding("stock", fault));
      stock = stock.map((row) => (row.name === unpriced ? { ...row, price: ZERO } : row));
    } else {
      const { material, thickness } = stock[0]!;
      found.push(
        fault.is("sheets.stockExhausted")
          ? { where: "stock", ...wrong("stock.short", { material, thickness }) }
          : { where: "stock", ...wrong("stock.uncut", { material, thickness, fault }) },
      );
      break;
    }
  }
  return found;
}

/** Rates that the job needs: each that is missing is taken as nothing, so that the next one is found. */
function checkRates(
  job: Job,
  plan: readonly PlannedOpening[],
  parts: readonly Part[],
  stock: readonly AnyStock[] | undefined,
  rates: Rates,
  usesOf: Costing["usesOf"],
): Finding[] {
  const bought =
    stock &&
    orElse(
      () => costed(job, plan, stock, { usesOf, priced: true, times: 1 }).stock,
      () => undefined,
    );
  const found: Finding[] = [];
  let given = rates;
  for (;;) {
    const fault = faultOf(() => quoteOf({ unit: job.unit, plan, parts, stock: bought ?? [] }, given));
    // A discount is beyond the price only where the whole price is known.
    if (!fault || (fault.code === "quote.belowZero" && (!bought || found.length > 0))) return found;
    found.push(asFinding("rates", fault));
    const name = missingIn(fault);
    if (!name || given[name] !== undefined) return found;
    given = { ...given, [name]: ZERO };
  }
}

function missingIn(fault: Fault): RateName | undefined {
  if (fault.is("rates.minutesMissing")) return "box minutes";
  return fault.is("rates.missing") ? fault.data.name : undefined;
}

const asFinding = (where: string, fault: Fault): Finding => ({ where, ...wrong("plan.fault", { fault }) });

const faultOf = (work: () => unknown): Fault | undefined =>
  orElse(
    () => (work(), undefined),
    (fault) => fault,
  );
