package sandslurry.separation.cyclone;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.separation.Numbers;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * Cut size of a hydrocyclone by the rule of Bradley, with viscosity.
 *
 * <pre>d50 = 4.5 (D³ μ / (Q^1.2 (ρs − ρ)))^0.5</pre>
 *
 * <p>d50 cut size [µm]; D diameter of the cyclone [cm]; μ viscosity [cP]; Q flow into one cyclone
 * [L/min]; ρs, ρ densities [g/cm³]. For dilute feeds; no concentration and no opening is in it.
 * Bradley's cyclones have narrow openings: in the wider ones of today the other models give cuts
 * two to three times coarser, and they are to be believed.
 *
 * <p>Source: Bradley (1965), The Hydrocyclone, Pergamon; the rule and a worked example were read in
 * course notes on cyclone design (air.eng.ui.ac.id), the coefficient is from memory and agrees with
 * the example.
 */
public final class Bradley1965 extends Published implements CutSizeModel {
  private static final Bound DILUTE = new Bound("volume fraction of sand", Kind.PERCENT, 0, 0.05);

  /** Creates the rule; it has no state. */
  public Bradley1965() {
    super(
        "bradley-1965",
        "Bradley",
        "d50 = 4.5 (D^3 mu / (Q^1.2 (rho_s - rho)))^0.5",
        new Citation("Bradley", 1965, "The Hydrocyclone, Pergamon; seen in course notes"),
        List.of(DILUTE));
  }

  @Override
  public Estimate cutSizeM(double bodyM, CycloneFeed feed, double pressureDropPa) {
    double body = InUnit.CENTIMETRE.of(Numbers.positive("the diameter of the cyclone", bodyM, "m"));
    double difference =
        InUnit.GRAM_PER_CUBIC_CENTIMETRE.of(feed.sandDensityKgM3() - feed.liquid().densityKgM3());
    double micrometres =
        4.5
            * Math.sqrt(
                body
                    * body
                    * body
                    * InUnit.CENTIPOISE.of(feed.liquid().viscosityPaS())
                    / (Math.pow(InUnit.LITRE_PER_MINUTE.of(feed.flowM3ps()), 1.2) * difference));
    return Estimate.checks()
        .check(DILUTE, feed.volumeFraction())
        .value(micrometres / InUnit.MICROMETRE.of(1));
  }
}
