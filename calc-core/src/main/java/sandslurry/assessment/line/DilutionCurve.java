package sandslurry.assessment.line;

import java.util.List;
import java.util.Optional;
import sandslurry.fact.finding.Severity;
import sandslurry.transport.bed.SandCarriage.Support;
import sandslurry.transport.friction.ClearLiquid.Regime;

/**
 * The same line at the same flows with more and more liquid added to its mixture. Between thick
 * enough to hold the sand and thin and fast enough to carry it lies a valley in which it settles.
 *
 * @param points the points, from undiluted on
 */
public record DilutionCurve(List<Point> points) {
  /** Copies the list. */
  public DilutionCurve {
    points = List.copyOf(points);
  }

  /**
   * The least dilution that passes.
   *
   * @return the first point without a finding against it, if there is one
   */
  public Optional<Point> firstPass() {
    return points.stream().filter(p -> p.severity() == Severity.PASS).findFirst();
  }

  /**
   * One dilution, at the flow and in the run that stand worst.
   *
   * @param ratio volume of liquid added over volume of undiluted mixture
   * @param totalSolids dry solids without sand over mass without sand
   * @param sandFraction volume of sand over volume of mixture
   * @param velocityMps velocity there
   * @param turbulentVelocityMps least velocity from which turbulence carries the sand with margin;
   *     empty when none does
   * @param regime how the carrier flows there
   * @param support what carries the sand there; empty without sand
   * @param floorShare share of the coarse sand that reaches the floor without turbulence
   * @param pressureGradientPaPm friction per length there
   * @param severity how the line stands
   */
  public record Point(
      double ratio,
      double totalSolids,
      double sandFraction,
      double velocityMps,
      Optional<Double> turbulentVelocityMps,
      Regime regime,
      Optional<Support> support,
      double floorShare,
      double pressureGradientPaPm,
      Severity severity) {
    /**
     * What becomes of the sand, in words.
     *
     * @return for example "carried by turbulence"
     */
    public String fate() {
      if (support.isPresent() && regime == Regime.TRANSITIONAL) {
        return "neither laminar nor turbulent";
      }
      return support.map(Support::words).orElse("no sand");
    }
  }
}
