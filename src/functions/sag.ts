import { sag, type Edges } from "../core/wood";
import { length, load, stiffness, unit, word } from "./arguments";
import { cellFunction } from "./calls";
import { estimate } from "./cells";

/** @customenum {string} */
enum BottomEdges {
  /** They rest in grooves and may tilt */
  held = "held",
  /** They are glued in and cannot tilt */
  clamped = "clamped",
}

/** @customenum {string} */
enum Unit {
  /** Inches, and inches in the result */
  inches = "in",
  /** Millimeters, and millimeters in the result */
  millimeters = "mm",
}

/**
 * Estimates how far a drawer's bottom sags under an even load, held at all four edges (moduli of plywood differ by 20 % as published, and wood creeps with the years to twice as much; local codes, the maker's data and licensed practice decide).
 * @customfunction
 * @group Wood and loads
 * @param {any} inside_width Clear width between the sides, more than 0
 * @param {any} inside_depth Clear depth between front and back, more than 0
 * @param {any} thickness Thickness as measured, not nominal: 1/4 in plywood may be 0.219 in, and then sags 1.5 times as much
 * @param {any} load Load on the whole bottom, in lb (kg with mm), as DRAWERLOAD estimates it; none is written as none
 * @param {any} stiffness Modulus of elasticity in psi (MPa with mm); or plywood, OSB, MDF, particleboard, hardboard: the lowest published
 * @param {BottomEdges} [edges] held (default; in grooves, where they may tilt) or clamped (where they cannot; glue seldom holds them so)
 * @param {Unit} [unit] Unit of numbers without a mark, and of the result: in (default) or mm
 * @returns {number} Largest deflection, in the unit; a panel's may be 20 % less (plywood) or 45 % less (others), and beyond half the thickness it is overstated
 * @throws #VALUE! where the thickness is not less than the shorter side, or the bottom would break
 * @example =DRAWER.SAG(18, 20, 0.25, 30, 1200000) // => 0.0252569462203
 * @example =DRAWER.SAG(450, 500, 6, 15, "plywood", "held", "mm") // => 0.965361152157
 * @source Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., articles 30 and 44; moduli of panels: Wood Handbook, FPL-GTR-190 (2010), Table 12-1, from memory
 */
export function SAG(
  inside_width: any,
  inside_depth: any,
  thickness: any,
  load: any,
  stiffness: any,
  edges?: BottomEdges,
  unit?: Unit,
): number {
  return call([inside_width, inside_depth, thickness, load, stiffness, edges, unit]);
}

const call = cellFunction(
  [
    length("inside_width"),
    length("inside_depth"),
    length("thickness"),
    load("load"),
    stiffness("stiffness"),
    word<Edges>("edges", ["held", "clamped"], { "simply supported": "held", fixed: "clamped" }),
    unit("unit"),
  ],
  ([width, depth, thickness, load, stiffness, edges, unit]) =>
    estimate(sag({ width, depth, thickness, stiffness }, load, edges, unit)),
);
