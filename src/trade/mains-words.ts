/** What runs on mains power or a generator and is found beside baths, pools and puddles. Base forms; common practice. */
export const mainsDevices: ReadonlySet<string> = new Set(
  `amplifier cable cables dryer drier drill extension floodlight generator grinder hairdryer hair-dryer heater plug radio sander shaver
  socket speaker spotlight toaster`.split(/\s+/),
);

/** Water that only stands for weather or a view does not bring a device near it: these words of a scene do. */
export const wetPlaces: ReadonlySet<string> = new Set(
  'bath bathtub tub shower pool flood flooded floodwater puddle hose sprinkler leak burst spray bucket overflow'.split(
    ' ',
  ),
);
