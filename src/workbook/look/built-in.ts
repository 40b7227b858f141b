/** Number formats that a file names by number alone (ECMA-376, 18.8.30). */
export const BUILT_IN_FORMATS: [number, string][] = [
  [0, "General"],
  [1, "0"],
  [2, "0.00"],
  [3, "#,##0"],
  [4, "#,##0.00"],
  [9, "0%"],
  [10, "0.00%"],
  [11, "0.00E+00"],
  [12, "# ?/?"],
  [13, "# ??/??"],
  [14, "mm-dd-yy"],
  [15, "d-mmm-yy"],
  [16, "d-mmm"],
  [17, "mmm-yy"],
  [18, "h:mm AM/PM"],
  [19, "h:mm:ss AM/PM"],
  [20, "h:mm"],
  [21, "h:mm:ss"],
  [22, "m/d/yy h:mm"],
  [37, "#,##0 ;(#,##0)"],
  [38, "#,##0 ;[Red](#,##0)"],
  [39, "#,##0.00;(#,##0.00)"],
  [40, "#,##0.00;[Red](#,##0.00)"],
  [45, "mm:ss"],
  [46, "[h]:mm:ss"],
  [47, "mmss.0"],
  [48, "##0.0E+0"],
  [49, "@"],
];

/** The old palette (ECMA-376, 18.8.27); the first eight stand in it twice. */
const EIGHT = "000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF";
export const INDEXED_COLORS = [
  EIGHT,
  EIGHT,
  "800000 008000 000080 808000 800080 008080 C0C0C0 808080",
  "9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF",
  "000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF",
  "00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99",
  "3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696",
  "003366 339966 003300 333300 993300 993366 333399 333333",
]
  .join(" ")
  .split(" ");
