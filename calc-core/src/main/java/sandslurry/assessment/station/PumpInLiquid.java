package sandslurry.assessment.station;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.RunPoint;
import sandslurry.design.station.PumpSpec.RunningPump;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Rheology;
import sandslurry.pump.derating.DeratingSpread;
import sandslurry.pump.derating.HydraulicInstituteViscous;
import sandslurry.pump.derating.RepresentativeViscosity;
import sandslurry.pump.derating.SolidsDerating;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.pump.derating.SolidsDeratings.Derating;
import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.pump.rotodynamic.PumpCurve;
import sandslurry.pump.rotodynamic.ViscousCorrection;

/**
 * What liquor and sand take from a rotodynamic pump. The liquid with its fines is corrected for
 * first, then the coarse sand: the ratios are multiplied. No test has sand in a thick liquid told
 * apart, so the product is an assumption; it is on the safe side of the few tests with clay, in
 * which the fines lowered the loss by the sand.
 */
public final class PumpInLiquid {
  private static final HydraulicInstituteViscous VISCOUS = new HydraulicInstituteViscous();

  private final Slurry slurry;
  private final Rheology rheology;
  private final double wallShear;

  /**
   * Which corrections are believed.
   *
   * @param solids the derating by sand; empty for the rule
   * @param severest whether the derating that takes most head of all is taken instead
   * @param viscosity the representative viscosity; empty for the most viscous
   */
  public record Choice(
      Optional<SolidsDerating> solids,
      boolean severest,
      Optional<RepresentativeViscosity> viscosity) {
    /** The rule of this program: the governing derating and the most viscous liquid. */
    public static final Choice RULE = new Choice(Optional.empty(), false, Optional.empty());

    /** The derating that takes most head, and the most viscous liquid. */
    public static final Choice SEVEREST = new Choice(Optional.empty(), true, Optional.empty());
  }

  /**
   * One viscosity by which the liquid may stand in a pump, and what comes of it.
   *
   * @param which which viscosity it is
   * @param viscosityPaS its value [Pa.s]
   * @param correction what it takes
   */
  public record Seen(
      RepresentativeViscosity which, double viscosityPaS, ViscousCorrection correction) {}

  /** The liquid as it stands in the first run of the line. */
  PumpInLiquid(RunPoint first) {
    this.slurry = first.slurry();
    this.rheology = first.mixture().rheology();
    this.wallShear = first.flow().wallShearRatePs();
  }

  Slurry slurry() {
    return slurry;
  }

  /**
   * Whether the liquid has one viscosity.
   *
   * @return true for a Newtonian liquid
   */
  public boolean newtonian() {
    return rheology.isNewtonian();
  }

  /**
   * Best efficiency point of a pump in water.
   *
   * @param pump a rotodynamic pump
   * @return the point; empty for a curve that is best at no flow or has no head there
   */
  public static Optional<BestPoint> best(RunningPump pump) {
    return best(pump.clear(), pump.curve().speedPs());
  }

  static Optional<BestPoint> best(PumpCurve clear, double speedPs) {
    double flow = clear.bestEfficiencyFlowM3ps();
    return flow > 0 && clear.headM(flow) > 0
        ? Optional.of(BestPoint.of(clear, speedPs))
        : Optional.empty();
  }

  /**
   * What each representative viscosity takes from a pump.
   *
   * @param pump a rotodynamic pump
   * @return one for each; empty without a best efficiency point
   */
  public List<Seen> viscosities(RunningPump pump) {
    List<Seen> seen = new ArrayList<>();
    best(pump)
        .ifPresent(
            best -> {
              for (RepresentativeViscosity which : RepresentativeViscosity.values()) {
                double viscosity = which.viscosityPaS(rheology, best.speedPs(), wallShear);
                seen.add(
                    new Seen(
                        which,
                        viscosity,
                        VISCOUS.correction(best, viscosity / slurry.liquid().densityKgM3())));
              }
            });
    return seen;
  }

  /**
   * The representative viscosity that is used: the one chosen, or the most viscous.
   *
   * @param pump a rotodynamic pump
   * @param choice which corrections are used
   * @return the viscosity with its correction; empty without a best efficiency point
   */
  public Optional<Seen> viscosity(RunningPump pump, Choice choice) {
    return viscosities(pump).stream()
        .filter(s -> choice.viscosity().map(w -> w == s.which()).orElse(true))
        .max(Comparator.comparingDouble(Seen::viscosityPaS));
  }

  /**
   * What sand takes of head and efficiency.
   *
   * @param pump a rotodynamic pump
   * @param choice which corrections are used
   * @return head ratio and efficiency ratio
   */
  public Derating derating(RunningPump pump, Choice choice) {
    OptionalDouble impeller = pump.impellerM();
    if (choice.severest()) {
      return DeratingSpread.of(slurry, impeller).mostSevere();
    }
    return choice
        .solids()
        .map(
            model ->
                new Derating(
                    model,
                    model.headRatio(slurry, impeller),
                    model.efficiencyRatio(slurry, impeller)))
        .orElseGet(() -> SolidsDeratings.governing(slurry, impeller));
  }

  /**
   * Every derating model that applies to all pumps.
   *
   * @param pumps the pumps
   * @return the models; without those that need an impeller diameter when one is missing
   */
  public List<SolidsDerating> deratings(List<RunningPump> pumps) {
    boolean known = pumps.stream().allMatch(p -> p.impellerM().isPresent());
    return SolidsDeratings.FAMILY.all().stream()
        .filter(model -> known || !model.needsImpellerDiameter())
        .toList();
  }

  /**
   * The curve of a pump in the mixture; nothing when the corrections, far out of their range, leave
   * it no head or no efficiency.
   *
   * @param worn share of head lost by pumps that have no share of their own; empty when none is
   *     worn
   */
  Optional<PumpCurve> curve(RunningPump pump, OptionalDouble worn, Choice choice) {
    Derating derating = derating(pump, choice);
    double head = derating.headRatio().value();
    double efficiency = derating.efficiencyRatio().value();
    if (!(head > 0 && efficiency > 0)) {
      return Optional.empty();
    }
    PumpCurve curve = pump.clear();
    Optional<Seen> seen = viscosity(pump, choice);
    if (seen.isPresent()) {
      ViscousCorrection correction = seen.get().correction();
      boolean left =
          correction.efficiencyRatio() > 0
              && correction.flowRatio() > 0
              && correction.endOfHeadM3ps() > curve.leastFlowM3ps();
      if (!left) {
        return Optional.empty();
      }
      curve = curve.viscous(correction);
    }
    if (worn.isPresent()) {
      curve = curve.worn(pump.wornHead().orElse(worn.getAsDouble()));
    }
    return Optional.of(curve.derated(head, efficiency));
  }
}
