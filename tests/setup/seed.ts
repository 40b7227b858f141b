import fc from "fast-check";

// The same draws at every run, so that what fails fails again; FUZZ roams.
if (!process.env.FUZZ) fc.configureGlobal({ seed: 20261126 });
