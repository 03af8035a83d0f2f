package sandslurry.plant.account;

/** The liquid above the sand in a pond, and its surface. */
final class HeldLiquid {
  private final Pond pond;
  private final double settledSandM3;
  private double depthM;

  /** Liquid held [m3]. */
  double heldM3;

  HeldLiquid(Pond pond, double settledSandM3, double heldM3) {
    this.pond = pond;
    this.settledSandM3 = settledSandM3;
    this.heldM3 = heldM3;
  }

  /** Depth of the surface above the floor [m]. */
  double depthM() {
    double volume = Math.min(settledSandM3 + heldM3, pond.volumeM3());
    for (int i = 0; i < 50; i++) {
      double step = (volume - pond.volumeM3(depthM)) / pond.areaM2(depthM);
      depthM = Math.max(0, Math.min(pond.depthM(), depthM + step));
      if (Math.abs(step) <= 1e-12 * pond.depthM()) {
        break;
      }
    }
    return depthM;
  }

  /** Its surface [m2]. */
  double surfaceM2() {
    return pond.areaM2(depthM());
  }
}
