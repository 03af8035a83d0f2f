package sandslurry.transport.bed;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Sand that fills the whole section of a pipe over a length, and the pressure that moves it.
 *
 * <p>Sand that slid down to a low point packs there from one side or from both. Two ways of pushing
 * it bound what may be needed:
 *
 * <pre>
 * w = g (ρs − ρ) Cb (2 μ cos θ + sin θ)
 * seeping   Δp = Σ w L
 * wedged    −dσ/dx = (4 μ k / D) σ + w,   σ = 0 at the far end
 *           Δp = (w D / (4 μ k)) (exp(4 μ k L / D) − 1)          in one slope and bore
 * </pre>
 *
 * <p>w resistance of a metre of plug by its weight [Pa/m]; θ slope, upward positive; μ friction of
 * sand on the wall; σ pressure of grain on grain along the pipe [Pa]; k pressure of the grains on
 * the wall over σ; D bore, L length [m]; Cb volume fraction of packed sand.
 *
 * <p><b>Seeping</b>: the liquid seeps through the plug and drags every grain, so that no grain
 * leans on the next. The resistance is the weight's along the slope and its friction, as of a pipe
 * full of sand in Wilson (1970), and grows with the length. <b>Wedged</b>: the sand is pushed from
 * behind like a cork, because fibre and fines seal its face. Grains then lean on each other and
 * press on the wall: the balance of H. A. Janssen (1895), Zeitschrift des Vereines deutscher
 * Ingenieure 39:1045 (citation from memory, unverified), who wrote it for a silo, where the wall
 * carries; here friction acts the other way, and the pressure grows by e with every D/(4 μ k) of
 * length. Pushing harder then wedges harder. Derived here from the balance of a slice; with −μ in
 * the place of μ it is Janssen's formula for the silo, and for a short plug it tends to w L.
 *
 * <p>k is that of sand that is pressed in a rigid tube and cannot give way sideways, 1 − sin φ
 * (Jaky 1944; from memory, unverified), with φ = 30°, the loosest sand and so the greatest k.
 * Nobody is known to have measured plugs of manured sand: take the two as bounds.
 *
 * @param parts the parts of the plug in the order of flow, at least one
 * @param submergedPaPm g (ρs − ρ) Cb, positive [Pa/m]
 * @param wallFriction μ, positive
 * @param stressRatio k, positive
 */
public record PackedPlug(
    List<Part> parts, double submergedPaPm, double wallFriction, double stressRatio) {
  /** k of loose sand in a rigid tube, 1 − sin 30°. */
  public static final double STRESS_RATIO = 0.5;

  /** A pressure beyond this is told as none: no pump or pipe of this trade has it. */
  static final double BEYOND_ANY_PUMP_PA = 1e9;

  /**
   * A part of a plug in one bore and slope.
   *
   * @param diameterM D, positive [m]
   * @param lengthM L, not negative [m]
   * @param angleRad θ, −90° to 90°, upward in the direction of flow positive [rad]
   */
  public record Part(double diameterM, double lengthM, double angleRad) {
    /** Checks the bounds. */
    public Part {
      if (!(diameterM > 0 && Double.isFinite(diameterM))
          || !(lengthM >= 0 && Double.isFinite(lengthM))
          || !(Math.abs(angleRad) <= Math.PI / 2)) {
        throw new IllegalArgumentException(
            "a plug needs a bore > 0, a length >= 0 and a slope up to the vertical but has "
                + diameterM
                + " m, "
                + lengthM
                + " m, "
                + angleRad
                + " rad");
      }
    }
  }

  /** Checks the bounds and copies the list. */
  public PackedPlug {
    parts = List.copyOf(parts);
    if (parts.isEmpty()
        || !(submergedPaPm > 0 && Double.isFinite(submergedPaPm))
        || !(wallFriction > 0 && Double.isFinite(wallFriction))
        || !(stressRatio > 0 && Double.isFinite(stressRatio))) {
      throw new IllegalArgumentException(
          "a plug needs a part, a weight, a friction and a ratio of stresses > 0 but has "
              + parts.size()
              + " parts, "
              + submergedPaPm
              + " Pa/m, "
              + wallFriction
              + ", "
              + stressRatio);
    }
  }

  /**
   * Length of all parts.
   *
   * @return the sum [m]
   */
  public double lengthM() {
    return parts.stream().mapToDouble(Part::lengthM).sum();
  }

  /**
   * Weight along the slope of the parts that climb; those that fall are not taken to help.
   *
   * @return Σ g (ρs − ρ) Cb sin θ L over climbing parts [Pa]
   */
  public double climbingWeightPa() {
    return parts.stream()
        .mapToDouble(p -> submergedPaPm * Math.max(0, Math.sin(p.angleRad())) * p.lengthM())
        .sum();
  }

  /**
   * Pressure that moves the plug when liquid seeps through it.
   *
   * @return Σ w L, of parts that would slide by themselves 0 [Pa]
   */
  public double seepingPa() {
    return parts.stream().mapToDouble(p -> Math.max(0, resistancePaPm(p)) * p.lengthM()).sum();
  }

  /**
   * Pressure that moves the plug when it is pushed like a cork.
   *
   * @return Δp; empty when it is beyond {@value #BEYOND_ANY_PUMP_PA} Pa [Pa]
   */
  public OptionalDouble wedgedPa() {
    double stress = 0;
    for (int i = parts.size() - 1; i >= 0; i--) {
      Part part = parts.get(i);
      double rate = rate(part.diameterM());
      double turns = rate * part.lengthM();
      stress =
          Math.max(0, stress * Math.exp(turns) + resistancePaPm(part) / rate * Math.expm1(turns));
      // Above is infinite, or 0 times infinite, where the exponent is very large.
      if (!(stress <= BEYOND_ANY_PUMP_PA)) {
        return OptionalDouble.empty();
      }
    }
    return OptionalDouble.of(stress);
  }

  /**
   * The longest plug in one bore and slope that a pressure moves when it is pushed like a cork.
   *
   * @param diameterM D [m]
   * @param angleRad θ [rad]
   * @param availablePa Δp, not negative [Pa]
   * @return ln(1 + 4 μ k Δp / (w D)) D / (4 μ k); empty where the plug slides by itself [m]
   */
  public OptionalDouble longestPushedM(double diameterM, double angleRad, double availablePa) {
    if (!(availablePa >= 0 && Double.isFinite(availablePa))) {
      throw new IllegalArgumentException("a pressure must be >= 0 but was " + availablePa + " Pa");
    }
    double resistance = resistancePaPm(new Part(diameterM, 0, angleRad));
    double rate = rate(diameterM);
    return resistance > 0
        ? OptionalDouble.of(Math.log1p(rate * availablePa / resistance) / rate)
        : OptionalDouble.empty();
  }

  private double rate(double diameterM) {
    return 4 * wallFriction * stressRatio / diameterM;
  }

  private double resistancePaPm(Part part) {
    return submergedPaPm
        * (2 * wallFriction * Math.cos(part.angleRad()) + Math.sin(part.angleRad()));
  }
}
