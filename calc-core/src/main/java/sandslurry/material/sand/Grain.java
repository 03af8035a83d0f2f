package sandslurry.material.sand;

/**
 * One grain of sand.
 *
 * @param diameterM sieve size [m]
 * @param densityKgM3 density of the mineral [kg/m3]
 * @param shape its shape
 */
public record Grain(double diameterM, double densityKgM3, GrainShape shape) {
  /** Checks that size and density are positive numbers. */
  public Grain {
    if (!(diameterM > 0) || !(densityKgM3 > 0)) {
      throw new IllegalArgumentException(
          "a grain needs a positive size and density but has "
              + diameterM
              + " m and "
              + densityKgM3
              + " kg/m3");
    }
  }
}
