package sandslurry.design;

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
          "formatVersion": 1,
          "title": "Line",
          "units": "US",
          "sand": { "gradation": "ASTM C144" },
          "carrier": { "kind": "water", "temperature": "60 degF" },
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
          "formatVersion": 1,
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
