package sandslurry.transport.bed;

import java.util.OptionalDouble;
import sandslurry.pipe.Bore;
import sandslurry.pipe.CircularSegment;

/**
 * What lies in a line after it has stopped, and what it takes to start it again.
 *
 * <p><b>The bed.</b> The sand in a metre of line that settles, C A, lies in a bed of the volume
 * fraction Cb, so the bed takes the share C/Cb of the cross-section; its depth follows from the
 * {@link CircularSegment}. C is the fraction in the line, which in slow flow is above the delivered
 * one: sand that lay on the floor while the line ran, and moved at part of its velocity, counts as
 * often as it was slower ({@link SlidingBed#SPEED_SHARE}). What the liquid holds does not count.
 *
 * <p><b>Sliding.</b> A bed slides down a sloping line when its weight along the slope exceeds the
 * friction of the wall, on which it bears as a liquid of its submerged weight would (Wilson 1970):
 *
 * <pre>tan θ = μ · 2 (sin β − β cos β) / (β − sin β cos β)</pre>
 *
 * <p>θ slope; μ sliding friction; β half the angle that the bed subtends. A thin bed slides at tan
 * θ = μ: 22° for 0.4, the slope above which Shook, Rollins and Vassie (1974), Canadian Journal of
 * Chemical Engineering 52:300, saw settled beds slide (abstract read); finer sand held to steeper
 * slopes. Before it has settled, the slurry as a whole flows down at much lower slopes: they saw
 * that too. Lay lines no steeper than about a tenth if a stop with sand in them cannot be ruled out
 * (a handbook chapter on slurry valves, abstract read, gives 10 % for the order of the limit).
 *
 * <p><b>Restart.</b> See {@link Restart}.
 *
 * @param bore the pipe
 * @param lengthM length of the line [m]
 * @param volumeFraction C, volume of sand over volume of mixture in the line when it stops, at most
 *     Cb
 */
public record StoppedLine(Bore bore, double lengthM, double volumeFraction) {
  /** Checks the bounds. */
  public StoppedLine {
    if (!(lengthM > 0 && Double.isFinite(lengthM))
        || !(volumeFraction >= 0 && volumeFraction <= SlidingBed.VOLUME_FRACTION)) {
      throw new IllegalArgumentException(
          "a stopped line needs a length > 0 and a volume fraction of sand of 0 to that of the bed"
              + " but has "
              + lengthM
              + " m and "
              + volumeFraction);
    }
  }

  /**
   * Share of the section that the settled bed takes, and of the length that it packs full.
   *
   * @return C/Cb
   */
  public double bedShare() {
    return volumeFraction / SlidingBed.VOLUME_FRACTION;
  }

  /**
   * Mass of the sand in the line.
   *
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @return the mass [kg]
   */
  public double sandMassKg(double sandDensityKgM3) {
    if (!(sandDensityKgM3 > 0 && Double.isFinite(sandDensityKgM3))) {
      throw new IllegalArgumentException(
          "a density must be > 0 but was " + sandDensityKgM3 + " kg/m3");
    }
    return sandDensityKgM3 * volumeFraction * bore.areaM2() * lengthM;
  }

  /**
   * The bed when all sand has settled where it was.
   *
   * @return the bed; of depth 0 without sand
   */
  public CircularSegment bed() {
    return CircularSegment.ofAreaShare(bore.diameterM(), bedShare());
  }

  /**
   * Time until a grain from the crown of the pipe lies on the bed.
   *
   * @param settlingMps settling velocity at rest, hindered by the other grains, positive [m/s]
   * @return the time [s]
   */
  public double settlingTimeS(double settlingMps) {
    if (!(settlingMps > 0 && Double.isFinite(settlingMps))) {
      throw new IllegalArgumentException(
          "a settling velocity must be > 0 but was " + settlingMps + " m/s");
    }
    return (bore.diameterM() - bed().depthM()) / settlingMps;
  }

  /**
   * Time until the sand of a run on which it slides lies packed at the foot.
   *
   * <pre>t = A / (w D cos θ) · ln[(L D cos θ + A / sin θ) / (L C/Cb D cos θ + A / sin θ)]</pre>
   *
   * <p>Clear liquid forms at the level top of what is still afloat and under the wall that looks
   * down, at w times their level areas, A/sin θ and D cos θ times the length afloat; what is afloat
   * draws back to the packed foot, L C/Cb (Ponder 1925; Nakamura and Kuroda 1937, Keijo Journal of
   * Medicine 8:256, in the form of K. Kinosita 1949, Sedimentation in tilted vessels, which was
   * read, here for a round pipe). So sand reaches the foot of a steep run many times sooner than by
   * falling along it. The theory lets the settled sand slide at once: it gives a least time. In an
   * upright pipe it is what is left of the length over w.
   *
   * @param settlingMps w, hindered, positive [m/s]
   * @param slopeRad θ, above 0 to 90 degrees [rad]
   * @return t [s]
   */
  public double slidingTimeS(double settlingMps, double slopeRad) {
    if (!(settlingMps > 0 && Double.isFinite(settlingMps))
        || !(slopeRad > 0 && slopeRad <= Math.PI / 2)) {
      throw new IllegalArgumentException(
          "sliding needs a settling velocity > 0 and a slope above 0 to the vertical but has "
              + settlingMps
              + " m/s and "
              + slopeRad
              + " rad");
    }
    double packed = plugLengthM();
    double wall = bore.diameterM() * Math.cos(slopeRad);
    double top = bore.areaM2() / Math.sin(slopeRad);
    double ratio = (lengthM - packed) * wall / (packed * wall + top);
    // Where the wall is upright to a rounding, the logarithm is its argument.
    return ratio < 1e-9
        ? (lengthM - packed) * bore.areaM2() / ((packed * wall + top) * settlingMps)
        : bore.areaM2() / (settlingMps * wall) * Math.log1p(ratio);
  }

  /**
   * The slope above which the settled bed slides down the line and gathers at the foot.
   *
   * @return θ, with μ of {@link SlidingBed#FRICTION}; that of a thin bed when there is no sand
   *     [rad]
   */
  public double slideAngleRad() {
    double half = bed().halfAngleRad();
    // Below this angle the quotient is 1 to within a millionth, and its terms cancel.
    double bearing =
        half < 1e-3
            ? 1
            : 2
                * (Math.sin(half) - half * Math.cos(half))
                / (half - Math.sin(half) * Math.cos(half));
    return Math.atan(SlidingBed.FRICTION * bearing);
  }

  /**
   * Length of line that is packed full at the foot of a slope or riser when its sand comes down.
   *
   * @return the length of the line times C/Cb [m]
   */
  public double plugLengthM() {
    return lengthM * bedShare();
  }

  /**
   * Pressure that slides the settled bed as a body along the whole line, level.
   *
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @param liquidDensityKgM3 density of the liquid, below that of the sand [kg/m3]
   * @param grainM the coarse grain, positive [m]
   * @return the pressure [Pa]
   */
  public double slidingBedPa(double sandDensityKgM3, double liquidDensityKgM3, double grainM) {
    return lengthM
        * new SlidingBed(bore, bedShare(), grainM, 0, sandDensityKgM3, liquidDensityKgM3)
            .balancePaPm(0);
  }

  /**
   * Pressure at which the liquid begins to move along the whole line.
   *
   * @param restedYieldStressPa τ, yield stress of the liquid after the rest, 0 for none [Pa]
   * @return 4 τ L/D [Pa]
   */
  public double yieldPa(double restedYieldStressPa) {
    if (!(restedYieldStressPa >= 0 && Double.isFinite(restedYieldStressPa))) {
      throw new IllegalArgumentException(
          "a yield stress must be >= 0 but was " + restedYieldStressPa + " Pa");
    }
    return 4 * restedYieldStressPa / bore.diameterM() * lengthM;
  }

  /**
   * Pressure to restart a line by friction alone; static head is to be added, with sand that has
   * gathered in a riser.
   *
   * <p>Three things may hold the line, and each is estimated by itself:
   *
   * <ul>
   *   <li><b>sliding bed</b>: the balance of forces on the bed along the whole line, {@link
   *       SlidingBed}. It is what it takes to move the bed as a body; liquid over a shallow bed
   *       moves at less and carries it off grain by grain.
   *   <li><b>yield</b>: 4 τ/D along the line, the gradient at which a liquid of yield stress τ
   *       begins to move, its structure rebuilt by rest.
   *   <li><b>plug</b>: what is packed full at low points and feet of risers, {@link PackedPlug}: at
   *       the least when liquid seeps through it and drags every grain, at the most when it is
   *       pushed from behind like a cork and wedges itself.
   * </ul>
   *
   * <p>The least that can be needed is the greatest of the three, with the plug seeping. As much as
   * {@value #UNCERTAINTY} times their sum may be, which is by how much the balance and the rule of
   * thumb of {@link SlidingBed} part, or with the plug wedged if that is more. That factor is a
   * judgement of this program; no measurements with manure were found. A plug that is wedged may
   * take more than any pump has: then there is no pressure that can be counted on.
   *
   * @param slidingBedPa pressure to slide the bed [Pa]
   * @param yieldPa pressure to break the yield stress [Pa]
   * @param plugPa pressure to drag the plug with liquid that seeps through [Pa]
   * @param wedgedPa pressure to push the plug like a cork; empty when beyond any pump [Pa]
   */
  public record Restart(
      double slidingBedPa, double yieldPa, double plugPa, OptionalDouble wedgedPa) {
    /** What the sum of the estimates may be wrong by. */
    public static final double UNCERTAINTY = 2;

    /**
     * The least that can be needed.
     *
     * @return the greatest of the three [Pa]
     */
    public double lowPa() {
      return Math.max(slidingBedPa, Math.max(yieldPa, plugPa));
    }

    /**
     * What bed, yield stress and seeping plug take together.
     *
     * @return the sum of the three [Pa]
     */
    public double expectedPa() {
      return slidingBedPa + yieldPa + plugPa;
    }

    /**
     * As much as may be needed.
     *
     * @return the greater of {@value #UNCERTAINTY} times the sum with the plug seeping, and that of
     *     bed and yield with the plug wedged; empty when a wedged plug is beyond any pump [Pa]
     */
    public OptionalDouble highPa() {
      if (wedgedPa.isEmpty()) {
        return OptionalDouble.empty();
      }
      double others = UNCERTAINTY * (slidingBedPa + yieldPa);
      return OptionalDouble.of(others + Math.max(UNCERTAINTY * plugPa, wedgedPa.getAsDouble()));
    }
  }
}
