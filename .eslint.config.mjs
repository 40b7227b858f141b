import officeAddins from "eslint-plugin-office-addins";
import tseslint from "typescript-eslint";

const forbid = (...names) => ({
  "no-restricted-globals": [
    "error",
    ...names.map((name) => ({ name, message: "This folder is free of it: see DEVELOPERS.md." })),
  ],
});
const DOM = ["document", "window", "navigator", "location", "localStorage", "fetch", "XMLHttpRequest"];
const OFFICE = ["Office", "Excel"];
const NODE = ["process", "Buffer", "require", "__dirname", "__filename"];
const CLOCK = ["performance", "setTimeout", "setInterval", "crypto"];

const officeRules = Object.fromEntries(
  officeAddins.configs.recommended
    .flatMap(({ rules = {} }) => Object.entries(rules))
    .filter(([name]) => name.startsWith("office-addins/")),
);

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", "coverage/"] },
  ...tseslint.configs.recommended,
  {
    rules: {
      eqeqeq: "error",
      "no-console": "error",
      "@typescript-eslint/no-non-null-assertion": "off",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_" }],
    },
  },
  {
    files: ["src/core/**", "src/functions/**", "src/drawing/**"],
    rules: {
      ...forbid(...DOM, ...OFFICE, ...NODE, ...CLOCK),
      "no-restricted-properties": [
        "error",
        { object: "Date", property: "now", message: "The core has no clock." },
        { object: "Math", property: "random", message: "Equal input gives the equal answer." },
      ],
      "no-restricted-syntax": [
        "error",
        { selector: "NewExpression[callee.name='Date']", message: "The core has no clock." },
      ],
    },
  },
  // The host's metadata generator reads these types, and knows any for a length.
  { files: ["src/functions/*.ts"], rules: { "@typescript-eslint/no-explicit-any": "off" } },
  { files: ["src/taskpane/**"], rules: forbid(...NODE) },
  { files: ["src/taskpane/**"], ignores: ["src/taskpane/host/**"], rules: forbid(...NODE, ...OFFICE) },
  { files: ["src/taskpane/host/**"], plugins: { "office-addins": officeAddins }, rules: officeRules },
  { files: ["src/workbook/**"], rules: forbid(...OFFICE) },
  {
    files: ["src/workbook/**"],
    ignores: ["src/workbook/node/**", "src/workbook/browser/**"],
    rules: forbid(...DOM, ...NODE, ...OFFICE),
  },
  {
    files: ["src/workbook/node/**", "src/build/**", "tests/**", "*.js", ".*.cjs"],
    rules: { "no-console": "off", "@typescript-eslint/no-require-imports": "off" },
  },
);
