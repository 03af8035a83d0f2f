package sandslurry.transport.bed;

import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;
import sandslurry.pipe.CircularSegment;
import sandslurry.transport.friction.LaminarPipeFlow;

/**
 * A bed of sand on the floor of a pipe, under a liquid that flows without eddies: what pressure
 * gradient there is over it, and what gradient it takes to move it along.
 *
 * <p><b>Needed.</b> The balance of forces on a metre of bed after Wilson (1970), with the weight
 * along a slope and the stress at which the liquid between sand and wall yields:
 *
 * <pre>
 * G (A + S Rh) = μs g (ρs − ρ) Cb (D²/2)(sin β − β cos β) cos θ + g (ρs − ρ) Cb A sin θ + τy D β
 * </pre>
 *
 * <p>G pressure gradient [Pa/m]; A area of the bed [m²]; S width of its surface [m]; Rh hydraulic
 * radius of what the bed leaves open, through whose mean stress G Rh the liquid drags the surface
 * [m]; D bore [m]; β half the angle that the bed subtends; θ slope, upward positive; μs sliding
 * friction; Cb volume fraction of sand in the bed. A bed cannot be thinner than one coarse grain:
 * less sand than such a layer lies in patches, and its weight counts in proportion. So without sand
 * the gradient is 4 τy/D, that which starts the liquid itself, and a full pipe takes 2 μs g (ρs −
 * ρ) Cb beyond it.
 *
 * <p>Tests of coarse sand in laminar flow moved a bed on only above a gradient of 1 to 2 kPa/m,
 * more for grains above 1 mm (rule of thumb after A. D. Thomas; Cooke 2002, Laminar flow settling:
 * the potential for unexpected problems, Hydrotransport 15; Gillies and others 1999 and 2007;
 * numbers from memory, unverified, no open text of them was found). The balance gives 0.5 to 2
 * kPa/m for quartz beds whose depth is 5 to 30 % of a bore of 154 mm. The greater of the balance
 * and the upper end of the rule, in proportion to the coarse grain above 1 mm, is asked for.
 *
 * <p><b>Available.</b> The liquid over the bed flows through what the bed leaves open, at the
 * velocity that is left when the bed moves at {@value #SPEED_SHARE} of the mean velocity (a choice
 * of this calculator, no source); its laminar wall stress τw in a round pipe of the hydraulic
 * diameter gives G = 4 τw/Dh.
 *
 * <p><b>The bed that forms.</b> Sand that reaches the floor is carried on by the bed: at steady
 * flow the bed that carries the share s of a sand of volume fraction C takes s C/(Cb {@value
 * #SPEED_SHARE}) of the section.
 *
 * @param bore the pipe
 * @param areaShare area of the bed over that of the section, 0 to {@value #MOST_SHARE}
 * @param grainM the coarse grain, positive [m]
 * @param angleRad θ [rad]
 * @param sandDensityKgM3 density of the mineral, above that of the liquid [kg/m3]
 * @param liquidDensityKgM3 density of the liquid [kg/m3]
 */
public record SlidingBed(
    Bore bore,
    double areaShare,
    double grainM,
    double angleRad,
    double sandDensityKgM3,
    double liquidDensityKgM3) {
  /** Sliding friction of sand on steel or plastic (common practice, no source). */
  public static final double FRICTION = 0.4;

  /** Volume fraction of sand in a settled bed (common practice, no source). */
  public static final double VOLUME_FRACTION = 0.6;

  /** Velocity of a sliding bed over the mean velocity (a choice of this calculator, no source). */
  static final double SPEED_SHARE = 0.5;

  /** No bed is taken to fill more of the section. */
  public static final double MOST_SHARE = 0.95;

  /** Pressure gradient of the rule of thumb from which a bed of sand up to 1 mm slides [Pa/m]. */
  static final double SURE_PAPM = 2000;

  /** Grains above this size take more than the rule of thumb [m]. */
  private static final double RULE_GRAIN_M = 1e-3;

  private static final int DEPTHS = 8;

  /** Half the angle of a bed of which arc and area are lost in rounding [rad]. */
  private static final double THINNEST = 6e-5;

  /** Checks the bounds. */
  public SlidingBed {
    if (!(areaShare >= 0 && areaShare <= 1)
        || !(grainM > 0 && Double.isFinite(grainM))
        || !(Math.abs(angleRad) <= Math.PI / 2)
        || !(sandDensityKgM3 > liquidDensityKgM3 && liquidDensityKgM3 > 0)) {
      throw new IllegalArgumentException(
          "a sliding bed needs a share of the section of 0 to 1, a grain > 0, a slope up to the"
              + " vertical and sand denser than the liquid but has "
              + areaShare
              + ", "
              + grainM
              + " m, "
              + angleRad
              + " rad, "
              + sandDensityKgM3
              + " and "
              + liquidDensityKgM3
              + " kg/m3");
    }
  }

  /**
   * The bed that carries on what reaches the floor.
   *
   * @param floorShare share of the sand that reaches the floor, 0 to 1
   * @param volumeFraction volume of all sand over volume of mixture
   * @return area of the bed over that of the section, at most {@value #MOST_SHARE}
   */
  public static double formedShare(double floorShare, double volumeFraction) {
    return Math.min(MOST_SHARE, floorShare * volumeFraction / (VOLUME_FRACTION * SPEED_SHARE));
  }

  /**
   * The same pipe and sand with another bed.
   *
   * @param share area of the bed over that of the section
   * @return the bed
   */
  SlidingBed ofShare(double share) {
    return new SlidingBed(bore, share, grainM, angleRad, sandDensityKgM3, liquidDensityKgM3);
  }

  /**
   * A bed of which each measure is worked out once.
   *
   * @param areaM2 A [m2]
   * @param arcM D β [m]
   * @param surfaceM S [m]
   * @param bearing {@link #bearing} of β
   */
  private record Section(double areaM2, double arcM, double surfaceM, double bearing) {
    static Section of(Bore bore, double areaShare) {
      double half = CircularSegment.halfAngleRad(areaShare);
      double d = bore.diameterM();
      double sine = Math.sin(half);
      return new Section(
          areaShare * bore.areaM2(), d * half, d * sine, SlidingBed.bearing(half, sine));
    }
  }

  /**
   * The gradient that moves the bed by the balance of forces.
   *
   * @param yieldStressPa stress at which the liquid under the bed yields, not negative [Pa]
   * @return G, 0 where the bed slides down by itself [Pa/m]
   */
  double balancePaPm(double yieldStressPa) {
    return balancePaPm(yieldStressPa, Section.of(bore, areaShare));
  }

  private double balancePaPm(double yieldStressPa, Section bed) {
    if (!(yieldStressPa >= 0 && Double.isFinite(yieldStressPa))) {
      throw new IllegalArgumentException(
          "a yield stress must be >= 0 but was " + yieldStressPa + " Pa");
    }
    double layer = layerShare();
    double weight =
        areaShare >= layer
            ? weightPaPm(bed)
            : areaShare / layer * weightPaPm(Section.of(bore, layer));
    return Math.max(0, weight + yieldPaPm(yieldStressPa, bed));
  }

  /** Area of a bed one grain thick over that of the section. */
  private double layerShare() {
    // A grain as wide as the bore fills it; the quotient may pass 1 by rounding.
    return Math.min(
        1,
        new CircularSegment(bore.diameterM(), Math.min(1, grainM / bore.diameterM())).areaM2()
            / bore.areaM2());
  }

  /** What the weight of the sand asks, by friction and along the slope. */
  private double weightPaPm(Section bed) {
    double submerged = Physics.GRAVITY * (sandDensityKgM3 - liquidDensityKgM3) * VOLUME_FRACTION;
    double normal = submerged * bore.areaM2() * bed.bearing();
    double along = submerged * bed.areaM2() * Math.sin(angleRad);
    return (FRICTION * normal * Math.cos(angleRad) + along) / driven(bed);
  }

  /** Normal force on the wall over the weight of a full pipe of bed: 2 when it is full. */
  private static double bearing(double half, double sine) {
    // The difference cancels for a thin bed, of which it is β³/3.
    double difference = half < 1e-3 ? half * half * half / 3 : sine - half * Math.cos(half);
    return 2 * difference / Math.PI;
  }

  /** What the liquid between bed and wall asks; that of the liquid alone for a vanishing bed. */
  private double yieldPaPm(double yieldStressPa, Section bed) {
    return bed.arcM() < THINNEST * bore.diameterM()
        ? 4 * yieldStressPa / bore.diameterM()
        : yieldStressPa * bed.arcM() / driven(bed);
  }

  /** Area on which the gradient acts, with that of the stress on the surface. */
  private double driven(Section bed) {
    return bed.areaM2() + bed.surfaceM() * hydraulicDiameterM(bed) / 4;
  }

  private double hydraulicDiameterM(Section bed) {
    double open = bore.areaM2() - bed.areaM2();
    double perimeter = Math.PI * bore.diameterM() - bed.arcM() + bed.surfaceM();
    return open > 0 && perimeter > 0 ? 4 * open / perimeter : 0;
  }

  /**
   * The gradient that must be there for the bed to be taken as sliding: that of the balance, and no
   * less than the rule of thumb.
   *
   * @param yieldStressPa stress at which the liquid under the bed yields, not negative [Pa]
   * @return pressure gradient [Pa/m]
   */
  double neededPaPm(double yieldStressPa) {
    return neededPaPm(yieldStressPa, Section.of(bore, areaShare));
  }

  private double neededPaPm(double yieldStressPa, Section bed) {
    return Math.max(
        balancePaPm(yieldStressPa, bed), SURE_PAPM * Math.max(1, grainM / RULE_GRAIN_M));
  }

  /**
   * The gradient of the liquid that flows over the bed.
   *
   * @param rheology the liquid
   * @param velocityMps mean velocity of the whole section, positive [m/s]
   * @return pressure gradient [Pa/m]
   */
  double availablePaPm(Rheology rheology, double velocityMps) {
    return availablePaPm(rheology, velocityMps, Section.of(bore, Math.min(areaShare, MOST_SHARE)));
  }

  private double availablePaPm(Rheology rheology, double velocityMps, Section bed) {
    double share = bed.areaM2() / bore.areaM2();
    double hydraulic = hydraulicDiameterM(bed);
    double over = velocityMps * (1 - SPEED_SHARE * share) / (1 - share);
    return LaminarPipeFlow.at(rheology, hydraulic, over).pressureGradientPaPm();
  }

  /**
   * The worst of all beds from a trace of sand up to this one: needed over available gradient.
   *
   * @param rheology the liquid
   * @param velocityMps mean velocity of the whole section, positive [m/s]
   * @return the ratio; the bed always slides at 1 or less
   */
  double demand(Rheology rheology, double velocityMps) {
    double worst = 0;
    for (int i = 0; i <= DEPTHS; i++) {
      SlidingBed bed = ofShare(areaShare * i / DEPTHS);
      Section section = Section.of(bore, bed.areaShare());
      worst =
          Math.max(
              worst,
              bed.neededPaPm(rheology.yieldStressPa(), section)
                  / bed.availablePaPm(rheology, velocityMps, section));
    }
    return worst;
  }

  /**
   * What a sliding bed adds to the pressure gradient of the liquid: its friction, and no slope,
   * whose weight the static pressure has.
   *
   * @return μs g (ρs − ρ) Cb (2/π)(sin β − β cos β) [Pa/m]
   */
  public double frictionPaPm() {
    return FRICTION
        * Physics.GRAVITY
        * (sandDensityKgM3 - liquidDensityKgM3)
        * VOLUME_FRACTION
        * Section.of(bore, areaShare).bearing();
  }
}
