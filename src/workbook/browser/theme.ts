import { defaultTheme, type Theme } from "@univerjs/themes";

/** Walnut for what is selected, in place of the library's blue. */
export const GRID_THEME: Theme = {
  ...defaultTheme,
  primary: {
    50: "#fbf4ee",
    100: "#f6e4d6",
    200: "#ecc7ab",
    300: "#dfa57b",
    400: "#cb7f4d",
    500: "#ac5a28",
    600: "#8c3d14",
    700: "#713111",
    800: "#562610",
    900: "#3d1c0d",
  },
};
