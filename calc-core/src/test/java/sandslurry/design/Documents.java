package sandslurry.design;

import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;

/** Documents that tests start from. */
public final class Documents {
  private Documents() {}

  /**
   * A line with a pump, all of it valid.
   *
   * @return the document
   */
  public static DesignDocument line() {
    return parse(
        """
        {
          "formatVersion": 2,
          "title": "Line",
          "units": "US",
          "sand": { "gradation": "ASTM C144" },
          "carrier": { "kind": "water", "temperature": "60 degF" },
          "lines": [
            {
              "mixture": { "volumeFraction": "3 %" },
              "flow": { "minimum": "430 gpm", "design": "460 gpm", "maximum": "500 gpm" },
              "route": {
                "sourceLevel": "3 ft",
                "runs": [
                  {
                    "name": "Buried line",
                    "pipe": { "system": "ASTM D1785", "size": "4 in", "class": "Sch 40" },
                    "length": "300 ft",
                    "rise": "6 ft",
                    "fittings": [ { "kind": "long radius elbow 90", "count": 3 } ]
                  }
                ]
              },
              "pump": {
                "kind": "rotodynamic",
                "curveSpeed": "1750 rpm",
                "impeller": "12 in",
                "curve": [
                  { "flow": "0 gpm", "head": "95 ft", "efficiency": "0 %" },
                  { "flow": "150 gpm", "head": "93 ft", "efficiency": "32 %" },
                  { "flow": "300 gpm", "head": "87 ft", "efficiency": "48 %" },
                  { "flow": "600 gpm", "head": "60 ft", "efficiency": "47 %" }
                ]
              }
            }
          ]
        }
        """);
  }

  /**
   * A lane without a line.
   *
   * @return the document
   */
  public static DesignDocument lane() {
    return parse(
        """
        {
          "formatVersion": 2,
          "sand": { "d50": "0.4 mm", "d85": "0.9 mm" },
          "carrier": { "kind": "manure", "temperature": "15 degC", "totalSolids": "1 %" },
          "lane": {
            "length": "60 m",
            "width": "3.6 m",
            "slope": "0.25 %",
            "flow": "100 L/s",
            "sandVolumeFraction": "1.5 %",
            "sandStorageDepth": "0.3 m"
          }
        }
        """);
  }

  /**
   * A plant with a unit of every kind, in a closed loop.
   *
   * @return the document
   */
  public static DesignDocument plant() {
    return parse(
        """
        {
          "formatVersion": 2,
          "sand": { "gradation": "ASTM C144" },
          "carrier": { "kind": "water", "temperature": "15 degC" },
          "plant": {
            "pens": [
              {
                "name": "Pen",
                "stream": "manure",
                "cows": "300",
                "milk": "36 kg/d",
                "stalls": "300",
                "sandPerStall": { "low": "15 kg/d", "base": "20 kg/d", "high": "25 kg/d" },
                "water": "3 m3/d"
              },
              { "name": "Dry barn", "stream": "dry", "heifers": "50" }
            ],
            "waters": [ { "stream": "wash", "flow": "1 m3/h", "most": "20 m3/h" } ],
            "units": [
              {
                "name": "Box", "kind": "box", "in": "manure, wash, recycle, underflow",
                "sand": "sand", "overflow": "from box",
                "length": "3 m", "width": "1.5 m"
              },
              {
                "name": "Lane", "kind": "lane", "in": "from box",
                "sand": "dug", "overflow": "from lane",
                "reaches": [
                  {
                    "length": "30 m", "width": "2 m", "slope": "0.2 %",
                    "waterLevel": "200 mm", "sandStorageDepth": "300 mm"
                  }
                ]
              },
              {
                "name": "Cyclone", "kind": "cyclone", "in": "from lane",
                "underflow": "underflow", "overflow": "from cyclone",
                "body": "250 mm", "apex": "40 mm"
              },
              {
                "name": "Screen", "kind": "screen", "in": "from cyclone",
                "cake": "trash", "liquid": "screened", "opening": "10 mm"
              },
              {
                "name": "Press", "kind": "fibreSeparator", "in": "screened, dry",
                "cake": "fibre", "liquid": "pressed"
              },
              {
                "name": "Tee", "kind": "splitter", "in": "pressed",
                "outlets": [ { "stream": "to pit", "share": "90 %" }, { "stream": "bleed", "share": "10 %" } ]
              },
              {
                "name": "Pit", "kind": "pit", "in": "to pit",
                "pumps": [ { "stream": "recycle", "flow": "8 m3/h" } ],
                "overflow": "surplus", "capacity": "60 m3", "weirVolume": "40 m3",
                "mixer": { "diameter": "0.5 m", "speed": "200 rpm" }
              },
              {
                "name": "Storage", "kind": "storage", "in": "surplus, bleed",
                "floorLength": "60 m", "floorWidth": "40 m", "sideSlope": "2", "depth": "4 m",
                "storm": "100 mm",
                "months": [ { "name": "year", "length": "365 d", "rain": "900 mm", "evaporation": "600 mm" } ]
              }
            ],
            "products": [
              { "stream": "sand", "use": "bedding" },
              { "stream": "dug", "use": "bedding" },
              { "stream": "trash", "use": "waste" },
              { "stream": "fibre", "use": "fibre" }
            ],
            "modes": [
              { "name": "recycle", "from": "0 h", "to": "20 h" },
              {
                "name": "wash", "from": "20 h", "to": "24 h",
                "flows": [ { "stream": "recycle", "flow": "0 m3/h" }, { "stream": "wash", "flow": "6 m3/h" } ]
              }
            ],
            "machines": [ { "name": "screw", "power": "3 kW" } ],
            "targets": { "sandCapture": "80 %" }
          }
        }
        """);
  }

  /**
   * The plant with its first pen flushed by liquor from the storage, at given times.
   *
   * @return the document
   */
  public static DesignDocument flushedPlant() {
    return plant()
        .with("/plant/pens/0/firstScraping", "5 h")
        .with("/plant/pens/0/flush/in", "flush water")
        .with("/plant/pens/0/flush/volume", "20 m3")
        .with("/plant/pens/0/flush/rate", "0.43 m3/s")
        .with("/plant/pens/0/flush/length", "60 m")
        .with("/plant/pens/0/flush/width", "3.7 m")
        .with("/plant/pens/0/flush/slope", "3.1 %")
        .with("/plant/units/7/fibreSettling", "60 %")
        .with("/plant/units/7/finesSettling", "40 %")
        .insert("/plant/units/7/pumps", 0, "{\"stream\": \"flush water\", \"flow\": \"2.5 m3/h\"}");
  }

  /**
   * A plant of 400 cows, 8.8 t of sand a day and 13 m3/h of wash water, whose units stand between
   * the streams "manure" and "wash", the product "sand" and what goes "over" to the storage.
   *
   * @param units the units before the storage, in JSON
   * @return the document
   */
  public static DesignDocument plantOf(String units) {
    return parse(
        """
        {
          "formatVersion": 2, "sand": { "gradation": "ASTM C33" },
          "carrier": { "kind": "water", "temperature": "12 degC" },
          "plant": {
            "pens": [ { "name": "Pen", "stream": "manure", "cows": "400",
              "stalls": "400", "sandPerStall": "22 kg/d", "water": "10 m3/d" } ],
            "waters": [ { "stream": "wash", "flow": "13 m3/h" } ],
            "units": [ %s,
              { "name": "Storage", "kind": "storage", "in": "over",
                "floorLength": "80 m", "floorWidth": "50 m", "depth": "4 m",
                "months": [ { "name": "year", "length": "365 d" } ] } ],
            "products": [ { "stream": "sand", "use": "bedding" } ]
          }
        }
        """
            .formatted(units));
  }

  /**
   * Parses a text that a test wrote itself.
   *
   * @param text JSON
   * @return the document
   */
  public static DesignDocument parse(String text) {
    try {
      return DesignDocument.parse(text);
    } catch (DesignTextException e) {
      throw new AssertionError(text, e);
    }
  }
}
