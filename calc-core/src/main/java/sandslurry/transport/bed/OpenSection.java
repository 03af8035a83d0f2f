package sandslurry.transport.bed;

import sandslurry.pipe.Bore;
import sandslurry.pipe.CircularSegment;

/**
 * What a bed at rest leaves open of a round pipe: the flow sees a pipe of the hydraulic diameter
 *
 * <pre>
 * Dh = 4 (A − Ab) / (π D − D β + D sin β),   k = (kw Pw + d B) / (Pw + B)
 * </pre>
 *
 * <p>A area of the pipe and Ab of the bed; D bore; β half the angle that the bed subtends; Pw the
 * wall that is left and B = D sin β the width of the bed; kw roughness of the wall and d coarse
 * grain of the bed, by which the bed is rough. The weighting by perimeters is a choice of this
 * program (no source); without a bed it gives the wall.
 *
 * @param bore the pipe
 * @param depthShare depth of the bed over the bore, 0 to {@value #DEEPEST}
 * @param grainM d, positive [m]
 */
public record OpenSection(Bore bore, double depthShare, double grainM) {
  /** Beyond this depth a pipe counts as blocked. */
  public static final double DEEPEST = 0.9;

  /** Most roughness over the hydraulic diameter for which friction is known. */
  private static final double MOST_ROUGH = 0.1;

  /** Checks the bounds. */
  public OpenSection {
    if (!(depthShare >= 0 && depthShare <= DEEPEST) || !(grainM > 0)) {
      throw new IllegalArgumentException(
          "a bed at rest needs a depth of 0 to 0.9 of the bore and a grain > 0 but has "
              + depthShare
              + " and "
              + grainM
              + " m");
    }
  }

  private CircularSegment bed() {
    return new CircularSegment(bore.diameterM(), depthShare);
  }

  /**
   * Area of the bed.
   *
   * @return Ab [m2]
   */
  public double bedAreaM2() {
    return bed().areaM2();
  }

  /**
   * Area that is left for the flow.
   *
   * @return A − Ab [m2]
   */
  public double areaM2() {
    return bore.areaM2() - bedAreaM2();
  }

  /**
   * The round pipe that the flow sees.
   *
   * @return a pipe of the hydraulic diameter with the roughness of wall and bed
   */
  public Bore equivalent() {
    double width = bed().surfaceWidthM();
    return asRoughAs((bore.roughnessM() * wallM() + grainM * width) / (wallM() + width));
  }

  /**
   * The round pipe that has at least the friction of this section, for what must surely flow: as
   * rough all round as the rougher of wall and bed.
   *
   * @return a pipe of the hydraulic diameter; without a bed the pipe itself
   */
  public Bore roughest() {
    return asRoughAs(depthShare > 0 ? Math.max(bore.roughnessM(), grainM) : bore.roughnessM());
  }

  private double wallM() {
    return Math.PI * bore.diameterM() - bed().wettedPerimeterM();
  }

  private Bore asRoughAs(double roughnessM) {
    double hydraulic = 4 * areaM2() / (wallM() + bed().surfaceWidthM());
    return new Bore(hydraulic, Math.min(roughnessM, MOST_ROUGH * hydraulic));
  }

  /**
   * The flow rate at which the equivalent pipe has the velocity over the bed.
   *
   * @param flowM3ps flow rate of the pipe [m3/s]
   * @return flow rate of the round pipe of the hydraulic diameter [m3/s]
   */
  public double equivalentFlowM3ps(double flowM3ps) {
    return flowM3ps / areaM2() * equivalent().areaM2();
  }
}
