package sandslurry.ui;

import java.util.Optional;

/** What the program says of itself. */
final class Product {
  static final String NAME = "Sand-Laden Manure Hydraulics";

  static final String CAUTION =
      "Screening estimate. A licensed practitioner must review the design; local codes come first.";

  static final String ABOUT =
      """
      Hydraulic design calculator for sand-laden dairy manure from pen to storage: transfer lines
      and pumps, settling lanes and separators, judged for plugging, wear, pressure and recovery.

      Licensed under the Apache License, Version 2.0. There is no warranty.

      The results are screening estimates from published correlations, most of them measured with
      clean sand in water. Manure, bedding and sand differ from farm to farm: measure before you
      build. A licensed practitioner must review every design, and local codes come first. Read the
      safety cautions: manure gas kills, and a plugged line can hold pressure.

      Libraries are under their own licences: their list, notices and licence texts are in META-INF
      of sandslurry.jar.
      """;

  private Product() {}

  static String version() {
    return Optional.ofNullable(Product.class.getPackage().getImplementationVersion())
        .orElse("not packaged");
  }
}
