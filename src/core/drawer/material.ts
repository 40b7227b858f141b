/** Wood that moves across its grain: what is not named as a sheet of some kind, or as no wood at all. */
export const isSolidWood = (material: string): boolean =>
  !/ply|mdf|hdf|\bosb\b|(hard|particle|chip|fib(re|er)|block|lam(in)?) ?-?board|melamine|laminate|baltic|veneer/i.test(
    material,
  ) && !/acrylic|glass|metal|alumini?um|steel|plastic|polycarbonate|phenolic/i.test(material);

export const isPlywood = (material: string): boolean => /ply/i.test(material);
