/** What a unit measures, how much of the kind's first unit it is, and the power that a prefix has in it; 0 takes none. */
type Unit = readonly [kind: string, size: number, prefixed: number];

const INCH = 0.0254;
const FOOT = 12 * INCH;
const MILE = 5280 * FOOT;
const SURVEY_MILE = (5280 * 1200) / 3937;
const LIGHT_YEAR = 9_460_730_472_580_800;
const PICA_POINT = INCH / 72;
const POUND = 453.59237;
const GRAVITY = 9.80665;
const POUND_FORCE = (POUND / 1000) * GRAVITY;
const HORSEPOWER = 550 * FOOT * POUND_FORCE;
const TEASPOON = (231 * INCH ** 3) / 768;
const IMPERIAL_GALLON = 0.00454609;

const units: Record<string, Unit> = {};

function add(kind: string, sizes: Record<string, number>, prefixed = 0): void {
  for (const [names, size] of Object.entries(sizes)) {
    for (const name of names.split(" ")) units[name] = [kind, size, prefixed];
  }
}

add("mass", { g: 1, u: 1.660538782e-24 }, 1);
add("mass", {
  sg: (POUND * GRAVITY) / FOOT,
  lbm: POUND,
  ozm: POUND / 16,
  grain: POUND / 7000,
  "cwt shweight": 100 * POUND,
  "uk_cwt lcwt hweight": 112 * POUND,
  stone: 14 * POUND,
  ton: 2000 * POUND,
  "brton LTON uk_ton": 2240 * POUND,
});
add("length", { m: 1, ang: 1e-10, ly: LIGHT_YEAR, "parsec pc": 3.0856775812815532e16 }, 1);
add("length", {
  mi: MILE,
  Nmi: 1852,
  in: INCH,
  ft: FOOT,
  yd: 3 * FOOT,
  ell: 45 * INCH,
  "Picapt Pica": PICA_POINT,
  pica: 12 * PICA_POINT,
  survey_mi: SURVEY_MILE,
});
add("time", { yr: 31_557_600, "day d": 86_400, hr: 3600, "mn min": 60, "sec s": 1 });
add("area", { ar: 100 }, 1);
add("area", { "m2 m^2": 1, "ang2 ang^2": 1e-20 }, 2);
add("area", {
  uk_acre: MILE ** 2 / 640,
  us_acre: SURVEY_MILE ** 2 / 640,
  "ft2 ft^2": FOOT ** 2,
  ha: 1e4,
  "in2 in^2": INCH ** 2,
  "ly2 ly^2": LIGHT_YEAR ** 2,
  Morgen: 2500,
  "mi2 mi^2": MILE ** 2,
  "Nmi2 Nmi^2": 1852 ** 2,
  "Picapt2 Pica2 Pica^2 Picapt^2": PICA_POINT ** 2,
  "yd2 yd^2": (3 * FOOT) ** 2,
});
add("volume", { "l L lt": 1e-3, uk_pt: IMPERIAL_GALLON / 8 }, 1);
add("volume", { "m3 m^3": 1, "ang3 ang^3": 1e-30 }, 3);
add("volume", {
  tsp: TEASPOON,
  tspm: 5e-6,
  tbs: 3 * TEASPOON,
  oz: 6 * TEASPOON,
  cup: 48 * TEASPOON,
  "pt us_pt": 96 * TEASPOON,
  qt: 192 * TEASPOON,
  uk_qt: IMPERIAL_GALLON / 4,
  gal: 768 * TEASPOON,
  uk_gal: IMPERIAL_GALLON,
  barrel: 42 * 768 * TEASPOON,
  bushel: 2150.42 * INCH ** 3,
  "ft3 ft^3": FOOT ** 3,
  "in3 in^3": INCH ** 3,
  "ly3 ly^3": LIGHT_YEAR ** 3,
  "mi3 mi^3": MILE ** 3,
  "yd3 yd^3": (3 * FOOT) ** 3,
  "Nmi3 Nmi^3": 1852 ** 3,
  "Picapt3 Picapt^3 Pica3 Pica^3": PICA_POINT ** 3,
  "GRT regton": 100 * FOOT ** 3,
  MTON: 40 * FOOT ** 3,
});
add("pressure", { "Pa p": 1, "atm at": 101_325, mmHg: 133.322 }, 1);
add("pressure", { Torr: 101_325 / 760, psi: POUND_FORCE / INCH ** 2 });
add("force", { N: 1, "dyn dy": 1e-5, pond: GRAVITY / 1000 }, 1);
add("force", { lbf: POUND_FORCE });
add("speed", { "m/h m/hr": 1 / 3600, "m/s m/sec": 1, mph: MILE / 3600 }, 1);
add("speed", { admkn: 0.5147733333333333, kn: 1852 / 3600 });
add("energy", { J: 1, e: 1e-7, c: 4.184, cal: 4.1868, "eV ev": 1.602176487e-19, "Wh wh": 3600 }, 1);
add("energy", { "BTU btu": 1055.05585262, "HPh hh": 3600 * HORSEPOWER, flb: FOOT * POUND_FORCE });
add("power", { "W w": 1 }, 1);
add("power", { "HP h": HORSEPOWER, PS: 75 * GRAVITY });
add("magnetism", { T: 1, ga: 1e-4 }, 1);
add("information", { bit: 1, byte: 8 }, 1);

const PREFIXES: Record<string, number> = {
  ...{ Y: 1e24, Z: 1e21, E: 1e18, P: 1e15, T: 1e12, G: 1e9, M: 1e6, k: 1e3, h: 1e2, da: 10, e: 10 },
  ...{ d: 0.1, c: 0.01, m: 1e-3, u: 1e-6, n: 1e-9, p: 1e-12, f: 1e-15, a: 1e-18, z: 1e-21, y: 1e-24 },
};

const BINARY_PREFIXES: Record<string, number> = {
  ...{ ki: 2 ** 10, Mi: 2 ** 20, Gi: 2 ** 30, Ti: 2 ** 40, Pi: 2 ** 50, Ei: 2 ** 60, Zi: 2 ** 70, Yi: 2 ** 80 },
};

/** A unit by its name as it stands, or with a prefix before it; capitals count. */
export function unitOf(name: string): { kind: string; size: number } | undefined {
  const [kind, size] = own(units, name) ?? [];
  if (kind !== undefined) return { kind, size: size! };
  for (let length = 1; length <= 2; length++) {
    const [prefix, rest] = [name.slice(0, length), name.slice(length)];
    const unit = own(units, rest);
    if (!unit || unit[2] === 0) continue;
    const factor = own(PREFIXES, prefix) ?? (unit[0] === "information" ? own(BINARY_PREFIXES, prefix) : undefined);
    if (factor !== undefined) return { kind: unit[0], size: unit[1] * factor ** unit[2] };
  }
  return undefined;
}

function own<T>(table: Record<string, T>, name: string): T | undefined {
  return Object.hasOwn(table, name) ? table[name] : undefined;
}
