import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import CopyPlugin from "copy-webpack-plugin";
import MetadataPlugin from "custom-functions-metadata-plugin";
import MinimizerPlugin from "minimizer-webpack-plugin";
import { tsImport } from "tsx/esm/api";
import webpack from "webpack";

const {
  addinOrigin,
  AttributionsPlugin,
  fill,
  fillManifest,
  functionFiles,
  functionHelp,
  functionReference,
  FunctionsJsonPlugin,
  GuidePlugin,
  guideReference,
  ICON_SIZES,
  renderIcon,
  SCRIPT_HASH,
  withColors,
} = await tsImport("./src/build/index.ts", import.meta.url);

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** The add-in into dist/; with `serve`, for the spreadsheet program on this machine, into dist/development/. */
export default async function addin(env, { mode }) {
  const production = mode === "production";
  const { version } = JSON.parse(readFileSync(here("package.json"), "utf8"));
  const origin = addinOrigin(process.env.ADDIN_ORIGIN, production);
  const functions = functionFiles(here("src/functions"));
  return {
    mode: production ? "production" : "development",
    devtool: production ? false : "inline-source-map",
    // Browsers, but no newer syntax than the host's older web views know.
    target: ["web", "es2020"],
    entry: {
      functions: here("src/functions/index.ts"),
      taskpane: here("src/taskpane/index.ts"),
      "better-sheets": here("src/taskpane/better-sheets/worker.ts"),
    },
    output: {
      path: here(production ? "dist" : "dist/development"),
      filename: "[name].js",
      // A script host has no document to find its own address in, and nothing here needs one.
      publicPath: "",
      clean: { keep: /^bin\// },
    },
    resolve: { extensions: [".ts", ".js"] },
    // A test holds what travels: so many kilobytes gzipped.
    performance: { hints: false },
    optimization: { minimizer: [smallest, "..."] },
    module: {
      parser: { json: { namedExports: true } },
      rules: [
        { test: /\.ts$/, loader: "esbuild-loader", options: { target: "es2020", charset: "utf8", minifySyntax: true } },
      ],
    },
    plugins: [
      new MetadataPlugin({ input: functions, output: "functions.json" }),
      new FunctionsJsonPlugin(functions, (name) => `${origin}${functionHelp(name)}`),
      new GuidePlugin(),
      new AttributionsPlugin(version),
      new webpack.DefinePlugin({
        FUNCTION_REFERENCE: webpack.DefinePlugin.runtimeValue(() => JSON.stringify(functionReference(functions)), {
          fileDependencies: functions,
        }),
        GUIDE_REFERENCE: webpack.DefinePlugin.runtimeValue(() => JSON.stringify(guideReference()), {
          contextDependencies: [here("src/guide/pages")],
        }),
      }),
      new CopyPlugin({
        patterns: [
          {
            from: here("manifest/manifest.xml"),
            transform: (template) => fillManifest(template.toString(), origin, version),
          },
          {
            from: here("src/taskpane/taskpane.html"),
            // As it is written: the page is small, and its comments say why its scripts stand in this order.
            info: { minimized: true },
            transform: (template) => fill(template.toString(), { version, pagesScript: SCRIPT_HASH }),
          },
          { from: here("src/taskpane/taskpane.css"), transform: (css) => withColors(css.toString()) },
          ...ICON_SIZES.map((size) => ({
            from: here("manifest/icon.svg"),
            to: `icons/icon-${size}.png`,
            transform: (svg) => renderIcon(svg, size),
          })),
        ],
      }),
      ...(production && !process.env.ADDIN_ORIGIN ? [warnOfPlaceholder(origin)] : []),
    ],
    ...(env.WEBPACK_SERVE ? { devServer: await devServer() } : {}),
  };
}

/** The smallest that there is for our scripts; what it makes an arrow is never called with `new`. */
const smallest = new MinimizerPlugin({
  minify: MinimizerPlugin.swcMinify,
  minimizerOptions: {
    compress: { passes: 5, unsafe_arrows: true, unsafe_methods: true, unsafe_regexp: true },
    mangle: true,
  },
});

/** A build for nobody's address is for looking at and testing; say so, for its manifest loads nothing. */
const warnOfPlaceholder = (origin) => (compiler) =>
  compiler.hooks.thisCompilation.tap("Placeholder", ({ warnings }) =>
    warnings.push(
      new webpack.WebpackError(`ADDIN_ORIGIN is not set: manifest.xml points to ${origin}, which leads nowhere.`),
    ),
  );

/** Certificates are asked for, and made, only to serve. */
async function devServer() {
  return {
    host: "localhost",
    port: 3000,
    static: false,
    server: { type: "https", options: await certificate() },
    headers: { "Access-Control-Allow-Origin": "*" },
    // Nothing is injected: the functions must run where there is no document. Reload the pane by hand.
    client: false,
    hot: false,
    liveReload: false,
    webSocketServer: false,
    // The host's program wants the manifest as a file.
    devMiddleware: { writeToDisk: (path) => path.endsWith("manifest.xml") },
  };
}

/** A certificate that this machine trusts; where none can be installed, the server makes one that browsers warn of. */
async function certificate() {
  const { default: certificates } = await import("office-addin-dev-certs");
  try {
    return await certificates.getHttpsServerOptions();
  } catch (thrown) {
    console.warn(`${thrown.message.trim()}\nServing with a certificate that the spreadsheet program may refuse.`);
    return {};
  }
}
