package sandslurry.separation.capture;

import java.util.List;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;

/**
 * Capture where turbulence keeps the sand evenly mixed over the depth, after Vetter.
 *
 * <pre>η = 1 − exp(−w A / Q)</pre>
 *
 * <p>η share caught; w settling velocity [m/s]; A plan area [m²]; Q flow [m³/s]. Each metre of
 * floor takes the same share of what still floats, so the last of it is never caught. It is the
 * lower bound of the family for a lane without short-circuits: the turbulence of {@link
 * CampDobbins1946} made infinite.
 *
 * <p>Source: Vetter (1940), Civil Engineering 10:698, a formula long used by US water agencies;
 * citation from memory, unverified; the equation follows from its premise. No range is published.
 */
final class Vetter1940 extends Published implements CaptureRelation {
  Vetter1940() {
    super(
        "vetter-1940",
        "Vetter, mixed over the depth",
        "eta = 1 - exp(-w A / Q)",
        new Citation("Vetter", 1940, "Civil Engineering 10:698; from memory, unverified"),
        List.of());
  }

  @Override
  public Estimate fraction(BasinFlow flow, double settlingVelocityMps) {
    return Estimate.checks().value(-Math.expm1(-flow.fallNumber(settlingVelocityMps)));
  }
}
